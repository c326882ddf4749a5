// How often two marks hang together, over many drawn partitions.
//
// Result:  pairs that met at least once with their share of the draws; pairs that never met are absent (share 0).
// Bound:   in a group of more than `most_apart` marks only pairs at most that many places apart along the marks' own order
//          are counted, so that a survey with everything in one heap stays near-linear.
// Degenerate input: no draws, no marks: no pairs.
// Cost:    O(draws x marks x group size), bounded as above.
#pragma once

#include <cstdint>
#include <vector>

namespace plugside {

class CoMembership {
public:
    explicit CoMembership(std::size_t marks, std::size_t most_apart = 250);

    // `group` names each mark's group in one draw by any number below the number of marks.
    void add(const std::vector<std::uint32_t>& group);

    struct Near {
        std::uint32_t mark = 0;
        double share = 0.0;
    };
    // For each mark the marks it met, ascending, both ways.
    [[nodiscard]] std::vector<std::vector<Near>> table() const;
    [[nodiscard]] int draws() const { return draws_; }

private:
    void count(std::uint32_t a, std::uint32_t b);
    void grow();

    std::size_t marks_;
    std::size_t most_apart_;
    int draws_ = 0;
    std::size_t used_ = 0;
    std::vector<std::uint64_t> pair_;   // open addressing, 0 = empty (a pair is stored as first * marks + second + 1)
    std::vector<std::uint32_t> times_;
};

}  // namespace plugside
