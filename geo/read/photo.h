// A photograph as a mark: where its camera stood, when, and which way it looked, from the picture's own EXIF block.
//
// Read:      GPSLatitude, GPSLongitude and their Ref; GPSImgDirection with Ref T or M; GPSDateStamp with GPSTimeStamp (UTC),
//            else DateTimeOriginal with OffsetTimeOriginal; GPSDOP, GPSHPositioningError, GPSSatellites; ImageDescription or
//            UserComment as the note, read by the note grammar.
// Direction: where the camera looked, which is not the fan's bearing: it is kept in the note, "photograph looks 123 degrees"
//            (of magnetic north: "123 degrees magnetic", with a finding), and never read as a fan.
// Mark:      named as the file without its ending; `picture` is the file's name without its folder.
// Without a place: nothing is marked; a finding says so. A place out of range refuses the file.
// Safety:    only the JPEG driver, no side files; nothing but the header is decoded.
// Errors:    a Refusal. Cost: that of the header.
// Source:    CIPA DC-008 (Exif 2.32), GPS tags.
#pragma once

#include <filesystem>
#include <map>
#include <optional>
#include <string>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"
#include "geo/read/geographic_survey.h"

namespace plugside {

// Name and value as the vector library tells them: "EXIF_GPSLatitude" and "(38) (15) (12.34)".
using PictureFacts = std::map<std::string, std::string>;

// What the picture's header says; `library_name` is a name that the library opens (a file, or memory of its own).
[[nodiscard]] std::optional<PictureFacts> picture_facts(const std::string& library_name);

// The mark that the facts tell of; `file` is the picture's file.
[[nodiscard]] tl::expected<GeographicFile, Refusal> photograph_from(const PictureFacts& facts,
                                                                    const std::filesystem::path& file);

[[nodiscard]] tl::expected<GeographicFile, Refusal> read_photograph(const std::filesystem::path& file);

// The walk that photographs are gathered into.
inline constexpr const char* photographs_source = "photographs";

}  // namespace plugside
