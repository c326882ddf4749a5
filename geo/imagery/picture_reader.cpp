#include "geo/imagery/picture_reader.h"

#include <cpl_error.h>
#include <gdal_priv.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <string_view>

#include "core/words/words.h"
#include "geo/imagery/imagery_opening.h"
#include "geo/imagery/picture_bands.h"

namespace plugside {

namespace {

constexpr double strip_bytes = 8.0 * 1024 * 1024;

struct LevelOfFile {
    GDALDataset* dataset = nullptr;
    const PictureTone* tone = nullptr;
};

// What make_reduced_copy writes: four bytes, alpha last.
PictureTone copy_tone() {
    PictureTone tone;
    tone.bands = {1, 2, 3, 4};
    tone.alpha = true;
    tone.no_data.assign(3, std::nullopt);
    tone.ranges.assign(3, ValueRange{});
    return tone;
}

// Sums of colours of the cells of one row of cells.
class CellSums {
public:
    CellSums(int left, int across, int cells)
        : left_(left), across_(across), sums_(static_cast<std::size_t>(cells) * 5, 0) {}

    void add(const std::uint8_t* rgba, int from, int pixels) {
        int in_cell = from % across_;
        std::uint64_t* into = &sums_[static_cast<std::size_t>(from / across_ - left_) * 5];
        while (pixels > 0) {
            const int run = std::min(across_ - in_cell, pixels);
            std::uint64_t red = 0;
            std::uint64_t green = 0;
            std::uint64_t blue = 0;
            std::uint64_t alpha = 0;
            for (int i = 0; i < run; ++i, rgba += 4) {
                red += rgba[0];
                green += rgba[1];
                blue += rgba[2];
                alpha += rgba[3];
            }
            into[0] += red;
            into[1] += green;
            into[2] += blue;
            into[3] += alpha;
            into[4] += static_cast<std::uint64_t>(run);
            into += 5;
            in_cell = 0;
            pixels -= run;
        }
    }
    void write(std::uint8_t* rgba) {
        for (std::size_t cell = 0; cell < sums_.size() / 5; ++cell, rgba += 4) {
            const std::uint64_t count = sums_[cell * 5 + 4];
            for (std::size_t c = 0; c < 4; ++c)
                rgba[c] =
                    count == 0 ? std::uint8_t{0} : static_cast<std::uint8_t>((sums_[cell * 5 + c] + count / 2) / count);
        }
        std::fill(sums_.begin(), sums_.end(), 0);
    }

private:
    int left_;
    int across_;
    std::vector<std::uint64_t> sums_;
};

// The cells of a level that a window meets, still empty.
ReducedWindow cells_over(const PixelWindow& window, const PictureLevel& level, int cell_width, int cell_height) {
    const int right = std::min(window.left + window.width, level.width);
    const int bottom = std::min(window.top + window.height, level.height);
    const int first_column = window.left / cell_width;
    const int first_row = window.top / cell_height;
    ReducedWindow reduced;
    reduced.width = (right - 1) / cell_width + 1 - first_column;
    reduced.height = (bottom - 1) / cell_height + 1 - first_row;
    reduced.left = static_cast<double>(first_column) * cell_width;
    reduced.top = static_cast<double>(first_row) * cell_height;
    reduced.cell_width = cell_width;
    reduced.cell_height = cell_height;
    reduced.rgba.resize(static_cast<std::size_t>(reduced.width) * static_cast<std::size_t>(reduced.height) * 4);
    return reduced;
}

// Only a GeoTIFF is known to be unpacked where it says nothing of it; an overview's dataset has no driver, but says the same as its picture.
double dearness_of(GDALDataset& picture) {
    constexpr double packed = 2.5;
    const char* packing = picture.GetMetadataItem("COMPRESSION", "IMAGE_STRUCTURE");
    if (packing != nullptr && std::string_view(packing) != "NONE") return packed;
    GDALDriver* driver = picture.GetDriver();
    const bool geotiff = driver == nullptr || std::string_view(driver->GetDescription()) == "GTiff";
    return geotiff ? 1.0 : packed;
}

}  // namespace

struct PictureReader::Hand {
    PictureTone tone;
    PictureTone tone_of_copy = copy_tone();
    OpenDataset dataset;
    OpenDataset copy;
    std::vector<LevelOfFile> datasets;
    std::vector<PictureLevel> levels;
    std::size_t failures = 0;

    void add_level(GDALDataset& of, const PictureTone& tone_of_it, int full_width, int full_height) {
        const int width = of.GetRasterXSize();
        const int height = of.GetRasterYSize();
        if (of.GetRasterCount() < *std::max_element(tone_of_it.bands.begin(), tone_of_it.bands.end())) return;
        if (width < 1 || height < 1 || width > full_width || height > full_height) return;
        PictureLevel level;
        level.width = width;
        level.height = height;
        level.factor_x = static_cast<double>(full_width) / width;
        level.factor_y = static_cast<double>(full_height) / height;
        GDALRasterBand* band = of.GetRasterBand(tone_of_it.bands.front());
        band->GetBlockSize(&level.block_width, &level.block_height);
        level.block_width = std::clamp(level.block_width, 1, width);
        level.block_height = std::clamp(level.block_height, 1, height);
        level.bytes_per_pixel =
            static_cast<double>(GDALGetDataTypeSizeBytes(band->GetRasterDataType())) * of.GetRasterCount();
        level.dearness = dearness_of(of);
        levels.push_back(level);
        datasets.push_back({&of, &tone_of_it});
    }

    void add_levels(GDALDataset& of, const PictureTone& tone_of_it, int full_width, int full_height) {
        add_level(of, tone_of_it, full_width, full_height);
        GDALRasterBand* band = of.GetRasterBand(tone_of_it.bands.front());
        for (int i = 0; i < band->GetOverviewCount(); ++i) {
            GDALRasterBand* overview = band->GetOverview(i);
            GDALDataset* dataset_of_it = overview ? overview->GetDataset() : nullptr;
            if (dataset_of_it) add_level(*dataset_of_it, tone_of_it, full_width, full_height);
        }
    }

    void sort_levels() {
        std::vector<std::size_t> order(levels.size());
        for (std::size_t i = 0; i < order.size(); ++i) order[i] = i;
        std::stable_sort(order.begin(), order.end(),
                         [&](std::size_t a, std::size_t b) { return levels[a].width > levels[b].width; });
        std::vector<PictureLevel> sorted_levels;
        std::vector<LevelOfFile> sorted_datasets;
        for (const std::size_t i : order) {
            sorted_levels.push_back(levels[i]);
            sorted_datasets.push_back(datasets[i]);
        }
        levels = std::move(sorted_levels);
        datasets = std::move(sorted_datasets);
    }

    // Pixels of a level as red, green, blue, alpha.
    const std::uint8_t* pixels(std::size_t level, const PixelWindow& w, std::vector<std::uint8_t>& rgba) {
        const PictureTone& tone_here = *datasets[level].tone;
        PictureValues values;
        CPLErrorHandlerPusher quiet(CPLQuietErrorHandler);
        const bool whole = read_values(*datasets[level].dataset, tone_here, w.left, w.top, w.width, w.height, values);
        const auto count = static_cast<std::size_t>(w.width) * static_cast<std::size_t>(w.height);
        rgba.resize(count * 4);
        if (!whole) {
            ++failures;
            std::fill(rgba.begin(), rgba.end(), std::uint8_t{0});
            return rgba.data();
        }
        const std::uint8_t* mask = tone_here.mask ? values.mask.data() : nullptr;
        if (tone_here.eight_bit)
            to_rgba(tone_here, values.bytes.data(), mask, count, rgba.data());
        else
            to_rgba(tone_here, values.fractions.data(), mask, count, rgba.data());
        return rgba.data();
    }

    // The means of all rows of a window, one for each of the cells of `sums`.
    void average(std::size_t level, const PixelWindow& window, CellSums sums, std::uint8_t* into) {
        const std::uint8_t* row = pixels(level, window, block);
        for (int y = 0; y < window.height; ++y, row += static_cast<std::ptrdiff_t>(window.width) * 4)
            sums.add(row, window.left, window.width);
        sums.write(into);
    }

    std::vector<std::uint8_t> block;
};

PictureReader::PictureReader(std::unique_ptr<Hand> hand) : hand_(std::move(hand)) {}
PictureReader::PictureReader(PictureReader&&) noexcept = default;
PictureReader& PictureReader::operator=(PictureReader&&) noexcept = default;
PictureReader::~PictureReader() = default;

const std::vector<PictureLevel>& PictureReader::levels() const { return hand_->levels; }
std::size_t PictureReader::failures() const { return hand_->failures; }

tl::expected<PictureReader, Refusal> PictureReader::open(const ImagerySource& source) {
    const ImageryOpening& opening = source.opening();
    CPLErrorHandlerPusher quiet(CPLQuietErrorHandler);
    auto hand = std::make_unique<Hand>();
    hand->tone = opening.tone;
    hand->dataset = open_dataset(opening.facts.file, opening.table);
    const auto changed = [&] {
        return tl::unexpected(Refusal{Refusal::Code::unreadable, opening.facts.file.string(), "",
                                      Words::later("a file that is gone or has changed"),
                                      Words::later("the picture that was opened")});
    };
    if (!hand->dataset || hand->dataset->GetRasterXSize() != opening.facts.width ||
        hand->dataset->GetRasterYSize() != opening.facts.height || hand->dataset->GetRasterCount() != opening.facts.bands)
        return changed();
    hand->add_levels(*hand->dataset, hand->tone, opening.facts.width, opening.facts.height);
    if (opening.reduced_copy) hand->copy = open_dataset(*opening.reduced_copy, std::nullopt);
    if (hand->copy && hand->copy->GetRasterCount() == 4)
        hand->add_levels(*hand->copy, hand->tone_of_copy, opening.facts.width, opening.facts.height);
    if (hand->levels.empty()) return changed();
    hand->sort_levels();
    return PictureReader(std::move(hand));
}

std::optional<ReducedWindow> PictureReader::whole(std::size_t level, PixelWindow window, int across, int down,
                                                  const std::stop_token& stop) {
    const PictureLevel& of = hand_->levels[level];
    ReducedWindow reduced = cells_over(window, of, across, down);
    const int first_row = static_cast<int>(reduced.top) / down;
    const int left = static_cast<int>(reduced.left);
    const int end = std::min(left + reduced.width * across, of.width);
    const double row_bytes = static_cast<double>(end - left) * (of.bytes_per_pixel + 4.0);
    const int cell_rows = std::max(1, static_cast<int>(strip_bytes / row_bytes) / down);
    CellSums sums(left / across, across, reduced.width);
    std::vector<std::uint8_t> rgba;
    for (int row = 0; row < reduced.height; row += cell_rows) {
        if (stop.stop_requested()) return std::nullopt;
        const int top = (first_row + row) * down;
        const int rows_end = std::min((first_row + std::min(row + cell_rows, reduced.height)) * down, of.height);
        const std::uint8_t* pixels = hand_->pixels(level, {left, top, end - left, rows_end - top}, rgba);
        std::uint8_t* into = &reduced.rgba[static_cast<std::size_t>(row) * static_cast<std::size_t>(reduced.width) * 4];
        const auto line = static_cast<std::size_t>(end - left) * 4;
        if (across == 1 && down == 1) {
            std::copy(pixels, pixels + line * static_cast<std::size_t>(rows_end - top), into);
            continue;
        }
        for (int y = top; y < rows_end; ++y, pixels += line) {
            sums.add(pixels, left, end - left);
            if ((y + 1) % down == 0 || y + 1 == rows_end) {
                sums.write(into);
                into += static_cast<std::ptrdiff_t>(reduced.width) * 4;
            }
        }
    }
    return reduced;
}

std::optional<ReducedWindow> PictureReader::sparse(std::size_t level, PixelWindow window, int across, int down,
                                                   double most_bytes, const std::stop_token& stop) {
    const PictureLevel& of = hand_->levels[level];
    const bool strips = of.block_width == of.width;
    const int blocks_across = strips ? 1 : window.width / of.block_width + 2;
    const int blocks_down = window.height / of.block_height + 2;
    const double bytes =
        static_cast<double>(of.block_width) * of.block_height * of.bytes_per_pixel * blocks_across * blocks_down;
    int stride = static_cast<int>(std::ceil(strips ? bytes / most_bytes : std::sqrt(bytes / most_bytes)));
    stride = std::max(stride, 1) | 1;  // odd, so that the block that is read lies in the middle of its cell
    const int cell_width = strips ? across : of.block_width * stride;
    const int cell_height = std::max(of.block_height * stride, strips ? down : 1);
    ReducedWindow reduced = cells_over(window, of, cell_width, cell_height);
    reduced.sparse = true;
    for (int row = 0; row < reduced.height; ++row) {
        if (stop.stop_requested()) return std::nullopt;
        const int middle = std::min(static_cast<int>(reduced.top) + row * cell_height + cell_height / 2, of.height - 1);
        const int top = middle / of.block_height * of.block_height;
        const int rows = std::min({of.block_height, of.height - top, strips ? down : of.block_height});
        std::uint8_t* into = &reduced.rgba[static_cast<std::size_t>(row) * static_cast<std::size_t>(reduced.width) * 4];
        if (strips) {
            const int left = static_cast<int>(reduced.left);
            const int end = std::min(left + reduced.width * cell_width, of.width);
            hand_->average(level, {left, top, end - left, rows}, CellSums(left / across, across, reduced.width), into);
            continue;
        }
        for (int column = 0; column < reduced.width; ++column, into += 4) {
            const int centre = std::min(static_cast<int>(reduced.left) + column * cell_width + cell_width / 2, of.width - 1);
            const int left = centre / of.block_width * of.block_width;
            const int columns = std::min(of.block_width, of.width - left);
            hand_->average(level, {left, top, columns, rows}, CellSums(0, of.width, 1), into);
        }
    }
    return reduced;
}

}  // namespace plugside
