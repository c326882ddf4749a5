#include "app/batch/sample_fields.h"

#include <algorithm>

namespace plugside {

namespace {

// A plank bridge where the ditch is crossed, and a gate where the walk began.
void lay_meadow(Ground& ground) {
    ground.gates.push_back({"plank bridge", ground.barriers.at(0).line.vertices.at(25), Metres::of(1.2)});
    const std::vector<LocalPoint>& corners = ground.boundary.parts.at(0).outer.vertices;
    ground.gates.push_back({"field gate", corners.at(0) + (corners.at(3) - corners.at(0)) * 0.05, Metres::of(4.0)});
}

SampleField creek_meadow() {
    SimulationOptions options;
    options.kind = FieldKind::straight_with_branches;
    options.seed = 367;
    options.mounds_wanted = 140;
    options.with_ground = true;
    options.area_m2 = 25000.0;
    return {"creek-meadow", "Creek meadow", options, lay_meadow};
}

Polygon polygon_of(std::vector<LocalPoint> corners) {
    Polygon polygon;
    polygon.outer.vertices = std::move(corners);
    return polygon;
}

// What makes the ground of seed 6 a school's: places chosen so that some systems are near each thing and others are far from all.
void lay_school(Ground& ground) {
    Barrier& drain = ground.barriers.at(0);
    drain.name = "drain";
    ground.gates.push_back({"footbridge", drain.line.vertices.at(8), Metres::of(1.2)});
    KeepClearArea& house = ground.keep_clear.at(0);
    house.name = "schoolhouse";
    house.reason = "pupils and teachers are inside on weekdays";
    ground.keep_clear.push_back({"play area", "pupils play here on weekdays", KeepClearKind::play_area,
                                 polygon_of({{-46.0, -4.0}, {-34.4, -11.8}, {-38.9, -18.4}, {-50.5, -10.6}})});
    ground.keep_clear.push_back({"well", "the school drinks from it", KeepClearKind::well,
                                 polygon_of({{67.0, -37.0}, {69.0, -37.0}, {69.0, -39.0}, {67.0, -39.0}})});
    ground.keep_clear.push_back(
        {"gas line", "a buried gas line, as its owner's plan has it", KeepClearKind::utility,
         polygon_of({{-62.5, 12.0}, {-12.0, 12.5}, {51.5, 18.4}, {51.5, 16.4}, {-12.0, 10.5}, {-62.5, 10.0}})});
}

SampleField school_field() {
    SimulationOptions options;
    options.kind = FieldKind::straight_with_branches;
    options.seed = 6;
    options.mounds_wanted = 60;
    options.with_ground = true;
    options.area_m2 = 15000.0;
    return {"school-field", "School field", options, lay_school};
}

}  // namespace

GeographicPoint made_up_place() { return {-104.9, 41.0}; }

const std::vector<SampleField>& sample_fields() {
    static const std::vector<SampleField> samples{creek_meadow(), school_field()};
    return samples;
}

const SampleField* find_sample(const std::string& name) {
    for (const SampleField& sample : sample_fields())
        if (sample.name == name) return &sample;
    return nullptr;
}

SimulatedField made_field(const SampleField& sample) {
    SimulatedField field = simulate_field(sample.options);
    if (sample.lay_ground != nullptr) sample.lay_ground(field.survey.ground);
    return field;
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
