#include "core/survey/walk.h"

namespace plugside {

std::string to_text(North north) {
    if (north == North::true_north) return "true";
    return north == North::magnetic_north ? "magnetic" : "not told";
}

std::optional<North> north_from_text(const std::string& text) {
    for (const North north : {North::not_told, North::true_north, North::magnetic_north})
        if (to_text(north) == text) return north;
    return std::nullopt;
}

}  // namespace plugside
