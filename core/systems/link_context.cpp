#include "core/systems/link_context.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

constexpr double score_limit = 8.0;  // scores further out say no more

double chance(double score) { return 1.0 / (1.0 + std::exp(-score)); }

// What one end of a link has beside it.
struct EndView {
    double rivals = 0.0;
    int rank = 1;
    double lead = 4.0;
    double straight_on = 0.0;
    double beside = 0.0;
    double degree = 0.0;
};

class ContextMaker {
public:
    ContextMaker(const std::vector<Mark>& marks, const std::vector<Link>& links, const LinkRows& rows,
                 const std::vector<double>& scores)
        : marks_(marks), links_(links), rows_(rows), scores_(scores) {
        for (double& score : scores_) score = std::clamp(score, -score_limit, score_limit);
    }

    [[nodiscard]] LinkContext of(std::uint32_t e) const {
        const Link& link = links_[e];
        const EndView a = view(e, link.first, link.second);
        const EndView b = view(e, link.second, link.first);
        const double bridge = best_bridge(link);
        const auto ends_ranked = [&](int low, int high) {
            return static_cast<double>((a.rank >= low && a.rank <= high) + (b.rank >= low && b.rank <= high));
        };
        return {a.rivals + b.rivals,
                std::max(a.rivals, b.rivals),
                ends_ranked(1, 1),
                ends_ranked(2, 2),
                ends_ranked(4, 1000),
                a.lead + b.lead,
                std::min(a.lead, b.lead),
                a.straight_on + b.straight_on,
                std::min(a.straight_on, b.straight_on),
                a.beside + b.beside,
                a.degree + b.degree,
                bridge,
                std::clamp(bridge - scores_[e], -4.0, 4.0),
                side_change(link)};
    }

private:
    [[nodiscard]] EndView view(std::uint32_t e, std::uint32_t end, std::uint32_t far) const {
        EndView view;
        double sum = 1.0;
        double best = -score_limit;
        double second = -score_limit;
        const LocalVector out = marks_[far].take_off - marks_[end].take_off;
        for (std::uint32_t at = rows_.start[end]; at < rows_.start[end + 1]; ++at) {
            const std::uint32_t other = rows_.link[at];
            view.degree += chance(scores_[other]);
            if (other == e) continue;
            const double score = scores_[other];
            sum += std::exp(score);
            if (score > scores_[e]) ++view.rank;
            if (score > best) {
                second = best;
                best = score;
            } else {
                second = std::max(second, score);
            }
            const std::uint32_t third = links_[other].first == end ? links_[other].second : links_[other].first;
            const LocalVector side = marks_[third].take_off - marks_[end].take_off;
            const double lengths = out.length_m() * side.length_m();
            if (lengths <= 0.0) continue;
            const double cosine = dot(out, side) / lengths;
            if (cosine < 0.0) view.straight_on = std::max(view.straight_on, chance(score) * cosine * cosine);
            if (cosine > 0.6) view.beside += chance(score) * (cosine - 0.6) / 0.4;
        }
        view.rivals = std::log(sum);
        view.lead = std::clamp(scores_[e] - second, -4.0, 4.0);
        return view;
    }

    [[nodiscard]] double best_bridge(const Link& link) const {
        double best = -score_limit;
        for (std::uint32_t at = rows_.start[link.first]; at < rows_.start[link.first + 1]; ++at) {
            const std::uint32_t there = rows_.link[at];
            const std::uint32_t third = links_[there].first == link.first ? links_[there].second : links_[there].first;
            if (third == link.second || scores_[there] <= best) continue;
            for (std::uint32_t back = rows_.start[third]; back < rows_.start[third + 1]; ++back) {
                const std::uint32_t other = rows_.link[back];
                if (links_[other].first == link.second || links_[other].second == link.second)
                    best = std::max(best, std::min(scores_[there], scores_[other]));
            }
        }
        return best;
    }

    [[nodiscard]] double side_change(const Link& link) const {
        const Mark& a = marks_[link.first];
        const Mark& b = marks_[link.second];
        const LocalVector along = b.take_off - a.take_off;
        if (!a.fan || !b.fan || along == LocalVector{}) return 0.0;
        const double length = along.length_m();
        return -(cross(along, a.fan->unit()) / length) * (cross(along, b.fan->unit()) / length);
    }

    const std::vector<Mark>& marks_;
    const std::vector<Link>& links_;
    const LinkRows& rows_;
    std::vector<double> scores_;
};

}  // namespace

const std::array<std::string_view, link_context_count>& link_context_names() {
    static constexpr std::array<std::string_view, link_context_count> names{
        "rivals", "rivals_most", "firsts", "seconds", "later", "lead", "lead_least", "straight_on", "straight_least",
        "beside", "degree",      "bridge", "bridge_lead", "side_change"};
    return names;
}

std::vector<LinkContext> link_context(const std::vector<Mark>& marks, const std::vector<Link>& links, const LinkRows& rows,
                                      const std::vector<double>& scores) {
    const ContextMaker maker(marks, links, rows, scores);
    std::vector<LinkContext> context;
    context.reserve(links.size());
    for (std::uint32_t e = 0; e < links.size(); ++e) context.push_back(maker.of(e));
    return context;
}

}  // namespace plugside
