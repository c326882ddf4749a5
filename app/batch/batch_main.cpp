// The main job without a window: the same core, the same files.
#include <algorithm>
#include <cstdio>
#include <new>
#include <string>
#include <vector>

#include "app/batch/outcome_words.h"
#include "app/batch/stop_on_signal.h"
#include "app/batch/verbs.h"

namespace plugside {

namespace {

const std::vector<const Verb*>& verbs() {
    static const std::vector<const Verb*> all{&read_verb(), &plan_verb(), &lines_verb(), &simulate_verb(), &evaluate_verb()};
    return all;
}

void print_help() {
    std::puts("plugside-batch: from a scouting walk over a gopher field to a plan for probe, tape and flags.\n\nVerbs:");
    for (const Verb* verb : verbs()) {
        const std::string& meaning = verb->rule.meaning;
        std::printf("  %-10s %s\n", verb->rule.name.c_str(), meaning.substr(0, meaning.find('\n')).c_str());
    }
    std::puts(
        "\nplugside-batch VERB --help tells of one verb; plugside-batch --version prints the version.\n"
        "Exit codes: 0 done; 2 the call is wrong; 3 an input is refused or an output cannot be written;\n"
        "4 a plan with stops, that is not handed out; 130 stopped.");
}

int run(const std::vector<std::string>& words) {
    if (words.empty()) return tell_call_error("", {"no verb is given"});
    if (words[0] == "--help" || words[0] == "help") {
        print_help();
        return exit_done;
    }
    if (words[0] == "--version") {
        std::puts("plugside-batch " PLUGSIDE_VERSION);
        return exit_done;
    }
    for (const Verb* verb : verbs()) {
        if (verb->rule.name != words[0]) continue;
        const std::vector<std::string> rest(words.begin() + 1, words.end());
        const auto options_end = std::find(rest.begin(), rest.end(), "--");
        if (std::find(rest.begin(), options_end, "--help") != options_end) {
            std::fputs(help_of(verb->rule).c_str(), stdout);
            return exit_done;
        }
        const auto call = parse_call(verb->rule, rest);
        if (!call) return tell_call_error(verb->rule.name, call.error());
        const StopOnSignal stop;
        return verb->run(*call, stop.token());
    }
    return tell_call_error("", {"there is no verb " + quoted_for_display(words[0])});
}

}  // namespace

}  // namespace plugside

int main(int count, char** words) {
    try {
        const int code = plugside::run({words + 1, words + count});
        // a full disk or a closed pipe shows only when the last words are pushed out
        if (std::fflush(stdout) != 0 && code == plugside::exit_done) return plugside::exit_refused;
        return code;
    } catch (const std::bad_alloc&) {
        std::fputs("Not enough memory for this field.\n", stderr);
        return plugside::exit_refused;
    }
}
