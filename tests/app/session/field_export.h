// What goes out of a field, as text that can be compared: every row of every table of the files that the program writes. The number of
// edits that the field has seen is not in it: it grows with undo, too.
#pragma once

#include <gtest/gtest.h>
#include <sqlite3.h>

#include <filesystem>
#include <string>

#include "app/session/project_keeper.h"
#include "core/mending/answered_findings.h"
#include "geo/write/geopackage_layers.h"
#include "geo/write/survey_file.h"
#include "tests/geo/temporary_folder.h"

namespace plugside::testing_support {

using Rows = std::vector<std::string>;

class RowReader {
public:
    explicit RowReader(const std::filesystem::path& file) {
        EXPECT_EQ(sqlite3_open_v2(file.c_str(), &database_, SQLITE_OPEN_READONLY, nullptr), SQLITE_OK) << file;
    }
    ~RowReader() { sqlite3_close_v2(database_); }
    RowReader(const RowReader&) = delete;
    RowReader& operator=(const RowReader&) = delete;

    // Of every table but those left out, in the order that the file has them; `without`: a column that is not looked at.
    Rows all(const std::vector<std::string>& left_out, const std::string& without) const {
        Rows rows;
        for (const std::string& table : select("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name", ""))
            if (std::find(left_out.begin(), left_out.end(), table) == left_out.end())
                for (const std::string& row : select("SELECT * FROM \"" + table + "\"", without))
                    rows.push_back(table + ": " + row);
        return rows;
    }

private:
    Rows select(const std::string& sql, const std::string& without) const {
        Rows rows;
        sqlite3_stmt* statement = nullptr;
        EXPECT_EQ(sqlite3_prepare_v2(database_, sql.c_str(), -1, &statement, nullptr), SQLITE_OK)
            << sql << ": " << sqlite3_errmsg(database_);
        while (sqlite3_step(statement) == SQLITE_ROW) {
            std::string row;
            for (int column = 0; column < sqlite3_column_count(statement); ++column) {
                if (without == sqlite3_column_name(statement, column)) continue;
                row.append(row.empty() ? "" : " | ").append(value(statement, column));
            }
            rows.push_back(row);
        }
        sqlite3_finalize(statement);
        return rows;
    }
    static std::string value(sqlite3_stmt* statement, int column) {
        if (sqlite3_column_type(statement, column) == SQLITE_NULL) return "(null)";
        const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement, column));
        const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement, column));
        return size == 0 ? std::string() : std::string(bytes, size);
    }

    sqlite3* database_ = nullptr;
};

// The field before it is planned, as the batch program writes it.
inline Rows survey_rows(const FieldSurvey& field, const TemporaryFolder& folder) {
    FieldSurvey counted = field;
    counted.survey.revision = 0;
    SurveyJudged judged;
    judged.findings = answered_findings(counted.survey, counted.of_reading).value();
    const auto file = folder / "survey.gpkg";
    EXPECT_EQ(refusal_of(write_survey(counted, judged, file)), "");
    return RowReader(file).all({}, "");
}

// The plan as it is handed out.
inline Rows plan_rows(const FieldSurvey& field, const Plan& plan, const TemporaryFolder& folder) {
    FieldSurvey counted = field;
    counted.survey.revision = 0;
    Plan of_it = plan;
    of_it.revision = 0;
    const auto file = folder / "plan.gpkg";
    EXPECT_EQ(refusal_of(write_geopackage(counted, of_it, file, LengthUnits::metres)), "");
    return RowReader(file).all({}, "");
}

// A project but for the number of edits and how it is looked at, which is no act of the history.
inline Project without_looks(Project project) {
    auto field = std::make_shared<FieldSurvey>(*project.field);
    field->survey.revision = 0;
    project.field = std::move(field);
    project.units = LengthUnits::metres;
    project.imagery_tone = 0.0;
    project.not_handed_out = false;
    return project;
}

// The project's own file as it is kept: its rows, and what opening it gives.
struct KeptProject {
    Rows rows;
    Project project;
};
inline KeptProject kept_project(ProjectKeeper& keeper, const TemporaryFolder& folder) {
    EXPECT_TRUE(keeper.settle(std::chrono::minutes(2))) << keeper.why_not().toStdString();
    const auto copy = folder / "kept copy.plugside";
    std::filesystem::copy_file(*keeper.file(), copy, std::filesystem::copy_options::overwrite_existing);
    KeptProject kept{RowReader(copy).all({"display"}, "revision"), {}};
    const auto store = ProjectStore::open(copy);
    EXPECT_TRUE(store) << (store ? "" : sentence(store.error()));
    if (store) kept.project = without_looks(*store->project());
    return kept;
}

// Equal, or the first rows that are not.
inline void expect_same_rows(const Rows& before, const Rows& now, const std::string& what) {
    EXPECT_EQ(before.size(), now.size()) << what;
    int told = 0;
    for (std::size_t i = 0; i < std::min(before.size(), now.size()) && told < 3; ++i)
        if (before[i] != now[i]) {
            ADD_FAILURE() << what << ", row " << i << "\n  was " << before[i] << "\n  is  " << now[i];
            ++told;
        }
}

}  // namespace plugside::testing_support
