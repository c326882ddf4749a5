#include "geo/imagery/picture_bands.h"

#include <gdal_priv.h>

#include <algorithm>
#include <cmath>

#include "core/words/words.h"

namespace plugside {

namespace {

constexpr std::size_t most_blocks_sampled = 64;
constexpr std::size_t most_values_a_block = 65536;

std::optional<int> band_shown_as(GDALDataset& dataset, GDALColorInterp colour) {
    for (int band = 1; band <= dataset.GetRasterCount(); ++band)
        if (dataset.GetRasterBand(band)->GetColorInterpretation() == colour) return band;
    return std::nullopt;
}

void choose_bands(GDALDataset& dataset, PictureTone& tone) {
    const auto alpha = band_shown_as(dataset, GCI_AlphaBand);
    std::vector<int> colours;
    for (int band = 1; band <= dataset.GetRasterCount() && colours.size() < 3; ++band)
        if (band != alpha) colours.push_back(band);
    if (colours.size() == 2) colours.pop_back();
    const auto red = band_shown_as(dataset, GCI_RedBand);
    const auto green = band_shown_as(dataset, GCI_GreenBand);
    const auto blue = band_shown_as(dataset, GCI_BlueBand);
    if (red && green && blue) {
        colours.assign(3, *red);
        colours[1] = *green;
        colours[2] = *blue;
    }
    tone.bands = std::move(colours);
    if (alpha && !tone.bands.empty()) {
        tone.bands.push_back(*alpha);
        tone.alpha = true;
        const GDALDataType type = dataset.GetRasterBand(*alpha)->GetRasterDataType();
        tone.full_alpha = type == GDT_Byte ? 255.0 : type == GDT_UInt16 ? 65535.0 : 1.0;
    }
}

void take_palette(GDALDataset& dataset, PictureTone& tone) {
    const GDALColorTable* table = dataset.GetRasterBand(tone.bands.front())->GetColorTable();
    if (table == nullptr || tone.colours() != 1 || table->GetPaletteInterpretation() != GPI_RGB) return;
    const auto part = [](short value) { return static_cast<std::uint8_t>(std::clamp<int>(value, 0, 255)); };
    for (int i = 0; i < std::min(table->GetColorEntryCount(), 65536); ++i) {
        const GDALColorEntry* entry = table->GetColorEntry(i);
        tone.palette.push_back({part(entry->c1), part(entry->c2), part(entry->c3), part(entry->c4)});
    }
}

// The coarsest copy within the file that still has some hundred pixels a side.
GDALDataset& sampled_level(GDALDataset& dataset, const PictureTone& tone) {
    GDALDataset* chosen = &dataset;
    GDALRasterBand* band = dataset.GetRasterBand(tone.bands.front());
    for (int i = 0; i < band->GetOverviewCount(); ++i) {
        GDALRasterBand* overview = band->GetOverview(i);
        GDALDataset* level = overview ? overview->GetDataset() : nullptr;
        if (level == nullptr || level->GetRasterCount() < *std::max_element(tone.bands.begin(), tone.bands.end())) continue;
        if (std::min(overview->GetXSize(), overview->GetYSize()) < 256) continue;
        if (level->GetRasterXSize() < chosen->GetRasterXSize()) chosen = level;
    }
    return *chosen;
}

// Values of each colour in blocks spread evenly over the picture, those that mean no data left out.
std::vector<std::vector<float>> sample_of(GDALDataset& dataset, const PictureTone& tone) {
    GDALDataset& level = sampled_level(dataset, tone);
    int block_width = 0;
    int block_height = 0;
    level.GetRasterBand(tone.bands.front())->GetBlockSize(&block_width, &block_height);
    const int width = level.GetRasterXSize();
    const int height = level.GetRasterYSize();
    block_width = std::min(block_width, width);
    block_height = std::min(block_height, height);
    const std::int64_t across = (width + std::int64_t{block_width} - 1) / block_width;
    const std::int64_t blocks = across * ((height + std::int64_t{block_height} - 1) / block_height);
    const std::int64_t taken = std::min<std::int64_t>(blocks, most_blocks_sampled);
    std::vector<std::vector<float>> sample(tone.colours());
    for (std::int64_t i = 0; i < taken; ++i) {
        const std::int64_t block = (2 * i + 1) * blocks / (2 * taken);
        const auto left = static_cast<int>(block % across) * block_width;
        const auto top = static_cast<int>(block / across) * block_height;
        PictureValues values;
        const int rows = std::min({block_height, height - top, std::max(1, static_cast<int>(4194304 / block_width))});
        const int columns = std::min(block_width, width - left);
        if (!read_values(level, tone, left, top, columns, rows, values)) continue;
        const std::size_t pixels = values.fractions.size() / tone.bands.size();
        const std::size_t step = std::max<std::size_t>(1, pixels / most_values_a_block);
        for (std::size_t p = 0; p < pixels; p += step)
            for (std::size_t c = 0; c < tone.colours(); ++c) {
                const float value = values.fractions[p * tone.bands.size() + c];
                const auto& none = tone.no_data[c];
                const bool counts = std::isfinite(value) && !(none && value == static_cast<float>(*none)) &&
                                    (values.mask.empty() || values.mask[p] != 0) &&
                                    (!tone.alpha || values.fractions[(p + 1) * tone.bands.size() - 1] > 0.0F);
                if (counts) sample[c].push_back(value);
            }
    }
    return sample;
}

}  // namespace

bool read_values(GDALDataset& dataset, const PictureTone& tone, int left, int top, int width, int height,
                 PictureValues& values) {
    const auto pixels = static_cast<std::size_t>(width) * static_cast<std::size_t>(height);
    const auto bands = static_cast<int>(tone.bands.size());
    std::vector<int> numbers = tone.bands;
    void* into = nullptr;
    if (tone.eight_bit) {
        values.bytes.assign(pixels * tone.bands.size(), 0);
        into = values.bytes.data();
    } else {
        values.fractions.assign(pixels * tone.bands.size(), 0.0F);
        into = values.fractions.data();
    }
    const GSpacing size = tone.eight_bit ? 1 : static_cast<GSpacing>(sizeof(float));
    bool whole =
        dataset.RasterIO(GF_Read, left, top, width, height, into, width, height, tone.eight_bit ? GDT_Byte : GDT_Float32,
                         bands, numbers.data(), size * bands, size * bands * width, size, nullptr) == CE_None;
    if (tone.mask) {
        values.mask.assign(pixels, 0);
        GDALRasterBand* mask = dataset.GetRasterBand(tone.bands.front())->GetMaskBand();
        whole = mask != nullptr &&
                mask->RasterIO(GF_Read, left, top, width, height, values.mask.data(), width, height, GDT_Byte, 1, width,
                               nullptr) == CE_None &&
                whole;
    }
    return whole;
}

tl::expected<PictureTone, Refusal> tone_of(GDALDataset& dataset, const std::filesystem::path& file) {
    PictureTone tone;
    choose_bands(dataset, tone);
    const auto refuse = [&](const std::string& found) {
        return tl::unexpected(
            Refusal{Refusal::Code::wrong_format, file.string(), "", found,
                    Words::later("a picture with one band of colour or three, of whole numbers or fractions")});
    };
    if (tone.bands.empty()) return refuse(Words::later("a picture without a band of colour"));
    for (const int number : tone.bands) {
        GDALRasterBand* band = dataset.GetRasterBand(number);
        if (GDALDataTypeIsComplex(band->GetRasterDataType())) return refuse(Words::later("complex numbers"));
        if (band->GetRasterDataType() != GDT_Byte) tone.eight_bit = false;
    }
    for (std::size_t c = 0; c < tone.colours(); ++c) {
        int has = 0;
        const double none = dataset.GetRasterBand(tone.bands[c])->GetNoDataValue(&has);
        tone.no_data.push_back(has ? std::optional<double>(none) : std::nullopt);
    }
    tone.ranges.assign(tone.colours(), ValueRange{});
    const int mask = dataset.GetRasterBand(tone.bands.front())->GetMaskFlags();
    tone.mask = (mask & GMF_PER_DATASET) != 0 && (mask & GMF_ALPHA) == 0;
    take_palette(dataset, tone);
    if (tone.eight_bit || !tone.palette.empty()) return tone;
    auto sample = sample_of(dataset, tone);
    for (std::size_t c = 0; c < tone.colours(); ++c)
        if (const auto range = middle_range(sample[c])) tone.ranges[c] = *range;
    return tone;
}

}  // namespace plugside
