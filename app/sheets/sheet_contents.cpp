#include "app/sheets/sheet_contents.h"

#include <algorithm>
#include <cmath>
#include <map>

#include "app/sheets/set_card.h"
#include "app/sheets/work_contents.h"
#include "core/sets/material.h"
#include "core/sets/planned_use.h"
#include "core/sets/visits.h"
#include "core/walking/ways_between.h"
#include "core/words/words.h"

namespace plugside {

namespace {

QString ground_words(Metres length, LengthUnits units) { return QString::fromStdString(ground_distance(length, units)); }

QString animals_words(const Plan& plan, LengthUnits units) {
    const SystemsEstimate& estimate = plan.estimate;
    const auto told = [&](const QString& text) {
        return text.arg(estimate.low).arg(estimate.high).arg(std::lround(estimate.interval * 100.0));
    };
    if (!plan.area_walked_m2)
        return told(
            sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 to %2 animals (%3 in 100), area walked not known: no track")));
    const QString walked = QString::fromStdString(ground_area(*plan.area_walked_m2, units));
    if (!plan.area_field_m2)
        return told(sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 to %2 animals (%3 in 100) on %4 walked"))).arg(walked);
    return told(sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 to %2 animals (%3 in 100) on %4 walked of %5")))
        .arg(walked, QString::fromStdString(ground_area(*plan.area_field_m2, units)));
}

std::vector<std::size_t> sets_to_print(const SheetInput& input) {
    const std::vector<int>& wanted = input.pages.sets;
    std::vector<std::size_t> sets;
    for (std::size_t i = 0; i < input.plan.sets.size(); ++i) {
        const SetPoint& set = input.plan.sets[i];
        if (set.choice == SetChoice::dropped) continue;
        if (wanted.empty() || std::find(wanted.begin(), wanted.end(), set.visit_order) != wanted.end()) sets.push_back(i);
    }
    std::stable_sort(sets.begin(), sets.end(), [&](std::size_t a, std::size_t b) {
        return input.plan.sets[a].visit_order < input.plan.sets[b].visit_order;
    });
    return sets;
}

// "35 m, 45° NE": straight from one place to another.
QString straight_words(const SheetInput& input, const LocalFrame& frame, LocalPoint from, LocalPoint to) {
    const LocalVector step = to - from;
    const QString far = ground_words(Metres::of(step.length_m()), input.units);
    const auto bearing = Bearing::along(step);
    if (!bearing) return far;
    const Bearing from_true_north = frame.true_bearing(*bearing, from);
    return far + QStringLiteral(", %1° %2")
                     .arg(std::lround(from_true_north.degrees()) % 360)
                     .arg(QString::fromStdString(compass_point(from_true_north)));
}

struct WholeWay {
    double metres = 0.0;
    bool has_gaps = false;  // between two sets no way is drawn
};

// How far and which way from set to set, on foot; the whole of it.
WholeWay tell_ways(const SheetInput& input, const LocalFrame& frame, std::vector<SetCard>& cards) {
    const Survey& survey = input.field.survey;
    std::vector<LocalPoint> places;
    for (const SetCard& card : cards) places.push_back(card.middle);
    const WalkingWays ways = ways_to_places(survey.ground, places, where_the_walk_began(survey));
    WaysBetween between(ways, places);
    WholeWay whole;
    for (std::size_t i = 1; i < cards.size(); ++i) {
        SetCard& card = cards[i];
        const double straight = distance_m(places[i - 1], places[i]);
        const QString told = straight_words(input, frame, places[i - 1], places[i]);
        card.way_from_before = between.way(i - 1, i);
        if (!card.way_from_before) {
            whole.has_gaps = true;
            card.from_before = sheet_words(QT_TRANSLATE_NOOP("Sheets", "no way on foot is drawn; straight %1")).arg(told);
            continue;
        }
        const double on_foot = length(*card.way_from_before).value();
        whole.metres += on_foot;
        card.from_before = on_foot < 1.02 * straight + 0.1
                               ? told
                               : sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 on foot; straight %2"))
                                     .arg(ground_words(Metres::of(on_foot), input.units), told);
    }
    return whole;
}

QString whole_way_words(const WholeWay& whole, LengthUnits units) {
    const QString far = ground_words(Metres::of(whole.metres), units);
    return whole.has_gaps ? sheet_words(QT_TRANSLATE_NOOP("Sheets",
                                                          "%1 in all on foot from the first set to the last, without the "
                                                          "stretches where no gate is drawn."))
                                .arg(far)
                          : sheet_words(QT_TRANSLATE_NOOP("Sheets",
                                                          "%1 in all from the first set to the last, on foot around "
                                                          "barriers and through gates."))
                                .arg(far);
}

std::vector<CautionRow> caution_rows(const SheetInput& input, const std::vector<SetCard>& cards) {
    std::map<std::string, QStringList> at;
    for (const SetCard& card : cards)
        for (const std::string& id : input.plan.sets[card.set].cautions) at[id] << QString::number(card.number);
    std::vector<CautionRow> rows;
    for (const Caution& caution : all_cautions()) {
        const auto found = at.find(caution.id);
        if (found == at.end()) continue;
        const bool everywhere = found->second.size() == static_cast<qsizetype>(cards.size());
        rows.push_back({card_caution(caution), reason_words(caution),
                        everywhere ? sheet_words(QT_TRANSLATE_NOOP("Sheets", "At every set"))
                                   : sheet_words(QT_TRANSLATE_NOOP("Sheets", "At %1")).arg(listed(found->second))});
    }
    std::stable_sort(rows.begin(), rows.end(),
                     [](const CautionRow& a, const CautionRow& b) { return a.caution.weight < b.caution.weight; });
    return rows;
}

std::vector<LoadRow> load_rows(const SheetInput& input, const std::vector<SetCard>& cards) {
    double expected = 0.0;
    std::size_t most = 0;
    for (const SetCard& card : cards) {
        const ProbeSite& site = input.plan.probes[input.plan.sets[card.set].probe];
        expected += site.expected_rungs;
        most += site.rungs.size();
    }
    const auto count = QString::number(cards.size());
    return {{count, sheet_words(QT_TRANSLATE_NOOP("Sheets", "flags, numbered as the cards")),
             sheet_words(QT_TRANSLATE_NOOP("Sheets", "one a set, so that every one is found and lifted again"))},
            {count, sheet_words(QT_TRANSLATE_NOOP("Sheets", "stakes with wire or cable")),
             sheet_words(QT_TRANSLATE_NOOP("Sheets", "never cord: it is chewed"))},
            {QStringLiteral("1"), sheet_words(QT_TRANSLATE_NOOP("Sheets", "probe, tape, compass")),
             sheet_words(QT_TRANSLATE_NOOP("Sheets", "about %1 holes are expected, %2 at most"))
                 .arg(std::lround(expected))
                 .arg(most)}};
}

// What a method was chosen for is judged for it, with its material and time in place of what every method needs.
void add_work(SheetContents& contents, const SheetInput& input) {
    const WorkOrder& work = *input.work;
    const Survey& survey = input.field.survey;
    const JudgedPlan judged = judge(survey, work, input.plan, input.made_at);
    add_judged(contents, work, input.plan, judged, input.made_at);
    contents.conditions = condition_rows(work, judged, input.made_at);
    for (const LabelCheck& check : label_checks(survey, work, input.plan, input.made_at, {}, input.units))
        contents.label << QString::fromStdString(check.sentence);
    const Load load = what_to_load(survey, work, input.plan, input.made_at);
    if (load.lines.empty()) return;
    LoadRow probing = contents.load.back();
    contents.load.clear();
    for (const LoadLine& line : load.lines) contents.load.push_back({{}, QString::fromStdString(line.sentence), {}});
    contents.load.push_back(std::move(probing));
    for (const MethodText& method : contents.methods)
        if (!method.tools.isEmpty()) contents.load.push_back({{}, method.tools, method.name});
    const auto hours = [](double minutes) { return decimal(minutes / 60.0, 1); };
    contents.load_remarks << sheet_words(
                                 QT_TRANSLATE_NOOP(
                                     "Sheets", "Working time: %1 to %2 hours (%3 in 100), without the way between sets."))
                                 .arg(hours(load.time.low), hours(load.time.high))
                                 .arg(std::lround(load.time.level * 100.0));
    for (const std::string& notice : load.notices) contents.load_remarks << QString::fromStdString(notice);
}

}  // namespace

std::optional<SheetContents> sheet_contents(const SheetInput& input, const Progress& progress) {
    const LanguageHere language(input.language);
    const LocalFrame frame = input.field.frame;  // of its own, for this thread
    SheetContents contents;
    contents.field = QString::fromStdString(input.field.field_name);
    contents.animals = animals_words(input.plan, input.units);
    contents.made = sheet_words(QT_TRANSLATE_NOOP("Sheets", "made %1")).arg(moment_words(input.made_at));
    contents.decides = sheet_words(QT_TRANSLATE_NOOP("Sheets", "The label, local rules and a licensed applicator decide."));
    const std::vector<std::size_t> sets = sets_to_print(input);
    for (const std::size_t set : sets) {
        if (progress.stopped()) return std::nullopt;
        progress.say(static_cast<double>(contents.cards.size()) / static_cast<double>(sets.size()), "");
        contents.cards.push_back(set_card(input, frame, set));
    }
    contents.way = whole_way_words(tell_ways(input, frame, contents.cards), input.units);
    contents.cautions = caution_rows(input, contents.cards);
    contents.load = load_rows(input, contents.cards);
    if (input.work) add_work(contents, input);
    return contents;
}

}  // namespace plugside
