// Geographic values of files into a survey on its plane, or into one that is there already. For geo/read/field_reader.cpp
// alone; what counts as new is said there.
// Cost: linear; what is there already is found by a grid of a centimetre.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <unordered_map>
#include <unordered_set>
#include <vector>

#include "geo/read/coordinate_faults.h"
#include "geo/read/field_survey.h"
#include "geo/read/finding_list.h"
#include "geo/read/geographic_survey.h"
#include "geo/read/kept_answers.h"

namespace plugside {

// Gives every mark a name of its own and says where it had to change one.
class MarkNames {
public:
    // Names that walkers gave are not handed to nameless marks.
    void reserve(const std::string& name) { given_.insert(name); }
    void take(const std::string& name) { used_.insert(name); }

    // The name to use for a mark that calls itself `name`.
    [[nodiscard]] std::string unique(const std::string& name, const GeographicMark& mark, FindingList& findings);

private:
    std::string numbered();

    std::unordered_set<std::string> given_;
    std::unordered_set<std::string> used_;
    std::unordered_map<std::string, std::size_t> repeats_;
    std::size_t nameless_ = 0;
};

// The marks of a survey, to look up whether one of a file is among them. Each is found once.
class KnownMarks {
public:
    explicit KnownMarks(const Survey& survey);
    // The index of the mound.
    [[nodiscard]] std::optional<std::size_t> find(const Survey& survey, const std::string& source,
                                                  const GeographicMark& mark, LocalPoint at);

private:
    std::unordered_multimap<std::uint64_t, std::size_t> by_cell_;
    std::vector<bool> found_;
};

class FieldAssembler {
public:
    FieldAssembler(FieldSurvey field, const std::vector<GeographicFile>& files, std::vector<CoordinateFault> faults);

    void add(GeographicFile file);
    // The survey; a name that no file gave is `name`.
    [[nodiscard]] FieldSurvey field(const std::string& name);
    // Whether anything but findings was added; known when `field` was called.
    [[nodiscard]] bool anything_new() const { return anything_new_; }

private:
    using Renamed = std::unordered_map<std::string, std::string>;

    // The index of the survey's walk that it went into.
    std::size_t add_walk(GeographicWalk& walk, Renamed& renamed, FindingList& findings);
    [[nodiscard]] LocalPoint as_recorded(const GeographicMark& mark) const;
    void add_segments(const GeographicWalk& walk, std::size_t to);
    void add_mark(GeographicMark mark, LocalPoint at, std::size_t walk, Renamed& renamed, FindingList& findings);
    void add_ground(const GeographicGround& ground);
    void add_decision(SetDecision decision, const Renamed& renamed);
    void add_fact(GeographicFact fact, const Renamed& renamed);
    void add_work(const WorkOrder& work, const Renamed& renamed, FindingList& findings);
    void add_faults();

    FieldSurvey field_;
    MarkNames names_;
    KnownMarks known_;
    KeptAnswers answers_;
    std::vector<CoordinateFault> faults_;
    std::vector<std::vector<std::size_t>> marks_of_fault_;
    std::size_t walks_before_ = 0;
    std::size_t decisions_before_ = 0;
    std::size_t boundary_before_ = 0;
    std::size_t barriers_before_ = 0;
    std::size_t keep_clear_before_ = 0;
    std::size_t again_ = 0;
    bool anything_new_ = false;
};

}  // namespace plugside
