// Imagery that a server has: asked for only after a person entered its address and said yes, of that one server, for the tiles that
// are looked at, and for nothing else. There is no other way in the program to the network.
//
// Sent:    GET requests for the address with level, column and row in it; the program's name as user agent; no cookie, no referrer,
//          nothing of the project. Names are looked up by the system, as by every program; no proxy.
// Elsewhere: an answer that sends to another place is not followed: it is told as a failure that names the place.
// Limits:  four requests at a time, 15 s each, 4 MiB an answer; what is no longer looked at is given up. After `most_failures` in a
//          row nothing more is asked until `ask_again`.
// Kept:    answers in memory, 48 MiB, the longest unused go first; nothing on disk.
// ready:   whether all that a tile of the field needs has come or is known not to be there; `make` then makes it, on any thread.
// stop:    gives up what is under way at once.
// Errors:  a sentence (`failed`), told once until something comes, and once more when it gives up: no such server, refused, too late, an answer with its number,
//          no picture.
#pragma once

#include <QObject>
#include <QString>
#include <chrono>
#include <functional>
#include <list>
#include <map>
#include <memory>
#include <mutex>
#include <optional>
#include <set>
#include <vector>

#include "geo/imagery/server_tiles.h"

class QNetworkAccessManager;
class QNetworkReply;

namespace plugside {

// What a server answered, for several threads. Null: it has no such tile.
class ServerAnswers {
public:
    using Bytes = std::shared_ptr<const std::string>;
    explicit ServerAnswers(std::size_t most_bytes) : most_bytes_(most_bytes) {}
    // Nothing: not answered yet.
    [[nodiscard]] std::optional<Bytes> find(const ServerTile& tile);
    void keep(const ServerTile& tile, Bytes bytes);

private:
    struct Kept {
        ServerTile tile;
        Bytes bytes;
    };
    std::mutex mutex_;
    std::size_t most_bytes_;
    std::size_t bytes_ = 0;
    std::list<Kept> by_use_;
    std::map<ServerTile, std::list<Kept>::iterator> by_tile_;
};

class ServerImagery : public QObject {
    Q_OBJECT

public:
    static constexpr int most_failures = 6;

    ServerImagery(TileAddress address, int deepest, GeographicPoint frame_centre, QObject* parent = nullptr);
    ~ServerImagery() override;

    [[nodiscard]] const TileAddress& address() const { return address_; }
    [[nodiscard]] int deepest() const { return deepest_; }
    // The finest tiles of the field that are worth making.
    [[nodiscard]] int finest_zoom() const;

    [[nodiscard]] bool ready(const TilePlace& place, int size);
    // Asks for what these need, the first ones first; what is under way for others is given up.
    void want(const std::vector<TilePlace>& places, int size);
    void stop();
    // Whether it asks: it was not stopped, and not too much went wrong.
    [[nodiscard]] bool asking() const { return !stopped_ && failures_in_a_row_ < most_failures; }
    [[nodiscard]] bool waiting() const { return !under_way_.empty() || !wanted_.empty(); }
    void ask_again();
    // Empty while all goes well.
    [[nodiscard]] const QString& trouble() const { return trouble_; }
    void set_time_out(std::chrono::milliseconds most) { time_out_ = most; }

    // For a worker of its own, made anew by each: the tile, from what was answered.
    using Make = std::function<std::optional<ImageryTile>(const TilePlace&, int size)>;
    [[nodiscard]] std::function<Make()> maker() const;

Q_SIGNALS:
    void arrived();
    void failed(const QString& sentence);
    void changed();

private:
    [[nodiscard]] const std::vector<ServerTile>& under(const TilePlace& place, int size);
    void ask_next();
    void ask(const ServerTile& tile);
    void take(const ServerTile& tile, QNetworkReply* reply);
    void fail(const QString& sentence);
    [[nodiscard]] QString why_not(const QNetworkReply& reply) const;

    TileAddress address_;
    int deepest_;
    GeographicPoint frame_centre_;
    ServerGround ground_;
    std::shared_ptr<ServerAnswers> answers_;
    std::map<TilePlace, std::vector<ServerTile>> under_;
    std::vector<ServerTile> wanted_;  // the most wanted last
    std::map<ServerTile, QNetworkReply*> under_way_;
    std::set<ServerTile> broken_;  // no answer; asked for again by ask_again alone
    std::chrono::milliseconds time_out_{15000};
    int failures_in_a_row_ = 0;
    bool stopped_ = false;
    QString trouble_;
    QNetworkAccessManager* network_;
};

}  // namespace plugside
