// How a person has decided to work: conditions, methods, label, licence, what was signed, budget. The plan of systems, ladders and sets does
// not depend on it. A survey holds one (Survey::work, core/survey/held_work.h), so that it is undone and copied with all else that a person said.
//
// method:      id of the method for the whole field; empty: none chosen yet.
// set_methods: where a set is worked otherwise; at most one a probe key.
// own_methods: a person's variants; ids are unique.
// dose:        amount a placement that the person means to put; never computed, and nothing follows from it without a label.
// walking:     how the sets are walked to (core/sets/tours.h makes tours of it); `kept` is the order that a person chose to hold to.
// signed_off:  hold-backs that were overridden. One holds for the caution, the method and the place (nothing: the whole field) it was signed
//              for, until it is taken back. A stop cannot be signed (`sign` refuses).
// licence.number, names and reasons are private: they are left out of what is handed out unless asked for.
// A WorkOrder is a value; equality compares all members.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/sets/conditions.h"
#include "core/sets/label_limits.h"
#include "core/sets/method.h"
#include "core/survey/decision.h"

namespace plugside {

enum class LicenceKind { none, private_applicator, commercial_applicator, other };

struct Licence {
    LicenceKind kind = LicenceKind::none;
    std::string holder;
    std::string number;
    std::optional<CalendarDay> valid_until;
    friend bool operator==(const Licence&, const Licence&) = default;
};

struct SetMethod {
    ProbeKey probe;
    std::string method;
    friend bool operator==(const SetMethod&, const SetMethod&) = default;
};

struct SignedOverride {
    std::string caution;
    std::string method;
    std::optional<ProbeKey> probe;
    std::string name;
    std::string reason;
    UtcTime at{};
    friend bool operator==(const SignedOverride&, const SignedOverride&) = default;
};

struct Budget {
    std::optional<int> traps;
    std::optional<double> minutes;
    friend bool operator==(const Budget&, const Budget&) = default;
};

// In degrees of WGS 84, so that it means the same place on every field's plane.
struct PlaceInDegrees {
    double latitude = 0.0;
    double longitude = 0.0;
    friend bool operator==(const PlaceInDegrees&, const PlaceInDegrees&) = default;
};

// One person's way of one day, both counted from 0, as it was kept.
struct KeptTour {
    int person = 0;
    int day = 0;
    std::vector<ProbeKey> sets;
    friend bool operator==(const KeptTour&, const KeptTour&) = default;
};

struct WalkingWishes {
    std::optional<PlaceInDegrees> start;  // gate or vehicle; nothing: where the walk began
    bool back = false;                    // the way ends at its start
    std::optional<PlaceInDegrees> end;    // else here; without either at its last set
    int people = 1;                       // 1..most_people
    std::optional<double> minutes_a_day;  // > 0; nothing: all in one day
    std::optional<int> carry;             // > 0, traps or placements that one carries; nothing: all at once
    std::vector<KeptTour> kept;           // empty: worked out anew
    static constexpr int most_people = 50;
    // Whether all but what is kept is alike: what is kept was worked out from that.
    [[nodiscard]] bool alike(const WalkingWishes& other) const;
    friend bool operator==(const WalkingWishes&, const WalkingWishes&) = default;
};

struct WorkOrder {
    Conditions conditions;
    std::string method;
    std::vector<SetMethod> set_methods;
    std::vector<Method> own_methods;
    LabelLimits label;
    Told<Licence> licence;
    std::optional<Quantity> dose;
    ReleaseCalibration calibration;
    std::vector<SignedOverride> signed_off;
    Budget budget;
    WalkingWishes walking;
    friend bool operator==(const WorkOrder&, const WorkOrder&) = default;
};

// Built in or the person's own; nothing for an id that is neither.
[[nodiscard]] std::optional<Method> find_method(const WorkOrder& work, const std::string& id);
// The id chosen for this set: its own, else the field's; empty where none was chosen.
[[nodiscard]] std::string method_at(const WorkOrder& work, const ProbeKey& probe);
// Puts `method` for one set in place of an earlier one; empty, or the field's own, takes it back.
void choose_method(WorkOrder& work, const ProbeKey& probe, const std::string& method);

// Puts the override in place of an earlier one of the same caution, method and place. A sentence where it is refused: a stop, an unknown caution,
// no name, no reason.
[[nodiscard]] std::optional<std::string> sign(WorkOrder& work, SignedOverride entry);
void take_signature_back(WorkOrder& work, const SignedOverride& entry);
// The override that covers a caution at a set: one for the set, else one for the field.
[[nodiscard]] const SignedOverride* signature_on(const WorkOrder& work, const std::string& caution,
                                                 const std::string& method, const ProbeKey& probe);

// "none", "private-applicator", "commercial-applicator", "other".
[[nodiscard]] std::string to_text(LicenceKind kind);
[[nodiscard]] std::optional<LicenceKind> licence_kind_from_text(const std::string& text);

}  // namespace plugside
