// What a project file holds: the field with everything said of it, the files that it was read from and how, the pictures under
// it, and how it is looked at.
//
// field:     never null in a project that is kept or was opened. Shared: a project is copied for every act, its field is not.
// steps:     the files that were read together, in the order of reading.
// tables, layers, norths: how files were read, where a person said so (field_reader.h, north by the name a walk knows its file by).
// pictures:  the lowest first. Only named: a project holds no picture.
// not_handed_out: something was decided since the field last went out as a GeoPackage.
// Paths:     absolute and in their plain form (`as_kept`). In the file those below the project's folder are kept as seen from
//            there, so that folder and project can be moved together; all others as they are.
// Equality:  all members; of the frame, its centre.
#pragma once

#include <filesystem>
#include <map>
#include <memory>
#include <string>
#include <vector>

#include "core/survey/walk.h"
#include "core/units/display.h"
#include "geo/imagery/imagery_source.h"
#include "geo/read/field_survey.h"
#include "geo/read/gis_layers.h"
#include "geo/read/table.h"

namespace plugside {

struct ProjectPicture {
    std::filesystem::path file;
    bool visible = true;
    ImageryAnswers answers;
    friend bool operator==(const ProjectPicture&, const ProjectPicture&) = default;
};

struct Project {
    std::shared_ptr<const FieldSurvey> field;
    std::vector<std::vector<std::filesystem::path>> steps;
    std::map<std::filesystem::path, TableGuess> tables;
    std::map<std::filesystem::path, std::vector<LayerGuess>> layers;
    std::map<std::string, North> norths;
    std::vector<ProjectPicture> pictures;
    double imagery_tone = 0.55;  // 0..1
    LengthUnits units = LengthUnits::feet_and_inches;
    bool not_handed_out = false;
};

[[nodiscard]] bool operator==(const Project& a, const Project& b);

// The path as a project keeps it: absolute, without dots.
[[nodiscard]] std::filesystem::path as_kept(const std::filesystem::path& file);

}  // namespace plugside
