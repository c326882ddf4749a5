// The Method step in the window: conditions answered, a method chosen, what speaks against it shown on the map, signed and taken back.
#include <QSignalSpy>
#include <algorithm>

#include "app/window/main_window.h"
#include "core/geometry/polygon.h"
#include "core/sets/cautions.h"
#include "tests/app/application.h"

namespace plugside {
namespace {

using std::chrono::hours;

class MethodStep : public OnScreen {
protected:
    void open_sample() {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        window_.open_files({sample / "walk.gpx", sample / "ground.gpkg"});
        ASSERT_TRUE(wait_for([&] { return session().plan_is_current(); }));
        window_.resize(1280, 800);
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
        ASSERT_TRUE(judged());
    }
    bool judged() {
        return wait_for([&] { return session().plan_is_current() && work().holds() && !work().working(); });
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
    }
    // A house 20 m east of the first system's first mound.
    void build_a_house() {
        Ground ground = session().field()->survey.ground;
        const LocalPoint near = session().field()->survey.mounds.at(session().plan()->systems.front().mounds.front()).plug;
        const LocalPoint low = near + LocalVector{20.0, 0.0};
        ground.keep_clear.push_back(
            {"house", "somebody lives in it", KeepClearKind::building,
             Polygon{Ring{{low, low + LocalVector{5.0, 0.0}, low + LocalVector{5.0, 5.0}, low + LocalVector{0.0, 5.0}}},
                     {}}});
        session().edit(SurveyPart(ground), QStringLiteral("house"));
        ASSERT_TRUE(judged());
    }
    const CautionGroup* group(const std::string& caution) {
        const auto& groups = page().against().groups();
        const auto found =
            std::find_if(groups.begin(), groups.end(), [&](const CautionGroup& one) { return one.caution == caution; });
        return found == groups.end() ? nullptr : &*found;
    }
    void answer(Question question, const char* word) {
        page().conditions().row(question)->answer().enter(QString::fromLatin1(word));
    }

    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 240000); }
    FieldSession& session() { return window_.session(); }
    WorkAccount& work() { return window_.work(); }
    MethodPage& page() { return window_.slip().method(); }

    MainWindow window_;
};

TEST_F(MethodStep, NumberKeysStandInTheOrderOfTheDay) {
    open_sample();
    const std::array steps{Step::walk, Step::ground, Step::systems, Step::method, Step::sets};
    for (std::size_t i = 0; i < steps.size(); ++i) {
        press(static_cast<Qt::Key>(Qt::Key_1 + static_cast<int>(i)));
        EXPECT_EQ(window_.choices().step(), steps.at(i));
    }
    press(Qt::Key_4);
    const std::array keys{Qt::Key_N, Qt::Key_M, Qt::Key_L, Qt::Key_A, Qt::Key_O};
    for (std::size_t i = 0; i < keys.size(); ++i) {
        window_.map().setFocus();
        press(keys.at(i));
        EXPECT_EQ(page().part(), static_cast<MethodPart>(i));
    }
}

TEST_F(MethodStep, AMethodIsChosenAndItsQuestionsAnsweredWithoutAnotherPlan) {
    open_sample();
    const auto plan = session().plan();
    press(Qt::Key_4);
    EXPECT_FALSE(page().methods().look_text("paired-traps").isEmpty());
    page().methods().choose("paired-traps");
    ASSERT_TRUE(judged());
    EXPECT_EQ(session().field()->survey.work->method, "paired-traps");
    const auto asked = work().judged()->judged.asks();
    ASSERT_FALSE(asked.empty());
    page().show_part(MethodPart::conditions);
    EXPECT_EQ(page().conditions().order().front(),
              *std::find_if(asked.begin(), asked.end(), [](Question question) { return question != Question::water_days; }))
        << "what the rules ask for comes first";
    int acts = 1;
    for (const Question question : asked) {
        QuestionRow* row = page().conditions().row(question);
        if (row == nullptr) continue;
        const auto& words = row->answer().spec().words;
        row->answer().enter(QString::fromStdString(words.empty()             ? "1"
                                                   : words.front() == "none" ? words.at(1)
                                                                             : words.front()));
        EXPECT_EQ(row->answer().wrong(), QString());
        ++acts;
    }
    EXPECT_EQ(session().history().count(), acts);
    ASSERT_TRUE(judged());
    EXPECT_LT(work().judged()->judged.asks().size(), asked.size());
    EXPECT_EQ(session().plan(), plan);
    EXPECT_TRUE(session().plan_is_current());
    while (session().history().canUndo()) session().history().undo();
    EXPECT_TRUE(*session().field()->survey.work == WorkOrder{});
    EXPECT_EQ(session().plan(), plan);
}

TEST_F(MethodStep, NotKnownIsAnAnswerAndOldAnswersAreQuestioned) {
    open_sample();
    const UtcTime then = UtcTime(hours(24 * 20000));
    work().set_clock([&] { return then; });
    answer(Question::rain_due, "not-known");
    const auto& told = session().field()->survey.work->conditions.rain_due;
    EXPECT_FALSE(told.value);
    EXPECT_EQ(told.at, then);
    answer(Question::soil_moisture, "damp");
    EXPECT_EQ(page().conditions().row(Question::soil_moisture)->answer().shown_text(), QStringLiteral("damp"));
    work().set_clock([&] { return then + hours(30); });
    answer(Question::frost, "no");
    EXPECT_TRUE(page().conditions().row(Question::soil_moisture)->age().contains(QStringLiteral("is it still so?")));
    page().conditions().row(Question::soil_moisture)->still_so();
    EXPECT_EQ(session().field()->survey.work->conditions.soil_moisture.at, then + hours(30));
    EXPECT_FALSE(page().conditions().row(Question::soil_moisture)->age().contains(QStringLiteral("is it still so?")));
}

TEST_F(MethodStep, WhatCannotBeReadStaysInTheFieldWithASentence) {
    open_sample();
    RowEdit& warm = page().conditions().row(Question::soil_temperature)->answer();
    warm.enter(QStringLiteral("warm"));
    EXPECT_FALSE(warm.wrong().isEmpty());
    EXPECT_FALSE(session().field()->survey.work->conditions.soil_temperature_c.value);
    warm.enter(QStringLiteral("50"));
    EXPECT_EQ(warm.wrong(), QString());
    ASSERT_TRUE(session().field()->survey.work->conditions.soil_temperature_c.value);
    EXPECT_NEAR(*session().field()->survey.work->conditions.soil_temperature_c.value, 10.0, 1e-9) << "50 F";
    page().conditions().paste_water(QStringLiteral("2025-04-10\t0.2 in\t0\nno day\t1"));
    const auto days = session().field()->survey.work->conditions.water_days.value;
    ASSERT_TRUE(days);
    ASSERT_EQ(days->size(), 1U);
    EXPECT_NEAR(*days->front().rain_mm, 5.08, 1e-9) << "0.2 in of 25.4 mm";
    EXPECT_FALSE(page().conditions().water_text().isEmpty());
}

TEST_F(MethodStep, AFumigantIsStoppedByAHouseWithThePartOfTheSystemDrawn) {
    open_sample();
    build_a_house();
    press(Qt::Key_4);
    page().methods().choose("fumigant");
    ASSERT_TRUE(judged());
    page().show_part(MethodPart::against);
    const CautionGroup* house = group("building");
    ASSERT_NE(house, nullptr);
    EXPECT_TRUE(house->holds);
    EXPECT_EQ(house->weight, CautionWeight::stop);
    ASSERT_FALSE(house->where.empty());
    ASSERT_TRUE(wait_for([&] { return window_.map().settled(); }));
    const auto inked = [&] {
        const QImage picture = window_.map().grab().toImage();
        const QRgb ink = window_.choices().style().stop_ink.rgb();
        int count = 0;
        for (int y = 0; y < picture.height(); ++y)
            for (int x = 0; x < picture.width(); ++x) count += (picture.pixel(x, y) & RGB_MASK) == (ink & RGB_MASK) ? 1 : 0;
        return count;
    };
    const int before = inked();
    page().against().show_on_map("building");
    ASSERT_TRUE(window_.map().show_choices().reasons);
    EXPECT_TRUE(window_.choices().set());
    ASSERT_TRUE(wait_for([&] { return window_.map().settled() && inked() > before + 100; }))
        << "hatched in the colour of a stop";
    EXPECT_TRUE(page().against().sign("building", QStringLiteral("Ana Field"), QStringLiteral("wanted")))
        << "a stop is not signed";
    EXPECT_TRUE(session().field()->survey.work->signed_off.empty());
    EXPECT_FALSE(window_.open_hand_out());
    EXPECT_TRUE(window_.slip().notice().contains(QString::fromStdString(find_caution("building")->sentence)));
    EXPECT_EQ(window_.choices().step(), Step::method);
    EXPECT_EQ(page().part(), MethodPart::against);
}

TEST_F(MethodStep, AHoldBackIsSignedWithNameAndReasonAndUndone) {
    open_sample();
    page().methods().choose("paired-traps");
    answer(Question::trap_law_read, "no");
    ASSERT_TRUE(judged());
    const CautionGroup* law = group("kill-trap-law");
    ASSERT_NE(law, nullptr);
    EXPECT_TRUE(law->holds);
    EXPECT_TRUE(law->open());
    QString question;
    window_.set_ask([&](const QString& asked, const QStringList&) {
        question = asked;
        return 0;
    });
    EXPECT_FALSE(window_.open_hand_out());
    EXPECT_TRUE(question.contains(QString::fromStdString(find_caution("kill-trap-law")->sentence)));
    EXPECT_EQ(page().part(), MethodPart::against);
    EXPECT_TRUE(page().against().sign("kill-trap-law", QString(), QStringLiteral("read on the phone"))) << "without a name";
    EXPECT_TRUE(session().field()->survey.work->signed_off.empty());
    EXPECT_FALSE(page().against().sign("kill-trap-law", QStringLiteral("Ana Field"), QStringLiteral("read on the phone")));
    ASSERT_TRUE(judged());
    ASSERT_EQ(session().field()->survey.work->signed_off.size(), 1U);
    EXPECT_EQ(session().field()->survey.work->signed_off.front().name, "Ana Field");
    EXPECT_FALSE(group("kill-trap-law")->open());
    session().history().undo();
    ASSERT_TRUE(judged());
    EXPECT_TRUE(group("kill-trap-law")->open());
    session().history().redo();
    ASSERT_TRUE(judged());
    page().against().take_signature_back("kill-trap-law");
    ASSERT_TRUE(judged());
    EXPECT_TRUE(group("kill-trap-law")->open());
}

TEST_F(MethodStep, AHoldBackIsSignedForOneSetOrOneAnimalAndStaysOpenForTheOthers) {
    open_sample();
    page().methods().choose("paired-traps");
    answer(Question::trap_law_read, "no");
    ASSERT_TRUE(judged());
    const CautionGroup* law = group("kill-trap-law");
    ASSERT_NE(law, nullptr);
    const std::size_t all = law->sets.size();
    ASSERT_GT(all, 3U);
    const auto plan = session().plan();
    const auto site_of = [&](std::size_t set) -> const ProbeSite& { return plan->probes.at(plan->sets.at(set).probe); };
    window_.choices().pick_set(std::nullopt);
    AgainstView& against = page().against();
    EXPECT_TRUE(against.sign("kill-trap-law", QStringLiteral("Ana Field"), QStringLiteral("asked"), SignedFor::set))
        << "none at hand";
    EXPECT_TRUE(session().field()->survey.work->signed_off.empty());
    const std::size_t one = law->sets[1];
    window_.choices().pick_set(site_of(one).key);
    EXPECT_FALSE(against.sign("kill-trap-law", QStringLiteral("Ana Field"), QStringLiteral("asked"), SignedFor::set));
    ASSERT_TRUE(judged());
    ASSERT_EQ(session().field()->survey.work->signed_off.size(), 1U);
    EXPECT_EQ(session().field()->survey.work->signed_off.front().probe, site_of(one).key);
    EXPECT_EQ(group("kill-trap-law")->signed_sets, 1U);
    EXPECT_TRUE(group("kill-trap-law")->open());
    ASSERT_EQ(against.signatures("kill-trap-law").size(), 1);
    EXPECT_TRUE(against.signatures("kill-trap-law").front().contains(QStringLiteral("set %1").arg(one + 1)));
    work().set_clock([then = work().now()] { return then + hours(1); });
    EXPECT_FALSE(against.sign("kill-trap-law", QStringLiteral("Ana Field"), QStringLiteral("all of it"), SignedFor::animal));
    ASSERT_TRUE(judged());
    const auto of_animal = std::count_if(group("kill-trap-law")->sets.begin(), group("kill-trap-law")->sets.end(),
                                         [&](std::size_t set) { return site_of(set).system == site_of(one).system; });
    EXPECT_EQ(group("kill-trap-law")->signed_sets, static_cast<std::size_t>(of_animal));
    EXPECT_TRUE(group("kill-trap-law")->open());
    session().history().undo();
    ASSERT_TRUE(judged());
    EXPECT_EQ(group("kill-trap-law")->signed_sets, 1U);
    against.take_signature_back("kill-trap-law");
    EXPECT_TRUE(session().field()->survey.work->signed_off.empty());
}

TEST_F(MethodStep, StepsThroughAChoiceByKeysAreOneActWhenItIsLeft) {
    open_sample();
    press(Qt::Key_4);
    page().show_part(MethodPart::conditions);
    PageChoice& moisture = *page().conditions().row(Question::soil_moisture)->answer().choice();
    PageChoice& frost = *page().conditions().row(Question::frost)->answer().choice();
    const auto told = [&] { return session().field()->survey.work->conditions.soil_moisture.value; };
    moisture.setFocus();
    for (int k = 0; k < 3; ++k) QTest::keyClick(&moisture, Qt::Key_Down);
    EXPECT_EQ(session().history().count(), 0);
    EXPECT_EQ(moisture.currentText(), QStringLiteral("wet"));
    page().conditions().row(Question::crop)->answer().enter(QStringLiteral("alfalfa"));
    EXPECT_EQ(moisture.currentText(), QStringLiteral("wet")) << "not taken from the hand by another answer";
    session().history().undo();
    frost.setFocus();
    EXPECT_EQ(session().history().count(), 1);
    EXPECT_EQ(told(), SoilMoisture::wet);
    // Esc gives the steps up, Enter settles them, back to where they began is nothing
    moisture.setFocus();
    QTest::keyClick(&moisture, Qt::Key_Up);
    QTest::keyClick(&moisture, Qt::Key_Escape);
    EXPECT_EQ(moisture.currentText(), QStringLiteral("wet"));
    QTest::keyClick(&moisture, Qt::Key_Up);
    QTest::keyClick(&moisture, Qt::Key_Down);
    QTest::keyClick(&moisture, Qt::Key_Return);
    EXPECT_EQ(session().history().count(), 1);
    QTest::keyClick(&moisture, Qt::Key_Up);
    QTest::keyClick(&moisture, Qt::Key_Return);
    EXPECT_EQ(session().history().count(), 2);
    EXPECT_EQ(told(), SoilMoisture::damp);
    // another key of the window settles them first
    QTest::keyClick(&moisture, Qt::Key_Up);
    QTest::keyClick(&moisture, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(told(), SoilMoisture::damp) << "settled, and undone";
    EXPECT_EQ(session().history().count(), 3);
}

TEST_F(MethodStep, AnOldAnswerOnTheLicenceOrTheWaterIsStillSo) {
    open_sample();
    UtcTime now = UtcTime(hours(24 * 20000));
    work().set_clock([&] { return now; });
    answer(Question::licence, "private-applicator");
    page().conditions().paste_water(QStringLiteral("2024-10-04\t0.2 in\t0"));
    QuestionRow* licence = page().conditions().row(Question::licence);
    EXPECT_FALSE(licence->age().contains(QStringLiteral("is it still so?")));
    EXPECT_FALSE(page().conditions().water_text().contains(QStringLiteral("is it still so?")));
    now += hours(24 * 400);
    answer(Question::frost, "no");
    EXPECT_TRUE(licence->age().contains(QStringLiteral("is it still so?")));
    EXPECT_TRUE(page().conditions().water_text().contains(QStringLiteral("is it still so?")));
    licence->still_so();
    page().conditions().water_still_so();
    EXPECT_EQ(session().field()->survey.work->licence.at, now);
    EXPECT_EQ(session().field()->survey.work->licence.value->kind, LicenceKind::private_applicator);
    EXPECT_EQ(session().field()->survey.work->conditions.water_days.at, now);
    EXPECT_FALSE(licence->age().contains(QStringLiteral("is it still so?")));
    EXPECT_FALSE(page().conditions().water_text().contains(QStringLiteral("is it still so?")));
}

TEST(ReachCurveTicks, are_round_and_no_more_than_wanted) {
    EXPECT_EQ(tick_step(9.2, 4), 5.0);
    EXPECT_EQ(tick_step(3.0, 4), 1.0);
    EXPECT_EQ(tick_step(44.0, 5), 10.0);
    EXPECT_EQ(tick_step(1200.0, 5), 500.0);
    EXPECT_EQ(tick_step(0.0, 5), 1.0);
}

TEST_F(MethodStep, OneSetIsWorkedOtherwiseAndItsSlipSaysWhatSpeaksAgainstThat) {
    open_sample();
    page().methods().choose("paired-traps");
    ASSERT_TRUE(judged());
    press(Qt::Key_5);
    auto* choice = window_.slip().sets().findChild<QComboBox*>(QStringLiteral("method_of_set"));
    ASSERT_NE(choice, nullptr);
    const int fumigant = choice->findData(QStringLiteral("fumigant"));
    ASSERT_GT(fumigant, 0);
    choice->setCurrentIndex(fumigant);
    Q_EMIT choice->activated(fumigant);
    ASSERT_TRUE(judged());
    const auto& chosen = session().field()->survey.work->set_methods;
    ASSERT_EQ(chosen.size(), 1U);
    EXPECT_EQ(chosen.front().method, "fumigant");
    EXPECT_EQ(chosen.front().probe, *window_.choices().set());
    const auto set = set_at(*session().plan(), *window_.choices().set());
    ASSERT_TRUE(set);
    EXPECT_EQ(work().judged_set(*set)->method, "fumigant");
    choice->setCurrentIndex(0);
    Q_EMIT choice->activated(0);
    EXPECT_TRUE(session().field()->survey.work->set_methods.empty());
}

TEST_F(MethodStep, TheLabelIsTypedInUnitsAndComparedAndABudgetIsSpent) {
    open_sample();
    LabelView& label = page().label();
    page().methods().choose("bait-probe-hole");
    label.row("label.ingredient")->enter(QStringLiteral("zinc-phosphide"));
    label.row("label.placement-most")->enter(QStringLiteral("1.5"));
    label.row("label.building-distance")->enter(QStringLiteral("100"));
    label.row("dose")->enter(QStringLiteral("2"));
    label.enter_sites(QStringLiteral("alfalfa; pasture"));
    const LabelLimits& typed = session().field()->survey.work->label;
    EXPECT_EQ(typed.ingredient, Ingredient::zinc_phosphide);
    EXPECT_EQ(typed.placement_most, (Quantity{1.5, AmountUnit::teaspoons}));
    EXPECT_NEAR(typed.building_distance->value(), 30.48, 1e-9) << "100 ft";
    EXPECT_EQ(typed.sites, (std::vector<std::string>{"alfalfa", "pasture"}));
    ASSERT_TRUE(judged());
    const auto& checks = work().judged()->label;
    EXPECT_TRUE(std::any_of(checks.begin(), checks.end(), [](const LabelCheck& check) {
        return check.id == "placement-most" && check.outcome == Compared::exceeded;
    }));
    EXPECT_TRUE(label.compared().contains(QStringLiteral("2 teaspoons")));
    page().load().enter_budget(BudgetUnit::traps, QStringLiteral("6"));
    ASSERT_TRUE(judged());
    ASSERT_TRUE(work().judged()->spent);
    EXPECT_LE(work().judged()->spent->cost, 6.0);
    const auto sets = work().judged()->spent->sets.size();
    page().load().keep_spent();
    EXPECT_EQ(session().field()->survey.decisions.size(), sets);
}

TEST_F(MethodStep, AVariantOfOnesOwnIsWrittenUsedAndNotTakenAwayWhileSetsAreWorkedByIt) {
    open_sample();
    MethodsView& methods = page().methods();
    press(Qt::Key_4);
    methods.make_own("trap-in-lateral");
    ASSERT_EQ(session().field()->survey.work->own_methods.size(), 1U);
    methods.own().name().setText(QStringLiteral("two short traps"));
    methods.own().minutes().setText(QStringLiteral("12"));
    methods.own().keep();
    EXPECT_EQ(session().field()->survey.work->own_methods.front().name, "two short traps");
    EXPECT_EQ(session().field()->survey.work->own_methods.front().minutes.mean, 12.0);
    methods.own().steps().clear();
    methods.own().keep();
    EXPECT_FALSE(methods.own().wrong().isEmpty()) << "no step";
    EXPECT_FALSE(session().field()->survey.work->own_methods.front().steps.empty());
    methods.choose("own-1");
    methods.own().take_away();
    EXPECT_EQ(session().field()->survey.work->own_methods.size(), 1U);
    methods.choose("paired-traps");
    methods.own().take_away();
    EXPECT_TRUE(session().field()->survey.work->own_methods.empty());
}

}  // namespace
}  // namespace plugside
