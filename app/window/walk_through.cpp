#include "app/window/walk_through.h"

#include <algorithm>

namespace plugside {

namespace {

bool was_done(Lesson lesson, const Survey& before, const Survey& now) {
    switch (lesson) {
        case Lesson::draw: return before.ground != now.ground;
        case Lesson::correct: return before.known != now.known;
        case Lesson::decide: return before.decisions != now.decisions;
        case Lesson::look:
        case Lesson::hand_out:
        case Lesson::over: break;
    }
    return false;
}

}  // namespace

WalkThrough::WalkThrough(FieldSession& session, Choices& choices, QObject* parent) : QObject(parent), session_(session) {
    // a field that is read anew is another beginning of the same lesson
    connect(&session_, &FieldSession::field_replaced, this, [this] { before_ = session_.field(); });
    connect(&session_, &FieldSession::survey_edited, this, &WalkThrough::see_what_was_done);
    connect(&choices, &Choices::step_changed, this, &WalkThrough::changed);
    connect(&choices, &Choices::picks_changed, this, [this, &choices] {
        if (at_ == Lesson::look && choices.step() == Step::walk && choices.mound()) next();
    });
}

std::optional<Step> WalkThrough::step_of(Lesson lesson) {
    switch (lesson) {
        case Lesson::look: return Step::walk;
        case Lesson::draw: return Step::ground;
        case Lesson::correct: return Step::systems;
        case Lesson::decide: return Step::sets;
        case Lesson::hand_out:
        case Lesson::over: break;
    }
    return std::nullopt;
}

void WalkThrough::begin() { go_to(lessons.front()); }

void WalkThrough::end() { go_to(std::nullopt); }

void WalkThrough::next() {
    if (at_ && *at_ != lessons.back()) go_to(*(std::find(lessons.begin(), lessons.end(), *at_) + 1));
}

void WalkThrough::back() {
    if (at_ && *at_ != lessons.front()) go_to(*(std::find(lessons.begin(), lessons.end(), *at_) - 1));
}

void WalkThrough::handed_out() {
    if (at_ == Lesson::hand_out) next();
}

void WalkThrough::go_to(std::optional<Lesson> lesson) {
    if (at_ == lesson) return;
    at_ = lesson;
    before_ = session_.field();
    Q_EMIT changed();
}

void WalkThrough::see_what_was_done() {
    if (at_ && before_ && session_.field() && was_done(*at_, before_->survey, session_.field()->survey)) next();
}

}  // namespace plugside
