// A new user in the window, by mouse and by keys alone, every act counted (a key, a click, a drag, a double click): a boundary of eight
// corners over the sample's picture, two corrections of systems, a fan turned, thirty sets reviewed. Bars of the project: twelve acts for
// the boundary, three a correction, two a set.
#include <iostream>

#include "app/canvas/mound_glyph.h"
#include "tests/app/window/set_review.h"

namespace plugside {
namespace {

const std::filesystem::path meadow = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow";

class Newcomer : public OnScreen {
protected:
    void open_sample() {
        review_.open(FieldSession::Files{meadow / "walk.gpx"});
        window().add_imagery({meadow / "imagery.tif"});
        ASSERT_TRUE(SetReview::wait_for([&] { return window().imagery().pictures().size() == 1; }));
    }
    MainWindow& window() { return review_.window(); }
    const Survey& survey() { return review_.survey(); }
    QPoint on_map(LocalPoint place) { return window().map().view().to_screen(place).toPoint(); }
    void click_map(QPoint at) {
        QTest::mouseMove(&window().map(), at);
        QTest::qWait(1);
        review_.click(&window().map(), at);
        // the next click is no double click
        QTest::qWait(QApplication::doubleClickInterval() + 20);
    }
    void click_key(const QString& key) {
        for (KeyButton* each : window().slip().findChildren<KeyButton*>())
            if (each->isVisible() && each->key() == key) {
                review_.click(each, each->rect().center());
                return;
            }
        FAIL() << "no key " << key.toStdString();
    }
    void tell(const char* what, int acts, int most) {
        std::cout << "[ acts     ] " << what << ": " << acts << ", at most " << most << '\n';
        EXPECT_LE(acts, most) << what;
        review_.begin_counting();
    }
    // A mark of a system that has another of the system at least so far on the screen from it, both in view and apart from others.
    std::pair<std::size_t, std::size_t> two_marks(bool of_one_system) {
        const Plan& plan = review_.plan();
        for (std::size_t a = 0; a < survey().mounds.size(); ++a)
            for (std::size_t b = 0; b < survey().mounds.size(); ++b) {
                const QPoint from = on_map(survey().mounds[a].plug);
                const QPoint to = on_map(survey().mounds[b].plug);
                const bool same = plan.mounds[a].system == plan.mounds[b].system;
                if (!plan.mounds[a].system || !plan.mounds[b].system || same != of_one_system) continue;
                if ((from - to).manhattanLength() < 60 || !window().map().rect().adjusted(60, 60, -60, -60).contains(from) ||
                    !window().map().rect().adjusted(60, 60, -60, -60).contains(to))
                    continue;
                if (apart(a) && apart(b)) return {a, b};
            }
        return {0, 0};
    }
    bool apart(std::size_t mound) {
        for (std::size_t i = 0; i < survey().mounds.size(); ++i)
            if (i != mound && (on_map(survey().mounds[i].plug) - on_map(survey().mounds[mound].plug)).manhattanLength() < 6)
                return false;
        return true;
    }

    // The next mark of the walk that nothing was said of yet and whose system has others; the last key is the first act that counts.
    void pick_one_of_several() {
        do {
            review_.begin_counting();
            review_.press(Qt::Key_BracketRight);
        } while (!of_several(*window().choices().mound()));
    }
    bool of_several(std::size_t mound) {
        const auto system = review_.plan().mounds[mound].system;
        for (const KnownFact& fact : survey().known)
            for (const std::string& mark : fact.marks)
                if (mark == survey().mounds[mound].name) return false;
        return system && review_.plan().systems[*system].mounds.size() > 1;
    }

    SetReview review_;
};

TEST_F(Newcomer, GoesThroughTheJobByMouse) {
    open_sample();
    for (StepButton* each : window().findChildren<StepButton*>())
        if (each->step() == Step::ground) review_.click(each, each->rect().center());
    ASSERT_EQ(window().choices().step(), Step::ground);
    review_.begin_counting();
    click_key("B");
    const QList<QPoint> corners{{70, 250},  {160, 130}, {330, 90},  {500, 110},
                                {620, 220}, {600, 480}, {380, 600}, {130, 520}};
    for (const QPoint corner : corners) click_map(corner);
    QTest::mouseDClick(&window().map(), Qt::LeftButton, {}, corners.back());
    ASSERT_EQ(survey().ground.boundary.parts.size(), 1U);
    EXPECT_EQ(survey().ground.boundary.parts[0].outer.vertices.size(), 8U);
    tell("boundary of eight corners by mouse", review_.acts() + 1, 12);

    ASSERT_TRUE(review_.planned());
    for (StepButton* each : window().findChildren<StepButton*>())
        if (each->step() == Step::systems) review_.click(each, each->rect().center());
    review_.click(window().slip().systems().corrections_key(), QPoint(10, 10));
    review_.begin_counting();
    const auto [a, b] = two_marks(true);
    click_map(on_map(survey().mounds[a].plug));
    ASSERT_EQ(window().choices().mound(), a);
    click_key("T");
    click_map(on_map(survey().mounds[b].plug));
    ASSERT_EQ(survey().known.size(), 1U);
    EXPECT_EQ(survey().known[0].kind, FactKind::different_systems);
    tell("two animals told apart by mouse", review_.acts(), 3);
    ASSERT_TRUE(review_.planned());
    const auto [c, d] = two_marks(false);
    click_map(on_map(survey().mounds[c].plug));
    click_key("O");
    click_map(on_map(survey().mounds[d].plug));
    EXPECT_EQ(survey().known.size(), 2U);
    tell("two systems made one by mouse", review_.acts(), 3);

    ASSERT_TRUE(review_.planned());
    std::size_t with_fan = 0;
    while (!survey().mounds[with_fan].fan || !apart(with_fan) || why_not_used(survey(), survey().mounds[with_fan]))
        ++with_fan;
    click_map(on_map(survey().mounds[with_fan].plug));
    ASSERT_EQ(window().choices().mound(), with_fan);
    const ViewTransform& view = window().map().view();
    const LocalVector out = survey().mounds[with_fan].fan->unit();
    const QPoint handle = on_map(survey().mounds[with_fan].plug +
                                 out * view.ground_length(mound_reach_px(view.pixels_per_metre()) + 8.0).value());
    const QPoint east = on_map(survey().mounds[with_fan].plug) + QPoint(60, 0);
    review_.drag(&window().map(), handle, east);
    EXPECT_NEAR(survey().mounds[with_fan].fan->degrees(), 90.0, 1.5);
    tell("a fan turned by mouse", review_.acts(), 3);
}

TEST_F(Newcomer, GoesThroughTheJobByKeysAlone) {
    open_sample();
    review_.press(Qt::Key_2);
    review_.begin_counting();
    review_.press(Qt::Key_W);
    review_.press(Qt::Key_Return);
    ASSERT_EQ(survey().ground.boundary.parts.size(), 1U);
    EXPECT_EQ(survey().ground.boundary.parts[0].outer.vertices.size(), 8U);
    for (const Mound& mound : survey().mounds) EXPECT_TRUE(contains(survey().ground.boundary, mound.plug));
    const LocalPoint corner = survey().ground.boundary.parts[0].outer.vertices[1];
    review_.press(Qt::Key_BracketRight);
    review_.press(Qt::Key_BracketRight);
    for (int i = 0; i < 3; ++i) review_.press(Qt::Key_Up);
    const double moved = distance_m(survey().ground.boundary.parts[0].outer.vertices[1], corner);
    EXPECT_NEAR(window().map().view().pixels(Metres::of(moved)), 24.0, 0.5);
    tell("boundary of eight corners by keys, one corner put right", review_.acts(), 12);

    ASSERT_TRUE(review_.planned());
    review_.press(Qt::Key_3);
    review_.begin_counting();
    review_.press(Qt::Key_M, Qt::ControlModifier);
    pick_one_of_several();
    review_.press(Qt::Key_T);
    review_.press(Qt::Key_Return);
    ASSERT_EQ(survey().known.size(), 1U);
    EXPECT_EQ(survey().known[0].kind, FactKind::different_systems);
    tell("two animals told apart by keys", review_.acts(), 3);
    ASSERT_TRUE(review_.planned());
    pick_one_of_several();
    review_.press(Qt::Key_O);
    review_.press(Qt::Key_Return);
    ASSERT_EQ(survey().known.size(), 2U);
    EXPECT_EQ(survey().known[1].kind, FactKind::same_system);
    tell("two systems made one by keys", review_.acts(), 3);

    ASSERT_TRUE(review_.planned());
    while (!survey().mounds[*window().choices().mound()].fan) review_.press(Qt::Key_BracketRight);
    review_.begin_counting();
    const Bearing before = *survey().mounds[*window().choices().mound()].fan;
    review_.press(Qt::Key_Right, Qt::ControlModifier | Qt::ShiftModifier);
    review_.press(Qt::Key_Left, Qt::ControlModifier);
    EXPECT_NEAR(survey().mounds[*window().choices().mound()].fan->degrees(), before.turned(40.0).degrees(), 0.2);
    tell("a fan turned by keys", review_.acts(), 3);
}

TEST_F(Newcomer, ReviewsThirtySetsByMouse) {
    review_.open_simulated(300);
    review_thirty_by_mouse(review_);
    EXPECT_EQ(review_.progress().decided, 30U);
    tell("thirty sets by mouse", review_.acts(), 60);
}

TEST_F(Newcomer, ReviewsThirtySetsByKeysAlone) {
    review_.open_simulated(300);
    review_thirty_by_keys(review_);
    EXPECT_EQ(review_.progress().decided, 30U);
    tell("thirty sets by keys", review_.acts(), 60);
}

}  // namespace
}  // namespace plugside
