// The language that the program speaks: texts of the window, sentences of core and geo (core/words/words.h), numbers and times.
//
// speak:     from now on, everywhere in the program. Windows hear of it by QEvent::LanguageChange. Call it from the window's thread.
//            Before the first call: English, and sentences with times in UTC.
// Decimals:  as the system's territory writes them in that language (a point in Mexico, a comma in Spain, a comma where the system
//            names no territory). Latitude and longitude always have a point, as receivers want them.
// Times:     local, with the zone's abbreviation.
#pragma once

#include <QLocale>
#include <QString>
#include <optional>

#include "core/survey/mound.h"

namespace plugside {

enum class Language { english, spanish };

void speak(Language language);
[[nodiscard]] Language spoken();

// The first of the system's languages that the program speaks; English if it speaks none of them.
[[nodiscard]] Language language_of(const QLocale& system);
// "en", "es".
[[nodiscard]] QString code_of(Language language);
[[nodiscard]] std::optional<Language> language_from_code(const QString& code);

// How numbers, dates and times are written in the language spoken.
[[nodiscard]] QLocale locale_spoken();
// As QLocale would: "0.5" or "0,5".
[[nodiscard]] QString decimal(double value, int digits);
[[nodiscard]] QString in_their_digits(QString number_with_a_point);
// "10 April 2025, 07:05 MDT".
[[nodiscard]] QString moment_words(UtcTime time);

}  // namespace plugside
