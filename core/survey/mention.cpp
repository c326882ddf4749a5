#include "core/survey/mention.h"

namespace plugside {

std::string to_text(MentionCategory category) {
    switch (category) {
        case MentionCategory::people: return "people";
        case MentionCategory::pets: return "pets";
        case MentionCategory::stock: return "stock";
        case MentionCategory::wildlife: break;
    }
    return "wildlife";
}

}  // namespace plugside
