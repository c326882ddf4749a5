// A picture without a position in the window: placed by pairs with mouse and keys, told what each pair is off by, taken back, kept.
#include <QDropEvent>
#include <QImage>
#include <QMimeData>
#include <QPainter>
#include <QUrl>

#include "app/placing/typed_place.h"
#include "app/stages/imagery_list.h"
#include "app/window/main_window.h"
#include "core/units/display.h"
#include "tests/app/application.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using testing_support::TemporaryFolder;

// Half a metre a pixel, turned by 30 degrees: where the made-up plat lies.
const PicturePlacement truth{{-120.0, 60.0}, {0.5 * 0.8660254, -0.25}, {-0.25, -0.5 * 0.8660254}};

class Placing : public OnScreen {
protected:
    void SetUp() override {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        window_.open_files({sample / "walk.gpx"});
        ASSERT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
        window_.resize(1280, 800);
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
        QImage plat(400, 300, QImage::Format_RGB32);
        plat.fill(Qt::white);
        QPainter painter(&plat);
        for (int i = 0; i < 8; ++i) painter.drawLine(50 * i, 0, 50 * i, 299);
        painter.end();
        ASSERT_TRUE(plat.save(QString::fromStdString(plat_.string())));
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }
    void drop(const std::filesystem::path& file) {
        QMimeData data;
        data.setUrls({QUrl::fromLocalFile(QString::fromStdString(file.string()))});
        QDragEnterEvent enter({600, 300}, Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&window_, &enter);
        QDropEvent event(QPointF(600.0, 300.0), Qt::CopyAction, &data, Qt::LeftButton, Qt::NoModifier);
        QApplication::sendEvent(&window_, &event);
    }
    void drop_plat() {
        drop(plat_);
        ASSERT_TRUE(wait_for([&] { return window_.placing().active() && window_.picture().is_open(); }));
        ASSERT_TRUE(wait_for([&] { return window_.picture().settled(); }));
        QTest::qWait(50);  // the layout
        window_.map().fit();
    }
    static void press(QWidget& on, Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(&on, key, modifiers);
    }
    void click(QWidget& on, QPointF at) { QTest::mouseClick(&on, Qt::LeftButton, {}, at.toPoint(), 600); }
    // As near as whole pixels of the screen let a hand come.
    void pair(PicturePixel spot) {
        click(window_.picture(), window_.picture().on_screen(spot));
        const LocalPoint to = truth.to_ground(*window_.placing().waiting_spot());
        click(window_.map(), window_.map().view().to_screen(to));
    }
    const std::vector<PlacementPair>& pairs() { return window_.placing().pairs(); }

    TemporaryFolder folder_;
    std::filesystem::path plat_ = folder_ / "plat.jpg";
    MainWindow window_;
};

TEST_F(Placing, ADroppedPictureWithoutPositionIsPlacedByFourPairsAndLiesUnderTheMap) {
    drop_plat();
    EXPECT_TRUE(window_.slip().isHidden());
    ASSERT_EQ(window_.imagery().unplaced().size(), 1U);
    for (const PicturePixel spot : {PicturePixel{20, 20}, PicturePixel{380, 30}, PicturePixel{360, 280}}) pair(spot);
    ASSERT_EQ(pairs().size(), 3U);
    ASSERT_TRUE(wait_for([&] { return window_.imagery().pictures().size() == 1; }));
    EXPECT_FALSE(window_.placing().fit()->standard_error_m);
    EXPECT_TRUE(window_.placing_panel().account().contains(QStringLiteral("check nothing")));
    pair({30, 270});
    const auto& fit = window_.placing().fit();
    ASSERT_TRUE(fit);
    ASSERT_TRUE(fit->standard_error_m);
    const double pixel_m = 1.0 / window_.map().view().pixels_per_metre();
    EXPECT_LT(*fit->standard_error_m, pixel_m);
    for (const PicturePixel corner :
         {PicturePixel{0, 0}, PicturePixel{400, 0}, PicturePixel{400, 300}, PicturePixel{0, 300}})
        EXPECT_LT(distance_m(fit->placement.to_ground(corner), truth.to_ground(corner)), 2.0 * pixel_m);
    EXPECT_TRUE(window_.imagery().unplaced().empty());
    EXPECT_EQ(window_.imagery().pictures().front().answers.pairs.size(), 4U);
    press(window_, Qt::Key_Escape);
    EXPECT_FALSE(window_.placing().active());
    EXPECT_TRUE(window_.slip().isVisible());
}

TEST_F(Placing, TheWorstPairIsNamedAndEachTellsWhatItIsOffByInThePersonsUnits) {
    drop_plat();
    for (const PicturePixel spot : {PicturePixel{20, 20}, PicturePixel{380, 30}, PicturePixel{360, 280},
                                    PicturePixel{30, 270}, PicturePixel{200, 150}})
        pair(spot);
    window_.placing().shift_place(4, pairs()[4].ground + LocalVector{9.0, 0.0});
    const auto& fit = window_.placing().fit();
    ASSERT_TRUE(fit && fit->worst);
    EXPECT_EQ(*fit->worst, 4U);
    for (const LengthUnits units : {LengthUnits::metres, LengthUnits::feet_and_inches}) {
        window_.choices().use(units);
        const QString off = QString::fromStdString(tape_reading(Metres::of(fit->residuals_m[4]), units));
        EXPECT_EQ(window_.placing_panel().list().item(4)->text(),
                  QStringLiteral("pair 5: off by %1, stands out most").arg(off));
        EXPECT_TRUE(window_.placing_panel().account().contains(QStringLiteral("Pair 5 stands out most")));
    }
}

TEST_F(Placing, EveryActIsUndoneAndRedoneAndTheNudgesOfOnePairAreOne) {
    drop_plat();
    for (const PicturePixel spot :
         {PicturePixel{20, 20}, PicturePixel{380, 30}, PicturePixel{360, 280}, PicturePixel{30, 270}})
        pair(spot);
    const auto four = pairs();
    EXPECT_EQ(window_.session().history().count(), 4);
    ASSERT_EQ(window_.placing().picked(), 3U);
    window_.map().setFocus();
    for (int i = 0; i < 5; ++i) press(window_.map(), Qt::Key_Right, Qt::ControlModifier);
    EXPECT_EQ(window_.session().history().count(), 5);
    EXPECT_GT(pairs()[3].ground.east_m, four[3].ground.east_m);
    press(window_.map(), Qt::Key_Delete);
    EXPECT_EQ(pairs().size(), 3U);
    for (int i = 0; i < 2; ++i) press(window_, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(pairs(), four);
    for (int i = 0; i < 4; ++i) press(window_, Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(pairs().empty());
    EXPECT_TRUE(window_.imagery().pictures().empty());
    for (int i = 0; i < 4; ++i) press(window_, Qt::Key_Y, Qt::ControlModifier);
    EXPECT_EQ(pairs(), four);
    EXPECT_TRUE(wait_for([&] { return window_.imagery().pictures().size() == 1; }));
}

TEST_F(Placing, APairIsDraggedOnThePictureAndTheResidualFollowsTheHand) {
    drop_plat();
    for (const PicturePixel spot :
         {PicturePixel{20, 20}, PicturePixel{380, 30}, PicturePixel{360, 280}, PicturePixel{30, 270}})
        pair(spot);
    const auto before = pairs();
    PictureView& picture = window_.picture();
    const QPoint from = picture.on_screen(pairs()[1].pixel).toPoint();
    QTest::mousePress(&picture, Qt::LeftButton, {}, from);
    QTest::mouseMove(&picture, from + QPoint(-20, 10));
    QTest::mouseMove(&picture, from + QPoint(-40, 20));
    EXPECT_GT(*window_.placing().fit()->standard_error_m, 1.0);
    EXPECT_EQ(window_.session().history().count(), 4);  // nothing is kept while it is held
    QTest::mouseRelease(&picture, Qt::LeftButton, {}, from + QPoint(-40, 20));
    EXPECT_EQ(window_.session().history().count(), 5);
    EXPECT_NE(pairs()[1].pixel, before[1].pixel);
    EXPECT_EQ(pairs()[1].ground, before[1].ground);
    window_.session().history().undo();
    EXPECT_EQ(pairs(), before);
}

TEST_F(Placing, IsDoneByKeysAloneWithMarksAndTypedCoordinates) {
    drop_plat();
    PictureView& picture = window_.picture();
    EXPECT_EQ(QApplication::focusWidget(), &picture);
    const auto field = window_.session().field();
    const auto put_spot = [&](Qt::Key way, int steps) {
        picture.setFocus();
        for (int i = 0; i < steps; ++i) press(picture, way);
        press(picture, Qt::Key_Space);
        ASSERT_TRUE(window_.placing().waiting_spot());
    };
    put_spot(Qt::Key_Left, 10);
    QLineEdit& typed = window_.placing_panel().typed();
    typed.setFocus();
    QTest::keyClicks(&typed, QString::fromStdString(field->survey.mounds.front().name));
    press(typed, Qt::Key_Return);
    ASSERT_EQ(pairs().size(), 1U);
    EXPECT_EQ(pairs()[0].ground, field->survey.mounds.front().plug);
    put_spot(Qt::Key_Right, 18);
    const LocalPoint place{40.0, -25.0};
    const GeographicPoint on_earth = field->frame.to_geographic(place);
    typed.setFocus();
    QTest::keyClicks(
        &typed,
        QStringLiteral("%1, %2").arg(on_earth.latitude_degrees, 0, 'f', 8).arg(on_earth.longitude_degrees, 0, 'f', 8));
    press(typed, Qt::Key_Return);
    ASSERT_EQ(pairs().size(), 2U);
    EXPECT_LT(distance_m(pairs()[1].ground, place), 0.01);
    put_spot(Qt::Key_Down, 12);
    press(picture, Qt::Key_M, Qt::ControlModifier);
    EXPECT_EQ(QApplication::focusWidget(), &window_.map());
    for (int i = 0; i < 6; ++i) press(window_.map(), Qt::Key_Down);
    press(window_.map(), Qt::Key_Space);
    EXPECT_EQ(pairs().size(), 3U);
    EXPECT_TRUE(window_.placing().fit());
    press(window_, Qt::Key_Escape);
    EXPECT_FALSE(window_.placing().active());
}

TEST_F(Placing, HalfAPairIsPutAwayByEscapeAndAPlaceMayComeFirst) {
    drop_plat();
    click(window_.map(), window_.map().view().screen().center());
    EXPECT_TRUE(window_.placing().waiting_place());
    press(window_, Qt::Key_Escape);
    EXPECT_FALSE(window_.placing().waiting_place());
    EXPECT_TRUE(window_.placing().active());
    click(window_.map(), window_.map().view().screen().center());
    click(window_.picture(), window_.picture().on_screen({100, 100}));
    EXPECT_EQ(pairs().size(), 1U);
}

TEST_F(Placing, ThePairsAreInTheProjectAndThereWhenItIsOpenedAgain) {
    drop_plat();
    for (const PicturePixel spot :
         {PicturePixel{20, 20}, PicturePixel{380, 30}, PicturePixel{360, 280}, PicturePixel{30, 270}})
        pair(spot);
    const auto four = pairs();
    press(window_, Qt::Key_Escape);
    window_.keeper().keep_as(folder_ / "meadow.plugside");
    ASSERT_TRUE(wait_for([&] { return window_.keeper().named() && window_.keeper().kept(); }));
    window_.hide();
    MainWindow other;
    EXPECT_TRUE(window_.keeper().settle());
    std::filesystem::copy_file(folder_ / "meadow.plugside", folder_ / "again.plugside");
    other.open_project(folder_ / "again.plugside");
    ASSERT_TRUE(wait_for([&] { return other.imagery().pictures().size() == 1; }));
    EXPECT_EQ(other.imagery().pictures().front().answers.pairs, four);
    other.placing().begin(other.imagery().pictures().front().source.facts().file);
    EXPECT_EQ(other.placing().pairs(), four);
    other.placing().leave();
}

TEST_F(Placing, APictureTakenAwayComesBackByUndoWithItsPairs) {
    drop_plat();
    for (const PicturePixel spot : {PicturePixel{20, 20}, PicturePixel{380, 30}, PicturePixel{360, 280}}) pair(spot);
    const auto three = pairs();
    press(window_, Qt::Key_Escape);
    ASSERT_TRUE(wait_for([&] { return window_.imagery().pictures().size() == 1; }));
    auto* list = window_.findChild<ImageryList*>();
    ASSERT_NE(list, nullptr);
    list->list().setFocus();
    press(list->list(), Qt::Key_Delete);
    EXPECT_TRUE(window_.imagery().named().empty());
    press(window_, Qt::Key_Z, Qt::ControlModifier);
    ASSERT_TRUE(wait_for([&] { return window_.imagery().pictures().size() == 1; }));
    EXPECT_EQ(window_.imagery().pictures().front().answers.pairs, three);
}

TEST(TypedPlace, IsAMarkOrACoordinateAndSaysWhatItIsNot) {
    FieldSurvey field;
    field.frame = LocalFrame::centred_on({-106.9, 34.06});
    field.survey.mounds.emplace_back();
    field.survey.mounds.back().name = "M7";
    field.survey.mounds.back().plug = {3.0, 4.0};
    EXPECT_EQ(typed_place(QStringLiteral(" m7 "), field), (LocalPoint{3.0, 4.0}));
    for (const char* text : {"34.061, -106.901", "34.061 -106.901", "34.061;-106.901", "34,061; -106,901",
                             "-106.901 W, 34.061 N", "34° 3' 39.6\" N, 106° 54' 3.6\" W"}) {
        const auto place = typed_place(QString::fromUtf8(text), field);
        if (std::string_view(text).starts_with("-106")) {
            EXPECT_FALSE(place) << text;  // a sign beside a letter
            continue;
        }
        ASSERT_TRUE(place) << text << place.error().toStdString();
        EXPECT_LT(distance_m(*place, field.frame.to_local({-106.901, 34.061})), 0.01) << text;
    }
    const auto longitude_first = typed_place(QStringLiteral("106.901 W, 34.061 N"), field);
    ASSERT_TRUE(longitude_first);
    EXPECT_LT(distance_m(*longitude_first, field.frame.to_local({-106.901, 34.061})), 0.01);
    EXPECT_TRUE(typed_place(QStringLiteral("the gate"), field).error().contains(QStringLiteral("no mark's name")));
    EXPECT_TRUE(typed_place(QStringLiteral("95, 10"), field).error().contains(QStringLiteral("latitude from -90 to 90")));
    EXPECT_TRUE(typed_place(QStringLiteral("50, 10"), field).error().contains(QStringLiteral("more than 50 km")));
}

}  // namespace
}  // namespace plugside
