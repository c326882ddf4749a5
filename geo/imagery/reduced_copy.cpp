#include "geo/imagery/reduced_copy.h"

#include <cpl_error.h>
#include <cpl_string.h>
#include <gdal_priv.h>

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/words/words.h"
#include "geo/imagery/imagery_opening.h"
#include "geo/imagery/picture_library.h"
#include "geo/imagery/picture_reader.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

constexpr double most_pixels_without = 4e6;
constexpr int coarse_enough = 2048;
constexpr const char* name_start = "imagery-1-";  // of this form of copies

bool decodes_from_the_top(const ImageryFacts& facts) { return facts.format == "PNG" || facts.format == "JPEG"; }

std::string name_of(const ImagerySource& source) {
    const ImageryFacts& facts = source.facts();
    std::error_code error;
    const fs::path whole = fs::weakly_canonical(facts.file, error);
    const auto changed = fs::last_write_time(facts.file, error).time_since_epoch().count();
    const std::string key = whole.string() + "\n" + std::to_string(fs::file_size(facts.file, error)) + "\n" +
                            std::to_string(changed) + "\n" + source.opening().table.value_or("");
    std::uint64_t hash = 14695981039346656037ULL;  // FNV-1a, 64 bits
    for (const char c : key) hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    std::string digits;
    for (int shift = 60; shift >= 0; shift -= 4) digits += "0123456789abcdef"[(hash >> shift) & 15U];
    return name_start + digits + ".tif";
}

void divide_by_alpha(std::vector<std::uint8_t>& rgba) {
    for (std::size_t i = 0; i < rgba.size(); i += 4) {
        const unsigned alpha = rgba[i + 3];
        if (alpha == 0 || alpha == 255) continue;
        for (std::size_t c = 0; c < 3; ++c)
            rgba[i + c] = static_cast<std::uint8_t>(std::min(255U, (rgba[i + c] * 255U + alpha / 2) / alpha));
    }
}

class Copier {
public:
    Copier(PictureReader reader, bool whole_resolution, const Progress& progress)
        : reader_(std::move(reader)), progress_(progress) {
        level_ = whole_resolution ? 0 : reader_.levels().size() - 1;
        factor_ = whole_resolution ? 1 : 4;
        width_ = (reader_.levels()[level_].width - 1) / factor_ + 1;
        height_ = (reader_.levels()[level_].height - 1) / factor_ + 1;
    }

    // False when it was stopped or could not be written.
    bool write(const fs::path& file) {
        CPLStringList options;
        for (const char* option : {"TILED=YES", "COMPRESS=DEFLATE", "ZLEVEL=1", "PREDICTOR=2", "INTERLEAVE=PIXEL",
                                   "PHOTOMETRIC=RGB", "ALPHA=YES", "BIGTIFF=IF_SAFER"})
            options.AddString(option);
        OpenDataset target(GetGDALDriverManager()->GetDriverByName("GTiff")->Create(file.c_str(), width_, height_, 4,
                                                                                    GDT_Byte, options.List()));
        if (!target || !copy(*target)) return false;
        std::vector<int> halves;
        for (int factor = 2; std::max(width_, height_) / factor > 256; factor *= 2) halves.push_back(factor);
        if (halves.empty()) return true;
        target->FlushCache();
        return target->BuildOverviews("AVERAGE", static_cast<int>(halves.size()), halves.data(), 0, nullptr, tell_copies,
                                      const_cast<Progress*>(&progress_), nullptr) == CE_None;
    }

private:
    static int CPL_STDCALL tell_copies(double share, const char*, void* of) {
        const auto* progress = static_cast<const Progress*>(of);
        progress->say(0.75 + 0.25 * share, Words::later("reducing the picture"));
        return progress->stopped() ? FALSE : TRUE;
    }

    bool copy(GDALDataset& target) {
        constexpr int rows_at_once = 256;
        constexpr int columns_at_once = 8192;
        for (int top = 0; top < height_; top += rows_at_once)
            for (int left = 0; left < width_; left += columns_at_once) {
                progress_.say(0.75 * top / height_, Words::later("reducing the picture"));
                const PixelWindow window{left * factor_, top * factor_, std::min(columns_at_once, width_ - left) * factor_,
                                         std::min(rows_at_once, height_ - top) * factor_};
                auto cells = reader_.whole(level_, window, factor_, factor_, progress_.stop);
                if (!cells) return false;
                divide_by_alpha(cells->rgba);
                if (target.RasterIO(GF_Write, left, top, cells->width, cells->height, cells->rgba.data(), cells->width,
                                    cells->height, GDT_Byte, 4, nullptr, 4, GSpacing{4} * cells->width, 1,
                                    nullptr) != CE_None)
                    return false;
            }
        return true;
    }

    PictureReader reader_;
    const Progress& progress_;
    std::size_t level_ = 0;
    int factor_ = 4;
    int width_ = 0;
    int height_ = 0;
};

}  // namespace

bool wants_reduced_copy(const ImagerySource& source) {
    const ImageryFacts& facts = source.facts();
    if (static_cast<double>(facts.width) * facts.height <= most_pixels_without) return false;
    if (decodes_from_the_top(facts)) return true;
    if (facts.format == "GeoPackage" || facts.format == "MBTiles" || facts.format == "JPEG 2000") return false;
    const auto reader = PictureReader::open(source);
    if (!reader) return false;
    const PictureLevel& coarsest = reader->levels().back();
    return std::max(coarsest.width, coarsest.height) > coarse_enough;
}

std::optional<fs::path> reduced_copy_of(const ImagerySource& source, const fs::path& folder) {
    const fs::path file = folder / name_of(source);
    std::error_code error;
    if (!fs::is_regular_file(file, error)) return std::nullopt;
    fs::last_write_time(file, fs::file_time_type::clock::now(), error);  // so that what is in use is trimmed last
    return file;
}

tl::expected<fs::path, Refusal> make_reduced_copy(const ImagerySource& source, const fs::path& folder,
                                                  const Progress& progress) {
    auto reader = PictureReader::open(source);
    if (!reader) return tl::unexpected(reader.error());
    std::error_code error;
    fs::create_directories(folder, error);
    const fs::path file = folder / name_of(source);
    auto safe = SafeFile::beside(file);
    if (!safe) return tl::unexpected(safe.error());
    CPLErrorHandlerPusher quiet(CPLQuietErrorHandler);
    Copier copier(std::move(*reader), decodes_from_the_top(source.facts()), progress);
    if (!copier.write(safe->temporary())) {
        if (progress.stopped())
            return tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""});
        return tl::unexpected(safe->cannot_write(Words::later("a copy that could not be written")));
    }
    if (auto done = safe->commit(); !done) return tl::unexpected(done.error());
    return file;
}

void trim_reduced_copies(const fs::path& folder, std::uintmax_t most_bytes) {
    struct Copy {
        fs::path file;
        std::uintmax_t bytes;
        fs::file_time_type used;
    };
    std::vector<Copy> copies;
    std::error_code error;
    for (const auto& entry : fs::directory_iterator(folder, error))
        if (entry.is_regular_file(error) && entry.path().filename().string().rfind(name_start, 0) == 0)
            copies.push_back({entry.path(), entry.file_size(error), entry.last_write_time(error)});
    std::sort(copies.begin(), copies.end(), [](const Copy& a, const Copy& b) { return a.used > b.used; });
    std::uintmax_t kept = 0;
    for (const Copy& copy : copies) {
        kept += copy.bytes;
        if (kept > most_bytes) fs::remove(copy.file, error);
    }
}

}  // namespace plugside
