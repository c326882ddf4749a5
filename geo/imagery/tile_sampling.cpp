#include "geo/imagery/tile_sampling.h"

#include <algorithm>
#include <cmath>

namespace plugside {

namespace {

class Sampler {
public:
    explicit Sampler(const ReducedWindow& window) : window_(window) {}

    void take(double column, double row, std::uint8_t* rgba) const {
        const double u = (column - window_.left) / window_.cell_width - 0.5;
        const double v = (row - window_.top) / window_.cell_height - 0.5;
        const double left = std::floor(u);
        const double top = std::floor(v);
        const auto x = static_cast<float>(u - left);
        const auto y = static_cast<float>(v - top);
        const std::uint8_t* a = cell(left, top);
        const std::uint8_t* b = cell(left + 1.0, top);
        const std::uint8_t* c = cell(left, top + 1.0);
        const std::uint8_t* d = cell(left + 1.0, top + 1.0);
        for (int i = 0; i < 4; ++i) {
            const float upper = static_cast<float>(a[i]) + x * static_cast<float>(b[i] - a[i]);
            const float lower = static_cast<float>(c[i]) + x * static_cast<float>(d[i] - c[i]);
            rgba[i] = static_cast<std::uint8_t>(upper + y * (lower - upper) + 0.5F);
        }
    }

private:
    [[nodiscard]] const std::uint8_t* cell(double column, double row) const {
        const auto x = static_cast<std::size_t>(std::clamp(column, 0.0, static_cast<double>(window_.width - 1)));
        const auto y = static_cast<std::size_t>(std::clamp(row, 0.0, static_cast<double>(window_.height - 1)));
        return &window_.rgba[(y * static_cast<std::size_t>(window_.width) + x) * 4];
    }
    const ReducedWindow& window_;
};

}  // namespace

void fill(ImageryTile& tile, const PixelMesh& mesh, const ReducedWindow& window, const SampledLevel& level) {
    const Sampler sampler(window);
    bool seen = false;
    std::uint8_t* rgba = tile.rgba.data();
    for (int row = 0; row < tile.size; ++row)
        for (int column = 0; column < tile.size; ++column, rgba += 4) {
            const auto at = mesh.at(column + 0.5, row + 0.5);
            if (!at || at->column < 0.0 || at->row < 0.0 || at->column >= level.full_width || at->row >= level.full_height)
                continue;
            sampler.take(at->column / level.factor_x, at->row / level.factor_y, rgba);
            seen = seen || rgba[3] != 0;
        }
    if (seen) return;
    tile.empty = true;
    tile.rgba = {};
}

}  // namespace plugside
