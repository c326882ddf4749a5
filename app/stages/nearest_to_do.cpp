#include "app/stages/nearest_to_do.h"

#include <QCoreApplication>

#include "app/canvas/map_layers.h"

namespace plugside {

namespace {

class Nearest {
public:
    explicit Nearest(LocalPoint from) : from_(from) {}
    void offer(LocalPoint at, const QString& name, bool waits) {
        const double distance = distance_m(at, from_);
        if (best_ && distance >= distance_) return;
        best_ = NearestPlace{name, at, waits};
        distance_ = distance;
    }
    [[nodiscard]] const std::optional<NearestPlace>& best() const { return best_; }

private:
    LocalPoint from_;
    std::optional<NearestPlace> best_;
    double distance_ = 0.0;
};

QString name_of(const Mound& mound) { return QString::fromStdString(mound.name); }

}  // namespace

std::optional<NearestPlace> nearest_to_do(const FieldSession& session, Step step, LocalPoint from) {
    const auto field = session.field();
    const auto plan = session.plan();
    if (!field) return std::nullopt;
    const auto& mounds = field->survey.mounds;
    Nearest nearest(from);
    if (step == Step::sets && plan) {
        for (std::size_t i = 0; i < plan->sets.size(); ++i)
            if (choice_of(field->survey, *plan, plan->sets[i]) == SetChoice::proposed)
                nearest.offer(ladder_middle(field->survey, plan->probes.at(plan->sets[i].probe)),
                              QCoreApplication::translate("NearestToDo", "set %1").arg(i + 1), true);
        return nearest.best();
    }
    if (step == Step::systems && plan)
        for (std::size_t i = 0; i < mounds.size() && i < plan->mounds.size(); ++i)
            if (plan->mounds[i].system && plan->mounds[i].belongs.value() < 0.5)
                nearest.offer(mounds[i].plug, name_of(mounds[i]), true);
    if (step == Step::walk && session.findings())
        for (const Finding& finding : *session.findings())
            if (!session.answered(finding.id) && !finding.marks.empty())
                nearest.offer(finding.at, QString::fromStdString(finding.marks.front()), true);
    if (!nearest.best())
        for (const Mound& mound : mounds)
            if (is_gopher_sign(mound.kind)) nearest.offer(mound.plug, name_of(mound), false);
    return nearest.best();
}

}  // namespace plugside
