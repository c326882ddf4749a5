// Colours as eyes without one of the three kinds of cones see them, and how far two colours are apart.
//
// Simulation: linear RGB times the matrix for a missing kind of cone. Source: Machado, Oliveira, Fernandes 2009, A Physiologically-based
//     Model for Simulation of Color Vision Deficiency, IEEE TVCG 15(6), severity 1.0; the test beside compares with the same matrices in
//     the R package colorspace.
// Distance: CIE 1976 L*a*b*, Euclidean, white point D65 (CIE 15:2004 [memory]). 2.3 is about what is just noticed (Mahy, Van Eycken,
//     Oosterlinck 1994 [memory]).
#pragma once

#include <QColor>
#include <algorithm>
#include <array>
#include <cmath>

namespace plugside {

enum class Cones { all, without_long, without_middle, without_short };  // normal, protanope, deuteranope, tritanope

using Triple = std::array<double, 3>;

inline Triple linear_of(const QColor& colour) {
    const auto channel = [](double value) {
        return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
    };
    return {channel(colour.redF()), channel(colour.greenF()), channel(colour.blueF())};
}

inline Triple product(const std::array<Triple, 3>& matrix, const Triple& of) {
    Triple result{};
    for (std::size_t row = 0; row < 3; ++row)
        for (std::size_t k = 0; k < 3; ++k) result[row] += matrix[row][k] * of[k];
    return result;
}

inline QColor seen_with(Cones cones, const QColor& colour) {
    static constexpr std::array<Triple, 3> protan{
        {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}}};
    static constexpr std::array<Triple, 3> deutan{
        {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}}};
    static constexpr std::array<Triple, 3> tritan{
        {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}};
    if (cones == Cones::all) return colour;
    const auto& matrix = cones == Cones::without_long ? protan : cones == Cones::without_middle ? deutan : tritan;
    const auto channel = [](double value) {
        const double within = std::clamp(value, 0.0, 1.0);
        const double coded = within <= 0.0031308 ? 12.92 * within : 1.055 * std::pow(within, 1.0 / 2.4) - 0.055;
        return static_cast<int>(std::lround(255.0 * coded));
    };
    const Triple seen = product(matrix, linear_of(colour));
    return QColor(channel(seen[0]), channel(seen[1]), channel(seen[2]));
}

// L*, a*, b*.
inline Triple lab_of(const QColor& colour) {
    // sRGB to XYZ, IEC 61966-2-1 [memory]
    static constexpr std::array<Triple, 3> to_xyz{
        {{0.4124, 0.3576, 0.1805}, {0.2126, 0.7152, 0.0722}, {0.0193, 0.1192, 0.9505}}};
    static constexpr Triple white{0.95047, 1.0, 1.08883};
    Triple xyz = product(to_xyz, linear_of(colour));
    for (std::size_t k = 0; k < 3; ++k) {
        const double share = xyz[k] / white[k];
        xyz[k] = share > 216.0 / 24389.0 ? std::cbrt(share) : (24389.0 / 27.0 * share + 16.0) / 116.0;
    }
    return {116.0 * xyz[1] - 16.0, 500.0 * (xyz[0] - xyz[1]), 200.0 * (xyz[1] - xyz[2])};
}

inline double colour_distance(const QColor& a, const QColor& b) {
    const Triple first = lab_of(a);
    const Triple second = lab_of(b);
    return std::hypot(first[0] - second[0], first[1] - second[1], first[2] - second[2]);
}

inline double colour_distance(const QColor& a, const QColor& b, Cones cones) {
    return colour_distance(seen_with(cones, a), seen_with(cones, b));
}

inline constexpr std::array<Cones, 4> all_eyes{Cones::all, Cones::without_long, Cones::without_middle, Cones::without_short};

}  // namespace plugside
