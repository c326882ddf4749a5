#include "core/words/words.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cstdio>

#include "core/words/tongue_here.h"

namespace plugside {

namespace {

std::atomic<const Tongue*> tongue_of_all{nullptr};
thread_local bool one_of_its_own = false;
thread_local const Tongue* own_tongue = nullptr;

const Tongue* tongue_at_hand() { return one_of_its_own ? own_tongue : tongue_of_all.load(); }

}  // namespace

TongueHere::TongueHere(const Tongue* tongue) : others_(one_of_its_own), before_(own_tongue) {
    one_of_its_own = true;
    own_tongue = tongue;
}

TongueHere::~TongueHere() {
    one_of_its_own = others_;
    own_tongue = before_;
}

std::string moment_in_utc(Tongue::Moment time) {
    const auto day = std::chrono::floor<std::chrono::days>(time);
    const std::chrono::year_month_day date{day};
    const std::chrono::hh_mm_ss clock{std::chrono::floor<std::chrono::seconds>(time - day)};
    std::array<char, 64> text{};
    std::snprintf(text.data(), text.size(), "%04d-%02u-%02u %02d:%02d:%02d UTC", static_cast<int>(date.year()),
                  static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()),
                  static_cast<int>(clock.hours().count()), static_cast<int>(clock.minutes().count()),
                  static_cast<int>(clock.seconds().count()));
    return text.data();
}

void speak_with(const Tongue* tongue) { tongue_of_all.store(tongue); }

std::string filled(const std::string& pattern, std::initializer_list<std::string> values) {
    std::string text;
    text.reserve(pattern.size() + 16 * values.size());
    for (std::size_t at = 0; at < pattern.size(); ++at) {
        if (pattern[at] == '{' && at + 2 < pattern.size() && pattern[at + 2] == '}' && pattern[at + 1] >= '1' &&
            pattern[at + 1] <= '9') {
            const auto which = static_cast<std::size_t>(pattern[at + 1] - '1');
            if (which < values.size()) {
                text += *(values.begin() + which);
                at += 2;
                continue;
            }
        }
        text += pattern[at];
    }
    return text;
}

std::string Words::tell(const char* english, std::initializer_list<std::string> values) {
    const Tongue* const tongue = tongue_at_hand();
    return filled(tongue != nullptr && tongue->text != nullptr ? tongue->text(english) : english, values);
}

std::string Words::shown(const std::string& kept) {
    const Tongue* const tongue = tongue_at_hand();
    if (kept.empty() || tongue == nullptr || tongue->text == nullptr) return kept;
    return tongue->text(kept.c_str());
}

std::string Words::decimal(std::string number) {
    const Tongue* const tongue = tongue_at_hand();
    if (tongue != nullptr && tongue->decimal_mark != nullptr)
        std::replace(number.begin(), number.end(), '.', tongue->decimal_mark());
    return number;
}

std::string Words::language() {
    const Tongue* const tongue = tongue_at_hand();
    return tongue != nullptr && tongue->language != nullptr ? tongue->language() : "en";
}

std::string Words::moment(Tongue::Moment time) {
    const Tongue* const tongue = tongue_at_hand();
    return tongue != nullptr && tongue->moment != nullptr ? tongue->moment(time) : moment_in_utc(time);
}

}  // namespace plugside
