#include "core/walking/round_trip.h"

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

namespace plugside {

namespace {

constexpr double least_gain = 1e-7;  // of the distances' unit: below it rounding could go round in circles
constexpr std::size_t longest_moved_piece = 3;
constexpr std::size_t shuffle_reach = 30;

// A small generator of our own, so that the same field gives the same way on every machine (Marsaglia 2003, xorshift
// [memory]).
class Shuffler {
public:
    std::size_t below(std::size_t bound) {
        state_ ^= state_ << 13U;
        state_ ^= state_ >> 7U;
        state_ ^= state_ << 17U;
        return static_cast<std::size_t>(state_ % bound);
    }

private:
    std::uint64_t state_ = 0x9E3779B97F4A7C15U;
};

class RoundTrip {
public:
    RoundTrip(std::vector<std::size_t> tour, const NodeDistance& distance, const NeighbourLists& neighbours,
              std::size_t most_moves)
        : tour_(std::move(tour)),
          at_(tour_.size()),
          waiting_(tour_.size(), false),
          distance_(distance),
          neighbours_(neighbours),
          moves_left_(most_moves) {
        for (std::size_t i = 0; i < tour_.size(); ++i) at_[tour_[i]] = i;
    }

    std::vector<std::size_t> shortened() && {
        if (tour_.size() < 5) return std::move(tour_);
        for (const std::size_t node : tour_) wait(node);
        settle();
        const std::size_t shuffles = std::min<std::size_t>(4 * tour_.size(), 30000);
        for (std::size_t i = 0; i < shuffles && moves_left_ > 0 && tour_.size() >= 8; ++i) shuffle_once();
        return std::move(tour_);
    }

private:
    [[nodiscard]] std::size_t next(std::size_t node) const {
        const std::size_t i = at_[node] + 1;
        return tour_[i == tour_.size() ? 0 : i];
    }
    [[nodiscard]] std::size_t previous(std::size_t node) const {
        const std::size_t i = at_[node];
        return tour_[i == 0 ? tour_.size() - 1 : i - 1];
    }
    [[nodiscard]] double d(std::size_t a, std::size_t b) const { return distance_(a, b); }

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
        done_.push_back(piece);
        for (const std::size_t node : {a, b, c, d}) wait(node);
        if (moves_left_ > 0) --moves_left_;
    }

    // a [b ... c] d becomes a [c ... b] d, whichever way the ring runs now: `exchange` may have turned it round.
    void turn_piece(std::size_t a, std::size_t b, std::size_t c, std::size_t d) {
        if (next(a) == b) {
            exchange(a, b, c, d);
        } else {
            exchange(d, c, b, a);
        }
    }

    // Joins `node` to a near one by exchanging two edges, if that shortens the tour.
    double try_exchange(std::size_t node) {
        for (const bool forward : {true, false}) {
            const std::size_t beside = forward ? next(node) : previous(node);
            const double old_edge = d(node, beside);
            for (const std::size_t near : neighbours_[node]) {
                const double new_edge = d(node, near);
                if (new_edge >= old_edge) break;
                const std::size_t beside_near = forward ? next(near) : previous(near);
                const double gain = old_edge + d(near, beside_near) - new_edge - d(beside, beside_near);
                if (gain < least_gain) continue;
                if (forward) {
                    exchange(node, beside, near, beside_near);
                } else {
                    exchange(beside_near, near, beside, node);
                }
                return gain;
            }
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
                move_piece(first, last, c, follower);
                // move_piece leaves `last` beside c: turn the piece where `node` should be there instead
                const bool node_beside_c = after_near;
                if (first != last && (node == last) != node_beside_c) turn_piece(c, last, first, follower);
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
            for (double gain = 1.0; gain > 0.0 && moves_left_ > 0;) {
                gain = try_exchange(node);
                if (gain <= 0.0) gain = try_move(node);
                gained += gain;
            }
        }
        return gained;
    }

    // Two neighbouring pieces of the tour change places; if what follows does not make up for it, all of it is taken back.
    void shuffle_once() {
        const std::size_t n = tour_.size();
        const std::size_t reach = std::min(shuffle_reach, (n - 2) / 2);
        const std::size_t start = shuffler_.below(n);
        const std::size_t first_length = 1 + shuffler_.below(reach);
        const std::size_t second_length = 1 + shuffler_.below(reach);
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
        if (settle() - lost >= least_gain) return;
        for (auto piece = done_.rbegin(); piece != done_.rend(); ++piece) reverse(piece->first, piece->second);
    }

    std::vector<std::size_t> tour_;
    std::vector<std::size_t> at_;  // where each node stands in the tour
    std::vector<bool> waiting_;
    std::vector<std::size_t> queue_;
    std::vector<std::pair<std::size_t, std::size_t>> done_;  // reversals since the last shuffle, to take back
    const NodeDistance& distance_;
    const NeighbourLists& neighbours_;
    std::size_t moves_left_;
    Shuffler shuffler_;
};

}  // namespace

std::vector<std::size_t> shortened_round_trip(std::vector<std::size_t> tour, const NodeDistance& distance,
                                              const NeighbourLists& neighbours, std::size_t most_moves) {
    return RoundTrip(std::move(tour), distance, neighbours, most_moves).shortened();
}

}  // namespace plugside
