#include "app/canvas/map_cache.h"

#include <cmath>

namespace plugside {

namespace {

constexpr std::size_t few_marks = 60;  // drawn in a few milliseconds

MapPicture drawn(const MapRequest& request, const ViewTransform& view, const std::stop_token& stop) {
    MapPicture picture;
    const QSizeF pixels = view.size() * request.device_pixel_ratio;
    picture.image = QImage(QSize(static_cast<int>(std::ceil(pixels.width())), static_cast<int>(std::ceil(pixels.height()))),
                           QImage::Format_RGB32);
    picture.image.setDevicePixelRatio(request.device_pixel_ratio);
    picture.view = view;
    QPainter painter(&picture.image);
    paint_map(painter, *request.field, request.plan.get(), request.style, view, request.show, stop, &picture.flags);
    return picture;
}

// A moment's delay is not noticed with an edit, as it would be with a hand that pans or a switch that is turned.
bool differs_in_edits_alone(const MapRequest& before, MapRequest now) {
    now.field = before.field;
    now.plan = before.plan;
    now.show.plan_opacity = before.show.plan_opacity;
    return now == before;
}

}  // namespace

MapCache::MapCache(QObject* parent) : QObject(parent) {}

const std::optional<MapPicture>& MapCache::picture_for(const MapRequest& request) {
    if (asked_ == request || !request.field) return picture_;
    const bool edited = picture_ && asked_ && differs_in_edits_alone(*asked_, request) &&
                        request.field->survey.mounds.size() > few_marks;
    asked_ = request;
    if (!edited && !much_to_draw(request)) {
        work_.stop();
        drawing_.reset();
        picture_ = drawn(request, request.view, {});
        return picture_;
    }
    const bool of_the_same =
        drawing_ && drawing_->field == request.field && drawing_->plan == request.plan && drawing_->style == request.style;
    if (!work_.running() || !of_the_same) draw(request);
    return picture_;
}

void MapCache::draw(const MapRequest& request) {
    drawing_ = request;
    work_.start([this, request](const Progress& progress) -> BackgroundWork::Apply {
        // a rim of ground about the view, so that a short pan shows no bare edge
        const ViewTransform wide = request.view.resized(request.view.size() * 1.4);
        MapRequest wider = request;
        const QPointF rim = wide.to_screen(request.view.to_local({0.0, 0.0}));
        for (QRectF& place : wider.show.covered) place.translate(rim);
        auto picture = std::make_shared<MapPicture>(drawn(wider, wide, progress.stop));
        if (progress.stopped()) return {};
        return [this, picture] {
            picture_ = std::move(*picture);
            Q_EMIT arrived();
            if (asked_ && drawing_ && !(*asked_ == *drawing_)) draw(*asked_);
        };
    });
}

void MapCache::forget() {
    work_.stop();
    asked_.reset();
    drawing_.reset();
    picture_.reset();
}

bool much_to_draw(const MapRequest& request) {
    constexpr std::size_t many_marks = 400;
    constexpr std::size_t many_track_points = 40000;
    // outlines, bands and flags of a mark's system take some five times as long as the mark
    const bool plan_too = request.plan && (request.show.systems || request.show.runs || request.show.sets);
    std::size_t points = 0;
    if (request.show.track)
        for (const Walk& walk : request.field->survey.walks)
            for (const TrackSegment& segment : walk.segments) points += segment.size();
    return request.field->survey.mounds.size() > (plan_too ? few_marks : many_marks) || points > many_track_points;
}

}  // namespace plugside
