#include "app/commands/known_facts.h"

#include <algorithm>

namespace plugside {

namespace {

bool speaks_of_systems(FactKind kind) { return kind == FactKind::same_system || kind == FactKind::different_systems; }

std::vector<std::string> sorted(std::vector<std::string> names) {
    std::sort(names.begin(), names.end());
    return names;
}

bool replaces(const KnownFact& later, const KnownFact& earlier) {
    const bool same_kind = later.kind == earlier.kind || (speaks_of_systems(later.kind) && speaks_of_systems(earlier.kind));
    return same_kind && sorted(later.marks) == sorted(earlier.marks) && later.line == earlier.line;
}

}  // namespace

std::vector<KnownFact> said(const std::vector<KnownFact>& before, KnownFact fact) {
    std::vector<KnownFact> after;
    std::copy_if(before.begin(), before.end(), std::back_inserter(after),
                 [&](const KnownFact& one) { return !replaces(fact, one); });
    after.push_back(std::move(fact));
    return after;
}

std::vector<KnownFact> lifted(const std::vector<KnownFact>& before, std::size_t place) {
    std::vector<KnownFact> after = before;
    after.erase(after.begin() + static_cast<std::ptrdiff_t>(place));
    return after;
}

}  // namespace plugside
