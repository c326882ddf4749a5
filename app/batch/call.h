// What was asked for on the command line: a verb, its places, its options.
//
// Rules:   options are `--name`, `--name value` or `--name=value`, in any order among the places; `--` ends options.
//          An option that is not told of, told twice (unless it is one that may be), or without its value, and too few or too many places, make the call
//          wrong.
// Errors:  a CallError with one sentence that names the word at fault.
// `-` alone is a place like another. Cost: O(words x options).
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

namespace plugside {

struct CallError {
    std::string sentence;
};

struct OptionRule {
    std::string name;   // without the dashes
    std::string value;  // how its value is called in the help; empty: it takes none
    std::string meaning;
    bool repeatable = false;
};

struct VerbRule {
    std::string name;
    std::string places;  // how the places are called in the help; empty: there are none
    std::size_t least_places = 0;
    std::size_t most_places = 0;
    std::string meaning;
    std::vector<OptionRule> options;
    std::string remarks;  // closes the help
};

struct Call {
    std::vector<std::string> places;
    std::map<std::string, std::vector<std::string>> options;  // values in their order; one empty value where it takes none

    [[nodiscard]] bool has(const std::string& option) const { return options.contains(option); }
    [[nodiscard]] std::optional<std::string> value(const std::string& option) const;
    [[nodiscard]] std::vector<std::string> values(const std::string& option) const;
};

[[nodiscard]] tl::expected<Call, CallError> parse_call(const VerbRule& rule, const std::vector<std::string>& words);

// A whole number of at least `least` and at most `most`, all of the text.
[[nodiscard]] tl::expected<std::uint64_t, CallError> whole_number(const std::string& option, const std::string& text,
                                                                  std::uint64_t least, std::uint64_t most);

// The verb's help, lines of at most 100 characters where its texts allow.
[[nodiscard]] std::string help_of(const VerbRule& rule);

}  // namespace plugside
