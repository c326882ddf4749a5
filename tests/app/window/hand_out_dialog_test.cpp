// The dialog of handing out with a field made by hand: what it offers, says and writes.
#include "app/window/hand_out_dialog.h"

#include <QSignalSpy>
#include <QTemporaryDir>
#include <fstream>

#include "tests/app/application.h"
#include "tests/app/example_plan.h"

namespace plugside {
namespace {

class HandOutDialogTest : public OnScreen {
protected:
    void SetUp() override {
        ExampleField example = example_field();
        example.field.survey.mounds[0].note = "PRIVATENOTE";
        session_.adopt(example.field, {});
        ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
        dialog_ = std::make_unique<HandOutDialog>(session_, choices_);
        dialog_->set_folder(folder_.path());
        dialog_->show();
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }
    [[nodiscard]] QCheckBox* box(const char* words) const {
        for (QCheckBox* one : dialog_->findChildren<QCheckBox*>())
            if (one->text() == QLatin1String(words)) return one;
        throw std::runtime_error(words);
    }
    [[nodiscard]] QLineEdit* name(const char* what) const {
        for (QLineEdit* one : dialog_->findChildren<QLineEdit*>())
            if (one->accessibleName() == QLatin1String(what)) return one;
        throw std::runtime_error(what);
    }
    void tick_all() const {
        for (QCheckBox* one : dialog_->findChildren<QCheckBox*>())
            if (one != box("with what is private")) one->setChecked(true);
    }
    [[nodiscard]] bool says(const QString& words) const {
        for (const QLabel* label : dialog_->findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(words)) return true;
        return false;
    }
    [[nodiscard]] bool may_go() const {
        return dialog_->findChild<QPushButton*>(QStringLiteral("main_button"))->isEnabled();
    }
    // What was refused; empty when it was handed out.
    QString handed_out() {
        QSignalSpy out(&session_, &FieldSession::handed_out);
        QSignalSpy refused(&session_, &FieldSession::refused);
        session_.hand_out(dialog_->chosen());
        EXPECT_TRUE(wait_for([&] { return out.count() + refused.count() > 0; }));
        return refused.isEmpty() ? QString() : refused.front().front().toString();
    }
    [[nodiscard]] std::string content(const QString& file) const {
        std::ifstream stream(folder_.filePath(file).toStdString(), std::ios::binary);
        return {std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
    }
    [[nodiscard]] QStringList files() const { return QDir(folder_.path()).entryList(QDir::Files | QDir::Hidden); }

    QTemporaryDir folder_;
    Choices choices_;
    FieldSession session_;
    std::unique_ptr<HandOutDialog> dialog_;
};

TEST_F(HandOutDialogTest, EveryFormatSaysWhatItCannotCarryOnceItIsTicked) {
    EXPECT_FALSE(says(QStringLiteral("ten characters at most")));
    EXPECT_TRUE(
        box("map layers, as Shapefiles")->accessibleDescription().contains(QStringLiteral("ten characters at most")));
    box("map layers, as Shapefiles")->setChecked(true);
    EXPECT_TRUE(says(QStringLiteral("ten characters at most")));
    EXPECT_TRUE(says(QStringLiteral("66 files, example-field-plan_barriers.cpg to example-field-plan_walk_tracks.shx.")));
    box("tables, as CSV")->setChecked(true);
    EXPECT_TRUE(says(QStringLiteral("no lines and no areas")));
    box("map layers, as KML")->setChecked(true);
    EXPECT_TRUE(says(QStringLiteral("Times stand as texts, in UTC.")));
    box("map layers, as KML")->setChecked(false);
    EXPECT_FALSE(says(QStringLiteral("in UTC. Conditions")));
    EXPECT_FALSE(says(QStringLiteral("Only the GeoPackage gives your decisions back")));
    box("plan, as a GeoPackage")->setChecked(false);
    EXPECT_TRUE(says(QStringLiteral("Only the GeoPackage gives your decisions back")));
}

TEST_F(HandOutDialogTest, AllFormatsGoOutTogetherWithoutWhatIsPrivateUnlessItIsTicked) {
    tick_all();
    ASSERT_TRUE(may_go());
    EXPECT_EQ(handed_out(), QString());
    EXPECT_EQ(files().size(), 5 + 66 + 4 + 2);
    EXPECT_EQ(content("example-field-plan.kml").find("PRIVATENOTE"), std::string::npos);
    EXPECT_FALSE(session_.not_handed_out());
    // now they are there, and it says so
    dialog_->set_folder(QString());
    dialog_->set_folder(folder_.path());
    EXPECT_TRUE(says(QStringLiteral("example-field-plan.kml is there already and will be replaced.")));
    EXPECT_TRUE(says(QStringLiteral("example-field-plan_mounds.csv and 3 more are there already and will be replaced.")));
    box("with what is private")->setChecked(true);
    EXPECT_EQ(handed_out(), QString());
    EXPECT_NE(content("example-field-plan.kml").find("PRIVATENOTE"), std::string::npos);
}

TEST_F(HandOutDialogTest, TwoFilesOfOneNameDoNotGoOut) {
    box("sets, as a route")->setChecked(true);
    EXPECT_TRUE(may_go());
    name("name of the route file")->setText(name("name of the waypoint file")->text());
    EXPECT_FALSE(may_go());
    EXPECT_TRUE(says(QStringLiteral("Two of them are to be written as example-field-sets.gpx.")));
    name("name of the route file")->clear();
    EXPECT_FALSE(may_go());
}

TEST_F(HandOutDialogTest, WhenOneFileCannotBeWrittenNoneIsAndEarlierOnesStay) {
    tick_all();
    std::ofstream(folder_.filePath(QStringLiteral("example-field-plan.gpkg")).toStdString()) << "earlier";
    ASSERT_TRUE(QDir(folder_.path()).mkdir(QStringLiteral("example-field-phone.html")));
    const QString refused = handed_out();
    EXPECT_TRUE(refused.contains(QStringLiteral("example-field-phone.html"))) << refused.toStdString();
    EXPECT_EQ(files().join(QLatin1Char(' ')).toStdString(), "example-field-plan.gpkg");
    EXPECT_EQ(content("example-field-plan.gpkg"), "earlier");
}

TEST_F(HandOutDialogTest, AStopLeavesNoFile) {
    tick_all();
    session_.hand_out(dialog_->chosen());
    session_.file_work().stop();
    EXPECT_FALSE(session_.file_work().running());
    QTest::qWait(20);
    EXPECT_TRUE(
        wait_for([&] { return QDir(folder_.path()).isEmpty(QDir::AllEntries | QDir::Hidden | QDir::NoDotAndDotDot); }));
}

}  // namespace
}  // namespace plugside
