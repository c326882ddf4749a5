// Texts that a person reads, where they are composed away from the window: in English, or in the language that the window speaks.
//
// Tongue: how texts are turned into another language; set by the window at its start, before other threads, and kept alive by it.
//         `text` gives the whole text in the language at hand, or the same text where it has none; the others as said there.
//         All are called from any thread. Without a tongue: English, a decimal point, times in UTC.
// Words:
//   tell    the text in the language at hand, with {1}, {2}, ... replaced by `values`, which may stand in any order. A value that
//           contains braces is taken as it is; a place without a value stays.
//   later   the text as it is, in English: for data (reasons that are kept in files, tables of texts) that `shown` tells later.
//           It only marks the text for whoever translates.
//   shown   a text that was marked by `later`, in the language at hand; any other text, as a reason that a person wrote, as it is.
//   decimal `number`, written with a point, with the decimal mark of the language at hand.
//   language  of the texts told, as "en" or "es": for whole tables of texts.
//   moment  "2025-04-10 13:05:20 UTC", or as the window says times: local, with its zone.
// One and many: two texts, chosen by the caller; English and Spanish both say "one" of 1 alone.
// Cost: linear in the text and a look-up.
#pragma once

#include <chrono>
#include <initializer_list>
#include <string>

namespace plugside {

struct Tongue {
    using Moment = std::chrono::sys_time<std::chrono::milliseconds>;
    std::string (*text)(const char* english) = nullptr;
    char (*decimal_mark)() = nullptr;
    const char* (*language)() = nullptr;
    std::string (*moment)(Moment time) = nullptr;
};

// Null: English again.
void speak_with(const Tongue* tongue);

class Words {
public:
    [[nodiscard]] static std::string tell(const char* english, std::initializer_list<std::string> values = {});
    [[nodiscard]] static constexpr const char* later(const char* english) { return english; }
    [[nodiscard]] static std::string shown(const std::string& kept);
    [[nodiscard]] static std::string decimal(std::string number);
    [[nodiscard]] static std::string moment(Tongue::Moment time);
    [[nodiscard]] static std::string language();
};

// "2025-04-10 13:05:20 UTC", in every language.
[[nodiscard]] std::string moment_in_utc(Tongue::Moment time);

// `pattern` with {1}, {2}, ... replaced.
[[nodiscard]] std::string filled(const std::string& pattern, std::initializer_list<std::string> values);

}  // namespace plugside
