// How long the window keeps its thread, and how soon a moved mound's new systems are seen.
//
//   window_benchmark [mounds ...]      the sample, 300 and 5,000 unless told
//
// 1. Everything that the window is for, done by mouse and keys (tests/app/window/whole_session.h), on the sample with its imagery and on
//    made-up fields read from their files: of each act the event that kept the thread longest by its own work, who handled it, and the
//    time that passed. Bar: no event works for more than 50 ms.
// 2. Fifty marks, each moved at random by hand: from the move of the mouse until the map is painted with the first look at what it makes
//    of the systems about it. Bars: median 33 ms, slowest 150 ms. The same while a barrier is being drawn.
// Beside them, in the same run: a turn of the event loop without anything to do, and the bare drawing of one cached picture of the map's
// size. The exit code tells whether all bars hold. Times passed hold what other programs took of the machine.
#include <QApplication>
#include <QTimer>
#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <optional>
#include <random>

#include "core/simulation/burrow_simulator.h"
#include "geo/write/ground_layers.h"
#include "geo/write/walk_gpx.h"
#include "tests/app/application.h"
#include "tests/app/window/whole_session.h"
#include "tests/geo/temporary_folder.h"

namespace {

using namespace plugside;

constexpr double most_worked_ms = 50.0;
constexpr double median_look_ms = 33.0;
constexpr double slowest_look_ms = 150.0;

struct Times {
    std::vector<double> passed_ms;
    std::vector<double> worked_ms;  // by the window's thread
    void take(const ThreadTime& time) {
        passed_ms.push_back(time.passed_ms());
        worked_ms.push_back(time.worked_ms());
    }
    static double median(std::vector<double> ms) {
        if (ms.empty()) return 0.0;
        std::nth_element(ms.begin(), ms.begin() + static_cast<std::ptrdiff_t>(ms.size() / 2), ms.end());
        return ms[ms.size() / 2];
    }
    static double worst(const std::vector<double>& ms) { return ms.empty() ? 0.0 : *std::max_element(ms.begin(), ms.end()); }
};

class BarePicture : public QWidget {
public:
    BarePicture() : picture_(QSize(820, 740), QImage::Format_RGB32) {
        picture_.fill(Qt::gray);
        setAttribute(Qt::WA_OpaquePaintEvent);
    }

protected:
    void paintEvent(QPaintEvent*) override { QPainter(this).drawImage(0, 0, picture_); }

private:
    QImage picture_;
};

void print_references() {
    Times turns;
    for (int k = 0; k < 2000; ++k) {
        const ThreadTime turn;
        QApplication::processEvents();
        turns.take(turn);
    }
    BarePicture bare;
    bare.resize(820, 740);
    bare.show();
    QApplication::processEvents();
    Times blits;
    for (int k = 0; k < 200; ++k) {
        const ThreadTime blit;
        bare.repaint();
        blits.take(blit);
    }
    std::printf("reference: a turn of the loop %.4f ms, the bare picture %.3f ms (medians, time worked)\n",
                Times::median(turns.worked_ms), Times::median(blits.worked_ms));
}

struct FilesOfField {
    FieldSession::Files walk;
    FieldSession::Files pictures;
};

FilesOfField sample_files() {
    const std::filesystem::path sample = std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "sample-projects" / "creek-meadow";
    return {{sample / "walk.gpx", sample / "ground.gpkg"}, {sample / "imagery.tif"}};
}

FilesOfField made_up_files(std::size_t mounds, const std::filesystem::path& folder) {
    SimulationOptions options;
    options.mounds_wanted = mounds;
    options.seed = 7;
    options.with_ground = true;
    const SimulatedField field = simulate_field(options);
    const LocalFrame frame = LocalFrame::centred_on({-104.9, 41.0});
    FilesOfField files{{folder / "walk.gpx", folder / "ground.gpkg"}, {}};
    const bool written = write_walk(field.survey, frame, "Made-up field", files.walk[0]) &&
                         write_ground(field.survey.ground, frame, files.walk[1]);
    if (!written) std::abort();
    FilesOfField sample = sample_files();
    files.pictures = sample.pictures;
    return files;
}

// Whether all acts hold.
bool print_acts(const char* field, const Watchdog& watchdog) {
    bool holds = true;
    std::printf("%s: of each act the event that worked longest (all times in ms)\n", field);
    std::printf("  %-42s %6s %8s %8s %8s  %s\n", "act", "events", "worked", "passed", "turn", "handled");
    for (const Watchdog::Act& act : watchdog.acts()) {
        if (act.events == 0) continue;
        holds = holds && act.worst.worked_ms < most_worked_ms;
        std::printf("  %-42s %6zu %8.1f %8.1f %8.1f  %s%s\n", act.name.c_str(), act.events, act.worst.worked_ms, act.passed_ms,
                    act.turn_ms, act.worst.worked_ms < most_worked_ms ? "" : "OVER: ", act.worst.handled.c_str());
    }
    const Watchdog::Block worst = watchdog.worst();
    std::printf("  worst: %.1f ms worked, %s  %s\n", worst.worked_ms, worst.handled.c_str(), holds ? "holds" : "MISSED");
    return holds;
}

// Counts the paintings of the map.
class Paintings : public QObject {
public:
    explicit Paintings(QWidget& map) : map_(map) { map_.installEventFilter(this); }
    int count = 0;

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint) ++count;
        return QObject::eventFilter(watched, event);
    }

private:
    QWidget& map_;
};

// From `act` until the map is painted with a first look asked for by it; false where none came of it.
template <typename Act>
bool time_look(NearbyPreview& preview, Paintings& paintings, Act act, Times& times) {
    constexpr double patience_ms = 10000.0;
    QTimer heartbeat;  // so that a look that never comes is not waited for in vain
    heartbeat.start(1000);
    const std::uint64_t before = preview.asked();
    std::optional<int> painted_before;  // when the look arrived: the painting may follow within the same turn
    const auto listening = QObject::connect(&preview, &NearbyPreview::arrived, &paintings, [&] {
        if (!painted_before && preview.picture()->asked > before) painted_before = paintings.count;
    });
    const ThreadTime time;
    act();
    const bool asked = preview.asked() > before;
    while (asked && time.passed_ms() < patience_ms && (!painted_before || paintings.count == *painted_before))
        QApplication::processEvents(QEventLoop::WaitForMoreEvents);
    QObject::disconnect(listening);
    if (!painted_before || paintings.count == *painted_before) return false;
    times.take(time);
    return true;
}

bool print_looks(const char* field, const char* what, const Times& times) {
    const double median = Times::median(times.passed_ms);
    const double slowest = Times::worst(times.passed_ms);
    const bool holds = !times.passed_ms.empty() && median < median_look_ms && slowest < slowest_look_ms;
    std::printf("%s: %s, until it is painted: %zu looks, median %.1f ms, slowest %.1f ms; the window's thread worked %.1f, at most %.1f  %s\n",
                field, what, times.passed_ms.size(), median, slowest, Times::median(times.worked_ms),
                Times::worst(times.worked_ms), holds ? "holds" : "MISSED");
    return holds;
}

bool look_while_moving(const char* field, WholeSession& session) {
    MainWindow& window = session.window();
    MapView& map = window.map();
    Paintings paintings(map);
    std::mt19937_64 random(50);
    const auto survey_now = [&]() -> const Survey& { return window.session().field()->survey; };
    const auto at = [&](std::size_t mark) { return map.view().to_screen(survey_now().mounds[mark].plug).toPoint(); };
    Times times;
    QTest::keyClick(&window, Qt::Key_3);
    for (int tries = 0; times.passed_ms.size() < 50 && tries < 400; ++tries) {
        const std::size_t mark = random() % survey_now().mounds.size();
        if (why_not_used(survey_now(), survey_now().mounds[mark])) continue;
        session.near_a_mark(mark);
        const QPoint plug = at(mark);
        const QPoint to = plug + QPoint(static_cast<int>(random() % 60) - 30, static_cast<int>(random() % 60) - 30);
        QTest::mouseMove(&map, plug);
        QTest::mousePress(&map, Qt::LeftButton, {}, plug);
        static_cast<void>(session.settle());
        time_look(window.correcting().preview(), paintings, [&] { QTest::mouseMove(&map, to); }, times);
        window.correcting().put_away();
        QTest::mouseRelease(&map, Qt::LeftButton, {}, to);
        QApplication::processEvents();
    }
    return print_looks(field, "a mound moved", times);
}

bool look_while_drawing(const char* field, WholeSession& session) {
    MainWindow& window = session.window();
    MapView& map = window.map();
    Paintings paintings(map);
    std::mt19937_64 random(51);
    Times times;
    QTest::keyClick(&window, Qt::Key_2);
    session.near_a_mark(window.session().field()->survey.mounds.size() / 2);
    static_cast<void>(session.settle());
    QTest::keyClick(&window, Qt::Key_D);
    const QPoint middle(map.width() / 2, map.height() / 2);
    QTest::mouseMove(&map, middle);
    QTest::mouseClick(&map, Qt::LeftButton, {}, middle);
    for (int k = 0; k < 50; ++k) {
        QTest::qWait(2);
        const QPoint to = middle + QPoint(static_cast<int>(random() % 300) - 150, static_cast<int>(random() % 300) - 150);
        time_look(window.drawing().preview(), paintings, [&] { QTest::mouseMove(&map, to); }, times);
    }
    QTest::keyClick(&map, Qt::Key_Escape);
    return print_looks(field, "a barrier drawn", times);
}

bool measure(const char* field, const FilesOfField& files) {
    Watchdog& watchdog = application().watchdog();
    watchdog.forget();
    WholeSession session(watchdog, files.walk, files.pictures);
    session.run();
    bool holds = print_acts(field, watchdog);
    watchdog.forget();
    session.come_forward();
    holds = look_while_moving(field, session) && holds;
    return look_while_drawing(field, session) && holds;
}

}  // namespace

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    std::setvbuf(stdout, nullptr, _IOLBF, 0);
    plugside::application();
    print_references();
    bool holds = true;
    if (argc < 2) holds = measure("the sample", sample_files());
    std::vector<std::size_t> sizes{300, 5000};
    if (argc > 1) sizes.clear();
    for (int k = 1; k < argc; ++k) sizes.push_back(std::strtoul(argv[k], nullptr, 10));
    for (const std::size_t mounds : sizes) {
        const testing_support::TemporaryFolder folder;
        holds = measure((std::to_string(mounds) + " mounds").c_str(), made_up_files(mounds, folder.path())) && holds;
    }
    return holds ? 0 : 1;
}
