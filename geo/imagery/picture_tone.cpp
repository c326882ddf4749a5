#include "geo/imagery/picture_tone.h"

#include <algorithm>
#include <cmath>
#include <type_traits>

namespace plugside {

namespace {

std::uint8_t multiplied(std::uint8_t colour, std::uint8_t alpha) {
    const unsigned product = static_cast<unsigned>(colour) * alpha + 127U;
    return static_cast<std::uint8_t>(product / 255U);
}

std::uint8_t shown(double value, const ValueRange& range) {
    if (!(range.to > range.from)) return value >= range.to ? 255 : 0;
    const double share = (value - range.from) / (range.to - range.from);
    return static_cast<std::uint8_t>(std::lround(255.0 * std::clamp(share, 0.0, 1.0)));
}

// What a colour value is shown as: a table for bytes, computed for fractions.
template <typename Value>
class Shown {
public:
    Shown(const PictureTone& tone, std::size_t colour) : range_(tone.ranges[colour]) {
        if constexpr (std::is_same_v<Value, std::uint8_t>)
            for (std::size_t i = 0; i < table_.size(); ++i) table_[i] = shown(static_cast<double>(i), range_);
    }
    std::uint8_t operator()(Value value) const {
        if constexpr (std::is_same_v<Value, std::uint8_t>)
            return table_[value];
        else
            return shown(static_cast<double>(value), range_);
    }

private:
    ValueRange range_;
    std::array<std::uint8_t, 256> table_{};
};

template <typename Value>
bool says_nothing(Value value, const std::optional<double>& no_data) {
    if constexpr (!std::is_same_v<Value, std::uint8_t>) {
        if (!std::isfinite(value)) return true;
        return no_data && value == static_cast<float>(*no_data);
    } else {
        return no_data && static_cast<double>(value) == *no_data;
    }
}

template <typename Value>
std::uint8_t alpha_of(const PictureTone& tone, const Value* values, const std::uint8_t* mask) {
    const std::size_t colours = tone.colours();
    bool nothing = true;
    for (std::size_t c = 0; c < colours && nothing; ++c) nothing = says_nothing(values[c], tone.no_data[c]);
    if (nothing || (mask && *mask == 0)) return 0;
    if (!tone.alpha) return 255;
    return shown(static_cast<double>(values[colours]), {0.0, tone.full_alpha});
}

template <typename Value>
void convert(const PictureTone& tone, const Value* values, const std::uint8_t* mask, std::size_t pixels,
             std::uint8_t* rgba) {
    const std::size_t colours = tone.colours();
    std::vector<Shown<Value>> shown_as;
    for (std::size_t c = 0; c < colours; ++c) shown_as.emplace_back(tone, c);
    // the plain case, which most pictures are, without a question a pixel
    const bool plain = std::is_same_v<Value, std::uint8_t> && !tone.alpha && !mask && tone.palette.empty() &&
                       std::none_of(tone.no_data.begin(), tone.no_data.end(), [](const auto& n) { return n.has_value(); });
    for (std::size_t i = 0; i < pixels; ++i, values += tone.bands.size(), rgba += 4) {
        std::uint8_t alpha = plain ? std::uint8_t{255} : alpha_of(tone, values, mask ? mask + i : nullptr);
        if (alpha == 0) {
            std::fill(rgba, rgba + 4, std::uint8_t{0});
            continue;
        }
        std::array<std::uint8_t, 3> colour{};
        if (!tone.palette.empty()) {
            const auto index = static_cast<double>(values[0]);
            const bool known = index >= 0.0 && index < static_cast<double>(tone.palette.size());
            const auto entry = known ? tone.palette[static_cast<std::size_t>(index)] : std::array<std::uint8_t, 4>{};
            colour = {entry[0], entry[1], entry[2]};
            alpha = multiplied(alpha, entry[3]);
        } else if (colours == 1) {
            colour.fill(shown_as[0](values[0]));
        } else {
            for (std::size_t c = 0; c < 3; ++c)
                colour[c] = says_nothing(values[c], std::nullopt) ? std::uint8_t{0} : shown_as[c](values[c]);
        }
        for (std::size_t c = 0; c < 3; ++c) rgba[c] = alpha == 255 ? colour[c] : multiplied(colour[c], alpha);
        rgba[3] = alpha;
    }
}

}  // namespace

void to_rgba(const PictureTone& tone, const std::uint8_t* values, const std::uint8_t* mask, std::size_t pixels,
             std::uint8_t* rgba) {
    convert(tone, values, mask, pixels, rgba);
}

void to_rgba(const PictureTone& tone, const float* values, const std::uint8_t* mask, std::size_t pixels,
             std::uint8_t* rgba) {
    convert(tone, values, mask, pixels, rgba);
}

std::optional<ValueRange> middle_range(std::vector<float>& sample) {
    if (sample.empty()) return std::nullopt;
    const auto at = [&](double share) {
        const auto place = static_cast<std::ptrdiff_t>(std::lround(share * static_cast<double>(sample.size() - 1)));
        std::nth_element(sample.begin(), sample.begin() + place, sample.end());
        return static_cast<double>(sample[static_cast<std::size_t>(place)]);
    };
    const double low = at(0.02);
    return ValueRange{low, at(0.98)};
}

}  // namespace plugside
