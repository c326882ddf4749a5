// The made-up fields that come with the project, and where on the earth made-up fields are put.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/simulation/burrow_simulator.h"
#include "geo/frame/local_frame.h"

namespace plugside {

// 41.0 N, 104.9 W: a round pair of degrees in open farmland of the high plains. No real farm is meant.
[[nodiscard]] GeographicPoint made_up_place();

struct SampleField {
    std::string name;  // as the sample's folder
    std::string title;
    SimulationOptions options;
    void (*lay_ground)(Ground& ground) = nullptr;  // what is on it besides, once it is simulated
};

[[nodiscard]] const std::vector<SampleField>& sample_fields();
[[nodiscard]] const SampleField* find_sample(const std::string& name);

[[nodiscard]] SimulatedField made_field(const SampleField& sample);

// "edge-rows" as a person types it; nothing for a word that is no kind.
[[nodiscard]] std::optional<FieldKind> field_kind_from_word(const std::string& word);
[[nodiscard]] std::string word_of(FieldKind kind);
[[nodiscard]] std::string all_field_kind_words();  // "meander, straight-with-branches, ..."

}  // namespace plugside
