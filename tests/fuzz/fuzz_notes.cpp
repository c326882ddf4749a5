// Any bytes as a note: there is a reading, and it is in range.
#include <cstdint>
#include <cstdlib>

#include "geo/read/notes_grammar.h"
#include "geo/read/numbers.h"

namespace {

void demand(bool holds) {
    if (!holds) std::abort();
}

bool is_bearing(const std::optional<double>& degrees) { return !degrees || (*degrees >= 0.0 && *degrees < 360.0); }

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    const auto note = plugside::read_note(text);
    demand(is_bearing(note.fan_degrees) && is_bearing(note.magnetic_fan_degrees));
    demand(!(note.fan_degrees && note.magnetic_fan_degrees));
    static_cast<void>(plugside::is_time_stamp(text));
    static_cast<void>(plugside::names_a_thing(text));
    static_cast<void>(plugside::parse_number(text));
    // A time that is understood is written so that it is understood again.
    if (const auto time = plugside::parse_utc_time(text)) {
        const std::string written = plugside::format_utc_time(*time);
        if (written.size() <= 24 && written.front() != '-') demand(plugside::parse_utc_time(written) == time);
    }
    return 0;
}
