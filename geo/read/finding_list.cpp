#include "geo/read/finding_list.h"

#include "core/words/words.h"

namespace plugside {

void FindingList::add(const std::string& place, const std::string& sentence) {
    if (const auto known = index_.find(sentence); known != index_.end()) {
        ++entries_[known->second].further;
        return;
    }
    if (entries_.size() >= most_sentences) {
        ++beyond_;
        return;
    }
    index_.emplace(sentence, entries_.size());
    entries_.push_back({place, sentence, 0});
}

std::vector<ReadFinding> FindingList::listed() const {
    std::vector<ReadFinding> findings;
    findings.reserve(entries_.size() + 1);
    for (const Entry& entry : entries_) {
        std::string place = entry.place;
        if (entry.further > 0)
            place = place.empty() ? Words::tell("and {1} more", {std::to_string(entry.further)})
                                  : Words::tell("{1} and {2} more", {place, std::to_string(entry.further)});
        findings.push_back({file_, place, entry.sentence});
    }
    if (beyond_ > 0)
        findings.push_back({file_, "", Words::tell("{1} further findings are not listed", {std::to_string(beyond_)})});
    return findings;
}

}  // namespace plugside
