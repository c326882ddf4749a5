#include "core/survey/finding.h"

#include <algorithm>
#include <array>
#include <utility>

namespace plugside {

namespace {

constexpr std::array<std::pair<FindingKind, const char*>, 12> words{{
    {FindingKind::double_mark, "double mark"},
    {FindingKind::reversed_bearing, "reversed bearing"},
    {FindingKind::other_digger, "other digger"},
    {FindingKind::outside_field, "outside field"},
    {FindingKind::earlier_walk, "earlier walk"},
    {FindingKind::swapped_coordinates, "swapped coordinates"},
    {FindingKind::lost_sign, "lost sign"},
    {FindingKind::degrees_and_minutes, "degrees and minutes"},
    {FindingKind::jump, "jump"},
    {FindingKind::frozen_receiver, "frozen receiver"},
    {FindingKind::far_from_track, "far from track"},
    {FindingKind::compass_offset, "compass offset"},
}};

}  // namespace

std::string to_text(FindingKind kind) {
    return std::find_if(words.begin(), words.end(), [&](const auto& word) { return word.first == kind; })->second;
}

std::optional<FindingKind> finding_kind_from_text(const std::string& text) {
    const auto* found = std::find_if(words.begin(), words.end(), [&](const auto& word) { return text == word.second; });
    if (found == words.end()) return std::nullopt;
    return found->first;
}

std::string finding_id(FindingKind kind, const std::vector<std::string>& marks) {
    std::string id = to_text(kind) + ":";
    for (const std::string& mark : marks) id += (&mark == &marks.front() ? " " : ", ") + mark;
    return id;
}

}  // namespace plugside
