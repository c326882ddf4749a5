// A project put into the tables of its file, and taken out of them.
//
// put:   what differs from `before` and nothing else, row by row: an act on one part rewrites that part's rows, tracks and marks that
//        did not change stay as they lie. Without a `before` (an empty file) all of it. In a transaction of the caller's.
// take:  everything, judged cell by cell and as a whole.
// Cost:  put: linear in the project to compare, in what differs to write. take: linear.
// Errors: a Refusal with table, row, column, found and expected.
#pragma once

#include <filesystem>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"
#include "geo/store/database.h"
#include "geo/store/project.h"

namespace plugside {

// `folder`: of the project file; `before`: what stands in it, or null.
[[nodiscard]] tl::expected<void, Refusal> put_project(const Database& database, const Project* before, const Project& now,
                                                      const std::filesystem::path& folder);

[[nodiscard]] tl::expected<Project, Refusal> take_project(const Database& database, const std::filesystem::path& folder);

}  // namespace plugside
