// The map's picture, kept between paintings and drawn away from the window's thread when there is much to draw.
//
// picture: the last finished picture and the view it was drawn under; while a newer one is being drawn the older is moved,
//          scaled and turned into place, so panning stays fluid however much the field holds.
// Few marks: drawn at once, so what is seen is never late: up to 60, or up to 400 where nothing of a plan is drawn; of more than 60 an
//          edit under the same view is drawn beside the window's thread, too: it comes some tens of milliseconds later.
// One at a time: a picture that is being drawn is finished before the last one asked for meanwhile is begun, so that a long
//          pan shows new ground on its way; only another survey or plan ends it at once.
// Cost:    returns at once where it draws in the background, which does not give way to other work: the hand waits for it.
#pragma once

#include <QImage>
#include <QObject>
#include <memory>
#include <optional>
#include <vector>

#include "app/canvas/map_painter.h"
#include "app/planning/background_work.h"

namespace plugside {

struct MapRequest {
    std::shared_ptr<const FieldSurvey> field;
    std::shared_ptr<const Plan> plan;
    MapStyle style;
    ViewTransform view;
    MapShow show;
    double device_pixel_ratio = 1.0;
    friend bool operator==(const MapRequest&, const MapRequest&) = default;
};

struct MapPicture {
    QImage image;
    ViewTransform view;
    std::vector<FlagPlace> flags;  // in pixels of `view`
};

class MapCache : public QObject {
    Q_OBJECT

public:
    explicit MapCache(QObject* parent = nullptr);
    // The picture to show for this request now; a fresher one may follow with `arrived`.
    [[nodiscard]] const std::optional<MapPicture>& picture_for(const MapRequest& request);
    void forget();
    [[nodiscard]] bool drawing() const { return work_.running(); }

Q_SIGNALS:
    void arrived();

private:
    void draw(const MapRequest& request);
    std::optional<MapRequest> asked_;
    std::optional<MapRequest> drawing_;  // in the background
    std::optional<MapPicture> picture_;
    BackgroundWork work_{nullptr, BackgroundWork::Overlap::none, BackgroundWork::Haste::prompt};
};

// Whether it is drawn in the background.
[[nodiscard]] bool much_to_draw(const MapRequest& request);

}  // namespace plugside
