// Files read as a person said: what columns and layers mean, and which north the bearings of each file were read from.
//
// north:  by the name that a walk knows its file by (the file's name without its folder, "photographs" for all of them);
// files
//         of one name in two folders share it. Where the magnetic model has no answer, a finding of the survey says so and
//         the fans stay as they are.
// Again:  a field's files are read in the same steps as before, onto the field's own plane where they still lie there; what
// was
//         decided and answered is carried over (geo/read/carry_over.h).
// Errors: as field_reader.h; nothing partial. Cost: that of reading. For a thread of its own.
#pragma once

#include <filesystem>
#include <map>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/walk.h"
#include "geo/read/carry_over.h"
#include "geo/read/field_reader.h"

namespace plugside {

struct FileChoices {
    ReadChoices read;
    std::map<std::string, North> north;
};

// `source` of a walk is of the file that is known by `name`.
[[nodiscard]] bool is_from(const std::string& source, const std::string& name);

[[nodiscard]] tl::expected<FieldSurvey, Refusal> read_as_told(const std::vector<std::filesystem::path>& files,
                                                              const FileChoices& choices, const Progress& progress = {});
[[nodiscard]] tl::expected<FieldSurvey, Refusal> add_as_told(const FieldSurvey& field,
                                                             const std::vector<std::filesystem::path>& files,
                                                             const FileChoices& choices, const Progress& progress = {});

struct ReadAnew {
    FieldSurvey field;
    CarriedOver carried;
};
// `steps`: the files that were read together, in the order of reading.
[[nodiscard]] tl::expected<ReadAnew, Refusal> read_anew(const FieldSurvey& field,
                                                        const std::vector<std::vector<std::filesystem::path>>& steps,
                                                        const FileChoices& choices, const Progress& progress = {});

}  // namespace plugside
