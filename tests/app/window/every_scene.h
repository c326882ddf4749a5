// A walk through every step, part and panel of the window, as a hand on the keyboard makes it, so that a test can look at each of them.
//
// The sample with six walks beside it (a long list of what was read), notes that were not understood, findings, shapes of every kind,
// corrections, how the work is done, sets decided each way, the walking order; a plat being placed, a server being asked for; then the
// sheets that lie over the window.
#pragma once

#include <QDir>
#include <QPainter>
#include <QScrollBar>
#include <fstream>
#include <functional>
#include <string>

#include "app/stages/imagery_list.h"
#include "app/stages/page_scroll.h"
#include "app/window/main_window.h"
#include "app/window/server_dialog.h"
#include "app/words/language.h"
#include "tests/app/application.h"

namespace plugside {

using LookAt = std::function<void(QWidget& shown, const std::string& scene)>;

class EveryScene {
public:
    explicit EveryScene(MainWindow& window) : window_(window) {}

    // The sample's walk six times over, some notes not understood; false where the plan was not made in time.
    bool open() {
        const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
        std::ifstream walk(sample / "walk.gpx");
        std::string text((std::istreambuf_iterator<char>(walk)), std::istreambuf_iterator<char>());
        for (const char* note :
             {"round hill, hole in the middle", "crushed, two children near, zzqx", "fan 90 magnetic, fan 200"})
            text.replace(text.find("<cmt>crushed</cmt>"), 18, "<cmt>" + std::string(note) + "</cmt>");
        FieldSession::Files files{sample / "ground.gpkg"};
        const std::filesystem::path folder = folder_.path().toStdString();
        write(folder / "walk.gpx", text);
        files.push_back(folder / "walk.gpx");
        for (int day = 2; day <= 6; ++day) {
            const std::filesystem::path file = folder / ("evening " + std::to_string(day) + ".gpx");
            write(file,
                  "<gpx xmlns='http://www.topografix.com/GPX/1/1' version='1.1' creator='a hand'><trk><name>evening walk " +
                      std::to_string(day) + "</name><trkseg>" + track(text, day) + "</trkseg></trk></gpx>");
            files.push_back(file);
        }
        window_.open_files(files);
        const bool looked_at = wait([&] { return window_.session().field() != nullptr || window_.reading().isVisible(); });
        if (looked_at && window_.reading().isVisible()) press(Qt::Key_Return, Qt::ControlModifier);
        if (!wait([&] { return window_.session().looked_back() && window_.session().findings() != nullptr; })) return false;
        window_.show();
        window_.activateWindow();
        return QTest::qWaitForWindowActive(&window_);
    }

    void walk_through(const LookAt& look) {
        const auto at = [&](const std::string& scene) { look_at(window_, scene, look); };
        pictures_ = 0;
        looking_ = look;
        walk_step(at);
        ground_step(at);
        systems_step(at);
        method_step(at);
        sets_step(at);
        placing(at);
        over_the_window(at);
    }

    // One scene, and its picture where pictures are wanted.
    void look_at(QWidget& shown, const std::string& scene, const LookAt& look) {
        EXPECT_TRUE(wait([&] { return !window_.dresser().at_work(); }));
        for (int turn = 0; turn < 6; ++turn) settle();  // a layout that wraps asks again once it has its width
        look(shown, scene);
        keep_picture(shown, scene);
    }

    void press(Qt::Key key, Qt::KeyboardModifiers modifiers = {}) {
        QWidget* focus = QApplication::focusWidget();
        QTest::keyClick(focus ? focus : &window_, key, modifiers);
        settle();
    }
    // A digit in a field is typed there.
    void go_to(Qt::Key step) {
        window_.map().setFocus();
        press(step);
    }
    // Until what was asked for is laid out.
    void settle() {
        for (int round = 0; round < 4; ++round) QCoreApplication::processEvents();
    }
    static bool wait(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }

private:
    // With PLUGSIDE_SCENES=folder in the environment a picture of each scene is left there, for a person to look at.
    void keep_picture(QWidget& shown, const std::string& scene) {
        if (!qEnvironmentVariableIsSet("PLUGSIDE_SCENES")) return;
        if (&shown == &window_) wait([&] { return window_.map().settled(); });
        const QString folder = QStringLiteral("%1/%2-%3-%4")
                                   .arg(qEnvironmentVariable("PLUGSIDE_SCENES"), code_of(spoken()),
                                        window_.choices().theme() == Theme::light ? "light" : "sunlight")
                                   .arg(window_.choices().text_percent());
        QDir().mkpath(folder);
        QString name = QString::fromStdString(scene);
        name.replace(QLatin1Char(' '), QLatin1Char('-')).remove(QLatin1Char(','));
        const QString file = QStringLiteral("%1/%2-%3").arg(folder).arg(pictures_++, 2, 10, QLatin1Char('0')).arg(name);
        shown.grab().save(file + QStringLiteral(".png"));
        // and what is scrolled out of sight
        for (PageScroll* page : shown.findChildren<PageScroll*>()) {
            QScrollBar* bar = page->verticalScrollBar();
            if (!page->isVisible() || bar->maximum() < 8) continue;
            const int before = bar->value();
            bar->setValue(bar->maximum());
            settle();
            shown.grab().save(file + QStringLiteral("-below.png"));
            bar->setValue(before);
        }
    }

    using At = std::function<void(const std::string&)>;

    static void write(const std::filesystem::path& file, const std::string& text) { std::ofstream(file) << text; }
    // A few points of the sample's own track.
    static std::string track(const std::string& text, int from) {
        std::string points;
        std::size_t at = text.find("<trkpt", text.find("<trkseg>") + static_cast<std::size_t>(400 * from));
        for (int k = 0; k < 5 && at != std::string::npos; ++k) {
            points += text.substr(at, text.find('>', at) - at) + "></trkpt>";
            at = text.find("<trkpt", at + 200);
        }
        return points;
    }

    void walk_step(const At& at) {
        go_to(Qt::Key_1);
        press(Qt::Key_V);
        window_.choices().pick_mound(std::nullopt);
        at("walk, read");
        window_.choices().pick_mound(4);
        at("walk, read, a mark");
        press(Qt::Key_I);
        at("walk, who dug");
        press(Qt::Key_1);
        at("walk, who dug, second question");
        press(Qt::Key_2);
        at("walk, who dug, told");
        press(Qt::Key_Escape);
        press(Qt::Key_L);
        at("walk, looks wrong");
        press(Qt::Key_N);
        at("walk, looks wrong, next");
        press(Qt::Key_T);
        at("walk, notes");
        window_.slip().walk().notes().take_all_of_the_rest();
        at("walk, notes, the rest");
        press(Qt::Key_W);
        at("walk, not seen");
    }
    void ground_step(const At& at) {
        go_to(Qt::Key_2);
        at("ground");
        for (const GroundShape shape : shapes_of(window_.session().field()->survey.ground)) {
            window_.drawing().pick(shape);
            at("ground, a shape");
        }
        press(Qt::Key_Escape);
        press(Qt::Key_B);
        window_.map().setFocus();
        at("ground, drawing");
        press(Qt::Key_Escape);
        press(Qt::Key_R);
        EXPECT_TRUE(window_.tracing().active());
        at("ground, tracing");
        press(Qt::Key_Escape);
        press(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
        auto* server = window_.findChild<ServerDialog*>();
        ASSERT_NE(server, nullptr);
        look_at(*server, "server asked for", looking_);
        server->entered().setText(QStringLiteral("https://tiles.example.org/ground/{z}/{x}/{y}.png"));
        look_at(*server, "server, what is asked of whom", looking_);
        server->entered().setText(QStringLiteral("https://tiles.example.org/ground/{z}/{x}.png"));
        look_at(*server, "server, a place is missing", looking_);
        put_away(*server);
    }
    // What a judgement waits for.
    void judged() {
        EXPECT_TRUE(wait(
            [&] { return window_.session().plan_is_current() && window_.work().holds() && !window_.work().working(); }));
    }
    void method_step(const At& at) {
        go_to(Qt::Key_4);
        judged();
        const int before = window_.session().history().index();
        MethodPage& page = window_.slip().method();
        const auto part = [&](Qt::Key key, const std::string& scene) {
            window_.map().setFocus();
            press(key);
            at("method, " + scene);
        };
        part(Qt::Key_M, "methods");
        part(Qt::Key_N, "conditions");
        part(Qt::Key_L, "label");
        part(Qt::Key_A, "against");
        part(Qt::Key_O, "load");
        page.methods().choose("fumigant");
        page.conditions().row(Question::soil_temperature)->answer().enter(QStringLiteral("nonsense"));
        judged();
        part(Qt::Key_M, "a method");
        part(Qt::Key_N, "an answer that is none");
        part(Qt::Key_L, "label wanted");
        part(Qt::Key_A, "what stops it");
        page.load().enter_budget(BudgetUnit::sets, QStringLiteral("12"));
        judged();
        part(Qt::Key_O, "a budget");
        while (window_.session().history().index() > before) window_.session().history().undo();
        judged();
    }
    void placing(const At& at) {
        go_to(Qt::Key_2);
        const QString plat = folder_.filePath(QStringLiteral("plat %1.jpg").arg(++plats_));
        QImage picture(400, 300, QImage::Format_RGB32);
        picture.fill(Qt::white);
        QPainter painter(&picture);
        for (int i = 0; i < 8; ++i) painter.drawLine(50 * i, 0, 50 * i, 299);
        painter.end();
        EXPECT_TRUE(picture.save(plat));
        window_.imagery().add(plat.toStdString());
        EXPECT_TRUE(wait([&] { return window_.placing().active() && window_.picture().is_open(); }));
        EXPECT_TRUE(wait([&] { return window_.picture().settled(); })) << "the picture's tiles";
        EXPECT_TRUE(wait([&] { return window_.session().plan_is_current(); })) << "the plan";
        at("a plat");
        const LocalPoint middle = window_.map().view().to_local(window_.map().rect().center());
        struct Pair {
            PicturePixel spot;
            LocalVector from_the_middle;
        };
        for (const Pair& pair : {Pair{{20, 20}, {-90.0, 65.0}}, Pair{{380, 30}, {90.0, 62.0}},
                                 Pair{{360, 280}, {82.0, -64.0}}, Pair{{30, 270}, {-88.0, -58.0}}}) {
            window_.placing().take_spot(pair.spot);
            window_.placing().take_place(middle + pair.from_the_middle);
        }
        window_.placing().pick(1);
        at("a plat, pairs");
        window_.placing().leave();
        settle();
        at("ground, a picture under it");
        auto* list = window_.findChild<ImageryList*>();
        ASSERT_NE(list, nullptr);
        Q_EMIT list->take_away_wanted(plat.toStdString());
        settle();
    }
    // A desktop gives the window back the focus that a dialogue had, a test without one does not.
    void put_away(QDialog& dialog) {
        dialog.reject();
        window_.activateWindow();
        EXPECT_TRUE(QTest::qWaitForWindowActive(&window_));
        settle();
    }
    void systems_step(const At& at) {
        go_to(Qt::Key_3);
        window_.choices().pick_system(std::nullopt);
        at("systems");
        window_.choices().pick_system(0);
        at("systems, one");
        press(Qt::Key_L);
        window_.choices().pick_mound(3);
        at("systems, corrections");
        press(Qt::Key_O);
        at("systems, one animal");
        press(Qt::Key_Escape);
        press(Qt::Key_V);
        window_.choices().pick_mound(std::nullopt);
    }
    void sets_step(const At& at) {
        go_to(Qt::Key_5);
        at("sets");
        press(Qt::Key_W);
        at("sets, why here");
        press(Qt::Key_W);
        press(Qt::Key_M);
        at("sets, moving");
        press(Qt::Key_Escape);
        for (const Qt::Key decision : {Qt::Key_K, Qt::Key_D}) {
            press(decision);
            press(Qt::Key_PageUp);
            at("sets, decided");
        }
        press(Qt::Key_O);
        at("sets, which to go through");
        press(Qt::Key_O);
        press(Qt::Key_T);
        at("sets, several");
        press(Qt::Key_Escape);
        press(Qt::Key_R);
        EXPECT_TRUE(wait([&] { return window_.tours().holds(); }));
        at("sets, walking order");
        press(Qt::Key_Escape);
        press(Qt::Key_Z, Qt::ControlModifier);
        press(Qt::Key_Z, Qt::ControlModifier);
        window_.slip().say(
            QStringLiteral("Handed out: a-field-with-a-long-name-plan.gpkg and a-field-with-a-long-name-sets.gpx"),
            Slip::Weight::news);
        at("sets, a notice");
        window_.slip().put_notice_away();
    }
    void over_the_window(const At& at) {
        press(Qt::Key_F1);
        at("keys");
        press(Qt::Key_F1);
        if (!wait([&] { return window_.session().plan_is_current(); }) || !window_.open_hand_out()) {
            ADD_FAILURE() << "no plan to hand out";
            return;
        }
        look_at(*window_.hand_out_dialog(), "hand out", looking_);
        put_away(*window_.hand_out_dialog());
        window_.reading().desk().lay_out_again();
        EXPECT_TRUE(wait([&] { return window_.reading().isVisible() && !window_.reading().desk().reading(); }));
        at("files read");
        window_.reading().put_away();
        go_to(Qt::Key_1);
    }

    MainWindow& window_;
    QTemporaryDir folder_;
    LookAt looking_;
    int pictures_ = 0;
    int plats_ = 0;
};

}  // namespace plugside
