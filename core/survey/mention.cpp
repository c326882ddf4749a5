#include "core/survey/mention.h"

#include "core/words/words.h"

namespace plugside {

std::string to_text(MentionCategory category) {
    switch (category) {
        case MentionCategory::people: return Words::later("people");
        case MentionCategory::pets: return Words::later("pets");
        case MentionCategory::stock: return Words::later("stock");
        case MentionCategory::wildlife: break;
    }
    return Words::later("wildlife");
}

}  // namespace plugside
