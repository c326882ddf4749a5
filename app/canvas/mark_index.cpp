#include "app/canvas/mark_index.h"

#include <algorithm>

namespace plugside {

namespace {

constexpr std::size_t made_at_once = 5000;

bool drawn_alike(const std::vector<Mound>& a, const std::vector<Mound>& b) {
    return std::equal(a.begin(), a.end(), b.begin(), b.end(), [](const Mound& one, const Mound& other) {
        return one.plug == other.plug && one.kind == other.kind && one.freshness == other.freshness;
    });
}

}  // namespace

MarkIndex::MarkIndex(QObject* parent) : QObject(parent) {}

void MarkIndex::follow(const std::shared_ptr<const FieldSurvey>& field, bool other_diggers) {
    const bool same = field && field_ && other_diggers == other_diggers_ &&
                      (field == field_ || drawn_alike(field->survey.mounds, field_->survey.mounds));
    field_ = field;
    other_diggers_ = other_diggers;
    if (same) return;
    work_.stop();
    if (!field || field->survey.mounds.size() <= made_at_once) {
        marks_ = field ? std::make_shared<MarkPyramid>(field->survey.mounds, other_diggers) : nullptr;
        Q_EMIT ready();
        return;
    }
    if (marks_ && !marks_->of(field->survey.mounds)) marks_ = nullptr;
    work_.start([this, field, other_diggers](const Progress&) -> BackgroundWork::Apply {
        auto made = std::make_shared<const MarkPyramid>(field->survey.mounds, other_diggers);
        return [this, made] {
            marks_ = made;
            Q_EMIT ready();
        };
    });
}

}  // namespace plugside
