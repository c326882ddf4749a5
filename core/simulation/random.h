// Random numbers that are the same on every machine.
//
// The standard library's engines are fixed by the standard, its distributions are not: two libraries draw different normals
// from the same bits. Everything that the simulators draw therefore comes from here.
// Generator: xoshiro256** seeded through splitmix64 (Blackman & Vigna 2018, public domain algorithms [memory]).
// Streams:   equal seed and different `stream` give unrelated sequences, so that drawing one more number for the walker does
//            not move a burrow.
// Guarantee: equal bits everywhere; numbers that pass through the mathematical library (log, sin, cos) agree to its last
// digit. Cost:      O(1) expected each; `poisson` O(mean).
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>

namespace plugside {

class Random {
public:
    explicit Random(std::uint64_t seed, std::uint64_t stream = 0);
    // From the generator's own four words, not all zero; for comparing with other implementations.
    [[nodiscard]] static Random from_state(const std::array<std::uint64_t, 4>& words);

    [[nodiscard]] std::uint64_t bits();
    [[nodiscard]] double uniform();                        // 0 <= u < 1, 53 bits
    [[nodiscard]] double uniform(double from, double to);  // from <= u < to
    [[nodiscard]] std::size_t below(std::size_t count);    // 0..count-1 without bias; count > 0
    [[nodiscard]] bool chance(double probability);
    [[nodiscard]] double log_uniform(double from, double to);  // 0 < from < to
    [[nodiscard]] double normal(double mean, double sd);
    [[nodiscard]] double log_normal(double median, double log_sd);
    [[nodiscard]] double gamma(double shape, double scale);  // shape, scale > 0; mean shape * scale
    [[nodiscard]] double gamma_about(double mean, double coefficient_of_variation);
    [[nodiscard]] int poisson(double mean);                                     // mean >= 0
    [[nodiscard]] double von_mises_degrees(double mean, double concentration);  // -180 < turn - mean <= 180

private:
    Random() = default;
    std::array<std::uint64_t, 4> state_{};
};

}  // namespace plugside
