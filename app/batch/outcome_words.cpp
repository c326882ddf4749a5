#include "app/batch/outcome_words.h"

#include <cstdio>

#include "app/batch/verbs.h"

namespace plugside {

int tell_call_error(const std::string& verb, const CallError& error) {
    const std::string program = verb.empty() ? "plugside-batch" : "plugside-batch " + verb;
    std::fprintf(stderr, "%s: %s. Help: %s --help\n", program.c_str(), error.sentence.c_str(), program.c_str());
    return exit_call_wrong;
}

int tell_refusal(const Refusal& refusal) {
    if (refusal.code == Refusal::Code::stopped) return tell_stopped();
    std::fprintf(stderr, "%s\n", sentence(refusal).c_str());
    return exit_refused;
}

int tell_stopped() {
    std::fputs("Stopped; nothing was left half written.\n", stderr);
    return exit_stopped;
}

}  // namespace plugside
