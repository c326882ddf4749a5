#include "core/sets/work_order_rows.h"

#include <algorithm>
#include <map>
#include <utility>

#include "core/sets/row_values.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr const char* unknown = "not-known";

std::string numbered(const std::string& name, std::size_t index) { return name + "." + std::to_string(index + 1); }

// Writes each member as rows.
class RowWriter {
public:
    std::vector<WorkRow> rows;

    template <typename T>
    void always(const std::string& name, const T& value) {
        rows.push_back({name, rows::text_of(value)});
    }
    template <typename T>
    void unless(const std::string& name, const T& value, const T& usual) {
        if (value != usual) always(name, value);
    }
    template <typename T>
    void maybe(const std::string& name, const std::optional<T>& value) {
        if (value) always(name, *value);
    }
    template <typename T>
    void told(const std::string& name, const Told<T>& told) {
        if (told.value) always(name, *told.value);
        if (!told.value && told.at) rows.push_back({name, unknown});
        if (told.at) always(name + ".at", *told.at);
    }
    template <typename T, typename Each>
    void list(const std::string& name, std::vector<T>& items, Each each) {
        for (std::size_t i = 0; i < items.size(); ++i) each(*this, numbered(name, i), items[i]);
    }
};

// Reads the rows of the same names.
class RowReader {
public:
    RowReader(const std::vector<WorkRow>& given, std::optional<UtcTime> given_at) : given_at_(given_at) {
        for (const WorkRow& row : given)
            if (!values_.emplace(row.name, row.value).second)
                problems.push_back({Refusal::Code::malformed, "", row.name, Words::tell("a second row of this name"),
                                    Words::later("one row of each name")});
    }
    std::vector<Refusal> problems;

    template <typename T>
    void always(const std::string& name, T& value) {
        if (const auto text = taken(name)) read(name, *text, value);
    }
    template <typename T>
    void unless(const std::string& name, T& value, const T&) {
        always(name, value);
    }
    template <typename T>
    void maybe(const std::string& name, std::optional<T>& value) {
        const auto text = taken(name);
        T one{};
        if (text && read(name, *text, one)) value = one;
    }
    template <typename T>
    void told(const std::string& name, Told<T>& told) {
        const auto text = taken(name);
        maybe(name + ".at", told.at);
        if (!text) return;
        T one{};
        if (*text != unknown && read(name, *text, one)) told.value = one;
        if (!told.at) told.at = given_at_;
    }
    // Items are there as long as some row begins with their number.
    template <typename T, typename Each>
    void list(const std::string& name, std::vector<T>& items, Each each) {
        while (has_below(numbered(name, items.size()))) {
            T item{};
            each(*this, numbered(name, items.size()), item);
            items.push_back(std::move(item));
        }
    }
    void name_what_is_left() {
        for (const auto& [name, value] : values_)
            problems.push_back({Refusal::Code::malformed, "", name, quoted_for_display(value),
                                Words::later("a name of an answer, a method or a figure of the label")});
    }

private:
    std::optional<std::string> taken(const std::string& name) {
        auto node = values_.extract(name);
        return node.empty() ? std::nullopt : std::optional(std::move(node.mapped()));
    }
    template <typename T>
    bool read(const std::string& name, const std::string& text, T& value) {
        if (rows::take(text, value)) return true;
        problems.push_back({Refusal::Code::malformed, "", name, quoted_for_display(text), rows::expected_for<T>()});
        return false;
    }
    [[nodiscard]] bool has_below(const std::string& name) const {
        if (values_.contains(name)) return true;
        const auto next = values_.lower_bound(name + ".");
        return next != values_.end() && next->first.starts_with(name + ".");
    }

    std::map<std::string, std::string> values_;
    std::optional<UtcTime> given_at_;
};
// The members of each part, for the writer and the reader alike.
template <typename Rows>
void visits(Rows& rows, const std::string& name, Told<Visits>& told) {
    Told<bool> come;
    if (told.value) come.value = told.value->come;
    come.at = told.at;
    rows.told(name, come);
    Visits more = told.value.value_or(Visits{});
    rows.maybe(name + ".from", more.from);
    rows.maybe(name + ".until", more.until);
    rows.unless(name + ".when", more.when, std::string());
    told.at = come.at;
    if (!come.value) return;
    more.come = *come.value;
    told.value = std::move(more);
}

template <typename Rows>
void water_days(Rows& rows, Told<std::vector<WaterDay>>& told) {
    const std::string name = to_text(Question::water_days);
    Told<bool> given;
    if (told.value) given.value = true;
    given.at = told.at;
    rows.told(name, given);
    std::vector<WaterDay> days = told.value.value_or(std::vector<WaterDay>());
    rows.list(name, days, [](Rows& more, const std::string& each, WaterDay& day) { more.always(each, day); });
    told.at = given.at;
    if (given.value == std::optional(true)) told.value = std::move(days);
}

template <typename Rows>
void conditions(Rows& rows, Conditions& c) {
    rows.told(to_text(Question::soil_moisture), c.soil_moisture);
    rows.told(to_text(Question::rain_due), c.rain_due);
    rows.told(to_text(Question::irrigation_due), c.irrigation_due);
    water_days(rows, c.water_days);
    rows.told(to_text(Question::soil_temperature), c.soil_temperature_c);
    rows.told(to_text(Question::soil_texture), c.soil_texture);
    rows.told(to_text(Question::soil_cracks), c.soil_cracks);
    rows.told(to_text(Question::frost), c.frost);
    rows.told(to_text(Question::crop), c.crop);
    rows.told(to_text(Question::site_use), c.site_use);
    rows.told(to_text(Question::property), c.property);
    visits(rows, to_text(Question::children), c.children);
    visits(rows, to_text(Question::public_visits), c.public_visits);
    visits(rows, to_text(Question::pets), c.pets);
    visits(rows, to_text(Question::stock), c.stock);
    rows.told(to_text(Question::buildings_drawn), c.buildings_drawn);
    rows.list("building", c.buildings, [](Rows& more, const std::string& each, BuildingUse& building) {
        more.always(each + ".name", building.name);
        more.told(each + ".lived-in", building.lived_in);
        more.unless(each + ".use", building.use, std::string());
    });
    rows.told(to_text(Question::water_near), c.water_near);
    rows.told(to_text(Question::wildlife), c.wildlife);
    rows.unless("wildlife-asked", c.wildlife_asked, std::string());
    rows.told(to_text(Question::fumigation_plan), c.fumigation_plan);
    rows.told(to_text(Question::utilities), c.utilities);
    rows.unless("utilities-ticket", c.utilities_ticket, std::string());
    rows.told(to_text(Question::neighbours_told), c.neighbours_told);
    rows.told(to_text(Question::trap_law_read), c.trap_law_read);
    rows.told(to_text(Question::pesticide_office), c.pesticide_office);
}

template <typename Rows>
void label(Rows& rows, LabelLimits& label) {
    rows.maybe("label.ingredient", label.ingredient);
    rows.unless("label.ingredient-words", label.ingredient_words, std::string());
    rows.unless("label.registration", label.registration, std::string());
    rows.list("label.site", label.sites,
              [](Rows& more, const std::string& each, std::string& site) { more.always(each, site); });
    rows.maybe("label.placement-least", label.placement_least);
    rows.maybe("label.placement-most", label.placement_most);
    rows.maybe("label.placements-a-system", label.placements_a_system_most);
    rows.maybe("label.spacing", label.placement_spacing_least);
    rows.maybe("label.area-most", label.area_most);
    rows.maybe("label.season-most", label.season_most);
    rows.maybe("label.treatments", label.treatments_a_season_most);
    rows.maybe("label.interval-days", label.interval_days_least);
    rows.maybe("label.restricted-use", label.restricted_use);
    rows.maybe("label.re-entry-hours", label.re_entry_hours);
    rows.list("label.protection", label.protection, [](Rows& more, const std::string& each, Protection& protection) {
        more.always(each + ".tool", protection.tool);
        more.unless(each + ".worn", protection.worn, std::string());
    });
    rows.maybe("label.building-distance", label.building_distance);
    rows.maybe("label.water-distance", label.water_distance);
    rows.maybe("label.grams-per-millilitre", label.grams_per_millilitre);
    rows.maybe("label.checked-on", label.checked_on);
    rows.maybe("label.good-until", label.good_until);
}

template <typename Rows>
void probe(Rows& rows, const std::string& name, ProbeKey& key) {
    rows.always(name + ".probe", key.kind);
    rows.always(name + ".from-mound", key.from_mound);
    rows.unless(name + ".to-mound", key.to_mound, std::string());
}

template <typename Rows>
void method(Rows& rows, const std::string& name, Method& method) {
    const Method usual;
    rows.always(name + ".id", method.id);
    rows.always(name + ".name", method.name);
    rows.always(name + ".sets", method.stuff);
    rows.maybe(name + ".placement", method.placement);
    rows.maybe(name + ".serves", method.serves);
    rows.list(name + ".step", method.steps, [](Rows& more, const std::string& each, MethodStep& step) {
        more.always(each + ".text", step.text);
        more.unless(each + ".source", step.source, std::string());
        more.unless(each + ".tag", step.tag, std::string());
    });
    rows.list(name + ".tool", method.tools,
              [](Rows& more, const std::string& each, std::string& tool) { more.always(each, tool); });
    rows.list(name + ".needs", method.needs, [](Rows& more, const std::string& each, ItemCount& need) {
        more.always(each + ".item", need.item);
        more.always(each + ".count", need.count);
    });
    rows.unless(name + ".placements", method.placements, usual.placements);
    rows.unless(name + ".minutes", method.minutes.mean, usual.minutes.mean);
    rows.unless(name + ".minutes-sd", method.minutes.sd, usual.minutes.sd);
    rows.unless(name + ".cover", method.cover, usual.cover);
    rows.unless(name + ".staking", method.staking, std::string());
    rows.unless(name + ".flagging", method.flagging, std::string());
    rows.unless(name + ".closing", method.closing, std::string());
    rows.unless(name + ".checking", method.checking, std::string());
    rows.unless(name + ".ending", method.ending, std::string());
    rows.maybe(name + ".check-every-hours", method.check_every_hours);
}

template <typename Rows>
void licence(Rows& rows, Told<Licence>& told) {
    Told<LicenceKind> kind;
    if (told.value) kind.value = told.value->kind;
    kind.at = told.at;
    rows.told("licence", kind);
    Licence more = told.value.value_or(Licence{});
    rows.unless("licence.holder", more.holder, std::string());
    rows.unless("licence.number", more.number, std::string());
    rows.maybe("licence.valid-until", more.valid_until);
    told.at = kind.at;
    if (!kind.value) return;
    more.kind = *kind.value;
    told.value = std::move(more);
}

template <typename Rows>
void signature(Rows& rows, const std::string& name, SignedOverride& entry) {
    rows.always(name + ".caution", entry.caution);
    rows.unless(name + ".method", entry.method, std::string());
    rows.always(name + ".at", entry.at);
    rows.unless(name + ".name", entry.name, std::string());
    rows.unless(name + ".reason", entry.reason, std::string());
    // of the whole field there is no place
    std::vector<ProbeKey> place;
    if (entry.probe) place.push_back(*entry.probe);
    rows.list(name + ".place", place, [](Rows& more, const std::string& each, ProbeKey& key) { probe(more, each, key); });
    if (!place.empty()) entry.probe = place.front();
}

template <typename Rows>
void walking(Rows& rows, WalkingWishes& wishes) {
    rows.maybe("walking.start", wishes.start);
    rows.unless("walking.back", wishes.back, false);
    rows.maybe("walking.end", wishes.end);
    rows.unless("walking.people", wishes.people, 1);
    rows.maybe("walking.minutes-a-day", wishes.minutes_a_day);
    rows.maybe("walking.carry", wishes.carry);
    rows.list("walking.tour", wishes.kept, [](Rows& more, const std::string& each, KeptTour& tour) {
        more.always(each + ".person", tour.person);
        more.always(each + ".day", tour.day);
        more.always(each + ".sets", tour.sets);
    });
}

template <typename Rows>
void all_of(Rows& rows, WorkOrder& work) {
    conditions(rows, work.conditions);
    rows.unless("method", work.method, std::string());
    rows.list("set-method", work.set_methods, [](Rows& more, const std::string& each, SetMethod& of_set) {
        probe(more, each, of_set.probe);
        more.always(each + ".method", of_set.method);
    });
    rows.list("own-method", work.own_methods,
              [](Rows& more, const std::string& each, Method& own) { method(more, each, own); });
    label(rows, work.label);
    licence(rows, work.licence);
    rows.maybe("dose", work.dose);
    const int usual_releases = ReleaseCalibration{}.releases_each;
    rows.unless("calibration.releases", work.calibration.releases_each, usual_releases);
    rows.list("calibration.weighed", work.calibration.weighed_g,
              [](Rows& more, const std::string& each, double& grams) { more.always(each, grams); });
    rows.list("signed", work.signed_off,
              [](Rows& more, const std::string& each, SignedOverride& entry) { signature(more, each, entry); });
    rows.maybe("budget.traps", work.budget.traps);
    rows.maybe("budget.minutes", work.budget.minutes);
    walking(rows, work.walking);
}

// What the figures of the walking order may be; one that may not is named and left out.
void keep_within_limits(WalkingWishes& wishes, std::vector<Refusal>& problems) {
    const auto refuse = [&](const char* row, const std::string& found, const std::string& expected) {
        problems.push_back({Refusal::Code::malformed, "", row, quoted_for_display(found), expected});
    };
    if (wishes.people < 1 || wishes.people > WalkingWishes::most_people) {
        refuse("walking.people", rows::text_of(wishes.people), Words::later("a whole number of people from 1 to 50"));
        wishes.people = 1;
    }
    if (wishes.minutes_a_day && !(*wishes.minutes_a_day >= 1.0 && *wishes.minutes_a_day <= 1440.0)) {
        refuse("walking.minutes-a-day", rows::text_of(*wishes.minutes_a_day), Words::later("1 to 1440 minutes"));
        wishes.minutes_a_day.reset();
    }
    if (wishes.carry && *wishes.carry < 1) {
        refuse("walking.carry", rows::text_of(*wishes.carry), Words::later("a whole number from 1 up"));
        wishes.carry.reset();
    }
}

std::string trimmed(const std::string& text) {
    const std::size_t from = text.find_first_not_of(" \t\r");
    if (from == std::string::npos) return {};
    return text.substr(from, text.find_last_not_of(" \t\r") - from + 1);
}

}  // namespace

std::vector<WorkRow> rows_of(const WorkOrder& work) {
    RowWriter writer;
    WorkOrder copy = work;
    all_of(writer, copy);
    return std::move(writer.rows);
}

WorkReading work_order_of(const std::vector<WorkRow>& rows, std::optional<UtcTime> given_at) {
    RowReader reader(rows, given_at);
    WorkReading reading;
    all_of(reader, reading.work);
    reader.name_what_is_left();
    reading.problems = std::move(reader.problems);
    keep_within_limits(reading.work.walking, reading.problems);
    return reading;
}

std::string lines_of(const std::vector<WorkRow>& rows) {
    std::string text;
    for (const WorkRow& row : rows) text += row.name + " = " + row.value + "\n";
    return text;
}

namespace {

// The time of answers that carry none of their own: a time, or a day, whose noon is meant.
std::optional<UtcTime> time_or_noon(const std::string& text) {
    UtcTime time{};
    if (rows::take(text, time)) return time;
    CalendarDay day{};
    if (rows::take(text, day)) return UtcTime(day) + std::chrono::hours(12);
    return std::nullopt;
}

// The rows of a typed file, each with its line.
class Lines {
public:
    Lines(const std::string& file, std::optional<UtcTime> given_at) : file_(file), given_at_(given_at) {}

    void take(const std::string& text) {
        std::size_t number = 0;
        for (std::size_t from = 0; from < text.size();) {
            const std::size_t end = std::min(text.find('\n', from), text.size());
            const std::string line = trimmed(text.substr(from, end - from));
            from = end + 1;
            ++number;
            if (!line.empty() && line.front() != '#') take_line(line, Words::tell("line {1}", {std::to_string(number)}));
        }
    }

    WorkReading read() {
        WorkReading reading = work_order_of(rows_, given_at_);
        for (Refusal& problem : reading.problems) {
            problem.file = file_;
            problem.place = row_place(places_, problem.place);
            problems_.push_back(std::move(problem));
        }
        reading.problems = std::move(problems_);
        reading.lines = std::move(places_);
        return reading;
    }

private:
    void take_line(const std::string& line, const std::string& place) {
        const auto refuse = [&](const std::string& where, const std::string& found, const char* expected) {
            problems_.push_back({Refusal::Code::malformed, file_, where, found, expected});
        };
        const std::size_t equals = line.find('=');
        if (equals == std::string::npos)
            return refuse(place, quoted_for_display(line), Words::later("a name, =, and a value"));
        const std::string name = trimmed(line.substr(0, equals));
        const std::string value = trimmed(line.substr(equals + 1));
        if (!places_.emplace(name, place).second)
            return refuse(place + ", " + name, Words::tell("a second row of this name"),
                          Words::later("one row of each name"));
        if (name != given_at_name) return rows_.push_back({name, value});
        given_at_ = time_or_noon(value);
        if (!given_at_) refuse(place + ", " + name, quoted_for_display(value), rows::expected_for<UtcTime>());
    }

    static constexpr const char* given_at_name = "given-at";
    std::string file_;
    std::optional<UtcTime> given_at_;
    std::vector<WorkRow> rows_;
    std::vector<Refusal> problems_;
    std::map<std::string, std::string> places_;
};

}  // namespace

std::string row_place(const std::map<std::string, std::string>& lines, const std::string& name) {
    const auto line = lines.find(name);
    return line == lines.end() ? name : line->second + ", " + name;
}

WorkReading work_order_of_lines(const std::string& text, const std::string& file, std::optional<UtcTime> given_at) {
    Lines lines(file, given_at);
    lines.take(text);
    return lines.read();
}

bool is_private(const WorkRow& row) {
    for (const char* name : {"licence.holder", "licence.number", "wildlife-asked", "utilities-ticket"})
        if (row.name == name) return true;
    return row.name.starts_with("signed.") && (row.name.ends_with(".name") || row.name.ends_with(".reason"));
}

}  // namespace plugside
