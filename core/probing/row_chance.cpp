#include "core/probing/row_chance.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace plugside {

namespace {

constexpr int spread_cells = 2;

}  // namespace

double RowChance::presence() const { return std::accumulate(chance.begin(), chance.end(), 0.0); }

double RowChance::mean_m() const {
    double sum = 0.0;
    double all = 0.0;
    for (std::size_t i = 0; i < chance.size(); ++i) {
        sum += static_cast<double>(chance[i]) * at_m(i);
        all += static_cast<double>(chance[i]);
    }
    return all > 0.0 ? sum / all : 0.0;
}

double RowChance::sd_m() const {
    const double mean = mean_m();
    double sum = 0.0;
    double all = 0.0;
    for (std::size_t i = 0; i < chance.size(); ++i) {
        sum += static_cast<double>(chance[i]) * (at_m(i) - mean) * (at_m(i) - mean);
        all += static_cast<double>(chance[i]);
    }
    return all > 0.0 ? std::sqrt(sum / all) : 0.0;
}

RowChanceMaker::RowChanceMaker(double from_m, double to_m)
    : from_m_(from_m), done_(static_cast<std::size_t>(std::lround((to_m - from_m) / row_cell_m)) + 1, 0.0), group_(done_) {}

void RowChanceMaker::add(double at_m, double weight, double slant) {
    group_weight_ += weight;
    group_slant_ += weight * slant;
    const double cell = (at_m - from_m_) / row_cell_m;
    if (!(cell > -10.0) || cell > static_cast<double>(group_.size()) + 10.0) return;
    const auto nearest = static_cast<std::ptrdiff_t>(std::lround(cell));
    constexpr double share[] = {3.0 / 9.0, 2.0 / 9.0, 1.0 / 9.0};  // a triangle
    for (std::ptrdiff_t k = -spread_cells; k <= spread_cells; ++k) {
        const std::ptrdiff_t to = nearest + k;
        if (to < 0 || to >= static_cast<std::ptrdiff_t>(group_.size())) continue;
        group_[static_cast<std::size_t>(to)] += weight * share[std::abs(k)];
    }
}

void RowChanceMaker::close_group(double mass) {
    if (group_weight_ > 0.0) {
        for (std::size_t i = 0; i < done_.size(); ++i) done_[i] += group_[i] * (mass / group_weight_);
        slant_sum_ += mass * group_slant_ / group_weight_;
        slant_weight_ += mass;
    }
    std::fill(group_.begin(), group_.end(), 0.0);
    group_weight_ = group_slant_ = 0.0;
}

RowChance RowChanceMaker::made() const {
    RowChance row;
    row.first_m = from_m_;
    row.slant = slant_weight_ > 0.0 ? slant_sum_ / slant_weight_ : 1.0;
    row.chance.reserve(done_.size());
    for (const double mass : done_) row.chance.push_back(static_cast<float>(mass));
    return row;
}

RowInHand::RowInHand(const RowChance& row, Metres tunnel_diameter) : row_(row), covered_(row.chance.size() * widths, 0.0F) {
    for (std::size_t w = 0; w < widths; ++w) {
        const double share =
            TunnelSpan::least + (TunnelSpan::most - TunnelSpan::least) * (static_cast<double>(w) + 0.5) / widths;
        reach_m_[w] = 0.5 * tunnel_diameter.value() * share * row.slant;
    }
}

// use(cell, width, share of the cell that the hole newly covers)
template <typename Use>
void RowInHand::for_cells_under(Metres at, Use use) const {
    const double middle = (at.value() - row_.first_m) / row_cell_m;
    const double widest = reach_m_[widths - 1] / row_cell_m + 0.5;
    const auto last = static_cast<double>(row_.chance.size()) - 1.0;
    const double low = std::max(0.0, std::ceil(middle - widest));
    const double high = std::min(last, std::floor(middle + widest));
    for (double cell = low; cell <= high; cell += 1.0) {
        const auto i = static_cast<std::size_t>(cell);
        for (std::size_t w = 0; w < widths; ++w) {
            const double under = std::clamp(reach_m_[w] / row_cell_m + 0.5 - std::abs(cell - middle), 0.0, 1.0);
            const double fresh = std::min(under, 1.0 - static_cast<double>(covered_[i * widths + w]));
            if (fresh > 0.0) use(i, w, fresh);
        }
    }
}

double RowInHand::chance_at(Metres at) const {
    double found = 0.0;
    for_cells_under(
        at, [&](std::size_t cell, std::size_t, double fresh) { found += fresh * static_cast<double>(row_.chance[cell]); });
    return found / widths;
}

double RowInHand::push(Metres at) {
    double found = 0.0;
    for_cells_under(at, [&](std::size_t cell, std::size_t width, double fresh) {
        found += fresh * static_cast<double>(row_.chance[cell]);
        covered_[cell * widths + width] += static_cast<float>(fresh);
    });
    found /= widths;
    not_met_ = std::max(0.0, not_met_ - found);
    return found;
}

LadderPromise promise_of(const RowChance& row, Metres middle, const std::vector<Metres>& rungs, Metres tunnel_diameter) {
    RowInHand in_hand(row, tunnel_diameter);
    double expected = 0.0;
    for (const Metres rung : rungs) {
        expected += in_hand.not_met();  // this hole is pushed when none before it met the run
        in_hand.push(middle + rung);
    }
    return {Probability::of(std::clamp(1.0 - in_hand.not_met(), 0.0, 1.0)), expected};
}

}  // namespace plugside
