// The walking order in the Sets step: from a place set on the map, shared among people, kept in the project, handed out.
#include <QFile>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <algorithm>

#include "app/window/main_window.h"
#include "tests/app/application.h"

namespace plugside {
namespace {

class WalkingOrder : public OnScreen {
protected:
    void open_sample() {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        window_.open_files({sample / "walk.gpx", sample / "ground.gpkg"});
        ASSERT_TRUE(wait_for([&] { return session().plan_is_current(); }));
        window_.resize(1366, 860);
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
    }
    void open_order() {
        press(Qt::Key_5);
        press(Qt::Key_R);
        ASSERT_EQ(window_.slip().sets().panel(), SetsPage::Panel::tours);
        ASSERT_TRUE(worked_out());
    }
    bool worked_out() {
        return wait_for([&] { return account().holds() && !account().working(); });
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
    }
    // The choice whose words begin so.
    static void choose(PageChoice& box, const QString& words) {
        const int at = box.findText(words, Qt::MatchStartsWith);
        ASSERT_GE(at, 0) << words.toStdString();
        box.setCurrentIndex(at);
        Q_EMIT box.settled(at);
    }
    // At a corner of the marks.
    void park() {
        LocalPoint corner{1e9, 1e9};
        for (const Mound& mound : session().field()->survey.mounds)
            corner = {std::min(corner.east_m, mound.plug.east_m), std::min(corner.north_m, mound.plug.north_m)};
        view().set_place(ToursView::End::start, corner);
    }
    const Tours& tours() { return *account().tours(); }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 240000); }
    FieldSession& session() { return window_.session(); }
    TourAccount& account() { return window_.tours(); }
    ToursView& view() { return window_.slip().sets().tours(); }

    MainWindow window_;
};

TEST_F(WalkingOrder, is_the_plans_own_until_something_is_wished) {
    open_sample();
    EXPECT_FALSE(account().tours()) << "nobody looks at it";
    open_order();
    EXPECT_TRUE(tours().of_the_plan);
    EXPECT_EQ(account().to_hand_out(), nullptr);
    EXPECT_EQ(view().stops().model()->rowCount(), static_cast<int>(session().plan()->sets.size()));
    EXPECT_TRUE(window_.map().show_choices().tours);
    press(Qt::Key_Escape);
    EXPECT_FALSE(window_.map().show_choices().tours);
    EXPECT_EQ(session().history().count(), 0);
}

TEST_F(WalkingOrder, begins_at_a_place_set_on_the_map_by_mouse_or_by_keys) {
    open_sample();
    open_order();
    choose(view().from(), QStringLiteral("set it on the map"));
    EXPECT_FALSE(window_.slip().notice().isEmpty());
    const QPoint at(window_.map().width() / 4, window_.map().height() / 4);
    QTest::mouseClick(&window_.map(), Qt::LeftButton, {}, at);
    ASSERT_TRUE(worked_out());
    const LocalPoint wanted = window_.map().view().to_local(at);
    ASSERT_TRUE(account().start());
    EXPECT_LT(distance_m(*account().start(), wanted), 0.01);
    ASSERT_FALSE(tours().tours.empty());
    EXPECT_LT(distance_m(tours().tours.front().way.front().vertices.front(), wanted), 0.01);
    EXPECT_EQ(session().history().count(), 1);
    choose(view().to(), QStringLiteral("back to where it begins"));
    ASSERT_TRUE(worked_out());
    EXPECT_LT(distance_m(tours().tours.front().way.back().vertices.back(), wanted), 0.01);
    // Esc gives it up, Space takes the middle
    choose(view().from(), QStringLiteral("set it on the map"));
    press(Qt::Key_Escape);
    EXPECT_EQ(session().history().count(), 2);
    EXPECT_EQ(window_.slip().sets().panel(), SetsPage::Panel::tours);
    choose(view().from(), QStringLiteral("set it on the map"));
    press(Qt::Key_Space);
    EXPECT_EQ(session().history().count(), 3);
    EXPECT_LT(distance_m(*account().start(), window_.map().view().to_local(window_.map().view().screen().center())), 0.01);
    session().history().undo();
    EXPECT_LT(distance_m(*account().start(), wanted), 0.01);
    session().history().undo();
    session().history().undo();
    EXPECT_FALSE(account().start());
    ASSERT_TRUE(worked_out());
    EXPECT_TRUE(tours().of_the_plan);
}

TEST_F(WalkingOrder, is_shared_among_people_and_days_and_what_one_carries) {
    open_sample();
    open_order();
    park();
    view().people().enter(QStringLiteral("0"));
    EXPECT_FALSE(view().people().wrong().isEmpty());
    view().people().enter(QStringLiteral("2"));
    EXPECT_EQ(view().people().wrong(), QString());
    view().minutes_a_day().enter(QStringLiteral("60"));
    view().carry().enter(QStringLiteral("5"));
    ASSERT_TRUE(worked_out());
    ASSERT_GE(tours().tours.size(), 2U);
    EXPECT_EQ(view().tours().count(), static_cast<int>(tours().tours.size()) + 1);
    for (const Tour& tour : tours().tours) EXPECT_LE(tour.minutes, 60.0 + 1e-6);
    EXPECT_TRUE(std::any_of(tours().tours.begin(), tours().tours.end(),
                            [](const Tour& tour) { return !tour.loads_before.empty(); }));
    view().tours().setCurrentRow(2);
    EXPECT_EQ(account().picked(), 2);
    EXPECT_EQ(view().stops().model()->rowCount(), static_cast<int>(tours().tours[1].sets.size()));
    EXPECT_EQ(window_.map().show_choices().tours->picked, 2);
    // a stop chosen is the set at hand
    const QModelIndex third = view().stops().model()->index(2, 0);
    Q_EMIT view().stops().activated(third);
    const auto plan = session().plan();
    EXPECT_EQ(window_.choices().set(), plan->probes.at(plan->sets.at(tours().tours[1].sets[2]).probe).key);
    view().minutes_a_day().enter(QStringLiteral("1"));
    ASSERT_TRUE(worked_out());
    EXPECT_FALSE(view().left_out().isEmpty());
}

TEST_F(WalkingOrder, is_usable_at_once_and_stopped_where_it_is) {
    open_sample();
    open_order();
    bool used = false;
    QObject::connect(&account(), &TourAccount::changed, &window_, [&] {
        if (!account().working() || !account().holds()) return;
        used = true;
        account().stop();
    });
    park();
    view().people().enter(QStringLiteral("2"));
    ASSERT_TRUE(worked_out());
    EXPECT_TRUE(used) << "the first before the last";
    EXPECT_TRUE(account().stopped());
    ASSERT_TRUE(account().first_length());
    std::size_t sets = tours().cut_off.size();
    for (const Tour& tour : tours().tours) sets += tour.sets.size();
    EXPECT_EQ(sets, session().plan()->sets.size()) << "whole all the same";
    account().disconnect(&window_);
    EXPECT_EQ(view().stop_key().text(), QStringLiteral("work out anew"));
    QTest::mouseClick(&view().stop_key(), Qt::LeftButton);
    ASSERT_TRUE(worked_out());
    EXPECT_FALSE(account().stopped());
}

TEST_F(WalkingOrder, that_is_kept_stays_when_a_set_is_dropped_and_comes_back_with_undo) {
    open_sample();
    open_order();
    park();
    view().people().enter(QStringLiteral("2"));
    ASSERT_TRUE(worked_out());
    QTest::mouseClick(&view().keep_key(), Qt::LeftButton);
    ASSERT_TRUE(worked_out());
    ASSERT_TRUE(account().kept());
    const std::vector<KeptTour> before = kept_form(*account().plan(), tours());
    EXPECT_EQ(before, account().wishes().kept);
    const ProbeKey gone = before[0].sets[before[0].sets.size() / 2];
    session().decide_on(gone, SetChoice::dropped);
    ASSERT_TRUE(wait_for([&] { return session().plan_is_current(); }));
    ASSERT_TRUE(worked_out());
    std::vector<KeptTour> after = kept_form(*account().plan(), tours());
    ASSERT_EQ(after.size(), before.size());
    for (std::size_t t = 0; t < before.size(); ++t) {
        std::vector<ProbeKey> rest = before[t].sets;
        std::erase(rest, gone);
        std::erase_if(after[t].sets, [&](const ProbeKey& key) {
            return std::none_of(before.begin(), before.end(), [&](const KeptTour& tour) {
                return std::find(tour.sets.begin(), tour.sets.end(), key) != tour.sets.end();
            });
        });
        EXPECT_EQ(after[t].sets, rest);
    }
    session().history().undo();
    ASSERT_TRUE(worked_out());
    EXPECT_EQ(kept_form(*account().plan(), tours()), before);
    view().people().enter(QStringLiteral("3"));
    EXPECT_FALSE(account().kept()) << "another wish lets go of it";
}

TEST_F(WalkingOrder, is_what_is_handed_out) {
    open_sample();
    Ground ground = session().field()->survey.ground;
    ground.gates.push_back({"by the barn", ground.boundary.parts.front().outer.vertices.front(), Metres::of(3.0)});
    session().edit(SurveyPart(ground), QStringLiteral("gate"));
    ASSERT_TRUE(wait_for([&] { return session().plan_is_current(); }));
    open_order();
    choose(view().from(), QStringLiteral("gate: by the barn"));
    choose(view().to(), QStringLiteral("back to where it begins"));
    ASSERT_TRUE(worked_out());
    const auto order = account().to_hand_out();
    ASSERT_TRUE(order);
    QTemporaryDir folder;
    FieldSession::HandOut where;
    where.files = {{HandOutFormat::gpx_waypoints, folder.filePath(QStringLiteral("sets.gpx")).toStdString()}};
    where.tours = order;
    QSignalSpy done(&session(), &FieldSession::handed_out);
    session().hand_out(where);
    ASSERT_TRUE(wait_for([&] { return done.count() == 1; }));
    QFile file(folder.filePath(QStringLiteral("sets.gpx")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    const QString text = QString::fromUtf8(file.readAll());
    const Plan ordered = in_order_of(*session().plan(), *order);
    qsizetype before = 0;
    for (int visit = 1; visit <= 3; ++visit) {
        const auto set = std::find_if(ordered.sets.begin(), ordered.sets.end(),
                                      [&](const SetPoint& one) { return one.visit_order == visit; });
        const QString name = QStringLiteral("S%1 %2").arg(visit, 2, 10, QLatin1Char('0'))
                                 .arg(QString::fromStdString(ordered.systems.at(ordered.probes.at(set->probe).system).letter));
        const qsizetype at = text.indexOf(name);
        EXPECT_GT(at, before) << name.toStdString();
        before = at;
    }
}

}  // namespace
}  // namespace plugside
