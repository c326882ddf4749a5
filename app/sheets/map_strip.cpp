// The strip below a map, and how maps are cut: see map_figure.h.
#include <QDateTime>
#include <algorithm>
#include <cmath>
#include <functional>

#include "app/sheets/lettering.h"
#include "app/sheets/map_figure.h"
#include "app/sheets/mound_figure.h"
#include "geo/frame/declination.h"

namespace plugside {

namespace {

constexpr Lettering small_words{9.0, false, Ink::black};
constexpr Lettering strong_words{11.0, true, Ink::black};

// 1, 2 or 5 times a power of ten, at most `most`.
double round_below(double most) {
    const double power = std::pow(10.0, std::floor(std::log10(std::max(most, 1e-6))));
    double amount = power;
    for (const double factor : {2.0, 5.0})
        if (factor * power <= most) amount = factor * power;
    return amount;
}

double in_units(double metres, LengthUnits units) {
    return units == LengthUnits::metres ? metres : Metres::of(metres).feet();
}
Metres of_units(double amount, LengthUnits units) {
    return units == LengthUnits::metres ? Metres::of(amount) : Metres::from_feet(amount);
}

void add_scale_bar(Figure& strip, int scale, LengthUnits units) {
    constexpr double longest_mm = 62.0;
    const double amount = round_below(in_units(longest_mm * scale / 1000.0, units));
    const double length = of_units(amount, units).value() * 1000.0 / scale;
    const double y = 8.0;
    const double x = 2.0;
    for (int quarter = 0; quarter < 4; ++quarter)
        strip.box({x + 0.25 * quarter * length, y, 0.25 * length, 1.6}, 0.3, quarter % 2 == 0 ? Ink::black : Ink::white);
    const QString unit = units == LengthUnits::metres ? QStringLiteral("m") : sheet_words(QT_TRANSLATE_NOOP("Sheets", "ft"));
    strip.words({x, y - 1.2}, QStringLiteral("0"), small_words, Side::left);
    strip.words({x + 0.5 * length, y - 1.2}, decimal(0.5 * amount, amount < 2.0 ? 1 : 0), small_words, Side::middle);
    strip.words({x + length, y - 1.2}, decimal(amount, 0) + QLatin1Char(' ') + unit, small_words, Side::middle);
    strip.words({x, y + 6.4}, QStringLiteral("1:%1").arg(scale), strong_words);
}

QString date_words(UtcTime time) {
    const QDateTime moment = QDateTime::fromMSecsSinceEpoch(time.time_since_epoch().count());
    return locale_spoken().toString(moment.date(), spoken() == Language::spanish ? QStringLiteral("d 'de' MMMM 'de' yyyy")
                                                                                 : QStringLiteral("d MMMM yyyy"));
}

tl::expected<double, Refusal> declination_at(const SheetInput& input, LocalPoint at) {
    const LocalFrame frame = input.field.frame;
    return declination_degrees(frame.to_geographic(at), input.made_at);
}

QString words_of(const tl::expected<double, Refusal>& declination, UtcTime time) {
    if (!declination)
        return sheet_words(
            QT_TRANSLATE_NOOP("Sheets",
                              "How far magnetic north lies from true north is not told: the model at hand holds from 2025 "
                              "to 2029. Bearings are from true north."));
    const QString degrees = decimal(std::abs(*declination), 1);
    if (degrees == decimal(0.0, 1))
        return sheet_words(
                   QT_TRANSLATE_NOOP(
                       "Sheets",
                       "On %1 magnetic north and true north agree here (declination 0°, World Magnetic Model 2025)."))
            .arg(date_words(time));
    const QString text = *declination > 0.0
                             ? sheet_words(QT_TRANSLATE_NOOP(
                                   "Sheets",
                                   "On %1 magnetic north (MN) lies %2° east of true north (TN): the declination, by "
                                   "the World Magnetic Model 2025. Bearings are from true north."))
                             : sheet_words(QT_TRANSLATE_NOOP(
                                   "Sheets",
                                   "On %1 magnetic north (MN) lies %2° west of true north (TN): the declination, by "
                                   "the World Magnetic Model 2025. Bearings are from true north."));
    return text.arg(date_words(time), degrees);
}

void add_norths(Figure& strip, const SheetInput& input, LocalPoint at, double left, double width) {
    const auto declination = declination_at(input, at);
    const QPointF foot(left + 14.0, 20.0);
    const double true_turn = LocalFrame(input.field.frame).convergence_degrees(at);
    const auto arrow = [&](double turn, bool whole) {
        const QPointF up = on_sheet(turn);
        const QPointF aside(-up.y(), up.x());
        const QPointF head = foot + up * 13.0;
        strip.line(foot, head, 0.35);
        const QPointF neck = foot + up * 9.5;
        Stroke point{{head, neck + aside * 1.2, whole ? neck - aside * 1.2 : neck},
                     true,
                     0.25,
                     Ink::black,
                     whole ? Ink::black : Ink::white,
                     {}};
        strip.add(std::move(point));
    };
    arrow(true_turn, true);
    const QString true_north = sheet_words(QT_TRANSLATE_NOOP("Sheets", "TN"));
    const QString magnetic_north = sheet_words(QT_TRANSLATE_NOOP("Sheets", "MN"));
    if (declination) {
        arrow(true_turn + *declination, false);
        const bool east = *declination >= 0.0;
        strip.words(foot + QPointF(east ? -1.5 : 1.5, -14.5), true_north, small_words, east ? Side::right : Side::left);
        const QPointF head = foot + on_sheet(true_turn + *declination) * 13.0;
        strip.words(head + QPointF(east ? 1.8 : -1.8, 1.0), magnetic_north, small_words, east ? Side::left : Side::right);
    } else {
        strip.words(foot + QPointF(0.0, -14.5), true_north, small_words, Side::middle);
    }
    const LetteringMeasure measure;
    measure.write(strip, {left + 28.0, 2.0}, north_words(input, at), width - 28.0, small_words);
}

void add_key(Figure& strip, double width) {
    const LetteringMeasure measure;
    double x = 2.0;
    double y = map_strip_mm - 9.0;
    const auto entry = [&](const char* text, const std::function<void(QPointF)>& draw) {
        const QString told = sheet_words(text);
        const double needed = 10.0 + measure.width_mm(told, small_words) + 5.0;
        if (x + needed > width && x > 3.0) {
            x = 2.0;
            y += 5.0;
        }
        draw({x + 3.5, y});
        strip.words({x + 9.0, y + 1.2}, told, small_words);
        x += needed;
    };
    entry(QT_TRANSLATE_NOOP("Sheets", "set, with its number"), [&](QPointF at) {
        strip.line(at + QPointF(-2.5, 2.0), at + QPointF(-2.5, -2.0), 0.35);
        strip.box({at.x() - 2.5, at.y() - 2.0, 5.0, 2.6}, 0.35, Ink::white);
        strip.add(Disc{at + QPointF(-2.5, 2.0), 0.6, 0.2, Ink::black, Ink::black});
    });
    entry(QT_TRANSLATE_NOOP("Sheets", "mound, its fan (fresh: dark)"), [&](QPointF at) {
        add_mound(strip, at + QPointF(-1.6, 1.2), 20.0, Freshness::fresh, 2.6);
        add_mound(strip, at + QPointF(1.8, 1.2), 20.0, Freshness::older, 2.6);
    });
    entry(QT_TRANSLATE_NOOP("Sheets", "run (broken: doubtful)"), [&](QPointF at) {
        strip.add(Stroke{{at + QPointF(-3.5, -0.8), at + QPointF(3.5, -0.8)}, false, 0.5, Ink::dark, {}, {}});
        strip.add(Stroke{{at + QPointF(-3.5, 0.8), at + QPointF(3.5, 0.8)}, false, 0.5, Ink::dark, {}, {1.6, 1.2}});
    });
    entry(QT_TRANSLATE_NOOP("Sheets", "barrier"), [&](QPointF at) {
        strip.line(at - QPointF(3.5, 0.0), at + QPointF(3.5, 0.0), 0.6);
        for (const double tick : {-2.0, 0.5, 3.0}) strip.line(at + QPointF(tick, -0.9), at + QPointF(tick, 0.9), 0.3);
    });
    entry(QT_TRANSLATE_NOOP("Sheets", "keep clear"), [&](QPointF at) {
        const QRectF box(at.x() - 3.5, at.y() - 1.8, 7.0, 3.6);
        for (const QLineF& line : hatching({{box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()}}, box, 1.6))
            strip.line(line.p1(), line.p2(), 0.18);
        strip.box(box, 0.4);
    });
    entry(QT_TRANSLATE_NOOP("Sheets", "way on foot"), [&](QPointF at) {
        strip.add(
            Stroke{{at - QPointF(3.5, 0.0), at + QPointF(3.5, 0.0)}, false, way_width_mm, Ink::black, {}, way_dashes_mm});
    });
    entry(QT_TRANSLATE_NOOP("Sheets", "gate"), [&](QPointF at) {
        strip.add(Disc{at, 1.2, 0.35, Ink::black, Ink::white});
        strip.line(at - QPointF(1.2, 0.0), at + QPointF(1.2, 0.0), 0.35);
    });
    entry(QT_TRANSLATE_NOOP("Sheets", "field"), [&](QPointF at) {
        strip.add(
            Stroke{{at - QPointF(4.0, 0.0), at + QPointF(4.0, 0.0)}, false, 0.7, Ink::black, {}, {5.0, 1.2, 0.7, 1.2}});
    });
}

constexpr int round_scales[] = {100,  200,   250,   500,   1000,  1250,  2000,   2500,
                                5000, 10000, 12500, 20000, 25000, 50000, 100000, 200000};
constexpr double spare_mm = 6.0;       // about what is on a map
constexpr std::size_t most_maps = 16;  // of a larger scale

bool fits(const GroundBox& box, int scale, QSizeF map) {
    return box.width().value() * 1000.0 / scale <= map.width() - 2.0 * spare_mm &&
           box.height().value() * 1000.0 / scale <= map.height() - 2.0 * spare_mm;
}

int first_scale(const GroundBox& box, QSizeF map) {
    for (const int scale : round_scales)
        if (fits(box, scale, map)) return scale;
    return *std::rbegin(round_scales);
}

// Places of maps at `scale` that together hold every set.
std::vector<MapPlace> cut(const SheetContents& contents, int scale, QSizeF map) {
    GroundBox box;
    for (const SetCard& card : contents.cards) box.add(card.middle);
    const double step_east = (map.width() - 4.0 * spare_mm) * scale / 1000.0;
    const double step_north = (map.height() - 4.0 * spare_mm) * scale / 1000.0;
    const auto count = [](double length, double step) { return std::max(1, static_cast<int>(std::ceil(length / step))); };
    const int columns = count(box.width().value(), step_east);
    const int rows = count(box.height().value(), step_north);
    std::vector<MapPlace> places;
    for (int row = 0; row < rows; ++row)
        for (int column = 0; column < columns; ++column) {
            const LocalPoint centre{box.middle().east_m + (column - 0.5 * (columns - 1)) * step_east,
                                    box.middle().north_m - (row - 0.5 * (rows - 1)) * step_north};
            const bool used = std::any_of(contents.cards.begin(), contents.cards.end(), [&](const SetCard& card) {
                return std::abs(card.middle.east_m - centre.east_m) <= 0.5 * step_east + 1e-9 &&
                       std::abs(card.middle.north_m - centre.north_m) <= 0.5 * step_north + 1e-9;
            });
            if (used) places.push_back({centre, scale});
        }
    return places;
}

GroundBox whole_box(const SheetInput& input, const SheetContents& contents) {
    GroundBox box;
    const Survey& survey = input.field.survey;
    for (const Mound& mound : survey.mounds)
        if (is_gopher_sign(mound.kind)) box.add(mound.plug);
    for (const Polygon& part : survey.ground.boundary.parts)
        for (const LocalPoint vertex : part.outer.vertices) box.add(vertex);
    for (const KeepClearArea& area : survey.ground.keep_clear)
        for (const LocalPoint vertex : area.area.outer.vertices) box.add(vertex);
    for (const SetCard& card : contents.cards) box.add(card.middle);
    return box;
}

// Maps at a larger scale on which every set has its number, or as many as may be.
std::vector<MapPlace> larger_maps(const SheetInput& input, const SheetContents& contents, QSizeF room, int first,
                                  LocalPoint origin, const std::stop_token& stop) {
    const QSizeF map = room - QSizeF(grid_room_mm, grid_room_mm);
    std::vector<MapPlace> best;
    for (auto scale = std::rbegin(round_scales); scale != std::rend(round_scales) && !stop.stop_requested(); ++scale) {
        if (*scale >= first) continue;
        const std::vector<MapPlace> places = cut(contents, *scale, map);
        if (places.size() > most_maps) break;
        best = places;
        const bool all = std::all_of(places.begin(), places.end(), [&](const MapPlace& place) {
            return map_figure(input, contents, room, place, origin, {}).sets_without_number.empty();
        });
        if (all) break;
    }
    return best;
}

struct FirstMap {
    MapPlace place;
    LocalPoint origin;  // of the grid
};

FirstMap first_map(const SheetInput& input, const SheetContents& contents, QSizeF room) {
    const GroundBox box = whole_box(input, contents);
    const int scale = first_scale(box, room - QSizeF(grid_room_mm, grid_room_mm));
    const double step = grid_step(scale, input.units).value();
    return {{box.middle(), scale},
            {std::floor(box.low().east_m / step) * step, std::floor(box.low().north_m / step) * step}};
}

}  // namespace

QString north_words(const SheetInput& input, LocalPoint at) { return words_of(declination_at(input, at), input.made_at); }

Figure small_map(const SheetInput& input, const SheetContents& contents, QSizeF room_mm) {
    FirstMap first = first_map(input, contents, room_mm);
    // a screen has no ruler: the scale need not be round
    const GroundBox box = whole_box(input, contents);
    const QSizeF map = room_mm - QSizeF(grid_room_mm + 2.0 * spare_mm, grid_room_mm + 2.0 * spare_mm);
    const double needed = 1000.0 * std::max(box.width().value() / map.width(), box.height().value() / map.height());
    first.place.scale = std::min(first.place.scale, std::max(100, static_cast<int>(std::ceil(needed))));
    return map_figure(input, contents, room_mm, first.place, first.origin, {}).figure;
}

Metres grid_step(int scale, LengthUnits units) { return of_units(round_below(in_units(0.050 * scale, units)), units); }

Figure map_strip(const SheetInput& input, LocalPoint at, int scale, double width_mm) {
    Figure strip(QSizeF(width_mm, map_strip_mm));
    add_scale_bar(strip, scale, input.units);
    add_norths(strip, input, at, 74.0, width_mm - 74.0);
    add_key(strip, width_mm);
    return strip;
}

std::optional<std::vector<MapPage>> map_pages(const SheetInput& input, const SheetContents& contents, QSizeF room_mm,
                                              const std::stop_token& stop) {
    const QSizeF room = room_mm - QSizeF(0.0, map_strip_mm);
    const auto [whole, origin] = first_map(input, contents, room);
    std::vector<MapPlace> more;
    if (!map_figure(input, contents, room, whole, origin, {}).sets_without_number.empty())
        more = larger_maps(input, contents, room, whole.scale, origin, stop);
    std::vector<MapPlace> places{whole};
    places.insert(places.end(), more.begin(), more.end());
    std::vector<MapPage> pages;
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (stop.stop_requested()) return std::nullopt;
        MapPage page{Figure(room_mm), {}, places[i].scale};
        page.figure.place(
            map_figure(input, contents, room, places[i], origin, i == 0 ? more : std::vector<MapPlace>()).figure, {});
        page.figure.place(map_strip(input, places[i].centre, places[i].scale, room_mm.width()), {0.0, room.height()});
        page.title = places.size() == 1 ? sheet_words(QT_TRANSLATE_NOOP("Sheets", "Map, 1:%1")).arg(places[i].scale)
                                        : sheet_words(QT_TRANSLATE_NOOP("Sheets", "Map %1 of %2, 1:%3"))
                                              .arg(i + 1)
                                              .arg(places.size())
                                              .arg(places[i].scale);
        pages.push_back(std::move(page));
    }
    return pages;
}

}  // namespace plugside
