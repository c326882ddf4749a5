// The field on paper, to a round scale: ground, systems, runs, mounds and numbered sets, with a grid, a scale bar and both norths.
//
// Scale:   1:100, 1:200, 1:250, 1:500, 1:1000, 1:1250, 1:2000, 1:2500, 1:5000 and so on: the largest at which all of the field has room.
// More maps: where numbers of sets would cover each other, maps at a larger scale follow, and the first shows what lies on which.
// Grid:    round distances east and north of the first map's lower left grid corner, the same on every map.
// Norths:  true north is up (within the plane's convergence, under a tenth of a degree); magnetic north by the World Magnetic Model for the day
//          on the sheets. Where the model does not reach, the map says so.
// Way:     from set to set on foot, around barriers and buildings and through gates; it is not drawn where no gate leads.
// Black and white: a run surer than 8 in 10 is a whole line, one surer than 5 in 10 a broken one, others are left out.
// Stop:    nothing comes back. Cost: linear in what lies on a map, times maps.
#pragma once

#include <stop_token>

#include "app/canvas/view_transform.h"
#include "app/sheets/figure.h"
#include "app/sheets/sheet_contents.h"

namespace plugside {

struct MapPage {
    Figure figure;
    QString title;  // "Map 2 of 3, 1:500"
    int scale = 1000;
};

[[nodiscard]] std::optional<std::vector<MapPage>> map_pages(const SheetInput& input, const SheetContents& contents,
                                                            QSizeF room_mm, const std::stop_token& stop = {});

// All of the field on one map of that size, with as many numbers as have room: for a screen.
[[nodiscard]] Figure small_map(const SheetInput& input, const SheetContents& contents, QSizeF room_mm);

// Where magnetic north lies at a place on the day of the sheets, as a sentence.
[[nodiscard]] QString north_words(const SheetInput& input, LocalPoint at);

// What stands on one map. `sets_without_number`: those whose number found no room.
struct MapPlace {
    LocalPoint centre;
    int scale = 1000;
};
struct NumberedMap {
    Figure figure;  // of the map alone, with its frame and grid
    std::vector<int> sets_without_number;
};
// `origin`: where the grid's distances begin. `others`: maps whose ground is outlined, with their numbers from 2.
[[nodiscard]] NumberedMap map_figure(const SheetInput& input, const SheetContents& contents, QSizeF room_mm,
                                     const MapPlace& place, LocalPoint origin, const std::vector<MapPlace>& others);

// How the way from set to set is drawn.
inline const std::vector<double> way_dashes_mm{0.5, 1.0};
inline constexpr double way_width_mm = 0.25;

// Room that the grid's readings take at the left and below.
inline constexpr double grid_room_mm = 8.5;

// The round distance between grid lines at a scale.
[[nodiscard]] Metres grid_step(int scale, LengthUnits units);

// The strip below a map: scale bar, norths, key. `at`: the map's middle.
[[nodiscard]] Figure map_strip(const SheetInput& input, LocalPoint at, int scale, double width_mm);
inline constexpr double map_strip_mm = 34.0;

}  // namespace plugside
