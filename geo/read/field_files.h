// Several files of any kind as geographic values, each read by the reader that its content asks for. For geo/read alone.
//
// Photographs are gathered into one walk; one that another mark names as its picture is no mark of its own.
// A Shapefile's parts given along with it are read with it, not by themselves.
// Route points are marks where they carry notes as marks do (a fan, a freshness, a sign); else a finding says that the route
// is not used.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>
#include <vector>

#include "core/plan/progress.h"
#include "geo/read/field_reader.h"
#include "geo/read/geographic_survey.h"

namespace plugside {

[[nodiscard]] tl::expected<std::vector<GeographicFile>, Refusal> read_files(const std::vector<std::filesystem::path>& files,
                                                                            const ReadChoices& choices,
                                                                            const Progress& progress);

}  // namespace plugside
