// The forms that a project file has had, and the steps from each to the next.
//
// A new file is made by the very steps that bring an old one forward, from nothing to the newest form: both cannot come apart.
// Step n leads from form n to form n + 1; form 0 is an empty file. A step is never changed once a release wrote files of its form:
// what is new goes into a new step at the end.
//
// Forms:    1 the field and the files it was read from; 2 also the north that a walk's bearings were read from, the pictures under
//           the ground, units, and whether decisions wait to be handed out.
// Number:   SQLite's user_version; the application_id says that it is a project at all.
// Judged:   a file's tables and columns have to be those of its form, and there is nothing else in it that could act (no view, no
//           trigger, no virtual table), so that a file made to look like a project cannot make reading do something else.
#pragma once

#include <cstdint>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"
#include "geo/store/database.h"

namespace plugside {

inline constexpr std::int64_t newest_project_form = 3;
inline constexpr std::int64_t project_application_id = 0x506C7367;  // "Plsg"

// From `form` to the newest one. In a transaction of the caller's.
[[nodiscard]] tl::expected<void, Refusal> bring_forward(const Database& database, std::int64_t form);

// Which form the file has; a refusal for what is no project, and for a form that is newer than this version knows.
[[nodiscard]] tl::expected<std::int64_t, Refusal> form_of(const Database& database);

// Whole pages, whole rows, and the tables of its form.
[[nodiscard]] tl::expected<void, Refusal> judge(const Database& database, std::int64_t form);

}  // namespace plugside
