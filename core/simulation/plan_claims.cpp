#include "core/simulation/plan_claims.h"

#include <algorithm>
#include <optional>

#include "core/simulation/random.h"
#include "core/simulation/true_ground.h"
#include "core/simulation/true_links.h"

namespace plugside {

namespace {

// The true system of each mark of the survey; nothing for another digger's.
std::vector<std::optional<std::size_t>> true_systems(const SimulatedField& field) {
    std::vector<std::optional<std::size_t>> systems(field.survey.mounds.size());
    for (const TrueMound& mound : field.truth.mounds)
        if (mound.seen_as) systems.at(*mound.seen_as) = mound.system;
    return systems;
}

class Judge {
public:
    Judge(const Plan& plan, const SystemPosterior& posterior, const SimulatedField& field)
        : plan_(plan), posterior_(posterior), system_(true_systems(field)), links_(field.truth), ground_(field) {}

    [[nodiscard]] std::vector<Claim> links() const {
        std::vector<Claim> claims;
        for (std::size_t e = 0; e < posterior_.links.size(); ++e) {
            const Link& link = posterior_.links[e];
            claims.push_back({posterior_.link_probability[e], links_.joined(mound(link.first), mound(link.second))});
        }
        return claims;
    }

    [[nodiscard]] std::vector<Claim> runs() const {
        std::vector<Claim> claims;
        for (const MainRun& run : plan_.runs)
            claims.push_back({run.probability.value(), links_.joined(run.from_mound, run.to_mound)});
        return claims;
    }

    [[nodiscard]] std::vector<Claim> pairs() const {
        std::vector<Claim> claims;
        for (std::uint32_t i = 0; i < posterior_.together.size(); ++i)
            for (const CoMembership::Near& near : posterior_.together[i])
                if (i < near.mark) claims.push_back({near.share, one_animals(mound(i), mound(near.mark))});
        for (const Link& link : posterior_.links)
            if (!met(link.first, link.second)) claims.push_back({0.0, one_animals(mound(link.first), mound(link.second))});
        return claims;
    }

    [[nodiscard]] std::vector<Claim> ladders(ProbeKind kind) const {
        std::vector<Claim> claims;
        for (const ProbeSite& site : plan_.probes)
            if (site.key.kind == kind) claims.push_back({site.hit.value(), ground_.try_ladder(site).system.has_value()});
        return claims;
    }

    [[nodiscard]] std::vector<Claim> systems() const {
        std::vector<Claim> claims;
        for (const BurrowSystem& system : plan_.systems) {
            if (system.mounds.size() < 2) continue;
            const bool single = std::all_of(system.mounds.begin() + 1, system.mounds.end(),
                                            [&](std::size_t other) { return one_animals(system.mounds.front(), other); });
            claims.push_back({system.single.value(), single});
        }
        return claims;
    }

    [[nodiscard]] std::vector<Claim> belongs() const {
        std::vector<Claim> claims;
        for (const BurrowSystem& system : plan_.systems) {
            if (system.mounds.size() < 2) continue;
            for (std::size_t i = 0; i < system.mounds.size(); ++i) {
                Random random(system.mounds[i], 1);
                const std::size_t step = 1 + random.below(system.mounds.size() - 1);
                const std::size_t other = system.mounds[(i + step) % system.mounds.size()];
                claims.push_back({plan_.mounds[system.mounds[i]].belongs.value(), one_animals(system.mounds[i], other)});
            }
        }
        return claims;
    }

private:
    [[nodiscard]] std::size_t mound(std::uint32_t mark) const { return posterior_.marks[mark].mound; }
    [[nodiscard]] bool one_animals(std::size_t a, std::size_t b) const { return system_[a] && system_[a] == system_[b]; }
    [[nodiscard]] bool met(std::uint32_t a, std::uint32_t b) const {
        const auto& row = posterior_.together[a];
        const auto found = std::lower_bound(
            row.begin(), row.end(), b, [](const CoMembership::Near& near, std::uint32_t mark) { return near.mark < mark; });
        return found != row.end() && found->mark == b;
    }

    const Plan& plan_;
    const SystemPosterior& posterior_;
    std::vector<std::optional<std::size_t>> system_;
    TrueLinks links_;
    TrueGround ground_;
};

}  // namespace

std::string_view to_text(ClaimKind kind) {
    switch (kind) {
        case ClaimKind::links: return "links";
        case ClaimKind::runs: return "runs of the plan";
        case ClaimKind::pairs: return "pairs";
        case ClaimKind::plug_side: return "ladders, plug side";
        case ClaimKind::between_mounds: return "ladders, between mounds";
        case ClaimKind::systems: return "systems";
        case ClaimKind::belongs: return "mounds belong";
    }
    return "links";
}

PlanClaims claims_of(const Plan& plan, const SystemPosterior& posterior, const SimulatedField& field) {
    const Judge judge(plan, posterior, field);
    return {judge.links(),
            judge.runs(),
            judge.pairs(),
            judge.ladders(ProbeKind::plug_side),
            judge.ladders(ProbeKind::between_mounds),
            judge.systems(),
            judge.belongs()};
}

}  // namespace plugside
