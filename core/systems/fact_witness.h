// A forest that obeys what was taken for certain so far, mended as facts come. A part of known_links.
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "core/systems/disjoint_sets.h"
#include "core/systems/neighbour_graph.h"

namespace plugside {

class FactWitness {
public:
    struct Pair {
        std::uint32_t first = 0;
        std::uint32_t second = 0;
        std::size_t fact = 0;
    };

    FactWitness(std::size_t marks, const std::vector<Link>& links);

    // What must hold; after a change `mend` makes the forest anew or says which pair cannot be joined.
    std::vector<Pair> same, apart;
    std::vector<bool> removed, forced;

    std::uint32_t add_link(const Link& link);
    [[nodiscard]] std::uint32_t find_link(std::uint32_t a, std::uint32_t b) const;
    // The pair that could not be joined, if any; then the forest is of no use until something is taken back and mended.
    [[nodiscard]] std::optional<Pair> mend();
    // Marks that a path from `from` may use without joining what must be apart.
    [[nodiscard]] std::vector<std::uint32_t> within_reach(std::uint32_t from);
    [[nodiscard]] bool joins(std::uint32_t a, std::uint32_t b) { return part_.representative(a) == part_.representative(b); }
    [[nodiscard]] bool uses(std::uint32_t link) const { return in_[link]; }

    [[nodiscard]] const std::vector<Link>& links() const { return links_; }

private:
    [[nodiscard]] std::optional<Pair> build(const std::vector<Pair>& order);
    [[nodiscard]] bool join_pair(std::uint32_t a, std::uint32_t b);
    [[nodiscard]] bool shortest_path(std::uint32_t a, std::uint32_t b, const std::vector<bool>& blocked,
                                     std::vector<std::uint32_t>& path);
    [[nodiscard]] std::vector<bool> blocked_for(std::uint32_t mark);
    [[nodiscard]] bool broken();
    void take(std::uint32_t link);

    std::size_t marks_;
    std::vector<Link> links_;
    LinkRows rows_;
    std::vector<bool> in_, spoken_of_;
    DisjointSets part_;   // what the forest joins
    DisjointSets group_;  // what it joins or will have to
};

}  // namespace plugside
