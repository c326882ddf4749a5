// One value of a work order as text, and back: inside of work_order_rows.
//
// `text_of` writes what `take` reads; `take` gives false and leaves the value where the text is none. `expected_for` names what would be.
#pragma once

#include <set>
#include <string>
#include <type_traits>
#include <vector>

#include "core/sets/work_order.h"

namespace plugside::rows {

[[nodiscard]] std::string text_of(bool value);
[[nodiscard]] std::string text_of(int value);
[[nodiscard]] std::string text_of(double value);
[[nodiscard]] std::string text_of(const std::string& value);
[[nodiscard]] std::string text_of(Metres value);
[[nodiscard]] std::string text_of(const Quantity& value);
[[nodiscard]] std::string text_of(const AreaRate& value);
[[nodiscard]] std::string text_of(CalendarDay value);
[[nodiscard]] std::string text_of(UtcTime value);
[[nodiscard]] std::string text_of(const WaterDay& value);
[[nodiscard]] std::string text_of(const std::set<PropertyUse>& value);
[[nodiscard]] std::string text_of(const PlaceInDegrees& value);
[[nodiscard]] std::string text_of(const std::vector<ProbeKey>& value);
template <typename Word>
requires std::is_enum_v<Word>
[[nodiscard]] std::string text_of(Word value) { return to_text(value); }

[[nodiscard]] bool take(const std::string& text, bool& value);
[[nodiscard]] bool take(const std::string& text, int& value);
[[nodiscard]] bool take(const std::string& text, double& value);
[[nodiscard]] bool take(const std::string& text, std::string& value);
[[nodiscard]] bool take(const std::string& text, Metres& value);
[[nodiscard]] bool take(const std::string& text, Quantity& value);
[[nodiscard]] bool take(const std::string& text, AreaRate& value);
[[nodiscard]] bool take(const std::string& text, CalendarDay& value);
[[nodiscard]] bool take(const std::string& text, UtcTime& value);
[[nodiscard]] bool take(const std::string& text, WaterDay& value);
[[nodiscard]] bool take(const std::string& text, std::set<PropertyUse>& value);
[[nodiscard]] bool take(const std::string& text, PlaceInDegrees& value);
[[nodiscard]] bool take(const std::string& text, std::vector<ProbeKey>& value);
[[nodiscard]] bool take(const std::string& text, SoilMoisture& value);
[[nodiscard]] bool take(const std::string& text, SoilTexture& value);
[[nodiscard]] bool take(const std::string& text, SiteUse& value);
[[nodiscard]] bool take(const std::string& text, WildlifeAnswer& value);
[[nodiscard]] bool take(const std::string& text, UtilitiesCall& value);
[[nodiscard]] bool take(const std::string& text, OfficeAnswer& value);
[[nodiscard]] bool take(const std::string& text, Ingredient& value);
[[nodiscard]] bool take(const std::string& text, LicenceKind& value);
[[nodiscard]] bool take(const std::string& text, Stuff& value);
[[nodiscard]] bool take(const std::string& text, Placement& value);
[[nodiscard]] bool take(const std::string& text, CoverRule& value);
[[nodiscard]] bool take(const std::string& text, ProbeKind& value);
[[nodiscard]] bool take(const std::string& text, LoadItem& value);

[[nodiscard]] const char* expected_word();
// What a value of this kind looks like, marked by Words::later.
template <typename T>
[[nodiscard]] const char* expected_for() {
    return expected_word();
}
template <>
[[nodiscard]] const char* expected_for<bool>();
template <>
[[nodiscard]] const char* expected_for<int>();
template <>
[[nodiscard]] const char* expected_for<double>();
template <>
[[nodiscard]] const char* expected_for<Metres>();
template <>
[[nodiscard]] const char* expected_for<Quantity>();
template <>
[[nodiscard]] const char* expected_for<AreaRate>();
template <>
[[nodiscard]] const char* expected_for<CalendarDay>();
template <>
[[nodiscard]] const char* expected_for<UtcTime>();
template <>
[[nodiscard]] const char* expected_for<WaterDay>();
template <>
[[nodiscard]] const char* expected_for<PlaceInDegrees>();
template <>
[[nodiscard]] const char* expected_for<std::vector<ProbeKey>>();

}  // namespace plugside::rows
