#include "geo/imagery/world_file.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <vector>

#include "core/words/words.h"
#include "geo/read/numbers.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t largest_side_file = 64 * 1024;

std::string lower(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

// ".jpg" gives .jgw, .jpgw and .wld.
std::vector<std::string> world_endings(const fs::path& picture) {
    const std::string ending = lower(picture.extension().string());
    std::vector<std::string> endings;
    if (ending.size() > 3) endings.push_back(std::string(".") + ending[1] + ending.back() + "w");
    if (ending.size() > 1) endings.push_back(ending + "w");
    endings.emplace_back(".wld");
    return endings;
}

std::optional<fs::path> beside(const fs::path& picture, const std::vector<std::string>& endings) {
    std::error_code error;
    for (const std::string& ending : endings)
        for (const bool capital : {false, true}) {
            std::string written = ending;
            if (capital)
                for (char& c : written)
                    if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
            fs::path side = picture;
            side.replace_extension(written);
            if (fs::exists(side, error)) return side;
        }
    return std::nullopt;
}

tl::expected<std::string, Refusal> side_text(const fs::path& side) {
    std::error_code error;
    const auto refuse = [&](Refusal::Code code, const std::string& found) {
        return tl::unexpected(Refusal{code, side.string(), "", found, Words::later("a short text beside the picture")});
    };
    if (!fs::is_regular_file(side, error))
        return refuse(Refusal::Code::not_a_file, Words::later("something that is no plain file"));
    if (fs::file_size(side, error) > largest_side_file)
        return refuse(Refusal::Code::too_large, Words::later("a file over 64 KiB"));
    std::ifstream stream(side, std::ios::binary);
    std::string text((std::istreambuf_iterator<char>(stream)), std::istreambuf_iterator<char>());
    if (!stream && !stream.eof()) return refuse(Refusal::Code::unreadable, Words::later("a file that cannot be read"));
    return text;
}

}  // namespace

bool is_usable(const GeoTransform& t) {
    const double area = t[1] * t[5] - t[2] * t[4];
    const double sides = std::hypot(t[1], t[4]) * std::hypot(t[2], t[5]);
    return std::all_of(t.begin(), t.end(), [](double value) { return std::isfinite(value); }) && std::isfinite(area) &&
           std::isfinite(sides) && std::abs(area) > 1e-6 * sides && sides > 0.0;
}

bool has_world_file(const fs::path& picture) { return beside(picture, world_endings(picture)).has_value(); }

tl::expected<std::optional<GeoTransform>, Refusal> world_file_of(const fs::path& picture) {
    const auto side = beside(picture, world_endings(picture));
    if (!side) return std::optional<GeoTransform>();
    const auto text = side_text(*side);
    if (!text) return tl::unexpected(text.error());
    std::vector<double> numbers;
    std::size_t line = 0;
    for (std::size_t start = 0; start < text->size() && numbers.size() < 6;) {
        const std::size_t end = std::min(text->find('\n', start), text->size());
        const std::string_view written = trimmed(std::string_view(*text).substr(start, end - start));
        ++line;
        start = end + 1;
        if (written.empty()) continue;
        const auto number = parse_number(written);
        if (!number)
            return tl::unexpected(Refusal{Refusal::Code::malformed, side->string(),
                                          Words::tell("line {1}", {std::to_string(line)}),
                                          quoted_for_display(std::string(written)), Words::later("a number")});
        numbers.push_back(*number);
    }
    if (numbers.size() < 6)
        return tl::unexpected(Refusal{Refusal::Code::malformed, side->string(), "",
                                      Words::tell("{1} numbers", {std::to_string(numbers.size())}),
                                      Words::later("six numbers, one a line")});
    GeoTransform transform{0.0, numbers[0], numbers[2], 0.0, numbers[1], numbers[3]};
    transform[0] = numbers[4] - 0.5 * (transform[1] + transform[2]);
    transform[3] = numbers[5] - 0.5 * (transform[4] + transform[5]);
    if (!is_usable(transform))
        return tl::unexpected(Refusal{Refusal::Code::out_of_range, side->string(), "",
                                      Words::later("numbers that squeeze the picture into a line"),
                                      Words::later("the size of a pixel in two directions")});
    return std::optional<GeoTransform>(transform);
}

tl::expected<std::string, Refusal> definition_beside(const fs::path& picture) {
    const auto side = beside(picture, {".prj"});
    if (!side) return std::string();
    return side_text(*side);
}

}  // namespace plugside
