#include "core/sets/cautions.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <string_view>

#include "core/geometry/polygon.h"
#include "core/sets/near_set.h"
#include "core/sets/system_reach.h"
#include "core/words/words.h"

namespace plugside {

namespace embedded {
extern const char cautions_en[];
extern const char cautions_es[];
}  // namespace embedded

namespace {

constexpr std::array<const char*, 7> of_every_set{"protected-species", "people-and-animals", "kill-trap-law",
                                                  "label-decides",     "utilities-ask",      "check-daily",
                                                  "tool-gloves"};

CautionWeight weight_from_text(std::string_view text) {
    if (text == "stop") return CautionWeight::stop;
    if (text == "hold_back") return CautionWeight::hold_back;
    assert(text == "mind");
    return CautionWeight::mind;
}

std::array<std::string, 6> columns_of(std::string_view line) {
    std::array<std::string, 6> columns;
    for (std::string& column : columns) {
        const std::size_t end = std::min(line.find('\t'), line.size());
        column = line.substr(0, end);
        line.remove_prefix(std::min(end + 1, line.size()));
    }
    return columns;
}

std::vector<Caution> parsed(std::string_view table) {
    std::vector<Caution> cautions;
    while (!table.empty()) {
        const std::size_t end = std::min(table.find('\n'), table.size());
        const std::string_view line = table.substr(0, end);
        table.remove_prefix(std::min(end + 1, table.size()));
        if (line.empty() || line.front() == '#') continue;
        const auto [id, weight, sentence, reason, source, tag] = columns_of(line);
        cautions.push_back({id, weight_from_text(weight), sentence, reason, source, tag});
    }
    return cautions;
}

// Which caution a thing of this kind asks for when it lies within 100 ft of the system.
std::optional<const char*> near_system_caution(KeepClearKind kind) {
    switch (kind) {
        case KeepClearKind::building: return "building";
        case KeepClearKind::well: return "well";
        case KeepClearKind::play_area: return "play-area";
        case KeepClearKind::utility:
        case KeepClearKind::other: return std::nullopt;
    }
    return std::nullopt;
}

void add_once(std::vector<std::string>& ids, const char* id) {
    if (std::find(ids.begin(), ids.end(), id) == ids.end()) ids.emplace_back(id);
}

std::vector<std::string> decided_by_the_map(const Survey& survey, const Plan& plan, const ProbeSite& probe) {
    std::vector<std::string> ids;
    const SystemReach reach(survey, plan, probe.system);
    for (const KeepClearArea& keep_clear : survey.ground.keep_clear) {
        const Metres from_row = distance_of_row(probe, keep_clear.area);
        if (from_row <= Metres::of(0.0)) {
            add_once(ids, "inside-keep-clear");
        } else if (from_row <= near_a_probe) {
            add_once(ids, "near-keep-clear");
        }
        if (keep_clear.kind == KeepClearKind::utility && from_row <= near_a_probe) add_once(ids, "utility");
        const std::optional<const char*> of_kind = near_system_caution(keep_clear.kind);
        if (of_kind && (from_row <= near_the_system || reach.may_come_within(near_the_system, keep_clear.area)))
            add_once(ids, *of_kind);
    }
    return ids;
}

const char* noted_caution(MentionCategory category) {
    switch (category) {
        case MentionCategory::people: return "noted-people";
        case MentionCategory::pets: return "noted-pets";
        case MentionCategory::stock: return "noted-stock";
        case MentionCategory::wildlife: break;
    }
    return "noted-wildlife";
}

void add_noted(std::vector<std::string>& ids, const Survey& survey, const Plan& plan, const ProbeSite& probe) {
    for (std::size_t i = 0; i < survey.mounds.size(); ++i) {
        const Mound& mound = survey.mounds[i];
        if (!counts_for(mound, i, plan, probe)) continue;
        for (const NoteMention& mention : mound.mentions) add_once(ids, noted_caution(mention.category));
    }
}

}  // namespace

Metres distance_of_row(const ProbeSite& probe, const Polygon& area) {
    Metres least = distance(probe.middle, area);
    for (const LocalPoint rung : probe.rung_places) least = std::min(least, distance(rung, area));
    return least;
}

bool counts_for(const Mound& mound, std::size_t index, const Plan& plan, const ProbeSite& probe) {
    if (mound.mentions.empty()) return false;
    const bool same_system = index < plan.mounds.size() && plan.mounds[index].system == probe.system;
    return same_system || distance_m(mound.plug, probe.middle) <= near_the_system.value();
}

const std::vector<Caution>& all_cautions(const std::string& language) {
    static const std::vector<Caution> english = parsed(embedded::cautions_en);
    static const std::vector<Caution> spanish = parsed(embedded::cautions_es);
    return language == "es" ? spanish : english;
}

const std::vector<Caution>& all_cautions() { return all_cautions(Words::language()); }

bool holds_at_every_set(const std::string& id) {
    return std::find(of_every_set.begin(), of_every_set.end(), id) != of_every_set.end();
}

const Caution* find_caution(const std::string& id) {
    const std::vector<Caution>& all = all_cautions();
    const auto found = std::find_if(all.begin(), all.end(), [&](const Caution& caution) { return caution.id == id; });
    return found == all.end() ? nullptr : &*found;
}

std::vector<std::string> cautions_for(const Survey& survey, const Plan& plan, const ProbeSite& probe) {
    std::vector<std::string> ids = decided_by_the_map(survey, plan, probe);
    add_noted(ids, survey, plan, probe);
    ids.insert(ids.end(), of_every_set.begin(), of_every_set.end());
    std::stable_sort(ids.begin(), ids.end(), [](const std::string& a, const std::string& b) {
        return find_caution(a)->weight < find_caution(b)->weight;
    });
    return ids;
}

}  // namespace plugside
