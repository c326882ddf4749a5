#include "app/session/server_imagery.h"

#include <QNetworkAccessManager>
#include <QNetworkCookie>
#include <QNetworkCookieJar>
#include <QNetworkProxy>
#include <QNetworkReply>
#include <QNetworkRequest>
#include <QUrl>
#include <algorithm>
#include <utility>

namespace plugside {

namespace {

constexpr std::size_t most_under_way = 4;
constexpr qint64 most_bytes_an_answer = qint64{4} * 1024 * 1024;
constexpr std::size_t most_bytes_kept = std::size_t{48} * 1024 * 1024;
constexpr std::size_t most_places_known = 4000;
constexpr const char* too_much = "too_much";
constexpr int not_found = 404;
constexpr int no_content = 204;
constexpr int gone = 410;

// Neither sends nor keeps any.
class NoCookies : public QNetworkCookieJar {
public:
    using QNetworkCookieJar::QNetworkCookieJar;
    [[nodiscard]] QList<QNetworkCookie> cookiesForUrl(const QUrl&) const override { return {}; }
    bool setCookiesFromUrl(const QList<QNetworkCookie>&, const QUrl&) override { return false; }
};

int status_of(const QNetworkReply& reply) { return reply.attribute(QNetworkRequest::HttpStatusCodeAttribute).toInt(); }

}  // namespace

std::optional<ServerAnswers::Bytes> ServerAnswers::find(const ServerTile& tile) {
    const std::scoped_lock lock(mutex_);
    const auto found = by_tile_.find(tile);
    if (found == by_tile_.end()) return std::nullopt;
    by_use_.splice(by_use_.begin(), by_use_, found->second);
    return found->second->bytes;
}

void ServerAnswers::keep(const ServerTile& tile, Bytes bytes) {
    const std::scoped_lock lock(mutex_);
    if (by_tile_.contains(tile)) return;
    constexpr std::size_t beside = 200;  // what an entry takes besides
    bytes_ += beside + (bytes ? bytes->size() : 0);
    by_use_.push_front({tile, std::move(bytes)});
    by_tile_[tile] = by_use_.begin();
    while (bytes_ > most_bytes_ && by_use_.size() > 1) {
        const Kept& last = by_use_.back();
        bytes_ -= beside + (last.bytes ? last.bytes->size() : 0);
        by_tile_.erase(last.tile);
        by_use_.pop_back();
    }
}

ServerImagery::ServerImagery(TileAddress address, int deepest, GeographicPoint frame_centre, QObject* parent)
    : QObject(parent),
      address_(std::move(address)),
      deepest_(deepest),
      frame_centre_(frame_centre),
      ground_(frame_centre, deepest),
      answers_(std::make_shared<ServerAnswers>(most_bytes_kept)),
      network_(new QNetworkAccessManager(this)) {
    network_->setCookieJar(new NoCookies(network_));
    network_->setRedirectPolicy(QNetworkRequest::ManualRedirectPolicy);
    network_->setStrictTransportSecurityEnabled(false);
    network_->setProxy(QNetworkProxy::NoProxy);
}

ServerImagery::~ServerImagery() { stop(); }

int ServerImagery::finest_zoom() const {
    int zoom = least_zoom;
    while (zoom < most_zoom && ground_.level_for(tile_resolution_m(zoom)) < deepest_) ++zoom;
    return std::min(zoom + 1, most_zoom);
}

const std::vector<ServerTile>& ServerImagery::under(const TilePlace& place, int size) {
    if (under_.size() > most_places_known) under_.clear();
    const auto found = under_.find(place);
    return found != under_.end() ? found->second : under_.emplace(place, ground_.under(place, size)).first->second;
}

bool ServerImagery::ready(const TilePlace& place, int size) {
    const auto& tiles = under(place, size);
    return std::all_of(tiles.begin(), tiles.end(),
                       [this](const ServerTile& tile) { return broken_.contains(tile) || answers_->find(tile); });
}

void ServerImagery::want(const std::vector<TilePlace>& places, int size) {
    std::vector<ServerTile> tiles;
    std::set<ServerTile> seen;
    for (const TilePlace& place : places)
        for (const ServerTile& tile : under(place, size))
            if (seen.insert(tile).second && !broken_.contains(tile) && !answers_->find(tile)) tiles.push_back(tile);
    std::vector<QNetworkReply*> given_up;
    std::erase_if(under_way_, [&](const auto& asked) {
        if (seen.contains(asked.first)) return false;
        given_up.push_back(asked.second);
        return true;
    });
    for (QNetworkReply* reply : given_up) reply->abort();
    std::erase_if(tiles, [this](const ServerTile& tile) { return under_way_.contains(tile); });
    std::reverse(tiles.begin(), tiles.end());
    wanted_ = std::move(tiles);
    ask_next();
}

void ServerImagery::ask_next() {
    while (asking() && !wanted_.empty() && under_way_.size() < most_under_way) {
        const ServerTile tile = wanted_.back();
        wanted_.pop_back();
        if (!under_way_.contains(tile)) ask(tile);
    }
}

void ServerImagery::ask(const ServerTile& tile) {
    QNetworkRequest request(QUrl(QString::fromStdString(address_.of_tile(tile)), QUrl::StrictMode));
    request.setHeader(QNetworkRequest::UserAgentHeader, QStringLiteral("Plugside"));
    request.setAttribute(QNetworkRequest::RedirectPolicyAttribute, QNetworkRequest::ManualRedirectPolicy);
    request.setAttribute(QNetworkRequest::CookieLoadControlAttribute, QNetworkRequest::Manual);
    request.setAttribute(QNetworkRequest::CookieSaveControlAttribute, QNetworkRequest::Manual);
    request.setAttribute(QNetworkRequest::AuthenticationReuseAttribute, QNetworkRequest::Manual);
    request.setTransferTimeout(static_cast<int>(time_out_.count()));
    QNetworkReply* reply = network_->get(request);
    under_way_[tile] = reply;
    connect(reply, &QNetworkReply::downloadProgress, reply, [reply](qint64 got, qint64 in_all) {
        if (std::max(got, in_all) <= most_bytes_an_answer) return;
        reply->setProperty(too_much, true);
        reply->abort();
    });
    connect(reply, &QNetworkReply::finished, this, [this, tile, reply] { take(tile, reply); });
    Q_EMIT changed();
}

QString ServerImagery::why_not(const QNetworkReply& reply) const {
    const QString server = QString::fromStdString(address_.server());
    const int status = status_of(reply);
    const QUrl elsewhere = reply.attribute(QNetworkRequest::RedirectionTargetAttribute).toUrl();
    if (!elsewhere.isEmpty())
        return tr("%1 sends on to %2. Only the address that you entered is asked; enter the other one if you trust it.")
            .arg(server, reply.url().resolved(elsewhere).host());
    if (reply.property(too_much).toBool()) return tr("%1 sends more than a tile holds.").arg(server);
    switch (reply.error()) {
        case QNetworkReply::HostNotFoundError: return tr("There is no server named %1, or no network.").arg(server);
        case QNetworkReply::ConnectionRefusedError: return tr("%1 refuses the connection.").arg(server);
        case QNetworkReply::TimeoutError:
        case QNetworkReply::OperationCanceledError: return tr("%1 does not answer in time.").arg(server);
        case QNetworkReply::SslHandshakeFailedError: return tr("%1 cannot show that it is itself.").arg(server);
        default: break;
    }
    if (status >= 400) return tr("%1 answers with the number %2 in place of a picture.").arg(server).arg(status);
    if (reply.error() != QNetworkReply::NoError) return tr("%1 broke off: %2.").arg(server, reply.errorString());
    return tr("%1 sends something that is no picture of a tile.").arg(server);
}

void ServerImagery::take(const ServerTile& tile, QNetworkReply* reply) {
    reply->deleteLater();
    const auto found = under_way_.find(tile);
    const bool given_up = found == under_way_.end() || found->second != reply;
    if (!given_up) under_way_.erase(found);
    if (given_up || stopped_) return;
    const int status = status_of(*reply);
    const bool none_there = status == not_found || status == no_content || status == gone;
    if (none_there) {
        answers_->keep(tile, nullptr);
    } else {
        const QByteArray bytes = reply->isOpen() ? reply->readAll() : QByteArray();
        auto answer = std::make_shared<const std::string>(bytes.toStdString());
        const bool good = reply->error() == QNetworkReply::NoError && status == 200 && looks_like_tile(*answer);
        if (!good) {
            broken_.insert(tile);
            fail(why_not(*reply));
            ask_next();
            return;
        }
        answers_->keep(tile, std::move(answer));
    }
    failures_in_a_row_ = 0;
    trouble_.clear();
    ask_next();
    Q_EMIT arrived();
    Q_EMIT changed();
}

void ServerImagery::fail(const QString& sentence) {
    ++failures_in_a_row_;
    if (!asking()) wanted_.clear();
    const bool news = std::exchange(trouble_, sentence) != sentence;
    if (news || failures_in_a_row_ == most_failures) Q_EMIT failed(sentence);
    Q_EMIT arrived();  // what waited for it goes without
    Q_EMIT changed();
}

void ServerImagery::stop() {
    stopped_ = true;
    wanted_.clear();
    const auto now = std::exchange(under_way_, {});
    for (const auto& [tile, reply] : now) reply->abort();
    Q_EMIT changed();
}

void ServerImagery::ask_again() {
    stopped_ = false;
    failures_in_a_row_ = 0;
    broken_.clear();
    trouble_.clear();
    Q_EMIT changed();
}

std::function<ServerImagery::Make()> ServerImagery::maker() const {
    return [answers = answers_, centre = frame_centre_, deepest = deepest_]() -> Make {
        auto ground = std::make_shared<ServerGround>(centre, deepest);
        return [answers, ground](const TilePlace& place, int size) -> std::optional<ImageryTile> {
            return ground->joined(place, size,
                                  [&](const ServerTile& tile) { return answers->find(tile).value_or(nullptr); });
        };
    };
}

}  // namespace plugside
