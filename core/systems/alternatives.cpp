#include "core/systems/alternatives.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace plugside {

namespace {

using Indexes = std::vector<std::uint32_t>;
constexpr std::uint32_t none = 0xFFFFFFFFU;

// A piece of a system in one draw.
struct Piece {
    std::uint32_t tree = none;
    std::size_t marks = 0;
};

// Splits each system's marks by the trees of one draw after another.
class Pieces {
public:
    explicit Pieces(const SystemPosterior& posterior) : times_(posterior.marks.size(), 0), marks_(posterior.systems) {
        for (std::uint32_t i = 0; i < posterior.marks.size(); ++i) marks_[posterior.system[i]].push_back(i);
    }
    [[nodiscard]] const Indexes& marks(std::uint32_t system) const { return marks_[system]; }

    // Pieces of a system in a draw, in the order of their first marks.
    [[nodiscard]] const std::vector<Piece>& of(std::uint32_t system, const Indexes& tree) {
        pieces_.clear();
        for (const std::uint32_t i : marks_[system])
            if (times_[tree[i]]++ == 0) pieces_.push_back({tree[i], 0});
        for (Piece& piece : pieces_) {
            piece.marks = times_[piece.tree];
            times_[piece.tree] = 0;
        }
        return pieces_;
    }

    [[nodiscard]] bool sizable(std::size_t piece, std::uint32_t system) const {
        return piece >= 2 && 5 * piece >= marks_[system].size();
    }

private:
    std::vector<std::size_t> times_;  // by tree, zero between calls
    std::vector<Indexes> marks_;
    std::vector<Piece> pieces_;
};

std::vector<std::pair<std::uint32_t, std::uint32_t>> neighbouring_systems(const SystemPosterior& posterior) {
    std::vector<std::pair<std::uint32_t, std::uint32_t>> pairs;
    for (const Link& link : posterior.links) {
        const auto [a, b] = std::minmax(posterior.system[link.first], posterior.system[link.second]);
        if (a != b) pairs.emplace_back(a, b);
    }
    std::sort(pairs.begin(), pairs.end());
    pairs.erase(std::unique(pairs.begin(), pairs.end()), pairs.end());
    return pairs;
}

void find_joined(const SystemPosterior& posterior, Pieces& pieces, double least_share, Alternatives& found) {
    const auto pairs = neighbouring_systems(posterior);
    std::vector<std::size_t> times(pairs.size(), 0);
    Indexes holder(posterior.systems);  // the tree that holds more than half of the system's marks
    for (const Indexes& tree : posterior.drawn_system) {
        for (std::uint32_t s = 0; s < posterior.systems; ++s) {
            holder[s] = none;
            for (const Piece& piece : pieces.of(s, tree))
                if (2 * piece.marks > pieces.marks(s).size()) holder[s] = piece.tree;
        }
        for (std::size_t p = 0; p < pairs.size(); ++p)
            if (holder[pairs[p].first] != none && holder[pairs[p].first] == holder[pairs[p].second]) ++times[p];
    }
    const auto draws = static_cast<double>(posterior.drawn_system.size());
    for (std::size_t p = 0; p < pairs.size(); ++p) {
        const double share = static_cast<double>(times[p]) / draws;
        if (share >= least_share) found.joined.push_back({pairs[p].first, pairs[p].second, Probability::of(share)});
    }
}

// The mark of `system` that lies in sizable pieces of `draws` most often; ties by key.
std::uint32_t anchor_of(const SystemPosterior& posterior, Pieces& pieces, std::uint32_t system,
                        const std::vector<std::size_t>& draws) {
    const Indexes& marks = pieces.marks(system);
    std::map<std::uint32_t, std::size_t> in_sizable;
    for (const std::size_t d : draws) {
        const Indexes& tree = posterior.drawn_system[d];
        std::map<std::uint32_t, bool> sizable;
        for (const Piece& piece : pieces.of(system, tree)) sizable[piece.tree] = pieces.sizable(piece.marks, system);
        for (const std::uint32_t i : marks)
            if (sizable.at(tree[i])) ++in_sizable[i];
    }
    return *std::max_element(marks.begin(), marks.end(), [&](std::uint32_t a, std::uint32_t b) {
        if (in_sizable[a] != in_sizable[b]) return in_sizable[a] < in_sizable[b];
        return posterior.marks[a].key > posterior.marks[b].key;
    });
}

// Mounds of the smaller part of the likeliest split; `draws`: those with two sizable pieces, not empty.
std::vector<std::size_t> likeliest_split(const SystemPosterior& posterior, Pieces& pieces, std::uint32_t system,
                                         const std::vector<std::size_t>& draws) {
    const Indexes& marks = pieces.marks(system);
    const std::uint32_t anchor = anchor_of(posterior, pieces, system, draws);
    std::vector<std::size_t> parted;  // draws in which the anchor's piece is sizable
    std::vector<double> apart(marks.size(), 0.0);
    for (const std::size_t d : draws) {
        const Indexes& tree = posterior.drawn_system[d];
        const auto with_anchor = static_cast<std::size_t>(
            std::count_if(marks.begin(), marks.end(), [&](std::uint32_t i) { return tree[i] == tree[anchor]; }));
        if (!pieces.sizable(with_anchor, system)) continue;
        parted.push_back(d);
        for (std::size_t k = 0; k < marks.size(); ++k)
            if (tree[marks[k]] != tree[anchor]) apart[k] += 1.0;
    }
    // differing marks summed over all others: of a mark apart, the draws in which it is not, and the other way round
    double best = 0.0;
    std::optional<std::size_t> middle;
    for (const std::size_t d : parted) {
        const Indexes& tree = posterior.drawn_system[d];
        double differing = 0.0;
        for (std::size_t k = 0; k < marks.size(); ++k)
            differing += tree[marks[k]] != tree[anchor] ? static_cast<double>(parted.size()) - apart[k] : apart[k];
        if (!middle || differing < best) {
            best = differing;
            middle = d;
        }
    }
    if (!middle) return {};
    const Indexes& tree = posterior.drawn_system[*middle];
    std::vector<std::size_t> with_anchor, rest;
    for (const std::uint32_t i : marks) (tree[i] == tree[anchor] ? with_anchor : rest).push_back(posterior.marks[i].mound);
    std::vector<std::size_t>& told = with_anchor.size() < rest.size() ? with_anchor : rest;
    std::sort(told.begin(), told.end());
    return told;
}

void find_split(const SystemPosterior& posterior, Pieces& pieces, double least_share, Alternatives& found) {
    for (std::uint32_t s = 0; s < posterior.systems; ++s) {
        if (pieces.marks(s).size() < 4) continue;
        std::vector<std::size_t> draws;
        for (std::size_t d = 0; d < posterior.drawn_system.size(); ++d) {
            const auto& of_draw = pieces.of(s, posterior.drawn_system[d]);
            if (std::count_if(of_draw.begin(), of_draw.end(), [&](const Piece& p) { return pieces.sizable(p.marks, s); }) >=
                2)
                draws.push_back(d);
        }
        const double share = static_cast<double>(draws.size()) / static_cast<double>(posterior.drawn_system.size());
        if (draws.empty() || share < least_share) continue;
        found.split.push_back({s, Probability::of(share), likeliest_split(posterior, pieces, s, draws)});
    }
}

void find_doubtful(const SystemPosterior& posterior, const Pieces& pieces, const AlternativeOptions& options,
                   Alternatives& found) {
    std::map<std::uint32_t, double> shared;
    for (std::uint32_t i = 0; i < posterior.marks.size(); ++i) {
        if (posterior.belongs[i] >= options.doubtful_below) continue;
        DoubtfulMound doubtful;
        doubtful.mound = posterior.marks[i].mound;
        doubtful.system = posterior.system[i];
        doubtful.belongs = Probability::of(posterior.belongs[i]);
        shared.clear();
        for (const CoMembership::Near& near : posterior.together[i])
            if (posterior.system[near.mark] != posterior.system[i]) shared[posterior.system[near.mark]] += near.share;
        double most = 0.0;
        for (const auto& [system, sum] : shared) {
            const double mean = std::min(1.0, sum / static_cast<double>(pieces.marks(system).size()));
            if (mean < options.least_share || mean <= most) continue;
            most = mean;
            doubtful.runner_up = system;
        }
        doubtful.of_runner_up = Probability::of(most);
        found.doubtful.push_back(doubtful);
    }
}

}  // namespace

Alternatives alternatives_of(const SystemPosterior& posterior, const AlternativeOptions& options) {
    Alternatives found;
    if (posterior.drawn_system.empty()) return found;
    Pieces pieces(posterior);
    find_joined(posterior, pieces, options.least_share, found);
    find_split(posterior, pieces, options.least_share, found);
    find_doubtful(posterior, pieces, options, found);
    std::sort(found.joined.begin(), found.joined.end(), [](const JoinedSystems& a, const JoinedSystems& b) {
        return std::tuple(b.one, a.first, a.second) < std::tuple(a.one, b.first, b.second);
    });
    std::sort(found.split.begin(), found.split.end(), [](const SplitSystem& a, const SplitSystem& b) {
        return std::tuple(b.two, a.system) < std::tuple(a.two, b.system);
    });
    std::sort(found.doubtful.begin(), found.doubtful.end(), [](const DoubtfulMound& a, const DoubtfulMound& b) {
        return std::tuple(a.belongs, a.mound) < std::tuple(b.belongs, b.mound);
    });
    return found;
}

}  // namespace plugside
