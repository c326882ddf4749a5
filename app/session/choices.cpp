#include "app/session/choices.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace plugside {

void Choices::go_to(Step step) {
    if (std::exchange(step_, step) == step) return;
    // what was picked for one decision is in the way at the next
    if (std::exchange(mound_, std::nullopt)) Q_EMIT picks_changed();
    Q_EMIT step_changed();
}

void Choices::pick_mound(std::optional<std::size_t> mound) {
    if (std::exchange(mound_, mound) != mound) Q_EMIT picks_changed();
}

void Choices::pick_system(std::optional<std::size_t> system) {
    if (std::exchange(system_, system) != system) Q_EMIT picks_changed();
}

void Choices::pick_set(const std::optional<ProbeKey>& set) {
    if (std::exchange(set_, set) == set) return;
    mound_.reset();
    Q_EMIT picks_changed();
}

void Choices::forget_picks() {
    mound_.reset();
    system_.reset();
    set_.reset();
    Q_EMIT picks_changed();
}

void Choices::use(LengthUnits units) {
    if (std::exchange(units_, units) != units) Q_EMIT units_changed();
}

void Choices::use(Theme theme) {
    if (style_.theme == theme) return;
    style_ = style_of(theme);
    style_.text_share = text_percent_ / 100.0;
    Q_EMIT theme_changed();
}

void Choices::use_text(int percent) {
    const auto nearest = std::min_element(text_steps.begin(), text_steps.end(),
                                          [percent](int a, int b) { return std::abs(a - percent) < std::abs(b - percent); });
    if (std::exchange(text_percent_, *nearest) == *nearest) return;
    style_.text_share = text_percent_ / 100.0;
    Q_EMIT theme_changed();
}

void Choices::step_text(int by) {
    const auto here = std::find(text_steps.begin(), text_steps.end(), text_percent_) - text_steps.begin();
    const auto last = static_cast<std::ptrdiff_t>(text_steps.size()) - 1;
    use_text(text_steps.at(static_cast<std::size_t>(std::clamp<std::ptrdiff_t>(here + by, 0, last))));
}

}  // namespace plugside
