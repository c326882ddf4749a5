#include "app/batch/evaluation.h"

#include <algorithm>
#include <atomic>
#include <chrono>
#include <mutex>
#include <thread>

#include "core/simulation/tuned_kinds.h"
namespace plugside {

namespace {

WeightsOfKind built_in_weights(FieldKind kind) {
    const auto& learnt_on = kinds_learnt_on();
    return {nullptr, learnt_on && std::find(learnt_on->begin(), learnt_on->end(), kind) == learnt_on->end()};
}

std::optional<FieldResult> evaluate_field(const SimulationOptions& field_options, const EvaluationOptions& options,
                                          const std::stop_token& stop) {
    const SimulatedField field = simulate_field(field_options);
    const WeightsOfKind weights =
        options.weights ? options.weights(field_options.kind) : built_in_weights(field_options.kind);
    FieldResult result;
    result.kind = field_options.kind;
    result.seed = field_options.seed;
    result.kind_left_out = weights.kind_left_out;
    Progress progress;
    progress.stop = stop;
    const auto start = std::chrono::steady_clock::now();
    const auto made =
        make_plan_with_posterior(field.survey, {}, weights.weights ? *weights.weights : learnt_link_weights(), progress);
    result.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    if (!made) return std::nullopt;
    result.score = score_plan(made->plan, field);
    result.claims = claims_of(made->plan, made->posterior, field);
    result.places = truth_places(made->plan, made->posterior, field, field_options.seed);
    for (const LadderOutcome& ladder : result.score.ladders) {
        const bool at_plug = made->plan.probes.at(ladder.probe).key.kind == ProbeKind::plug_side;
        LadderTally& tally = at_plug ? result.plug_side : result.between_mounds;
        tally += {1.0, ladder.claimed_hit, ladder.hit ? 1.0 : 0.0, ladder.claimed_rungs, static_cast<double>(ladder.rungs)};
    }
    if (options.reference) {
        const auto reference = options.reference(field.survey, field_options.kind, progress);
        if (!reference) return std::nullopt;
        result.reference = score_plan(*reference, field);
    }
    return result;
}

std::vector<SimulationOptions> fields_of(const EvaluationOptions& options) {
    const std::size_t kinds = options.kinds.size();
    const std::vector<std::uint64_t> seeds =
        options.fields ? spread_evenly(*options.fields, kinds) : std::vector<std::uint64_t>(kinds, options.seeds);
    std::vector<SimulationOptions> fields;
    for (std::size_t k = 0; k < kinds; ++k)
        for (std::uint64_t i = 0; i < seeds[k]; ++i) {
            SimulationOptions field;
            field.kind = options.kinds[k];
            field.seed = options.first_seed + i;
            field.mounds_wanted = options.mounds;
            fields.push_back(field);
        }
    return fields;
}

}  // namespace

LadderTally& LadderTally::operator+=(const LadderTally& other) {
    count += other.count;
    claimed_hits += other.claimed_hits;
    hits += other.hits;
    claimed_rungs += other.claimed_rungs;
    rungs += other.rungs;
    return *this;
}

bool interval_holds(const PlanScore& score) {
    const auto truth = static_cast<int>(score.true_systems);
    return score.low <= truth && truth <= score.high;
}

std::vector<std::uint64_t> spread_evenly(std::uint64_t fields, std::size_t kinds) {
    std::vector<std::uint64_t> share(kinds, kinds > 0 ? fields / kinds : 0);
    for (std::size_t k = 0; k < kinds && k < fields % kinds; ++k) ++share[k];
    return share;
}

std::optional<std::vector<FieldResult>> evaluate_fields(const EvaluationOptions& options, const std::stop_token& stop,
                                                        const FieldDone& field_done) {
    const std::vector<SimulationOptions> fields = fields_of(options);
    std::vector<std::optional<FieldResult>> results(fields.size());
    std::atomic<std::size_t> next{0};
    std::mutex done_mutex;
    std::size_t done = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < fields.size() && !stop.stop_requested(); i = next++) {
            results[i] = evaluate_field(fields[i], options, stop);
            const std::lock_guard<std::mutex> lock(done_mutex);
            if (field_done) field_done(++done, fields.size());
        }
    };
    {
        const std::jthread other(work);
        work();
    }
    std::vector<FieldResult> finished;
    for (auto& result : results) {
        if (!result) return std::nullopt;
        finished.push_back(std::move(*result));
    }
    return finished;
}

}  // namespace plugside
