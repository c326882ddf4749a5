#include "app/window/map_speech.h"

#include <QAccessible>
#include <QAccessibleWidget>

#include "app/canvas/map_layers.h"
#include "app/stages/mound_facts.h"
#include "app/stages/set_words.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

class MapInterface : public QAccessibleWidget {
public:
    explicit MapInterface(QWidget* map) : QAccessibleWidget(map, QAccessible::Graphic) {}
    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        const auto* speech = kind == QAccessible::Value ? widget()->findChild<MapSpeech*>() : nullptr;
        return speech != nullptr ? speech->told() : QAccessibleWidget::text(kind);
    }
};

QAccessibleInterface* interface_of(const QString& name, QObject* object) {
    auto* map = name == QLatin1String("plugside::MapView") ? qobject_cast<MapView*>(object) : nullptr;
    return map != nullptr ? new MapInterface(map) : nullptr;
}

}  // namespace

void MapSpeech::install() { QAccessible::installFactory(interface_of); }

MapSpeech::MapSpeech(FieldSession& session, Choices& choices, MapView& map)
    : QObject(&map), session_(session), choices_(choices), map_(map) {
    connect(&choices_, &Choices::picks_changed, this, &MapSpeech::tell);
    connect(&choices_, &Choices::step_changed, this, &MapSpeech::tell);
    connect(&choices_, &Choices::units_changed, this, &MapSpeech::tell);
    connect(&session_, &FieldSession::field_replaced, this, &MapSpeech::tell);
    connect(&session_, &FieldSession::survey_edited, this, &MapSpeech::tell);
    connect(&session_, &FieldSession::plan_changed, this, &MapSpeech::tell);
}

QString MapSpeech::set_told(const FieldSurvey& field, const Plan& plan) const {
    const auto set = set_at(plan, *choices_.set());
    if (!set) return {};
    const SetPoint& point = plan.sets[*set];
    const QString decision = decided_words(choice_of(field.survey, plan, point));
    const ProbeSite& site = plan.probes.at(point.probe);
    QStringList words{tr("set %1 of %2").arg(*set + 1).arg(plan.sets.size()), place_words(plan, site)};
    words << (decision.isEmpty() ? tr("undecided") : decision);
    words << tr("%1 in 100 to meet the run").arg(site.hit.in_100());
    return words.join(QStringLiteral(", "));
}

QString MapSpeech::told() const {
    const auto field = session_.field();
    if (!field) return tr("no walk is open");
    const auto shared_plan = session_.plan();
    const Plan* plan =
        shared_plan && shared_plan->mounds.size() == field->survey.mounds.size() ? shared_plan.get() : nullptr;
    QStringList told;
    if (plan && choices_.step() == Step::sets && choices_.set()) told << set_told(*field, *plan);
    if (choices_.mound() && *choices_.mound() < field->survey.mounds.size())
        told << tr("mark %1").arg(mound_facts(*field, plan, *choices_.mound()).join(QStringLiteral(", ")));
    if (plan && choices_.step() == Step::systems && choices_.system() && *choices_.system() < plan->systems.size()) {
        const BurrowSystem& system = plan->systems[*choices_.system()];
        told << tr("animal %1, %2")
                    .arg(QString::fromStdString(system.letter),
                         counted(static_cast<long long>(system.mounds.size()), tr("%1 mound"), tr("%1 mounds")));
    }
    told.removeAll(QString());
    if (!told.isEmpty()) return told.join(QStringLiteral("; "));
    const auto marks = static_cast<long long>(field->survey.mounds.size());
    QString all = counted(marks, tr("%1 mark"), tr("%1 marks"));
    if (plan) all += QStringLiteral(", ") + counted(static_cast<long long>(plan->sets.size()), tr("%1 set"), tr("%1 sets"));
    return tr("nothing is picked; %1").arg(all);
}

void MapSpeech::tell() {
    const QString now = told();
    if (now == last_told_) return;
    last_told_ = now;
    QAccessibleValueChangeEvent change(&map_, now);
    QAccessible::updateAccessibility(&change);
    Q_EMIT value_changed(now);
}

}  // namespace plugside
