// What every reader asks of a file before it looks inside, and what kind of file its first bytes say it is.
//
// Refused: names that start with /vsi or hold :// or < (names by which a library could be led to a network or another file),
//          missing files, folders, devices and pipes, files that cannot be opened, files over 512 MiB.
// Kind:    judged by content: the SQLite header, a JSON object, XML (in UTF-8, UTF-16 or with a byte order mark).
#pragma once

#include <filesystem>
#include <string>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"

namespace plugside {

enum class FileKind { geopackage, geojson, xml };

[[nodiscard]] tl::expected<FileKind, Refusal> kind_of_file(const std::filesystem::path& file);

}  // namespace plugside
