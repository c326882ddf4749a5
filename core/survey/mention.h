// What a walker's note says of whoever may be hurt: people, pets, stock, wildlife.
//
// words: as written, "two children"; a denial is part of each ("no kids" of "no dogs or kids"). A note can only tell what the walker noticed.
#pragma once

#include <string>

namespace plugside {

enum class MentionCategory { people, pets, stock, wildlife };

struct NoteMention {
    MentionCategory category = MentionCategory::people;
    std::string words;
    friend bool operator==(const NoteMention&, const NoteMention&) = default;
};

[[nodiscard]] std::string to_text(MentionCategory category);  // "people", "pets", "stock", "wildlife"

}  // namespace plugside
