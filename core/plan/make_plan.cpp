#include "core/plan/make_plan.h"

#include <algorithm>
#include <thread>
#include <utility>

#include "core/plan/coarse_plan.h"
#include "core/plan/lay_out.h"
#include "core/plan/plan_with_posterior.h"
#include "core/walking/coverage.h"
#include "core/words/words.h"

namespace plugside {

namespace {

bool has_track(const Survey& survey) {
    return std::any_of(survey.walks.begin(), survey.walks.end(), [](const Walk& walk) { return !walk.segments.empty(); });
}

void add_coverage(const Survey& survey, std::optional<Coverage> coverage, Plan& plan) {
    if (!survey.ground.boundary.empty()) plan.area_field_m2 = area_m2(survey.ground.boundary);
    if (!has_track(survey)) {
        plan.notices.push_back(Words::tell("The walk has no track, so what was not looked at is not known."));
    } else if (!coverage) {
        plan.notices.push_back(Words::tell("The area walked could not be computed from this track and boundary."));
    } else {
        plan.area_walked_m2 = coverage->walked_area_m2;
        plan.unwalked = std::move(coverage->unwalked);
    }
}

// More marks than these take the net longer than a first look may take.
constexpr std::size_t most_marks_for_fine_first_look = 6000;

// A longer track takes more than some seconds to measure, which is more than the coarse form takes for all else.
constexpr std::size_t most_track_points_coarse = 50000;

std::size_t track_points(const Survey& survey) {
    std::size_t points = 0;
    for (const Walk& walk : survey.walks)
        for (const TrackSegment& segment : walk.segments) points += segment.size();
    return points;
}

std::size_t usable_marks(const Survey& survey) {
    return static_cast<std::size_t>(std::count_if(survey.mounds.begin(), survey.mounds.end(),
                                                  [&](const Mound& mound) { return !why_not_used(survey, mound); }));
}

void show_first_look(const Survey& survey, const WeighedLinks* weighed, const PlanOptions& options,
                     const LinkWeights& weights, const Progress& progress, const PlanWishes& wishes) {
    const Progress silent{progress.stop, {}};
    std::optional<Plan> plan;
    if (weighed == nullptr) {
        if (auto coarse = make_coarse_plan(survey, options, silent, wishes.letters)) plan = std::move(coarse->plan);
    } else if (auto posterior = infer_systems(survey, options, weights, *weighed, Thoroughness::first_look, silent)) {
        plan = laid_out(survey, *posterior, options, weights, Thoroughness::first_look, wishes.letters, silent);
    }
    if (!plan) return;
    plan->first_look = true;
    plan->notices.insert(plan->notices.begin(),

                         Words::tell("A first look: the systems, their number and all chances are still being worked out."));
    wishes.first_look(std::move(*plan));
}

std::optional<PlanWithPosterior> make_whole_plan(const Survey& survey, const PlanOptions& options,
                                                 const LinkWeights& weights, const Progress& progress,
                                                 const PlanWishes& wishes, std::size_t marks) {
    const bool fine = marks <= most_marks_for_fine_first_look;
    if (wishes.first_look && !fine) show_first_look(survey, nullptr, options, weights, progress, wishes);
    WeighedLinks weighed = weigh_links(survey, options, weights, progress);
    if (wishes.first_look && fine && marks > 0) show_first_look(survey, &weighed, options, weights, progress, wishes);
    std::optional<Coverage> coverage;  // does not depend on the systems: measured beside them
    std::jthread measuring;
    if (has_track(survey))
        measuring = std::jthread([&] {
            coverage = coverage_of(survey.walks, survey.ground.boundary, options.seen_from_track, {progress.stop, {}});
        });
    auto posterior = infer_systems(survey, options, weights, std::move(weighed), Thoroughness::whole, progress);
    if (!posterior || progress.stopped()) return std::nullopt;
    auto plan = laid_out(survey, *posterior, options, weights, Thoroughness::whole, wishes.letters, progress);
    if (!plan) return std::nullopt;
    progress.say(0.95, Words::later("measuring what was walked"));
    if (measuring.joinable()) measuring.join();
    if (progress.stopped()) return std::nullopt;
    add_coverage(survey, std::move(coverage), *plan);
    return PlanWithPosterior{std::move(*plan), std::move(*posterior)};
}

}  // namespace

std::optional<PlanWithPosterior> make_plan_with_posterior(const Survey& survey, const PlanOptions& options,
                                                          const LinkWeights& weights, const Progress& progress,
                                                          const PlanWishes& wishes) {
    const std::size_t marks = usable_marks(survey);
    if (marks <= options.most_marks_for_whole) {
        auto made = make_whole_plan(survey, options, weights, progress, wishes, marks);
        if (made) progress.say(1.0, Words::later("done"));
        return made;
    }
    auto made = make_coarse_plan(survey, options, progress, wishes.letters);
    if (!made) return std::nullopt;
    if (track_points(survey) > most_track_points_coarse) {
        made->plan.notices.push_back(
            Words::tell("The track is too long for the area walked to be measured in the coarse form."));
    } else {
        progress.say(0.95, Words::later("measuring what was walked"));
        std::optional<Coverage> coverage;
        if (has_track(survey))
            coverage = coverage_of(survey.walks, survey.ground.boundary, options.seen_from_track, {progress.stop, {}});
        if (progress.stopped()) return std::nullopt;
        add_coverage(survey, std::move(coverage), made->plan);
    }
    progress.say(1.0, Words::later("done"));
    return made;
}

std::optional<Plan> make_plan(const Survey& survey, const PlanOptions& options, const Progress& progress,
                              const PlanWishes& wishes) {
    auto made = make_plan_with_posterior(survey, options, learnt_link_weights(), progress, wishes);
    if (!made) return std::nullopt;
    return std::move(made->plan);
}

}  // namespace plugside
