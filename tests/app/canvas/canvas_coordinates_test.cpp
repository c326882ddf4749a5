// Where the corners of a field of 10 km lie on the screen, against the projection library's own transverse Mercator (PROJ): the whole
// way from longitude and latitude to pixels and back.
#include <gtest/gtest.h>
#include <proj.h>

#include <cmath>
#include <string>

#include "app/canvas/view_transform.h"
#include "geo/frame/local_frame.h"

namespace plugside {
namespace {

class LibrarysPlane {
public:
    explicit LibrarysPlane(GeographicPoint centre) : context_(proj_context_create()) {
        const std::string way = "+proj=pipeline +step +proj=unitconvert +xy_in=deg +xy_out=rad +step +proj=tmerc +lat_0=" +
                                std::to_string(centre.latitude_degrees) +
                                " +lon_0=" + std::to_string(centre.longitude_degrees) +
                                " +k=1 +ellps=WGS84 +algo=poder_engsager";
        way_ = proj_create(context_, way.c_str());
    }
    ~LibrarysPlane() {
        proj_destroy(way_);
        proj_context_destroy(context_);
    }
    LibrarysPlane(const LibrarysPlane&) = delete;
    LibrarysPlane& operator=(const LibrarysPlane&) = delete;
    [[nodiscard]] LocalPoint to_plane(GeographicPoint place) const {
        const PJ_COORD at = proj_trans(way_, PJ_FWD, proj_coord(place.longitude_degrees, place.latitude_degrees, 0, 0));
        return {at.xy.x, at.xy.y};
    }
    [[nodiscard]] GeographicPoint to_earth(LocalPoint place) const {
        const PJ_COORD at = proj_trans(way_, PJ_INV, proj_coord(place.east_m, place.north_m, 0, 0));
        return {at.xy.x, at.xy.y};
    }

private:
    PJ_CONTEXT* context_;
    PJ* way_;
};

TEST(CanvasCoordinates, TheCornersOfATenKilometreFieldLieWhereTheProjectionLibraryHasThem) {
    for (const double latitude : {2.5, 38.5, 67.0})
        for (const double up : {0.0, 37.0}) {
            const GeographicPoint centre{-106.25, latitude};
            const LibrarysPlane library(centre);
            const LocalFrame frame = LocalFrame::centred_on(centre);
            // the field on the whole screen, and one corner as near as the map goes
            for (const LocalPoint corner : {LocalPoint{-5000.0, -5000.0}, LocalPoint{5000.0, -5000.0},
                                            LocalPoint{5000.0, 5000.0}, LocalPoint{-5000.0, 5000.0}}) {
                const GeographicPoint on_earth = library.to_earth(corner);
                for (const ViewTransform& view : {ViewTransform{{0.0, 0.0}, 0.08, QSizeF(1280.0, 800.0), up},
                                                  ViewTransform{corner, 500.0, QSizeF(1280.0, 800.0), up}}) {
                    const QPointF shown = view.to_screen(frame.to_local(on_earth));
                    const QPointF expected = view.to_screen(corner);
                    EXPECT_LT(std::hypot(shown.x() - expected.x(), shown.y() - expected.y()), 0.01) << latitude << " " << up;
                    const GeographicPoint told = frame.to_geographic(view.to_local(shown));
                    EXPECT_NEAR(told.latitude_degrees, on_earth.latitude_degrees, 1e-10);
                    EXPECT_NEAR(told.longitude_degrees, on_earth.longitude_degrees, 1e-10);
                }
            }
        }
}

}  // namespace
}  // namespace plugside
