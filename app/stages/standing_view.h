// Under the slip while a receiver is followed: where one stands and how sure that is, how old the place, the nearest thing to decide with
// its distance and direction, what of the file was not understood; and whether the map keeps the place in the middle.
//
// No direction is told from a place that is past, or further from the field than it may lie (`furthest_m`).
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <optional>

#include "app/canvas/standing_mark.h"
#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/session/position_follower.h"

namespace plugside {

class StandingView : public QWidget {
    Q_OBJECT

public:
    static constexpr double furthest_m = 20000.0;

    StandingView(FieldSession& session, Choices& choices, PositionFollower& positions, QWidget* parent = nullptr);
    [[nodiscard]] QString words() const { return words_->text(); }
    [[nodiscard]] QString way() const { return way_->isHidden() ? QString() : way_->text(); }
    [[nodiscard]] const std::optional<Standing>& standing() const { return standing_; }
    [[nodiscard]] QPushButton& in_the_middle() { return *in_the_middle_; }

Q_SIGNALS:
    void stands();  // or stands no longer
    void stop_wanted();

private:
    void refresh();
    [[nodiscard]] std::optional<Standing> standing_now() const;
    [[nodiscard]] QString place_words() const;
    [[nodiscard]] QString way_words() const;

    FieldSession& session_;
    Choices& choices_;
    PositionFollower& positions_;
    QLabel* heading_;
    QLabel* words_;
    QLabel* way_;
    QLabel* remarks_;
    QPushButton* in_the_middle_;
    std::optional<Standing> standing_;
};

// "3 s", "4 min", "2 h", "5 days": how old a place is.
[[nodiscard]] QString age_words(std::chrono::milliseconds age);

}  // namespace plugside
