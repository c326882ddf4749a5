#include "core/systems/link_net_input.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cmath>
#include <numbers>

#include "core/geometry/near_places.h"
#include "core/systems/link_measures.h"
#include "core/systems/two_threads.h"

namespace plugside {

namespace {

constexpr std::size_t hats = 10;
constexpr std::array<double, hats> hat_at{0.25, 0.5, 0.75, 1.0, 1.35, 1.75, 2.25, 3.0, 4.0, 6.0};  // length over spacing
constexpr double default_spacing_m = 2.0;  // of a mark alone: our assumption
constexpr double shortest = 0.02;          // a link's length over the spacing is told no shorter: our assumption
constexpr double shared_memory_s = 600.0;  // within which a receiver's shared error drifts: our assumption
constexpr std::size_t marks_a_piece = 64;
constexpr std::size_t links_a_piece = 128;
constexpr double fan_sd_radians = 15.0 * std::numbers::pi / 180.0;    // reading a fan by eye: our assumption
constexpr double square_sd_radians = 20.0 * std::numbers::pi / 180.0;  // lean of laterals and turn of runs: our assumption

double median(std::vector<double>& values) {
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
    std::nth_element(values.begin(), middle, values.end());
    return *middle;
}

// The lengths of each mark's links, ascending.
std::vector<std::vector<double>> sorted_lengths(std::size_t marks, const std::vector<Link>& links, const LinkRows& rows) {
    std::vector<std::vector<double>> lengths(marks);
    for (std::size_t i = 0; i < marks; ++i) {
        for (std::uint32_t at = rows.start[i]; at < rows.start[i + 1]; ++at)
            lengths[i].push_back(links[rows.link[at]].length_m);
        std::sort(lengths[i].begin(), lengths[i].end());
    }
    return lengths;
}

// The median over a mark and the far ends of its links of their distance to the neighbour of rank `rank`.
std::vector<double> median_about(std::size_t rank, const std::vector<std::vector<double>>& lengths,
                                 const std::vector<Link>& links, const LinkRows& rows) {
    std::vector<double> result(lengths.size(), default_spacing_m);
    std::vector<double> about;
    for (std::uint32_t i = 0; i < lengths.size(); ++i) {
        about.clear();
        const auto add = [&](std::uint32_t j) {
            if (lengths[j].size() >= rank) about.push_back(lengths[j][rank - 1]);
        };
        add(i);
        for (std::uint32_t at = rows.start[i]; at < rows.start[i + 1]; ++at) add(other_end(links[rows.link[at]], i));
        if (!about.empty()) result[i] = std::max(median(about), 0.05);
    }
    return result;
}

class InputMaker {
public:
    InputMaker(const std::vector<Mark>& marks, const std::vector<Link>& links, const LinkRows& rows)
        : marks_(marks),
          links_(links),
          rows_(rows),
          lengths_(sorted_lengths(marks.size(), links, rows)),
          spacing_(median_about(2, lengths_, links, rows)),
          fifth_(median_about(5, lengths_, links, rows)) {}

    void tell_mark(std::uint32_t i, float* out) const {
        for (std::size_t r = 0; r < 8; ++r)
            *out++ = static_cast<float>(
                r < lengths_[i].size() ? std::log(std::clamp(lengths_[i][r] / spacing_[i], shortest, 12.0)) : std::log(4.0));
        *out++ = marks_[i].fan ? 1.0F : 0.0F;
        for (const Freshness age : {Freshness::unknown, Freshness::fresh, Freshness::older, Freshness::crushed})
            *out++ = marks_[i].freshness == age ? 1.0F : 0.0F;
        *out++ = static_cast<float>(std::log(spacing_[i] / 2.0));
        *out++ = static_cast<float>(std::log(fifth_[i] / spacing_[i]));
    }

    void tell_link(std::size_t e, float* out) const {
        const Link& link = links_[e];
        const double spacing = std::sqrt(spacing_[link.first] * spacing_[link.second]);
        const double relative = std::max(link.length_m / spacing, shortest);
        const double log_relative = std::log2(std::clamp(relative, 0.125, 8.0));
        tell_hats(relative, out);
        out += hats;
        const auto put = [&](double value) { *out++ = static_cast<float>(value); };
        const double first = across(link, link.first);
        const double second = across(link, link.second);
        put(first + second);
        put(first * second);
        put((first + second) * log_relative);
        const auto [between_first, disc_first] = marks_between(field(), link, link.first);
        const auto [between_second, disc_second] = marks_between(field(), link, link.second);
        put(std::min(std::max(between_first, between_second), 4));
        put(std::min(std::max(disc_first, disc_second), 4));
        const double rank_one = std::log2(link.rank_of_first);
        const double rank_other = std::log2(link.rank_of_second);
        put(std::max(rank_one, rank_other));
        put(std::min(rank_one, rank_other));
        const double local =
            std::log(std::max(link.length_m, 0.05 * spacing) / std::sqrt(second_of(link.first) * second_of(link.second)));
        put(std::clamp(local, -2.0, 3.0));
        put(std::pow(std::clamp(local, -2.0, 3.0), 2.0));
        const double on_first = goes_on(field(), link, link.first, spacing);
        const double on_second = goes_on(field(), link, link.second, spacing);
        put(on_first + on_second);
        put(std::min(on_first, on_second));
        put(ages_differ(marks_[link.first], marks_[link.second]) ? 1.0 : 0.0);
        put(std::clamp(std::log(spacing / std::sqrt(fifth_[link.first] * fifth_[link.second])), -2.0, 1.0));
        put(std::log(relative));
        put(std::log(std::max(link.length_m, 0.05) / 2.0));
        put(std::log(std::max(spacing_[link.first], spacing_[link.second]) /
                     std::min(spacing_[link.first], spacing_[link.second])));
        tell_times(link, out);
        tell_accuracy(link, spacing, out);
    }

private:
    // The standard deviation of the distance between both marks by their receivers, over the spacing.
    void tell_accuracy(const Link& link, double spacing, float* out) const {
        const Mark& a = marks_[link.first];
        const Mark& b = marks_[link.second];
        if (!a.shared_sd_m || !b.shared_sd_m) {
            *out++ = 0.0F;
            *out++ = 0.0F;
            return;
        }
        double alike = 0.0;  // share of the drifting part that both have in common
        if (a.walk == b.walk && a.time && b.time)
            alike = std::exp(-std::abs(std::chrono::duration<double>(*a.time - *b.time).count()) / shared_memory_s);
        const double shared = *a.shared_sd_m * *a.shared_sd_m + *b.shared_sd_m * *b.shared_sd_m -
                              2.0 * alike * *a.shared_sd_m * *b.shared_sd_m;
        const double own = a.position_sd_m * a.position_sd_m + b.position_sd_m * b.position_sd_m;
        *out++ = static_cast<float>(std::clamp(std::log(std::sqrt(shared + own) / spacing), -4.0, 2.0));
        *out++ = 1.0F;
    }

    static void tell_hats(double relative, float* out) {
        const double x = std::log2(std::clamp(relative, hat_at.front(), hat_at.back()));
        std::size_t right = 1;
        while (right + 1 < hats && std::log2(hat_at[right]) < x) ++right;
        const double from = std::log2(hat_at[right - 1]);
        const double to = std::log2(hat_at[right]);
        const double t = std::clamp((x - from) / (to - from), 0.0, 1.0);
        std::fill(out, out + hats, 0.0F);
        out[right - 1] = static_cast<float>(1.0 - t);
        out[right] = static_cast<float>(t);
    }

    void tell_times(const Link& link, float*& out) const {
        const Mark& a = marks_[link.first];
        const Mark& b = marks_[link.second];
        const bool timed = a.time && b.time;
        const double seconds = timed ? std::abs(std::chrono::duration<double>(*a.time - *b.time).count()) : 0.0;
        *out++ = timed ? static_cast<float>(std::log1p(seconds / 20.0) - 2.5) : 0.0F;
        *out++ = timed ? 1.0F : 0.0F;
        *out++ = a.walk == b.walk ? 0.0F : 1.0F;
    }

    [[nodiscard]] double second_of(std::uint32_t i) const {
        return lengths_[i].size() >= 2 ? std::max(lengths_[i][1], 0.05 * spacing_[i]) : spacing_[i];
    }

    // -1 along the fan's axis .. 1 across it, shrunk by what the errors leave of it; 0 without a fan.
    [[nodiscard]] double across(const Link& link, std::uint32_t end) const {
        const Mark& here = marks_[end];
        if (!here.fan) return 0.0;
        const Mark& there = marks_[other_end(link, end)];
        const std::optional<Bearing> direction = Bearing::along(there.take_off - here.take_off);
        if (!direction) return 0.0;
        const double place_variance = here.position_sd_m * here.position_sd_m + there.position_sd_m * there.position_sd_m;
        const double d = std::max(link.length_m, 1e-6);
        const double angle_variance = fan_sd_radians * fan_sd_radians + square_sd_radians * square_sd_radians;
        return -std::cos(2.0 * (direction->radians() - here.fan->radians())) *
               std::exp(-2.0 * (angle_variance + place_variance / (d * d)));
    }

    [[nodiscard]] LinkedMarks field() const { return {marks_, links_, rows_}; }

    const std::vector<Mark>& marks_;
    const std::vector<Link>& links_;
    const LinkRows& rows_;
    std::vector<std::vector<double>> lengths_;
    std::vector<double> spacing_;
    std::vector<double> fifth_;
};

std::vector<LinkNetInput::Triangle> triangles_of(const std::vector<Link>& links, const LinkRows& rows, std::size_t marks) {
    std::vector<LinkNetInput::Triangle> triangles;
    std::vector<std::uint32_t> link_to(marks, no_link);  // of the first mark under the hand
    std::uint32_t e = 0;
    for (std::uint32_t i = 0; i < marks; ++i) {
        for (std::uint32_t at = rows.start[i]; at < rows.start[i + 1]; ++at)
            link_to[other_end(links[rows.link[at]], i)] = rows.link[at];
        for (; e < links.size() && links[e].first == i; ++e) {
            const std::uint32_t j = links[e].second;
            for (std::uint32_t at = rows.start[j]; at < rows.start[j + 1]; ++at) {
                const std::uint32_t third = other_end(links[rows.link[at]], j);
                if (third != i && link_to[third] != no_link) triangles.push_back({e, link_to[third], rows.link[at]});
            }
        }
        for (std::uint32_t at = rows.start[i]; at < rows.start[i + 1]; ++at)
            link_to[other_end(links[rows.link[at]], i)] = no_link;
    }
    return triangles;
}

bool cross_inside(const std::vector<Mark>& marks, const Link& a, const Link& b) {
    if (a.first == b.first || a.first == b.second || a.second == b.first || a.second == b.second) return false;
    const LocalPoint p = marks[a.first].take_off;
    const LocalPoint q = marks[a.second].take_off;
    const LocalPoint r = marks[b.first].take_off;
    const LocalPoint s = marks[b.second].take_off;
    return cross(q - p, r - p) * cross(q - p, s - p) < 0.0 && cross(s - r, p - r) * cross(s - r, q - r) < 0.0;
}

void tell_surroundings(const std::vector<Mark>& marks, LinkNetInput& input) {
    std::vector<LocalPoint> take_offs;
    take_offs.reserve(marks.size());
    for (const Mark& mark : marks) take_offs.push_back(mark.take_off);
    const NearPlaces near(take_offs);
    input.window = std::min(net_window, marks.size());
    input.surroundings.resize(marks.size() * input.window);
    const auto look = [&](std::size_t from, std::size_t to) {
        for (std::size_t i = from; i < to; ++i) {
            std::uint32_t* out = &input.surroundings[i * input.window];
            std::uint32_t* const first = out;
            for (const NearPlaces::Found& found : near.nearest(take_offs[i], input.window))
                *out++ = static_cast<std::uint32_t>(found.index);
            std::sort(first, out);
        }
    };
    on_two_threads(marks.size(), {}, look, marks_a_piece);
}

}  // namespace

std::span<const std::string_view> net_mark_names() {
    static constexpr std::array<std::string_view, net_mark_inputs> names{
        "near_1",  "near_2",      "near_3", "near_4", "near_5",  "near_6",  "near_7",  "near_8",
        "has_fan", "age_unknown", "fresh",  "older",  "crushed", "spacing", "crowding"};
    return names;
}

std::span<const std::string_view> net_link_names() {
    static constexpr std::array<std::string_view, net_link_inputs> names{
        "gap_0.25",      "gap_0.5",         "gap_0.75",      "gap_1",       "gap_1.35",     "gap_1.75",
        "gap_2.25",      "gap_3",           "gap_4",         "gap_6",       "fans_across",  "fans_both",
        "fans_far",      "between",         "between_close", "rank_larger", "rank_smaller", "local",
        "local_squared", "goes_on",         "goes_on_least", "age_differs", "crowding",     "length_relative",
        "length",        "spacing_differs", "apart_in_time", "timed",       "walk_differs", "placed_within",
        "accuracy_known"};
    return names;
}

std::vector<std::pair<std::uint32_t, std::uint32_t>> crossing_links(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                                                    const LinkRows& rows) {
    using Pairs = std::vector<std::pair<std::uint32_t, std::uint32_t>>;
    std::vector<Pairs> of_piece((links.size() + links_a_piece - 1) / links_a_piece);
    const auto look = [&](std::size_t from, std::size_t to) {
        Pairs& found = of_piece[from / links_a_piece];
        std::vector<std::uint32_t> beside;
        for (auto e = static_cast<std::uint32_t>(from); e < to; ++e) {
            beside.clear();
            for (const std::uint32_t end : {links[e].first, links[e].second})
                for (std::uint32_t at = rows.start[end]; at < rows.start[end + 1]; ++at) {
                    const std::uint32_t third = other_end(links[rows.link[at]], end);
                    for (std::uint32_t there = rows.start[third]; there < rows.start[third + 1]; ++there)
                        if (rows.link[there] > e && cross_inside(marks, links[e], links[rows.link[there]]))
                            beside.push_back(rows.link[there]);
                }
            std::sort(beside.begin(), beside.end());
            beside.erase(std::unique(beside.begin(), beside.end()), beside.end());
            for (const std::uint32_t other : beside) {
                found.emplace_back(e, other);
                found.emplace_back(other, e);
            }
        }
    };
    on_two_threads(links.size(), {}, look, links_a_piece);
    Pairs crossings;
    for (const Pairs& found : of_piece) crossings.insert(crossings.end(), found.begin(), found.end());
    std::sort(crossings.begin(), crossings.end());
    return crossings;
}

LinkNetInput link_net_input(const std::vector<Mark>& marks, const std::vector<Link>& links, const LinkRows& rows) {
    LinkNetInput input;
    input.marks = marks.size();
    input.links = links.size();
    const InputMaker maker(marks, links, rows);
    input.of_mark.resize(marks.size() * net_mark_inputs);
    input.of_link.resize(links.size() * net_link_inputs);
    for (std::uint32_t i = 0; i < marks.size(); ++i) {
        maker.tell_mark(i, &input.of_mark[i * net_mark_inputs]);
        input.fan.push_back(marks[i].fan ? static_cast<float>(marks[i].fan->radians()) : 0.0F);
        input.has_fan.push_back(marks[i].fan ? 1.0F : 0.0F);
    }
    const auto tell_links = [&](std::size_t from, std::size_t to) {
        for (std::size_t e = from; e < to; ++e) maker.tell_link(e, &input.of_link[e * net_link_inputs]);
    };
    on_two_threads(links.size(), {}, tell_links, links_a_piece);
    for (const Link& link : links) {
        const LocalVector along = marks[link.second].take_off - marks[link.first].take_off;
        input.direction.push_back(static_cast<float>(std::atan2(along.east_m, along.north_m)));
        input.first.push_back(link.first);
        input.second.push_back(link.second);
    }
    tell_surroundings(marks, input);
    input.triangles = triangles_of(links, rows, marks.size());
    input.crossings = crossing_links(marks, links, rows);
    return input;
}

}  // namespace plugside
