// Writes simulated fields as lessons for train_link_net.py: what the net is told of each and which system each mark truly
// belongs to.
//
// Use:    write_lessons OUT.bin FIRST_SEED SEEDS FEWEST MOST     (mounds wanted, spread evenly)
// Fields: every kind times every seed. A quarter of the lessons has no times, since many a walk comes without.
// Format: 32-bit words, little-endian: mark, kind, seed, mounds wanted, marks, links, triangles, crossings, window,
// parameters; then as
//         arrays: parameters of the field's generator; system of each mark; of_mark; fan; has_fan; first; second; direction;
//         of_link; surroundings; triangles; crossings.
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <iostream>
#include <map>
#include <span>
#include <vector>

#include "core/plan/make_plan.h"
#include "core/simulation/burrow_simulator.h"
#include "core/systems/link_net_input.h"
#include "core/systems/marks.h"

namespace {

using namespace plugside;

constexpr std::uint32_t lesson_word = 0x504C5548;

template <typename Word>
void put(std::FILE* out, std::span<const Word> words) {
    static_assert(sizeof(Word) == 4);
    if (std::fwrite(words.data(), 4, words.size(), out) != words.size()) {
        std::cerr << "The lessons could not be written.\n";
        std::exit(3);
    }
}

void put_number(std::FILE* out, std::size_t number) {
    const auto word = static_cast<std::uint32_t>(number);
    put(out, std::span<const std::uint32_t>(&word, 1));
}

void write_lesson(std::FILE* out, const SimulationOptions& wanted, bool timed) {
    const SimulatedField field = simulate_field(wanted);
    std::vector<Mark> marks = marks_of(field.survey, {});
    const std::vector<Link> links = candidate_links(marks, field.survey.ground.barriers);
    constexpr std::size_t fewest_marks = 4;
    if (marks.size() < fewest_marks || links.empty()) return;
    if (!timed)
        for (Mark& mark : marks) mark.time.reset();
    const LinkNetInput input = link_net_input(marks, links, rows_of(marks.size(), links));
    std::map<std::size_t, std::size_t> system_of;
    for (const TrueMound& mound : field.truth.mounds)
        if (mound.seen_as) system_of[*mound.seen_as] = mound.system;
    for (const std::size_t number :
         {std::size_t{lesson_word}, static_cast<std::size_t>(wanted.kind), static_cast<std::size_t>(wanted.seed),
          wanted.mounds_wanted, marks.size(), links.size(), input.triangles.size(), input.crossings.size(), input.window,
          field.truth.parameters.size()})
        put_number(out, number);
    const std::vector<float> parameters(field.truth.parameters.begin(), field.truth.parameters.end());
    put<float>(out, parameters);
    for (const Mark& mark : marks) put_number(out, system_of.at(mark.mound));
    put<float>(out, input.of_mark);
    put<float>(out, input.fan);
    put<float>(out, input.has_fan);
    put<std::uint32_t>(out, input.first);
    put<std::uint32_t>(out, input.second);
    put<float>(out, input.direction);
    put<float>(out, input.of_link);
    put<std::uint32_t>(out, input.surroundings);
    for (const auto& triangle : input.triangles)
        for (const std::uint32_t link : {triangle.link, triangle.one, triangle.other}) put_number(out, link);
    for (const auto& [link, other] : input.crossings) {
        put_number(out, link);
        put_number(out, other);
    }
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 6) {
        std::cerr << "write_lessons OUT.bin FIRST_SEED SEEDS FEWEST MOST\n";
        return 2;
    }
    std::FILE* out = std::fopen(argv[1], "wb");
    if (out == nullptr) return 3;
    const std::uint64_t first = std::strtoull(argv[2], nullptr, 10);
    const std::uint64_t seeds = std::strtoull(argv[3], nullptr, 10);
    const std::uint64_t fewest = std::strtoull(argv[4], nullptr, 10);
    const std::uint64_t most = std::strtoull(argv[5], nullptr, 10);
    const std::vector<FieldKind> kinds = all_field_kinds();
    for (std::uint64_t s = 0; s < seeds; ++s)
        for (std::size_t k = 0; k < kinds.size(); ++k) {
            SimulationOptions wanted;
            wanted.kind = kinds[k];
            wanted.seed = first + s;
            constexpr std::uint64_t stride = 7919;  // a prime: sizes of one kind do not come in order
            wanted.mounds_wanted = fewest + (wanted.seed * stride + k * 104729) % (most - fewest + 1);
            write_lesson(out, wanted, (s + k) % 4 != 3);
        }
    return std::fclose(out) == 0 ? 0 : 3;
}
