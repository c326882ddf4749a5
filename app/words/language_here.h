// Another language than the window's, for what one thread tells: a paper for readers of Spanish from a window in English.
//
// From the object's making to its end, on its thread, core/words and app/words/language.h tell all in that language: `spoken`, numbers and
// dates too. Texts of `tr` and QCoreApplication::translate stay the window's; `said` takes their place.
#pragma once

#include <QString>
#include <memory>
#include <optional>

#include "app/words/language.h"
#include "core/words/tongue_here.h"

namespace plugside {

class LanguageHere {
public:
    explicit LanguageHere(Language language);
    ~LanguageHere();
    LanguageHere(const LanguageHere&) = delete;
    LanguageHere& operator=(const LanguageHere&) = delete;

private:
    std::optional<Language> before_;
    std::unique_ptr<TongueHere> tongue_;
};

// A text marked by QT_TRANSLATE_NOOP in the language spoken on this thread.
[[nodiscard]] QString said(const char* context, const char* text);

}  // namespace plugside
