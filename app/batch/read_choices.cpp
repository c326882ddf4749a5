#include "app/batch/read_choices.h"

#include <algorithm>
#include <charconv>
#include <cmath>
#include <optional>

#include "core/survey/refusal.h"
#include "geo/read/input_file.h"
#include "geo/read/numbers.h"
#include "geo/read/reference_systems.h"
#include "geo/read/vector_layers.h"

namespace plugside {

namespace {

struct ColumnWish {
    ColumnRole role = ColumnRole::none;
    std::string heading;
    bool met = false;
};

struct Wishes {
    std::string system;
    std::vector<ColumnWish> columns;
    std::optional<DateOrder> dates;
    std::optional<int> minutes_east;
    [[nodiscard]] bool any() const { return !system.empty() || !columns.empty() || dates || minutes_east; }
};

tl::unexpected<CallError> wrong(const std::string& option, const std::string& wanted, const std::string& found) {
    return tl::unexpected(CallError{"option --" + option + " wants " + wanted + ", not " + quoted_for_display(found)});
}

tl::expected<std::string, CallError> system_of(std::string text) {
    const bool number_alone =
        !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
    const std::string code = number_alone ? "EPSG:" + text : text;
    if (!is_reference_system(code)) return wrong("crs", "a reference system of the register, such as EPSG:32610", text);
    return code;
}

tl::expected<std::vector<ColumnWish>, CallError> columns_of(const std::string& text) {
    std::vector<ColumnWish> wishes;
    for (std::size_t at = 0; at <= text.size();) {
        const auto comma = std::min(text.find(',', at), text.size());
        const std::string part = text.substr(at, comma - at);
        const auto equals = part.find('=');
        const std::string meaning = part.substr(0, equals);
        const ColumnRole role = role_named(meaning);
        if (equals == std::string::npos || equals + 1 == part.size() || (role == ColumnRole::none && meaning != "none"))
            return wrong("columns", "MEANING=HEADING, as in longitude=Lon,fan=Dir", part);
        wishes.push_back({role, part.substr(equals + 1)});
        at = comma + 1;
    }
    return wishes;
}

tl::expected<Wishes, CallError> wishes_of(const Call& call) {
    Wishes wishes;
    if (const auto text = call.value("crs")) {
        auto system = system_of(*text);
        if (!system) return tl::unexpected(system.error());
        wishes.system = std::move(*system);
    }
    if (const auto text = call.value("columns")) {
        auto columns = columns_of(*text);
        if (!columns) return tl::unexpected(columns.error());
        wishes.columns = std::move(*columns);
    }
    if (const auto text = call.value("dates")) {
        if (*text == "year-first")
            wishes.dates = DateOrder::year_first;
        else if (*text == "day-first")
            wishes.dates = DateOrder::day_first;
        else if (*text == "month-first")
            wishes.dates = DateOrder::month_first;
        else
            return wrong("dates", "year-first, day-first or month-first", *text);
    }
    if (const auto text = call.value("hours-east")) {
        const auto hours = parse_number(*text);
        constexpr double most_hours = 14.0;  // the widest zones of the clock are +14 and -12
        if (!hours || !(std::abs(*hours) <= most_hours)) return wrong("hours-east", "hours from -14 to 14", *text);
        wishes.minutes_east = static_cast<int>(std::lround(*hours * 60.0));
    }
    return wishes;
}

std::optional<std::size_t> column_called(const std::string& heading, const std::vector<std::string>& headings,
                                         std::size_t columns) {
    for (std::size_t i = 0; i < headings.size(); ++i)
        if (trimmed(headings[i]) == trimmed(heading)) return i;
    std::size_t number = 0;
    const auto [end, error] = std::from_chars(heading.data(), heading.data() + heading.size(), number);
    if (error != std::errc{} || end != heading.data() + heading.size() || number < 1 || number > columns)
        return std::nullopt;
    return number - 1;
}

bool is_geographic(ColumnRole role) { return role == ColumnRole::longitude || role == ColumnRole::latitude; }
bool is_projected(ColumnRole role) { return role == ColumnRole::easting || role == ColumnRole::northing; }

// A meaning that is told goes to one column alone; places are told in one way.
void set_role(std::vector<ColumnRole>& roles, std::size_t column, ColumnRole role) {
    for (ColumnRole& other : roles) {
        const bool other_way = (is_projected(role) && is_geographic(other)) || (is_geographic(role) && is_projected(other));
        if (role != ColumnRole::note && (other == role || other_way)) other = ColumnRole::none;
    }
    if (column >= roles.size()) roles.resize(column + 1, ColumnRole::none);
    roles[column] = role;
}

void set_roles(std::vector<ColumnWish>& wishes, const std::vector<std::string>& headings, std::size_t columns,
               std::vector<ColumnRole>& roles) {
    for (ColumnWish& wish : wishes)
        if (const auto column = column_called(wish.heading, headings, columns)) {
            set_role(roles, *column, wish.role);
            wish.met = true;
        }
}

void set_times(const Wishes& wishes, TimeWriting& times) {
    times.order = wishes.dates.value_or(times.order);
    times.minutes_east_of_utc = wishes.minutes_east.value_or(times.minutes_east_of_utc);
}

void choose_for_table(const std::filesystem::path& file, Wishes& wishes, ReadChoices& choices) {
    auto guess = guess_table(file);
    if (!guess) return;
    const auto shown = preview_table(file, *guess, 1);
    if (!shown) return;
    set_roles(wishes.columns, shown->headings, std::max(shown->columns, guess->roles.size()), guess->roles);
    if (!wishes.system.empty()) guess->reference_system = wishes.system;
    set_times(wishes, guess->times);
    choices.tables[file] = std::move(*guess);
}

void choose_for_layers(const std::filesystem::path& file, Wishes& wishes, ReadChoices& choices) {
    auto guesses = guess_layers(file);
    if (!guesses || guesses->empty()) return;
    for (LayerGuess& guess : *guesses) {
        set_roles(wishes.columns, guess.columns, guess.columns.size(), guess.roles);
        if (!guess.has_reference_system) guess.reference_system = wishes.system;
        set_times(wishes, guess.times);
    }
    choices.layers[file] = std::move(*guesses);
}

}  // namespace

std::vector<OptionRule> read_choice_options() {
    return {{"crs", "EPSG:N", "reference system of eastings and northings, and of layers that name none"},
            {"columns", "LIST", "what columns of tables and layers mean: MEANING=HEADING or =NUMBER, parted by commas"},
            {"dates", "ORDER", "of days in tables: year-first, day-first or month-first"},
            {"hours-east", "H", "of UTC, of times that name no zone"}};
}

tl::expected<ReadChoices, CallError> read_choices(const Call& call, const std::vector<std::filesystem::path>& files) {
    auto wishes = wishes_of(call);
    if (!wishes) return tl::unexpected(wishes.error());
    ReadChoices choices;
    if (!wishes->any()) return choices;
    bool all_known = true;
    for (const std::filesystem::path& file : files) {
        const auto kind = kind_of_file(file);
        if (!kind) {
            all_known = false;
        } else if (*kind == FileKind::table) {
            choose_for_table(file, *wishes, choices);
        } else if (is_layer_file(*kind)) {
            choose_for_layers(file, *wishes, choices);
        }
    }
    for (const ColumnWish& wish : wishes->columns)
        if (!wish.met && all_known)
            return tl::unexpected(CallError{"option --columns names " + quoted_for_display(wish.heading) +
                                            ", which is no column of a table or layer given"});
    return choices;
}

}  // namespace plugside
