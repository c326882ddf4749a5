#include "geo/store/cells.h"

#include <cmath>
#include <string_view>
#include <type_traits>

#include "core/survey/refusal.h"
#include "core/words/words.h"

namespace plugside {

namespace {

template <typename Kind>
const char* kind_words() {
    if constexpr (std::is_same_v<Kind, std::int64_t>) return Words::later("a whole number");
    if constexpr (std::is_same_v<Kind, double>) return Words::later("a number");
    if constexpr (std::is_same_v<Kind, std::string>) return Words::later("a text");
    return Words::later("a list");
}

const char* words_of(const Cell& cell) {
    constexpr const char* words[] = {Words::later("nothing"), Words::later("a whole number"), Words::later("a number"),
                                     Words::later("a text"), Words::later("bytes")};
    return words[cell.index()];
}

}  // namespace

std::string Cells::quoted(const std::string& text) { return quoted_for_display(text); }

void Cells::blame(const char* name, const std::string& found, const char* expected) {
    if (wrong_.empty())
        wrong_ = Words::tell("column {1}: {2}, where {3} should stand", {name, Words::shown(found), Words::shown(expected)});
}

template <typename Kind>
bool Cells::exchange(const char* name, Cell& cell, bool may_be_empty) {
    if (absent_) cell = {};
    next(name, cell);
    if (!reading()) return false;
    if (std::holds_alternative<Kind>(cell)) return true;
    if (!may_be_empty || !std::holds_alternative<std::monostate>(cell)) blame(name, words_of(cell), kind_words<Kind>());
    return false;
}

void Cells::whole(const char* name, std::int64_t& number, std::int64_t least, std::int64_t most) {
    Cell cell = number;
    if (!exchange<std::int64_t>(name, cell, false)) return;
    const auto read = std::get<std::int64_t>(cell);
    if (read < least || read > most)
        blame(name, std::to_string(read), Words::later("a number in its range"));
    else
        number = read;
}

void Cells::whole(const char* name, int& number, int least, int most) {
    std::int64_t wide = number;
    whole(name, wide, least, most);
    number = static_cast<int>(wide);
}

void Cells::whole(const char* name, std::optional<int>& number) {
    Cell cell;
    if (number) cell = static_cast<std::int64_t>(*number);
    if (takes()) number.reset();
    if (!exchange<std::int64_t>(name, cell, true)) return;
    const auto read = std::get<std::int64_t>(cell);
    if (read < std::numeric_limits<int>::min() || read > std::numeric_limits<int>::max())
        blame(name, std::to_string(read), Words::later("a smaller number"));
    else
        number = static_cast<int>(read);
}

void Cells::whole(const char* name, std::size_t& number) {
    auto wide = static_cast<std::int64_t>(number);
    whole(name, wide, 0, std::numeric_limits<std::int64_t>::max());
    number = static_cast<std::size_t>(wide);
}

void Cells::revision(const char* name, std::uint64_t& number) {
    auto wide = static_cast<std::int64_t>(number);
    whole(name, wide);
    number = static_cast<std::uint64_t>(wide);
}

void Cells::flag(const char* name, bool& flag) {
    std::int64_t wide = flag ? 1 : 0;
    whole(name, wide, 0, 1);
    flag = wide != 0;
}

void Cells::number(const char* name, double& number, double least, double most) {
    Cell cell = number;
    if (!exchange<double>(name, cell, false)) return;
    const double read = std::get<double>(cell);
    if (!std::isfinite(read) || read < least || read > most)
        blame(name, std::to_string(read), Words::later("a number in its range"));
    else
        number = read;
}

void Cells::number(const char* name, std::optional<double>& number) {
    Cell cell;
    if (number) cell = *number;
    if (takes()) number.reset();
    if (!exchange<double>(name, cell, true)) return;
    const double read = std::get<double>(cell);
    if (!std::isfinite(read))
        blame(name, std::to_string(read), Words::later("a finite number"));
    else
        number = read;
}

void Cells::place(const char* east, const char* north, LocalPoint& place) {
    number(east, place.east_m, -furthest_place_m, furthest_place_m);
    number(north, place.north_m, -furthest_place_m, furthest_place_m);
}

void Cells::length(const char* name, Metres& length) {
    double metres = length.value();
    number(name, metres);
    length = Metres::of(metres);
}

void Cells::length_above_0(const char* name, Metres& length) {
    double metres = length.value();
    number(name, metres, std::numeric_limits<double>::denorm_min());
    length = Metres::of(metres);
}

void Cells::length_above_0(const char* name, std::optional<Metres>& length) {
    std::optional<double> metres;
    if (length) metres = length->value();
    number(name, metres);
    if (metres && reading() && *metres <= 0.0) blame(name, std::to_string(*metres), Words::later("a length above 0"));
    length = metres ? std::optional(Metres::of(*metres)) : std::nullopt;
}

void Cells::bearing(const char* name, std::optional<Bearing>& bearing) {
    std::optional<double> degrees;
    if (bearing) degrees = bearing->degrees();
    number(name, degrees);
    if (degrees && reading() && (*degrees < 0.0 || *degrees >= 360.0))
        blame(name, std::to_string(*degrees), Words::later("0 to 360 degrees"));
    bearing = degrees ? std::optional(Bearing::degrees(*degrees)) : std::nullopt;
}

void Cells::chance(const char* name, Probability& chance) {
    double value = chance.value();
    number(name, value, 0.0, 1.0);
    chance = Probability::of(value);
}

void Cells::time(const char* name, std::optional<UtcTime>& time) {
    Cell cell;
    if (time) cell = static_cast<std::int64_t>(time->time_since_epoch().count());
    if (takes()) time.reset();
    if (!exchange<std::int64_t>(name, cell, true)) return;
    const auto read = std::get<std::int64_t>(cell);
    if (is_project_time(read))
        time = UtcTime{std::chrono::milliseconds(read)};
    else
        blame(name, std::to_string(read), Words::later("a time of the years 1 to 9999"));
}

void Cells::text(const char* name, std::string& text) {
    Cell cell = text;
    if (exchange<std::string>(name, cell, false)) text = std::get<std::string>(std::move(cell));
}

void Cells::text(const char* name, std::optional<std::string>& text) {
    Cell cell;
    if (text) cell = *text;
    if (takes()) text.reset();
    if (exchange<std::string>(name, cell, true)) text = std::get<std::string>(std::move(cell));
}

void Cells::letter(const char* name, char& letter) {
    std::string written(1, letter);
    text(name, written);
    if (!reading()) return;
    if (written.size() == 1)
        letter = written.front();
    else
        blame(name, quoted(written), Words::later("one letter"));
}

namespace {

template <typename List>
std::optional<List> unpacked(std::string_view bytes) {
    if constexpr (std::is_same_v<List, Texts>) return unpacked_texts(bytes);
    if constexpr (std::is_same_v<List, Places>) return unpacked_places(bytes);
    if constexpr (std::is_same_v<List, Rings>) return unpacked_rings(bytes);
    if constexpr (std::is_same_v<List, TrackSegment>) return unpacked_segment(bytes);
}

}  // namespace

void Cells::list(const char* name, std::optional<Places>& places) {
    Cell cell;
    if (places) cell = Bytes{packed(*places)};
    if (takes()) places.reset();
    if (!exchange<Bytes>(name, cell, true)) return;
    places = unpacked_places(std::get<Bytes>(cell).bytes);
    if (!places) blame(name, Words::later("bytes that are no list"), Words::later("a list"));
}

void Cells::list(const char* name, Texts& texts) { whole_list(name, texts); }
void Cells::list(const char* name, Places& places) { whole_list(name, places); }
void Cells::list(const char* name, Rings& rings) { whole_list(name, rings); }
void Cells::list(const char* name, TrackSegment& segment) { whole_list(name, segment); }

template <typename List>
void Cells::whole_list(const char* name, List& list) {
    Cell cell = Bytes{takes() ? std::string() : packed(list)};
    if (!exchange<Bytes>(name, cell, false)) return;
    auto read = unpacked<List>(std::get<Bytes>(cell).bytes);
    if (read)
        list = std::move(*read);
    else
        blame(name, Words::later("bytes that are no list"), Words::later("a list"));
}

}  // namespace plugside
