// Disjoint sets with union by size: which things are joined, directly or through others.
//
// Cost: near O(1) an operation. Degenerate input: no things.
#pragma once

#include <cstdint>
#include <numeric>
#include <vector>

namespace plugside {

class DisjointSets {
public:
    explicit DisjointSets(std::size_t things) : parent_(things), size_(things, 1) {
        std::iota(parent_.begin(), parent_.end(), 0U);
    }
    [[nodiscard]] std::uint32_t representative(std::uint32_t thing) {
        while (parent_[thing] != thing) {
            parent_[thing] = parent_[parent_[thing]];
            thing = parent_[thing];
        }
        return thing;
    }
    // Whether the two were apart before.
    bool join(std::uint32_t a, std::uint32_t b) {
        a = representative(a);
        b = representative(b);
        if (a == b) return false;
        if (size_[a] < size_[b]) std::swap(a, b);
        parent_[b] = a;
        size_[a] += size_[b];
        return true;
    }
    // Labels 0.. in order of each set's first thing.
    [[nodiscard]] std::vector<std::uint32_t> labels() {
        constexpr std::uint32_t none = 0xFFFFFFFFU;
        std::vector<std::uint32_t> label_of(parent_.size(), none);
        std::vector<std::uint32_t> labels(parent_.size());
        std::uint32_t next = 0;
        for (std::uint32_t i = 0; i < parent_.size(); ++i) {
            const std::uint32_t root = representative(i);
            if (label_of[root] == none) label_of[root] = next++;
            labels[i] = label_of[root];
        }
        return labels;
    }

private:
    std::vector<std::uint32_t> parent_;
    std::vector<std::uint32_t> size_;
};

}  // namespace plugside
