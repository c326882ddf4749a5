// A drawing as a value: lines, areas, discs and words on a sheet, in black, two greys and white. What is printed and what stands in the file
// for a phone are made from the same one, and tests look at it without either.
//
// Units:   millimetres from the upper left corner, y downwards; words in points (1 pt = 25.4 / 72 mm).
// Order:   later shapes lie on earlier ones.
// Least size: no words are smaller than least_words_pt; `add` asserts it.
// Cost:    a shape some tens of bytes.
#pragma once

#include <QLineF>
#include <QPointF>
#include <QRectF>
#include <QSizeF>
#include <QString>
#include <optional>
#include <variant>
#include <vector>

namespace plugside {

inline constexpr double mm_per_point = 25.4 / 72.0;
inline constexpr double least_words_pt = 9.0;

// black; `dark` for what comes second and still has to be read; `pale` for areas; white.
enum class Ink { black, dark, pale, white };

struct Stroke {
    std::vector<QPointF> points;
    bool closed = false;
    double width_mm = 0.25;
    std::optional<Ink> line = Ink::black;
    std::optional<Ink> fill;
    std::vector<double> dashes_mm;  // stroke, gap, ...; empty: unbroken
};

struct Disc {
    QPointF centre;
    double radius_mm = 1.0;
    double width_mm = 0.25;
    std::optional<Ink> line = Ink::black;
    std::optional<Ink> fill;
};

enum class Side { left, middle, right };

struct Lettering {
    double size_pt = 10.0;
    bool bold = false;
    Ink ink = Ink::black;
};

struct WordsAt {
    QPointF baseline;  // of the words' left end, middle or right end
    QString text;
    Lettering lettering;
    Side side = Side::left;
};

using Shape = std::variant<Stroke, Disc, WordsAt>;

class Figure {
public:
    Figure() = default;
    explicit Figure(QSizeF size_mm) : size_(size_mm) {}

    [[nodiscard]] QSizeF size_mm() const { return size_; }
    void set_height(double height_mm) { size_.setHeight(height_mm); }
    [[nodiscard]] const std::vector<Shape>& shapes() const { return shapes_; }
    void add(Shape shape);
    // Another figure with its upper left corner there.
    void place(const Figure& other, QPointF at_mm);

    void line(QPointF from, QPointF to, double width_mm = 0.25, Ink ink = Ink::black);
    void box(const QRectF& place, double width_mm = 0.25, std::optional<Ink> fill = {});
    void words(QPointF baseline, const QString& text, const Lettering& lettering, Side side = Side::left);

private:
    QSizeF size_;
    std::vector<Shape> shapes_;
};

// The pieces of a line that lie inside `box`. O(points).
[[nodiscard]] std::vector<std::vector<QPointF>> inside_box(const std::vector<QPointF>& line, const QRectF& box);

// Parallel lines `spacing_mm` apart, rising to the right, inside rings (even-odd) and the box. O(lines x points).
[[nodiscard]] std::vector<QLineF> hatching(const std::vector<std::vector<QPointF>>& rings, const QRectF& box,
                                           double spacing_mm);

}  // namespace plugside
