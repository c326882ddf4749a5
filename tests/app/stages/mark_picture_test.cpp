#include "app/stages/mark_picture.h"

#include <QImageWriter>
#include <QTest>
#include <fstream>

#include "app/stages/mound_facts.h"
#include "tests/app/application.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

class MarkPictureTest : public OnScreen {
protected:
    // 400 wide, 200 high as stored: its left half red, its right half blue.
    std::filesystem::path photograph(const char* name, QImageIOHandler::Transformations turned) {
        QImage image(400, 200, QImage::Format_RGB32);
        for (int y = 0; y < 200; ++y)
            for (int x = 0; x < 400; ++x) image.setPixelColor(x, y, x < 200 ? Qt::red : Qt::blue);
        const QString file = folder_.filePath(QString::fromLatin1(name));
        QImageWriter writer(file, "jpeg");
        writer.setTransformation(turned);
        EXPECT_TRUE(writer.write(image)) << writer.errorString().toStdString();
        return file.toStdString();
    }

    QTemporaryDir folder_;
    Choices choices_;
};

TEST_F(MarkPictureTest, IsFoundBesideAFileThatWasReadAndNowhereElse) {
    const auto file = photograph("mound.jpg", {});
    const auto walk = file.parent_path() / "walk.gpx";
    EXPECT_EQ(find_picture({walk}, "mound.jpg"), file);
    EXPECT_EQ(find_picture({file}, "mound.jpg"), file);
    EXPECT_EQ(find_picture({walk}, "other.jpg"), std::nullopt);
    EXPECT_EQ(find_picture({walk}, ".."), std::nullopt);
    EXPECT_EQ(find_picture({file.parent_path() / "deeper" / "walk.gpx"}, "../mound.jpg"), std::nullopt);
}

TEST_F(MarkPictureTest, IsScaledIntoItsRoomAndTurnedAsItsOrientationSays) {
    const auto upright = load_picture({photograph("a.jpg", {})}, "a.jpg", {100, 100});
    EXPECT_EQ(upright.image.size(), QSize(100, 50));
    const auto turned = load_picture({photograph("b.jpg", QImageIOHandler::TransformationRotate90)}, "b.jpg", {100, 100});
    EXPECT_EQ(turned.image.size(), QSize(50, 100));
    // a quarter turn clockwise brings the left half up
    EXPECT_GT(turned.image.pixelColor(25, 20).red(), 200);
    EXPECT_GT(turned.image.pixelColor(25, 80).blue(), 200);
}

TEST_F(MarkPictureTest, AMissingOrBrokenFileGivesASentence) {
    const auto file = photograph("mound.jpg", {});
    const auto missing = load_picture({file}, "gone.jpg", {100, 100});
    EXPECT_TRUE(missing.image.isNull());
    EXPECT_TRUE(missing.sentence.contains("gone.jpg"));
    std::ofstream(file.parent_path() / "broken.jpg") << "no picture";
    EXPECT_TRUE(load_picture({file}, "broken.jpg", {100, 100}).sentence.contains("cannot be read"));
}

TEST_F(MarkPictureTest, ThePickedMarksPhotographComesToTheSlipAndIsEnlargedByEnter) {
    const auto file = photograph("mound.jpg", {});
    FieldSurvey field = example_field().field;
    field.survey.mounds[1].picture = "mound.jpg";
    FieldSession session;
    session.adopt(std::move(field), {file});
    MoundFacts facts(session, choices_);
    facts.resize(340, 300);
    choices_.pick_mound(1);
    facts.show();
    ASSERT_TRUE(QTest::qWaitFor([&] { return !facts.picture().loaded().image.isNull(); }, 20000));
    EXPECT_TRUE(facts.picture().isVisible());
    QTest::keyClick(&facts.picture(), Qt::Key_Return);
    QDialog* sheet = facts.findChild<QDialog*>();
    ASSERT_NE(sheet, nullptr);
    QTest::keyClick(sheet, Qt::Key_Escape);
    choices_.pick_mound(0);
    EXPECT_FALSE(facts.picture().isVisible());
}

}  // namespace
}  // namespace plugside
