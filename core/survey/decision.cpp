#include "core/survey/decision.h"

namespace plugside {

std::string to_text(ProbeKind kind) { return kind == ProbeKind::plug_side ? "plug side" : "between mounds"; }

std::optional<ProbeKind> probe_kind_from_text(const std::string& text) {
    for (const ProbeKind kind : {ProbeKind::plug_side, ProbeKind::between_mounds})
        if (text == to_text(kind)) return kind;
    return std::nullopt;
}

std::string to_text(SetChoice choice) {
    switch (choice) {
        case SetChoice::proposed: return "proposed";
        case SetChoice::kept: return "kept";
        case SetChoice::dropped: return "dropped";
        case SetChoice::moved: return "moved";
    }
    return "proposed";
}

std::optional<SetChoice> set_choice_from_text(const std::string& text) {
    for (const SetChoice choice : {SetChoice::proposed, SetChoice::kept, SetChoice::dropped, SetChoice::moved})
        if (text == to_text(choice)) return choice;
    return std::nullopt;
}

}  // namespace plugside
