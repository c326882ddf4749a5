// The rows of a project file beside the field: which files were read and how, the pictures under the ground, how it is looked at.
//
// Paths:   texts as they stand in the file: those below `folder` as seen from there, others whole.
// Lists:   an empty step, or a file whose layers are to be read with no guess, is a row of its own that says so.
// Internal to geo/store.
#pragma once

#include <filesystem>
#include <string>
#include <utility>
#include <vector>

#include "geo/store/cells.h"
#include "geo/store/project.h"

namespace plugside {

struct FileRow {
    std::size_t step = 0;
    std::optional<std::string> file;
    friend bool operator==(const FileRow&, const FileRow&) = default;
};

struct TableRow {
    std::string file;
    TableGuess guess;
    friend bool operator==(const TableRow&, const TableRow&) = default;
};

struct LayerRow {
    std::string file;
    std::optional<LayerGuess> guess;
    friend bool operator==(const LayerRow&, const LayerRow&) = default;
};

struct NorthRow {
    std::string name;
    North north = North::not_told;
    friend bool operator==(const NorthRow&, const NorthRow&) = default;
};

struct PictureRow {
    std::string file;
    bool visible = true;
    ImageryAnswers answers;
    friend bool operator==(const PictureRow&, const PictureRow&) = default;
};

struct ViewRow {
    double imagery_tone = 0.55;
    LengthUnits units = LengthUnits::feet_and_inches;
    bool not_handed_out = false;
    friend bool operator==(const ViewRow&, const ViewRow&) = default;
};

void cells_of(Cells& cells, FileRow& row);
void cells_of(Cells& cells, TableRow& row);
void cells_of(Cells& cells, LayerRow& row);
void cells_of(Cells& cells, NorthRow& row);
void cells_of(Cells& cells, PictureRow& row);
void cells_of(Cells& cells, ViewRow& row);

[[nodiscard]] std::vector<FileRow> file_rows(const Project& project, const std::filesystem::path& folder);
[[nodiscard]] std::vector<TableRow> table_rows(const Project& project, const std::filesystem::path& folder);
[[nodiscard]] std::vector<LayerRow> layer_rows(const Project& project, const std::filesystem::path& folder);
[[nodiscard]] std::vector<NorthRow> north_rows(const Project& project);
[[nodiscard]] std::vector<PictureRow> picture_rows(const Project& project, const std::filesystem::path& folder);
[[nodiscard]] ViewRow view_row(const Project& project);

// All of it back into `project`.
struct ToldRows {
    std::vector<FileRow> files;
    std::vector<TableRow> tables;
    std::vector<LayerRow> layers;
    std::vector<NorthRow> norths;
    std::vector<PictureRow> pictures;
    ViewRow view;
};
void take_told(Project& project, ToldRows rows, const std::filesystem::path& folder);

// As it stands in a project file that lies in `folder`, and back.
[[nodiscard]] std::string kept_path(const std::filesystem::path& file, const std::filesystem::path& folder);
[[nodiscard]] std::filesystem::path path_kept(const std::string& text, const std::filesystem::path& folder);

}  // namespace plugside
