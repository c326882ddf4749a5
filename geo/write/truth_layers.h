// What is really there under a simulated field, as a GeoPackage beside its walk: the yardstick for whoever scores a plan.
//
// Layers:  true_mounds (point at the plug: plug_lon, plug_lat, fan_bearing, system_id, mark, junction_lon, junction_lat;
//          mark is the name of the walker's mark, null for a mound that was missed), true_runs (linestring: system_id,
//          depth_m), truth_summary (attributes: systems, tunnel_diameter_m, mounds, mounds_seen).
// Units:   WGS 84 longitude and latitude; bearings in degrees from true north; metres. Ids are index + 1.
// Safety, errors, cost: as geopackage_layers.h.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/simulation/truth.h"
#include "core/survey/refusal.h"
#include "geo/frame/local_frame.h"

namespace plugside {

[[nodiscard]] tl::expected<void, Refusal> write_truth(const SimulatedField& field, const LocalFrame& frame,
                                                      const std::filesystem::path& file);

}  // namespace plugside
