#include "app/reading/system_matches.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

constexpr std::size_t most_listed = 60;
constexpr std::size_t most_placed = 24;

int utm_zone(double longitude) { return std::clamp(static_cast<int>(std::floor((longitude + 180.0) / 6.0)) + 1, 1, 60); }

bool could_be_degrees(const std::vector<std::array<double, 2>>& places) {
    return !places.empty() && std::all_of(places.begin(), places.end(), [](const auto& place) {
        return std::abs(place[0]) <= 180.0 && std::abs(place[1]) <= 90.0;
    });
}

std::vector<ReferenceSystem> proposed(const SystemSearch& search) {
    if (could_be_degrees(search.places)) return reference_systems("EPSG:4326", 1);
    std::vector<ReferenceSystem> systems;
    if (search.others.empty()) return systems;
    const GeographicPoint there = search.others.front().at;
    for (const int step : {0, -1, 1}) {
        const int zone = (utm_zone(there.longitude_degrees) + step + 59) % 60 + 1;
        const std::string name = "UTM zone " + std::to_string(zone) + (there.latitude_degrees < 0.0 ? "S" : "N");
        for (const ReferenceSystem& system : reference_systems(name, most_placed))
            // "zone 1N" is also found in "zone 11N"
            if (system.name.ends_with(name)) systems.push_back(system);
    }
    return systems;
}

bool of_receivers(const SystemMatch& match) { return match.system.name.rfind("WGS 84", 0) == 0; }

}  // namespace

std::optional<GeographicPoint> middle_in(const std::string& code, const std::vector<std::array<double, 2>>& places) {
    const auto way = ToGeographic::from(code);
    if (!way || places.empty()) return std::nullopt;
    std::array<double, 2> sum{};
    for (const auto& place : places) {
        sum[0] += place[0];
        sum[1] += place[1];
    }
    const auto count = static_cast<double>(places.size());
    return way->place(sum[0] / count, sum[1] / count);
}

std::vector<SystemMatch> match_systems(const SystemSearch& search, const Progress& progress) {
    const bool proposing = search.words.find_first_not_of(" \t") == std::string::npos;
    std::vector<SystemMatch> matches;
    for (ReferenceSystem& system : proposing ? proposed(search) : reference_systems(search.words, most_listed))
        matches.push_back({std::move(system), false, std::nullopt, std::nullopt});
    if (proposing) std::stable_partition(matches.begin(), matches.end(), of_receivers);
    for (std::size_t i = 0; i < std::min(matches.size(), most_placed) && !progress.stopped(); ++i) {
        matches[i].placed = true;
        matches[i].at = middle_in(matches[i].system.code, search.places);
        if (matches[i].at) matches[i].nearest = nearest_of(search.others, *matches[i].at);
    }
    const auto near = [](const SystemMatch& match) { return match.nearest && in_reach(match.nearest->second); };
    if (proposing && !search.others.empty() && !could_be_degrees(search.places))
        std::erase_if(matches, [&](const SystemMatch& match) { return !near(match); });
    const auto first_far = std::stable_partition(matches.begin(), matches.end(), near);
    std::stable_partition(matches.begin(), first_far, of_receivers);
    return matches;
}

}  // namespace plugside
