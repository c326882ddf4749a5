#include "geo/read/coordinate_faults.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <filesystem>
#include <numbers>
#include <optional>

#include "core/words/words.h"
#include "geo/frame/transverse_mercator.h"

namespace plugside {

namespace {

constexpr double metres_a_degree = 111'320.0;  // of latitude, roughly: only tells near from far
constexpr double near_m = 500.0;
constexpr double scattered_m = 10'000.0;
constexpr double least_single_m = 3'000.0;
constexpr std::array<CoordinateChange, 6> all_changes{
    CoordinateChange::exchange,  CoordinateChange::turn_longitude,    CoordinateChange::turn_latitude,
    CoordinateChange::turn_both, CoordinateChange::exchange_and_turn, CoordinateChange::degrees_and_minutes};

double fraction_of(double degrees) { return std::abs(degrees) - std::floor(std::abs(degrees)); }

// Minutes of 60 or more cannot be; a hair is left for rounding to decimals.
bool could_be_minutes(GeographicPoint place) {
    return fraction_of(place.longitude_degrees) < 0.6 && fraction_of(place.latitude_degrees) < 0.6;
}

double from_minutes(double degrees) {
    const double whole = std::floor(std::abs(degrees));
    return std::copysign(whole + fraction_of(degrees) / 0.6, degrees);
}

// A box in degrees, its longitudes unwrapped about one of its own.
struct Box {
    double west = 0.0, south = 0.0, east = 0.0, north = 0.0;

    GeographicPoint middle() const { return {(west + east) / 2.0, (south + north) / 2.0}; }
    double metres_east() const { return metres_a_degree * std::cos(middle().latitude_degrees * std::numbers::pi / 180.0); }
    double extent_m() const { return std::hypot((east - west) * metres_east(), (north - south) * metres_a_degree); }
    double gap_m(const Box& other) const {
        const double shift = unwrapped_longitude(other.west, west) - other.west;
        const double across = std::max({0.0, other.west + shift - east, west - other.east - shift});
        const double up = std::max({0.0, other.south - north, south - other.north});
        return std::hypot(across * metres_east(), up * metres_a_degree);
    }
    double gap_m(GeographicPoint place) const {
        return gap_m(Box{place.longitude_degrees, place.latitude_degrees, place.longitude_degrees, place.latitude_degrees});
    }
};

// The box from the quantile `low` to the quantile 1 - `low` in each direction.
Box box_of(const std::vector<GeographicPoint>& places, double low) {
    std::vector<double> east;
    std::vector<double> north;
    for (const GeographicPoint place : places) {
        east.push_back(unwrapped_longitude(place.longitude_degrees, places.front().longitude_degrees));
        north.push_back(place.latitude_degrees);
    }
    const auto left_out = static_cast<std::size_t>(std::floor(low * static_cast<double>(places.size() - 1) + 0.5));
    const auto ordered = [](std::vector<double>& values, std::size_t index) {
        const auto place = values.begin() + static_cast<std::ptrdiff_t>(index);
        std::nth_element(values.begin(), place, values.end());
        return *place;
    };
    const std::size_t last = places.size() - 1 - left_out;
    return {ordered(east, left_out), ordered(north, left_out), ordered(east, last), ordered(north, last)};
}

// One box about the middle half and as much again on every side: a quarter of wrong marks does not stretch it.
Box sturdy_box(const std::vector<GeographicPoint>& places) {
    const Box whole = box_of(places, 0.0);
    const Box half = box_of(places, 0.25);
    const double across = half.east - half.west;
    const double up = half.north - half.south;
    return {std::max(whole.west, half.west - across), std::max(whole.south, half.south - up),
            std::min(whole.east, half.east + across), std::min(whole.north, half.north + up)};
}

bool gophers_live_at(GeographicPoint place) {
    return place.latitude_degrees >= 5.0 && place.latitude_degrees <= 60.0 && place.longitude_degrees >= -141.0 &&
           place.longitude_degrees <= -70.0;
}

enum class Of { marks, track, ground, known };

struct Body {
    Of of = Of::marks;
    std::size_t file = 0;
    std::size_t walk = 0;
    std::vector<GeographicPoint> places;
    Box box;
    std::size_t cluster = 0;
};

class FaultFinder {
public:
    FaultFinder(std::vector<GeographicFile>& files, const KnownPlaces& known) : files_(files) {
        for (std::size_t file = 0; file < files.size(); ++file) add_bodies_of(file);
        add({Of::known, 0, 0, known.places, {}, 0});
    }

    std::vector<CoordinateFault> find() {
        mend_exchanged();
        mend_scattered();
        for (Body& body : bodies_) body.box = sturdy_box(body.places);
        cluster();
        mend_whole();
        mend_field_itself();
        mend_lone();
        mend_singles();
        return std::move(faults_);
    }

private:
    void add(Body body) {
        if (!body.places.empty()) bodies_.push_back(std::move(body));
    }

    void add_bodies_of(std::size_t number) {
        const GeographicFile& file = files_[number];
        for (std::size_t walk = 0; walk < file.walks.size(); ++walk) {
            Body marks{Of::marks, number, walk, {}, {}, 0};
            for (const GeographicMark& mark : file.walks[walk].marks) marks.places.push_back(mark.at);
            add(std::move(marks));
            Body track{Of::track, number, walk, {}, {}, 0};
            for (const auto& segment : file.walks[walk].segments)
                for (const GeographicTrackPoint& point : segment) track.places.push_back(point.at);
            add(std::move(track));
        }
        Body ground{Of::ground, number, 0, {}, {}, 0};
        const auto take = [&](const GeographicLine& line) {
            ground.places.insert(ground.places.end(), line.begin(), line.end());
        };
        for (const GeographicPolygon& part : file.ground.boundary)
            for (const GeographicLine& ring : part.rings) take(ring);
        for (const GeographicBarrier& barrier : file.ground.barriers) take(barrier.line);
        for (const GeographicKeepClear& area : file.ground.keep_clear)
            for (const GeographicLine& ring : area.area.rings) take(ring);
        add(std::move(ground));
    }

    std::vector<GeographicMark>& marks_of(const Body& body) { return files_[body.file].walks[body.walk].marks; }

    std::size_t add_fault(CoordinateChange change, const Body& body, bool whole, GeographicPoint written,
                          std::string evidence, double sure) {
        faults_.push_back({change, std::filesystem::path(files_[body.file].file).filename().string(), whole, written,
                           std::move(evidence), sure});
        return faults_.size() - 1;
    }

    void put(GeographicMark& mark, GeographicPoint to, std::size_t fault) {
        mark.at = to;
        mark.fault = fault;
        mark.mound.set_aside_because = Words::later("its coordinates look wrong, see the finding");
    }

    void mend_exchanged() {
        for (Body& body : bodies_) {
            if (body.of != Of::marks) continue;
            std::optional<std::size_t> fault;
            std::size_t count = 0;
            for (GeographicMark& mark : marks_of(body)) {
                if (!mark.exchanged) continue;
                ++count;
                if (!fault)
                    fault = add_fault(CoordinateChange::exchange, body, false,
                                      {mark.at.latitude_degrees, mark.at.longitude_degrees},
                                      Words::tell("No place on the earth has a latitude beyond 90 degrees."), 0.99);
                put(mark, mark.at, *fault);
            }
            if (fault) faults_[*fault].whole_file = count == marks_of(body).size() && count > 1;
        }
    }

    // A field on the edge of a minute: 38 59.99 and 39 00.01 are neighbours, 38.5999 and 39.0001 are not.
    void mend_scattered() {
        for (Body& body : bodies_) {
            if (body.of != Of::marks || body.places.size() < 3) continue;
            if (!std::all_of(body.places.begin(), body.places.end(), could_be_minutes)) continue;
            const Box box = box_of(body.places, 0.02);
            if (box.extent_m() < scattered_m) continue;
            std::vector<GeographicPoint> mended;
            for (const GeographicPoint place : body.places)
                mended.push_back(*changed(place, CoordinateChange::degrees_and_minutes));
            if (box_of(mended, 0.02).extent_m() * 4.0 > box.extent_m()) continue;
            change_body(
                body, CoordinateChange::degrees_and_minutes,
                Words::tell("Read as degrees and minutes the marks of the file, now {1} from end to end, come together, "
                            "and no minute is 60 or more.",
                            {kilometres(box.extent_m())}),
                0.97);
        }
    }

    void cluster() {
        for (std::size_t i = 0; i < bodies_.size(); ++i) bodies_[i].cluster = i;
        for (bool joined = true; joined;) {
            joined = false;
            for (const Body& a : bodies_)
                for (Body& b : bodies_)
                    if (a.cluster < b.cluster && a.box.gap_m(b.box) <= near_m) {
                        const std::size_t from = b.cluster;
                        for (Body& body : bodies_)
                            if (body.cluster == from) body.cluster = a.cluster;
                        joined = true;
                    }
        }
        field_ = best_cluster();
    }

    // Known places and ground first, then where the animal lives, then a track, then most marks, then the first.
    std::optional<std::size_t> best_cluster() const {
        std::optional<std::size_t> best;
        std::array<std::size_t, 4> best_score{};
        for (const Body& candidate : bodies_) {
            std::array<std::size_t, 4> score{};
            for (const Body& body : bodies_) {
                if (body.cluster != candidate.cluster) continue;
                if (body.of == Of::known) score[0] = 2;
                if (body.of == Of::ground) score[0] = std::max<std::size_t>(score[0], 1);
                if (gophers_live_at(body.box.middle())) score[1] = 1;
                if (body.of == Of::track) score[2] = 1;
                if (body.of == Of::marks) score[3] += body.places.size();
            }
            if (best && score <= best_score) continue;
            best = candidate.cluster;
            best_score = score;
        }
        return best;
    }

    static std::optional<std::vector<GeographicPoint>> all_changed(const Body& body, CoordinateChange change) {
        std::vector<GeographicPoint> places;
        places.reserve(body.places.size());
        std::size_t lost = 0;
        for (const GeographicPoint place : body.places) {
            const auto to = changed(place, change);
            if (!to) {
                ++lost;
                continue;
            }
            places.push_back(*to);
        }
        if (places.empty() || lost > 0) return std::nullopt;
        if (change == CoordinateChange::degrees_and_minutes &&
            !std::all_of(body.places.begin(), body.places.end(), could_be_minutes))
            return std::nullopt;
        return places;
    }

    double gap_to_field(const Box& box) const { return gap_to(*field_, box); }
    double gap_to(std::size_t cluster, const Box& box) const {
        double least = 1e9;
        for (const Body& body : bodies_)
            if (body.cluster == cluster) least = std::min(least, body.box.gap_m(box));
        return least;
    }

    void mend_whole() {
        if (!field_) return;
        for (Body& body : bodies_) {
            if (body.of != Of::marks || body.cluster == *field_ || body.places.empty()) continue;
            std::optional<CoordinateChange> best;
            double least = near_m;
            for (const CoordinateChange change : all_changes) {
                const auto places = all_changed(body, change);
                if (!places) continue;
                const double gap = gap_to_field(sturdy_box(*places));
                if (gap > least || (best && gap == least)) continue;
                least = gap;
                best = change;
            }
            if (!best) continue;
            change_body(
                body, *best,
                Words::tell("As they stand the marks lie {1} from everything else that is known of the field; changed "
                            "so, they lie on it.",
                            {kilometres(gap_to_field(body.box))}),
                body.places.size() > 1 ? 0.97 : 0.9);
            body.cluster = *field_;
        }
    }

    // Two bodies apart, neither known to be right: the larger may be the one that was read wrong. Exchanges and signs say
    // nothing here, as they lead there and back.
    void mend_field_itself() {
        if (!field_) return;
        const bool anchored = std::any_of(bodies_.begin(), bodies_.end(), [&](const Body& body) {
            return body.cluster == *field_ && (body.of == Of::known || body.of == Of::ground || body.of == Of::track);
        });
        if (anchored) return;
        for (Body& body : bodies_) {
            if (body.of != Of::marks || body.cluster != *field_) continue;
            const auto places = all_changed(body, CoordinateChange::degrees_and_minutes);
            if (!places) continue;
            const Box box = sturdy_box(*places);
            const auto other = std::find_if(bodies_.begin(), bodies_.end(), [&](const Body& candidate) {
                return candidate.cluster != *field_ && candidate.box.gap_m(box) <= near_m;
            });
            if (other == bodies_.end()) continue;
            const std::size_t cluster = other->cluster;
            change_body(
                body, CoordinateChange::degrees_and_minutes,
                Words::tell("As they stand the marks lie {1} from what else was read; changed so, they lie on it, and "
                            "no minute is 60 or more.",
                            {kilometres(gap_to(cluster, body.box))}),
                0.95);
            body.cluster = cluster;
            field_ = cluster;
            return;
        }
    }

    void mend_lone() {
        if (!field_) return;
        for (Body& body : bodies_) {
            if (body.of != Of::marks || body.cluster != *field_ || gophers_live_at(body.box.middle())) continue;
            const bool alone = std::none_of(bodies_.begin(), bodies_.end(), [&](const Body& other) {
                const bool same_walk = other.of == Of::track && other.file == body.file && other.walk == body.walk;
                return &other != &body && other.cluster == body.cluster && !same_walk;
            });
            if (!alone) continue;
            std::optional<CoordinateChange> only;
            bool several = false;
            for (const CoordinateChange change : all_changes) {
                const auto places = all_changed(body, change);
                if (!places || !gophers_live_at(sturdy_box(*places).middle())) continue;
                several = several || only;
                only = change;
            }
            if (!only || several) continue;
            change_body(body, *only,
                        Words::tell("Where the marks stand no pocket gophers live; changed so, they lie in North or Central "
                                    "America, where they do."),
                        0.8);
        }
    }

    // All marks of a walk, and its track where that lies beside them.
    void change_body(Body& body, CoordinateChange change, const std::string& evidence, double sure) {
        std::size_t fault = 0;
        bool first = true;
        for (GeographicMark& mark : marks_of(body)) {
            const auto to = changed(mark.at, change);
            if (!to) continue;
            if (mark.fault) {  // exchanged already, and turned besides
                if (change != CoordinateChange::turn_longitude) continue;
                faults_[*mark.fault].change = CoordinateChange::exchange_and_turn;
                faults_[*mark.fault].evidence += " " + evidence;
                mark.at = *to;
                continue;
            }
            if (first) fault = add_fault(change, body, true, mark.at, evidence, sure);
            first = false;
            put(mark, *to, fault);
        }
        const Box before = sturdy_box(body.places);
        for (GeographicPoint& place : body.places) place = changed(place, change).value_or(place);
        body.box = sturdy_box(body.places);
        for (Body& track : bodies_) {
            if (track.of != Of::track || track.file != body.file || track.walk != body.walk) continue;
            if (sturdy_box(track.places).gap_m(before) > near_m || !all_changed(track, change)) continue;
            for (auto& segment : files_[track.file].walks[track.walk].segments)
                for (GeographicTrackPoint& point : segment) point.at = changed(point.at, change).value_or(point.at);
            for (GeographicPoint& place : track.places) place = changed(place, change).value_or(place);
            track.box = sturdy_box(track.places);
            track.cluster = body.cluster;
            if (!first) faults_[fault].evidence += " " + Words::tell("Its track is drawn with the same change.");
        }
    }

    void mend_singles() {
        if (!field_) return;
        Box box;
        bool any = false;
        for (const Body& body : bodies_) {
            if (body.cluster != *field_) continue;
            if (!any) box = body.box;
            any = true;
            const double shift = unwrapped_longitude(body.box.west, box.west) - body.box.west;
            box = {std::min(box.west, body.box.west + shift), std::min(box.south, body.box.south),
                   std::max(box.east, body.box.east + shift), std::max(box.north, body.box.north)};
        }
        const double far = std::max(least_single_m, 3.0 * box.extent_m());
        for (const Body& body : bodies_) {
            if (body.of != Of::marks || body.cluster != *field_) continue;
            for (GeographicMark& mark : marks_of(body)) mend_single(body, mark, box, far);
        }
    }

    void mend_single(const Body& body, GeographicMark& mark, const Box& field, double far) {
        if (mark.fault || field.gap_m(mark.at) < far) return;
        for (const CoordinateChange change : all_changes) {
            if (change == CoordinateChange::degrees_and_minutes && !could_be_minutes(mark.at)) continue;
            const auto to = changed(mark.at, change);
            if (!to || field.gap_m(*to) > near_m) continue;
            const std::size_t fault =
                add_fault(change, body, false, mark.at,
                          Words::tell("As it stands the mark lies {1} from the others; changed so, it lies "
                                      "among them.",
                                      {kilometres(field.gap_m(mark.at))}),
                          0.95);
            return put(mark, *to, fault);
        }
    }

    static std::string kilometres(double metres) {
        if (metres < 10'000.0)
            return Words::decimal(std::to_string(std::lround(metres / 100.0) / 10) + "." +
                                  std::to_string(std::lround(metres / 100.0) % 10)) +
                   " km";
        return std::to_string(std::lround(metres / 1000.0)) + " km";
    }

    std::vector<GeographicFile>& files_;
    std::vector<Body> bodies_;
    std::vector<CoordinateFault> faults_;
    std::optional<std::size_t> field_;
};

}  // namespace

std::optional<GeographicPoint> changed(GeographicPoint place, CoordinateChange change) {
    double longitude = place.longitude_degrees;
    double latitude = place.latitude_degrees;
    switch (change) {
        case CoordinateChange::exchange: std::swap(longitude, latitude); break;
        case CoordinateChange::turn_longitude: longitude = -longitude; break;
        case CoordinateChange::turn_latitude: latitude = -latitude; break;
        case CoordinateChange::turn_both:
            longitude = -longitude;
            latitude = -latitude;
            break;
        case CoordinateChange::exchange_and_turn:
            std::swap(longitude, latitude);
            longitude = -longitude;
            break;
        case CoordinateChange::degrees_and_minutes:
            longitude = from_minutes(longitude);
            latitude = from_minutes(latitude);
            break;
    }
    if (std::abs(latitude) > 90.0 || std::abs(longitude) > 180.0) return std::nullopt;
    return GeographicPoint{normalised_longitude(longitude), latitude};
}

std::vector<CoordinateFault> mend_coordinates(std::vector<GeographicFile>& files, const KnownPlaces& known) {
    return FaultFinder(files, known).find();
}

}  // namespace plugside
