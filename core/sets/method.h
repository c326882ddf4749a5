// A way of working at a set: what is done, in which order, with what, how long, and how it ends.
//
// Built in: six, as the trade works, with the tag and source of every step. Texts are in the language at hand at the time of the call.
//           None names a product: a trap is a trap, a bait is what its label says.
// Own:      a person's variant is a Method with texts of their own and an id that begins with "own-"; `stuff`, `placement` and the numbers say
//           which rules and counts hold for it. `own_variant` starts from a built-in one. `what_is_wrong` says what keeps it from being used.
// serves:   the kind of probe point that the method can use; nothing: either.
// minutes:  of one set, without its probe holes and the way there: mean and standard deviation, our assumption; change them to what the
//           work takes you.
// needs:    of one set. What is weighed (bait) or counted by the label (tablets) is not here: it is the label's (label_limits.h).
// Never:    says that a method is to be used; what speaks against it: core/sets/cautions.h and caution_rules.h.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/sets/conditions.h"
#include "core/survey/decision.h"

namespace plugside {

enum class Stuff { trap, bait, fumigant };

// Where what is set ends up. own variants may leave it open: then the rules ask.
enum class Placement { in_lateral, in_run, on_surface };

enum class LoadItem { trap, stake, wire_m, flag, cover, sign, gloves_pair };

struct ItemCount {
    LoadItem item = LoadItem::trap;
    double count = 0.0;  // pieces; metres of wire
    friend bool operator==(const ItemCount&, const ItemCount&) = default;
};

struct MethodStep {
    std::string text;
    std::string source;
    std::string tag;  // "read", "second-hand", "memory", "practice", "ours"; "own" for a person's
    friend bool operator==(const MethodStep&, const MethodStep&) = default;
};

struct SetMinutes {
    double mean = 0.0;
    double sd = 0.0;
    friend bool operator==(const SetMinutes&, const SetMinutes&) = default;
};

// Cover the opened hole, or leave it open. `as_answered`: follows from who can reach the place (`cover_or_open`).
enum class CoverRule { as_answered, always_closed, always_open };

struct Method {
    std::string id;
    std::string name;
    Stuff stuff = Stuff::trap;
    std::optional<Placement> placement;
    std::optional<ProbeKind> serves;
    std::vector<MethodStep> steps;
    std::vector<std::string> tools;
    std::vector<ItemCount> needs;
    int placements = 1;  // of bait or fumigant, a set
    SetMinutes minutes;
    CoverRule cover = CoverRule::as_answered;
    std::string staking;
    std::string flagging;
    std::string closing;
    std::string checking;
    std::string ending;
    std::optional<double> check_every_hours;  // nothing: no check of its own
    friend bool operator==(const Method&, const Method&) = default;
};

// "trap-in-lateral", "paired-traps", "bait-opened-lateral", "bait-probe-hole", "bait-dispensing-probe", "fumigant".
[[nodiscard]] const std::vector<std::string>& built_in_method_ids();
[[nodiscard]] std::vector<Method> built_in_methods();
// Nothing for any other id.
[[nodiscard]] std::optional<Method> built_in_method(const std::string& id);

// A copy for a person to change: id "own-" and `number`, every step tagged "own".
[[nodiscard]] Method own_variant(const Method& of, int number, const std::string& name);
// A sentence for whoever typed it, or nothing: no name, no step, an id that is none, numbers below zero or not finite.
[[nodiscard]] std::optional<std::string> what_is_wrong(const Method& method);

struct HoleCover {
    bool cover = true;
    std::string reason;  // a sentence
};
// From who can reach the place: covered as soon as anyone may, or it is not known; left to the person where nobody does.
[[nodiscard]] HoleCover cover_or_open(const Method& method, const Conditions& conditions, UtcTime now);

// Grams of one release of a dispensing probe, from weighing releases: ten at a time by common practice, once or several times.
struct ReleaseCalibration {
    std::vector<double> weighed_g;  // of `releases_each` releases each, > 0
    int releases_each = 10;
    friend bool operator==(const ReleaseCalibration&, const ReleaseCalibration&) = default;
};
struct ReleaseWeight {
    double grams = 0.0;
    std::optional<double> sd_of_mean_g;  // nothing from one weighing
};
// Nothing without a weighing, or where one is not above zero.
[[nodiscard]] std::optional<ReleaseWeight> release_weight(const ReleaseCalibration& calibration);

// "trap", "bait", "fumigant"; "in-lateral", "in-run", "on-surface"; "trap", "stake", "wire", "flag", "cover", "sign", "gloves";
// "as-answered", "always-closed", "always-open".
[[nodiscard]] std::string to_text(Stuff stuff);
[[nodiscard]] std::string to_text(Placement placement);
[[nodiscard]] std::string to_text(LoadItem item);
[[nodiscard]] std::string to_text(CoverRule rule);
[[nodiscard]] std::optional<Stuff> stuff_from_text(const std::string& text);
[[nodiscard]] std::optional<Placement> placement_from_text(const std::string& text);
[[nodiscard]] std::optional<LoadItem> item_from_text(const std::string& text);
[[nodiscard]] std::optional<CoverRule> cover_rule_from_text(const std::string& text);
// "traps", "wire or cable", ... in the language at hand.
[[nodiscard]] std::string item_shown(LoadItem item);

}  // namespace plugside
