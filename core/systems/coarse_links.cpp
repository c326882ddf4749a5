#include "core/systems/coarse_links.h"

#include <algorithm>
#include <cmath>

#include "core/systems/two_threads.h"

namespace plugside {

namespace {

// Printed by tests/training/fit_coarse_links.
constexpr CoarseFeatures weights{3.142F, 0.436F, -0.391F, -0.886F, -0.730F, 0.854F, 0.435F, -0.335F};

constexpr std::uint8_t not_found = 255;

// Place of `wanted` in the row of `mark`, 0 the nearest.
std::uint8_t rank_in_row(const CoarseNeighbours& rows, std::uint32_t mark, std::uint32_t wanted) {
    const std::uint32_t* row = rows.index.data() + mark * rows.row;
    for (std::uint8_t k = 0; k < rows.count[mark]; ++k)
        if (row[k] == wanted) return k;
    return not_found;
}

// The link is listed once: in the row of `first` when it is there, else in that of `second`.
bool is_listed_here(const CoarseNeighbours& rows, std::uint32_t owner, std::uint32_t other) {
    return owner < other || rank_in_row(rows, other, owner) == not_found;
}

// Marks nearest to either end that lie in the circle whose diameter the link is.
float marks_in_circle(const CoarseGround& ground, const CoarseNeighbours& rows, std::uint32_t a, std::uint32_t b) {
    const LocalPoint p = ground.take_offs[a];
    const LocalPoint q = ground.take_offs[b];
    const auto inside_of_row = [&](std::uint32_t mark, std::uint32_t left_out) {
        int inside = 0;
        const std::uint32_t* row = rows.index.data() + mark * rows.row;
        for (std::uint8_t k = 0; k < rows.count[mark]; ++k) {
            const LocalPoint m = ground.take_offs[row[k]];
            if (row[k] != left_out && dot(p - m, q - m) < 0.0) ++inside;
        }
        return inside;
    };
    return static_cast<float>(std::max(inside_of_row(a, b), inside_of_row(b, a)));
}

float across(const std::optional<Bearing>& fan, LocalVector link, double length_m) {
    if (!fan || length_m <= 0.0) return 0.0F;
    const double sine = cross(fan->unit(), link) / length_m;
    return static_cast<float>(sine * sine - 0.5);
}

float score_of(const CoarseFeatures& features) {
    float sum = 0.0F;
    for (std::size_t k = 0; k < coarse_feature_count; ++k) sum += weights[k] * features[k];
    return sum;
}

// Links owned by the marks of one piece; pieces are put together in their order.
void links_of_piece(const CoarseGround& ground, const CoarseNeighbours& rows, std::span<const float> spacing_m,
                    std::size_t begin, std::size_t end, CoarseLink* out) {
    for (std::size_t i = begin; i < end; ++i) {
        const auto owner = static_cast<std::uint32_t>(i);
        for (std::size_t k = 0; k < rows.count[i]; ++k) {
            const std::uint32_t other = rows.index[i * rows.row + k];
            CoarseLink& link = out[i * rows.row + k];
            link = {owner, owner, 0.0F};  // of a mark with itself: no link
            if (!is_listed_here(rows, owner, other)) continue;
            const auto [first, second] = std::minmax(owner, other);
            link = {first, second, score_of(coarse_features(ground, rows, spacing_m, first, second))};
        }
    }
}

}  // namespace

std::vector<float> coarse_spacing(const CoarseNeighbours& rows, Metres reach) {
    const std::size_t marks = rows.count.size();
    std::vector<float> second(marks);
    for (std::size_t i = 0; i < marks; ++i)
        second[i] = rows.count[i] > 1 ? rows.distance_m[i * rows.row + 1] : static_cast<float>(reach.value());
    std::vector<float> spacing(marks);
    std::vector<float> about;
    for (std::size_t i = 0; i < marks; ++i) {
        about.assign(1, second[i]);
        for (std::size_t k = 0; k < rows.count[i]; ++k) about.push_back(second[rows.index[i * rows.row + k]]);
        const auto middle = about.begin() + static_cast<std::ptrdiff_t>(about.size() / 2);
        std::nth_element(about.begin(), middle, about.end());
        spacing[i] = std::max(*middle, 0.05F);  // marks in one spot: nothing is nearer than a tunnel is wide
    }
    return spacing;
}

CoarseFeatures coarse_features(const CoarseGround& ground, const CoarseNeighbours& rows, std::span<const float> spacing_m,
                               std::uint32_t first, std::uint32_t second) {
    const LocalVector step = ground.take_offs[second] - ground.take_offs[first];
    const double length_m = step.length_m();
    const auto length = static_cast<float>(length_m);
    const float spacing = std::sqrt(spacing_m[first] * spacing_m[second]);
    const auto rank = [&](std::uint32_t from, std::uint32_t to) {
        return std::min<std::size_t>(rank_in_row(rows, from, to), rows.row) + 1;
    };
    const auto [lower, higher] = std::minmax({rank(first, second), rank(second, first)});
    const auto [narrow, wide] = std::minmax({spacing_m[first], spacing_m[second]});
    const float turned = across(ground.fans[first], step, length_m) + across(ground.fans[second], step, length_m);
    const float relative = length / spacing;
    return {1.0F,
            std::log(relative + 0.1F),
            relative,
            std::log(static_cast<float>(lower)),
            std::log(static_cast<float>(higher)),
            turned,
            marks_in_circle(ground, rows, first, second),
            std::log(wide / narrow)};
}

std::optional<std::vector<CoarseLink>> coarse_links(const CoarseGround& ground, const CoarseNeighbours& rows, Metres reach,
                                                    const Progress& progress) {
    const std::vector<float> spacing = coarse_spacing(rows, reach);
    std::vector<CoarseLink> links(rows.index.size());
    const bool done = on_two_threads(rows.count.size(), progress, [&](std::size_t begin, std::size_t end) {
        links_of_piece(ground, rows, spacing, begin, end, links.data());
    });
    if (!done) return std::nullopt;
    std::erase_if(links, [](const CoarseLink& link) { return link.first == link.second; });
    return links;
}

}  // namespace plugside
