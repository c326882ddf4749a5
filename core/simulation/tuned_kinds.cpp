#include "core/simulation/tuned_kinds.h"

#include <algorithm>
#include <string>

namespace plugside {

namespace embedded {
extern const char network_weights[];
}

std::optional<std::vector<FieldKind>> kinds_learnt_on(std::string_view weights_file) {
    constexpr std::string_view opening = "kinds:";
    const std::size_t start = weights_file.find(opening);
    if (start == std::string_view::npos) return std::nullopt;
    const std::size_t end = weights_file.find('.', start);
    // the list may go on in the next line of the comment
    std::string list(weights_file.substr(start + opening.size(), end - start - opening.size()));
    std::replace_if(
        list.begin(), list.end(), [](char letter) { return letter == '#' || letter == '\n'; }, ' ');
    std::string even;
    for (const char letter : list)
        if (letter != ' ' || (!even.empty() && even.back() != ' ')) even += letter;
    const std::string framed = ", " + even + ",";
    std::vector<FieldKind> kinds;
    for (const FieldKind kind : all_field_kinds())
        if (framed.find(", " + to_text(kind) + ",") != std::string::npos) kinds.push_back(kind);
    return kinds;
}

const std::optional<std::vector<FieldKind>>& kinds_learnt_on() {
    static const std::optional<std::vector<FieldKind>> kinds = kinds_learnt_on(embedded::network_weights);
    return kinds;
}

}  // namespace plugside
