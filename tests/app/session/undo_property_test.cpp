// Whatever is done to a field: undone to the start it gives the very exports that it gave there, redone to the end those of the end, and
// every state between is the one that was there. Also where the project is closed and opened again in between.
//
// Sequences: PLUGSIDE_ACT_SEQUENCES of them (150 unless told), by PLUGSIDE_ACT_SEED; a failure names the sequence and its acts.
#include <QSignalSpy>
#include <cstdlib>

#include "tests/app/application.h"
#include "tests/app/session/field_export.h"
#include "tests/app/session/picture_acts.h"
#include "tests/app/session/random_acts.h"

namespace plugside {
namespace {

using namespace testing_support;

constexpr std::uint64_t parts = 5;

std::uint64_t from_environment(const char* name, std::uint64_t otherwise) {
    const char* text = std::getenv(name);
    return text == nullptr ? otherwise : std::strtoull(text, nullptr, 10);
}

ActFields& fields() {
    static ActFields made;
    return made;
}

struct Exports {
    Rows survey;
    KeptProject kept;
};

// A field in the hands of a person, with its project.
class Sequence {
public:
    Sequence(const ActField& field, std::uint64_t key, bool with_plans)
        : field_(field), random_(key), with_plans_(with_plans), acts_(session_, field, random_) {
        session_.resume(field.field, {field.files}, field.told, false);
        // as in the window
        QObject::connect(&session_, &FieldSession::field_replaced, &imagery_,
                         [this] { imagery_.lie_on(session_.field()->frame); });
        imagery_.lie_on(session_.field()->frame);
        if (random_.chance(0.3)) pictures_.lay();
        begin_here();
    }
    ~Sequence() {
        if (!keeper_.file()) return;
        keeper_.settle();
        std::error_code ignored;
        std::filesystem::remove(*keeper_.file(), ignored);
    }

    void act(std::size_t count) {
        for (std::size_t i = 0; i < count && !testing::Test::HasFailure(); ++i) {
            const int before = history().index();
            const bool on_picture = pictures_.laid() && random_.chance(0.35);
            done_ += (on_picture ? pictures_.act() : acts_.act()) + "; ";
            if (history().index() > before) forget_states_after(before);
            remember_state();
            if (random_.chance(0.12)) look_otherwise();
            if (random_.chance(0.2)) step_back_and_forth();
            if (random_.chance(0.03)) open_again();
        }
    }

    void undo_and_redo_all() {
        history().setIndex(history().count());
        const Exports last = exports();
        const Rows last_plan = plan();
        go_to(0);
        expect_same(first_, exports(), "undone to the start");
        if (with_plans_) expect_same_rows(first_plan_, plan(), "plan, undone to the start");
        for (int leap = 0; leap < 3; ++leap)
            go_to(static_cast<int>(random_.below(static_cast<std::size_t>(history().count()) + 1)));
        go_to(history().count());
        expect_same(last, exports(), "redone to the end");
        if (with_plans_) expect_same_rows(last_plan, plan(), "plan, redone to the end");
        EXPECT_EQ(choices_.units(), units_) << "how it is looked at is no act";
        EXPECT_EQ(imagery_.tone(), tone_);
    }
    [[nodiscard]] const std::string& done() const { return done_; }

private:
    QUndoStack& history() { return session_.history(); }

    void begin_here() {
        states_.clear();
        remember_state();
        first_ = exports();
        first_plan_ = plan();
        units_ = choices_.units();
        tone_ = imagery_.tone();
    }

    Exports exports() { return {survey_rows(*session_.field(), folder_), kept_project(keeper_, folder_)}; }
    Rows plan() {
        if (!with_plans_) return {};
        EXPECT_TRUE(QTest::qWaitFor([this] { return session_.plan_is_current(); }, 120000));
        return plan_rows(*session_.field(), *session_.plan(), folder_);
    }
    static void expect_same(const Exports& before, const Exports& now, const std::string& what) {
        expect_same_rows(before.survey, now.survey, "survey, " + what);
        expect_same_rows(before.kept.rows, now.kept.rows, "project file, " + what);
        EXPECT_TRUE(before.kept.project == now.kept.project) << "project, " << what;
    }

    void forget_states_after(int index) { states_.erase(states_.upper_bound(index), states_.end()); }
    void remember_state() {
        const auto [state, is_new] = states_.try_emplace(history().index(), without_looks(keeper_.snapshot()));
        if (is_new) return;
        EXPECT_TRUE(state->second == without_looks(keeper_.snapshot())) << "nothing was done";
    }
    void go_to(int index) {
        history().setIndex(index);
        expect_known_state();
    }
    void expect_known_state() {
        const auto known = states_.find(history().index());
        if (known == states_.end()) return;
        EXPECT_TRUE(known->second == without_looks(keeper_.snapshot())) << "state " << known->first << " of the history";
    }
    void step_back_and_forth() {
        for (std::size_t i = random_.below(5); i > 0; --i) {
            done_ += "undo; ";
            history().undo();
            expect_known_state();
        }
        for (std::size_t i = random_.below(4); i > 0; --i) {
            done_ += "redo; ";
            history().redo();
            expect_known_state();
        }
    }

    void look_otherwise() {
        done_ += "look; ";
        units_ = random_.word(LengthUnits::metres);
        choices_.use(units_);
        tone_ = random_.share();
        imagery_.set_tone(tone_);
    }

    void open_again() {
        done_ += "open again; ";
        const Exports before = exports();
        const auto copy = folder_ / ("opened " + std::to_string(++opened_) + ".plugside");
        std::filesystem::copy_file(*keeper_.file(), copy);
        const auto left = *keeper_.file();
        QSignalSpy opened(&keeper_, &ProjectKeeper::opened);
        keeper_.open(copy);
        ASSERT_TRUE(QTest::qWaitFor([&] { return opened.size() == 1; }, 120000));
        EXPECT_TRUE(keeper_.settle(std::chrono::minutes(2)));
        std::error_code ignored;
        std::filesystem::remove(left, ignored);
        EXPECT_FALSE(history().canUndo());
        EXPECT_TRUE(pictures_.settle());
        expect_same(before, exports(), "opened again");
        begin_here();
    }

    const ActField& field_;
    KeyedChoice random_;
    bool with_plans_;
    TemporaryFolder folder_;
    FieldSession session_;
    Imagery imagery_{folder_.path() / "copies"};
    Choices choices_;
    ProjectKeeper keeper_{session_, imagery_, choices_};
    RandomActs acts_;
    RandomPictureActs pictures_{session_, imagery_, random_};
    std::map<int, Project> states_;  // by place in the history
    Exports first_;
    Rows first_plan_;
    LengthUnits units_ = LengthUnits::metres;
    double tone_ = 0.0;
    std::string done_;
    int opened_ = 0;
};

void do_undo_and_redo(const ActField& field, std::uint64_t seed, std::uint64_t number, bool with_plans) {
    Sequence sequence(field, mixed(seed, number), with_plans);
    KeyedChoice length(mixed(seed + 1, number));
    sequence.act(3 + length.below(22));
    sequence.undo_and_redo_all();
    EXPECT_FALSE(testing::Test::HasFailure()) << "sequence " << number << " of seed " << seed << ": " << sequence.done();
}

class AnySequenceOfActs : public OnScreen, public testing::WithParamInterface<std::uint64_t> {};

TEST_P(AnySequenceOfActs, UndoneAndRedoneGivesTheSameExports) {
    const std::uint64_t count = from_environment("PLUGSIDE_ACT_SEQUENCES", 150);
    const std::uint64_t seed = from_environment("PLUGSIDE_ACT_SEED", 20260301);
    RecordProperty("seed", std::to_string(seed));
    std::uint64_t run = 0;
    for (std::uint64_t number = GetParam(); number < count && !HasFailure(); number += parts, ++run)
        do_undo_and_redo(fields().at(number), seed, number, number % 30 == 7);
    RecordProperty("sequences", std::to_string(run));
}

using AnySequenceOfActsOnTheSample = OnScreen;

TEST_F(AnySequenceOfActsOnTheSample, UndoneAndRedoneGivesTheSameExports) {
    const std::uint64_t seed = from_environment("PLUGSIDE_ACT_SEED", 20260301);
    for (std::uint64_t number = 0; number < 4 && !HasFailure(); ++number)
        do_undo_and_redo(fields().sample(), seed, number, number == 0);
}

INSTANTIATE_TEST_SUITE_P(InParts, AnySequenceOfActs, testing::Range<std::uint64_t>(0, parts));

}  // namespace
}  // namespace plugside
