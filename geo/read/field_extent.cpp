#include "geo/read/field_extent.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <numbers>
#include <optional>

#include "core/words/words.h"
#include "geo/frame/transverse_mercator.h"

namespace plugside {

namespace {

constexpr double reach_m = 50'000.0;
constexpr double furthest_latitude = 89.0;
constexpr double mean_earth_radius_m = 6'371'008.8;  // good to half a percent: enough to tell 50 km from a wrong place

double radians(double degrees) { return degrees * std::numbers::pi / 180.0; }

// On a sphere, by the haversine formula.
double rough_distance_m(GeographicPoint a, GeographicPoint b) {
    const double half_latitude = std::sin(radians(b.latitude_degrees - a.latitude_degrees) / 2.0);
    const double half_longitude = std::sin(radians(b.longitude_degrees - a.longitude_degrees) / 2.0);
    const double h = half_latitude * half_latitude + std::cos(radians(a.latitude_degrees)) *
                                                         std::cos(radians(b.latitude_degrees)) * half_longitude *
                                                         half_longitude;
    return 2.0 * mean_earth_radius_m * std::asin(std::sqrt(std::min(1.0, h)));
}

std::vector<GeographicPoint> marks_in(const std::vector<GeographicFile>& files) {
    std::vector<GeographicPoint> places;
    for (const GeographicFile& file : files)
        for (const GeographicWalk& walk : file.walks)
            for (const GeographicMark& mark : walk.marks) places.push_back(mark.at);
    return places;
}

std::vector<GeographicPoint> track_points_in(const std::vector<GeographicFile>& files) {
    std::vector<GeographicPoint> places;
    for (const GeographicFile& file : files)
        for (const GeographicWalk& walk : file.walks)
            for (const auto& segment : walk.segments)
                for (const GeographicTrackPoint& point : segment) places.push_back(point.at);
    return places;
}

std::vector<GeographicPoint> ground_vertices_in(const std::vector<GeographicFile>& files) {
    std::vector<GeographicPoint> places;
    const auto add = [&](const GeographicLine& line) { places.insert(places.end(), line.begin(), line.end()); };
    for (const GeographicFile& file : files) {
        for (const GeographicPolygon& part : file.ground.boundary)
            for (const GeographicLine& ring : part.rings) add(ring);
        for (const GeographicBarrier& barrier : file.ground.barriers) add(barrier.line);
        for (const GeographicKeepClear& area : file.ground.keep_clear)
            for (const GeographicLine& ring : area.area.rings) add(ring);
    }
    return places;
}

double median(std::vector<double> numbers) {
    const auto middle = numbers.begin() + static_cast<std::ptrdiff_t>(numbers.size() / 2);
    std::nth_element(numbers.begin(), middle, numbers.end());
    return *middle;
}

GeographicPoint middle_of(const std::vector<GeographicPoint>& places) {
    std::vector<double> longitudes;
    std::vector<double> latitudes;
    for (const GeographicPoint place : places) {
        longitudes.push_back(unwrapped_longitude(place.longitude_degrees, places.front().longitude_degrees));
        latitudes.push_back(place.latitude_degrees);
    }
    return {normalised_longitude(median(std::move(longitudes))), median(std::move(latitudes))};
}

bool within_reach(GeographicPoint place, GeographicPoint middle) {
    return std::abs(place.latitude_degrees) <= furthest_latitude && rough_distance_m(place, middle) <= reach_m;
}

std::string shown(GeographicPoint place) {
    return std::to_string(place.latitude_degrees) + ", " + std::to_string(place.longitude_degrees);
}

Refusal too_far(const std::string& file, const std::string& where, GeographicPoint place, GeographicPoint middle) {
    if (std::abs(place.latitude_degrees) > furthest_latitude)
        return {Refusal::Code::out_of_range, file, where,
                Words::tell("latitude {1}", {std::to_string(place.latitude_degrees)}),
                Words::later("a field at least one degree from a pole")};
    const auto kilometres = static_cast<long>(std::lround(rough_distance_m(place, middle) / 1000.0));
    return {Refusal::Code::out_of_range, file, where,
            Words::tell("a place at {1}, {2} km from the middle of the field", {shown(place), std::to_string(kilometres)}),
            Words::tell("one field, within 50 km of its middle at {1}", {shown(middle)})};
}

std::optional<Refusal> refusal_of_marks(const GeographicFile& file, GeographicPoint middle) {
    for (const GeographicWalk& walk : file.walks)
        for (const GeographicMark& mark : walk.marks)
            if (!within_reach(mark.at, middle)) return too_far(mark.file, mark.place, mark.at, middle);
    return std::nullopt;
}

std::optional<Refusal> refusal_of_ground(const GeographicFile& file, GeographicPoint middle) {
    const auto refusal_of_line = [&](const char* where, const GeographicLine& line) -> std::optional<Refusal> {
        for (const GeographicPoint place : line)
            if (!within_reach(place, middle)) return too_far(file.file, where, place, middle);
        return std::nullopt;
    };
    const auto refusal_of_polygon = [&](const char* where, const GeographicPolygon& part) -> std::optional<Refusal> {
        for (const GeographicLine& ring : part.rings)
            if (auto refusal = refusal_of_line(where, ring)) return refusal;
        return std::nullopt;
    };
    for (const GeographicPolygon& part : file.ground.boundary)
        if (auto refusal = refusal_of_polygon(Words::later("the field boundary"), part)) return refusal;
    for (const GeographicBarrier& barrier : file.ground.barriers)
        if (auto refusal = refusal_of_line(Words::later("a barrier"), barrier.line)) return refusal;
    for (const GeographicKeepClear& area : file.ground.keep_clear)
        if (auto refusal = refusal_of_polygon(Words::later("a keep-clear area"), area.area)) return refusal;
    for (const GeographicPolygon& part : file.ground.untreated)
        if (auto refusal = refusal_of_polygon(Words::later("an untreated piece"), part)) return refusal;
    for (const auto* gaps : {&file.ground.crossings, &file.ground.gates})
        for (const GeographicGap& gap : *gaps)
            if (auto refusal = refusal_of_line(Words::later("a crossing or gate"), {gap.at})) return refusal;
    return std::nullopt;
}

void drop_far_segments(GeographicFile& file, GeographicPoint middle) {
    const std::string name = std::filesystem::path(file.file).filename().string();
    for (GeographicWalk& walk : file.walks) {
        const auto far = std::erase_if(walk.segments, [&](const std::vector<GeographicTrackPoint>& segment) {
            return !std::all_of(segment.begin(), segment.end(),
                                [&](const GeographicTrackPoint& point) { return within_reach(point.at, middle); });
        });
        if (far > 0)
            file.findings.push_back(
                {name, "",
                 Words::tell("{1} stretches of track lead more than 50 km from the field; they are not used",
                             {std::to_string(far)})});
    }
}

}  // namespace

bool is_about(GeographicPoint middle, GeographicPoint place) { return within_reach(place, middle); }

tl::expected<void, Refusal> check_reach(std::vector<GeographicFile>& files, GeographicPoint middle) {
    for (GeographicFile& file : files) {
        if (auto refusal = refusal_of_marks(file, middle)) return tl::unexpected(*refusal);
        if (auto refusal = refusal_of_ground(file, middle)) return tl::unexpected(*refusal);
        drop_far_segments(file, middle);
    }
    return {};
}

tl::expected<LocalFrame, Refusal> frame_of(std::vector<GeographicFile>& files) {
    std::vector<GeographicPoint> places = marks_in(files);
    const bool has_marks = !places.empty();
    if (places.empty()) places = track_points_in(files);
    const bool has_tracks_only = !has_marks && !places.empty();
    if (places.empty()) places = ground_vertices_in(files);
    if (places.empty()) return LocalFrame();
    const GeographicPoint middle = middle_of(places);
    if (auto checked = check_reach(files, middle); !checked) return tl::unexpected(checked.error());
    if (!has_tracks_only) return LocalFrame::around(places);
    places = track_points_in(files);
    return places.empty() ? LocalFrame::centred_on(middle) : LocalFrame::around(places);
}

}  // namespace plugside
