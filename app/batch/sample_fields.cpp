#include "app/batch/sample_fields.h"

#include <algorithm>

namespace plugside {

namespace {

SampleField creek_meadow() {
    SimulationOptions options;
    options.kind = FieldKind::straight_with_branches;
    options.seed = 367;
    options.mounds_wanted = 140;
    options.with_ground = true;
    options.area_m2 = 25000.0;
    return {"creek-meadow", "Creek meadow", options};
}

}  // namespace

GeographicPoint made_up_place() { return {-104.9, 41.0}; }

const std::vector<SampleField>& sample_fields() {
    static const std::vector<SampleField> samples{creek_meadow()};
    return samples;
}

const SampleField* find_sample(const std::string& name) {
    for (const SampleField& sample : sample_fields())
        if (sample.name == name) return &sample;
    return nullptr;
}

std::string word_of(FieldKind kind) {
    std::string word = to_text(kind);
    std::replace(word.begin(), word.end(), ' ', '-');
    return word;
}

std::optional<FieldKind> field_kind_from_word(const std::string& word) {
    for (const FieldKind kind : all_field_kinds())
        if (word == word_of(kind) || word == to_text(kind)) return kind;
    return std::nullopt;
}

std::string all_field_kind_words() {
    std::string words;
    for (const FieldKind kind : all_field_kinds()) words += (words.empty() ? "" : ", ") + word_of(kind);
    return words;
}

}  // namespace plugside
