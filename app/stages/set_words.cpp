#include "app/stages/set_words.h"

#include <QStringList>
#include <cmath>

#include "app/stages/sets_page.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"

namespace plugside {

QString letter_of(const Plan& plan, std::size_t system) {
    return system < plan.systems.size() ? QString::fromStdString(plan.systems[system].letter) : QString();
}

QString place_words(const ProbeSite& site) {
    const QString from = QString::fromStdString(site.key.from_mound);
    if (site.key.kind == ProbeKind::plug_side) return SetsPage::tr("plug side of %1").arg(from);
    return SetsPage::tr("between %1 and %2").arg(from, QString::fromStdString(site.key.to_mound));
}

QString place_words(const Plan& plan, const ProbeSite& site) {
    const QString letter = letter_of(plan, site.system);
    const QString from = QString::fromStdString(site.key.from_mound);
    if (site.key.kind == ProbeKind::plug_side) return SetsPage::tr("animal %1, plug side of %2").arg(letter, from);
    return SetsPage::tr("animal %1, between %2 and %3").arg(letter, from, QString::fromStdString(site.key.to_mound));
}

QString decided_words(SetChoice choice) {
    switch (choice) {
        case SetChoice::kept: return SetsPage::tr("kept");
        case SetChoice::dropped: return SetsPage::tr("dropped");
        case SetChoice::moved: return SetsPage::tr("kept at the place it was moved to");
        case SetChoice::proposed: break;
    }
    return {};
}

QString promise_words(const ProbeSite& site) {
    const auto rungs = static_cast<long long>(std::lround(site.expected_rungs));
    return counted(rungs, SetsPage::tr("%2 in 100, about %1 rung"), SetsPage::tr("%2 in 100, about %1 rungs"))
        .replace(QStringLiteral("%2"), QString::number(site.hit.in_100()));
}

QString filter_words(const SetFilter& filter) {
    QStringList words;
    if (filter.undecided) words << SetsPage::tr("undecided");
    if (filter.cautioned) words << SetsPage::tr("with a caution of the place");
    if (filter.under) words << SetsPage::tr("chance under %1 in 100").arg(*filter.under);
    if (filter.at_least) words << SetsPage::tr("chance of at least %1 in 100").arg(*filter.at_least);
    if (filter.system) words << SetsPage::tr("animal %1").arg(QString::fromStdString(*filter.system));
    return words.join(QStringLiteral(", "));
}

QString animals_words(double animals) { return decimal(animals, animals < 0.1 && animals > 0.0 ? 2 : 1); }

}  // namespace plugside
