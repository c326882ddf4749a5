#include "core/simulation/random.h"

#include <cassert>
#include <cmath>
#include <numbers>

namespace plugside {

namespace {

std::uint64_t splitmix(std::uint64_t& state) {
    state += 0x9e3779b97f4a7c15ULL;
    std::uint64_t z = state;
    z = (z ^ (z >> 30)) * 0xbf58476d1ce4e5b9ULL;
    z = (z ^ (z >> 27)) * 0x94d049bb133111ebULL;
    return z ^ (z >> 31);
}

constexpr std::uint64_t rotated_left(std::uint64_t x, int by) { return (x << by) | (x >> (64 - by)); }

}  // namespace

Random::Random(std::uint64_t seed, std::uint64_t stream) {
    std::uint64_t stream_state = stream;
    std::uint64_t state = seed ^ splitmix(stream_state);
    for (std::uint64_t& word : state_) word = splitmix(state);
}

Random Random::from_state(const std::array<std::uint64_t, 4>& words) {
    Random random;
    random.state_ = words;
    return random;
}

std::uint64_t Random::bits() {
    const std::uint64_t result = rotated_left(state_[1] * 5, 7) * 9;
    const std::uint64_t t = state_[1] << 17;
    state_[2] ^= state_[0];
    state_[3] ^= state_[1];
    state_[1] ^= state_[2];
    state_[0] ^= state_[3];
    state_[2] ^= t;
    state_[3] = rotated_left(state_[3], 45);
    return result;
}

double Random::uniform() { return static_cast<double>(bits() >> 11) * 0x1.0p-53; }

double Random::uniform(double from, double to) { return from + (to - from) * uniform(); }

std::size_t Random::below(std::size_t count) {
    assert(count > 0);
    const auto n = static_cast<std::uint64_t>(count);
    const std::uint64_t unfair = (0 - n) % n;  // 2^64 mod n: the values that would favour small results
    std::uint64_t draw = bits();
    while (draw < unfair) draw = bits();
    return static_cast<std::size_t>(draw % n);
}

bool Random::chance(double probability) { return uniform() < probability; }

double Random::log_uniform(double from, double to) { return from * std::exp(uniform() * std::log(to / from)); }

double Random::normal(double mean, double sd) {
    // Box and Muller; the second number is thrown away so that a draw depends on nothing but the state
    const double u = 1.0 - uniform();
    const double angle = 2.0 * std::numbers::pi * uniform();
    return mean + sd * std::sqrt(-2.0 * std::log(u)) * std::cos(angle);
}

double Random::log_normal(double median, double log_sd) { return median * std::exp(normal(0.0, log_sd)); }

// Marsaglia & Tsang 2000 [memory]
double Random::gamma(double shape, double scale) {
    assert(shape > 0.0 && scale > 0.0);
    if (shape < 1.0) return gamma(shape + 1.0, scale) * std::pow(1.0 - uniform(), 1.0 / shape);
    const double d = shape - 1.0 / 3.0;
    const double c = 1.0 / std::sqrt(9.0 * d);
    for (;;) {
        const double x = normal(0.0, 1.0);
        const double root = 1.0 + c * x;
        if (root <= 0.0) continue;
        const double v = root * root * root;
        if (std::log(1.0 - uniform()) < 0.5 * x * x + d - d * v + d * std::log(v)) return d * v * scale;
    }
}

double Random::gamma_about(double mean, double coefficient_of_variation) {
    const double variation = coefficient_of_variation * coefficient_of_variation;
    return gamma(1.0 / variation, mean * variation);
}

int Random::poisson(double mean) {
    assert(mean >= 0.0);
    int count = 0;
    while (mean > 20.0) {  // a sum of independent Poisson counts is one: keeps exp(-mean) away from zero
        count += poisson(20.0);
        mean -= 20.0;
    }
    const double limit = std::exp(-mean);
    for (double product = uniform(); product > limit; product *= uniform()) ++count;
    return count;
}

// Best & Fisher 1979 [memory]
double Random::von_mises_degrees(double mean, double concentration) {
    const double degrees = 180.0 / std::numbers::pi;
    if (concentration < 1e-6) return mean + 180.0 - 360.0 * uniform();
    const double tau = 1.0 + std::sqrt(1.0 + 4.0 * concentration * concentration);
    const double rho = (tau - std::sqrt(2.0 * tau)) / (2.0 * concentration);
    const double r = (1.0 + rho * rho) / (2.0 * rho);
    for (;;) {
        const double z = std::cos(std::numbers::pi * uniform());
        const double f = (1.0 + r * z) / (r + z);
        const double c = concentration * (r - f);
        const double u = 1.0 - uniform();
        if (c * (2.0 - c) - u <= 0.0 && std::log(c / u) + 1.0 - c < 0.0) continue;
        const double turn = std::acos(f < -1.0 ? -1.0 : (f > 1.0 ? 1.0 : f)) * degrees;
        return mean + (chance(0.5) ? turn : -turn);
    }
}

}  // namespace plugside
