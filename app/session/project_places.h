// Where projects lie: those that nobody has named yet, and those opened last.
//
// Unnamed: in the folder "projects" of the program's own data (QStandardPaths::AppDataLocation), by the field's name and the minute
//          it was opened, "creek-meadow 2026-03-01 0930.plugside"; a number behind it where that is taken.
// Recent:  in the person's settings, the latest first, at most `most_recent`; those whose file is not there (or still empty) are passed over, and come
//          back with their disk.
#pragma once

#include <QString>
#include <QStringList>
#include <filesystem>
#include <vector>

namespace plugside {

inline constexpr int most_recent = 8;

// "creek-meadow" from "Creek meadow (2)": letters and digits with single hyphens; "field" when nothing is left.
[[nodiscard]] QString file_stem(const QString& field_name);

[[nodiscard]] std::filesystem::path unnamed_projects();
// A name in that folder that nobody has; an empty file holds it from now on. The folder is made.
[[nodiscard]] std::filesystem::path place_for(const QString& field_name);
[[nodiscard]] bool is_unnamed(const std::filesystem::path& project);

[[nodiscard]] std::vector<std::filesystem::path> recent_projects();
void remember_project(const std::filesystem::path& project);
void forget_project(const std::filesystem::path& project);

[[nodiscard]] QString as_text(const std::filesystem::path& file);
[[nodiscard]] std::filesystem::path as_path(const QString& file);

}  // namespace plugside
