#include "core/walking/shared_work.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

#include "core/geometry/near_places.h"
#include "core/walking/work_day_cost.h"

namespace plugside {

namespace {

constexpr double least_gain_minutes = 1e-6;
constexpr int bisections = 40;
constexpr std::size_t most_exchanges = 400;
constexpr std::size_t places_exchanged_through = 120'000;  // fewer exchanges of more places: each takes longer
constexpr std::size_t near_ones = 8;             // of a place in another stretch, for which it may be given
constexpr std::size_t about_it = 16;             // nearest of all: a place goes to a stretch that holds one of them
constexpr double hopeless_before_shares = 1.25;  // a first cut so much over the day is not mended by moving places

using Order = std::vector<std::size_t>;

// One person's stretch of the work; day after day each person has one.
struct Stretch {
    Order places;
    std::size_t person = 0;
    double minutes = 0.0;
};

class Sharing {
public:
    Sharing(const std::vector<LocalPoint>& places, const std::vector<double>& minutes_at, const WorkOptions& options)
        : places_(places), options_(options), cost_(places, minutes_at, options) {}

    [[nodiscard]] WorkDayCost& cost() { return cost_; }

    // The places in one way cut into at most `count` stretches, persons in turn from `first` on; as even as bisection finds.
    std::vector<Stretch> cut(const Order& way, std::size_t count, std::size_t first) {
        double high = 0.0;
        for (std::size_t person = 0; person < options_.people; ++person) high = std::max(high, cost_.minutes(way, person));
        double low = 0.0;
        std::vector<Stretch> best = cut_at(way, count, first, 2.0 * high + 1.0);
        for (int i = 0; i < bisections; ++i) {
            const double middle = 0.5 * (low + high);
            std::vector<Stretch> stretches = cut_at(way, count, first, middle);
            (stretches.empty() ? low : high) = middle;
            if (!stretches.empty()) best = std::move(stretches);
        }
        best.resize(count);
        for (std::size_t k = 0; k < count; ++k) best[k].person = (first + k) % options_.people;
        return best;
    }

    using Better = std::function<void(const std::vector<Stretch>&)>;

    // Moves and exchanges places between the longest stretch and others while that helps.
    void even_out(std::vector<Stretch>& stretches, const Better& better) {
        for (Stretch& stretch : stretches) reorder(stretch);
        better(stretches);
        look_about();
        const std::size_t exchanges =
            std::clamp<std::size_t>(places_exchanged_through / std::max<std::size_t>(1, places_.size()), 8, most_exchanges);
        for (std::size_t i = 0; i < exchanges && !options_.stop.stop_requested(); ++i) {
            if (!shorten_longest(stretches)) return;
            better(stretches);
        }
    }

    // The whole as one stretch.
    Stretch one(Order way) {
        const double minutes = cost_.minutes(way, 0);
        return {std::move(way), 0, minutes};
    }

    // Puts a place where it adds the least way to a stretch that has room for it; false where none has.
    bool put_in(std::vector<Stretch>& stretches, std::size_t place) {
        Stretch* least = nullptr;
        Stretch with_it;
        for (Stretch& stretch : stretches) {
            Stretch longer{with(stretch.places, place), stretch.person, 0.0};
            longer.minutes = cost_.minutes(longer.places, longer.person);
            if (options_.minutes_a_day && longer.minutes > *options_.minutes_a_day + 1e-9) continue;
            if (least != nullptr && longer.minutes - stretch.minutes >= with_it.minutes - least->minutes) continue;
            least = &stretch;
            with_it = std::move(longer);
        }
        if (least == nullptr) return false;
        *least = std::move(with_it);
        return true;
    }

    static double longest(const std::vector<Stretch>& stretches) {
        double most = 0.0;
        for (const Stretch& stretch : stretches) most = std::max(most, stretch.minutes);
        return most;
    }

private:
    // Each stretch as long as fits into `minutes`; nothing where the places do not fit into `count` of them.
    std::vector<Stretch> cut_at(const Order& way, std::size_t count, std::size_t first, double minutes) {
        std::vector<Stretch> stretches;
        for (std::size_t from = 0; from < way.size();) {
            if (stretches.size() == count) return {};
            Stretch stretch;
            stretch.person = (first + stretches.size()) % options_.people;
            std::size_t fits = from;
            std::size_t too_many = way.size() + 1;
            for (std::size_t to = from + 1; to < too_many;) {  // doubling, then halving: longer stretches take longer
                if (cost_.minutes(piece(way, from, to), stretch.person) <= minutes) {
                    fits = to;
                    if (to == way.size()) break;
                    to = too_many > way.size() ? std::min(way.size(), to + (to - from)) : (to + too_many) / 2;
                } else {
                    too_many = to;
                    to = (fits + too_many) / 2;
                }
                if (to == fits) break;
            }
            if (fits == from) return {};
            stretch.places = piece(way, from, fits);
            stretch.minutes = cost_.minutes(stretch.places, stretch.person);
            stretches.push_back(std::move(stretch));
            from = fits;
        }
        return stretches;
    }

    static Order piece(const Order& way, std::size_t from, std::size_t to) {
        return {way.begin() + static_cast<std::ptrdiff_t>(from), way.begin() + static_cast<std::ptrdiff_t>(to)};
    }

    // A shorter order of a stretch's own places, if one is found.
    void reorder(Stretch& stretch) {
        std::vector<LocalPoint> at;
        for (const std::size_t place : stretch.places) at.push_back(places_[place]);
        VisitingOptions visiting;
        visiting.start = cost_.start_of(stretch.person);
        visiting.end = options_.end;
        visiting.ways = options_.ways;
        visiting.stop = options_.stop;
        Order order;
        for (const std::size_t i : visiting_order(at, visiting)) order.push_back(stretch.places[i]);
        const double minutes = cost_.minutes(order, stretch.person);
        if (minutes < stretch.minutes - least_gain_minutes) {
            stretch.places = std::move(order);
            stretch.minutes = minutes;
        }
    }

    struct Change {
        double longer_after;  // the longer of the two
        std::size_t other;
        Order of_longest;
        Order of_other;
    };

    // Where a place goes into an order for the least way.
    Order with(const Order& order, std::size_t place) {
        std::size_t best = order.size();
        double least = 1e300;
        for (std::size_t at = 0; at <= order.size(); ++at) {
            const bool inner = at > 0 && at < order.size();
            double added = 0.0;
            if (at > 0) added += cost_.metres(order[at - 1], place);
            if (at < order.size()) added += cost_.metres(place, order[at]);
            if (inner) added -= cost_.metres(order[at - 1], order[at]);
            if (added >= least) continue;
            least = added;
            best = at;
        }
        Order longer = order;
        longer.insert(longer.begin() + static_cast<std::ptrdiff_t>(best), place);
        return longer;
    }

    static Order without(Order order, std::size_t place) {
        std::erase(order, place);
        return order;
    }

    bool shorten_longest(std::vector<Stretch>& stretches) {
        const auto most = std::max_element(stretches.begin(), stretches.end(),
                                           [](const Stretch& a, const Stretch& b) { return a.minutes < b.minutes; });
        Stretch& longest = *most;
        std::optional<Change> best;
        std::vector<std::size_t> stretch_of(places_.size(), stretches.size());
        for (std::size_t o = 0; o < stretches.size(); ++o)
            for (const std::size_t place : stretches[o].places) stretch_of[place] = o;
        for (std::size_t o = 0; o < stretches.size(); ++o) {
            if (&stretches[o] == &longest) continue;
            for (const std::size_t place : longest.places) {
                if (options_.stop.stop_requested()) return false;
                const bool beside = std::any_of(about_[place].begin(), about_[place].end(),
                                                [&](std::size_t near) { return stretch_of[near] == o; });
                if (beside || stretches[o].places.empty()) try_place(longest, stretches[o], o, place, best);
            }
        }
        if (!best) return false;
        longest.places = std::move(best->of_longest);
        stretches[best->other].places = std::move(best->of_other);
        for (Stretch* stretch : {&longest, &stretches[best->other]}) {
            stretch->minutes = cost_.minutes(stretch->places, stretch->person);
            reorder(*stretch);
        }
        return true;
    }

    void try_place(const Stretch& longest, const Stretch& other, std::size_t index, std::size_t place,
                   std::optional<Change>& best) {
        const Order less = without(longest.places, place);
        const Order more = with(other.places, place);
        offer(longest, other, index, less, more, best);
        Order near = other.places;  // in exchange for a near one
        const auto count = static_cast<std::ptrdiff_t>(std::min(near_ones, near.size()));
        std::partial_sort(near.begin(), near.begin() + count, near.end(), [&](std::size_t a, std::size_t b) {
            return std::pair(cost_.metres(place, a), a) < std::pair(cost_.metres(place, b), b);
        });
        near.erase(near.begin() + count, near.end());
        for (const std::size_t given : near) offer(longest, other, index, with(less, given), without(more, given), best);
    }

    void offer(const Stretch& longest, const Stretch& other, std::size_t index, const Order& of_longest,
               const Order& of_other, std::optional<Change>& best) {
        const double limit = (best ? best->longer_after : longest.minutes) - least_gain_minutes;
        const double first = cost_.minutes(of_longest, longest.person);
        if (first >= limit) return;
        const double second = cost_.minutes(of_other, other.person);
        if (second >= limit) return;
        best = Change{std::max(first, second), index, of_longest, of_other};
    }

    void look_about() {
        if (!about_.empty()) return;
        const NearPlaces near(places_);
        about_.resize(places_.size());
        for (std::size_t i = 0; i < places_.size(); ++i)
            for (const auto& found : near.nearest(places_[i], about_it + 1))
                if (found.index != i) about_[i].push_back(found.index);
    }

    const std::vector<LocalPoint>& places_;
    const WorkOptions& options_;
    WorkDayCost cost_;
    std::vector<std::vector<std::size_t>> about_;
};

// The best of all turns of the persons, evened out.
std::vector<Stretch> shared_over(Sharing& sharing, const Order& way, std::size_t days, const WorkOptions& options,
                                 const Sharing::Better& better) {
    std::vector<Stretch> best;
    const bool alike = options.wished_start.empty();
    for (std::size_t first = 0; first < (alike ? 1 : options.people); ++first) {
        std::vector<Stretch> stretches = sharing.cut(way, days * options.people, first);
        if (best.empty() || Sharing::longest(stretches) < Sharing::longest(best)) best = std::move(stretches);
    }
    better(best);
    if (options.rough) return best;
    if (!options.minutes_a_day || Sharing::longest(best) <= hopeless_before_shares * *options.minutes_a_day)
        sharing.even_out(best, better);
    return best;
}

SharedWork told(Sharing& sharing, std::vector<Stretch> stretches, const WorkOptions& options) {
    SharedWork work;
    std::vector<std::size_t> days_of(options.people, 0);
    for (Stretch& stretch : stretches) {
        if (stretch.places.empty()) continue;
        WorkDayCost::Cost cost = sharing.cost().of(stretch.places, stretch.person);
        work.days.push_back({stretch.person, days_of[stretch.person]++, std::move(stretch.places),
                             std::move(cost.loads_before), Metres::of(cost.metres), cost.minutes});
        work.longest_minutes = std::max(work.longest_minutes, cost.minutes);
        work.day_count = std::max(work.day_count, work.days.back().day + 1);
    }
    std::sort(work.days.begin(), work.days.end(),
              [](const WorkDay& a, const WorkDay& b) { return std::pair(a.day, a.person) < std::pair(b.day, b.person); });
    return work;
}

void check([[maybe_unused]] const std::vector<LocalPoint>& places, [[maybe_unused]] const std::vector<double>& minutes_at,
           [[maybe_unused]] const WorkOptions& options) {
    assert(minutes_at.size() == places.size() && options.people > 0 && options.pace_m_per_s > 0.0);
    assert(!options.minutes_a_day || *options.minutes_a_day > 0.0);
    assert(!options.carry || *options.carry > 0);
    assert(options.load_at.empty() || options.load_at.size() == places.size());
}

// The places that can be worked at, and those that cannot.
struct Workable {
    std::vector<std::size_t> cut_off;
    std::vector<std::size_t> too_long;
    double minutes = 0.0;  // at those that can, without any way
};

Workable look_through(Sharing& sharing, const std::vector<LocalPoint>& places, const std::vector<double>& minutes_at,
                      const WorkOptions& options) {
    VisitingOptions visiting;
    visiting.start = options.start;
    visiting.end = options.end;
    visiting.ways = options.ways;
    Workable workable{cut_off_places(places, visiting), {}, 0.0};
    for (std::size_t place = 0; place < places.size(); ++place) {
        if (std::binary_search(workable.cut_off.begin(), workable.cut_off.end(), place)) continue;
        double least = 1e300;
        for (std::size_t person = 0; person < options.people; ++person)
            least = std::min(least, sharing.cost().minutes({place}, person));
        if (options.minutes_a_day && least > *options.minutes_a_day)
            workable.too_long.push_back(place);
        else
            workable.minutes += minutes_at[place];
    }
    return workable;
}

// Takes out of an order what cannot be worked at.
void leave_out(Order& order, const Workable& workable) {
    std::erase_if(order, [&](std::size_t place) {
        return std::binary_search(workable.cut_off.begin(), workable.cut_off.end(), place) ||
               std::binary_search(workable.too_long.begin(), workable.too_long.end(), place);
    });
}

SharedWork with_left_out(SharedWork work, const Workable& workable) {
    work.cut_off = workable.cut_off;
    work.too_long = workable.too_long;
    return work;
}

}  // namespace

SharedWork share_work(const std::vector<LocalPoint>& places, const std::vector<double>& minutes_at,
                      const WorkOptions& options) {
    check(places, minutes_at, options);
    Sharing sharing(places, minutes_at, options);
    const Workable workable = look_through(sharing, places, minutes_at, options);
    const auto finished = [&](std::vector<Stretch> stretches) {
        return with_left_out(told(sharing, std::move(stretches), options), workable);
    };
    const bool alone = options.people == 1 && !options.minutes_a_day;
    VisitingOptions visiting;
    visiting.start = alone ? sharing.cost().start_of(0) : options.start;
    visiting.end = options.end || alone ? options.end : options.start;
    visiting.ways = options.ways;
    visiting.stop = options.stop;
    if (options.rough) visiting.most_moves = 0;
    if (alone && options.better)
        visiting.better = [&](Order way) {
            leave_out(way, workable);
            options.better(finished({sharing.one(std::move(way))}));
        };
    Order way = visiting_order(places, visiting);
    leave_out(way, workable);
    if (alone) return finished({sharing.one(std::move(way))});
    const auto fits = [&](const std::vector<Stretch>& stretches) {
        return !options.minutes_a_day || Sharing::longest(stretches) <= *options.minutes_a_day + 1e-9;
    };
    const Sharing::Better better = [&](const std::vector<Stretch>& stretches) {
        if (options.better && fits(stretches)) options.better(finished(stretches));
    };
    std::size_t days = 1;
    const double a_day = options.minutes_a_day.value_or(0.0) * static_cast<double>(options.people);
    if (options.minutes_a_day)
        days = std::max<std::size_t>(1, static_cast<std::size_t>(std::ceil(workable.minutes / a_day - 1e-9)));
    std::vector<Stretch> stretches = shared_over(sharing, way, days, options, better);
    while (!fits(stretches) && days < way.size()) stretches = shared_over(sharing, way, ++days, options, better);
    return finished(std::move(stretches));
}

SharedWork keep_shares(const std::vector<LocalPoint>& places, const std::vector<double>& minutes_at,
                       const std::vector<WorkDay>& earlier, const WorkOptions& options) {
    check(places, minutes_at, options);
    Sharing sharing(places, minutes_at, options);
    const Workable workable = look_through(sharing, places, minutes_at, options);
    std::vector<Stretch> stretches;
    std::vector<bool> placed(places.size(), false);
    for (const WorkDay& day : earlier) {
        for (const std::size_t place : day.places) {
            assert(!placed[place]);
            placed[place] = true;
        }
        Stretch stretch{day.places, day.person % options.people, 0.0};
        leave_out(stretch.places, workable);
        stretch.minutes = sharing.cost().minutes(stretch.places, stretch.person);
        stretches.push_back(std::move(stretch));
    }
    Order missing(places.size());
    std::iota(missing.begin(), missing.end(), std::size_t{0});
    std::erase_if(missing, [&](std::size_t place) { return placed[place]; });
    leave_out(missing, workable);
    for (const std::size_t place : missing)
        if (!sharing.put_in(stretches, place)) {
            stretches.push_back({{place}, stretches.size() % options.people, 0.0});
            stretches.back().minutes = sharing.cost().minutes({place}, stretches.back().person);
        }
    return with_left_out(told(sharing, std::move(stretches), options), workable);
}

}  // namespace plugside
