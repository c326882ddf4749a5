#include "core/survey/mound.h"

#include <array>
#include <utility>

#include "core/words/words.h"

namespace plugside {

namespace {

constexpr std::array<std::pair<SignKind, const char*>, 6> sign_words{
    {{SignKind::gopher_mound, Words::later("gopher mound")},
     {SignKind::surface_plug, Words::later("surface plug")},
     {SignKind::mole, Words::later("mole")},
     {SignKind::ground_squirrel, Words::later("ground squirrel")},
     {SignKind::vole, Words::later("vole")},
     {SignKind::other, Words::later("other")}}};

constexpr std::array<std::pair<Freshness, const char*>, 4> freshness_words{{{Freshness::unknown, Words::later("unknown")},
                                                                            {Freshness::fresh, Words::later("fresh")},
                                                                            {Freshness::older, Words::later("older")},
                                                                            {Freshness::crushed, Words::later("crushed")}}};

template <typename Table, typename Value>
std::string word_of(const Table& table, Value value) {
    for (const auto& [key, word] : table)
        if (key == value) return word;
    return {};
}

template <typename Value, typename Table>
std::optional<Value> value_of(const Table& table, const std::string& text) {
    for (const auto& [key, word] : table)
        if (text == word) return key;
    return std::nullopt;
}

}  // namespace

std::string to_text(SignKind kind) { return word_of(sign_words, kind); }
std::string to_text(Freshness freshness) { return word_of(freshness_words, freshness); }
std::optional<SignKind> sign_kind_from_text(const std::string& text) { return value_of<SignKind>(sign_words, text); }
std::optional<Freshness> freshness_from_text(const std::string& text) { return value_of<Freshness>(freshness_words, text); }

}  // namespace plugside
