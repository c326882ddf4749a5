// What a person said to findings, of plans handed out before, into a survey whose marks are all there. For
// geo/read/field_assembler.cpp alone.
//
// Names:   answers and findings name marks as their own file does; marks that had to be called otherwise are renamed in them.
// Rules:   corrections of how notes are read (note_corrections.h) are obeyed anew; one of a walk that is not there is not used.
// Before:  an answer, or a correction of the same words, walk and mark that the field had before stays; of two files the later one's counts.
// Settled: the mounds stand as their records and the answers make them (put_right). A mark whose row says another place, fan,
//          kind, freshness or reason (another program changed it, or an answer was not understood) keeps what its row says, as
//          a mend of the person's own, with a ReadFinding.
// Limits:  a place that is not about the field (field_extent.h) is none: of a record the row's counts, an answer is open again.
// Cost:    linear in marks and answers.
#pragma once

#include <map>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "geo/read/field_survey.h"
#include "geo/read/finding_list.h"
#include "geo/read/geographic_survey.h"

namespace plugside {

class KeptAnswers {
public:
    using Renamed = std::unordered_map<std::string, std::string>;

    // `file`: its name without folder, for findings.
    void add_record(std::size_t mound, GeographicRecord record, const std::string& file, const std::string& place);
    void add_answer(GeographicAnswer answer, const std::string& file, const Renamed& renamed);
    // `walks`: the survey's ids of the file's walks.
    void add_rule(GeographicRule rule, const std::string& file, const Renamed& marks, const Renamed& walks);
    void add_finding(GeographicFinding finding, const std::string& file, const Renamed& renamed);

    // Whether the field's answers, corrections or findings of reading became more.
    bool settle(FieldSurvey& field);

private:
    struct Record {
        std::size_t mound = 0;
        GeographicRecord record;
        std::string file;
        std::string place;
    };
    struct Told {
        GeographicAnswer answer;
        std::string file;
    };
    struct Found {
        GeographicFinding finding;
        std::string file;
    };
    using IndexByName = std::unordered_map<std::string, std::size_t>;

    FindingList& findings_of_file(const std::string& file);
    bool take_answers(FieldSurvey& field, const IndexByName& by_name);
    bool take_rules(Survey& survey);
    bool take_findings(FieldSurvey& field, const IndexByName& by_name);
    void take_records(FieldSurvey& field);
    // Whether there was any mend to add.
    bool keep_rows(Survey& survey, const std::vector<Mound>& as_in_rows);

    std::vector<Record> records_;
    std::vector<Told> answers_;
    std::vector<Found> found_;
    std::vector<NoteRule> rules_;
    std::map<std::string, FindingList> findings_;
};

}  // namespace plugside
