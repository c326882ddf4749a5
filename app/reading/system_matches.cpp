#include "app/reading/system_matches.h"

#include <algorithm>
#include <cctype>
#include <cmath>
#include <sstream>

namespace plugside {

namespace {

constexpr std::size_t most_found = 1000;
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

bool letter_or_digit(char c) { return std::isalnum(static_cast<unsigned char>(c)) != 0; }
bool digit(char c) { return c >= '0' && c <= '9'; }

// "14" is a word of "UTM zone 14N", not of "UTM zone 114" nor of a code that happens to hold it.
bool is_word_of(const std::string& name, const std::string& word) {
    const auto same = [](char a, char b) {
        return std::tolower(static_cast<unsigned char>(a)) == std::tolower(static_cast<unsigned char>(b));
    };
    auto from = name.begin();
    while (true) {
        const auto found = std::search(from, name.end(), word.begin(), word.end(), same);
        if (found == name.end()) return false;
        const auto end = found + static_cast<std::ptrdiff_t>(word.size());
        const bool begins = found == name.begin() || !letter_or_digit(*(found - 1));
        const bool goes_on = end != name.end() && digit(word.back()) && digit(*end);
        if (begins && !goes_on) return true;
        from = found + 1;
    }
}

bool says_all_words(const std::string& name, const std::string& search) {
    std::istringstream words(search);
    for (std::string word; words >> word;)
        if (!is_word_of(name, word)) return false;
    return true;
}

// What was meant comes before what happens to hold the letters; a code that was typed whole is first already.
void put_meant_first(std::vector<SystemMatch>& matches, const std::string& search) {
    const bool code =
        !matches.empty() && (matches.front().system.code == search || matches.front().system.code == "EPSG:" + search);
    const auto rest = std::stable_partition(matches.begin() + (code ? 1 : 0), matches.end(), [&](const SystemMatch& match) {
        return says_all_words(match.system.name, search);
    });
    std::stable_partition(matches.begin() + (code ? 1 : 0), rest, of_receivers);
}

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
    for (ReferenceSystem& system : proposing ? proposed(search) : reference_systems(search.words, most_found))
        matches.push_back({std::move(system), false, std::nullopt, std::nullopt});
    if (proposing)
        std::stable_partition(matches.begin(), matches.end(), of_receivers);
    else
        put_meant_first(matches, search.words);
    if (matches.size() > most_listed) matches.resize(most_listed);
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
