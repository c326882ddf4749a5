#include "core/survey/ground.h"

namespace plugside {

std::string to_text(KeepClearKind kind) {
    switch (kind) {
        case KeepClearKind::building: return "building";
        case KeepClearKind::well: return "well";
        case KeepClearKind::play_area: return "play area";
        case KeepClearKind::utility: return "utility";
        case KeepClearKind::other: return "other";
    }
    return "other";
}

std::optional<KeepClearKind> keep_clear_kind_from_text(const std::string& text) {
    for (const KeepClearKind kind : {KeepClearKind::building, KeepClearKind::well, KeepClearKind::play_area,
                                     KeepClearKind::utility, KeepClearKind::other})
        if (text == to_text(kind)) return kind;
    return std::nullopt;
}

}  // namespace plugside
