#!/bin/bash
# From a fresh clone to the window on the sample field: installs what is missing, builds a release, opens the window.
# Without a display it plans the sample with the batch program instead and says where the plan lies.
# Safe to run again at any time; then it only starts.
set -euo pipefail

root="$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)"
build="$root/.build/start"
sample="$root/sample-projects/creek-meadow"

bash "$root/cmake/install-packages.sh" build

if [[ ! -f "$build/build.ninja" ]]; then
    echo "Configuring a release build in .build/start"
    (cd "$root" && cmake --preset release -B "$build" -DPLUGSIDE_TESTS=OFF --log-level=WARNING)
fi
echo "Building (the first time takes some minutes)"
cmake --build "$build" --target plugside plugside-batch

if [[ -n ${DISPLAY:-} || -n ${WAYLAND_DISPLAY:-} ]]; then
    echo "Opening the window on the sample field, with the job shown on it in five steps"
    exec "$build/plugside" --sample
fi

out="$root/.build/sample-plan"
mkdir -p "$out"
echo "There is no display: planning sample-projects/creek-meadow with the batch program."
"$build/plugside-batch" plan "$sample/walk.gpx" --ground "$sample/ground.gpkg" \
    --out "$out/plan.gpkg" --waypoints "$out/sets.gpx" --picture "$out/plan.png"
cat <<TEXT

The plan lies in .build/sample-plan:
  plan.gpkg   every layer, for a farm GIS
  sets.gpx    the set points, for a handheld
  plan.png    a picture of the plan
To open the window, run this again where DISPLAY or WAYLAND_DISPLAY is set, or under a display of its own:
  xvfb-run -a -s "-screen 0 1280x800x24" bash cmake/start.sh
TEXT
