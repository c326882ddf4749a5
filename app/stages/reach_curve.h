// Animals reached against what is spent, as a line from the origin with both axes numbered; the animals of the field as a pale line, and the
// budget with what it reaches.
#pragma once

#include <QPainter>
#include <QWidget>
#include <memory>
#include <optional>

#include "app/stages/work_account.h"

namespace plugside {

// "30 traps", "1 minute".
[[nodiscard]] QString amount_words(BudgetUnit unit, double amount);
// 1, 2 or 5 times a power of ten, at least 1: the least that takes at most `most_ticks` steps to `end`.
[[nodiscard]] double tick_step(double end, int most_ticks);

class ReachCurve : public QWidget {
    Q_OBJECT

public:
    ReachCurve(Choices& choices, QWidget* parent = nullptr);
    void show_curve(std::shared_ptr<const WorkJudged> judged, std::optional<double> budget);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    // Where a cost and the animals it reaches lie.
    struct Plot {
        QRectF room;
        double all_cost = 0.0;
        double all = 0.0;
        [[nodiscard]] QPointF at(double cost, double reached) const {
            return {room.left() + room.width() * cost / all_cost, room.bottom() - room.height() * reached / all};
        }
    };
    void draw_axes(QPainter& painter, const Plot& plot) const;
    void draw_budget(QPainter& painter, const Plot& plot) const;

    Choices& choices_;
    std::shared_ptr<const WorkJudged> judged_;
    std::optional<double> budget_;
};

}  // namespace plugside
