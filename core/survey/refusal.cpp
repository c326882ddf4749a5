#include "core/survey/refusal.h"

#include "core/words/words.h"

namespace plugside {

std::string sentence(const Refusal& refusal) {
    std::string text = refusal.file;
    if (!refusal.place.empty()) text += (text.empty() ? "" : ", ") + refusal.place;
    if (!text.empty()) text += ": ";
    const std::string found = refusal.found.empty() ? Words::tell("nothing") : Words::shown(refusal.found);
    return text + (refusal.expected.empty()
                       ? Words::tell("found {1}.", {found})
                       : Words::tell("found {1}, expected {2}.", {found, Words::shown(refusal.expected)}));
}

std::string quoted_for_display(const std::string& text, std::size_t most) {
    std::string shown = "\"";
    std::size_t cut = text.size();
    if (cut > most) {
        cut = most;
        while (cut > 0 && (static_cast<unsigned char>(text[cut]) & 0xC0U) == 0x80U) --cut;
    }
    for (std::size_t i = 0; i < cut; ++i) {
        const auto byte = static_cast<unsigned char>(text[i]);
        shown += byte < 0x20 || byte == 0x7F ? '.' : text[i];
    }
    if (cut < text.size()) shown += "...";
    return shown + "\"";
}

}  // namespace plugside
