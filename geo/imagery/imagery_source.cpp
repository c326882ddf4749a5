#include "geo/imagery/imagery_source.h"

#include <gdal_priv.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "core/words/words.h"
#include "geo/frame/vector_library.h"
#include "geo/imagery/ground_to_pixel.h"
#include "geo/imagery/imagery_opening.h"
#include "geo/imagery/picture_bands.h"
#include "geo/read/input_file.h"
#include "geo/read/reference_systems.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;
using Code = Refusal::Code;

constexpr const char* readable = Words::later("a picture: GeoTIFF, PNG, JPEG, JPEG 2000, GeoPackage or MBTiles");
constexpr double most_bytes_a_block = 128.0 * 1024 * 1024;
constexpr double most_pixels = 4e11;
constexpr int most_pixels_a_side = 2'000'000;
constexpr int most_pixels_of_tiles = 1'100'000'000;  // the whole earth at the 22nd level of the usual scheme
constexpr double most_pixels_unblocked = 5e8;

std::string format_of(GDALDataset& dataset) {
    const std::string driver = dataset.GetDriver() ? dataset.GetDriver()->GetDescription() : "";
    if (driver == "GTiff") return "GeoTIFF";
    if (driver == "GPKG") return "GeoPackage";
    return driver == "JP2OpenJPEG" ? "JPEG 2000" : driver;
}

std::string words_of(GDALDataType type) {
    const std::string bits = std::to_string(GDALGetDataTypeSizeBits(type)) + " bit";
    return GDALDataTypeIsFloating(type) ? bits + ", fractions" : bits;
}

// "2025:04:12 10:30:00" and "2025-04-12T10:30:00Z" alike; nothing for what is no day.
std::optional<std::chrono::year_month_day> day_of(const char* text) {
    if (text == nullptr || std::string_view(text).size() < 10) return std::nullopt;
    const auto number = [&](std::size_t at, std::size_t length) {
        int value = 0;
        for (std::size_t i = at; i < at + length; ++i) {
            if (text[i] < '0' || text[i] > '9') return -1;
            value = value * 10 + (text[i] - '0');
        }
        return value;
    };
    const int year = number(0, 4);
    const int month = number(5, 2);
    const int day = number(8, 2);
    if (year < 1900 || month < 0 || day < 0) return std::nullopt;
    const std::chrono::year_month_day taken{std::chrono::year(year), std::chrono::month(static_cast<unsigned>(month)),
                                            std::chrono::day(static_cast<unsigned>(day))};
    return taken.ok() ? std::optional(taken) : std::nullopt;
}

GeoTransform transform_of(const PicturePlacement& p) {
    return {p.corner.east_m,  p.per_column.east_m,  p.per_row.east_m,
            p.corner.north_m, p.per_column.north_m, p.per_row.north_m};
}

// Where the picture lies on the plane and how large its pixels are there; false where it lies nowhere near.
bool measured(const GroundToPixel& way, ImageryFacts& facts) {
    constexpr int steps = 8;
    std::vector<PicturePixel> border;
    const double w = facts.width;
    const double h = facts.height;
    const std::array<PicturePixel, 5> corners{{{0, 0}, {w, 0}, {w, h}, {0, h}, {0, 0}}};
    for (std::size_t side = 0; side < 4; ++side)
        for (int i = 0; i < steps; ++i)
            border.push_back({std::lerp(corners[side].column, corners[side + 1].column, static_cast<double>(i) / steps),
                              std::lerp(corners[side].row, corners[side + 1].row, static_cast<double>(i) / steps)});
    facts.outline.clear();
    for (const auto& place : way.places(border))
        if (place) facts.outline.push_back(*place);
    const auto middle = way.places({{0.5 * w, 0.5 * h}, {0.5 * w + 1.0, 0.5 * h}, {0.5 * w, 0.5 * h + 1.0}});
    if (facts.outline.empty() && !middle[0]) return false;
    if (middle[0] && middle[1] && middle[2])
        facts.metres_per_pixel = std::sqrt(std::abs(cross(*middle[1] - *middle[0], *middle[2] - *middle[0])));
    return true;
}

// As Exif numbers the ways to hold a camera; mirrored ones are left as they are.
int quarter_turns_of(const char* orientation) {
    const std::string_view number = orientation != nullptr ? orientation : "";
    return number == "6" ? 1 : number == "3" ? 2 : number == "8" ? 3 : 0;
}

class PictureOpener {
public:
    PictureOpener(const fs::path& file, const LocalFrame& frame, const ImageryAnswers& answers)
        : file_(file), answers_(answers), opening_(std::make_shared<ImageryOpening>()) {
        opening_->frame_centre = frame.centre();
        opening_->table = answers.table;
        opening_->facts.file = file;
    }

    tl::expected<std::shared_ptr<const ImageryOpening>, Refusal> open() {
        if (auto plain = plain_file(file_, readable, std::nullopt); !plain) return tl::unexpected(plain.error());
        const LibraryMessages messages;
        dataset_ = open_dataset(file_, answers_.table);
        if (!dataset_)
            return refuse(Code::wrong_format,
                          messages.failure().empty() ? Words::later("none of these")
                                                     : quoted_for_display(messages.failure(), 160),
                          readable);
        for (const auto step : {&PictureOpener::check_links, &PictureOpener::check_size, &PictureOpener::take_place,
                                &PictureOpener::take_tone, &PictureOpener::measure})
            if (auto taken = (this->*step)(); !taken) return tl::unexpected(taken.error());
        return opening_;
    }

private:
    [[nodiscard]] tl::unexpected<Refusal> refuse(Code code, const std::string& found, const std::string& expected) const {
        return tl::unexpected(Refusal{code, file_.string(), "", found, expected});
    }

    // A file may name another as its reduced copies or its mask: nobody follows there.
    tl::expected<void, Refusal> check_links() {
        const char* const overview = dataset_->GetMetadataItem("OVERVIEW_FILE", "OVERVIEWS");
        const char* const mask = dataset_->GetMetadataItem("MASK_FILE", "OVERVIEWS");
        if (overview || mask)
            return refuse(Code::forbidden_source,
                          Words::tell("the name of another file, {1}", {quoted_for_display(overview ? overview : mask)}),
                          Words::later("a picture that is whole in its own file"));
        return {};
    }

    tl::expected<void, Refusal> check_size() {
        ImageryFacts& facts = opening_->facts;
        facts.format = format_of(*dataset_);
        facts.width = dataset_->GetRasterXSize();
        facts.height = dataset_->GetRasterYSize();
        facts.bands = dataset_->GetRasterCount();
        if (facts.bands == 0)
            return refuse(Code::wrong_format, bandless(), Words::later("a picture with at least one band"));
        GDALRasterBand* band = dataset_->GetRasterBand(1);
        int block_width = 0;
        int block_height = 0;
        band->GetBlockSize(&block_width, &block_height);
        const double block = static_cast<double>(block_width) * block_height *
                             GDALGetDataTypeSizeBytes(band->GetRasterDataType()) * facts.bands;
        const double pixels = static_cast<double>(facts.width) * facts.height;
        const std::string size =
            Words::tell("{1} by {2} pixels", {std::to_string(facts.width), std::to_string(facts.height)});
        if (block_width < 1 || block_height < 1 || block > most_bytes_a_block)
            return refuse(
                Code::too_large,
                Words::tell("pieces of {1} by {2} pixels of {3} bands",
                            {std::to_string(block_width), std::to_string(block_height), std::to_string(facts.bands)}),
                Words::later("pieces of at most 128 MiB, as tiles have them"));
        const bool in_tiles = facts.format == "GeoPackage" || facts.format == "MBTiles";
        if (std::max(facts.width, facts.height) > most_pixels_of_tiles)
            return refuse(Code::too_large, size, Words::later("at most 1.1e9 pixels a side"));
        if (!in_tiles && (std::max(facts.width, facts.height) > most_pixels_a_side || pixels > most_pixels))
            return refuse(Code::too_large, size, Words::later("at most 2 million pixels a side and 4e11 in all"));
        if ((facts.format == "PNG" || facts.format == "JPEG") && pixels > most_pixels_unblocked)
            return refuse(Code::too_large, size,
                          Words::tell("at most 5e8 pixels of a {1}; a GeoTIFF holds more", {facts.format}));
        return {};
    }

    std::string bandless() const {
        char** tables = dataset_->GetMetadata("SUBDATASETS");
        std::string names;
        for (int i = 0; tables != nullptr && tables[i] != nullptr; ++i) {
            const std::string line = tables[i];
            if (line.find("_NAME=") == std::string::npos) continue;
            names += (names.empty() ? "" : ", ") + line.substr(line.rfind(':') + 1);
        }
        return names.empty() ? Words::later("no band")
                             : Words::tell("several pictures, {1}", {quoted_for_display(names, 200)});
    }

    tl::expected<void, Refusal> take_place() {
        if (answers_.placement) return take_pairs(*answers_.placement);
        GeoTransform& t = opening_->placement;
        const bool own = dataset_->GetGeoTransform(t.data()) == CE_None;
        if (!own) {
            const auto world = world_file_of(file_);
            if (!world) return tl::unexpected(world.error());
            if (!*world)
                return refuse(Code::needs_placement, Words::later("a picture without a position"),
                              Words::later("its position: a world file beside it, or pairs of places on picture and map"));
            t = **world;
        }
        if (!is_usable(t))
            return refuse(Code::out_of_range,
                          Words::later("a position with numbers that squeeze the picture into a line or are none"),
                          Words::later("the size of a pixel in two directions"));
        return take_system();
    }

    tl::expected<void, Refusal> take_pairs(const PicturePlacement& p) {
        opening_->placement = transform_of(p);
        if (!is_usable(opening_->placement))
            return refuse(Code::out_of_range, Words::later("a placement that squeezes the picture into a line"),
                          Words::later("pairs spread over it"));
        return {};
    }

    tl::expected<void, Refusal> take_system() {
        OGRSpatialReference system;
        if (answers_.reference_system) {
            if (!is_reference_system(*answers_.reference_system) ||
                system.SetFromUserInput(answers_.reference_system->c_str()) != OGRERR_NONE)
                return refuse(Code::out_of_range, quoted_for_display(*answers_.reference_system),
                              Words::later("the code of a reference system of the register, as EPSG:25830"));
        } else if (const OGRSpatialReference* own = dataset_->GetSpatialRef(); own != nullptr && !own->IsEmpty()) {
            system = *own;
        } else {
            const auto text = definition_beside(file_);
            if (!text) return tl::unexpected(text.error());
            const bool known = !text->empty() && system.importFromWkt(text->c_str()) == OGRERR_NONE;
            if (known) system.morphFromESRI();
            if (!known && !text->empty())
                return refuse(Code::needs_reference_system, Words::later("a .prj beside it that is no definition"),
                              Words::later("the reference system of its position"));
        }
        if (!system.IsProjected() && !system.IsGeographic())
            return refuse(Code::needs_reference_system, Words::later("a position without a reference system"),
                          Words::later("the reference system of its position"));
        return take_definition(system);
    }

    tl::expected<void, Refusal> take_definition(const OGRSpatialReference& system) {
        char* text = nullptr;
        const char* const options[] = {"FORMAT=WKT2_2018", nullptr};
        if (system.exportToWkt(&text, options) == OGRERR_NONE && text != nullptr) opening_->definition = text;
        CPLFree(text);
        const char* const authority = system.GetAuthorityName(nullptr);
        const char* const code = system.GetAuthorityCode(nullptr);
        opening_->facts.reference_system = system.GetName() ? system.GetName() : "";
        if (authority && code) opening_->facts.reference_system += std::string(" (") + authority + ":" + code + ")";
        opening_->geographic = system.IsGeographic();
        const GeoTransform& t = opening_->placement;
        opening_->middle_longitude = t[0] + 0.5 * (t[1] * opening_->facts.width + t[2] * opening_->facts.height);
        return {};
    }

    tl::expected<void, Refusal> take_tone() {
        auto tone = tone_of(*dataset_, file_);
        if (!tone) return tl::unexpected(tone.error());
        ImageryFacts& facts = opening_->facts;
        GDALRasterBand* band = dataset_->GetRasterBand(tone->bands.front());
        facts.pixel_type = words_of(band->GetRasterDataType());
        facts.no_data = tone->no_data.front();
        facts.has_alpha = tone->alpha;
        facts.has_palette = !tone->palette.empty();
        facts.reduced_copies = band->GetOverviewCount();
        opening_->tone = std::move(*tone);
        for (const auto& [name, domain] :
             {std::pair{"TIFFTAG_DATETIME", ""}, std::pair{"EXIF_DateTimeOriginal", ""},
              std::pair{"EXIF_DateTimeOriginal", "EXIF"}, std::pair{"ACQUISITIONDATETIME", "IMAGERY"}})
            if (!facts.taken) facts.taken = day_of(dataset_->GetMetadataItem(name, domain));
        for (const char* domain : {"", "EXIF"})
            if (facts.quarter_turns == 0)
                facts.quarter_turns = quarter_turns_of(dataset_->GetMetadataItem("EXIF_Orientation", domain));
        return {};
    }

    tl::expected<void, Refusal> measure() {
        const auto way = GroundToPixel::of(*opening_);
        if (!way)
            return refuse(Code::needs_reference_system,
                          Words::later("a reference system that no way leads to from longitude and latitude"),
                          Words::later("the reference system of its position"));
        if (!measured(*way, opening_->facts))
            return refuse(Code::out_of_range, Words::later("a picture that lies nowhere near the field"),
                          Words::later("a picture of the field's ground"));
        return {};
    }

    const fs::path& file_;
    const ImageryAnswers& answers_;
    std::shared_ptr<ImageryOpening> opening_;
    OpenDataset dataset_;
};

}  // namespace

ImagerySource::ImagerySource(std::shared_ptr<const ImageryOpening> opening) : opening_(std::move(opening)) {}

const ImageryFacts& ImagerySource::facts() const { return opening_->facts; }

bool ImagerySource::has_reduced_copy() const { return opening_->reduced_copy.has_value(); }

tl::expected<ImagerySource, Refusal> ImagerySource::open(const fs::path& file, const LocalFrame& frame,
                                                         const ImageryAnswers& answers) {
    auto opening = PictureOpener(file, frame, answers).open();
    if (!opening) return tl::unexpected(opening.error());
    return ImagerySource(std::move(*opening));
}

ImagerySource ImagerySource::with_reduced_copy(const fs::path& copy) const {
    auto changed = std::make_shared<ImageryOpening>(*opening_);
    changed->reduced_copy = copy;
    return ImagerySource(std::move(changed));
}

std::optional<ImagerySource> ImagerySource::placed_by(const ImageryAnswers& answers) const {
    if (!answers.placement) return std::nullopt;
    auto changed = std::make_shared<ImageryOpening>(*opening_);
    changed->placement = transform_of(*answers.placement);
    changed->definition.clear();
    changed->geographic = false;
    changed->facts.reference_system.clear();
    if (!is_usable(changed->placement)) return std::nullopt;
    const auto way = GroundToPixel::of(*changed);
    if (!way || !measured(*way, changed->facts)) return std::nullopt;
    return ImagerySource(std::move(changed));
}

}  // namespace plugside
