// What every reader asks of a file before it looks inside, and what kind of file its first bytes say it is.
//
// Refused: names that start with /vsi or hold :// or < (names by which a library could be led to a network or another file),
//          missing files, folders, devices and pipes, files that cannot be opened, files over 512 MiB.
// Kind:    judged by content: the SQLite header, a JSON object, XML (in UTF-8, UTF-16 or with a byte order mark) with kml or
//          another root, a JPEG picture, FlatGeobuf, the main file of a Shapefile; any other text is a table. Only the parts
//          beside a Shapefile's main file are known by their names, as nothing in them tells.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"

namespace plugside {

enum class FileKind {
    geopackage,
    geojson,
    xml,  // GPX, or XML that GPX's reader refuses
    kml,
    shapefile,
    shapefile_part,  // .dbf, .shx and others beside a .shp: read along with it
    flatgeobuf,
    photograph,
    table,
};

[[nodiscard]] tl::expected<FileKind, Refusal> kind_of_file(const std::filesystem::path& file);

// Whether the name is that of a plain file on this computer, of at most `largest` bytes where that is given; `readable` says
// what was expected.
[[nodiscard]] tl::expected<void, Refusal> plain_file(const std::filesystem::path& file, const std::string& readable,
                                                     std::optional<std::uintmax_t> largest);

}  // namespace plugside
