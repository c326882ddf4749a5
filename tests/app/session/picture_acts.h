// What a person does to a picture without a position, at random: pairs laid, moved, removed, another kind of placement, the picture taken
// away. Beside random_acts.h, whose acts are the session's own.
#pragma once

#include <QImage>
#include <QTest>
#include <filesystem>
#include <string>

#include "app/commands/picture_command.h"
#include "app/placing/picture_placing.h"
#include "tests/app/session/keyed_choice.h"
#include "tests/geo/temporary_folder.h"

namespace plugside::testing_support {

class RandomPictureActs {
public:
    RandomPictureActs(FieldSession& session, Imagery& imagery, KeyedChoice& random)
        : session_(session), imagery_(imagery), random_(random) {}

    // A scan that lies beside no project, so that its whole path is kept of it.
    void lay() {
        file_ = folder_ / "plat.png";
        QImage scan(40, 30, QImage::Format_RGB32);
        scan.fill(Qt::white);
        scan.setPixelColor(7, 9, Qt::black);
        ASSERT_TRUE(scan.save(QString::fromStdString(file_.string())));
        imagery_.add(file_);
        ASSERT_TRUE(settle());
        ASSERT_TRUE(imagery_.state_of(file_).has_value());
    }
    [[nodiscard]] bool laid() const { return !file_.empty(); }
    [[nodiscard]] bool settle() {
        return QTest::qWaitFor([this] { return !imagery_.opening(); }, 120000);
    }

    // What it was; nothing is done to a picture that was taken away.
    std::string act() {
        if (!settle() || !imagery_.state_of(file_)) return "no picture";
        placing_.begin(file_);
        const std::size_t pairs = placing_.pairs().size();
        const double kind = random_.share();
        std::string done = "pair";
        if (pairs < 2 || kind < 0.4) {
            placing_.take_spot(spot());
            placing_.take_place(place());
        } else if (kind < 0.55) {
            placing_.shift_spot(random_.below(pairs), spot());
            done = "spot moved";
        } else if (kind < 0.7) {
            placing_.drag_place(random_.below(pairs), place());
            placing_.drop();
            done = "place dragged";
        } else if (kind < 0.8) {
            placing_.pick(random_.below(pairs));
            placing_.remove_picked();
            done = "pair removed";
        } else if (kind < 0.95) {
            placing_.use(random_.word(PlacementKind::affine));
            done = "kind";
        } else {
            take_away();
            done = "picture taken away";
        }
        placing_.leave();
        return done;
    }

private:
    PicturePixel spot() { return {random_.between(0.0, 40.0), random_.between(0.0, 30.0)}; }
    LocalPoint place() { return {random_.between(-80.0, 80.0), random_.between(-60.0, 60.0)}; }
    void take_away() {
        session_.push(new PictureCommand(file_, imagery_.state_of(file_), std::nullopt, QStringLiteral("away"),
                                         [&imagery = imagery_](const std::filesystem::path& of, const PictureCommand::State& to) {
                                             imagery.put(of, to);
                                         }));
    }

    FieldSession& session_;
    Imagery& imagery_;
    KeyedChoice& random_;
    PicturePlacing placing_{session_, imagery_};
    TemporaryFolder folder_;
    std::filesystem::path file_;
};

}  // namespace plugside::testing_support
