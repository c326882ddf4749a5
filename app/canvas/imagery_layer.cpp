#include <QImage>
#include <cmath>

#include "app/canvas/imagery_scene.h"
#include "app/canvas/map_layers.h"

namespace plugside {

bool draw_pieces(QPainter& painter, const ImageryScene& scene, const ViewTransform& view, const std::stop_token& stop) {
    const double ratio = painter.device()->devicePixelRatioF();
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    const ViewTransform upright = view.turned_to(0.0);
    const QTransform turn = view.placing(upright);
    const bool turned = view.up_degrees() != 0.0;
    if (turned) painter.setTransform(turn, true);
    for (const ImageryPiece& piece : scene.pieces) {
        if (stop.stop_requested()) return false;
        const QPointF upper_left = upright.to_screen({piece.low.east_m, piece.low.north_m + piece.side_m});
        const QPointF lower_right = upright.to_screen({piece.low.east_m + piece.side_m, piece.low.north_m});
        // whole pixels of the upright screen, so that no seam shows between neighbours; turned ones overlap by half a pixel
        const auto whole = [ratio](double at) { return std::round(at * ratio) / ratio; };
        const double over = turned ? 0.5 / ratio : 0.0;
        const QRectF place = QRectF(QPointF(whole(upper_left.x()), whole(upper_left.y())),
                                    QPointF(whole(lower_right.x()), whole(lower_right.y())))
                                 .adjusted(0.0, 0.0, over, over);
        if (!turn.mapRect(place).intersects(view.screen())) continue;
        const QImage image(piece.tile->rgba.data(), piece.tile->size, piece.tile->size,
                           QImage::Format_RGBA8888_Premultiplied);
        painter.drawImage(place, image);
    }
    return true;
}

// Pieces are joined on a sheet of their own: drawn over each other at a share of their strength, a coarse one would shine
// through the finer one above it.
void draw_imagery(MapSheet& sheet) {
    if (!sheet.show.imagery || sheet.show.imagery->pieces.empty() || sheet.show.imagery->share <= 0.0) return;
    const double ratio = sheet.painter.device()->devicePixelRatioF();
    QImage joined((sheet.view.size() * ratio).toSize(), QImage::Format_ARGB32_Premultiplied);
    joined.setDevicePixelRatio(ratio);
    joined.fill(Qt::transparent);
    QPainter painter(&joined);
    if (!draw_pieces(painter, *sheet.show.imagery, sheet.view, sheet.stop)) return;
    painter.end();
    sheet.painter.save();
    sheet.painter.setOpacity(sheet.show.imagery->share);
    sheet.painter.drawImage(QPointF(0.0, 0.0), joined);
    sheet.painter.restore();
}

}  // namespace plugside
