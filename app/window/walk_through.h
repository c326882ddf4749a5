// The job in five steps on the sample field, one at a time: what to do, and on to the next when it was done or when the person says so.
// After the fifth a last word.
//
// Done: looked at: a mark picked; drawn: the ground changed; corrected: something known of the animals; decided: a set; handed out: the
//       dialog closed, whether it wrote or not (handed_out).
// It holds nothing but the step: what is done on the sample is done in the session, as ever.
#pragma once

#include <QObject>
#include <array>
#include <memory>
#include <optional>

#include "app/session/choices.h"
#include "app/session/field_session.h"

namespace plugside {

enum class Lesson { look, draw, correct, decide, hand_out, over };
inline constexpr std::array<Lesson, 6> lessons{Lesson::look,   Lesson::draw,     Lesson::correct,
                                               Lesson::decide, Lesson::hand_out, Lesson::over};

class WalkThrough : public QObject {
    Q_OBJECT

public:
    WalkThrough(FieldSession& session, Choices& choices, QObject* parent = nullptr);

    // The lesson at hand; nothing while there is no walk-through.
    [[nodiscard]] std::optional<Lesson> at() const { return at_; }
    void begin();
    void end();
    // To the lesson after or before; at the first and the last it stays.
    void next();
    void back();
    void handed_out();
    // The step of the day that a lesson is about; nothing for the last two.
    [[nodiscard]] static std::optional<Step> step_of(Lesson lesson);

Q_SIGNALS:
    void changed();

private:
    void go_to(std::optional<Lesson> lesson);
    void see_what_was_done();

    FieldSession& session_;
    std::optional<Lesson> at_;
    std::shared_ptr<const FieldSurvey> before_;  // the survey as the lesson found it
};

}  // namespace plugside
