// The sets of a field gone through in the window: by keys alone, by mouse alone, several at once, moved, asked why.
#include "tests/app/window/set_review.h"

#include <QLabel>
#include <iostream>
#include <set>

#include "core/sets/why_here.h"

namespace plugside {
namespace {

class SetReviewTest : public OnScreen {
protected:
    void SetUp() override {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        review_.open({sample / "walk.gpx", sample / "ground.gpkg"});
    }
    void tell_worst(const char* how) {
        RecordProperty("acts", review_.acts());
        RecordProperty("worst_event_ms", std::to_string(review_.worst_ms()));
        std::cout << how << ": " << review_.acts() << " acts for 30 sets, longest event " << review_.worst_ms()
                  << " ms, of its own work " << review_.worst_work_ms() << " ms (" << review_.worst_of()
                  << "), longest step of a drag " << review_.worst_step_ms() << " ms\n";
    }
    std::vector<SetWorth> order() {
        const auto choices = choices_of(review_.survey(), review_.plan());
        return undecided_by_worth(review_.plan(), choices, reach_of_chosen(review_.plan(), choices));
    }
    QString chance() { return review_.page().chance_text(); }
    std::size_t history() { return static_cast<std::size_t>(review_.window().session().history().index()); }

    SetReview review_;
};

// A field large enough for thirty sets.
class ThirtySets : public SetReviewTest {
protected:
    void SetUp() override {
        review_.open_simulated(300);
        ASSERT_GE(review_.plan().sets.size(), 30U);
    }
};

TEST_F(ThirtySets, TakeAtMostTwoActsEachByKeysAlone) {
    review_thirty_by_keys(review_);
    EXPECT_LE(review_.acts(), 60);
    EXPECT_EQ(review_.progress().decided, 30U);
    EXPECT_EQ(review_.survey().decisions.size(), 30U);
    const auto moved = std::count_if(review_.survey().decisions.begin(), review_.survey().decisions.end(),
                                     [](const SetDecision& decision) { return decision.choice == SetChoice::moved; });
    EXPECT_EQ(moved, 5);
    tell_worst("keys");
}

TEST_F(ThirtySets, TakeAtMostTwoActsEachByMouseAlone) {
    review_thirty_by_mouse(review_);
    EXPECT_LE(review_.acts(), 60);
    EXPECT_EQ(review_.progress().decided, 30U);
    const auto moved = std::count_if(review_.survey().decisions.begin(), review_.survey().decisions.end(),
                                     [](const SetDecision& decision) { return decision.choice == SetChoice::moved; });
    EXPECT_EQ(moved, 5);
    tell_worst("mouse");
}

TEST_F(SetReviewTest, TheWorthiestUndecidedSetIsNextWhateverWasDecided) {
    review_.press(Qt::Key_5);
    EXPECT_EQ(review_.at_hand(), order().front().set);
    for (const Qt::Key key : {Qt::Key_K, Qt::Key_D, Qt::Key_K, Qt::Key_K}) {
        review_.press(key);
        EXPECT_EQ(review_.at_hand(), order().front().set);
    }
    // from the worthiest, N goes to the one after it
    review_.press(Qt::Key_N);
    EXPECT_EQ(review_.at_hand(), order().at(1).set);
}

TEST_F(SetReviewTest, WhatTheKeptSetsReachIsToldAndFollowsEveryAct) {
    review_.press(Qt::Key_5);
    const auto account = [&]() -> SetAccount& { return review_.page().account(); };
    const auto counted_for = [&](std::size_t kept) {
        const auto choices = choices_of(review_.survey(), review_.plan());
        EXPECT_EQ(static_cast<std::size_t>(std::count(choices.begin(), choices.end(), SetChoice::kept)), kept);
        ASSERT_TRUE(SetReview::wait_for([&] { return !account().counting(); }));
        const ReachOfSets reach = reach_of_chosen(review_.plan(), choices);
        const ReachOfSets both = reach_of_chosen(review_.plan(), choices, true);
        ASSERT_TRUE(account().reached().has_value());
        EXPECT_NEAR(account().reached()->kept.expected, reach.reached(), 1e-9);
        EXPECT_EQ(account().reached()->kept.low, reach.interval().low);
        EXPECT_EQ(account().reached()->kept.high, reach.interval().high);
        EXPECT_NEAR(account().reached()->with_undecided, both.reached(), 1e-9);
        EXPECT_EQ(account().reached()->animals, review_.plan().estimate.expected);
    };
    counted_for(0);
    const QString none = review_.page().reached_text();
    review_.press(Qt::Key_K);
    counted_for(1);
    EXPECT_NE(review_.page().reached_text(), none);
    review_.press(Qt::Key_K);
    review_.press(Qt::Key_D);
    counted_for(2);
    review_.press(Qt::Key_Z, Qt::ControlModifier);
    review_.press(Qt::Key_Z, Qt::ControlModifier);
    counted_for(1);
}

TEST_F(SetReviewTest, WhileALadderIsMovedItsChanceAndRungsFollowEveryStepAndEscapeTakesItBack) {
    review_.press(Qt::Key_5);
    const QString before = chance();
    const std::size_t set = review_.at_hand();
    review_.press(Qt::Key_M);
    EXPECT_EQ(chance(), before);
    for (int k = 0; k < 6; ++k) review_.press(Qt::Key_Up, Qt::ShiftModifier);
    EXPECT_NE(chance(), before);
    const ProbeSite& site = review_.plan().probes[review_.plan().sets[set].probe];
    const ProbeSite by_hand = LadderByHand(site).at(review_.page().close_up().place());
    EXPECT_EQ(review_.page().ladder()->hit, by_hand.hit);
    EXPECT_EQ(chance(), QStringLiteral("%1 in 100").arg(by_hand.hit.in_100()));
    EXPECT_TRUE(review_.survey().decisions.empty());
    review_.press(Qt::Key_Escape);
    EXPECT_EQ(chance(), before);
    EXPECT_EQ(review_.at_hand(), set);
    EXPECT_TRUE(review_.survey().decisions.empty());
}

TEST_F(SetReviewTest, TheChanceToldWhileMovingIsTheOneTheNextPlanGives) {
    review_.press(Qt::Key_5);
    const ProbeKey key = *review_.window().choices().set();
    review_.press(Qt::Key_Up, Qt::ControlModifier | Qt::ShiftModifier);
    const Probability told = review_.page().ladder()->hit;
    review_.press(Qt::Key_K);
    review_.window().choices().pick_set(key);
    EXPECT_EQ(review_.page().ladder()->hit, told);  // before the plan has followed
    ASSERT_TRUE(review_.planned());
    const auto set = set_at(review_.plan(), key);
    ASSERT_TRUE(set.has_value());
    EXPECT_EQ(review_.plan().probes[review_.plan().sets[*set].probe].hit, told);
    EXPECT_EQ(review_.plan().sets[*set].choice, SetChoice::moved);
    // kept again, it stays where it was moved to
    review_.press(Qt::Key_K);
    EXPECT_EQ(decision_on(review_.survey(), key)->choice, SetChoice::moved);
}

TEST_F(SetReviewTest, ATypedTapeReadingLaysTheLadderAndFiguresDoNotChangeTheStep) {
    review_.press(Qt::Key_5);
    const ProbeKey key = *review_.window().choices().set();
    const Metres across = review_.page().close_up().place().across;
    review_.press(Qt::Key_M);
    for (const Qt::Key figure : {Qt::Key_1, Qt::Key_Space, Qt::Key_F, Qt::Key_T, Qt::Key_Space, Qt::Key_3})
        review_.press(figure);
    EXPECT_EQ(review_.window().choices().step(), Step::sets);
    EXPECT_EQ(review_.page().readings().along().text(), QStringLiteral("1 ft 3"));
    EXPECT_NEAR(review_.page().close_up().place().along.value(), 15.0 * 0.0254, 1e-12);
    EXPECT_EQ(review_.page().close_up().place().across.value(), across.value());
    EXPECT_EQ(review_.page().ladder()->ladder.along.value(), review_.page().close_up().place().along.value());
    review_.press(Qt::Key_Return);
    ASSERT_TRUE(decision_on(review_.survey(), key).has_value());
    EXPECT_NEAR(decision_on(review_.survey(), key)->moved_to->along.value(), 0.381, 1e-12);
    EXPECT_NE(*review_.window().choices().set(), key);
}

TEST_F(SetReviewTest, ATextThatIsNoLengthSaysSoAndMovesNothing) {
    review_.press(Qt::Key_5);
    review_.press(Qt::Key_M);
    const Metres before = review_.page().close_up().place().across;
    QLineEdit& across = review_.page().readings().across();
    across.setFocus();
    across.clear();
    QTest::keyClicks(&across, QStringLiteral("two hands"));
    EXPECT_TRUE(review_.page().readings().complaint().contains(QStringLiteral("two hands")));
    EXPECT_EQ(review_.page().close_up().place().across.value(), before.value());
    review_.press(Qt::Key_Return);
    EXPECT_TRUE(review_.page().moving());
    EXPECT_TRUE(review_.survey().decisions.empty());
    across.clear();
    QTest::keyClicks(&across, QStringLiteral("-0.05 m"));
    EXPECT_NEAR(review_.page().close_up().place().across.value(), -0.05, 1e-12);
    review_.press(Qt::Key_Escape);
    EXPECT_FALSE(review_.page().moving());
}

TEST_F(SetReviewTest, ALadderDraggedOnTheMapLiesOnTheTapeAndStaysInTheHandUntilItIsLaid) {
    review_.press(Qt::Key_5);
    QTest::qWait(50);
    for (int k = 0; k < 6; ++k) review_.window().map().zoom_in();
    review_.window().choices().pick_set(*review_.window().choices().set());
    const LocalPoint from = review_.page().ladder()->middle;
    const QPoint at = review_.ladder_on_map();
    ASSERT_TRUE(review_.window().map().rect().contains(at));
    review_.drag(&review_.window().map(), at, at + QPoint(30, 20));
    ASSERT_TRUE(review_.page().moving());
    EXPECT_TRUE(review_.survey().decisions.empty());
    const LocalPoint to = review_.page().ladder()->middle;
    const double wished = std::hypot(30.0, 20.0) / review_.window().map().view().pixels_per_metre();
    EXPECT_NEAR(distance_m(from, to), wished, 0.025);
    const ProbeSite& site = review_.plan().probes[review_.plan().sets[review_.at_hand()].probe];
    const double inches = (review_.page().ladder()->ladder.along - site.ladder.along).inches();
    EXPECT_NEAR(inches, std::round(inches), 1e-6);
    // taken hold of again where it is now
    const QPoint now = review_.ladder_on_map();
    review_.drag(&review_.window().map(), now, now + QPoint(-30, -20));
    EXPECT_LT(distance_m(review_.page().ladder()->middle, from), 0.04);
    review_.press(Qt::Key_Escape);
    EXPECT_FALSE(review_.page().moving());
    EXPECT_LT(distance_m(review_.page().ladder()->middle, from), 1e-9);
}

TEST_F(SetReviewTest, AClickOnTheLadderOfTheMapIsNoMove) {
    review_.press(Qt::Key_5);
    const QPoint at = review_.ladder_on_map();
    review_.click(&review_.window().map(), at);
    EXPECT_FALSE(review_.page().moving());
    EXPECT_TRUE(review_.survey().decisions.empty());
    const ProbeSite ladder = *review_.page().ladder();
    const double reach = review_.window().map().view().ground_length(16.0).value();
    if (distance_m(ladder.middle, review_.survey().mounds[ladder.from_mound].plug) < 0.5 * reach) {
        EXPECT_TRUE(review_.window().choices().mound().has_value());
    }
}

TEST_F(SetReviewTest, SeveralSetsAreDecidedByOneActAfterTheirNumberWasSaidAndTakenBackByOneUndo) {
    review_.press(Qt::Key_5);
    review_.press(Qt::Key_D);  // decided before: stays
    const std::size_t before = review_.progress().decided;
    review_.press(Qt::Key_T);
    ASSERT_EQ(review_.page().panel(), SetsPage::Panel::several);
    const std::vector<std::size_t> scope = review_.page().several().scope();
    ASSERT_FALSE(scope.empty());
    const std::size_t system = review_.plan().probes[review_.plan().sets[review_.at_hand()].probe].system;
    for (const std::size_t s : scope) EXPECT_EQ(review_.plan().probes[review_.plan().sets[s].probe].system, system);
    EXPECT_NE(review_.button(QStringLiteral("keep %1").arg(scope.size())), nullptr);
    const std::size_t steps = history();
    review_.press(Qt::Key_K);
    EXPECT_EQ(review_.page().panel(), SetsPage::Panel::one_set);
    EXPECT_EQ(history(), steps + 1);
    EXPECT_EQ(review_.progress().decided, before + scope.size());
    review_.press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(review_.progress().decided, before);
    review_.press(Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(review_.progress().decided, before + scope.size());
}

TEST_F(SetReviewTest, AllOfAtLeastAChanceAndAllThatAreGoneThroughAreScopesToo) {
    review_.press(Qt::Key_5);
    review_.press(Qt::Key_T);
    review_.page().several().button(1).setChecked(true);
    review_.page().several().limit().setValue(98);
    const auto scope = review_.page().several().scope();
    for (std::size_t s = 0; s < review_.plan().sets.size(); ++s) {
        const bool wanted = review_.plan().probes[review_.plan().sets[s].probe].hit.in_100() >= 98;
        EXPECT_EQ(std::find(scope.begin(), scope.end(), s) != scope.end(), wanted) << s;
    }
    review_.page().several().button(2).setChecked(true);
    EXPECT_EQ(review_.page().several().scope().size(), review_.plan().sets.size());
    SetFilter of_one;
    of_one.system =
        review_.plan().systems[review_.plan().probes[review_.plan().sets[review_.at_hand()].probe].system].letter;
    review_.page().account().use(of_one);
    EXPECT_EQ(review_.page().several().scope(), review_.page().account().shown());
}

TEST_F(SetReviewTest, AFilterNarrowsTheWayThroughAndALineSaysWhatIsPassedOver) {
    review_.press(Qt::Key_5);
    EXPECT_TRUE(review_.page().hidden_text().isEmpty());
    review_.press(Qt::Key_O);
    ASSERT_EQ(review_.page().panel(), SetsPage::Panel::show_only);
    // by keys alone: the focus stands on "undecided", Tab leads on
    review_.press(Qt::Key_Space);
    EXPECT_TRUE(review_.page().account().filter().undecided);
    SetFilter under;
    under.undecided = true;
    under.system = review_.plan().systems.front().letter;
    review_.page().account().use(under);
    const auto shown = review_.page().account().shown();
    ASSERT_FALSE(shown.empty());
    ASSERT_LT(shown.size(), review_.plan().sets.size());
    review_.press(Qt::Key_Escape);
    EXPECT_EQ(review_.page().panel(), SetsPage::Panel::one_set);
    EXPECT_TRUE(review_.page().hidden_text().contains(QString::number(review_.plan().sets.size() - shown.size())));
    std::set<std::size_t> seen;
    for (std::size_t k = 0; k < shown.size(); ++k) {
        EXPECT_TRUE(review_.page().account().shows(review_.at_hand()));
        seen.insert(review_.at_hand());
        review_.press(Qt::Key_PageDown);
    }
    EXPECT_EQ(seen, std::set<std::size_t>(shown.begin(), shown.end()));
    review_.press(Qt::Key_K);
    EXPECT_TRUE(review_.page().account().shows(review_.at_hand()) || review_.page().account().shown().empty());
}

TEST_F(SetReviewTest, WhyThisPlaceNamesItsMoundsAndAnotherPlaceIsTakenInsteadAsOneStep) {
    review_.press(Qt::Key_5);
    // a set whose animal has another free place
    const auto other_of = [&](std::size_t set) -> std::optional<ProbeKey> {
        for (const OtherPlace& other : why_here(review_.plan(), set).others)
            if (!other.set) return review_.plan().probes[other.probe].key;
        return std::nullopt;
    };
    for (std::size_t k = 0; k < review_.plan().sets.size() && !other_of(review_.at_hand()); ++k)
        review_.press(Qt::Key_PageDown);
    const auto other = other_of(review_.at_hand());
    ASSERT_TRUE(other.has_value());
    const ProbeKey here = *review_.window().choices().set();
    review_.press(Qt::Key_W);
    EXPECT_TRUE(review_.page().reasons().text().contains(QString::fromStdString(here.from_mound)));
    EXPECT_TRUE(review_.page().reasons().text().contains(QStringLiteral("of 100")));
    const std::size_t steps = history();
    review_.press(Qt::Key_I);
    EXPECT_EQ(history(), steps + 1);
    EXPECT_EQ(decision_on(review_.survey(), here)->choice, SetChoice::dropped);
    EXPECT_EQ(decision_on(review_.survey(), *other)->choice, SetChoice::kept);
    ASSERT_TRUE(review_.planned());
    EXPECT_TRUE(set_at(review_.plan(), *other).has_value());
    review_.press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(review_.survey().decisions.empty());
}

TEST_F(SetReviewTest, TheSetsOfOneAnimalStandSideBySideAndArrowsChooseAmongThem) {
    review_.press(Qt::Key_5);
    for (std::size_t k = 0; k < review_.plan().sets.size() && review_.page().strip().items().size() < 2; ++k)
        review_.press(Qt::Key_PageDown);
    SetStrip& strip = review_.page().strip();
    ASSERT_GE(strip.items().size(), 2U);
    review_.press(Qt::Key_A);
    ASSERT_TRUE(strip.hasFocus());
    review_.press(Qt::Key_Home);
    EXPECT_EQ(review_.at_hand(), strip.items().front().set);
    review_.press(Qt::Key_Right);
    EXPECT_EQ(review_.at_hand(), strip.items().at(1).set);
    review_.press(Qt::Key_Left);
    EXPECT_EQ(review_.at_hand(), strip.items().front().set);
    review_.click(&strip, strip.cell_of(1).center().toPoint());
    EXPECT_EQ(review_.at_hand(), strip.items().at(1).set);
    const std::size_t system = review_.plan().probes[review_.plan().sets[review_.at_hand()].probe].system;
    for (const SetStrip::Item& item : strip.items())
        EXPECT_EQ(review_.plan().probes[review_.plan().sets[item.set].probe].system, system);
}

TEST_F(SetReviewTest, EveryControlOfTheSlipThatTakesTheFocusHasANameToReadAloud) {
    review_.press(Qt::Key_5);
    review_.press(Qt::Key_W);
    for (const Qt::Key panel : {Qt::Key_M, Qt::Key_O, Qt::Key_T}) {
        review_.press(panel);
        for (const QWidget* widget : review_.page().findChildren<QWidget*>()) {
            if (!widget->isVisible() || widget->focusPolicy() == Qt::NoFocus || widget->focusProxy() != nullptr) continue;
            const auto* button = qobject_cast<const QAbstractButton*>(widget);
            const bool inner_line = qobject_cast<const QAbstractSpinBox*>(widget->parentWidget()) != nullptr;
            EXPECT_TRUE(inner_line || !widget->accessibleName().isEmpty() ||
                        (button != nullptr && !button->text().isEmpty()) || qobject_cast<const QLabel*>(widget) != nullptr)
                << widget->metaObject()->className();
        }
        review_.press(Qt::Key_Escape);
    }
}

}  // namespace
}  // namespace plugside
