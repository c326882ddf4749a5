// A picture of the ground as a file holds it: what it is, where it lies, and everything that a worker needs to read it.
//
// Files:   GeoTIFF (cloud-optimised or not), PNG and JPEG with a world file, GeoPackage and MBTiles tiles, JPEG 2000; judged
//          by content. Nothing is fetched from a network and no other file is followed to, with four exceptions beside the
//          picture: its world file, its .prj, its .ovr (reduced copies) and its .msk (mask).
// Where:   what the person answers comes first (a reference system, a placement by pairs), then the file's own position and
//          system, then world file and .prj. A picture that has no position is refused with `needs_placement`; one with a
//          position but without a system with `needs_reference_system`: both can be answered by opening it again.
// Colours: one band is grey or a palette, two are grey and alpha or grey alone, three and more are red, green and blue as they
//          are tagged, else the first three; an alpha band, a mask and values for "no data" make pixels transparent. Eight
//          bits are shown as they are; everything else is stretched from its 2nd to its 98th percentile in a sample of at
//          most some 4 million values (from a reduced copy within the file, else from blocks spread over it).
// Limits:  2 million pixels a side and 4e11 in all (tile files: 1.1e9 a side), 128 MiB a block (what must be decoded at once), 5e8 pixels for PNG and JPEG.
// Frame:   places are on the plane of the LocalFrame it was opened for.
// Cost:    one opening of the file and at most 64 blocks of it, whatever its size.
// Threads: a source is a value that several threads may share; each TileMaker opens the file for itself.
// Errors:  a Refusal with file, place, found and expected.
#pragma once

#include <array>
#include <chrono>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/geometry/picture_placement.h"
#include "core/survey/refusal.h"
#include "geo/frame/local_frame.h"

namespace plugside {

// What a person says of a picture that does not say it itself.
struct ImageryAnswers {
    std::optional<std::string> reference_system;  // "EPSG:25830", of the file's position
    std::optional<PicturePlacement> placement;    // of its pixels on the field's plane
    std::optional<std::string> table;             // of a tile file that holds several pictures
    std::vector<PlacementPair> pairs;             // that the placement was found by, or will be once there are three
    PlacementKind pair_kind = PlacementKind::affine;
    friend bool operator==(const ImageryAnswers&, const ImageryAnswers&) = default;
};

struct ImageryFacts {
    std::filesystem::path file;
    std::string format;  // "GeoTIFF", "PNG", "JPEG", "GeoPackage", "MBTiles", "JPEG 2000"
    int width = 0;       // pixels
    int height = 0;
    int bands = 0;
    std::string pixel_type;  // "8 bit", "16 bit", "32 bit, fractions" and so on
    std::optional<double> no_data;
    bool has_alpha = false;
    bool has_palette = false;
    int reduced_copies = 0;
    std::string reference_system;     // "NAD83 / UTM zone 13N (EPSG:26913)"; empty where it was placed by pairs
    std::vector<LocalPoint> outline;  // its border on the plane, in order, those places that the plane has
    double metres_per_pixel = 0.0;    // in its middle, the mean of both directions
    std::optional<std::chrono::year_month_day> taken;
    int quarter_turns = 0;  // clockwise, 0..3, until it stands as its camera was held
};

struct ImageryOpening;  // what is known of how to read it

class ImagerySource {
public:
    [[nodiscard]] static tl::expected<ImagerySource, Refusal> open(const std::filesystem::path& file,
                                                                   const LocalFrame& frame,
                                                                   const ImageryAnswers& answers = {});

    [[nodiscard]] const ImageryFacts& facts() const;
    [[nodiscard]] const ImageryOpening& opening() const { return *opening_; }
    [[nodiscard]] bool has_reduced_copy() const;
    // The same picture, with a reduced copy of it that `make_reduced_copy` wrote.
    [[nodiscard]] ImagerySource with_reduced_copy(const std::filesystem::path& copy) const;
    // The same picture placed by pairs, without looking into the file again; nothing where that squeezes it into a line.
    [[nodiscard]] std::optional<ImagerySource> placed_by(const ImageryAnswers& answers) const;

private:
    explicit ImagerySource(std::shared_ptr<const ImageryOpening> opening);
    std::shared_ptr<const ImageryOpening> opening_;
};

// Whether a file's first bytes (and, of a JPEG, a world file beside it) say that it is imagery rather than a walk, a
// photograph or a layer. False for what cannot be read.
[[nodiscard]] bool is_imagery_file(const std::filesystem::path& file);

}  // namespace plugside
