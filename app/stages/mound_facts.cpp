#include "app/stages/mound_facts.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QPainter>
#include <QPushButton>
#include <QToolButton>
#include <QVBoxLayout>
#include <cmath>

#include "app/canvas/mound_glyph.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"
#include "core/mending/walk_marks.h"

namespace plugside {

namespace {

constexpr int glyph_room_px = 46;

QString words(const char* text) { return QCoreApplication::translate("MoundFacts", text); }

QString time_words(const UtcTime& time) {
    return words(QT_TRANSLATE_NOOP("MoundFacts", "marked %1")).arg(moment_words(time));
}

QString plan_words(const Plan& plan, std::size_t mound) {
    const MoundInPlan& in_plan = plan.mounds[mound];
    if (in_plan.not_used_because)
        return words(QT_TRANSLATE_NOOP("MoundFacts", "not used: %1"))
            .arg(QString::fromStdString(reason_shown(*in_plan.not_used_because)));
    if (!in_plan.system || *in_plan.system >= plan.systems.size())
        return words(QT_TRANSLATE_NOOP("MoundFacts", "belongs to no system"));
    const BurrowSystem& system = plan.systems[*in_plan.system];
    const QString letter = QString::fromStdString(system.letter);
    if (system.mounds.size() < 2)
        return words(QT_TRANSLATE_NOOP("MoundFacts", "animal %1, the only mound of its system")).arg(letter);
    return words(QT_TRANSLATE_NOOP("MoundFacts", "animal %1; %2 in 100 that it is one animal's with the others"))
        .arg(letter)
        .arg(in_plan.belongs.in_100());
}

// What of fan, freshness and kind was recorded otherwise than it is taken; empty where nothing was.
QString recorded_words(const Mound& mound) {
    const RecordedMark& before = *mound.recorded;
    QStringList parts;
    if (before.kind != mound.kind) parts << kind_word(before.kind);
    if (before.freshness != mound.freshness) parts << freshness_word(before.freshness);
    if (before.fan != mound.fan)
        parts
            << (before.fan
                    ? words(QT_TRANSLATE_NOOP("MoundFacts", "fan towards %1°")).arg(std::lround(before.fan->degrees()) % 360)
                    : words(QT_TRANSLATE_NOOP("MoundFacts", "no fan")));
    if (parts.isEmpty()) return {};
    return words(QT_TRANSLATE_NOOP("MoundFacts", "put right; recorded: %1")).arg(parts.join(QStringLiteral(", ")));
}

}  // namespace

QStringList mound_facts(const FieldSurvey& field, const Plan* plan, std::size_t index) {
    const Mound& mound = field.survey.mounds.at(index);
    QStringList lines{QString::fromStdString(mound.name)};
    lines << (is_gopher_sign(mound.kind) ? words(QT_TRANSLATE_NOOP("MoundFacts", "%1, %2"))
                                               .arg(kind_word(mound.kind), freshness_word(mound.freshness))
                                         : kind_word(mound.kind));
    if (mound.fan) {
        lines << words(QT_TRANSLATE_NOOP("MoundFacts", "fan towards %1° %2, true"))
                     .arg(std::lround(mound.fan->degrees()) % 360)
                     .arg(QString::fromStdString(compass_point(*mound.fan)));
    } else if (is_gopher_sign(mound.kind)) {
        lines << words(QT_TRANSLATE_NOOP("MoundFacts", "no fan was read"));
    }
    if (mound.recorded) {
        if (const QString recorded = recorded_words(mound); !recorded.isEmpty()) lines << recorded;
    }
    if (plan && index < plan->mounds.size()) lines << plan_words(*plan, index);
    if (!mound.note.empty())
        lines << words(QT_TRANSLATE_NOOP("MoundFacts", "note: %1")).arg(QString::fromStdString(mound.note));
    if (mound.walk < field.survey.walks.size())
        lines << QString::fromStdString(walk_name_shown(field.survey.walks[mound.walk].id) + ", " +
                                        field.survey.walks[mound.walk].source);
    if (mound.time) lines << time_words(*mound.time);
    return lines;
}

MoundFacts::MoundFacts(FieldSession& session, Choices& choices, QWidget* parent)
    : MoundFacts(session, choices, Asks::nothing, parent) {}

MoundFacts::MoundFacts(FieldSession& session, Choices& choices, Asks asks, QWidget* parent)
    : QFrame(parent),
      session_(session),
      choices_(choices),
      name_(label_in_role("heading", this)),
      facts_(label_in_role("quiet", this)),
      picture_(new MarkPicture(choices, this)) {
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(glyph_room_px, 6, 4, 8);
    auto* column = new QVBoxLayout;
    column->setSpacing(2);
    column->addWidget(name_);
    column->addWidget(facts_);
    column->addWidget(picture_);
    if (asks == Asks::who_dug) {
        auto* who = new QPushButton(tr("who dug here? (I)"), this);
        who->setProperty("way", true);
        who->setToolTip(tr("questions about what can be seen, with drawings"));
        column->addWidget(who, 0, Qt::AlignLeft);
        connect(who, &QPushButton::clicked, this, &MoundFacts::digger_asked);
    }
    row->addLayout(column, 1);
    auto* close = new QToolButton(this);
    close->setText(tr("×"));
    close->setProperty("map_button", true);
    close->setAccessibleName(tr("put the mark's facts away"));
    close->setToolTip(tr("put away (Esc)"));
    row->addWidget(close, 0, Qt::AlignTop);
    connect(close, &QToolButton::clicked, this, [this] { choices_.pick_mound(std::nullopt); });
    connect(&choices_, &Choices::picks_changed, this, &MoundFacts::refresh);
    connect(&choices_, &Choices::theme_changed, this, qOverload<>(&QWidget::update));
    connect(&session_, &FieldSession::plan_changed, this, &MoundFacts::refresh);
    connect(&session_, &FieldSession::field_replaced, this, &MoundFacts::refresh);
    refresh();
}

void MoundFacts::refresh() {
    const auto field = session_.field();
    const bool picked = field && choices_.mound() && *choices_.mound() < field->survey.mounds.size();
    setVisible(picked);
    if (!picked) return;
    QStringList lines = mound_facts(*field, session_.plan().get(), *choices_.mound());
    name_->setText(tr("Mark %1").arg(lines.takeFirst()));
    facts_->setText(lines.join('\n'));
    setAccessibleName(name_->text());
    setAccessibleDescription(facts_->text());
    if (const auto& picture = field->survey.mounds[*choices_.mound()].picture)
        picture_->show_picture(session_.files(), *picture);
    else
        picture_->show_nothing();
    update();
}

void MoundFacts::paintEvent(QPaintEvent*) {
    const auto field = session_.field();
    if (!field || !choices_.mound() || *choices_.mound() >= field->survey.mounds.size()) return;
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(style.hairline, 1.0));
    painter.setBrush(style.facts());
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 6.0, 6.0);
    draw_mark(painter, field->survey.mounds[*choices_.mound()], QPointF(0.5 * glyph_room_px, 26.0), 16.0, style);
}

}  // namespace plugside
