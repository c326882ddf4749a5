// Any bytes as a GPX file: it is read or refused, and what is read is in range.
#include <cstdint>
#include <cstdlib>

#include "geo/read/gpx.h"
#include "geo/read/gpx_marks.h"

namespace {

void demand(bool holds) {
    if (!holds) std::abort();
}

bool on_earth(plugside::GeographicPoint place) {
    return place.longitude_degrees >= -180.0 && place.longitude_degrees < 180.0 && place.latitude_degrees >= -90.0 &&
           place.latitude_degrees <= 90.0;
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto file = plugside::read_gpx_text(text, "walk.gpx");
    if (!file) {
        demand(!file.error().found.empty() && file.error().file == "walk.gpx");
        demand(plugside::sentence(file.error()).find('\n') == std::string::npos);
        return 0;
    }
    for (const auto& segment : file->segments)
        for (const auto& point : segment) demand(on_earth(point.at));
    plugside::FindingList findings("walk.gpx");
    const auto marks = plugside::marks_of(*file, "walk.gpx", findings);
    demand(marks.size() == file->waypoints.size());
    for (const auto& mark : marks) {
        demand(on_earth(mark.at) && mark.mound.position_sd.value() > 0.0);
        demand(!mark.fan_degrees || (*mark.fan_degrees >= 0.0 && *mark.fan_degrees < 360.0));
    }
    return 0;
}
