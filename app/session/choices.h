// What is looked at, and how: the step at hand, what is picked on the map, units and theme. None of it is part of the
// survey.
#pragma once

#include <QObject>
#include <optional>

#include "app/canvas/palette.h"
#include "core/survey/decision.h"
#include "core/units/display.h"

namespace plugside {

enum class Step { walk, ground, systems, sets };

class Choices : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    [[nodiscard]] Step step() const { return step_; }
    [[nodiscard]] std::optional<std::size_t> mound() const { return mound_; }
    [[nodiscard]] std::optional<std::size_t> system() const { return system_; }
    [[nodiscard]] const std::optional<ProbeKey>& set() const { return set_; }
    [[nodiscard]] LengthUnits units() const { return units_; }
    [[nodiscard]] Theme theme() const { return theme_; }

    void go_to(Step step);
    void pick_mound(std::optional<std::size_t> mound);
    void pick_system(std::optional<std::size_t> system);
    void pick_set(const std::optional<ProbeKey>& set);
    void forget_picks();
    void use(LengthUnits units);
    void use(Theme theme);

Q_SIGNALS:
    void step_changed();
    void picks_changed();
    void units_changed();
    void theme_changed();

private:
    Step step_ = Step::walk;
    std::optional<std::size_t> mound_;
    std::optional<std::size_t> system_;
    std::optional<ProbeKey> set_;
    LengthUnits units_ = LengthUnits::feet_and_inches;
    Theme theme_ = Theme::light;
};

}  // namespace plugside
