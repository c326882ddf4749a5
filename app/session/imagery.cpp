#include "app/session/imagery.h"

#include <algorithm>
#include <cmath>
#include <set>

#include "geo/imagery/reduced_copy.h"

namespace plugside {

namespace {

constexpr std::size_t most_tile_bytes = std::size_t{160} * 1024 * 1024;
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

Imagery::Imagery(std::filesystem::path copies, QObject* parent)
    : QObject(parent), copies_(std::move(copies)), store_(most_tile_bytes), workers_(store_, [this] {
          // many tiles at once become one drawing
          QMetaObject::invokeMethod(
              this,
              [this] {
                  if (!arrivals_.isActive()) arrivals_.start(arrival_pause_ms);
              },
              Qt::QueuedConnection);
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
    waiting_.clear();
    at_hand_.reset();
    not_there_.clear();
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
                if (next.named_before) not_there_.push_back({next.file, next.visible, next.answers});
                Q_EMIT refused(next.file, source->error());
                Q_EMIT changed();
            }
            open_next();
        };
    });
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
    copying_.start([this, number = next->number, source = next->source](const Progress& progress) -> BackgroundWork::Apply {
        trim_reduced_copies(copies_, most_copy_bytes);
        const auto copy = make_reduced_copy(source, copies_, progress);
        // without a copy it stays rough far out; nothing of the person's is missing
        return [this, number, copied = copy ? std::optional(source.with_reduced_copy(*copy)) : std::nullopt] {
            use_copy(number, copied);
            copy_next();
        };
    });
}

void Imagery::use_copy(std::uint64_t number, const std::optional<ImagerySource>& copied) {
    const auto found = std::find_if(pictures_.begin(), pictures_.end(),
                                    [number](const OpenImagery& open) { return open.number == number; });
    if (copied && found != pictures_.end()) {
        found->source = *copied;
        workers_.open(number, *copied);
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
    for (const OpenImagery& picture : pictures_)
        if (picture.visible && tone_ > 0.0) add_pieces(picture, asked, *scene, wishes);
    const LocalPoint middle = view.to_local(view.screen().center());
    const auto off = [&](const TileWish& wish) {
        const double half = 0.5 * tile_resolution_m(wish.key.place.zoom) * tile_size;
        return distance_m(tile_corner(wish.key.place, tile_size) + LocalVector{half, half}, middle);
    };
    std::stable_sort(wishes.begin(), wishes.end(), [&](const TileWish& a, const TileWish& b) {
        return a.care != b.care ? a.care == TileCare::quick : off(a) < off(b);
    });
    last_wishes_ = wishes;
    workers_.want(std::move(wishes));
    scene_ = scene->pieces.empty() ? nullptr : std::move(scene);
    return scene_;
}

void Imagery::add_pieces(const OpenImagery& picture, const Asked& asked, ImageryScene& scene,
                         std::vector<TileWish>& wishes) {
    const GroundBox seen = asked.view.ground();
    const LocalPoint low{std::max(seen.low().east_m, picture.box.low().east_m),
                         std::max(seen.low().north_m, picture.box.low().north_m)};
    const LocalPoint high{std::min(seen.high().east_m, picture.box.high().east_m),
                          std::min(seen.high().north_m, picture.box.high().north_m)};
    if (picture.box.empty() || low.east_m >= high.east_m || low.north_m >= high.north_m) return;
    // twice as fine as the picture at most: beyond that the painter enlarges as well
    const int finest = zoom_for(picture.source.facts().metres_per_pixel) + 1;
    int zoom = std::min(zoom_for(1.0 / (asked.view.pixels_per_metre() * asked.device_pixel_ratio)), finest);
    while (zoom > least_zoom && tiles_over(low, high, zoom).count() > most_tiles_a_view) --zoom;
    const TileRange range = tiles_over(low, high, zoom);
    std::vector<ImageryPiece> fine;
    std::set<TilePlace> stand_ins;
    for (std::int64_t row = range.low.row; row <= range.high.row; ++row)
        for (std::int64_t column = range.low.column; column <= range.high.column; ++column) {
            const TileKey key{picture.number, {zoom, column, row}};
            auto tile = store_.find(key);
            const bool made_before_copy = tile && tile->rough && picture.source.has_reduced_copy();
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
                if (const auto found = store_.find({picture.number, above}); !found) continue;
                stand_ins.insert(above);
                break;
            }
        }
    for (const TilePlace& place : stand_ins)  // by zoom: the coarsest first
        if (auto tile = store_.find({picture.number, place}); tile && !tile->empty)
            scene.pieces.push_back(piece_of(place, std::move(tile)));
    scene.pieces.insert(scene.pieces.end(), fine.begin(), fine.end());
}

}  // namespace plugside
