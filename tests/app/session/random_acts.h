// Every act that the program's history knows, at random, by name: those on the ground by their names in ground_edits.h, all others by
// the member of FieldSession that does them. act_kinds_test.cpp holds the names against those headers, so that an act that is new there
// and not made here fails.
#pragma once

#include <QTest>
#include <string>
#include <vector>

#include "app/commands/known_facts.h"
#include "core/mending/findings.h"
#include "core/sets/work_order.h"
#include "geo/read/note_corrections.h"
#include "tests/app/session/act_fields.h"
#include "tests/app/session/ground_acts.h"

namespace plugside::testing_support {

class RandomActs {
public:
    RandomActs(FieldSession& session, const ActField& field, KeyedChoice& random)
        : session_(session), field_(field), random_(random), ground_(session, random) {}

    // Each with how often it is made beside the others. Facts are edits of a part of the survey, as the ground is.
    struct Kind {
        const char* member;
        double weight;
        void (RandomActs::*act)();
    };
    static const std::vector<Kind>& kinds() {
        static const std::vector<Kind> all{
            {"decide_on", 3.0, &RandomActs::decide_on},     {"decide_on_all", 2.0, &RandomActs::decide_on_all},
            {"answer", 3.0, &RandomActs::answer},           {"use_note_rules", 3.0, &RandomActs::use_note_rules},
            {"tell_digger", 2.0, &RandomActs::tell_digger}, {"mend", 4.0, &RandomActs::mend},
            {"lift_mend", 1.0, &RandomActs::lift_mend},     {"edit", 4.0, &RandomActs::edit_ground},
            {"edit", 4.0, &RandomActs::edit_known},         {"edit", 2.0, &RandomActs::edit_work},
            {"add", 0.8, &RandomActs::add},
            {"read_again", 0.4, &RandomActs::read_again}};
        return all;
    }

    // One act, or none where nothing is there to be done; what it was.
    std::string act() {
        double left = 0.0;
        for (const Kind& kind : kinds()) left += kind.weight;
        left *= random_.share();
        for (const Kind& kind : kinds())
            if ((left -= kind.weight) < 0.0) {
                doing_ = kind.member;
                (this->*kind.act)();
                break;
            }
        return doing_;
    }

private:
    const Survey& survey() const { return session_.field()->survey; }
    std::string mark() {
        // now and then one that is not there, as after files were read anew
        return survey().mounds.empty() || random_.chance(0.03) ? "no such mark" : random_.one_of(survey().mounds).name;
    }
    std::vector<std::string> marks(std::size_t most) {
        std::vector<std::string> names;
        for (std::size_t i = 1 + random_.below(most); i > 0; --i) names.push_back(mark());
        return names;
    }
    LocalPoint near_a_mark() {
        const LocalPoint at = survey().mounds.empty() ? LocalPoint{} : random_.one_of(survey().mounds).plug;
        return at + LocalVector{random_.between(-2.0, 2.0), random_.between(-2.0, 2.0)};
    }

    SetDecision decision() {
        const bool beside_plug = random_.chance(0.6);
        const ProbeKey key{beside_plug ? ProbeKind::plug_side : ProbeKind::between_mounds, mark(),
                           beside_plug ? "" : mark()};
        const SetChoice choice = random_.word(SetChoice::moved);
        if (choice != SetChoice::moved) return {key, choice, {}};
        return {key, choice, LadderPlace{Metres::of(random_.between(-1.0, 1.0)), Metres::of(random_.between(-1.0, 1.0))}};
    }
    // Often one that was decided on before.
    SetDecision decision_again() {
        SetDecision made = decision();
        if (!survey().decisions.empty() && random_.chance(0.5)) made.probe = random_.one_of(survey().decisions).probe;
        return made;
    }
    void decide_on() {
        const SetDecision made = decision_again();
        session_.decide_on(made.probe, made.choice, made.moved_to);
    }
    void decide_on_all() {
        std::vector<SetDecision> many;
        for (std::size_t i = 1 + random_.below(6); i > 0; --i) many.push_back(decision_again());
        session_.decide_on_all(many, QStringLiteral("several"));
    }

    std::vector<Finding> findings() {
        auto found = findings_of(survey()).value();
        found.insert(found.begin(), session_.field()->of_reading.begin(), session_.field()->of_reading.end());
        return found;
    }
    void answer() {
        const std::vector<Finding> found = findings();
        if (found.empty()) return;
        std::vector<Finding> answered;
        for (std::size_t i = random_.chance(0.6) ? 1 : 2 + random_.below(4); i > 0; --i)
            answered.push_back(random_.one_of(found));
        session_.answer(answered, random_.chance(0.3) ? Answer::refused : Answer::accepted);
    }

    void use_note_rules() {
        std::vector<NoteRule> rules = survey().note_rules;
        if (!rules.empty() && random_.chance(0.3)) {
            rules.erase(rules.begin() + static_cast<std::ptrdiff_t>(random_.below(rules.size())));
        } else {
            static const std::vector<std::string> meanings{"fresh",  "older",   "crushed", "",
                                                           "fan 90", "fan 200", "mole",    "dog"};
            NoteRule rule{"", random_.one_of(act_note_words), random_.one_of(meanings), ""};
            if (!survey().walks.empty() && random_.chance(0.5)) rule.walk = random_.one_of(survey().walks).id;
            if (random_.chance(0.4)) rule.mark = mark();
            rules = with_rule(std::move(rules), rule);
        }
        session_.use_note_rules(rules, QStringLiteral("notes"));
    }

    void tell_digger() {
        const SignKind kind = random_.word(SignKind::other);
        for (const Finding& finding : findings())
            if (finding.kind == FindingKind::other_digger && !finding.marks.empty() && random_.chance(0.5)) {
                session_.tell_digger(finding.marks.front(), kind, &finding);
                return;
            }
        session_.tell_digger(mark(), kind);
    }

    void mend() {
        Mend mend;
        mend.kind = random_.word(MendKind::freshness);
        mend.marks = marks(mend.kind == MendKind::set_aside || mend.kind == MendKind::turn_fans ? 6 : 2);
        if (mend.kind == MendKind::move || mend.kind == MendKind::one_mound)
            for (std::size_t i = 0; i < mend.marks.size(); ++i) mend.to.push_back(near_a_mark());
        if (mend.kind == MendKind::fan && random_.chance(0.8)) mend.fan = Bearing::degrees(random_.between(0.0, 360.0));
        if (mend.kind == MendKind::turn_fans) mend.turn_degrees = random_.between(-180.0, 180.0);
        if (mend.kind == MendKind::sign) mend.sign = random_.word(SignKind::other);
        if (mend.kind == MendKind::freshness) mend.freshness = random_.word(Freshness::crushed);
        if (mend.kind == MendKind::one_mound && random_.chance(0.5))
            mend.position_sd = Metres::of(random_.between(0.2, 2.0));
        if (mend.kind == MendKind::set_aside) mend.because = "in a corner that was set aside";
        session_.mend(mend, QStringLiteral("mend"));
    }
    void lift_mend() {
        if (survey().answers.empty()) return;
        const std::string lifted = random_.one_of(survey().answers).finding;
        session_.lift_mend(lifted, QStringLiteral("lift"));
    }

    void edit_ground() {
        const std::string& name = random_.one_of(GroundActs::names());
        doing_ += " " + name;
        ground_.act(name);
    }
    void edit_known() {
        const auto& before = survey().known;
        if (!before.empty() && random_.chance(0.3)) {
            doing_ += " lifted";
            session_.edit(SurveyPart(lifted(before, random_.below(before.size()))), QStringLiteral("lift"));
            return;
        }
        KnownFact fact;
        fact.kind = random_.word(FactKind::caught_here);
        const bool of_one = fact.kind == FactKind::not_a_gopher || fact.kind == FactKind::caught_here;
        fact.marks = of_one ? marks(1) : std::vector{mark(), mark()};
        if (fact.kind == FactKind::no_run_across || (fact.kind == FactKind::run_here && random_.chance(0.4))) {
            fact.marks.clear();
            fact.line = Polyline{{near_a_mark(), near_a_mark(), near_a_mark()}};
        }
        if (random_.chance(0.3)) fact.log_strength = random_.between(0.1, 4.0);
        if (what_is_missing(fact)) return;  // as the window, which says nothing of one mark twice
        doing_ += " said";
        session_.edit(SurveyPart(said(before, fact)), QStringLiteral("said"));
    }

    // Answers, methods, a label's figure, a signature, a budget: by random rows of a work order.
    void edit_work() {
        doing_ += " work";
        WorkOrder order = *survey().work;
        const UtcTime at = UtcTime(std::chrono::milliseconds(1'744'286'400'000 + 1000 * static_cast<long long>(random_.below(9999))));
        switch (random_.below(8)) {
            case 0: order.conditions.soil_moisture = {random_.word(SoilMoisture::wet), at}; break;
            case 1: order.conditions.rain_due = {random_.chance(0.3) ? std::nullopt : std::optional(random_.chance(0.5)), at}; break;
            case 2: order.method = random_.one_of(built_in_method_ids()); break;
            case 3:
                choose_method(order, {ProbeKind::plug_side, mark(), ""}, random_.one_of(built_in_method_ids()));
                break;
            case 5: order.walking = some_walking(std::move(order.walking)); break;
            case 6:
                order.walking.kept.assign(1 + random_.below(3), {});
                for (KeptTour& tour : order.walking.kept)
                    tour = {static_cast<int>(random_.below(3)), static_cast<int>(random_.below(2)),
                            {{ProbeKind::plug_side, mark(), ""}, {ProbeKind::between_mounds, mark(), mark()}}};
                break;
            case 4: order.budget.traps = static_cast<int>(random_.below(40)); break;
            default:
                order.own_methods.push_back(own_variant(built_in_methods().front(),
                                                        static_cast<int>(order.own_methods.size()) + 1, "my way"));
        }
        session_.edit(SurveyPart(HeldWork(std::move(order))), QStringLiteral("work"));
    }

    WalkingWishes some_walking(WalkingWishes wishes) {
        switch (random_.below(5)) {
            case 0: wishes.people = 1 + static_cast<int>(random_.below(5)); break;
            case 1: wishes.minutes_a_day = random_.between(60.0, 500.0); break;
            case 2: wishes.carry = 1 + static_cast<int>(random_.below(40)); break;
            case 3: wishes.back = !wishes.back; break;
            default: wishes.start = PlaceInDegrees{random_.between(38.0, 38.1), random_.between(-121.6, -121.5)};
        }
        return wishes;
    }

    FileChoices choices() {
        FileChoices told;
        if (random_.chance(0.4))
            told.north[random_.chance(0.7) ? "walk.gpx" : "later.gpx"] = random_.word(North::magnetic_north);
        return told;
    }
    void add() {
        FieldSession::Files more{random_.one_of(field_.more)};
        if (random_.chance(0.3)) more.push_back(random_.one_of(field_.more));
        session_.add(more, choices());
        wait_for_files();
    }
    void read_again() {
        FieldSession::Files wanted = session_.files();
        if (wanted.size() > 1 && random_.chance(0.4)) wanted.pop_back();
        session_.read_again(wanted, choices());
        wait_for_files();
    }
    void wait_for_files() {
        EXPECT_TRUE(QTest::qWaitFor([this] { return !session_.file_work().running(); }, 120000)) << "files are being read";
    }

    FieldSession& session_;
    const ActField& field_;
    KeyedChoice& random_;
    GroundActs ground_;
    std::string doing_;
};

}  // namespace plugside::testing_support
