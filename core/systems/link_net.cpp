#include "core/systems/link_net.h"

#include <algorithm>
#include <cmath>

#include "core/systems/two_threads.h"

namespace plugside {

namespace {

constexpr std::size_t harmonics = 5;  // 0..4
constexpr std::size_t channels = 8;
constexpr std::size_t state_size = 24;
constexpr std::size_t mark_size = 12;
constexpr std::size_t felt_size = 12;  // of what a mark tells those about it
constexpr std::size_t triangle_size = 6;
constexpr std::size_t crossing_size = 4;
constexpr std::size_t sine_harmonics = 2;  // sines read of harmonics 1 and 2
constexpr std::size_t read_size = harmonics * channels + sine_harmonics * channels + mark_size + 3;
constexpr std::size_t mark_reads = 4 * channels + mark_size;

using Row = float*;
using ConstRow = const float*;

// out += W in, one row; the sum over inputs goes in one order whatever the machine's width, and without fused multiply-add, so that
// the same survey gives the same bits.
#ifndef __SANITIZE_THREAD__  // the loader asks which form to take before that sanitizer is there: the program would not start
[[gnu::target_clones("avx2", "default")]]
#endif
void add_product(const DenseLayer& layer, ConstRow in, Row out) {
    const std::size_t outputs = layer.outputs;
    const float* weight = layer.weight.data();
    for (std::size_t k = 0; k < layer.inputs; ++k, weight += outputs) {
        const float x = in[k];
        for (std::size_t c = 0; c < outputs; ++c) out[c] += x * weight[c];
    }
}

void apply(const DenseLayer& layer, ConstRow in, Row out) {
    if (layer.bias.empty())
        std::fill(out, out + layer.outputs, 0.0F);
    else
        std::copy(layer.bias.begin(), layer.bias.end(), out);
    add_product(layer, in, out);
}

float gate(float x) { return 1.0F / (1.0F + std::exp(-x)); }

constexpr std::size_t a_piece = 100;  // links or marks worth handing to a thread

class Net {
public:
    Net(const LinkNetInput& input, const LinkNetWeights& weights) : in_(input), weights_(weights) {
        order_links_by_mark();
        tell_directions();
        start_states();
        order_triangles_and_crossings();
    }

    void run_round(const LinkNetRound& round) {
        sums_.resize(in_.marks * 2 * harmonics * channels);
        values_.resize(in_.links * channels);
        triangle_values_.resize(in_.links * triangle_size);
        crossing_values_.resize(in_.links * crossing_size);
        reads_.resize(in_.marks * mark_reads);
        felt_.resize(in_.marks * felt_size);
        on_two_threads(in_.links, {}, [&](std::size_t from, std::size_t to) { say(round, from, to); }, a_piece);
        on_two_threads(in_.marks, {}, [&](std::size_t from, std::size_t to) { gather(round, from, to); }, a_piece);
        on_two_threads(in_.marks, {}, [&](std::size_t from, std::size_t to) { feel(round, from, to); }, a_piece);
        on_two_threads(in_.links, {}, [&](std::size_t from, std::size_t to) { hear(round, from, to); }, a_piece);
        std::swap(state_, next_state_);
    }

    [[nodiscard]] LinkScores scores() const {
        const auto rounded = [](double x) { return std::round(x * 1024.0) / 1024.0; };
        LinkScores scores;
        scores.log_weight.resize(in_.links);
        scores.log_root.resize(in_.marks);
        std::vector<float> hidden(weights_.hidden.outputs);
        for (std::size_t e = 0; e < in_.links; ++e) {
            apply(weights_.hidden, &state_[e * state_size], hidden.data());
            for (float& x : hidden) x = std::max(x, 0.0F);
            float score = 0.0F;
            apply(weights_.score, hidden.data(), &score);
            scores.log_weight[e] = rounded(8.0 * std::tanh(static_cast<double>(score) / 8.0));
        }
        for (std::size_t i = 0; i < in_.marks; ++i) {
            float root = 0.0F;
            apply(weights_.root, &mark_[i * mark_size], &root);
            scores.log_root[i] = rounded(4.0 * std::tanh(static_cast<double>(root) / 4.0));
        }
        return scores;
    }

private:
    // Each link has two ends: 2 e at its first mark, 2 e + 1 at its second.
    [[nodiscard]] std::uint32_t mark_at(std::size_t end) const { return end % 2 == 0 ? in_.first[end / 2] : in_.second[end / 2]; }

    void order_links_by_mark() {
        start_.assign(in_.marks + 1, 0);
        for (std::size_t end = 0; end < 2 * in_.links; ++end) ++start_[mark_at(end) + 1];
        for (std::size_t i = 0; i < in_.marks; ++i) start_[i + 1] += start_[i];
        ends_.resize(2 * in_.links);
        std::vector<std::uint32_t> next(start_.begin(), start_.end() - 1);
        for (std::size_t end = 0; end < 2 * in_.links; ++end) ends_[next[mark_at(end)]++] = static_cast<std::uint32_t>(end);
    }

    // cos and sin of 0..4 times the direction away from the first mark; from the second the odd ones change their sign.
    void tell_directions() {
        cosine_.resize(in_.links * harmonics);
        sine_.resize(in_.links * harmonics);
        for (std::size_t e = 0; e < in_.links; ++e)
            for (std::size_t k = 0; k < harmonics; ++k) {
                const double angle = static_cast<double>(k) * static_cast<double>(in_.direction[e]);
                cosine_[e * harmonics + k] = static_cast<float>(std::cos(angle));
                sine_[e * harmonics + k] = static_cast<float>(std::sin(angle));
            }
        fan_.resize(in_.marks * 4);
        for (std::size_t i = 0; i < in_.marks; ++i) {
            const double fan = static_cast<double>(in_.fan[i]);
            const float has = in_.has_fan[i];
            fan_[4 * i] = has * static_cast<float>(std::cos(fan));
            fan_[4 * i + 1] = has * static_cast<float>(std::sin(fan));
            fan_[4 * i + 2] = has * static_cast<float>(std::cos(2.0 * fan));
            fan_[4 * i + 3] = has * static_cast<float>(std::sin(2.0 * fan));
        }
    }

    void start_states() {
        state_.resize(in_.links * state_size);
        next_state_.resize(state_.size());
        std::array<float, net_link_inputs> scaled{};
        for (std::size_t e = 0; e < in_.links; ++e) {
            for (std::size_t k = 0; k < net_link_inputs; ++k)
                scaled.at(k) = (in_.of_link[e * net_link_inputs + k] - weights_.link_mean[k]) / weights_.link_sd[k];
            apply(weights_.link_in, scaled.data(), &state_[e * state_size]);
        }
        for (float& x : state_) x = std::max(x, 0.0F);
        mark_.resize(in_.marks * mark_size);
        std::array<float, net_mark_inputs> own{};
        for (std::size_t i = 0; i < in_.marks; ++i) {
            for (std::size_t k = 0; k < net_mark_inputs; ++k)
                own.at(k) = (in_.of_mark[i * net_mark_inputs + k] - weights_.mark_mean[k]) / weights_.mark_sd[k];
            apply(weights_.mark_in, own.data(), &mark_[i * mark_size]);
        }
        for (float& x : mark_) x = std::tanh(x);
    }

    void order_triangles_and_crossings() {
        triangle_start_.assign(in_.links + 1, 0);
        for (const auto& triangle : in_.triangles) ++triangle_start_[triangle.link + 1];
        crossing_start_.assign(in_.links + 1, 0);
        for (const auto& [link, other] : in_.crossings) ++crossing_start_[link + 1];
        for (std::size_t e = 0; e < in_.links; ++e) {
            triangle_start_[e + 1] += triangle_start_[e];
            crossing_start_[e + 1] += crossing_start_[e];
        }
    }

    // What each link says: to its marks, around its triangles, to those that cross it.
    void say(const LinkNetRound& round, std::size_t from, std::size_t to) {
        std::array<float, channels> gates{};
        std::array<float, triangle_size> triangle_gates{};
        for (std::size_t e = from; e < to; ++e) {
            const ConstRow state = &state_[e * state_size];
            apply(round.gates, state, gates.data());
            apply(round.values, state, &values_[e * channels]);
            for (std::size_t c = 0; c < channels; ++c) values_[e * channels + c] *= gate(gates.at(c));
            apply(round.triangle_gates, state, triangle_gates.data());
            apply(round.triangle_values, state, &triangle_values_[e * triangle_size]);
            for (std::size_t c = 0; c < triangle_size; ++c) triangle_values_[e * triangle_size + c] *= gate(triangle_gates.at(c));
            apply(round.crossing, state, &crossing_values_[e * crossing_size]);
            for (std::size_t c = 0; c < crossing_size; ++c)
                crossing_values_[e * crossing_size + c] = gate(crossing_values_[e * crossing_size + c]);
        }
    }

    // What each mark hears of its links, as vectors, and what it tells those about it.
    void gather(const LinkNetRound& round, std::size_t from, std::size_t to) {
        for (std::size_t i = from; i < to; ++i) {
            Row along = &sums_[i * 2 * harmonics * channels];
            Row beside = along + harmonics * channels;
            std::fill(along, along + 2 * harmonics * channels, 0.0F);
            for (std::uint32_t at = start_[i]; at < start_[i + 1]; ++at) {
                const std::size_t e = ends_[at] / 2;
                for (std::size_t k = 0; k < harmonics; ++k) {
                    const float turned = ends_[at] % 2 == 1 && k % 2 == 1 ? -1.0F : 1.0F;
                    const float cosine = turned * cosine_[e * harmonics + k];
                    const float sine = turned * sine_[e * harmonics + k];
                    for (std::size_t c = 0; c < channels; ++c) {
                        along[k * channels + c] += cosine * values_[e * channels + c];
                        beside[k * channels + c] += sine * values_[e * channels + c];
                    }
                }
            }
            const ConstRow fan = &fan_[4 * i];
            Row read = &reads_[i * mark_reads];
            for (std::size_t c = 0; c < channels; ++c) *read++ = along[c];
            for (std::size_t c = 0; c < channels; ++c) *read++ = fan[2] * along[2 * channels + c] + fan[3] * beside[2 * channels + c];
            for (std::size_t c = 0; c < channels; ++c) *read++ = fan[0] * along[channels + c] + fan[1] * beside[channels + c];
            for (std::size_t c = 0; c < channels; ++c) {
                const float x = along[2 * channels + c];
                const float y = beside[2 * channels + c];
                *read++ = std::sqrt(x * x + y * y + 1e-6F);
            }
            std::copy_n(&mark_[i * mark_size], mark_size, read);
            Row felt = &felt_[i * felt_size];
            apply(round.surroundings, &reads_[i * mark_reads], felt);
            for (std::size_t c = 0; c < felt_size; ++c) felt[c] = std::tanh(felt[c]);
        }
    }

    // What each mark makes of its links and of those about it.
    void feel(const LinkNetRound& round, std::size_t from, std::size_t to) {
        std::array<float, mark_reads + felt_size> reads{};
        std::array<float, mark_size> fresh{};
        const float share = 1.0F / static_cast<float>(in_.window);
        for (std::size_t i = from; i < to; ++i) {
            std::copy_n(&reads_[i * mark_reads], mark_reads, reads.data());
            Row about = reads.data() + mark_reads;
            std::fill(about, about + felt_size, 0.0F);
            for (std::size_t at = i * in_.window; at < (i + 1) * in_.window; ++at) {
                const ConstRow told = &felt_[in_.surroundings[at] * felt_size];
                for (std::size_t c = 0; c < felt_size; ++c) about[c] += told[c];
            }
            for (std::size_t c = 0; c < felt_size; ++c) about[c] *= share;
            apply(round.mark, reads.data(), fresh.data());
            for (std::size_t c = 0; c < mark_size; ++c) mark_[i * mark_size + c] = std::tanh(fresh.at(c));
        }
    }

    // What one end of a link reads of its mark, in the link's own direction away from it.
    void read_end(std::size_t end, Row out) const {
        const std::size_t e = end / 2;
        const std::size_t i = mark_at(end);
        const ConstRow along = &sums_[i * 2 * harmonics * channels];
        const ConstRow beside = along + harmonics * channels;
        std::array<float, harmonics> cosine{};
        std::array<float, harmonics> sine{};
        for (std::size_t k = 0; k < harmonics; ++k) {
            const float turned = end % 2 == 1 && k % 2 == 1 ? -1.0F : 1.0F;
            cosine.at(k) = turned * cosine_[e * harmonics + k];
            sine.at(k) = turned * sine_[e * harmonics + k];
        }
        for (std::size_t k = 0; k < harmonics; ++k)
            for (std::size_t c = 0; c < channels; ++c)
                *out++ = cosine.at(k) * along[k * channels + c] + sine.at(k) * beside[k * channels + c] - values_[e * channels + c];
        for (std::size_t k = 1; k <= sine_harmonics; ++k)
            for (std::size_t c = 0; c < channels; ++c)
                *out++ = cosine.at(k) * beside[k * channels + c] - sine.at(k) * along[k * channels + c];
        out = std::copy_n(&mark_[i * mark_size], mark_size, out);
        const ConstRow fan = &fan_[4 * i];
        *out++ = fan[0] * cosine[1] + fan[1] * sine[1];
        *out++ = fan[2] * cosine[2] + fan[3] * sine[2];
        *out++ = fan[1] * cosine[1] - fan[0] * sine[1];
    }

    void hear(const LinkNetRound& round, std::size_t from, std::size_t to) {
        std::array<float, read_size> at_first{};
        std::array<float, read_size> at_second{};
        std::array<float, triangle_size + crossing_size> around{};
        std::vector<float> base(round.own.outputs);
        std::vector<float> one(base.size());
        std::vector<float> other(base.size());
        for (std::size_t e = from; e < to; ++e) {
            read_end(2 * e, at_first.data());
            read_end(2 * e + 1, at_second.data());
            around.fill(0.0F);
            for (std::uint32_t t = triangle_start_[e]; t < triangle_start_[e + 1]; ++t)
                for (std::size_t c = 0; c < triangle_size; ++c)
                    around.at(c) += triangle_values_[in_.triangles[t].one * triangle_size + c] *
                                    triangle_values_[in_.triangles[t].other * triangle_size + c];
            for (std::uint32_t t = crossing_start_[e]; t < crossing_start_[e + 1]; ++t)
                for (std::size_t c = 0; c < crossing_size; ++c)
                    around.at(triangle_size + c) += crossing_values_[in_.crossings[t].second * crossing_size + c];
            const ConstRow state = &state_[e * state_size];
            apply(round.own, state, base.data());
            add_product(round.around, around.data(), base.data());
            one = base;
            other = base;
            add_product(round.end_one, at_first.data(), one.data());
            add_product(round.end_other, at_second.data(), one.data());
            add_product(round.end_one, at_second.data(), other.data());
            add_product(round.end_other, at_first.data(), other.data());
            for (std::size_t c = 0; c < one.size(); ++c) one[c] = std::max(one[c], 0.0F) + std::max(other[c], 0.0F);
            Row next = &next_state_[e * state_size];
            apply(round.out, one.data(), next);
            for (std::size_t c = 0; c < state_size; ++c) next[c] += state[c];
        }
    }

    const LinkNetInput& in_;
    const LinkNetWeights& weights_;
    std::vector<std::uint32_t> start_, ends_, triangle_start_, crossing_start_;
    std::vector<float> cosine_, sine_, fan_;
    std::vector<float> state_, next_state_, mark_, reads_, felt_, sums_, values_, triangle_values_, crossing_values_;
};

}  // namespace

LinkScores link_scores(const LinkNetInput& input, const LinkNetWeights& weights, const Progress& progress) {
    Net net(input, weights);
    for (const LinkNetRound& round : weights.rounds) {
        if (progress.stopped()) break;
        net.run_round(round);
    }
    return net.scores();
}

}  // namespace plugside
