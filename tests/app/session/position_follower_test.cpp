#include "app/session/position_follower.h"

#include <QDateTime>
#include <cmath>
#include <fstream>

#include "app/canvas/map_layers.h"
#include "app/stages/nearest_to_do.h"
#include "app/stages/standing_view.h"
#include "app/window/main_window.h"
#include "geo/read/nmea.h"
#include "geo/read/numbers.h"
#include "tests/app/application.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace std::chrono;
using testing_support::TemporaryFolder;

UtcTime at(const char* time) { return *parse_utc_time(time); }

PositionReading reading_of(std::optional<UtcTime> time, std::uint64_t ends_at) {
    PositionReading reading;
    reading.last = ReceiverPosition{{-104.9, 41.0}, time, 4.0, true, ends_at};
    return reading;
}

TEST(PositionAges, AnOldPlaceOfAFileThatIsStillWrittenStaysOld) {
    const auto first =
        position_followed(reading_of(std::nullopt, 100), at("2026-03-01T12:00:00Z"), at("2026-03-01T12:00:01Z"), {});
    ASSERT_TRUE(first);
    EXPECT_EQ(age_of(*first, at("2026-03-01T12:00:05Z")), PositionAge::now);
    // something else was written behind it a minute later
    const auto later =
        position_followed(reading_of(std::nullopt, 100), at("2026-03-01T12:01:30Z"), at("2026-03-01T12:01:30Z"), first);
    EXPECT_EQ(later->as_of, at("2026-03-01T12:00:00Z"));
    EXPECT_EQ(age_of(*later, at("2026-03-01T12:01:30Z")), PositionAge::past);
}

TEST(PositionAges, AReplayedFileTellsItsOwnTime) {
    const auto replayed = position_followed(reading_of(at("2025-04-10T09:00:00Z"), 100), at("2026-03-01T12:00:00Z"),
                                            at("2026-03-01T12:00:01Z"), {});
    EXPECT_EQ(age_of(*replayed, at("2026-03-01T12:00:01Z")), PositionAge::past);
    EXPECT_FALSE(replayed->clock_ahead);
}

TEST(PositionAges, AClockThatIsAheadDoesNotMakeAPlaceNewer) {
    const auto ahead = position_followed(reading_of(at("2026-03-01T12:10:00Z"), 100), at("2026-03-01T12:00:00Z"),
                                         at("2026-03-01T12:00:01Z"), {});
    EXPECT_TRUE(ahead->clock_ahead);
    EXPECT_EQ(ahead->as_of, at("2026-03-01T12:00:00Z"));
    EXPECT_EQ(age_of(*ahead, at("2026-03-01T12:00:30Z")), PositionAge::old);
    EXPECT_EQ(age_of(*ahead, at("2026-03-01T12:02:00Z")), PositionAge::past);
}

TEST(PositionAges, AFileThatIsBegunAnewLeavesThePlaceAsWhereOneWas) {
    const auto first =
        position_followed(reading_of(std::nullopt, 100), at("2026-03-01T12:00:00Z"), at("2026-03-01T12:00:00Z"), {});
    const auto cut = position_followed({}, at("2026-03-01T12:00:01Z"), at("2026-03-01T12:00:01Z"), first);
    ASSERT_TRUE(cut);
    EXPECT_EQ(age_of(*cut, at("2026-03-01T12:00:02Z")), PositionAge::past);
}

TEST(PositionAges, AgesAreToldInTheUnitThatFits) {
    EXPECT_EQ(age_words(seconds(3)), QStringLiteral("3 s"));
    EXPECT_EQ(age_words(seconds(119)), QStringLiteral("119 s"));
    EXPECT_EQ(age_words(minutes(5)), QStringLiteral("5 min"));
    EXPECT_EQ(age_words(hours(5)), QStringLiteral("5 h"));
    EXPECT_EQ(age_words(hours(24 * 5)), QStringLiteral("5 days"));
    EXPECT_EQ(age_words(seconds(-5)), QStringLiteral("0 s"));
}

class FollowingInTheWindow : public OnScreen {
protected:
    void SetUp() override {
        window_.open_files({std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow" / "walk.gpx"});
        ASSERT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
        window_.resize(1280, 800);
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
        window_.choices().go_to(Step::sets);
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 60000); }
    StandingView& view() { return *window_.findChild<StandingView*>(); }
    LocalPoint set_place(std::size_t set) {
        const Plan& plan = *window_.session().plan();
        return ladder_middle(window_.session().field()->survey, plan.probes.at(plan.sets.at(set).probe));
    }
    std::string sentence_at(LocalPoint place, UtcTime time, const char* quality = "1") {
        const GeographicPoint where = window_.session().field()->frame.to_geographic(place);
        const auto packed = [](double degrees) {
            return std::floor(degrees) * 100.0 + (degrees - std::floor(degrees)) * 60.0;
        };
        const QDateTime moment = QDateTime::fromMSecsSinceEpoch(time.time_since_epoch().count(), Qt::UTC);
        const QString between = QStringLiteral("GPGGA,%1,%2,N,%3,W,%4,08,0.8,1800,M,-20,M,,")
                                    .arg(moment.toString(QStringLiteral("HHmmss.zzz")))
                                    .arg(packed(where.latitude_degrees), 0, 'f', 6)
                                    .arg(packed(-where.longitude_degrees), 0, 'f', 6)
                                    .arg(QString::fromLatin1(quality));
        return QStringLiteral("$%1*%2\r\n")
            .arg(between)
            .arg(nmea_sum(between.toStdString()), 2, 16, QLatin1Char('0'))
            .toStdString();
    }
    void append(const std::string& text, std::ios::openmode mode = std::ios::app) {
        std::ofstream(file_, std::ios::binary | mode) << text;
    }
    bool stands_at(LocalPoint place) {
        return wait_for([&] { return window_.map().standing() && distance_m(window_.map().standing()->at, place) < 0.02; });
    }

    TemporaryFolder folder_;
    std::filesystem::path file_ = folder_ / "now.nmea";
    MainWindow window_;
};

TEST_F(FollowingInTheWindow, TheNearestUndecidedSetIsToldFromWhereOneStands) {
    const LocalPoint stand{set_place(3).east_m - 30.0, set_place(3).north_m};
    append(sentence_at(stand, utc_now()));
    window_.positions().follow(file_);
    ASSERT_TRUE(stands_at(stand));
    EXPECT_EQ(window_.map().standing()->age, Standing::Age::now);
    ASSERT_TRUE(window_.map().standing()->radius);
    const auto nearest = nearest_to_do(window_.session(), Step::sets, stand);
    ASSERT_TRUE(nearest && nearest->waits);
    for (std::size_t i = 0; i < window_.session().plan()->sets.size(); ++i)
        EXPECT_GE(distance_m(set_place(i), stand), distance_m(nearest->at, stand) - 1e-9);
    EXPECT_TRUE(view().way().contains(nearest->name)) << view().way().toStdString();
    EXPECT_TRUE(view().way().contains(QStringLiteral("towards")));
    EXPECT_TRUE(view().words().contains(QStringLiteral("19 times in 20")));
}

TEST_F(FollowingInTheWindow, TheMapGoesAlongWhereItIsKeptInTheMiddle) {
    append(sentence_at(set_place(0), utc_now()));
    window_.positions().follow(file_);
    ASSERT_TRUE(stands_at(set_place(0)));
    QTest::keyClick(&window_.map(), Qt::Key_G, Qt::ControlModifier | Qt::ShiftModifier);
    EXPECT_TRUE(view().in_the_middle().isChecked());
    const auto off_middle = [&](LocalPoint place) {
        const QPointF off = window_.map().view().to_screen(place) - window_.map().view().screen().center();
        return std::hypot(off.x(), off.y());
    };
    EXPECT_LT(off_middle(set_place(0)), 1.0);
    append(sentence_at(set_place(5), utc_now()));
    ASSERT_TRUE(stands_at(set_place(5)));
    EXPECT_LT(off_middle(set_place(5)), 1.0);
    EXPECT_TRUE(view().way().contains(QStringLiteral("within the receiver's error"))) << view().way().toStdString();
    QTest::keyClick(&window_.map(), Qt::Key_G, Qt::ControlModifier);
    EXPECT_FALSE(window_.map().standing());
    EXPECT_FALSE(view().isVisible());
}

TEST_F(FollowingInTheWindow, CutOffReplacedHalfAndHostileFilesAreSurvived) {
    const LocalPoint place = set_place(0);
    const std::string whole = sentence_at(place, utc_now());
    append(whole.substr(0, 30));
    window_.positions().follow(file_);
    ASSERT_TRUE(wait_for([&] { return window_.positions().looked(); }));
    EXPECT_FALSE(window_.map().standing());
    append(whole.substr(30));
    ASSERT_TRUE(stands_at(place));
    append("", std::ios::trunc);
    ASSERT_TRUE(wait_for([&] { return window_.map().standing()->age == Standing::Age::past; }));
    EXPECT_TRUE(view().way().isEmpty()) << "no direction from where one was";
    std::filesystem::remove(file_);
    ASSERT_TRUE(wait_for([&] { return !window_.positions().remarks().isEmpty(); }));
    append(std::string(5000, '\xFF') + "\n$GPGGA,\n" + whole.substr(0, 20) + sentence_at(set_place(1), utc_now()));
    ASSERT_TRUE(stands_at(set_place(1)));
    EXPECT_EQ(window_.map().standing()->age, Standing::Age::now);
    EXPECT_FALSE(window_.positions().remarks().isEmpty());
    append(sentence_at(set_place(1), utc_now(), "0"));
    ASSERT_TRUE(wait_for([&] { return window_.map().standing()->age == Standing::Age::past; }));
    EXPECT_TRUE(view().words().contains(QStringLiteral("no place now"))) << view().words().toStdString();
}

TEST_F(FollowingInTheWindow, APlaceOnTheOtherSideOfTheEarthIsSaidAndNotDrawn) {
    append("lat,lon\n-41.0,75.1\n");
    window_.positions().follow(file_);
    ASSERT_TRUE(wait_for([&] { return view().words().contains(QStringLiteral("far from this field")); }))
        << view().words().toStdString();
    EXPECT_FALSE(window_.map().standing());
    EXPECT_TRUE(view().way().isEmpty());
}

}  // namespace
}  // namespace plugside
