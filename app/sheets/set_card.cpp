#include "app/sheets/set_card.h"

#include <cmath>

#include "core/probing/instruction.h"
#include "core/sets/set_code.h"

namespace plugside {

namespace {

QString degrees_words(Bearing bearing) {
    return QStringLiteral("%1° (%2)")
        .arg(std::lround(bearing.degrees()) % 360)
        .arg(QString::fromStdString(compass_point(bearing)));
}

QString age_words(Freshness freshness) {
    switch (freshness) {
        case Freshness::fresh: return sheet_words(QT_TRANSLATE_NOOP("Sheets", "fresh"));
        case Freshness::older: return sheet_words(QT_TRANSLATE_NOOP("Sheets", "older"));
        case Freshness::crushed: return sheet_words(QT_TRANSLATE_NOOP("Sheets", "crushed"));
        case Freshness::unknown: break;
    }
    return sheet_words(QT_TRANSLATE_NOOP("Sheets", "age not noted"));
}

QString mound_words(const Mound& mound) {
    const QString name = QString::fromStdString(mound.name);
    if (!mound.fan)
        return sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1, %2, no fan noted.")).arg(name, age_words(mound.freshness));
    return sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1, %2, its soil thrown towards %3."))
        .arg(name, age_words(mound.freshness), degrees_words(*mound.fan));
}

QString state_words(SetChoice choice) {
    switch (choice) {
        case SetChoice::kept: return sheet_words(QT_TRANSLATE_NOOP("Sheets", "kept"));
        case SetChoice::moved: return sheet_words(QT_TRANSLATE_NOOP("Sheets", "kept, moved by hand"));
        case SetChoice::dropped: return sheet_words(QT_TRANSLATE_NOOP("Sheets", "dropped"));
        case SetChoice::proposed: break;
    }
    return sheet_words(QT_TRANSLATE_NOOP("Sheets", "proposed, not decided"));
}

QString place_words(const ProbeSite& site) {
    const QString from = QString::fromStdString(site.key.from_mound);
    if (!site.to_mound) return sheet_words(QT_TRANSLATE_NOOP("Sheets", "plug side of %1")).arg(from);
    return sheet_words(QT_TRANSLATE_NOOP("Sheets", "between %1 and %2"))
        .arg(from, QString::fromStdString(site.key.to_mound));
}

QString chance_words(const ProbeSite& site) {
    const int rungs = static_cast<int>(std::lround(site.expected_rungs));
    const QString text =
        rungs == 1 ? sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 in 100 that a hole meets the run; about %2 hole."))
                   : sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 in 100 that a hole meets the run; about %2 holes."));
    return text.arg(site.hit.in_100()).arg(rungs);
}

bool along_the_axis(const ProbeSite& site) {
    return angle_between_axes_degrees(Bearing::degrees(site.ladder.angle_degrees), Bearing::degrees(0.0)) < 1.0;
}

void add_rungs(SetCard& card, const ProbeSite& site, LengthUnits units) {
    const bool along = along_the_axis(site);
    card.rungs_meaning =
        along ? sheet_words(QT_TRANSLATE_NOOP("Sheets", "Holes in order, with the tape's reading from the plug:"))
              : sheet_words(
                    QT_TRANSLATE_NOOP("Sheets", "Holes in order, L to the left or R to the right of the row's middle:"));
    // a row that points back along the axis counts the other way
    const double sign = std::cos(site.ladder.angle_degrees * 3.14159265358979 / 180.0) < 0.0 ? -1.0 : 1.0;
    for (std::size_t i = 0; i < site.rungs.size(); ++i) {
        const Metres rung = site.rungs[i];
        RungToTick tick{static_cast<int>(i + 1), {}};
        if (along)
            tick.reading = fine_reading(site.ladder.along + rung * sign, units);
        else if (std::abs(rung.value()) < 0.0005)
            tick.reading = sheet_words(QT_TRANSLATE_NOOP("Sheets", "middle"));
        else
            tick.reading = (rung.value() < 0.0 ? sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 L"))
                                               : sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 R")))
                               .arg(fine_reading(Metres::of(std::abs(rung.value())), units));
        card.rungs.push_back(tick);
    }
}

QString source_words(const Caution& caution) {
    if (caution.tag == "practice") return sheet_words(QT_TRANSLATE_NOOP("Sheets", "Common practice."));
    if (caution.tag == "ours") return sheet_words(QT_TRANSLATE_NOOP("Sheets", "Our own rule."));
    const QString source = QString::fromStdString(caution.source);
    return caution.tag == "memory" ? sheet_words(QT_TRANSLATE_NOOP("Sheets", "Source: %1, quoted from memory.")).arg(source)
                                   : sheet_words(QT_TRANSLATE_NOOP("Sheets", "Source: %1.")).arg(source);
}

}  // namespace

QString reason_words(const Caution& caution) {
    return QString::fromStdString(caution.reason) + QLatin1Char(' ') + source_words(caution);
}

QString listed(const QStringList& names) {
    if (names.size() < 2) return names.join(QString());
    return sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 and %2"))
        .arg(names.mid(0, names.size() - 1).join(QStringLiteral(", ")), names.back());
}

QString fine_reading(Metres length, LengthUnits units) {
    const QString sign = length.value() < 0.0 ? QStringLiteral("-") : QString();
    const double metres = std::abs(length.value());
    if (units == LengthUnits::metres) {
        const long millimetres = std::lround(metres * 1000.0);
        return sign + decimal(static_cast<double>(millimetres) / 10.0, millimetres % 10 == 0 ? 0 : 1) +
               QStringLiteral(" cm");
    }
    const long quarters = std::lround(Metres::of(metres).inches() * 4.0);
    static constexpr const char* parts[] = {"", "1/4", "1/2", "3/4"};
    QStringList number;
    if (quarters / 4 > 0 || quarters % 4 == 0) number << QString::number(quarters / 4);
    if (quarters % 4 != 0) number << QLatin1String(parts[quarters % 4]);
    return sign + sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 in")).arg(number.join(QLatin1Char(' ')));
}

CardCaution card_caution(const Caution& caution) {
    const QString sentence = QString::fromStdString(caution.sentence);
    switch (caution.weight) {
        case CautionWeight::stop: return {caution.weight, sheet_words(QT_TRANSLATE_NOOP("Sheets", "STOP")), sentence};
        case CautionWeight::hold_back:
            return {caution.weight, sheet_words(QT_TRANSLATE_NOOP("Sheets", "HOLD BACK")), sentence};
        case CautionWeight::mind: break;
    }
    return {caution.weight, sheet_words(QT_TRANSLATE_NOOP("Sheets", "MIND")), sentence};
}

SetCard set_card(const SheetInput& input, const LocalFrame& frame, std::size_t set) {
    const SetPoint& point = input.plan.sets[set];
    const ProbeSite& site = input.plan.probes[point.probe];
    const Survey& survey = input.field.survey;
    const std::string& letter = input.plan.systems[site.system].letter;
    SetCard card;
    card.set = set;
    card.number = point.visit_order;
    card.letter = QString::fromStdString(letter);
    card.code = QString::fromStdString(set_code({letter, point.visit_order}));
    card.handheld = QStringLiteral("S%1 %2").arg(point.visit_order, 2, 10, QLatin1Char('0')).arg(card.letter);
    card.place = place_words(site);
    card.state = state_words(point.choice);
    card.instruction = QString::fromStdString(instruction(site, survey, input.units));
    add_rungs(card, site, input.units);
    card.chance = chance_words(site);
    card.promise = sheet_words(QT_TRANSLATE_NOOP("Sheets", "%1 in 100, about %2"))
                       .arg(site.hit.in_100())
                       .arg(std::lround(site.expected_rungs));
    card.look_for = mound_words(survey.mounds[site.from_mound]);
    if (site.to_mound) card.look_for += QLatin1Char(' ') + mound_words(survey.mounds[*site.to_mound]);
    for (const std::string& id : point.cautions) {
        const Caution* caution = find_caution(id);
        if (caution != nullptr && !holds_at_every_set(id)) card.cautions.push_back(card_caution(*caution));
    }
    const GeographicPoint at = frame.to_geographic(site.middle);
    card.at = QStringLiteral("%1, %2").arg(at.latitude_degrees, 0, 'f', 6).arg(at.longitude_degrees, 0, 'f', 6);
    card.middle = site.middle;
    card.scene = close_up_scene(input.field, input.plan, site);
    return card;
}

}  // namespace plugside
