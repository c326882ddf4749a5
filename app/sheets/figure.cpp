#include "app/sheets/figure.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace plugside {

namespace {

Shape moved(const Shape& shape, QPointF by) {
    Shape other = shape;
    if (auto* stroke = std::get_if<Stroke>(&other))
        for (QPointF& point : stroke->points) point += by;
    else if (auto* disc = std::get_if<Disc>(&other))
        disc->centre += by;
    else if (auto* words = std::get_if<WordsAt>(&other))
        words->baseline += by;
    return other;
}

// The part of a-b inside the box; nothing when it passes by. Liang and Barsky's clipping.
std::optional<QLineF> clipped(const QLineF& line, const QRectF& box) {
    double from = 0.0;
    double to = 1.0;
    const auto narrow = [&](double step, double room) {
        if (step == 0.0) return room >= 0.0;
        (step < 0.0 ? from : to) = step < 0.0 ? std::max(from, room / step) : std::min(to, room / step);
        return from <= to;
    };
    if (!narrow(-line.dx(), line.x1() - box.left()) || !narrow(line.dx(), box.right() - line.x1()) ||
        !narrow(-line.dy(), line.y1() - box.top()) || !narrow(line.dy(), box.bottom() - line.y1()))
        return std::nullopt;
    return QLineF(line.pointAt(from), line.pointAt(to));
}

}  // namespace

void Figure::add(Shape shape) {
    assert(!std::holds_alternative<WordsAt>(shape) || std::get<WordsAt>(shape).lettering.size_pt >= least_words_pt);
    shapes_.push_back(std::move(shape));
}

void Figure::place(const Figure& other, QPointF at_mm) {
    shapes_.reserve(shapes_.size() + other.shapes_.size());
    for (const Shape& shape : other.shapes_) shapes_.push_back(moved(shape, at_mm));
}

void Figure::line(QPointF from, QPointF to, double width_mm, Ink ink) {
    add(Stroke{{from, to}, false, width_mm, ink, {}, {}});
}

void Figure::box(const QRectF& place, double width_mm, std::optional<Ink> fill) {
    Stroke stroke{
        {place.topLeft(), place.topRight(), place.bottomRight(), place.bottomLeft()}, true, width_mm, Ink::black, fill, {}};
    if (width_mm <= 0.0) stroke.line.reset();
    add(std::move(stroke));
}

void Figure::words(QPointF baseline, const QString& text, const Lettering& lettering, Side side) {
    if (!text.isEmpty()) add(WordsAt{baseline, text, lettering, side});
}

std::vector<std::vector<QPointF>> inside_box(const std::vector<QPointF>& line, const QRectF& box) {
    std::vector<std::vector<QPointF>> pieces;
    bool open = false;
    for (std::size_t i = 1; i < line.size(); ++i) {
        const auto part = clipped({line[i - 1], line[i]}, box);
        if (!part) {
            open = false;
            continue;
        }
        if (!open) pieces.push_back({part->p1()});
        pieces.back().push_back(part->p2());
        open = part->p2() == line[i];
    }
    return pieces;
}

std::vector<QLineF> hatching(const std::vector<std::vector<QPointF>>& rings, const QRectF& box, double spacing_mm) {
    // along the lines x + y stays the same
    double least = box.right() + box.bottom();
    double most = box.left() + box.top();
    for (const auto& ring : rings)
        for (const QPointF corner : ring) {
            least = std::min(least, corner.x() + corner.y());
            most = std::max(most, corner.x() + corner.y());
        }
    least = std::max(least, box.left() + box.top());
    most = std::min(most, box.right() + box.bottom());
    std::vector<QLineF> lines;
    for (double sum = std::ceil(least / spacing_mm) * spacing_mm; sum < most; sum += spacing_mm) {
        std::vector<double> at;
        for (const auto& ring : rings)
            for (std::size_t i = 0; i < ring.size(); ++i) {
                const QPointF a = ring[i];
                const QPointF b = ring[(i + 1) % ring.size()];
                const double over_a = a.x() + a.y() - sum;
                const double over_b = b.x() + b.y() - sum;
                if ((over_a > 0.0) != (over_b > 0.0)) at.push_back(a.x() + (b.x() - a.x()) * over_a / (over_a - over_b));
            }
        std::sort(at.begin(), at.end());
        for (std::size_t i = 1; i < at.size(); i += 2)
            if (const auto part = clipped({at[i - 1], sum - at[i - 1], at[i], sum - at[i]}, box)) lines.push_back(*part);
    }
    return lines;
}

}  // namespace plugside
