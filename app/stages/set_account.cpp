#include "app/stages/set_account.h"

#include <algorithm>

namespace plugside {

namespace {

// Questions to draws that are answered within some milliseconds.
constexpr std::size_t quick_questions = 600'000;

bool differ_in_decisions_alone(const Survey& a, const Survey& b) {
    return a.mounds == b.mounds && a.ground == b.ground && a.known == b.known && a.walks == b.walks;
}

}  // namespace

SetAccount::SetAccount(FieldSession& session, QObject* parent) : QObject(parent), session_(session) {
    connect(&session_, &FieldSession::survey_edited, this, &SetAccount::follow);
    connect(&session_, &FieldSession::field_replaced, this, [this] {
        filter_ = {};
        reached_.reset();
        follow();
        Q_EMIT filter_changed();
    });
    connect(&session_, &FieldSession::plan_changed, this, &SetAccount::follow);
    follow();
}

void SetAccount::follow() {
    if (plan_ == session_.plan() && field_ == session_.field()) return;
    plan_ = session_.plan();
    field_ = session_.field();
    follow_chances();
    if (!plan_ || !field_) {
        choices_.clear();
        order_.clear();
        reached_.reset();
        work_.stop();
        return;
    }
    choices_ = choices_of(field_->survey, *plan_);
    const std::size_t draws = plan_->drawn ? plan_->drawn->tree.size() : 1;
    const bool quick = plan_->sets.size() * draws <= quick_questions;
    if (quick) order_ = undecided_by_worth(*plan_, choices_, reach_of_chosen(*plan_, choices_));
    std::erase_if(order_, [this](const SetWorth& worth) {
        return worth.set >= choices_.size() || choices_[worth.set] != SetChoice::proposed;
    });
    count_again(!quick);
}

void SetAccount::follow_chances() {
    if (session_.plan_is_current()) planned_ = field_;
    if (!plan_ || plan_->first_look) planned_.reset();
    chances_hold_ =
        planned_ && field_ && (planned_ == field_ || differ_in_decisions_alone(planned_->survey, field_->survey));
}

void SetAccount::count_again(bool order_too) {
    work_.start([this, plan = plan_, choices = choices_, order_too](const Progress& progress) -> BackgroundWork::Apply {
        ReachOfSets reach = reach_of_chosen(*plan, choices);
        std::vector<SetWorth> order;
        if (order_too) order = undecided_by_worth(*plan, choices, reach);
        if (progress.stopped()) return {};
        Reached reached{reach.interval(), 0.0, plan->estimate.expected, plan->estimate.interval};
        take_undecided(*plan, choices, reach);
        reached.with_undecided = reach.reached();
        return [this, order_too, reached, order = std::move(order)]() {
            reached_ = reached;
            if (order_too) order_ = order;
            Q_EMIT counted();
        };
    });
}

void SetAccount::use(const SetFilter& filter) {
    if (filter == filter_) return;
    filter_ = filter;
    Q_EMIT filter_changed();
}

std::vector<std::size_t> SetAccount::through(const SetFilter& filter) const {
    return plan_ ? sets_through(filter, *plan_, choices_) : std::vector<std::size_t>{};
}

bool SetAccount::shows(std::size_t set) const {
    return plan_ && set < choices_.size() && lets_through(filter_, *plan_, set, choices_[set]);
}

std::optional<std::size_t> SetAccount::next_undecided(std::optional<std::size_t> besides) const {
    for (const SetWorth& worth : order_)
        if (worth.set != besides && shows(worth.set)) return worth.set;
    // large fields have no order before it was worked out
    for (std::size_t s = 0; order_.empty() && s < choices_.size(); ++s)
        if (s != besides && choices_[s] == SetChoice::proposed && shows(s)) return s;
    return std::nullopt;
}

std::optional<SetWorth> SetAccount::worth(std::size_t set) const {
    const auto found = std::find_if(order_.begin(), order_.end(), [set](const SetWorth& worth) { return worth.set == set; });
    if (found == order_.end()) return std::nullopt;
    return *found;
}

}  // namespace plugside
