#include "app/sheets/close_up_figure.h"

#include <QPolygonF>
#include <algorithm>
#include <array>
#include <cmath>

#include "app/sheets/lettering.h"
#include "app/sheets/mound_figure.h"
#include "app/words/language_here.h"

namespace plugside {

namespace {

constexpr Lettering small_words{9.0, false, Ink::black};
constexpr Lettering small_bold{9.0, true, Ink::black};
constexpr Lettering reading_words{11.0, true, Ink::black};
constexpr double least_fan_m = 0.2;    // of the fan below the plug that is always in the picture
constexpr double fan_m = 0.34;         // as in the close-up on the screen
constexpr double rim_mm = 5.5;         // words along the upper and the lower edge
constexpr double tape_room_mm = 24.0;  // at the left, for the tape and its readings
constexpr double plug_room_mm = 11.0;  // about a plug between two mounds

QString words(const char* text) { return said("Sheets", text); }
QString tape(double metres, LengthUnits units) { return QString::fromStdString(tape_reading(Metres::of(metres), units)); }

// Those of rulers for drawings: metric ones, and inches to the foot.
std::vector<double> scales(LengthUnits units) {
    if (units == LengthUnits::metres) return {5.0, 10.0, 15.0, 20.0, 25.0, 50.0, 75.0, 100.0, 200.0, 500.0, 1000.0};
    return {8.0, 12.0, 16.0, 24.0, 32.0, 48.0, 96.0, 120.0, 240.0, 480.0, 960.0};
}

// The largest of the round scales at which `metres` has room.
double scale_for(double metres, double room_mm, LengthUnits units) {
    const std::vector<double> all = scales(units);
    for (const double scale : all)
        if (metres * 1000.0 / scale <= room_mm) return scale;
    return all.back();
}

class CloseUpMaker {
public:
    CloseUpMaker(const CloseUpScene& scene, LengthUnits units, QSizeF size)
        : scene_(scene), units_(units), width_(size.width()), height_(size.height()), row_(on_sheet(scene.row_degrees)) {
        made_.figure = Figure(size);
    }

    CloseUpFigure make() {
        if (scene_.to)
            lay_out_between();
        else
            lay_out_plug_side();
        draw_run();
        draw_mounds();
        if (scene_.to) draw_whole_tape();
        draw_reading();
        draw_rungs();
        draw_words();
        return made_;
    }

private:
    [[nodiscard]] double per_metre() const { return 1000.0 / made_.scale; }
    [[nodiscard]] QRectF frame() const { return {0.0, 0.0, width_, height_}; }

    void lay_out_plug_side();
    void lay_out_between();
    void draw_run();
    void draw_mounds();
    void draw_whole_tape();
    void draw_reading();
    void draw_rungs();
    void draw_words();
    [[nodiscard]] double step_m() const;
    [[nodiscard]] double radius_mm() const;
    [[nodiscard]] int number_lines() const;
    [[nodiscard]] double numbers_mm() const;  // how far the numbers reach from a row that goes across
    void draw_break(QPointF at);
    void backed_words(QPointF middle, const QString& text, const Lettering& lettering);
    [[nodiscard]] QPointF number_place(std::size_t rung) const;
    [[nodiscard]] QPointF free_of_numbers(QPointF middle, const QString& text) const;

    const CloseUpScene& scene_;
    LengthUnits units_;
    double width_;
    double height_;
    QPointF row_;
    LetteringMeasure measure_;
    CloseUpFigure made_;
    QPointF plug_;
    QPointF middle_;
    std::optional<QPointF> far_plug_;
};

void CloseUpMaker::lay_out_plug_side() {
    const double along = scene_.planned.along.value();
    const double across = scene_.planned.across.value();
    const double up = scene_.half_length_m * std::abs(row_.y());
    const double aside = std::max(scene_.half_length_m * std::abs(row_.x()), 0.2) + std::abs(across);
    const double high = std::max(along + up, 0.1) + 0.03;
    const double low = std::min(-least_fan_m, along - up);
    const double room = height_ - 2.0 * rim_mm;
    made_.scale = std::max(scale_for(high - low, room, units_), scale_for(2.0 * aside, width_ - tape_room_mm, units_));
    const double spare = std::max(room - (high - low) * per_metre(), 0.0);
    // what is spare goes to the fan first
    const double below = std::min(spare, (fan_m - least_fan_m) * per_metre());
    plug_ = {0.5 * (width_ + tape_room_mm), height_ - rim_mm - below + low * per_metre() - 0.5 * (spare - below)};
    middle_ = plug_ + QPointF(across, -along) * per_metre();
}

void CloseUpMaker::lay_out_between() {
    const double along = scene_.planned.along.value();
    const double across = scene_.planned.across.value();
    const double up = scene_.half_length_m * std::abs(row_.y()) + 0.05;
    const double aside = scene_.half_length_m * std::abs(row_.x()) + 0.05;
    const double left = std::min(-0.1, across - aside);
    const double right = std::max(0.1, across + aside);
    const double bottom = height_ - rim_mm - plug_room_mm;
    const double top = rim_mm + plug_room_mm;
    made_.scale = std::max({scale_for(right - left, width_ - tape_room_mm, units_),
                            scale_for(2.0 * up, bottom - top - 24.0, units_), units_ == LengthUnits::metres ? 20.0 : 24.0});
    const double zone = 0.5 * (width_ + tape_room_mm);
    plug_ = {zone - 0.5 * (left + right) * per_metre(), bottom};
    const double span = bottom - top;
    const double whole = scene_.to_distance_m * per_metre();
    far_plug_ = QPointF(plug_.x(), whole <= span ? bottom - whole : top);
    const double row_up = up * per_metre() + 9.0;  // the row's numbers, and a break beyond
    made_.broken = along * per_metre() + row_up > span && whole > span;
    const double share = scene_.to_distance_m > 0.0 ? along / scene_.to_distance_m : 0.5;
    const double height = made_.broken ? span * std::clamp(share, 0.4, 0.6) : along * per_metre();
    middle_ = plug_ + QPointF(across * per_metre(), -height);
}

void CloseUpMaker::draw_run() {
    const QPointF crossing = middle_ + row_ * (scene_.run_offset_m * per_metre());
    const QPointF along = on_sheet(scene_.run_degrees);
    const QPointF aside(-along.y(), along.x());
    const double slant = std::abs(QPointF::dotProduct(aside, row_));
    const double half = std::max(scene_.run_band_m * slant * per_metre(), 0.8);
    const QPointF reach = along * (width_ + height_);
    const QRectF inside = frame().adjusted(scene_.to ? tape_room_mm : 0.0, rim_mm, 0.0, -rim_mm);
    const QPolygonF band = QPolygonF({crossing - reach - aside * half, crossing + reach - aside * half,
                                      crossing + reach + aside * half, crossing - reach + aside * half})
                               .intersected(QPolygonF(inside));
    Stroke area;
    area.closed = true;
    area.line.reset();
    area.fill = Ink::pale;
    for (qsizetype i = 0; i + 1 < band.size(); ++i) area.points.push_back(band[i]);
    if (area.points.size() > 2) made_.figure.add(std::move(area));
    for (auto& piece : inside_box({crossing - reach, crossing + reach}, inside))
        made_.figure.add(Stroke{piece, false, 0.6, Ink::black, {}, {}});
}

void CloseUpMaker::draw_mounds() {
    const double whole_fan = fan_m * per_metre();
    if (!far_plug_) {
        const double room = height_ - rim_mm - plug_.y();
        add_mound(made_.figure, plug_, scene_.from.turn_degrees, scene_.from.freshness,
                  std::max(std::min(whole_fan, room), 5.0));
        const QPointF beside(plug_.x() + 0.5 * measure_.width_mm(scene_.from.name, small_bold) + 3.5, plug_.y() + 1.2);
        backed_words(free_of_numbers(beside, scene_.from.name), scene_.from.name, small_bold);
        return;
    }
    const double reach = std::min(whole_fan, plug_room_mm - 1.0);
    Stroke way{{plug_, *far_plug_}, false, 0.2, Ink::dark, {}, {1.2, 1.2}};
    made_.figure.add(way);
    for (const auto& [fan, at] : {std::pair{&scene_.from, plug_}, std::pair{&*scene_.to, *far_plug_}}) {
        add_mound(made_.figure, at, fan->turn_degrees, fan->freshness, reach);
        backed_words({at.x() + reach + 2.0 + 0.5 * measure_.width_mm(fan->name, small_bold), at.y()}, fan->name, small_bold);
    }
    const bool beyond = scene_.to_distance_m * per_metre() > plug_.y() - far_plug_->y() + 0.01;
    const double row_up = scene_.half_length_m * std::abs(row_.y()) * per_metre();
    if (made_.broken) draw_break({plug_.x(), 0.5 * (plug_.y() + middle_.y() + row_up)});
    if (beyond) draw_break({plug_.x(), 0.5 * (far_plug_->y() + middle_.y() - row_up)});
}

// The zigzag that says: shortened here.
void CloseUpMaker::draw_break(QPointF at) {
    made_.figure.box({at.x() - 2.4, at.y() - 1.0, 4.8, 2.0}, 0.0, Ink::white);
    for (const double y : {-1.0, 1.0})
        made_.figure.add(Stroke{{at + QPointF(-2.4, y + 0.5), at + QPointF(-0.8, y - 0.5), at + QPointF(0.8, y + 0.5),
                                 at + QPointF(2.4, y - 0.5)},
                                false,
                                0.3,
                                Ink::black,
                                {},
                                {}});
}

void CloseUpMaker::draw_whole_tape() {
    const double top = rim_mm + 8.0;
    const double bottom = height_ - rim_mm - 5.0;
    made_.tape_scale = scale_for(scene_.to_distance_m, bottom - top, units_);
    const double mm = 1000.0 / *made_.tape_scale;
    const QPointF zero(2.5, bottom);
    const auto mark = [&](double metres, double half) {
        const QPointF at = zero - QPointF(0.0, metres * mm);
        made_.figure.line(at - QPointF(half, 0.0), at + QPointF(half, 0.0), 0.4);
        return at;
    };
    made_.figure.line(zero, zero - QPointF(0.0, scene_.to_distance_m * mm), 0.5);
    mark(0.0, 1.6);
    const QPointF end = mark(scene_.to_distance_m, 1.6);
    const QPointF row = mark(scene_.planned.along.value(), 2.4);
    made_.figure.words(zero + QPointF(3.0, 3.4), scene_.from.name, small_words);
    made_.figure.words(end + QPointF(3.0, -1.0), scene_.to->name, small_words);
    // the row's reading stands beside its mark, the whole length beside the end: apart where they would meet
    double whole_y = end.y() + 3.2;
    if (std::abs(row.y() + 1.4 - whole_y) < 4.2) whole_y = end.y() - 4.6;
    made_.figure.words({zero.x() + 3.0, whole_y}, tape(scene_.to_distance_m, units_), small_words);
    made_.figure.words(row + QPointF(3.2, 1.4), tape(scene_.planned.along.value(), units_), reading_words);
}

void CloseUpMaker::draw_reading() {
    const double across = scene_.planned.across.value();
    if (!scene_.to) {
        const double x = std::min(plug_.x(), middle_.x()) - 12.0;
        const QPointF low(x, plug_.y());
        const QPointF high(x, middle_.y());
        made_.figure.add(Stroke{{plug_, low}, false, 0.2, Ink::dark, {}, {0.8, 0.8}});
        made_.figure.add(Stroke{{middle_, high}, false, 0.2, Ink::dark, {}, {0.8, 0.8}});
        made_.figure.line(low, high, 0.4);
        for (const QPointF end : {low, high}) made_.figure.line(end - QPointF(1.6, 0.0), end + QPointF(1.6, 0.0), 0.4);
        const QString reading = tape(scene_.planned.along.value(), units_);
        backed_words({x - 2.2 - 0.5 * measure_.width_mm(reading, reading_words), 0.5 * (low.y() + high.y())}, reading,
                     reading_words);
    }
    if (std::abs(across) < 0.005) return;
    const QString side =
        across > 0.0 ? words(QT_TRANSLATE_NOOP("Sheets", "%1 right")) : words(QT_TRANSLATE_NOOP("Sheets", "%1 left"));
    const QPointF foot(plug_.x(), middle_.y());
    made_.figure.line(foot, middle_, 0.4);
    const QString text = side.arg(tape(std::abs(across), units_));
    const double up = scene_.half_length_m * std::abs(row_.y()) * per_metre();
    const bool row_goes_up = std::abs(row_.y()) > 0.7;
    backed_words({0.5 * (foot.x() + middle_.x()), middle_.y() - up - (row_goes_up ? 3.5 : numbers_mm() + 2.5)}, text,
                 reading_words);
}

void CloseUpMaker::backed_words(QPointF middle, const QString& text, const Lettering& lettering) {
    const double width = measure_.width_mm(text, lettering) + 0.8;
    const double height = 1.05 * lettering.size_pt * mm_per_point;
    const double x = std::clamp(middle.x(), 0.5 * width, width_ - 0.5 * width);
    made_.figure.box({x - 0.5 * width, middle.y() - 0.5 * height, width, height}, 0.0, Ink::white);
    made_.figure.words({x, middle.y() + 0.36 * lettering.size_pt * mm_per_point}, text, lettering, Side::middle);
}

double CloseUpMaker::step_m() const {
    double step = 1.0;
    for (const double rung : scene_.rungs_m)
        for (const double other : scene_.rungs_m)
            if (rung < other) step = std::min(step, other - rung);
    return step;
}

double CloseUpMaker::radius_mm() const { return std::clamp(0.4 * step_m() * per_metre(), 0.6, 1.6); }

// In how many lines the numbers of rungs stand: figures are wider than high, so that along a row that goes across they need more room.
int CloseUpMaker::number_lines() const {
    const double step_mm = step_m() * per_metre();
    const double needed_mm = std::abs(row_.y()) > 0.7 ? 3.6 : (scene_.rungs_m.size() > 9 ? 5.0 : 3.2);
    return step_mm >= needed_mm ? 1 : (2.0 * step_mm >= needed_mm ? 2 : 4);
}

double CloseUpMaker::numbers_mm() const { return radius_mm() + (number_lines() == 4 ? 8.0 : 4.6); }

QPointF CloseUpMaker::number_place(std::size_t rung) const {
    const QPointF beside(-row_.y(), row_.x());
    const bool row_goes_up = std::abs(row_.y()) > 0.7;
    const int sides = number_lines();
    const long place = std::lround(scene_.rungs_m[rung] / step_m());
    const long turn = ((place % sides) + sides) % sides;
    const double away = radius_mm() + (row_goes_up ? 3.4 : 2.6) + (turn >= 2 ? (row_goes_up ? 4.4 : 3.4) : 0.0);
    return middle_ + row_ * (scene_.rungs_m[rung] * per_metre()) + beside * (turn % 2 == 0 ? away : -away);
}

// As far to the right as is needed to leave the numbers of all rungs readable.
QPointF CloseUpMaker::free_of_numbers(QPointF middle, const QString& text) const {
    const double height = 1.05 * small_bold.size_pt * mm_per_point;
    for (std::size_t i = 0; i < scene_.rungs_m.size(); ++i) {
        const QPointF number = number_place(i);
        const double both =
            0.5 * (measure_.width_mm(text, small_bold) + measure_.width_mm(QString::number(i + 1), small_bold)) + 1.6;
        if (std::abs(number.y() - middle.y()) < height && std::abs(number.x() - middle.x()) < both)
            middle.setX(number.x() + both);
    }
    return middle;
}

void CloseUpMaker::draw_rungs() {
    const double radius = radius_mm();
    for (std::size_t i = 0; i < scene_.rungs_m.size(); ++i)
        backed_words(number_place(i), QString::number(i + 1), small_bold);
    for (std::size_t i = scene_.rungs_m.size(); i-- > 0;) {
        const QPointF at = middle_ + row_ * (scene_.rungs_m[i] * per_metre());
        made_.figure.add(Disc{at, radius, 0.35, Ink::black, i == 0 ? Ink::black : Ink::white});
    }
}

void CloseUpMaker::draw_words() {
    const QString stand =
        scene_.to ? words(QT_TRANSLATE_NOOP("Sheets", "looking from %1 to %2")).arg(scene_.from.name, scene_.to->name)
                  : words(QT_TRANSLATE_NOOP("Sheets", "standing at the plug, the fan behind you"));
    made_.figure.words({0.5, ascent_mm(9.0)}, stand, small_words);
    const auto ratio = [](double scale) { return QStringLiteral("1:%1").arg(std::lround(scale)); };
    QString scale = words(QT_TRANSLATE_NOOP("Sheets", "%1, pale: run in 9 of 10")).arg(ratio(made_.scale));
    if (made_.tape_scale)
        scale = words(QT_TRANSLATE_NOOP("Sheets", "tape %1, row %2, pale: run in 9 of 10"))
                    .arg(ratio(*made_.tape_scale), ratio(made_.scale));
    made_.figure.words({0.5, height_ - 1.2}, scale, small_words);
    // north, as it lies for a person who looks along the axis
    const QPointF centre(width_ - 5.0, rim_mm + 6.0);
    const QPointF north = on_sheet(-scene_.axis_bearing_degrees);
    const QPointF aside(-north.y(), north.x());
    made_.figure.add(Disc{centre, 4.6, 0.2, std::nullopt, Ink::white});
    made_.figure.line(centre - north * 4.0, centre + north * 2.0, 0.3);
    made_.figure.add(
        Stroke{{centre + north * 2.0, centre + aside * 1.1, centre - aside * 1.1}, true, 0.2, Ink::black, Ink::black, {}});
    backed_words(centre + north * 4.0, words(QT_TRANSLATE_NOOP("Sheets", "N")), small_bold);
}

}  // namespace

CloseUpFigure close_up_figure(const CloseUpScene& scene, LengthUnits units, QSizeF size_mm) {
    return CloseUpMaker(scene, units, size_mm).make();
}

}  // namespace plugside
