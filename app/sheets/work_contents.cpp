#include "app/sheets/work_contents.h"

#include <QDateTime>
#include <algorithm>
#include <map>

#include "app/sheets/set_card.h"
#include "core/sets/cautions.h"

namespace plugside {

namespace {

QString shown(const std::string& word) { return QString::fromStdString(answer_shown(word)); }
QString yes_or_no(bool value) {
    return value ? sheet_words(QT_TRANSLATE_NOOP("Sheets", "yes")) : sheet_words(QT_TRANSLATE_NOOP("Sheets", "no"));
}

QString words_of(bool value) { return yes_or_no(value); }
QString words_of(double celsius) {
    return sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 °C (%2 °F)"))
        .arg(decimal(celsius, 1), decimal(celsius * 1.8 + 32.0, 0));
}
QString words_of(const std::string& text) { return QString::fromStdString(text); }
template <typename Word>
requires std::is_enum_v<Word> QString words_of(Word value) { return shown(to_text(value)); }
QString words_of(const std::set<PropertyUse>& uses) {
    QStringList words;
    for (const PropertyUse use : uses) words << shown(to_text(use));
    return words.join(QStringLiteral(", "));
}
QString words_of(const Visits& visits) {
    QStringList words{yes_or_no(visits.come)};
    if (visits.from)
        words << sheet_words(QT_TRANSLATE_NOOP("Sheets", "from %1")).arg(QString::fromStdString(day_shown(*visits.from)));
    if (visits.until)
        words << sheet_words(QT_TRANSLATE_NOOP("Sheets", "until %1")).arg(QString::fromStdString(day_shown(*visits.until)));
    if (!visits.when.empty()) words << QString::fromStdString(visits.when);
    return words.join(QStringLiteral(", "));
}
QString words_of(const std::vector<WaterDay>& days) {
    const auto depth = [](const std::optional<double>& mm) {
        return mm ? decimal(*mm, 0) + QStringLiteral(" mm") : sheet_words(QT_TRANSLATE_NOOP("Sheets", "not known"));
    };
    QStringList words;
    for (const WaterDay& day : days)
        words << sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1: rain %2, irrigation %3"))
                     .arg(QString::fromStdString(day_shown(day.day)), depth(day.rain_mm), depth(day.irrigation_mm));
    return words.join(QStringLiteral("; "));
}

template <typename T>
QString words_of(const Told<T>& told) {
    if (told.value) return words_of(*told.value);
    return told.at ? sheet_words(QT_TRANSLATE_NOOP("Sheets", "not known")) : QString();
}

QString sentences(const std::vector<QString>& parts) {
    QStringList told;
    for (const QString& part : parts)
        if (!part.isEmpty()) told << part;
    return told.join(QLatin1Char(' '));
}

// A caution as judged at one set: what it says, and what decided it.
CardCaution judged_caution(const Judgement& judgement) {
    const Caution* caution = find_caution(judgement.caution);
    CardCaution card = caution != nullptr ? card_caution(*caution) : CardCaution{judgement.weight, {}, {}};
    if (judgement.signed_off)
        card.word = sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 (signed)")).arg(card.word);
    else if (judgement.verdict == Verdict::not_known)
        card.word = sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1, NOT ANSWERED")).arg(card.word);
    return card;
}

struct JudgedEverywhere {
    Judgement judgement;
    QStringList sets;
};

// Judgements of one caution with one verdict, in the order of the cautions.
using ByCaution = std::map<std::pair<std::string, Verdict>, JudgedEverywhere>;

ByCaution by_caution(const SheetContents& contents, const JudgedPlan& judged) {
    ByCaution found;
    for (const SetCard& card : contents.cards)
        for (const JudgedSet& set : judged.sets) {
            if (set.set != card.set) continue;
            for (const Judgement* judgement : set.shown()) {
                JudgedEverywhere& one = found[{judgement->caution, judgement->verdict}];
                one.judgement = *judgement;
                one.sets << QString::number(card.number);
            }
        }
    return found;
}

bool everywhere(const JudgedEverywhere& one, const SheetContents& contents) {
    return one.sets.size() == static_cast<qsizetype>(contents.cards.size());
}

void add_method(SetCard& card, const WorkOrder& work, const Plan& plan, UtcTime now) {
    const auto method = find_method(work, method_at(work, plan.probes[plan.sets[card.set].probe].key));
    if (!method) return;
    card.method = QString::fromStdString(method->name);
    // the first step of the built-in ones is the search along the ladder, which the instruction tells with its figures
    const bool built_in = built_in_method(method->id).has_value();
    for (std::size_t i = built_in ? 1 : 0; i < method->steps.size(); ++i)
        card.steps << QString::fromStdString(method->steps[i].text);
    card.cover = QString::fromStdString(cover_or_open(*method, work.conditions, now).reason);
}

}  // namespace

QString answer_words(const Conditions& told, Question question) {
    switch (question) {
        case Question::soil_moisture: return words_of(told.soil_moisture);
        case Question::rain_due: return words_of(told.rain_due);
        case Question::irrigation_due: return words_of(told.irrigation_due);
        case Question::water_days: return words_of(told.water_days);
        case Question::soil_temperature: return words_of(told.soil_temperature_c);
        case Question::soil_texture: return words_of(told.soil_texture);
        case Question::soil_cracks: return words_of(told.soil_cracks);
        case Question::frost: return words_of(told.frost);
        case Question::crop: return words_of(told.crop);
        case Question::site_use: return words_of(told.site_use);
        case Question::property: return words_of(told.property);
        case Question::children: return words_of(told.children);
        case Question::public_visits: return words_of(told.public_visits);
        case Question::pets: return words_of(told.pets);
        case Question::stock: return words_of(told.stock);
        case Question::buildings_drawn: return words_of(told.buildings_drawn);
        case Question::water_near: return words_of(told.water_near);
        case Question::wildlife: return sentences({words_of(told.wildlife), words_of(told.wildlife_asked)});
        case Question::fumigation_plan: return words_of(told.fumigation_plan);
        case Question::utilities: return sentences({words_of(told.utilities), words_of(told.utilities_ticket)});
        case Question::neighbours_told: return words_of(told.neighbours_told);
        case Question::trap_law_read: return words_of(told.trap_law_read);
        case Question::pesticide_office: return words_of(told.pesticide_office);
        case Question::licence:
        case Question::label:
        case Question::ingredient:
        case Question::method:
        case Question::placement: break;
    }
    return {};
}

std::vector<ConditionRow> condition_rows(const WorkOrder& work, const JudgedPlan& judged, UtcTime now) {
    const std::vector<Question> asked = judged.asks();
    std::vector<ConditionRow> rows;
    for (const Question question : all_questions()) {
        const bool answered = is_answered(work.conditions, question);
        const bool wanted = std::find(asked.begin(), asked.end(), question) != asked.end();
        if (!answered && !wanted) continue;
        ConditionRow row{QString::fromStdString(asked_as(question)), answer_words(work.conditions, question), {}};
        if (const auto at = answered_at(work.conditions, question)) row.told = moment_words(*at);
        if (answered && is_questioned(work.conditions, question, now))
            row.told += QStringLiteral("; ") + sheet_words(QT_TRANSLATE_NOOP("Sheets", "too old, ask again"));
        if (!answered) row.told = sheet_words(QT_TRANSLATE_NOOP("Sheets", "not answered: ask before the work"));
        rows.push_back(std::move(row));
    }
    return rows;
}

std::vector<MethodText> method_texts(const WorkOrder& work, const std::vector<std::string>& ids, UtcTime now) {
    std::vector<MethodText> texts;
    for (const std::string& id : ids) {
        const auto method = find_method(work, id);
        if (!method) continue;
        MethodText text{QString::fromStdString(method->name),
                        {},
                        {},
                        QString::fromStdString(cover_or_open(*method, work.conditions, now).reason)};
        for (const MethodStep& step : method->steps)
            text.steps.push_back({QString::fromStdString(step.text), QString::fromStdString(step.source)});
        QStringList tools;
        for (const std::string& tool : method->tools) tools << QString::fromStdString(tool);
        text.tools = tools.join(QStringLiteral(", "));
        texts.push_back(std::move(text));
    }
    return texts;
}

void add_judged(SheetContents& contents, const WorkOrder& work, const Plan& plan, const JudgedPlan& judged, UtcTime now) {
    const ByCaution found = by_caution(contents, judged);
    std::vector<std::string> methods;
    for (SetCard& card : contents.cards) {
        add_method(card, work, plan, now);
        const std::string id = method_at(work, plan.probes[plan.sets[card.set].probe].key);
        if (std::find(methods.begin(), methods.end(), id) == methods.end()) methods.push_back(id);
        card.cautions.clear();
        const auto set =
            std::find_if(judged.sets.begin(), judged.sets.end(), [&](const JudgedSet& one) { return one.set == card.set; });
        if (set == judged.sets.end()) continue;
        for (const Judgement* judgement : set->shown())
            if (!everywhere(found.at({judgement->caution, judgement->verdict}), contents))
                card.cautions.push_back(judged_caution(*judgement));
    }
    contents.methods = method_texts(work, methods, now);
    contents.cautions.clear();
    for (const Caution& caution : all_cautions())
        for (const Verdict verdict : {Verdict::holds, Verdict::not_known}) {
            const auto one = found.find({caution.id, verdict});
            if (one == found.end()) continue;
            const QString where = everywhere(one->second, contents)
                                      ? sheet_words(QT_TRANSLATE_NOOP("Sheets", "At every set"))
                                      : sheet_words(QT_TRANSLATE_NOOP("Sheets", "At %1")).arg(listed(one->second.sets));
            contents.cautions.push_back(
                {judged_caution(one->second.judgement),
                 sentences({QString::fromStdString(one->second.judgement.because), reason_words(caution)}), where});
        }
    std::stable_sort(contents.cautions.begin(), contents.cautions.end(),
                     [](const CautionRow& a, const CautionRow& b) { return a.caution.weight < b.caution.weight; });
}

}  // namespace plugside
