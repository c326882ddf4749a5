#include "app/session/choices.h"

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
    if (std::exchange(theme_, theme) != theme) Q_EMIT theme_changed();
}

}  // namespace plugside
