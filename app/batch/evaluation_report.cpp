#include "app/batch/evaluation_report.h"

#include <algorithm>

#include "app/batch/evaluation_charts.h"
#include "app/batch/evaluation_groups.h"
#include "app/batch/formatted.h"
#include "app/batch/svg_chart.h"

namespace plugside {

namespace {

using Groups = std::vector<EvaluationGroup>;
using Cells = std::vector<std::string>;

constexpr const char* style_sheet = R"css(
body { margin: 0 auto; max-width: 1180px; padding: 28px 32px 60px; background: #F7F4EB; color: #22261F;
       font: 15px/1.5 "DejaVu Sans", "Segoe UI", sans-serif; font-variant-numeric: tabular-nums; }
h1 { font-size: 26px; line-height: 1.25; margin: 0 0 10px; }
h2 { font-size: 18px; margin: 38px 0 6px; padding-top: 14px; border-top: 1px solid #CFC8B6; }
h3 { font-size: 15px; margin: 22px 0 4px; }
p { max-width: 78ch; margin: 6px 0 10px; }
.lead { font-size: 17px; }
.scroll { overflow-x: auto; }
table { border-collapse: collapse; background: #FFFDF6; font-size: 13px; margin: 10px 0; }
th, td { padding: 4px 8px; border-bottom: 1px solid #CFC8B6; text-align: right; }
td { white-space: nowrap; }
th.wide { text-align: center; border-left: 1px solid #CFC8B6; }
th:first-child, td:first-child { text-align: left; }
thead th { background: #EFEADC; font-weight: 600; vertical-align: bottom; }
tr.all td { font-weight: 600; }
.panels { display: flex; flex-wrap: wrap; gap: 14px; }
figure { margin: 0; background: #FFFDF6; border: 1px solid #CFC8B6; padding: 8px 8px 4px; }
figcaption { font-size: 13px; font-weight: 600; padding: 0 4px 4px; }
svg { display: block; font: 12px "DejaVu Sans", "Segoe UI", sans-serif; max-width: 100%; height: auto; }
svg text { fill: #22261F; } svg .label { fill: #4F4F45; } svg .note { font-size: 11px; fill: #4F4F45; }
.frame { fill: none; stroke: #6B6A5E; } .tick { stroke: #6B6A5E; fill: none; }
.line { fill: none; stroke-width: 1.6; } .fine { stroke-width: 1; } .broken { stroke-dasharray: 5 4; } .mean { stroke-width: 3; }
.line.run { stroke: #0B5F66; } .line.act { stroke: #A3195B; } .line.quiet { stroke: #6B6A5E; stroke-width: 1; }
.line.hollow { stroke: #6B6A5E; } .line.soil { stroke: #4A2F1B; }
.dot.run { fill: #0B5F66; } .dot.act { fill: #A3195B; } .dot.soil { fill: #4A2F1B; }
.dot.hollow { fill: #FFFDF6; stroke: #6B6A5E; stroke-width: 1.3; }
.area.soil { fill: #B98F63; fill-opacity: 0.75; } .area.corridor { fill: #7FB8C9; fill-opacity: 0.3; }
@media print { body { background: #FFFFFF; } figure { break-inside: avoid; } }
)css";

std::string number(double value, int decimals) { return formatted("%.*f", decimals, value); }

std::string row(const char* cell, const Cells& cells, const char* style = "") {
    std::string text = formatted("<tr class=\"%s\">", style);
    for (const std::string& content : cells) text += formatted("<%s>", cell) + escaped(content) + formatted("</%s>", cell);
    return text + "</tr>\n";
}

// A row a group, the last one set apart.
template <typename CellsOf>
std::string table(const std::string& head, const Groups& groups, CellsOf cells_of) {
    std::string text = "<div class=\"scroll\"><table><thead>" + head + "</thead><tbody>\n";
    for (const EvaluationGroup& group : groups) {
        Cells cells{group.name};
        for (std::string& cell : cells_of(group)) cells.push_back(std::move(cell));
        text += row("td", cells, group.is_all ? "all" : "");
    }
    return text + "</tbody></table></div>\n";
}

template <typename CellsOf>
std::string table(const Cells& head, const Groups& groups, CellsOf cells_of) {
    return table(row("th", head), groups, cells_of);
}

std::string figure(const std::string& caption, const std::string& chart) {
    return "<figure><figcaption>" + escaped(caption) + "</figcaption>" + chart + "</figure>\n";
}

std::string paragraph(const std::string& words, const char* style = "") {
    return formatted("<p class=\"%s\">", style) + escaped(words) + "</p>\n";
}

// Seeds of the fields, "1 to 6".
std::string seeds_told(const std::vector<FieldResult>& results) {
    const auto [least, greatest] = std::minmax_element(
        results.begin(), results.end(), [](const FieldResult& a, const FieldResult& b) { return a.seed < b.seed; });
    return std::to_string(least->seed) + " to " + std::to_string(greatest->seed);
}

std::string opening(const std::vector<FieldResult>& results, const Groups& groups) {
    const Totals& all = groups.back().totals;
    std::string kinds;
    for (const EvaluationGroup& group : groups)
        if (!group.is_all)
            kinds += (kinds.empty() ? "" : ", ") + std::to_string(group.fields.size()) + " of the kind " + group.name;
    const std::string fields = formatted("%zu made-up field%s with %.0f marks each on average", results.size(),
                                         results.size() == 1 ? "" : "s", all.mean(all.marks));
    return paragraph("Tested: " + fields + " (" + kinds + "; seeds " + seeds_told(results) +
                         "), each planned from its marks alone and judged by what is really there. " +
                         tuning_sentence(groups),
                     "lead");
}

std::string systems_section(const Groups& groups) {
    std::string text = "<h2>Systems and their number</h2>\n";
    text += paragraph(
        "Index: adjusted Rand index between the plan's systems and the true ones, over the marks used. Yardstick: "
        "DBSCAN with its radius tuned on the truth of each field. Shortfall: what is left to 1, over what the "
        "yardstick leaves, of the means and as the mean over fields. Ratio: expected over true number. Width: of "
        "the interval, over the true number. Holds: intervals that hold the true number, in 100; 90 are promised.");
    text += table({"kind", "fields", "tuning", "marks", "true", "expected", "ratio", "holds", "width", "index", "yardstick",
                   "gain", "shortfall", "mean of fields", "seconds"},
                  groups, [](const EvaluationGroup& group) {
                      const Totals& t = group.totals;
                      return Cells{number(t.fields, 0),
                                   group.is_all ? "" : (group.left_out ? "left out" : "tuned on"),
                                   number(t.mean(t.marks), 0),
                                   number(t.mean(t.true_systems), 1),
                                   number(t.mean(t.expected), 1),
                                   number(t.mean(t.count_ratio), 2),
                                   number(100.0 * t.mean(t.holds), 0),
                                   number(t.mean(t.width), 2),
                                   number(t.mean(t.index), 3),
                                   number(t.mean(t.yardstick), 3),
                                   formatted("%+.3f", t.mean(t.index - t.yardstick)),
                                   number(t.shortfall_of_means(), 2),
                                   number(t.mean_shortfall(), 2),
                                   number(t.mean(t.seconds), 2)};
                  });
    if (const auto width = width_outside_crowded(groups.back()))
        text += paragraph("Mean width of the interval outside crowded kinds: " + number(*width, 2) + " of the true number.");
    const bool with_reference = groups.back().totals.with_reference > 0.0;
    if (with_reference)
        text += paragraph("The reference form of the inference on the same fields:") +
                table({"kind", "index", "ratio", "holds"}, groups, [](const EvaluationGroup& group) {
                    const Totals& t = group.totals;
                    return Cells{number(share(t.reference_index, t.with_reference), 3),
                                 number(share(t.reference_count_ratio, t.with_reference), 2),
                                 number(100.0 * share(t.reference_holds, t.with_reference), 0)};
                });
    text += "<div class=\"panels\">\n";
    text +=
        figure(std::string("Index: a dot a field, uprights are means; above: the plan's; below, hollow: the yardstick's") +
                   (with_reference ? "; between: the reference form's" : ""),
               index_chart(groups));
    text += figure("Count: a dot a field; shaded: within 10 in 100 of the truth", count_chart(groups));
    text += figure("Intervals of 90 in 100 for the number of systems, an upright a field", interval_chart(groups.back()));
    return text + "</div>\n";
}

std::string meaning_of(ClaimKind kind) {
    switch (kind) {
        case ClaimKind::links:
            return "A link's share of the drawn forests. It comes true when a true run joins the two marks' laterals "
                   "without "
                   "passing that of a third mark; around a junction without a mound all arms are joined pairwise, of which "
                   "a "
                   "forest can hold two.";
        case ClaimKind::runs: return "The presence of a main run that the plan draws. It comes true as a link does.";
        case ClaimKind::pairs:
            return "The share of draws in which two marks hang together. It comes true when one animal dug both. Pairs that "
                   "met "
                   "in some draw, and near neighbours that never did, told as 0.";
        case ClaimKind::plug_side:
            return "A plug-side ladder's chance of a hit. It comes true when a hole meets a true run.";
        case ClaimKind::between_mounds:
            return "A between-mounds ladder's chance of a hit. It comes true when a hole meets a true run.";
        case ClaimKind::systems:
            return "The chance that all marks of a system of the plan, two or more, are one animal's. It comes true when "
                   "they are.";
        case ClaimKind::belongs:
            return "The mean chance that a mound is one animal's with the others of its system; judged with one of them, "
                   "drawn "
                   "evenly.";
    }
    return "";
}

std::string scores_table(const Groups& groups, std::size_t kind) {
    const auto parts = [](const ScoreParts& p, Cells& cells) {
        for (const double part : {p.score, p.reliability, p.resolution, p.uncertainty, p.within})
            cells.push_back(formatted("%.4f", part));
    };
    const std::string wide =
        "<tr><th colspan=\"6\"></th><th class=\"wide\" colspan=\"5\">Brier score</th>"
        "<th class=\"wide\" colspan=\"5\">log score</th></tr>\n";
    Cells head{"kind", "claims", "mean told", "came true", "error", "by chance"};
    for (int score = 0; score < 2; ++score)
        for (const char* part : {"score", "= rel.", "- res.", "+ unc.", "+ within"}) head.emplace_back(part);
    return table(wide + row("th", head), groups, [&](const EvaluationGroup& group) {
        const Calibration& c = group.calibration[kind];
        if (c.claims == 0) return Cells(head.size() - 1, "-");
        Cells cells{std::to_string(c.claims), number(c.mean_chance, 3), number(c.share_true, 3), number(c.expected_error, 3),
                    number(c.error_of_perfect_claims, 3)};
        parts(c.brier, cells);
        parts(c.log, cells);
        return cells;
    });
}

std::string ranks_section(const Groups& groups) {
    std::string text = "<h2>Where the truth stands among the draws</h2>\n";
    text += paragraph(
        "Fields by the place of the true number among the drawn ones, from below all (0) to above all (1). Even, up to chance, if the "
        "draws are what they say; full at the right: draws too low; full at both ends: too narrow; full in the middle: too wide. "
        "p: chance of so uneven a row if the ranks were even (chi-square, told of all fields only: it wants some 50).");
    for (std::size_t q = 0; q < truth_rank_count; ++q) {
        Cells head{std::string(truth_rank_names[q])};
        for (std::size_t bin = 0; bin < truth_rank_bins; ++bin)
            head.push_back("from " + number(static_cast<double>(bin) / static_cast<double>(truth_rank_bins), 1));
        head.emplace_back("p");
        text += table(head, groups, [q](const EvaluationGroup& group) {
            const RankHistogram& ranks = group.truth_ranks[q];
            Cells cells;
            for (const std::size_t count : ranks.counts()) cells.push_back(std::to_string(count));
            cells.push_back(group.is_all ? number(ranks.evenness().p_value, 4) : "");
            return cells;
        });
    }
    return text;
}

std::string chances_section(const Groups& groups) {
    constexpr double panel_of_all = 300.0;
    constexpr double panel_of_kind = 260.0;
    std::string text = "<h2>Do the chances hold?</h2>\n";
    text += paragraph(
        "Claims are put into 10 bins of equal count by the chance told; equal chances share a bin, so that there can "
        "be fewer. A dot on the diagonal is a chance that came true as often as it said. Uprights are Wilson bands "
        "of 95 in 100 that take claims as independent: claims of one field hang together, so that with few fields "
        "the bands are narrower than they should be. Error, the calibration error: mean distance from the diagonal; by "
        "chance: what claims without a fault would show in such numbers. Log scores are in natural units, with "
        "chances held within 0.001 and 0.999.");
    text += paragraph(
        "Both scores are the worse the greater they are. Each is reliability (rel.) - resolution (res.) + uncertainty "
        "(unc.) + what lies within the bins (within).");
    for (std::size_t kind = 0; kind < claim_kinds; ++kind) {
        const std::string name(to_text(static_cast<ClaimKind>(kind)));
        text += "<h3>" + escaped(name) + "</h3>\n" + paragraph(meaning_of(static_cast<ClaimKind>(kind)));
        text += "<div class=\"panels\">\n";
        text += figure("all kinds", reliability_chart(groups.back().calibration[kind], name + ", all kinds", panel_of_all));
        for (const EvaluationGroup& group : groups)
            if (!group.is_all)
                text += figure(group.name + (group.left_out ? " (left out)" : ""),
                               reliability_chart(group.calibration[kind], name + ", " + group.name, panel_of_kind));
        text += "</div>\n" + scores_table(groups, kind);
    }
    return text;
}

Cells ladder_cells(const LadderTally& t) {
    if (t.count == 0.0) return Cells(5, "-");
    return {number(t.count, 0), number(share(t.claimed_hits, t.count), 3), number(share(t.hits, t.count), 3),
            number(share(t.claimed_rungs, t.count), 2), number(share(t.rungs, t.count), 2)};
}

std::string ladders_section(const Groups& groups) {
    std::string text = "<h2>Rungs</h2>\n";
    text += paragraph(
        "Every ladder that a plan offers, walked on the true ground. Rungs: holes pushed until the hit, or all of "
        "them.");
    for (const bool at_plug : {true, false})
        text += formatted("<h3>%s</h3>\n", at_plug ? "Plug side" : "Between mounds") +
                table({"kind", "ladders", "hits told", "hits", "rungs told", "rungs"}, groups,
                      [&](const EvaluationGroup& group) {
                          return ladder_cells(at_plug ? group.totals.plug_side : group.totals.between_mounds);
                      });
    return text;
}

std::string reach_section(const Groups& groups) {
    std::string text = "<h2>Animals reached against sets</h2>\n";
    text += paragraph(
        "Sets in the plan's own order of rank. An animal is reached when the ladder of some set meets a run of its "
        "system; animals are those with at least one mark used. The magenta dot is the whole plan, with two sets a "
        "system where places for them are found; the broken line across is nine in ten.");
    const auto at = [](const EvaluationGroup& group, double sets) {
        for (const ReachPoint& point : group.reach)
            if (point.sets_an_animal >= sets - 1e-9) return number(point.reached, 3);
        return std::string("-");
    };
    text += table({"kind", "animals", "sets an animal", "reached with two sets a system", "at 0.5 sets an animal", "at 1.0",
                   "at 1.5", "at 2.0", "at 2.3"},
                  groups, [&](const EvaluationGroup& group) {
                      const Totals& t = group.totals;
                      return Cells{number(t.true_systems, 0),
                                   number(share(t.sets, t.true_systems), 2),
                                   number(share(t.reached, t.true_systems), 3),
                                   at(group, 0.5),
                                   at(group, 1.0),
                                   at(group, 1.5),
                                   at(group, 2.0),
                                   at(group, 2.3)};
                  });
    text += "<div class=\"panels\">\n";
    for (const EvaluationGroup& group : groups)
        text += figure(group.is_all ? "all kinds" : group.name, reach_chart(group, 280.0));
    return text + "</div>\n";
}

}  // namespace

std::string report_of(const std::vector<FieldResult>& results) {
    std::string page =
        "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
        "<title>Plugside: how well its plans do on made-up fields</title>\n<style>";
    page += style_sheet;
    page += "</style>\n</head>\n<body>\n<h1>How well plans do on made-up fields</h1>\n";
    if (results.empty()) return page + paragraph("Nothing was tested.", "lead") + "</body>\n</html>\n";
    const Groups groups = groups_of(results);
    page += opening(results, groups);
    page += systems_section(groups) + chances_section(groups) + ranks_section(groups) + ladders_section(groups) + reach_section(groups);
    return page + "</body>\n</html>\n";
}

}  // namespace plugside
