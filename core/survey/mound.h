// One mark of a scouting walk: a mound, or another sign that the walker noted.
//
// plug:        where the mark was taken, at the plug, on the field's plane.
// fan:         which way the soil was thrown, from the plug towards the middle of the fan, true north; absent when
//              no fan could be read (crushed, mown, surface plug).
// position_sd: standard deviation of the mark's own position in each direction (east, north), relative to marks taken
//              next to it in the same walk; > 0.
// set_aside_because: why the mark takes no part although it may be a gopher's, for a person to read; absent when it does.
// recorded:    how the walk says it, where a mend (mend.h) has changed anything of it.
// shared_sd:   the same of the part of the error that marks made soon after one another by the same walker share, and that
//              drifts within minutes; > 0; absent when nothing is known of it.
// picture:     a photograph taken of it: the file's name without its folder.
// receiver:    what the receiver said of its own fix, where it said anything; `fix` in the words of GPX ("none", "2d", "3d",
//              "dgps", "pps"), else empty; accuracy_m is the receiver's own claim.
// mentions:    who may be hurt, as the note tells (mention.h).
// name:        the mark's name, unique within a survey (geo/read makes it so).
// Source:      what can be seen of a mound: UC IPM Pest Notes 7433 and common practice of the trade.
#pragma once

#include <chrono>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

#include "core/geometry/point.h"
#include "core/survey/mention.h"
#include "core/units/bearing.h"
#include "core/units/metres.h"

namespace plugside {

using UtcTime = std::chrono::sys_time<std::chrono::milliseconds>;

// What left the sign. Only the first two are a pocket gopher's and take part in the inference.
enum class SignKind { gopher_mound, surface_plug, mole, ground_squirrel, vole, other };

// How the soil looks. `crushed` (mown, driven or trodden on) says nothing of age, but its fan is gone.
enum class Freshness { unknown, fresh, older, crushed };

struct RecordedMark {
    LocalPoint plug;
    std::optional<Bearing> fan;
    SignKind kind = SignKind::gopher_mound;
    Freshness freshness = Freshness::unknown;
    Metres position_sd = Metres::of(0.5);
    std::optional<std::string> set_aside_because;
    friend bool operator==(const RecordedMark&, const RecordedMark&) = default;
};

struct ReceiverFacts {
    std::optional<double> hdop;
    std::optional<int> satellites;
    std::string fix;
    std::optional<double> accuracy_m;
    friend bool operator==(const ReceiverFacts&, const ReceiverFacts&) = default;
};

struct Mound {
    std::string name;
    LocalPoint plug;
    std::optional<Bearing> fan;
    SignKind kind = SignKind::gopher_mound;
    Freshness freshness = Freshness::unknown;
    Metres position_sd = Metres::of(0.5);
    std::optional<Metres> shared_sd;
    std::string note;
    std::optional<UtcTime> time;
    std::size_t walk = 0;  // index into Survey::walks
    std::optional<std::string> set_aside_because;
    std::optional<RecordedMark> recorded;
    std::optional<std::string> picture;
    std::optional<ReceiverFacts> receiver;
    std::vector<NoteMention> mentions;

    friend bool operator==(const Mound&, const Mound&) = default;
};

[[nodiscard]] constexpr bool is_gopher_sign(SignKind kind) {
    return kind == SignKind::gopher_mound || kind == SignKind::surface_plug;
}

// The words used in files: "gopher mound", "surface plug", "mole", "ground squirrel", "vole", "other";
// "unknown", "fresh", "older", "crushed".
[[nodiscard]] std::string to_text(SignKind kind);
[[nodiscard]] std::string to_text(Freshness freshness);
[[nodiscard]] std::optional<SignKind> sign_kind_from_text(const std::string& text);
[[nodiscard]] std::optional<Freshness> freshness_from_text(const std::string& text);

}  // namespace plugside
