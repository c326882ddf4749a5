// How the batch program says what went wrong, and the exit code that goes with it.
#pragma once

#include <string>

#include "app/batch/call.h"
#include "core/survey/refusal.h"

namespace plugside {

// "plugside-batch plan: ...; see plugside-batch plan --help" on stderr. Returns 2.
int tell_call_error(const std::string& verb, const CallError& error);

// The refusal's sentence on stderr, returns 3; a stop is told as such and returns 130.
int tell_refusal(const Refusal& refusal);

// "Stopped." on stderr. Returns 130.
int tell_stopped();

}  // namespace plugside
