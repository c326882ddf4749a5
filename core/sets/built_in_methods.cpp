// The six built-in methods. Each step keeps the tag and source of its fact; figures of time and material are our assumption.
#include <array>

#include "core/sets/method.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr const char* practice = "practice";
constexpr const char* read = "read";
constexpr const char* ours = "ours";
std::string notes_7433() { return Words::tell("UC IPM Pest Notes 7433"); }

std::string common_practice() { return Words::tell("common practice"); }

MethodStep by_practice(std::string text) { return {std::move(text), common_practice(), practice}; }
MethodStep from_label(std::string text) { return {std::move(text), Words::tell("labels of bait for pocket gophers"), read}; }
MethodStep from_gas_label(std::string text) {
    return {std::move(text), Words::tell("federal label text of aluminium phosphide burrow fumigants, 2018"), read};
}

MethodStep find_the_run() {
    return {Words::tell(
                "Push the probe at the rungs of the ladder in their order: a sudden drop of about 2 in (5 cm) is the run."),
            notes_7433(), read};
}

std::string wire_never_cord() {
    return Words::tell("Tie every trap to a stake with wire or cable, never cord: cord is chewed through.");
}
std::string flag_every_stake() { return Words::tell("Flag every stake, and write down where it stands."); }
std::string check_daily() {
    return Words::tell(
        "Check at least daily; the law on how often differs by state. No catch in 48 hours to 3 days: move the set.");
}
std::string lift_and_count() {
    return Words::tell("Lift every trap, stake and flag, count them against what went out, and close every hole.");
}
std::string flag_the_place() { return Words::tell("Flag the place until the mounds have been read again."); }
std::string look_for_carcasses() {
    return Words::tell("Look daily for carcasses and spilled bait, with gloves on; bury both.");
}
std::string level_and_read_again() {
    return Words::tell(
        "Level the mounds; fresh soil tells which system is still in use. Bury spills, and take back what is left.");
}

std::vector<MethodStep> trap_endings() {
    return {by_practice(wire_never_cord()),
            by_practice(flag_every_stake()),
            {Words::tell("Cover the opened hole, or leave it open, as this page says for this place."),
             Words::tell("Baldwin et al. 2013"), read},
            {check_daily(), Words::tell("extension accounts; common practice"), read},
            by_practice(lift_and_count())};
}

void append(std::vector<MethodStep>& steps, std::vector<MethodStep> more) {
    for (MethodStep& step : more) steps.push_back(std::move(step));
}

Method trap_base() {
    Method method;
    method.stuff = Stuff::trap;
    method.staking = wire_never_cord();
    method.flagging = flag_every_stake();
    method.closing = Words::tell("Close the hole with sod or a board where it is to be dark; let no soil fall on the trap.");
    method.checking = check_daily();
    method.ending = lift_and_count();
    method.check_every_hours = 24.0;
    return method;
}

Method trap_in_lateral() {
    Method method = trap_base();
    method.id = "trap-in-lateral";
    method.name = Words::tell("trap in a lateral");
    method.placement = Placement::in_lateral;
    method.serves = ProbeKind::plug_side;
    method.tools = {Words::tell("probe"), Words::tell("trowel"), Words::tell("tape"), Words::tell("hammer")};
    method.steps = {
        find_the_run(),
        by_practice(Words::tell("Clear the plug and open the lateral with the trowel until its walls are whole.")),
        by_practice(Words::tell("Slide in one trap, its working end leading, until it is just short of the run."))};
    append(method.steps, trap_endings());
    method.needs = {
        {LoadItem::trap, 1}, {LoadItem::stake, 1}, {LoadItem::wire_m, 1}, {LoadItem::flag, 1}, {LoadItem::cover, 1}};
    method.minutes = {8.0, 3.0};
    return method;
}

Method paired_traps() {
    Method method = trap_base();
    method.id = "paired-traps";
    method.name = Words::tell("paired traps in the run");
    method.placement = Placement::in_run;
    method.tools = {Words::tell("probe"), Words::tell("shovel"), Words::tell("trowel"), Words::tell("tape"),
                    Words::tell("hammer")};
    method.steps = {
        find_the_run(),
        by_practice(Words::tell("Dig down to the run and clear both of its mouths of loose soil.")),
        {Words::tell("Set two traps in the run, one facing each way, each a little way into its mouth."), notes_7433(), read}};
    append(method.steps, trap_endings());
    method.needs = {
        {LoadItem::trap, 2}, {LoadItem::stake, 2}, {LoadItem::wire_m, 2}, {LoadItem::flag, 2}, {LoadItem::cover, 1}};
    method.minutes = {12.0, 4.0};
    return method;
}

MethodStep bait_amount() {
    return from_label(Words::tell("Measure the amount that the label in hand names for one placement, and no more."));
}
MethodStep into_the_open_run() {
    return from_label(
        Words::tell("Put the bait into the open run below, never on the surface, and let no soil fall on it."));
}
MethodStep bury_spills() { return from_label(Words::tell("Gather and bury whatever was spilled before you go on.")); }

Method bait_base() {
    Method method;
    method.stuff = Stuff::bait;
    method.placement = Placement::in_run;
    method.cover = CoverRule::always_closed;
    method.staking = Words::tell("Nothing is staked.");
    method.flagging = flag_the_place();
    method.checking = look_for_carcasses();
    method.ending = level_and_read_again();
    method.check_every_hours = 24.0;
    return method;
}

std::vector<MethodStep> bait_endings(const Method& method) {
    return {by_practice(method.closing), bury_spills(), by_practice(flag_the_place()), from_label(look_for_carcasses()),
            by_practice(level_and_read_again())};
}

Method bait_opened_lateral() {
    Method method = bait_base();
    method.id = "bait-opened-lateral";
    method.name = Words::tell("bait by spoon in the opened lateral");
    method.serves = ProbeKind::plug_side;
    method.tools = {Words::tell("probe"), Words::tell("trowel"), Words::tell("spoon with a long handle"),
                    Words::tell("tape")};
    method.closing = Words::tell("Close the hole above the bait with sod or a clod, so that no light and no soil comes in.");
    method.steps = {find_the_run(), by_practice(Words::tell("Clear the plug and open the lateral as far as the run.")),
                    bait_amount(), into_the_open_run()};
    append(method.steps, bait_endings(method));
    method.needs = {{LoadItem::flag, 1}};
    method.minutes = {6.0, 2.0};
    return method;
}

std::string close_the_probe_hole() {
    return Words::tell("Close the probe hole with sod, a stone or your heel, so that no light and no soil comes in.");
}

Method bait_probe_hole() {
    Method method = bait_base();
    method.id = "bait-probe-hole";
    method.name = Words::tell("bait by spoon through a probe hole");
    method.tools = {Words::tell("probe with a narrow and a wide end"), Words::tell("spoon with a long handle"),
                    Words::tell("funnel"), Words::tell("tape")};
    method.closing = close_the_probe_hole();
    method.steps = {
        find_the_run(),
        by_practice(Words::tell(
            "The narrow end has found the run: open the hole with the wide end, and feel that the run is open.")),
        bait_amount(), into_the_open_run()};
    append(method.steps, bait_endings(method));
    method.needs = {{LoadItem::flag, 1}};
    method.minutes = {3.0, 1.0};
    return method;
}

Method bait_dispensing_probe() {
    Method method = bait_base();
    method.id = "bait-dispensing-probe";
    method.name = Words::tell("bait by a dispensing probe");
    method.tools = {Words::tell("dispensing probe"), Words::tell("scale"), Words::tell("tape")};
    method.closing = close_the_probe_hole();
    method.steps = {
        {Words::tell("Before the day begins release ten times over a tray, weigh it, and enter the weight here: one release "
                     "is a tenth."),
         common_practice(), practice},
        find_the_run(),
        by_practice(Words::tell(
            "With the tip in the run release as often as this page works out from your weighing and the label.")),
        into_the_open_run()};
    append(method.steps, bait_endings(method));
    method.needs = {{LoadItem::flag, 1}};
    method.minutes = {1.5, 0.5};
    return method;
}

Method fumigant() {
    Method method;
    method.id = "fumigant";
    method.name = Words::tell("fumigant by tablets or cartridge");
    method.stuff = Stuff::fumigant;
    method.placement = Placement::in_run;
    method.cover = CoverRule::always_closed;
    method.tools = {Words::tell("probe with a narrow and a wide end"), Words::tell("what the label names to be worn"),
                    Words::tell("shovel"), Words::tell("tape")};
    method.staking = Words::tell("Nothing is staked.");
    method.flagging = flag_the_place();
    method.closing =
        Words::tell("Close every opening of the system at once, paper or sod first, then soil, so that no gas comes out.");
    method.checking = Words::tell("Come back as the label says, look for opened holes, and keep everyone away until then.");
    method.ending = Words::tell(
        "Write down what was used and where, as the management plan asks; take every sign back when its time is over.");
    method.steps = {from_gas_label(Words::tell(
                        "Have the licensed applicator at hand and the written management plan done before the job.")),
                    from_gas_label(Words::tell("Walk the whole system again: no part of it within 100 ft (30 m) of a "
                                               "building where people or domestic animals may be.")),
                    find_the_run(),
                    by_practice(Words::tell(
                        "Open the hole with the wide end, put in what the label names for one burrow, and nothing else.")),
                    by_practice(method.closing),
                    by_practice(flag_the_place()),
                    {method.checking, Words::tell("our assumption"), ours},
                    {method.ending, Words::tell("our assumption"), ours}};
    method.needs = {{LoadItem::flag, 1}};
    method.minutes = {4.0, 1.5};
    return method;
}

constexpr std::array<Method (*)(), 6> makers{trap_in_lateral, paired_traps,          bait_opened_lateral,
                                             bait_probe_hole, bait_dispensing_probe, fumigant};

}  // namespace

std::vector<Method> built_in_methods() {
    std::vector<Method> all;
    for (const auto make : makers) all.push_back(make());
    return all;
}

const std::vector<std::string>& built_in_method_ids() {
    static const std::vector<std::string> ids = [] {
        std::vector<std::string> in_order;
        for (const auto make : makers) in_order.push_back(make().id);
        return in_order;
    }();
    return ids;
}

std::optional<Method> built_in_method(const std::string& id) {
    const auto& ids = built_in_method_ids();
    for (std::size_t i = 0; i < ids.size(); ++i)
        if (ids[i] == id) return makers.at(i)();
    return std::nullopt;
}

}  // namespace plugside
