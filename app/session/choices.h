// What is looked at, and how: the step at hand, what is picked on the map, units, theme and size of text. None of it is part of
// the survey.
#pragma once

#include <QObject>
#include <array>
#include <optional>

#include "app/canvas/palette.h"
#include "core/survey/decision.h"
#include "core/units/display.h"

namespace plugside {

inline constexpr std::array<int, 5> text_steps{100, 125, 150, 175, 200};

enum class Step { walk, ground, systems, method, sets };

class Choices : public QObject {
    Q_OBJECT

public:
    using QObject::QObject;

    [[nodiscard]] Step step() const { return step_; }
    [[nodiscard]] std::optional<std::size_t> mound() const { return mound_; }
    [[nodiscard]] std::optional<std::size_t> system() const { return system_; }
    [[nodiscard]] const std::optional<ProbeKey>& set() const { return set_; }
    [[nodiscard]] LengthUnits units() const { return units_; }
    [[nodiscard]] Theme theme() const { return style_.theme; }
    [[nodiscard]] int text_percent() const { return text_percent_; }
    // Of the theme, with the size of text; the reference stays good, what it refers to changes with `theme_changed`.
    [[nodiscard]] const MapStyle& style() const { return style_; }

    void go_to(Step step);
    void pick_mound(std::optional<std::size_t> mound);
    void pick_system(std::optional<std::size_t> system);
    void pick_set(const std::optional<ProbeKey>& set);
    void forget_picks();
    void use(LengthUnits units);
    void use(Theme theme);
    // 100 to 200; the nearest step of `text_steps` is taken.
    void use_text(int percent);
    // The next larger (1) or smaller (-1) step; none beyond the ends.
    void step_text(int by);

Q_SIGNALS:
    void step_changed();
    void picks_changed();
    void units_changed();
    void theme_changed();  // or the size of text

private:
    Step step_ = Step::walk;
    std::optional<std::size_t> mound_;
    std::optional<std::size_t> system_;
    std::optional<ProbeKey> set_;
    LengthUnits units_ = LengthUnits::feet_and_inches;
    MapStyle style_ = style_of(Theme::light);
    int text_percent_ = 100;
};

}  // namespace plugside
