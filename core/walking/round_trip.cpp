#include "core/walking/round_trip.h"

#include <algorithm>
#include <array>
#include <utility>

#include "core/systems/keyed_random.h"

namespace plugside {

namespace {

constexpr double least_gain = 1e-7;  // of the distances' unit: below it rounding could go round in circles
constexpr std::size_t longest_moved_piece = 3;
constexpr std::size_t shuffle_reach = 30;
constexpr std::size_t deepest_chain = 6;
constexpr std::size_t widest_chain = 3;
constexpr std::size_t reports = 50;

constexpr std::size_t breadth_at(std::size_t depth) { return depth == 0 ? widest_chain : depth == 1 ? 2 : 1; }

class RoundTrip {
public:
    RoundTrip(std::vector<std::size_t> tour, const NodeDistance& distance, const NeighbourLists& neighbours,
              const RoundTripOptions& options)
        : tour_(std::move(tour)),
          at_(tour_.size()),
          waiting_(tour_.size(), false),
          distance_(distance),
          neighbours_(neighbours),
          options_(options),
          moves_left_(options.most_moves) {
        for (std::size_t i = 0; i < tour_.size(); ++i) at_[tour_[i]] = i;
    }

    std::vector<std::size_t> shortened() && {
        if (tour_.size() < 5) return std::move(tour_);
        for (const std::size_t node : tour_) wait(node);
        settle();
        tell_better();
        const std::size_t between_reports = options_.shuffles / reports + 1;
        bool untold = false;
        for (std::size_t i = 0, idle = 0; i < options_.shuffles && idle < options_.most_idle && !ended(); ++i, ++idle) {
            if (shuffle_once(i)) {
                untold = true;
                idle = 0;
            }
            if (!untold || i % between_reports != 0) continue;
            tell_better();
            untold = false;
        }
        return std::move(tour_);
    }

private:
    // One exchange of two edges: what was turned, to take it back, and the four ends.
    struct Exchange {
        std::size_t from;
        std::size_t count;
        std::array<std::size_t, 4> ends;
    };
    // A possible link of a chain: the near node to join the loose end to, and the node beside it that is loose then.
    struct Link {
        std::size_t near;
        std::size_t beside;
        double joined;
        double removed;
        [[nodiscard]] double worth() const { return removed - joined; }
    };

    [[nodiscard]] std::size_t next(std::size_t node) const {
        const std::size_t i = at_[node] + 1;
        return tour_[i == tour_.size() ? 0 : i];
    }
    [[nodiscard]] std::size_t previous(std::size_t node) const {
        const std::size_t i = at_[node];
        return tour_[i == 0 ? tour_.size() - 1 : i - 1];
    }
    [[nodiscard]] double d(std::size_t a, std::size_t b) const { return distance_(a, b); }
    [[nodiscard]] bool ended() const { return moves_left_ == 0 || options_.stop.stop_requested(); }
    void tell_better() const {
        if (options_.better) options_.better(tour_);
    }

    void wait(std::size_t node) {
        if (waiting_[node]) return;
        waiting_[node] = true;
        queue_.push_back(node);
    }

    void reverse(std::size_t from, std::size_t count) {
        const std::size_t n = tour_.size();
        std::size_t i = from;
        std::size_t j = (from + count - 1) % n;
        for (std::size_t swaps = count / 2; swaps > 0; --swaps) {
            std::swap(tour_[i], tour_[j]);
            at_[tour_[i]] = i;
            at_[tour_[j]] = j;
            i = i + 1 == n ? 0 : i + 1;
            j = j == 0 ? n - 1 : j - 1;
        }
    }

    // ... a b ... c d ... becomes ... a c ... b d ...: turns round b..c, or the rest where that is shorter (the same ring).
    void exchange(std::size_t a, std::size_t b, std::size_t c, std::size_t d) {
        const std::size_t n = tour_.size();
        const std::size_t inner = (at_[c] + n - at_[b]) % n + 1;
        const std::pair<std::size_t, std::size_t> piece =
            2 * inner <= n ? std::pair{at_[b], inner} : std::pair{at_[d], n - inner};
        reverse(piece.first, piece.second);
        done_.push_back({piece.first, piece.second, {a, b, c, d}});
        if (moves_left_ > 0) --moves_left_;
    }

    void take_back_to(std::size_t length) {
        for (; done_.size() > length; done_.pop_back()) reverse(done_.back().from, done_.back().count);
    }

    void wake_ends_since(std::size_t length) {
        for (std::size_t i = length; i < done_.size(); ++i)
            for (const std::size_t node : done_[i].ends) wait(node);
    }

    // a [b ... c] d becomes a [c ... b] d, whichever way the ring runs now: `exchange` may have turned it round.
    void turn_piece(std::size_t a, std::size_t b, std::size_t c, std::size_t d) {
        if (next(a) == b) {
            exchange(a, b, c, d);
        } else {
            exchange(d, c, b, a);
        }
    }

    // An edge that the chain at work has put in is not taken out again.
    [[nodiscard]] bool was_joined(std::size_t a, std::size_t b) const {
        return std::any_of(joined_.begin(), joined_.begin() + static_cast<std::ptrdiff_t>(depth_), [&](const auto& edge) {
            return (edge.first == a && edge.second == b) || (edge.first == b && edge.second == a);
        });
    }

    // The links that go on from `loose`, which stands beside `base`, best first; `freed` is what may be spent.
    std::size_t links_from(std::size_t base, std::size_t loose, double freed, std::array<Link, widest_chain>& links,
                           std::size_t most) const {
        const bool forward = next(base) == loose;
        std::size_t count = 0;
        for (const std::size_t near : neighbours_[loose]) {
            const double joined = d(loose, near);
            if (joined >= freed) break;
            if (near == base) continue;
            const std::size_t beside = forward ? previous(near) : next(near);
            if (beside == loose || was_joined(near, beside)) continue;
            const Link link{near, beside, joined, d(near, beside)};
            std::size_t place = count < most ? count : most - 1;
            if (count == most && links[place].worth() >= link.worth()) continue;
            for (; place > 0 && links[place - 1].worth() < link.worth(); --place) links[place] = links[place - 1];
            links[place] = link;
            count = std::min(count + 1, most);
        }
        return count;
    }

    // Exchanges edges one after another; the tour stays closed by the edge from `base` to the loose end. Returns whether it
    // became shorter on the way; done_ then goes up to where it was shortest, or further.
    bool grow_chain(std::size_t base, std::size_t loose, double freed, std::size_t depth) {
        if (depth == deepest_chain) return false;
        std::array<Link, widest_chain> links{};
        const std::size_t count = links_from(base, loose, freed, links, breadth_at(depth));
        for (std::size_t k = 0; k < count; ++k) {
            if (moves_left_ == 0) return false;
            const Link& link = links[k];
            if (next(base) == loose) {
                exchange(base, loose, link.beside, link.near);
            } else {
                exchange(link.near, link.beside, loose, base);
            }
            const double still_free = freed + link.removed - link.joined;
            const double gain = still_free - d(link.beside, base);
            joined_[depth] = {loose, link.near};
            const bool shorter = gain > chain_gain_;
            if (shorter) {
                chain_gain_ = gain;
                chain_length_ = done_.size();
            }
            depth_ = depth + 1;
            if (grow_chain(base, link.beside, still_free, depth + 1) || shorter) return true;
            depth_ = depth;
            take_back_to(done_.size() - 1);
        }
        return false;
    }

    double try_chain(std::size_t base) {
        for (const bool forward : {true, false}) {
            const std::size_t begin = done_.size();
            const std::size_t loose = forward ? next(base) : previous(base);
            chain_gain_ = least_gain;
            depth_ = 0;
            if (!grow_chain(base, loose, d(base, loose), 0)) continue;
            take_back_to(chain_length_);
            wake_ends_since(begin);
            return chain_gain_;
        }
        return 0.0;
    }

    // Moves the piece first..last (as `next` runs) between c and d = next(c), turned so that `last` comes to stand beside c.
    void move_piece(std::size_t first, std::size_t last, std::size_t c, std::size_t d) {
        const std::size_t before = previous(first);
        const std::size_t after = next(last);
        exchange(before, first, c, d);       // before c ... after last..first d
        turn_piece(before, c, after, last);  // before after ... c last..first d
    }

    // Moves a piece of one to three nodes that begins or ends at `node` beside a near node, if that shortens the tour.
    double try_move(std::size_t node) {
        for (const bool forward : {true, false}) {
            std::size_t end = node;
            for (std::size_t length = 1; length <= longest_moved_piece; ++length) {
                if (length > 1) end = forward ? next(end) : previous(end);
                const std::size_t first = forward ? node : end;
                const std::size_t last = forward ? end : node;
                const double gain = try_move_piece(node, end, first, last, length);
                if (gain > 0.0) return gain;
            }
        }
        return 0.0;
    }

    // `node` is the piece's end that comes to stand beside a near node, `end` its other end.
    double try_move_piece(std::size_t node, std::size_t end, std::size_t first, std::size_t last, std::size_t length) {
        const std::size_t n = tour_.size();
        const std::size_t before = previous(first);
        const std::size_t after = next(last);
        const double freed = d(before, first) + d(last, after) - d(before, after);
        for (const std::size_t near : neighbours_[node]) {
            const double joined = d(node, near);
            if (joined >= freed) break;
            if ((at_[near] + n - at_[first]) % n < length) continue;  // in the piece itself
            for (const bool after_near : {true, false}) {
                const std::size_t c = after_near ? near : previous(near);
                const std::size_t follower = after_near ? next(near) : near;
                if (c == last || follower == first) continue;  // the gap that the piece leaves
                const std::size_t beyond = after_near ? follower : c;
                const double gain = freed + d(c, follower) - joined - d(end, beyond);
                if (gain < least_gain) continue;
                const std::size_t begin = done_.size();
                move_piece(first, last, c, follower);
                // move_piece leaves `last` beside c: turn the piece where `node` should be there instead
                const bool node_beside_c = after_near;
                if (first != last && (node == last) != node_beside_c) turn_piece(c, last, first, follower);
                wake_ends_since(begin);
                return gain;
            }
        }
        return 0.0;
    }

    // Works through the waiting nodes until no move helps; returns what was gained.
    double settle() {
        double gained = 0.0;
        while (!queue_.empty()) {
            const std::size_t node = queue_.back();
            queue_.pop_back();
            waiting_[node] = false;
            for (double gain = 1.0; gain > 0.0 && !ended();) {
                gain = try_chain(node);
                if (gain <= 0.0) gain = try_move(node);
                gained += gain;
            }
        }
        return gained;
    }

    // Two neighbouring pieces of the tour change places; if what follows does not make up for it, all of it is taken back.
    bool shuffle_once(std::size_t number) {
        const std::size_t n = tour_.size();
        const std::size_t reach = std::min(shuffle_reach, (n - 2) / 2);
        const std::uint64_t key = mixed(options_.key, number);
        const auto below = [key](std::uint64_t use, std::size_t bound) {
            return std::min(bound - 1, static_cast<std::size_t>(uniform_of(mixed(key, use)) * static_cast<double>(bound)));
        };
        const std::size_t start = below(1, n);
        const std::size_t first_length = 1 + below(2, reach);
        const std::size_t second_length = 1 + below(3, reach);
        const auto node = [&](std::size_t offset) { return tour_[(start + offset) % n]; };
        const std::size_t a = node(0);
        const std::size_t b = node(1);
        const std::size_t c = node(first_length);
        const std::size_t e = node(first_length + 1);
        const std::size_t f = node(first_length + second_length);
        const std::size_t g = node(first_length + second_length + 1);
        const double lost = d(a, e) + d(f, b) + d(c, g) - d(a, b) - d(c, e) - d(f, g);
        done_.clear();
        exchange(a, b, f, g);    // a f..e c..b g
        turn_piece(a, f, e, c);  // a e..f c..b g
        turn_piece(f, c, b, g);  // a e..f b..c g
        wake_ends_since(0);
        if (settle() - lost >= least_gain) return true;
        take_back_to(0);
        return false;
    }

    std::vector<std::size_t> tour_;
    std::vector<std::size_t> at_;  // where each node stands in the tour
    std::vector<bool> waiting_;
    std::vector<std::size_t> queue_;
    std::vector<Exchange> done_;                                               // since the last shuffle, to take back
    std::array<std::pair<std::size_t, std::size_t>, deepest_chain> joined_{};  // edges put in by the chain at work
    std::size_t depth_ = 0;                                                    // how many
    double chain_gain_ = 0.0;                                                  // of the chain at work, where it was shortest
    std::size_t chain_length_ = 0;
    const NodeDistance& distance_;
    const NeighbourLists& neighbours_;
    const RoundTripOptions& options_;
    std::size_t moves_left_;
};

}  // namespace

std::vector<std::size_t> shortened_round_trip(std::vector<std::size_t> tour, const NodeDistance& distance,
                                              const NeighbourLists& neighbours, const RoundTripOptions& options) {
    return RoundTrip(std::move(tour), distance, neighbours, options).shortened();
}

}  // namespace plugside
