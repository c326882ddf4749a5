// A small chart as an SVG element that stands in a page by itself: axes with their labels and ticks, lines, dots, bars.
//
// Units:    data units on both axes, mapped linearly onto a plot area inside `width` x `height` pixels.
// Rows:     an axis of names instead of numbers: row r of n stands at data value r + 0.5, the first one at the top.
// Degenerate input: a chart without data is a frame with axes. Data outside the axes are drawn at the plot's edge.
// Guarantee: no script, no reference to anything outside; the text is escaped.
#pragma once

#include <string>
#include <vector>

namespace plugside {

struct ChartAxis {
    std::string label;
    double from = 0.0;
    double to = 1.0;
    std::vector<double> ticks;
    int tick_decimals = 1;
    std::vector<std::string> rows;  // not empty: names, 0..rows.size() is the axis
};

struct ChartPoint {
    double x = 0.0;
    double y = 0.0;
};

// Classes of the page's style: "run", "act", "soil", "quiet" give ink; "fine" and "broken" lines.
class SvgChart {
public:
    // `told` is read out by what cannot show a picture.
    SvgChart(std::string told, ChartAxis x, ChartAxis y, double width, double height);

    void line(const std::vector<ChartPoint>& points, const std::string& style);
    void area(ChartPoint corner, ChartPoint opposite, const std::string& style);
    void dot(ChartPoint at, double radius, const std::string& style, const std::string& told = {});
    void upright(double x, double from, double to, const std::string& style);  // with a foot and a head
    // Words at a place of the plot, in pixels from its left or right and top edge.
    void note(const std::string& words, double down);
    void note_right(const std::string& words, double down);

    [[nodiscard]] std::string svg() const;

private:
    [[nodiscard]] double px(double x) const;
    [[nodiscard]] double py(double y) const;
    [[nodiscard]] std::string frame() const;
    [[nodiscard]] std::string x_ticks() const;
    [[nodiscard]] std::string y_ticks() const;

    std::string told_;
    ChartAxis x_;
    ChartAxis y_;
    double width_;
    double height_;
    double left_;
    std::string drawn_;
};

// `&`, `<`, `>` and quotes as a page wants them.
[[nodiscard]] std::string escaped(const std::string& text);

}  // namespace plugside
