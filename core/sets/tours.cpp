#include "core/sets/tours.h"

#include <algorithm>
#include <chrono>
#include <map>
#include <numeric>

#include "core/sets/budget.h"
#include "core/sets/material.h"
#include "core/sets/set_choices.h"
#include "core/sets/visits.h"
#include "core/walking/shared_work.h"
#include "core/walking/steady_order.h"
#include "core/walking/ways_between.h"

namespace plugside {

namespace {

constexpr std::chrono::milliseconds between_tellings(150);

class TourMaking {
public:
    TourMaking(const Survey& survey, const Plan& plan, const TourWishes& wishes, const TourOptions& options)
        : plan_(plan), work_(*survey.work), options_(options) {
        const std::vector<SetChoice> choices = choices_of(survey, plan);
        for (std::size_t s = 0; s < plan.sets.size(); ++s)
            if (choices[s] != SetChoice::dropped) sets_.push_back(s);
        const LoadOptions usual;
        for (const std::size_t s : sets_) {
            const ProbeSite& site = plan.probes.at(plan.sets[s].probe);
            places_.push_back(site.middle);
            minutes_.push_back(minutes_of(site, usual));
            sharing_.load_at.push_back(load_of(site));
        }
        sharing_.people = static_cast<std::size_t>(wishes.people);
        sharing_.start = wishes.start ? wishes.start : where_the_walk_began(survey);
        sharing_.end = wishes.end;
        sharing_.minutes_a_day = wishes.minutes_a_day;
        if (wishes.carry) sharing_.carry = static_cast<std::size_t>(*wishes.carry);
        ways_.emplace(ways_to_places(survey.ground, places_, sharing_.start));
        sharing_.ways = &*ways_;
        sharing_.stop = options.stop;
        std::vector<LocalPoint> nodes = places_;
        if (sharing_.start) nodes.push_back(*sharing_.start);
        if (sharing_.end) nodes.push_back(*sharing_.end);
        between_.emplace(*ways_, std::move(nodes));
    }

    // In the order that the plan has, one person and one day.
    Tours of_the_plan() {
        std::vector<std::size_t> order(sets_.size());
        std::iota(order.begin(), order.end(), std::size_t{0});
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return plan_.sets[sets_[a]].visit_order < plan_.sets[sets_[b]].visit_order;
        });
        Tours tours = drawn(keep_shares(places_, minutes_, {WorkDay{0, 0, order, {}, {}, 0.0}}, sharing_));
        tours.of_the_plan = true;
        return tours;
    }

    Tours worked_out() {
        std::optional<SharedWork> held;
        if (const std::vector<WorkDay> days = held_days(); !days.empty()) held = keep_shares(places_, minutes_, days, sharing_);
        if (held && (options_.fixed || options_.stop.stop_requested())) return drawn(*held);
        if (held) {
            tell(*held, true);
        } else {
            WorkOptions rough = sharing_;
            rough.rough = true;
            tell(share_work(places_, minutes_, rough), true);
        }
        sharing_.better = [&](const SharedWork& work) {
            if (!held || saves_enough(work, *held)) tell(work, false);
        };
        const SharedWork anew = share_work(places_, minutes_, sharing_);
        return drawn(held && !saves_enough(anew, *held) ? *held : anew);
    }

private:
    [[nodiscard]] std::optional<Method> method_of(const ProbeSite& site) const {
        return find_method(work_, method_at(work_, site.key));
    }

    [[nodiscard]] double minutes_of(const ProbeSite& site, const LoadOptions& usual) const {
        const std::vector<double> holes = holes_pushed(site, usual.tunnel_diameter);
        double expected = 0.0;
        for (std::size_t h = 0; h < holes.size(); ++h) expected += holes[h] * static_cast<double>(h + 1);
        const auto method = method_of(site);
        return usual.minutes_a_hole * expected + (method ? method->minutes.mean : 0.0);
    }

    [[nodiscard]] std::size_t load_of(const ProbeSite& site) const {
        const auto method = method_of(site);
        if (!method) return 1;
        const int pieces = method->stuff == Stuff::trap ? traps_at(site) : method->placements;
        return static_cast<std::size_t>(std::max(1, pieces));
    }

    // What is held, of the sets that stand.
    [[nodiscard]] std::vector<WorkDay> held_days() const {
        std::map<ProbeKey, std::size_t> at;
        for (std::size_t i = 0; i < sets_.size(); ++i) at.emplace(plan_.probes[plan_.sets[sets_[i]].probe].key, i);
        std::vector<WorkDay> days;
        std::size_t found = 0;
        for (const KeptTour& tour : options_.held) {
            WorkDay day;
            day.person = static_cast<std::size_t>(std::max(0, tour.person));
            day.day = static_cast<std::size_t>(std::max(0, tour.day));
            for (const ProbeKey& key : tour.sets) {
                const auto node = at.extract(key);  // each once, whatever a file says
                if (!node.empty()) day.places.push_back(node.mapped());
            }
            found += day.places.size();
            days.push_back(std::move(day));
        }
        // as steady_order: where fewer than half are left an order found anew
        if (!options_.fixed && 2 * found < sets_.size()) return {};
        return days;
    }

    static bool saves_enough(const SharedWork& anew, const SharedWork& held) {
        if (anew.day_count != held.day_count) return anew.day_count < held.day_count;
        return anew.longest_minutes < (1.0 - usual_least_saving) * held.longest_minutes;
    }

    void tell(const SharedWork& work, bool at_once) {
        const auto now = std::chrono::steady_clock::now();
        if (!options_.better || (!at_once && now - told_ < between_tellings)) return;
        options_.better(drawn(work));
        told_ = std::chrono::steady_clock::now();
    }

    Tours drawn(const SharedWork& work) {
        Tours tours;
        tours.start = sharing_.start;
        tours.end = sharing_.end;
        tours.days = static_cast<int>(work.day_count);
        double metres = 0.0;
        for (const WorkDay& day : work.days) {
            tours.tours.push_back(drawn(day));
            metres += day.way.value();
            tours.longest_minutes = std::max(tours.longest_minutes, tours.tours.back().minutes);
        }
        tours.length = Metres::of(metres);
        for (const std::size_t i : work.cut_off) tours.cut_off.push_back(sets_[i]);
        for (const std::size_t i : work.too_long) tours.too_long.push_back(sets_[i]);
        return tours;
    }

    Tour drawn(const WorkDay& day) {
        Tour tour;
        tour.person = static_cast<int>(day.person);
        tour.day = static_cast<int>(day.day);
        tour.loads_before = day.loads_before;
        tour.length = day.way;
        for (const std::size_t i : day.places) tour.sets.push_back(sets_[i]);
        const WorkTime time = time_of_sets(work_, plan_, tour.sets);
        const double besides = day.minutes - sum_of_minutes(day.places);
        tour.minutes = time.minutes + besides;
        tour.low = time.low + besides;
        tour.high = time.high + besides;
        const std::size_t start = places_.size();
        const std::size_t end = sharing_.start ? start + 1 : start;
        std::vector<std::size_t> nodes;
        if (sharing_.start) nodes.push_back(start);
        for (std::size_t i = 0; i < day.places.size(); ++i) {
            const bool fetches = std::find(day.loads_before.begin(), day.loads_before.end(), i) != day.loads_before.end();
            if (fetches) nodes.push_back(sharing_.start ? start : day.places.front());
            nodes.push_back(day.places[i]);
        }
        if (sharing_.end) nodes.push_back(end);
        for (std::size_t i = 1; i < nodes.size(); ++i)
            if (auto way = between_->way(nodes[i - 1], nodes[i])) tour.way.push_back(std::move(*way));
        return tour;
    }

    [[nodiscard]] double sum_of_minutes(const std::vector<std::size_t>& places) const {
        double sum = 0.0;
        for (const std::size_t place : places) sum += minutes_[place];
        return sum;
    }

    const Plan& plan_;
    const WorkOrder& work_;
    const TourOptions& options_;
    std::vector<std::size_t> sets_;  // of plan.sets, that stand
    std::vector<LocalPoint> places_;
    std::vector<double> minutes_;
    std::optional<WalkingWays> ways_;
    WorkOptions sharing_;
    std::optional<WaysBetween> between_;
    std::chrono::steady_clock::time_point told_{};
};

}  // namespace

Tours make_tours(const Survey& survey, const Plan& plan, const TourWishes& wishes, const TourOptions& options) {
    TourMaking making(survey, plan, wishes, options);
    if (wishes.none() && !(options.fixed && !options.held.empty())) return making.of_the_plan();
    return making.worked_out();
}

std::vector<KeptTour> kept_form(const Plan& plan, const Tours& tours) {
    std::vector<KeptTour> kept;
    for (const Tour& tour : tours.tours) {
        KeptTour one{tour.person, tour.day, {}};
        for (const std::size_t set : tour.sets) one.sets.push_back(plan.probes.at(plan.sets.at(set).probe).key);
        kept.push_back(std::move(one));
    }
    return kept;
}

Plan in_order_of(Plan plan, const Tours& tours) {
    std::vector<int> visit(plan.sets.size(), 0);
    int number = 0;
    for (const Tour& tour : tours.tours)
        for (const std::size_t set : tour.sets) visit.at(set) = ++number;
    std::vector<std::size_t> rest;
    for (std::size_t s = 0; s < plan.sets.size(); ++s)
        if (visit[s] == 0) rest.push_back(s);
    std::stable_sort(rest.begin(), rest.end(), [&](std::size_t a, std::size_t b) {
        return std::pair(plan.sets[a].choice == SetChoice::dropped, plan.sets[a].visit_order) <
               std::pair(plan.sets[b].choice == SetChoice::dropped, plan.sets[b].visit_order);
    });
    for (const std::size_t s : rest) visit[s] = ++number;
    for (std::size_t s = 0; s < plan.sets.size(); ++s) plan.sets[s].visit_order = visit[s];
    return plan;
}

}  // namespace plugside
