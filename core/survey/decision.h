// What a person decided about a proposed set. Part of the survey: it survives every new plan, because it names marks
// that the person can see, not numbers that a plan gave out.
//
// ProbeKey:  which probe site is meant: its kind and the names of the mounds it is taped from.
// SetDecision::moved_to: only with SetChoice::moved: the new place of the ladder's middle in the ladder's own axes
//            (along the axis from the plug, and to the right of it).
// ProbeResult: a hole that was pushed and what it met; any number a key. The hole is told in the ladder's own axes, like moved_to, so
//            that it stays true when the next plan lays its rungs elsewhere.
// At most one decision a key; `decide` replaces an earlier one.
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <vector>

#include "core/survey/mound.h"
#include "core/units/metres.h"

namespace plugside {

enum class ProbeKind { plug_side, between_mounds };

// "plug side", "between mounds": the words of the exported layer.
[[nodiscard]] std::string to_text(ProbeKind kind);
[[nodiscard]] std::optional<ProbeKind> probe_kind_from_text(const std::string& text);

struct ProbeKey {
    ProbeKind kind = ProbeKind::plug_side;
    std::string from_mound;
    std::string to_mound;  // empty for plug side
    friend auto operator<=>(const ProbeKey&, const ProbeKey&) = default;
};

enum class SetChoice { proposed, kept, dropped, moved };

// "proposed", "kept", "dropped", "moved".
[[nodiscard]] std::string to_text(SetChoice choice);
[[nodiscard]] std::optional<SetChoice> set_choice_from_text(const std::string& text);

struct LadderPlace {
    Metres along;
    Metres across;
    friend bool operator==(const LadderPlace&, const LadderPlace&) = default;
};

struct ProbeResult {
    ProbeKey probe;
    LadderPlace hole;
    bool found = false;
    std::optional<UtcTime> time;
    friend bool operator==(const ProbeResult&, const ProbeResult&) = default;
};

struct SetDecision {
    ProbeKey probe;
    SetChoice choice = SetChoice::kept;
    std::optional<LadderPlace> moved_to;
    friend bool operator==(const SetDecision&, const SetDecision&) = default;
};

}  // namespace plugside
