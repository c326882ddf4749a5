// Collects findings while a file is read; what was found in many places is listed once, with the first place and how many
// more: a symbol that a device puts on each of 300 marks is one line, not 300.
//
// Order: of first appearance. Cost: O(log n) a finding; memory grows with the number of distinct sentences, which is held at
// `most_sentences`; what comes beyond it is counted in a closing finding.
#pragma once

#include <cstddef>
#include <map>
#include <string>
#include <vector>

#include "geo/read/field_survey.h"

namespace plugside {

class FindingList {
public:
    explicit FindingList(std::string file) : file_(std::move(file)) {}

    void add(const std::string& place, const std::string& sentence);
    [[nodiscard]] std::vector<ReadFinding> listed() const;

private:
    static constexpr std::size_t most_sentences = 1000;
    struct Entry {
        std::string place;
        std::string sentence;
        std::size_t further = 0;
    };
    std::string file_;
    std::vector<Entry> entries_;
    std::map<std::string, std::size_t> index_;
    std::size_t beyond_ = 0;
};

}  // namespace plugside
