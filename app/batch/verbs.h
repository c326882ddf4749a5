// The verbs of the batch program. Each takes a parsed call and works with the words it prints: results on stdout, what a
// person should know of besides (findings, refusals, progress) on stderr.
//
// Exit codes: 0 done; 2 the call is wrong; 3 an input is refused or an output cannot be written; 4 a plan with stops, that is not
// handed out; 130 stopped by a signal.
#pragma once

#include <stop_token>

#include "app/batch/call.h"

namespace plugside {

enum ExitCode : int { exit_done = 0, exit_call_wrong = 2, exit_refused = 3, exit_stops_hold = 4, exit_stopped = 130 };

struct Verb {
    VerbRule rule;
    int (*run)(const Call& call, const std::stop_token& stop);
};

[[nodiscard]] const Verb& read_verb();
[[nodiscard]] const Verb& plan_verb();
[[nodiscard]] const Verb& lines_verb();
[[nodiscard]] const Verb& simulate_verb();
[[nodiscard]] const Verb& evaluate_verb();

}  // namespace plugside
