#include "core/systems/co_membership.h"

#include <algorithm>

#include "core/systems/keyed_random.h"

namespace plugside {

CoMembership::CoMembership(std::size_t marks, std::size_t most_apart)
    : marks_(marks), most_apart_(most_apart), pair_(1024, 0), times_(1024, 0) {}

void CoMembership::add(const std::vector<std::uint32_t>& group) {
    ++draws_;
    std::vector<std::uint32_t> start(marks_ + 1, 0);
    for (const std::uint32_t g : group) ++start[g + 1];
    for (std::size_t g = 0; g < marks_; ++g) start[g + 1] += start[g];
    std::vector<std::uint32_t> member(group.size());
    std::vector<std::uint32_t> next(start.begin(), start.end() - 1);
    for (std::uint32_t i = 0; i < group.size(); ++i) member[next[group[i]]++] = i;
    for (std::size_t g = 0; g < marks_; ++g)
        for (std::size_t a = start[g]; a < start[g + 1]; ++a) {
            const std::size_t end = std::min<std::size_t>(start[g + 1], a + 1 + most_apart_);
            for (std::size_t b = a + 1; b < end; ++b) count(member[a], member[b]);
        }
}

void CoMembership::count(std::uint32_t a, std::uint32_t b) {
    const std::uint64_t pair = static_cast<std::uint64_t>(a) * marks_ + b + 1;
    const std::size_t mask = pair_.size() - 1;
    for (std::size_t at = mixed(pair) & mask;; at = (at + 1) & mask) {
        if (pair_[at] == pair) {
            ++times_[at];
            return;
        }
        if (pair_[at] == 0) {
            pair_[at] = pair;
            times_[at] = 1;
            if (++used_ * 2 > pair_.size()) grow();
            return;
        }
    }
}

void CoMembership::grow() {
    std::vector<std::uint64_t> old_pair(pair_.size() * 2, 0);
    std::vector<std::uint32_t> old_times(pair_.size() * 2, 0);
    old_pair.swap(pair_);
    old_times.swap(times_);
    const std::size_t mask = pair_.size() - 1;
    for (std::size_t i = 0; i < old_pair.size(); ++i) {
        if (old_pair[i] == 0) continue;
        std::size_t at = mixed(old_pair[i]) & mask;
        while (pair_[at] != 0) at = (at + 1) & mask;
        pair_[at] = old_pair[i];
        times_[at] = old_times[i];
    }
}

std::vector<std::vector<CoMembership::Near>> CoMembership::table() const {
    std::vector<std::vector<Near>> rows(marks_);
    for (std::size_t at = 0; at < pair_.size(); ++at) {
        if (pair_[at] == 0) continue;
        const auto a = static_cast<std::uint32_t>((pair_[at] - 1) / marks_);
        const auto b = static_cast<std::uint32_t>((pair_[at] - 1) % marks_);
        const double share = static_cast<double>(times_[at]) / draws_;
        rows[a].push_back({b, share});
        rows[b].push_back({a, share});
    }
    for (auto& row : rows)
        std::sort(row.begin(), row.end(), [](const Near& x, const Near& y) { return x.mark < y.mark; });
    return rows;
}

}  // namespace plugside
