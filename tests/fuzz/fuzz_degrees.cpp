// Any bytes as an angle and as a time: what is read is finite and in range, and a decimal angle is what its number is.
#include <cmath>
#include <cstdint>
#include <cstdlib>

#include "geo/read/degrees_text.h"
#include "geo/read/numbers.h"
#include "geo/read/row_marks.h"

namespace {

void demand(bool holds) {
    if (!holds) std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    const std::string_view text(reinterpret_cast<const char*>(data), size);
    for (const char decimal : {'.', ','})
        if (const auto angle = plugside::parse_degrees(text, decimal)) demand(std::abs(angle->degrees) <= 360.0);
    if (const auto number = plugside::parse_number(text)) {
        if (const auto angle = plugside::parse_degrees(text)) demand(angle->degrees == *number);
        if (const auto unpacked = plugside::unpacked_minutes(*number)) demand(std::abs(*unpacked) <= 361.0);
    }
    for (const auto order :
         {plugside::DateOrder::year_first, plugside::DateOrder::day_first, plugside::DateOrder::month_first})
        static_cast<void>(plugside::parse_time(text, {order, 60}));
    static_cast<void>(plugside::role_named(text));
    return 0;
}
