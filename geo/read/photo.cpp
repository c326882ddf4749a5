#include "geo/read/photo.h"

#include <gdal_priv.h>

#include <array>
#include <cmath>
#include <vector>

#include "core/words/words.h"
#include "geo/frame/vector_library.h"
#include "geo/read/coordinate_place.h"
#include "geo/read/gpx_marks.h"
#include "geo/read/numbers.h"
#include "geo/read/row_marks.h"

namespace plugside {

namespace {

// "(38) (15) (12.34)": the numbers in brackets; nothing where one is none.
std::optional<std::vector<double>> numbers_in(std::string_view text) {
    std::vector<double> numbers;
    for (text = trimmed(text); !text.empty(); text = trimmed(text)) {
        const auto close = text.find(')');
        if (text.front() != '(' || close == std::string_view::npos || numbers.size() == 3) return std::nullopt;
        const auto number = parse_number(text.substr(1, close - 1));
        if (!number) return std::nullopt;
        numbers.push_back(*number);
        text.remove_prefix(close + 1);
    }
    if (numbers.empty()) return std::nullopt;
    return numbers;
}

class PhotographReader {
public:
    PhotographReader(const PictureFacts& facts, const std::filesystem::path& file)
        : facts_(facts), file_(file), findings_(file.filename().string()) {}

    tl::expected<GeographicFile, Refusal> read() {
        GeographicFile result;
        result.file = file_.string();
        GeographicWalk walk{photographs_source, {}, {}};
        if (fact("GPSLatitude").empty() && fact("GPSLongitude").empty()) {
            findings_.add("", Words::later("the photograph does not say where it was taken; it is not used"));
        } else {
            auto mark = this->mark();
            if (!mark) return tl::unexpected(mark.error());
            walk.marks.push_back(std::move(*mark));
        }
        result.walks.push_back(std::move(walk));
        result.findings = findings_.listed();
        return result;
    }

private:
    std::string fact(const char* name) const {
        const auto found = facts_.find(std::string("EXIF_") + name);
        return found == facts_.end() ? std::string() : std::string(trimmed(found->second));
    }

    std::optional<double> number(const char* name) const {
        const auto numbers = numbers_in(fact(name));
        if (!numbers || numbers->size() != 1 || !(numbers->front() >= 0.0)) return std::nullopt;
        return numbers->front();
    }

    tl::expected<double, Refusal> angle(const char* name, const char* ref, const char* positive,
                                        const char* negative) const {
        const std::string text = fact(name);
        const std::string side = fact(ref);
        const auto refuse = [&] {
            return tl::unexpected(Refusal{Refusal::Code::malformed, file_.string(), name,
                                          quoted_for_display(text + (side.empty() ? "" : " " + side)),
                                          Words::tell("degrees, minutes and seconds, {1} or {2}", {positive, negative})});
        };
        const auto numbers = numbers_in(text);
        if (!numbers || (side != positive && side != negative)) return refuse();
        double degrees = 0.0;
        double unit = 1.0;
        for (std::size_t i = 0; i < numbers->size(); ++i, unit *= 60.0) {
            const double part = (*numbers)[i];
            if (!(part >= 0.0) || (i > 0 && part >= 60.0 + 1e-9)) return refuse();
            degrees += part / unit;
        }
        return side == negative ? -degrees : degrees;
    }

    tl::expected<GeographicMark, Refusal> mark() {
        const auto latitude = angle("GPSLatitude", "GPSLatitudeRef", "N", "S");
        if (!latitude) return tl::unexpected(latitude.error());
        const auto longitude = angle("GPSLongitude", "GPSLongitudeRef", "E", "W");
        if (!longitude) return tl::unexpected(longitude.error());
        const auto place = place_on_earth(*longitude, *latitude);
        if (!place)
            return tl::unexpected(
                Refusal{Refusal::Code::out_of_range, file_.string(), Words::later("GPSLatitude and GPSLongitude"),
                        Words::tell("a place at {1}, {2}", {std::to_string(*longitude), std::to_string(*latitude)}),
                        Words::later("a longitude from -180 to 180 and a latitude from -90 to 90")});
        GpxFile as_file;
        GpxWaypoint& waypoint = as_file.waypoints.emplace_back();
        waypoint.at = place->at;
        waypoint.exchanged = place->exchanged;
        waypoint.called = Words::tell("the photograph");
        waypoint.time = time();
        waypoint.comment = note();
        waypoint.link = file_.filename().string();
        waypoint.hdop = number("GPSDOP");
        waypoint.accuracy_m = number("GPSHPositioningError");
        if (const auto count = parse_number(fact("GPSSatellites")); count && *count >= 0.0 && *count < 1000.0)
            waypoint.satellites = static_cast<int>(*count);
        GeographicMark mark = std::move(marks_of(as_file, file_.string(), findings_).front());
        mark.mound.name = file_.stem().string();
        add_direction(mark.mound);
        return mark;
    }

    // Cameras fill these with their own words, which are nobody's note.
    std::string note() const {
        for (const char* name : {"ImageDescription", "UserComment"}) {
            std::string text = fact(name);
            if (!text.empty() && text.size() < 1000) return text;
        }
        return {};
    }

    std::optional<UtcTime> time() {
        const std::string day = fact("GPSDateStamp");
        const auto clock = numbers_in(fact("GPSTimeStamp"));
        if (clock && clock->size() == 3 && (*clock)[0] < 24.0 && (*clock)[1] < 60.0 && (*clock)[2] < 61.0 &&
            (*clock)[0] >= 0.0 && (*clock)[1] >= 0.0 && (*clock)[2] >= 0.0)
            if (const auto midnight = parse_utc_time(with_hyphens(day) + "T00:00:00Z"))
                return *midnight + std::chrono::milliseconds(
                                       std::llround(((*clock)[0] * 3600.0 + (*clock)[1] * 60.0 + (*clock)[2]) * 1000.0));
        std::string taken = fact("DateTimeOriginal");
        const std::string offset = fact("OffsetTimeOriginal");
        if (taken.empty()) return std::nullopt;
        if (offset.empty()) {
            findings_.add("", Words::later("the photograph's clock names no zone; its time is not used"));
            return std::nullopt;
        }
        if (const auto blank = taken.find(' '); blank != std::string::npos) taken[blank] = 'T';
        const auto time = parse_utc_time(with_hyphens(taken.substr(0, 10)) +
                                         taken.substr(std::min<std::size_t>(10, taken.size())) + offset);
        if (!time)
            findings_.add("",
                          Words::tell("the photograph's time {1} was not understood", {quoted_for_display(taken + offset)}));
        return time;
    }

    // EXIF parts days with colons.
    static std::string with_hyphens(std::string day) {
        for (char& c : day)
            if (c == ':') c = '-';
        return day;
    }

    void add_direction(Mound& mound) {
        const auto direction = number("GPSImgDirection");
        if (!direction || *direction > 360.0) return;
        const std::string reference = fact("GPSImgDirectionRef");
        std::string& note = mound.note;
        note.append(note.empty() ? "" : "; ").append("photograph looks ");
        note += std::to_string(std::lround(*direction) % 360) + " degrees";
        if (reference == "M") {
            note += " magnetic";
            findings_.add(
                "", Words::later("the photograph's direction is from magnetic north; it is kept in the note as it is"));
        } else if (reference != "T") {
            findings_.add("", Words::later("the photograph does not say from which north its direction is"));
        }
    }

    const PictureFacts& facts_;
    const std::filesystem::path& file_;
    FindingList findings_;
};

}  // namespace

std::optional<PictureFacts> picture_facts(const std::string& library_name) {
    prepare_vector_library();
    const LibraryMessages quiet;
    const char* const drivers[] = {"JPEG", nullptr};
    auto* picture = GDALDataset::Open(library_name.c_str(), GDAL_OF_RASTER | GDAL_OF_READONLY, drivers, nullptr, nullptr);
    if (picture == nullptr) return std::nullopt;
    PictureFacts facts;
    for (char** entry = picture->GetMetadata(); entry != nullptr && *entry != nullptr; ++entry) {
        const std::string_view text = *entry;
        const auto equals = text.find('=');
        if (equals != std::string_view::npos) facts.emplace(text.substr(0, equals), text.substr(equals + 1));
    }
    GDALClose(picture);
    return facts;
}

tl::expected<GeographicFile, Refusal> photograph_from(const PictureFacts& facts, const std::filesystem::path& file) {
    return PhotographReader(facts, file).read();
}

tl::expected<GeographicFile, Refusal> read_photograph(const std::filesystem::path& file) {
    const auto facts = picture_facts(std::filesystem::absolute(file).lexically_normal().string());
    if (!facts)
        return tl::unexpected(Refusal{Refusal::Code::malformed, file.string(), "",
                                      Words::later("a picture that cannot be read"), Words::later("a JPEG photograph")});
    return photograph_from(*facts, file);
}

}  // namespace plugside
