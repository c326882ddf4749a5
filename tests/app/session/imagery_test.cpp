#include "app/session/imagery.h"

#include <gtest/gtest.h>

#include <QImage>
#include <QPainter>
#include <QTest>

#include "app/batch/sample_fields.h"
#include "app/canvas/map_painter.h"
#include "app/stages/imagery_list.h"
#include "tests/app/application.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using testing_support::TemporaryFolder;

const std::filesystem::path meadow = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow/imagery.tif";

struct OpenMeadow {
    QApplication& program = application();  // before what its event loop serves
    TemporaryFolder folder;
    Imagery imagery{folder.path() / "copies"};
    ViewTransform view{{0.0, 0.0}, 4.0, QSizeF(640.0, 480.0)};

    OpenMeadow() {
        imagery.lie_on(LocalFrame::centred_on(made_up_place()));
        imagery.add(meadow);
        EXPECT_TRUE(QTest::qWaitFor([&] { return !imagery.pictures().empty(); }, 120000));
    }
    std::shared_ptr<const ImageryScene> settled(Theme theme = Theme::light) {
        std::shared_ptr<const ImageryScene> scene;
        EXPECT_TRUE(QTest::qWaitFor(
            [&] {
                scene = imagery.scene(view, 1.0, theme);
                return imagery.settled();
            },
            20000));
        return scene;
    }
};

TEST(Imagery, makes_tiles_of_what_is_seen_and_nothing_more_when_all_are_there) {
    OpenMeadow open;
    const auto scene = open.settled();
    ASSERT_NE(scene, nullptr);
    EXPECT_GE(scene->pieces.size(), 6U);
    EXPECT_EQ(scene, open.imagery.scene(open.view, 1.0, Theme::light));  // the same while nothing changes
    EXPECT_DOUBLE_EQ(scene->share, Imagery::first_tone);
    EXPECT_DOUBLE_EQ(open.settled(Theme::sunlight)->share, 0.2);
    EXPECT_FALSE(std::filesystem::exists(open.folder.path() / "copies"));  // it has reduced copies of its own
}

TEST(Imagery, shows_coarser_tiles_while_finer_ones_are_made) {
    OpenMeadow open;
    ASSERT_NE(open.settled(), nullptr);
    open.view = open.view.zoomed(4.0, {320.0, 240.0});
    const auto meanwhile = open.imagery.scene(open.view, 1.0, Theme::light);
    ASSERT_NE(meanwhile, nullptr);
    EXPECT_FALSE(open.imagery.settled());
    EXPECT_FALSE(meanwhile->pieces.empty());
    const double coarse_side = meanwhile->pieces.front().side_m;
    const auto after = open.settled();
    EXPECT_LT(after->pieces.front().side_m, coarse_side);
}

TEST(Imagery, is_drawn_under_the_ground_at_its_strength) {
    OpenMeadow open;
    FieldSurvey field;
    field.frame = LocalFrame::centred_on(made_up_place());
    const auto drawn = [&](std::shared_ptr<const ImageryScene> scene) {
        QImage image(640, 480, QImage::Format_RGB32);
        QPainter painter(&image);
        MapShow show;
        show.imagery = std::move(scene);
        paint_map(painter, field, nullptr, style_of(Theme::light), open.view, show);
        painter.end();
        return image;
    };
    const QColor bare = drawn(nullptr).pixelColor(320, 240);
    open.imagery.set_tone(1.0);
    const QColor whole = drawn(open.settled()).pixelColor(320, 240);
    open.imagery.set_tone(0.5);
    const QColor half = drawn(open.settled()).pixelColor(320, 240);
    EXPECT_NEAR(half.red(), 0.5 * (bare.red() + whole.red()), 2.0);
    EXPECT_NEAR(half.green(), 0.5 * (bare.green() + whole.green()), 2.0);
    open.imagery.set_tone(0.0);
    EXPECT_EQ(drawn(open.settled()), drawn(nullptr));
    open.imagery.set_tone(1.0);
    open.imagery.show(open.imagery.pictures().front().number, false);
    EXPECT_EQ(open.settled(), nullptr);
}

TEST(Imagery, tells_of_a_picture_that_it_cannot_place) {
    OpenMeadow open;
    Refusal refused;
    QObject::connect(&open.imagery, &Imagery::refused, [&](const std::filesystem::path&, const Refusal& r) { refused = r; });
    open.imagery.add(open.folder.file("no.tif", "nothing"));
    EXPECT_TRUE(QTest::qWaitFor([&] { return refused.code == Refusal::Code::wrong_format; }, 120000));
    open.imagery.lie_on(LocalFrame());
    EXPECT_TRUE(open.imagery.pictures().empty());
}

TEST(ImageryList, is_worked_by_keys) {
    OpenMeadow open;
    ImageryList list(open.imagery);
    QObject::connect(&list, &ImageryList::take_away_wanted,
                     [&](const std::filesystem::path& file) { open.imagery.put(file, std::nullopt); });
    list.show();
    ASSERT_EQ(list.list().count(), 1);
    EXPECT_TRUE(list.list().item(0)->text().contains(QStringLiteral("imagery.tif")));
    list.list().setFocus();
    QTest::keyClick(&list.list(), Qt::Key_Space);
    EXPECT_FALSE(open.imagery.pictures().front().visible);
    QTest::keyClick(&list.list(), Qt::Key_Space);
    EXPECT_TRUE(open.imagery.pictures().front().visible);
    const double before = open.imagery.tone();
    QTest::keyClick(&list.tone(), Qt::Key_Right);
    EXPECT_GT(open.imagery.tone(), before);
    QTest::keyClick(&list.list(), Qt::Key_Delete);
    EXPECT_TRUE(open.imagery.pictures().empty());
    EXPECT_EQ(list.list().count(), 0);
}

}  // namespace
}  // namespace plugside
