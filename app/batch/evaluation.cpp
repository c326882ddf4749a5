#include "app/batch/evaluation.h"

#include <atomic>
#include <chrono>
#include <mutex>
#include <thread>

#include "core/plan/make_plan.h"

namespace plugside {

namespace {

std::optional<FieldResult> evaluate_field(const SimulationOptions& options, const std::stop_token& stop) {
    const SimulatedField field = simulate_field(options);
    FieldResult result;
    result.kind = options.kind;
    result.seed = options.seed;
    Progress progress;
    progress.stop = stop;
    const auto start = std::chrono::steady_clock::now();
    const auto plan = make_plan(field.survey, {}, progress);
    result.seconds = std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
    if (!plan) return std::nullopt;
    result.score = score_plan(*plan, field);
    for (const LadderOutcome& ladder : result.score.ladders) {
        const bool at_plug = plan->probes.at(ladder.probe).key.kind == ProbeKind::plug_side;
        LadderTally& tally = at_plug ? result.plug_side : result.between_mounds;
        tally += {1.0, ladder.claimed_hit, ladder.hit ? 1.0 : 0.0, ladder.claimed_rungs, static_cast<double>(ladder.rungs)};
    }
    return result;
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

bool FieldResult::interval_holds() const {
    const auto truth = static_cast<int>(score.true_systems);
    return score.low <= truth && truth <= score.high;
}

std::optional<std::vector<FieldResult>> evaluate_fields(const EvaluationOptions& options, const std::stop_token& stop,
                                                        const FieldDone& field_done) {
    std::vector<SimulationOptions> fields;
    for (const FieldKind kind : options.kinds)
        for (std::uint64_t i = 0; i < options.seeds; ++i) {
            SimulationOptions field;
            field.kind = kind;
            field.seed = options.first_seed + i;
            field.mounds_wanted = options.mounds;
            fields.push_back(field);
        }
    std::vector<std::optional<FieldResult>> results(fields.size());
    std::atomic<std::size_t> next{0};
    std::mutex done_mutex;
    std::size_t done = 0;
    const auto work = [&] {
        for (std::size_t i = next++; i < fields.size() && !stop.stop_requested(); i = next++) {
            results[i] = evaluate_field(fields[i], stop);
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
