// Tiles of a map server, against a server of the test's own on the loopback: asked of that one address, after a yes, and for nothing
// else; refused, slow and wrong answers are told in a sentence.
#include "app/session/server_imagery.h"

#include <gtest/gtest.h>

#include <QBuffer>
#include <QImage>
#include <algorithm>
#include <cmath>
#include <set>

#include "app/batch/sample_fields.h"
#include "app/session/imagery.h"
#include "app/window/server_dialog.h"
#include "tests/app/application.h"
#include "tests/app/session/http_server.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using testing_support::HttpServer;
using testing_support::TemporaryFolder;

QByteArray tile_of(const QColor& colour, const char* format = "PNG", int size = 256) {
    QImage image(size, size, QImage::Format_RGB32);
    image.fill(colour);
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, format);
    return bytes;
}

struct Asking {
    QApplication& program = application();  // before what its event loop serves
    HttpServer http;
    TemporaryFolder folder;
    Imagery imagery{folder.path() / "copies"};
    ViewTransform view{{0.0, 0.0}, 2.0, QSizeF(640.0, 480.0)};
    QStringList failures;

    Asking() {
        http.answer = [](const std::string&) { return HttpServer::Answer{200, tile_of(Qt::green), {}, false}; };
        imagery.lie_on(LocalFrame::centred_on(made_up_place()));
        QObject::connect(&imagery, &Imagery::server_failed, [this](const QString& sentence) { failures << sentence; });
    }
    void say_yes(const std::string& ending = "/ground/{z}/{x}/{y}.png", int deepest = 19) {
        const auto address = TileAddress::of(http.address() + ending);
        ASSERT_TRUE(address) << address.error();
        imagery.ask_server(*address, deepest);
    }
    std::shared_ptr<const ImageryScene> look() { return imagery.scene(view, 1.0, Theme::light); }
    std::shared_ptr<const ImageryScene> settled() {
        std::shared_ptr<const ImageryScene> scene;
        EXPECT_TRUE(QTest::qWaitFor(
            [&] {
                scene = look();
                return imagery.settled();
            },
            60000));
        return scene;
    }
    bool fails() {
        return QTest::qWaitFor(
            [&] {
                look();
                return !failures.empty();
            },
            60000);
    }
};

TEST(ServerImagery, NothingIsAskedOfAnyoneBeforeAYes) {
    Asking asking;
    QSettings().setValue(QStringLiteral("server/address"), QString::fromStdString(asking.http.address() + "/{z}/{x}/{y}"));
    ServerDialog dialog;
    dialog.show();
    EXPECT_TRUE(dialog.yes().isEnabled());
    EXPECT_TRUE(dialog.told().contains(QStringLiteral("127.0.0.1")));
    EXPECT_TRUE(dialog.told().contains(QStringLiteral("Nothing of the project is sent")));
    asking.look();
    dialog.reject();
    QTest::qWait(100);
    EXPECT_TRUE(asking.http.asked.empty());
    QSettings().clear();
}

TEST(ServerImagery, TilesOfWhatIsLookedAtAreAskedOnceAndDrawn) {
    Asking asking;
    asking.say_yes();
    const auto scene = asking.settled();
    ASSERT_NE(scene, nullptr);
    ASSERT_FALSE(scene->pieces.empty());
    const ImageryTile& tile = *scene->pieces.front().tile;
    const std::size_t middle =
        (static_cast<std::size_t>(tile.size) * (static_cast<std::size_t>(tile.size) / 2 + 1) / 1) * 4 - 4 * 128;
    EXPECT_EQ(tile.rgba[middle], 0);
    EXPECT_EQ(tile.rgba[middle + 1], 255);
    EXPECT_EQ(tile.rgba[middle + 3], 255);
    const std::size_t asked = asking.http.asked.size();
    EXPECT_GT(asked, 0U);
    EXPECT_LT(asked, 40U);
    EXPECT_EQ(std::set<std::string>(asking.http.asked.begin(), asking.http.asked.end()).size(), asked);
    for (const std::string& path : asking.http.asked) EXPECT_EQ(path.rfind("/ground/", 0), 0U) << path;
    asking.view = asking.view.panned({3.0, 0.0});
    asking.settled();
    EXPECT_EQ(asking.http.asked.size(), asked);  // what came is kept
    EXPECT_TRUE(asking.failures.empty());
}

TEST(ServerImagery, ARequestSaysNothingButWhichTileAndWhoseProgram) {
    Asking asking;
    asking.http.answer = [](const std::string&) {
        return HttpServer::Answer{200, tile_of(Qt::green), "Set-Cookie: who=you\r\n", false};
    };
    asking.say_yes();
    asking.settled();
    asking.view = asking.view.panned({900.0, 0.0});
    asking.settled();
    for (const std::string& request : asking.http.requests) {
        EXPECT_EQ(request.rfind("GET /ground/", 0), 0U) << request;
        for (const char* no : {"Cookie", "Referer", "Authorization", "creek", "Origin"})
            EXPECT_EQ(request.find(no), std::string::npos) << request;
        EXPECT_NE(request.find("User-Agent: Plugside"), std::string::npos) << request;
    }
}

TEST(ServerImagery, ATileThatTheServerHasNotIsTransparentAndNoFailure) {
    Asking asking;
    asking.http.answer = [](const std::string&) { return HttpServer::Answer{404, "none", {}, false}; };
    asking.say_yes();
    EXPECT_EQ(asking.settled(), nullptr);
    EXPECT_TRUE(asking.failures.empty());
}

TEST(ServerImagery, ARefusedConnectionIsToldWhenItBeginsAndWhenItIsGivenUp) {
    Asking asking;
    asking.say_yes();
    asking.http.close();
    ASSERT_TRUE(asking.fails());
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            asking.look();
            return !asking.imagery.server()->asking() || asking.imagery.settled();
        },
        60000));
    EXPECT_LE(asking.failures.size(), 2);
    EXPECT_TRUE(asking.failures.front().contains(QStringLiteral("refuses the connection")))
        << asking.failures.front().toStdString();
}

TEST(ServerImagery, AServerThatDoesNotAnswerIsGivenUpAfterItsTime) {
    Asking asking;
    asking.http.answer = [](const std::string&) { return HttpServer::Answer{200, {}, {}, true}; };
    asking.say_yes();
    asking.imagery.server()->set_time_out(std::chrono::milliseconds(200));
    ASSERT_TRUE(asking.fails());
    EXPECT_TRUE(asking.failures.front().contains(QStringLiteral("does not answer in time")))
        << asking.failures.front().toStdString();
}

TEST(ServerImagery, WrongAnswersAreToldByWhatTheyAre) {
    struct Wrong {
        HttpServer::Answer answer;
        const char* told;
    };
    HttpServer other;  // where a redirect would lead
    const Wrong wrongs[] = {
        {{500, "oops", {}, false}, "answers with the number 500"},
        {{403, "no", {}, false}, "answers with the number 403"},
        {{200, "<html>sign in</html>", {}, false}, "no picture of a tile"},
        {{200, {}, {}, false}, "no picture of a tile"},
        {{200, QByteArray(5 * 1024 * 1024, 'x'), {}, false}, "more than a tile holds"},
        {{302, {}, QByteArray("Location: ") + other.address().c_str() + "/x\r\n", false}, "sends on to 127.0.0.1"}};
    for (const Wrong& wrong : wrongs) {
        Asking asking;
        asking.http.answer = [&](const std::string&) { return wrong.answer; };
        asking.say_yes();
        ASSERT_TRUE(asking.fails()) << wrong.told;
        EXPECT_TRUE(asking.failures.front().contains(QString::fromLatin1(wrong.told)))
            << asking.failures.front().toStdString();
    }
    EXPECT_TRUE(other.asked.empty());
}

TEST(ServerImagery, APictureThatCannotBeDecodedIsTransparent) {
    Asking asking;
    asking.http.answer = [](const std::string&) {
        return HttpServer::Answer{200, QByteArray("\x89PNG\r\n\x1A\n and then nothing of the kind"), {}, false};
    };
    asking.say_yes();
    EXPECT_EQ(asking.settled(), nullptr);
}

TEST(ServerImagery, HiddenTakenAwayOrInAnotherFieldNobodyIsAskedAnyMore) {
    Asking asking;
    asking.say_yes();
    asking.settled();
    const auto look_elsewhere = [&] {
        asking.view = asking.view.panned({2000.0, 0.0});
        asking.look();
        QTest::qWait(100);
        return asking.http.asked.size();
    };
    std::size_t asked = asking.http.asked.size();
    asking.imagery.show_server(false);
    EXPECT_EQ(look_elsewhere(), asked);
    asking.imagery.show_server(true);
    asking.settled();
    EXPECT_GT(asking.http.asked.size(), asked);
    asked = asking.http.asked.size();
    asking.imagery.leave_server();
    EXPECT_EQ(look_elsewhere(), asked);
    asking.say_yes();
    asking.settled();
    asked = asking.http.asked.size();
    asking.imagery.lie_on(LocalFrame::centred_on({10.0, 50.0}));
    EXPECT_EQ(asking.imagery.server(), nullptr);
    EXPECT_EQ(look_elsewhere(), asked);
    EXPECT_TRUE(asking.imagery.named().empty());  // no project names it
}

TEST(ServerImagery, NoTileFinerThanTheServersIsAskedFor) {
    Asking asking;
    asking.view = ViewTransform{{0.0, 0.0}, 100.0, QSizeF(640.0, 480.0)};
    asking.say_yes("/{z}/{x}/{-y}", 15);
    asking.settled();
    ASSERT_FALSE(asking.http.asked.empty());
    for (const std::string& path : asking.http.asked) EXPECT_EQ(path.rfind("/15/", 0), 0U) << path;
}

}  // namespace
}  // namespace plugside
