#include "app/batch/svg_chart.h"

#include <algorithm>

#include "app/batch/formatted.h"

namespace plugside {

namespace {

constexpr double top = 8.0;
constexpr double right = 14.0;
constexpr double bottom = 42.0;
constexpr double left_of_numbers = 48.0;
constexpr double letter_width = 7.2;  // about, of the row names' type

double widest_row(const std::vector<std::string>& rows) {
    std::size_t letters = 0;
    for (const std::string& row : rows) letters = std::max(letters, row.size());
    return letter_width * static_cast<double>(letters);
}

std::string text_at(double x, double y, const char* anchor, const std::string& words, const char* style = "") {
    return formatted("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" class=\"%s\">", x, y, anchor, style) + escaped(words) +
           "</text>";
}

}  // namespace

std::string escaped(const std::string& text) {
    std::string safe_text;
    for (const char letter : text) switch (letter) {
            case '&': safe_text += "&amp;"; break;
            case '<': safe_text += "&lt;"; break;
            case '>': safe_text += "&gt;"; break;
            case '"': safe_text += "&quot;"; break;
            default: safe_text += letter;
        }
    return safe_text;
}

SvgChart::SvgChart(std::string told, ChartAxis x, ChartAxis y, double width, double height)
    : told_(std::move(told)),
      x_(std::move(x)),
      y_(std::move(y)),
      width_(width),
      height_(height),
      left_(y_.rows.empty() ? left_of_numbers : 30.0 + widest_row(y_.rows)) {
    if (y_.rows.empty()) return;
    y_.from = static_cast<double>(y_.rows.size());  // the first row at the top
    y_.to = 0.0;
}

double SvgChart::px(double x) const {
    const double t = std::clamp((x - x_.from) / (x_.to - x_.from), 0.0, 1.0);
    return left_ + t * (width_ - left_ - right);
}

double SvgChart::py(double y) const {
    const double t = std::clamp((y - y_.from) / (y_.to - y_.from), 0.0, 1.0);
    return height_ - bottom - t * (height_ - bottom - top);
}

void SvgChart::line(const std::vector<ChartPoint>& points, const std::string& style) {
    drawn_ += "<polyline class=\"line " + style + "\" points=\"";
    for (const ChartPoint p : points) drawn_ += formatted("%.1f,%.1f ", px(p.x), py(p.y));
    drawn_ += "\"/>";
}

void SvgChart::area(ChartPoint corner, ChartPoint opposite, const std::string& style) {
    const double x = std::min(px(corner.x), px(opposite.x));
    const double y = std::min(py(corner.y), py(opposite.y));
    drawn_ += formatted("<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\" class=\"area %s\"/>", x, y,
                        std::abs(px(opposite.x) - px(corner.x)), std::abs(py(opposite.y) - py(corner.y)), style.c_str());
}

void SvgChart::dot(ChartPoint at, double radius, const std::string& style, const std::string& told) {
    drawn_ +=
        formatted("<circle cx=\"%.1f\" cy=\"%.1f\" r=\"%.1f\" class=\"dot %s\">", px(at.x), py(at.y), radius, style.c_str());
    if (!told.empty()) drawn_ += "<title>" + escaped(told) + "</title>";
    drawn_ += "</circle>";
}

void SvgChart::upright(double x, double from, double to, const std::string& style) {
    constexpr double half_foot = 3.0;
    drawn_ += formatted("<path class=\"line %s\" d=\"M%.1f %.1fV%.1fM%.1f %.1fh%.1fM%.1f %.1fh%.1f\"/>", style.c_str(),
                        px(x), py(from), py(to), px(x) - half_foot, py(from), 2.0 * half_foot, px(x) - half_foot, py(to),
                        2.0 * half_foot);
}

void SvgChart::note(const std::string& words, double down) {
    drawn_ += text_at(left_ + 6.0, top + down, "start", words, "note");
}

void SvgChart::note_right(const std::string& words, double down) {
    drawn_ += text_at(width_ - right - 6.0, top + down, "end", words, "note");
}

std::string SvgChart::x_ticks() const {
    std::string text;
    const double foot = height_ - bottom;
    for (const double tick : x_.ticks)
        text += formatted("<path class=\"tick\" d=\"M%.1f %.1fv4\"/>", px(tick), foot) +
                text_at(px(tick), foot + 16.0, "middle", formatted("%.*f", x_.tick_decimals, tick));
    return text + text_at(0.5 * (left_ + width_ - right), height_ - 8.0, "middle", x_.label, "label");
}

std::string SvgChart::y_ticks() const {
    std::string text;
    for (const double tick : y_.ticks)
        text += formatted("<path class=\"tick\" d=\"M%.1f %.1fh-4\"/>", left_, py(tick)) +
                text_at(left_ - 7.0, py(tick) + 4.0, "end", formatted("%.*f", y_.tick_decimals, tick));
    for (std::size_t r = 0; r < y_.rows.size(); ++r)
        text += text_at(left_ - 7.0, py(static_cast<double>(r) + 0.5) + 4.0, "end", y_.rows[r]);
    const double middle = 0.5 * (top + height_ - bottom);
    return text +
           formatted("<text class=\"label\" text-anchor=\"middle\" transform=\"translate(12 %.1f) rotate(-90)\">", middle) +
           escaped(y_.label) + "</text>";
}

std::string SvgChart::frame() const {
    return formatted("<rect class=\"frame\" x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/>", left_, top,
                     width_ - left_ - right, height_ - bottom - top);
}

std::string SvgChart::svg() const {
    return formatted(
               "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\" viewBox=\"0 0 %.0f %.0f\" "
               "role=\"img\">",
               width_, height_, width_, height_) +
           "<title>" + escaped(told_) + "</title>" + frame() + drawn_ + x_ticks() + y_ticks() + "</svg>\n";
}

}  // namespace plugside
