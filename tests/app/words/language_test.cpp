// Which language is spoken, how it writes numbers, and the window that changes over to it.
#include "app/words/language_here.h"

#include <QLabel>
#include <QPushButton>
#include <QSettings>
#include <fstream>
#include <thread>

#include "app/window/main_window.h"
#include "core/mending/digger_key.h"
#include "core/units/display.h"
#include "core/words/words.h"
#include "tests/app/application.h"

namespace plugside {
namespace {

class Languages : public OnScreen {
protected:
    ~Languages() override {
        speak(Language::english);
        speak_with(nullptr);
        QLocale::setDefault(QLocale::system());
    }
};

TEST_F(Languages, TheFirstOfTheSystemsLanguagesThatIsSpokenHereIsTaken) {
    EXPECT_EQ(language_of(QLocale(QLocale::Spanish, QLocale::Mexico)), Language::spanish);
    EXPECT_EQ(language_of(QLocale(QLocale::English, QLocale::UnitedStates)), Language::english);
    EXPECT_EQ(language_of(QLocale(QLocale::Japanese)), Language::english);
    EXPECT_EQ(language_from_code(code_of(Language::spanish)), Language::spanish);
    EXPECT_FALSE(language_from_code(QStringLiteral("tlh")));
}

TEST_F(Languages, OneThreadMaySpeakAnotherThanTheWindow) {
    speak(Language::english);
    std::string there;
    {
        const LanguageHere spanish(Language::spanish);
        EXPECT_EQ(compass_point(Bearing::degrees(270.0)), "O");
        EXPECT_EQ(said("Caution", "stop"), QStringLiteral("alto"));
        EXPECT_EQ(said("Caution", "a text that nobody translated"), QStringLiteral("a text that nobody translated"));
        EXPECT_EQ(spoken(), Language::spanish);
        {
            const LanguageHere english(Language::english);
            EXPECT_EQ(compass_point(Bearing::degrees(270.0)), "W");
        }
        EXPECT_EQ(Words::language(), "es");
        std::thread other([&] { there = compass_point(Bearing::degrees(270.0)); });
        other.join();
    }
    EXPECT_EQ(there, "W");
    EXPECT_EQ(compass_point(Bearing::degrees(270.0)), "W");
    speak(Language::spanish);
    const LanguageHere english(Language::english);
    EXPECT_EQ(said("Caution", "stop"), QStringLiteral("stop"));
    EXPECT_EQ(compass_point(Bearing::degrees(270.0)), "W");
}

TEST_F(Languages, CoreSpeaksTheLanguageOfTheWindow) {
    speak(Language::spanish);
    EXPECT_EQ(Words::shown(std::string(digger_key().front().words)), "¿Hay un montón de tierra?");
    EXPECT_EQ(compass_point(Bearing::degrees(270.0)), "O");
    EXPECT_EQ(Words::language(), "es");
    speak(Language::english);
    EXPECT_EQ(Words::shown(std::string(digger_key().front().words)), "Is there a heap of soil?");
    EXPECT_EQ(compass_point(Bearing::degrees(270.0)), "W");
}

// the decimal mark is that of CLDR for the language in the system's territory: a point in Mexico and the United States, a comma
// in Spain and where nothing is known
TEST_F(Languages, DecimalsAreWrittenAsInTheTerritory) {
    speak(Language::spanish);
    const QString mark = QLocale(QLocale::Spanish, QLocale::system().territory()).decimalPoint();
    EXPECT_EQ(decimal(0.5, 1), QLatin1String("0") + mark + QLatin1String("5"));
    EXPECT_EQ(in_their_digits(QStringLiteral("2.25")), QLatin1String("2") + mark + QLatin1String("25"));
    EXPECT_EQ(ground_distance(Metres::of(1.25), LengthUnits::metres), "1" + mark.toStdString() + "2 m");
    EXPECT_EQ(QLocale(QLocale::Spanish, QLocale::Mexico).decimalPoint(), QStringLiteral("."));
    EXPECT_EQ(QLocale(QLocale::Spanish, QLocale::AnyTerritory).decimalPoint(), QStringLiteral(","));
}

TEST_F(Languages, TimesAreLocalWithTheirZone) {
    const QByteArray zone = qgetenv("TZ");
    qputenv("TZ", "America/Denver");
    tzset();
    speak(Language::english);
    const UtcTime noon{std::chrono::milliseconds(1744290300000)};  // 2025-04-10 13:05 UTC
    EXPECT_EQ(moment_words(noon), QStringLiteral("10 April 2025, 07:05 MDT"));
    EXPECT_EQ(Words::moment(noon), "2025-04-10 07:05:00 MDT");
    EXPECT_EQ(moment_in_utc(noon), "2025-04-10 13:05:00 UTC");
    speak(Language::spanish);
    EXPECT_EQ(moment_words(noon), QStringLiteral("10 de abril de 2025, 07:05 MDT"));
    zone.isEmpty() ? qunsetenv("TZ") : qputenv("TZ", zone);
    tzset();
}

class WindowInTwoLanguages : public Languages {
protected:
    // The sample's walk, in which one note speaks of a mole's hill.
    void open_sample() {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        std::ifstream walk(sample / "walk.gpx");
        std::string text((std::istreambuf_iterator<char>(walk)), std::istreambuf_iterator<char>());
        text.replace(text.find("<cmt>crushed</cmt>"), 18, "<cmt>round hill, hole in the middle</cmt>");
        const std::filesystem::path doubtful = folder_.filePath("walk.gpx").toStdString();
        std::ofstream(doubtful) << text;
        window_.open_files({doubtful, sample / "ground.gpkg"});
        ASSERT_TRUE(wait_for([&] { return window_.session().looked_back() && window_.session().findings(); }));
        window_.show();
        window_.activateWindow();
        ASSERT_TRUE(QTest::qWaitForWindowActive(&window_));
    }
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 60000); }
    [[nodiscard]] bool shows(const QString& text) const {
        for (const QLabel* label : window_.findChildren<QLabel*>())
            if (label->isVisible() && label->text().contains(text)) return true;
        return false;
    }
    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
    }

    QTemporaryDir folder_;
    MainWindow window_;
};

TEST_F(WindowInTwoLanguages, AKeyChangesTheLanguageAndNothingElse) {
    open_sample();
    press(Qt::Key_5);
    press(Qt::Key_K);
    ASSERT_TRUE(wait_for([&] { return window_.session().plan_is_current(); }));
    const auto set = window_.choices().set();
    const Survey before = window_.session().field()->survey;
    const auto plan_before = window_.session().plan();
    ASSERT_TRUE(set.has_value());
    ASSERT_TRUE(shows(QStringLiteral("1 of ")));
    press(Qt::Key_E, Qt::ControlModifier);
    ASSERT_TRUE(wait_for([&] { return shows(QStringLiteral("puntos decididos")); }));
    EXPECT_EQ(window_.choices().step(), Step::sets);
    EXPECT_EQ(window_.choices().set(), set);
    EXPECT_EQ(window_.session().field()->survey, before);
    EXPECT_TRUE(shows(QStringLiteral("Desde el tapón de")) || shows(QStringLiteral("Tienda la cinta del tapón")));
    // the plan is made again for its sentences; all that is not a sentence is the same
    ASSERT_TRUE(wait_for([&] { return window_.session().plan() != plan_before && window_.session().plan_is_current(); }));
    ASSERT_EQ(window_.session().plan()->sets.size(), plan_before->sets.size());
    for (std::size_t i = 0; i < plan_before->sets.size(); ++i)
        EXPECT_EQ(window_.session().plan()->sets[i].probe, plan_before->sets[i].probe);
    for (std::size_t i = 0; i < plan_before->mounds.size(); ++i)
        EXPECT_EQ(window_.session().plan()->mounds[i].not_used_because, plan_before->mounds[i].not_used_because);
    EXPECT_EQ(QSettings().value(QStringLiteral("language")).toString(), QStringLiteral("es"));
    // what was decided is undone as before
    press(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(wait_for([&] { return shows(QStringLiteral("0 de ")); }));
    press(Qt::Key_E, Qt::ControlModifier);
    EXPECT_TRUE(wait_for([&] { return shows(QStringLiteral("0 of ")); }));
}

TEST_F(WindowInTwoLanguages, FindingsKeepTheirIdsInEveryLanguage) {
    open_sample();
    const auto english = window_.session().findings();
    ASSERT_FALSE(english->empty());
    press(Qt::Key_E, Qt::ControlModifier);
    ASSERT_TRUE(wait_for([&] { return window_.session().findings() != english && !window_.session().judging(); }));
    const auto spanish = window_.session().findings();
    ASSERT_EQ(english->size(), spanish->size());
    for (std::size_t i = 0; i < english->size(); ++i) {
        EXPECT_EQ(english->at(i).id, spanish->at(i).id);
        EXPECT_EQ(english->at(i).mend, spanish->at(i).mend);
        EXPECT_NE(english->at(i).proposed, spanish->at(i).proposed);
    }
}

}  // namespace
}  // namespace plugside
