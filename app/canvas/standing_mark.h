// Where one stands, as a receiver tells it, drawn over the map: a ring with a dot, and the circle within which the true place lies in 95
// of 100.
//
// now:  filled, the circle drawn through. old: hollow, with its age. past: a broken ring and its age alone; it tells where one was.
#pragma once

#include <QPainter>
#include <QString>
#include <optional>

#include "app/canvas/palette.h"
#include "app/canvas/view_transform.h"

namespace plugside {

struct Standing {
    enum class Age { now, old, past };
    LocalPoint at;
    std::optional<Metres> radius;
    Age age = Age::now;
    QString label;  // of an old or past place: how old it is
    friend bool operator==(const Standing&, const Standing&) = default;
};

void draw_standing(QPainter& painter, const Standing& standing, const ViewTransform& view, const MapStyle& style);

}  // namespace plugside
