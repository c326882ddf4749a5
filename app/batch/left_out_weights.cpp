#include "app/batch/left_out_weights.h"

#include <array>
#include <mutex>
#include <optional>

namespace plugside {

namespace embedded {
extern const char without_meander[];
extern const char without_straight_with_branches[];
extern const char without_crowded_growth[];
extern const char without_edge_rows[];
extern const char without_patch_foraging[];
extern const char without_shared_ground[];
extern const char without_food_tree[];
}  // namespace embedded

namespace {

const char* text_without(FieldKind kind) {
    switch (kind) {
        case FieldKind::meander: return embedded::without_meander;
        case FieldKind::straight_with_branches: return embedded::without_straight_with_branches;
        case FieldKind::crowded_growth: return embedded::without_crowded_growth;
        case FieldKind::edge_rows: return embedded::without_edge_rows;
        case FieldKind::patch_foraging: return embedded::without_patch_foraging;
        case FieldKind::shared_ground: return embedded::without_shared_ground;
        case FieldKind::food_tree: return embedded::without_food_tree;
    }
    return embedded::without_meander;
}

}  // namespace

const LinkWeights& weights_without(FieldKind kind) {
    static std::array<std::optional<LinkWeights>, 7> parsed;
    static std::mutex guard;
    const std::lock_guard lock(guard);
    auto& weights = parsed.at(static_cast<std::size_t>(kind));
    if (!weights) weights = parse_link_weights(text_without(kind));
    return *weights;
}

}  // namespace plugside
