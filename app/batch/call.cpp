#include "app/batch/call.h"

#include <algorithm>
#include <charconv>
#include <sstream>
#include <utility>

#include "core/survey/refusal.h"

namespace plugside {

namespace {

struct Parser {
    const VerbRule& rule;
    const std::vector<std::string>& words;
    std::size_t next = 0;
    Call call;

    // Takes the option that stands at `next`; returns what is wrong with it.
    std::optional<CallError> take_option() {
        const std::string word = words[next++];
        const std::size_t equals = word.find('=');
        const std::string name = word.substr(2, equals == std::string::npos ? std::string::npos : equals - 2);
        const auto option = std::find_if(rule.options.begin(), rule.options.end(),
                                         [&](const OptionRule& candidate) { return candidate.name == name; });
        if (option == rule.options.end()) return CallError{"there is no option " + quoted_for_display("--" + name)};
        if (call.has(name) && !option->repeatable) return CallError{"option --" + name + " is given twice"};
        if (option->value.empty()) {
            if (equals != std::string::npos) return CallError{"option --" + name + " takes no value"};
            call.options[name].emplace_back();
            return std::nullopt;
        }
        std::string value;
        if (equals != std::string::npos) {
            value = word.substr(equals + 1);
        } else if (next < words.size()) {
            value = words[next++];
        }
        if (value.empty()) return CallError{"option --" + name + " needs a value: " + option->value};
        call.options[name].push_back(std::move(value));
        return std::nullopt;
    }
};

}  // namespace

std::optional<std::string> Call::value(const std::string& option) const {
    const auto found = options.find(option);
    if (found == options.end()) return std::nullopt;
    return found->second.front();
}

std::vector<std::string> Call::values(const std::string& option) const {
    const auto found = options.find(option);
    return found == options.end() ? std::vector<std::string>() : found->second;
}

tl::expected<Call, CallError> parse_call(const VerbRule& rule, const std::vector<std::string>& words) {
    Parser parser{rule, words, 0, {}};
    bool options_ended = false;
    while (parser.next < words.size()) {
        const std::string& word = words[parser.next];
        if (!options_ended && word == "--") {
            options_ended = true;
            ++parser.next;
        } else if (!options_ended && word.starts_with("--")) {
            if (auto error = parser.take_option()) return tl::unexpected(*error);
        } else if (!options_ended && word.size() > 1 && word.starts_with("-")) {
            return tl::unexpected(CallError{"there is no option " + quoted_for_display(word)});
        } else {
            parser.call.places.push_back(word);
            ++parser.next;
        }
    }
    if (parser.call.places.size() < rule.least_places)
        return tl::unexpected(CallError{"at least one " + rule.places + " is needed"});
    if (parser.call.places.size() > rule.most_places)
        return tl::unexpected(CallError{"there is no use for " + quoted_for_display(parser.call.places[rule.most_places])});
    return parser.call;
}

tl::expected<std::uint64_t, CallError> whole_number(const std::string& option, const std::string& text, std::uint64_t least,
                                                    std::uint64_t most) {
    std::uint64_t number = 0;
    const auto [end, error] = std::from_chars(text.data(), text.data() + text.size(), number);
    if (error != std::errc{} || end != text.data() + text.size() || number < least || number > most)
        return tl::unexpected(CallError{"option --" + option + " wants a whole number from " + std::to_string(least) +
                                        " to " + std::to_string(most) + ", not " + quoted_for_display(text)});
    return number;
}

std::string help_of(const VerbRule& rule) {
    std::ostringstream help;
    help << "plugside-batch " << rule.name;
    if (!rule.places.empty()) help << ' ' << rule.places << (rule.most_places > 1 ? "..." : "");
    help << " [options]\n\n" << rule.meaning << "\n\nOptions:\n";
    std::size_t width = 0;
    const auto told = [](const OptionRule& option) {
        return "--" + option.name + (option.value.empty() ? "" : " " + option.value);
    };
    for (const OptionRule& option : rule.options) width = std::max(width, told(option).size());
    for (const OptionRule& option : rule.options) {
        const std::string left = told(option);
        help << "  " << left << std::string(width - left.size() + 2, ' ') << option.meaning << '\n';
    }
    help << "  --help" << std::string(width - 4, ' ') << "this text\n";
    if (!rule.remarks.empty()) help << '\n' << rule.remarks << '\n';
    return help.str();
}

}  // namespace plugside
