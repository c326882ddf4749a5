// Any bytes as a table: it is guessed and read or refused, and what is read is in range; also by a guess that does not fit.
#include <cstdint>
#include <cstdlib>

#include "geo/read/table.h"

namespace {

void demand(bool holds) {
    if (!holds) std::abort();
}

bool on_earth(plugside::GeographicPoint place) {
    return place.longitude_degrees >= -180.0 && place.longitude_degrees < 180.0 && place.latitude_degrees >= -90.0 &&
           place.latitude_degrees <= 90.0;
}

void read(std::string_view bytes, const plugside::TableGuess& guess) {
    const auto file = plugside::read_table_text(bytes, "marks.csv", guess);
    if (!file) {
        demand(!file.error().found.empty() && file.error().file == "marks.csv");
        demand(plugside::sentence(file.error()).find('\n') == std::string::npos);
        return;
    }
    for (const auto& walk : file->walks)
        for (const auto& mark : walk.marks) {
            demand(on_earth(mark.at) && mark.mound.position_sd.value() > 0.0);
            demand(!mark.fan_degrees || (*mark.fan_degrees >= 0.0 && *mark.fan_degrees < 360.0));
        }
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view bytes(reinterpret_cast<const char*>(data), size);
    static_cast<void>(plugside::is_text(bytes));
    const auto guess = plugside::guess_table_text(bytes, "marks.csv");
    if (!guess) {
        demand(!guess.error().found.empty());
        return 0;
    }
    read(bytes, *guess);
    const auto shown = plugside::preview_table_text(bytes, "marks.csv", *guess, 5);
    demand(!shown || shown->rows.size() <= 5);
    plugside::TableGuess other = *guess;
    other.header_row = !other.header_row;
    other.packed_minutes = !other.packed_minutes;
    other.times.order = plugside::DateOrder::month_first;
    for (std::size_t i = 0; i < other.roles.size(); ++i)
        other.roles[i] = static_cast<plugside::ColumnRole>((static_cast<std::size_t>(other.roles[i]) + i + 1) % 17);
    other.reference_system = "EPSG:32610";
    read(bytes, other);
    return 0;
}
