#include "geo/write/walk_route.h"

#include <algorithm>
#include <cmath>

#include "core/words/words.h"
#include "geo/write/gpx_text.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

std::string point_name(std::size_t number) {
    const std::string digits = std::to_string(number);
    return "P" + std::string(digits.size() < 3 ? 3 - digits.size() : 0, '0') + digits;
}

std::string route_text(const WalkRoute& route, const LocalFrame& frame, std::size_t number, LengthUnits units) {
    using namespace gpx_text;
    std::string text = "  <rte>\n";
    text += element(4, "name", route.name);
    text += element(4, "desc", route_in_words(route, units));
    text += element(4, "number", std::to_string(number));
    std::size_t point = 0;
    for (const LocalPoint p : route.way.vertices) {
        text += "    <rtept" + coordinates(frame.to_geographic(p)) + ">\n";
        text += element(6, "name", point_name(++point));
        text += "    </rtept>\n";
    }
    return text + "  </rte>\n";
}

}  // namespace

std::string route_in_words(const WalkRoute& route, LengthUnits units) {
    const std::string lines = std::to_string(route.lines), length = ground_distance(route.length, units);
    const std::string minutes = std::to_string(std::max(1L, std::lround(route.seconds / 60.0)));
    return route.lines == 1 ? Words::tell("{1} line, {2}, about {3} min at a searching pace", {lines, length, minutes})
                            : Words::tell("{1} lines, {2}, about {3} min at a searching pace", {lines, length, minutes});
}

tl::expected<void, Refusal> write_walk_route(const WalkLines& lines, const LocalFrame& frame, const std::string& title,
                                             const std::filesystem::path& file, LengthUnits units) {
    std::string text = gpx_text::opening(title);
    std::size_t number = 0;
    for (const WalkRoute& route : lines.routes) text += route_text(route, frame, ++number, units);
    return write_text_file(file, text + gpx_text::closing);
}

}  // namespace plugside
