#include "app/session/imagery.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "app/planning/call_there.h"
#include "app/session/server_imagery.h"
#include "geo/imagery/reduced_copy.h"

namespace plugside {

namespace {

constexpr std::uintmax_t most_copy_bytes = std::uintmax_t{4} * 1024 * 1024 * 1024;
constexpr double share_in_sunlight = 0.2;
constexpr int tile_size = 256;
constexpr int furthest_stand_in = 6;
constexpr int arrival_pause_ms = 30;
constexpr int most_tiles_a_view = 600;

TilePlace coarser(const TilePlace& place, int by) { return {place.zoom - by, place.column >> by, place.row >> by}; }

ImageryPiece piece_of(const TilePlace& place, std::shared_ptr<const ImageryTile> tile) {
    return {std::move(tile), tile_corner(place, tile_size), tile_resolution_m(place.zoom) * tile_size};
}

struct TileRange {
    TilePlace low;
    TilePlace high;
    [[nodiscard]] std::int64_t count() const {
        return std::max<std::int64_t>(high.column - low.column + 1, 0) * std::max<std::int64_t>(high.row - low.row + 1, 0);
    }
};

TileRange tiles_over(LocalPoint low, LocalPoint high, int zoom) {
    const double side_m = tile_resolution_m(zoom) * tile_size;
    const auto index = [side_m](double metres) { return static_cast<std::int64_t>(std::floor(metres / side_m)); };
    return {{zoom, index(low.east_m), index(low.north_m)}, {zoom, index(high.east_m), index(high.north_m)}};
}

}  // namespace

Imagery::Imagery(std::filesystem::path copies, QObject* parent, std::size_t most_tile_bytes)
    : QObject(parent), copies_(std::move(copies)), store_(most_tile_bytes), workers_(store_, [this] {
          // many tiles at once become one drawing
          call_there(this, [this] {
              if (!arrivals_.isActive()) arrivals_.start(arrival_pause_ms);
          });
      }) {
    arrivals_.setSingleShot(true);
    connect(&arrivals_, &QTimer::timeout, this, [this] {
        ++state_;
        Q_EMIT tiles_arrived();
    });
}

Imagery::~Imagery() {
    opening_.stop();
    copying_.stop();
}

void Imagery::lie_on(const LocalFrame& frame) {
    if (frame.centre() == frame_.centre()) return;
    close_all();
    frame_ = frame;
    ++state_;
    Q_EMIT changed();
}

void Imagery::close_all() {
    leave_server();
    waiting_.clear();
    at_hand_.reset();
    not_there_.clear();
    unplaced_.clear();
    opening_.stop();
    copying_.stop();
    for (const OpenImagery& picture : pictures_) {
        workers_.close(picture.number);
        store_.forget(picture.number);
    }
    pictures_.clear();
}

void Imagery::add(const std::filesystem::path& file, const ImageryAnswers& answers) {
    waiting_.push_back({file, answers});
    if (!opening_.running()) open_next();
    Q_EMIT changed();
}

void Imagery::restore(const std::vector<ProjectPicture>& pictures, double tone) {
    close_all();
    tone_ = std::clamp(tone, 0.0, 1.0);
    for (const ProjectPicture& picture : pictures)
        waiting_.push_back({picture.file, picture.answers, picture.visible, true});
    open_next();
    ++state_;
    Q_EMIT changed();
}

std::vector<ProjectPicture> Imagery::named() const {
    std::vector<ProjectPicture> names = not_there_;
    names.insert(names.end(), unplaced_.begin(), unplaced_.end());
    for (const OpenImagery& picture : pictures_)
        names.push_back({picture.source.facts().file, picture.visible, picture.answers});
    if (at_hand_) names.push_back({at_hand_->file, at_hand_->visible, at_hand_->answers});
    for (const Waiting& next : waiting_) names.push_back({next.file, next.visible, next.answers});
    return names;
}

void Imagery::open_next() {
    at_hand_.reset();
    if (waiting_.empty()) return;
    const Waiting next = waiting_.front();
    waiting_.pop_front();
    at_hand_ = next;
    opening_.start([this, next, frame = frame_](const Progress&) -> BackgroundWork::Apply {
        auto source =
            std::make_shared<tl::expected<ImagerySource, Refusal>>(ImagerySource::open(next.file, frame, next.answers));
        bool wants_copy = false;
        if (*source) {
            const auto copy = reduced_copy_of(**source, copies_);
            if (copy) *source = (*source)->with_reduced_copy(*copy);
            wants_copy = !copy && wants_reduced_copy(**source);
        }
        return [this, next, source, wants_copy] {
            at_hand_.reset();
            if (*source) {
                take(std::move(**source), next, wants_copy);
            } else {
                keep_for_later(next, source->error());
            }
            open_next();
        };
    });
}

void Imagery::keep_for_later(const Waiting& picture, const Refusal& why) {
    const ProjectPicture named{picture.file, picture.visible, picture.answers};
    if (why.code == Refusal::Code::needs_placement) {
        unplaced_.push_back(named);
        Q_EMIT changed();
        if (!picture.named_before) Q_EMIT wants_place(picture.file);
        return;
    }
    if (picture.named_before) not_there_.push_back(named);
    Q_EMIT refused(picture.file, why);
    Q_EMIT changed();
}

std::optional<ProjectPicture> Imagery::state_of(const std::filesystem::path& file) const {
    for (const ProjectPicture& picture : named())
        if (picture.file == file) return picture;
    return std::nullopt;
}

// False where it is not open, or not to be placed by that.
bool Imagery::place_anew(const ProjectPicture& picture) {
    for (OpenImagery& open : pictures_) {
        if (open.source.facts().file != picture.file || !picture.answers.placement) continue;
        const auto placed = open.source.placed_by(picture.answers);
        if (!placed) return false;
        workers_.close(open.number);
        store_.forget(open.number);
        open = {++numbers_, *placed, picture.answers, picture.visible, open.wants_copy, {}};
        for (const LocalPoint place : placed->facts().outline) open.box.add(place);
        workers_.open(open.number, open.source);
        return true;
    }
    return false;
}

void Imagery::put(const std::filesystem::path& file, const std::optional<ProjectPicture>& picture) {
    if (!picture || !place_anew(*picture)) {
        drop(file);
        const bool waits = picture && !picture->answers.placement && !picture->answers.pairs.empty();
        if (waits)
            unplaced_.push_back(*picture);
        else if (picture)
            waiting_.push_back({file, picture->answers, picture->visible, true});
        if (!opening_.running()) open_next();
    }
    ++state_;
    Q_EMIT changed();
}

void Imagery::drop(const std::filesystem::path& file) {
    const auto of_it = [&file](const auto& named) { return named.file == file; };
    for (const OpenImagery& open : pictures_)
        if (open.source.facts().file == file) {
            workers_.close(open.number);
            store_.forget(open.number);
        }
    std::erase_if(pictures_, [&file](const OpenImagery& open) { return open.source.facts().file == file; });
    std::erase_if(unplaced_, of_it);
    std::erase_if(not_there_, of_it);
    waiting_.remove_if(of_it);
    if (at_hand_ && of_it(*at_hand_)) {
        opening_.stop();
        at_hand_.reset();
    }
}

void Imagery::take(ImagerySource source, const Waiting& asked_for, bool wants_copy) {
    OpenImagery picture{++numbers_, std::move(source), asked_for.answers, asked_for.visible, wants_copy, {}};
    for (const LocalPoint place : picture.source.facts().outline) picture.box.add(place);
    workers_.open(picture.number, picture.source);
    pictures_.push_back(std::move(picture));
    std::stable_sort(pictures_.begin(), pictures_.end(), [](const OpenImagery& a, const OpenImagery& b) {
        const auto& first = a.source.facts().taken;
        const auto& second = b.source.facts().taken;
        if (!first || !second) return !first && second.has_value();
        return *first < *second;
    });
    if (!copying_.running()) copy_next();
    ++state_;
    Q_EMIT changed();
}

void Imagery::copy_next() {
    const auto next =
        std::find_if(pictures_.begin(), pictures_.end(), [](const OpenImagery& open) { return open.wants_copy; });
    if (next == pictures_.end()) return;
    next->wants_copy = false;
    copying_.start([this, source = next->source](const Progress& progress) -> BackgroundWork::Apply {
        trim_reduced_copies(copies_, most_copy_bytes);
        const auto copy = make_reduced_copy(source, copies_, progress);
        // without a copy it stays rough far out; nothing of the person's is missing
        return [this, file = source.facts().file, copied = copy ? std::optional(*copy) : std::nullopt] {
            use_copy(file, copied);
            copy_next();
        };
    });
}

// By its file: it may have been placed anew while it was copied.
void Imagery::use_copy(const std::filesystem::path& file, const std::optional<std::filesystem::path>& copied) {
    for (OpenImagery& open : pictures_) {
        if (!copied || open.source.facts().file != file) continue;
        open.source = open.source.with_reduced_copy(*copied);
        workers_.open(open.number, open.source);
    }
    ++state_;
    Q_EMIT changed();
}

void Imagery::take_away(std::uint64_t number) {
    std::erase_if(pictures_, [number](const OpenImagery& picture) { return picture.number == number; });
    workers_.close(number);
    store_.forget(number);
    ++state_;
    Q_EMIT changed();
}

void Imagery::show(std::uint64_t number, bool visible) {
    for (OpenImagery& picture : pictures_)
        if (picture.number == number) picture.visible = visible;
    ++state_;
    Q_EMIT changed();
}

void Imagery::set_tone(double tone) {
    tone = std::clamp(tone, 0.0, 1.0);
    if (tone == tone_) return;
    tone_ = tone;
    ++state_;
    Q_EMIT changed();
}

std::shared_ptr<const ImageryScene> Imagery::scene(const ViewTransform& view, double device_pixel_ratio, Theme theme) {
    const Asked asked{view, device_pixel_ratio, theme, state_};
    if (asked_ == asked) return scene_;
    asked_ = asked;
    auto scene = std::make_shared<ImageryScene>();
    scene->share = theme == Theme::sunlight ? tone_ / first_tone * share_in_sunlight : tone_;
    scene->share = std::min(scene->share, 1.0);
    std::vector<TileWish> wishes;
    if (server_ && server_shown_ && tone_ > 0.0) add_server(asked, *scene, wishes);
    for (const OpenImagery& picture : pictures_)
        // twice as fine as the picture at most: beyond that the painter enlarges as well
        if (picture.visible && tone_ > 0.0)
            add_pieces({picture.number, zoom_for(picture.source.facts().metres_per_pixel) + 1, picture.box,
                        picture.source.has_reduced_copy()},
                       asked, *scene, wishes);
    const LocalPoint middle = view.to_local(view.screen().center());
    const auto off = [&](const TileWish& wish) {
        const double half = 0.5 * tile_resolution_m(wish.key.place.zoom) * tile_size;
        return distance_m(tile_corner(wish.key.place, tile_size) + LocalVector{half, half}, middle);
    };
    std::stable_sort(wishes.begin(), wishes.end(), [&](const TileWish& a, const TileWish& b) {
        return a.care != b.care ? a.care == TileCare::quick : off(a) < off(b);
    });
    last_wishes_ = wishes;
    workers_.want(answered(std::move(wishes)));
    scene_ = scene->pieces.empty() ? nullptr : std::move(scene);
    return scene_;
}

void Imagery::add_server(const Asked& asked, ImageryScene& scene, std::vector<TileWish>& wishes) {
    add_pieces({server_number_, server_->finest_zoom(), asked.view.ground(), false}, asked, scene, wishes);
}

// What the workers can make now; a server's tiles that have not come are asked for.
std::vector<TileWish> Imagery::answered(std::vector<TileWish> wishes) {
    if (!server_) return wishes;
    std::vector<TilePlace> to_ask;
    std::erase_if(wishes, [&](const TileWish& wish) {
        if (wish.key.picture != server_number_ || server_->ready(wish.key.place, tile_size)) return false;
        to_ask.push_back(wish.key.place);
        return true;
    });
    server_->want(to_ask, tile_size);
    return wishes;
}

void Imagery::ask_server(const TileAddress& address, int deepest) {
    leave_server();
    server_ = std::make_unique<ServerImagery>(address, deepest, frame_.centre());
    server_number_ = ++numbers_;
    server_shown_ = true;
    workers_.open(server_number_, server_->maker());
    connect(server_.get(), &ServerImagery::arrived, this, [this] {
        if (!arrivals_.isActive()) arrivals_.start(arrival_pause_ms);
    });
    connect(server_.get(), &ServerImagery::failed, this, [this](const QString& sentence) {
        Q_EMIT server_failed(sentence);
        if (server_ && !server_->asking()) Q_EMIT changed();
    });
    ++state_;
    Q_EMIT changed();
}

void Imagery::leave_server() {
    if (!server_) return;
    server_->disconnect(this);
    server_->stop();
    server_.reset();
    workers_.close(server_number_);
    store_.forget(server_number_);
    ++state_;
    Q_EMIT changed();
}

// Hidden it asks for nothing; shown again it goes on, also where it gave up before.
void Imagery::show_server(bool visible) {
    if (!server_ || server_shown_ == visible) return;
    server_shown_ = visible;
    if (visible) {
        server_->ask_again();
        store_.forget(server_number_);
    } else {
        server_->stop();
    }
    ++state_;
    Q_EMIT changed();
}

void Imagery::add_pieces(const Tiled& tiled, const Asked& asked, ImageryScene& scene, std::vector<TileWish>& wishes) {
    const GroundBox seen = asked.view.ground();
    const LocalPoint low{std::max(seen.low().east_m, tiled.box.low().east_m),
                         std::max(seen.low().north_m, tiled.box.low().north_m)};
    const LocalPoint high{std::min(seen.high().east_m, tiled.box.high().east_m),
                          std::min(seen.high().north_m, tiled.box.high().north_m)};
    if (tiled.box.empty() || low.east_m >= high.east_m || low.north_m >= high.north_m) return;
    int zoom = std::min(zoom_for(1.0 / (asked.view.pixels_per_metre() * asked.device_pixel_ratio)), tiled.finest);
    while (zoom > least_zoom && tiles_over(low, high, zoom).count() > most_tiles_a_view) --zoom;
    const TileRange range = tiles_over(low, high, zoom);
    std::vector<ImageryPiece> fine;
    std::set<TilePlace> stand_ins;
    for (std::int64_t row = range.low.row; row <= range.high.row; ++row)
        for (std::int64_t column = range.low.column; column <= range.high.column; ++column) {
            const TileKey key{tiled.number, {zoom, column, row}};
            auto tile = store_.find(key);
            const bool made_before_copy = tile && tile->rough && tiled.has_copy;
            if (!tile || made_before_copy)
                wishes.push_back({key, TileCare::quick});
            else if (tile->rough)
                wishes.push_back({key, TileCare::whole});
            if (tile) {
                if (!tile->empty) fine.push_back(piece_of(key.place, std::move(tile)));
                continue;
            }
            for (int by = 1; by <= furthest_stand_in; ++by) {
                const TilePlace above = coarser(key.place, by);
                if (const auto found = store_.find({tiled.number, above}); !found) continue;
                stand_ins.insert(above);
                break;
            }
        }
    for (const TilePlace& place : stand_ins)  // by zoom: the coarsest first
        if (auto tile = store_.find({tiled.number, place}); tile && !tile->empty)
            scene.pieces.push_back(piece_of(place, std::move(tile)));
    scene.pieces.insert(scene.pieces.end(), fine.begin(), fine.end());
}

}  // namespace plugside
