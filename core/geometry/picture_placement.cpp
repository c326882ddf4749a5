#include "core/geometry/picture_placement.h"

#include <Eigen/Dense>
#include <algorithm>
#include <cmath>

#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double least_width_share = 0.01;
constexpr double same_pixel = 0.5;
constexpr double same_ground_m = 0.001;

using Code = PlacementFault::Code;
using Places = Eigen::Matrix<double, Eigen::Dynamic, 2>;

// Both sides about their middles and of size about one, so that neither large coordinates nor the units blur the solution.
struct Normalised {
    Places places;
    Eigen::RowVector2d middle;
    double size = 1.0;

    explicit Normalised(Places of) : places(std::move(of)), middle(places.colwise().mean()) {
        places.rowwise() -= middle;
        size = std::max(places.rowwise().norm().maxCoeff(), 1e-300);
        places /= size;
    }
    [[nodiscard]] double width_share() const {
        const Eigen::JacobiSVD<Places> shape(places);
        return shape.singularValues()(1) / std::max(shape.singularValues()(0), 1e-300);
    }
};

std::size_t distinct(const Places& places, double apart) {
    std::size_t count = 0;
    for (Eigen::Index i = 0; i < places.rows(); ++i) {
        bool fresh = true;
        for (Eigen::Index j = 0; j < i && fresh; ++j) fresh = (places.row(i) - places.row(j)).norm() > apart;
        count += fresh ? 1 : 0;
    }
    return count;
}

std::optional<Code> fault_of(const Places& pixels, const Places& ground, std::size_t needed) {
    if (!pixels.allFinite() || !ground.allFinite()) return Code::not_numbers;
    if (static_cast<std::size_t>(pixels.rows()) < needed) return Code::too_few;
    if (distinct(pixels, same_pixel) < needed) return Code::same_on_picture;
    if (distinct(ground, same_ground_m) < needed) return Code::same_on_ground;
    if (needed < 3) return std::nullopt;
    if (Normalised(pixels).width_share() < least_width_share) return Code::one_line_on_picture;
    if (Normalised(ground).width_share() < least_width_share) return Code::one_line_on_ground;
    return std::nullopt;
}

// Rows of both coordinates of each pair, over the parameters that the kind has.
Eigen::MatrixXd design(const Places& pixels, PlacementKind kind) {
    const Eigen::Index pairs = pixels.rows();
    Eigen::MatrixXd rows = Eigen::MatrixXd::Zero(2 * pairs, kind == PlacementKind::affine ? 6 : 4);
    for (Eigen::Index i = 0; i < pairs; ++i) {
        const double x = pixels(i, 0);
        const double y = pixels(i, 1);
        if (kind == PlacementKind::affine) {
            rows.row(2 * i) << 1.0, x, y, 0.0, 0.0, 0.0;
            rows.row(2 * i + 1) << 0.0, 0.0, 0.0, 1.0, x, y;
        } else {  // rows run down: the picture's right-handed side is (x, -y)
            rows.row(2 * i) << 1.0, 0.0, x, y;
            rows.row(2 * i + 1) << 0.0, 1.0, -y, x;
        }
    }
    return rows;
}

PicturePlacement placement_from(const Eigen::VectorXd& solved, PlacementKind kind, const Normalised& pixels,
                                const Normalised& ground) {
    const double scale = ground.size / pixels.size;
    PicturePlacement placement;
    Eigen::Vector2d shift;
    if (kind == PlacementKind::affine) {
        shift << solved(0), solved(3);
        placement.per_column = {solved(1) * scale, solved(4) * scale};
        placement.per_row = {solved(2) * scale, solved(5) * scale};
    } else {
        shift << solved(0), solved(1);
        placement.per_column = {solved(2) * scale, solved(3) * scale};
        placement.per_row = {solved(3) * scale, -solved(2) * scale};
    }
    const LocalPoint middle{ground.middle(0) + shift(0) * ground.size, ground.middle(1) + shift(1) * ground.size};
    placement.corner = middle - placement.per_column * pixels.middle(0) - placement.per_row * pixels.middle(1);
    return placement;
}

// Which pair stands out, by what is left of it over what its place in the set lets it show.
std::optional<std::size_t> worst_pair(const PlacementFit& fit, const Eigen::MatrixXd& rows) {
    constexpr double fits_m = 0.001;
    const Eigen::Index parameters = rows.cols();
    const std::size_t pairs = fit.residuals_m.size();
    if (2 * pairs < static_cast<std::size_t>(parameters) + 3) return std::nullopt;
    const Eigen::MatrixXd basis =
        Eigen::HouseholderQR<Eigen::MatrixXd>(rows).householderQ() * Eigen::MatrixXd::Identity(rows.rows(), parameters);
    std::optional<std::size_t> worst;
    double largest = 0.0;
    for (std::size_t i = 0; i < pairs; ++i) {
        const auto row = static_cast<Eigen::Index>(2 * i);
        const double leverage = 0.5 * (basis.row(row).squaredNorm() + basis.row(row + 1).squaredNorm());
        const double shown = fit.residuals_m[i] / std::sqrt(std::max(1.0 - leverage, 1e-6));
        if (fit.residuals_m[i] <= fits_m || shown <= largest) continue;
        largest = shown;
        worst = i;
    }
    return worst;
}

}  // namespace

LocalPoint PicturePlacement::to_ground(PicturePixel pixel) const {
    return corner + per_column * pixel.column + per_row * pixel.row;
}

std::optional<PicturePixel> PicturePlacement::to_pixel(LocalPoint ground) const {
    const LocalVector step = ground - corner;
    const double area = cross(per_column, per_row);
    const PicturePixel pixel{cross(step, per_row) / area, cross(per_column, step) / area};
    if (!std::isfinite(pixel.column) || !std::isfinite(pixel.row)) return std::nullopt;
    return pixel;
}

std::string sentence(const PlacementFault& fault) {
    const std::string given = std::to_string(fault.pairs), needed = std::to_string(fault.needed);
    switch (fault.code) {
        case Code::too_few:
            return fault.pairs == 1 ? Words::tell("{1} pair given; at least {2} are needed.", {given, needed})
                                    : Words::tell("{1} pairs given; at least {2} are needed.", {given, needed});
        case Code::not_numbers: return Words::tell("A pair's place is not a number.");
        case Code::same_on_picture: return Words::tell("Pairs lie on the same spot of the picture; choose spots far apart.");
        case Code::same_on_ground: return Words::tell("Pairs lie on the same spot of the ground; choose spots far apart.");
        case Code::one_line_on_picture:
            return Words::tell("All pairs lie nearly on one line of the picture; choose one well to the side of it.");
        case Code::one_line_on_ground:
            return Words::tell("All pairs lie nearly on one line on the ground; choose one well to the side of it.");
    }
    return {};
}

tl::expected<PlacementFit, PlacementFault> fit_placement(const std::vector<PlacementPair>& pairs,
                                                         std::optional<PlacementKind> kind) {
    PlacementFit fit;
    fit.kind = kind.value_or(pairs.size() <= 2 ? PlacementKind::similarity : PlacementKind::affine);
    const std::size_t needed = fit.kind == PlacementKind::affine ? 3 : 2;
    Places pixel_places(static_cast<Eigen::Index>(pairs.size()), 2);
    Places ground_places(static_cast<Eigen::Index>(pairs.size()), 2);
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        pixel_places.row(static_cast<Eigen::Index>(i)) << pairs[i].pixel.column, pairs[i].pixel.row;
        ground_places.row(static_cast<Eigen::Index>(i)) << pairs[i].ground.east_m, pairs[i].ground.north_m;
    }
    if (const auto fault = fault_of(pixel_places, ground_places, needed))
        return tl::unexpected(PlacementFault{*fault, pairs.size(), needed});
    const Normalised pixels(pixel_places);
    const Normalised ground(ground_places);
    const Eigen::MatrixXd rows = design(pixels.places, fit.kind);
    Eigen::VectorXd wanted(rows.rows());
    for (Eigen::Index i = 0; i < ground.places.rows(); ++i) wanted.segment<2>(2 * i) = ground.places.row(i).transpose();
    fit.placement = placement_from(rows.colPivHouseholderQr().solve(wanted), fit.kind, pixels, ground);
    double squares = 0.0;
    for (const PlacementPair& pair : pairs) {
        const double left = distance_m(fit.placement.to_ground(pair.pixel), pair.ground);
        fit.residuals_m.push_back(left);
        squares += left * left;
    }
    const auto freedom = static_cast<double>(rows.rows() - rows.cols());
    if (freedom > 0.0) fit.standard_error_m = std::sqrt(squares / freedom);
    fit.worst = worst_pair(fit, rows);
    return fit;
}

}  // namespace plugside
