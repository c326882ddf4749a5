#include "geo/store/migrations.h"

#include <array>
#include <map>
#include <string>
#include <vector>

#include "core/words/words.h"

namespace plugside {

namespace {

const char* const form_1 = R"sql(
CREATE TABLE field (number INTEGER PRIMARY KEY, name TEXT NOT NULL, revision INTEGER NOT NULL,
    centre_longitude REAL NOT NULL, centre_latitude REAL NOT NULL) STRICT;
CREATE TABLE walks (number INTEGER PRIMARY KEY, id TEXT NOT NULL, source TEXT NOT NULL) STRICT;
CREATE TABLE segments (number INTEGER PRIMARY KEY,
    walk INTEGER NOT NULL REFERENCES walks DEFERRABLE INITIALLY DEFERRED, fixes BLOB NOT NULL) STRICT;
CREATE TABLE mounds (number INTEGER PRIMARY KEY, name TEXT NOT NULL,
    walk INTEGER NOT NULL REFERENCES walks DEFERRABLE INITIALLY DEFERRED,
    east_m REAL NOT NULL, north_m REAL NOT NULL, fan REAL, kind TEXT NOT NULL, freshness TEXT NOT NULL,
    position_sd_m REAL NOT NULL, shared_sd_m REAL, note TEXT NOT NULL, time INTEGER, set_aside_because TEXT,
    recorded INTEGER NOT NULL, recorded_east_m REAL, recorded_north_m REAL, recorded_fan REAL, recorded_kind TEXT,
    recorded_freshness TEXT, recorded_position_sd_m REAL, recorded_set_aside_because TEXT,
    picture TEXT, receiver INTEGER NOT NULL, hdop REAL, satellites INTEGER, fix TEXT, accuracy_m REAL,
    mentions BLOB NOT NULL) STRICT;
CREATE TABLE shapes (number INTEGER PRIMARY KEY, kind TEXT NOT NULL, name TEXT NOT NULL, reason TEXT NOT NULL,
    stands_there TEXT NOT NULL, width_m REAL NOT NULL, rings BLOB NOT NULL) STRICT;
CREATE TABLE decisions (number INTEGER PRIMARY KEY, probe TEXT NOT NULL, from_mound TEXT NOT NULL, to_mound TEXT NOT NULL,
    choice TEXT NOT NULL, moved INTEGER NOT NULL, along_m REAL, across_m REAL) STRICT;
CREATE TABLE known_facts (number INTEGER PRIMARY KEY, kind TEXT NOT NULL, marks BLOB NOT NULL, line BLOB,
    log_strength REAL, said_by TEXT NOT NULL, said_at INTEGER) STRICT;
CREATE TABLE answers (number INTEGER PRIMARY KEY, finding TEXT NOT NULL, answer TEXT NOT NULL,
    mend_kind TEXT NOT NULL, mend_marks BLOB NOT NULL, mend_to BLOB NOT NULL, mend_fan REAL, mend_turn_degrees REAL NOT NULL,
    mend_sign TEXT, mend_freshness TEXT, mend_because TEXT NOT NULL, mend_position_sd_m REAL) STRICT;
CREATE TABLE note_rules (number INTEGER PRIMARY KEY, walk TEXT NOT NULL, words TEXT NOT NULL, means TEXT NOT NULL,
    mark TEXT NOT NULL) STRICT;
CREATE TABLE read_findings (number INTEGER PRIMARY KEY, file TEXT NOT NULL, place TEXT NOT NULL,
    sentence TEXT NOT NULL) STRICT;
CREATE TABLE findings (number INTEGER PRIMARY KEY, id TEXT NOT NULL, kind TEXT NOT NULL, marks BLOB NOT NULL,
    east_m REAL NOT NULL, north_m REAL NOT NULL, found TEXT NOT NULL, why TEXT NOT NULL, proposed TEXT NOT NULL,
    mend INTEGER NOT NULL, mend_kind TEXT, mend_marks BLOB, mend_to BLOB, mend_fan REAL, mend_turn_degrees REAL,
    mend_sign TEXT, mend_freshness TEXT, mend_because TEXT, mend_position_sd_m REAL, sure REAL NOT NULL) STRICT;
CREATE TABLE files (number INTEGER PRIMARY KEY, step INTEGER NOT NULL, file TEXT) STRICT;
CREATE TABLE told_tables (number INTEGER PRIMARY KEY, file TEXT NOT NULL, separator TEXT NOT NULL, decimal TEXT NOT NULL,
    encoding TEXT NOT NULL, header_row INTEGER NOT NULL, roles BLOB NOT NULL, reference_system TEXT NOT NULL,
    packed_minutes INTEGER NOT NULL, date_order TEXT NOT NULL, minutes_east_of_utc INTEGER NOT NULL,
    assumed BLOB NOT NULL) STRICT;
CREATE TABLE told_layers (number INTEGER PRIMARY KEY, file TEXT NOT NULL, guessed INTEGER NOT NULL, layer TEXT, points TEXT,
    lines TEXT, polygons TEXT, columns BLOB, roles BLOB, date_order TEXT, minutes_east_of_utc INTEGER,
    has_reference_system INTEGER, reference_system TEXT) STRICT;
)sql";

const char* const form_2 = R"sql(
ALTER TABLE walks ADD COLUMN bearings_from TEXT NOT NULL DEFAULT 'not told';
CREATE TABLE told_norths (number INTEGER PRIMARY KEY, name TEXT NOT NULL, north TEXT NOT NULL) STRICT;
CREATE TABLE pictures (number INTEGER PRIMARY KEY, file TEXT NOT NULL, visible INTEGER NOT NULL, reference_system TEXT,
    table_name TEXT, placed INTEGER NOT NULL, corner_east_m REAL, corner_north_m REAL, column_east_m REAL,
    column_north_m REAL, row_east_m REAL, row_north_m REAL) STRICT;
CREATE TABLE display (number INTEGER PRIMARY KEY, imagery_tone REAL NOT NULL, units TEXT NOT NULL,
    not_handed_out INTEGER NOT NULL) STRICT;
-- an earlier form does not tell whether its decisions went out: those that are there wait
INSERT INTO display SELECT 0, 0.55, 'feet and inches', EXISTS (SELECT 1 FROM decisions);
)sql";

// no pairs is a list of none: its count, 32 bits
const char* const form_3 = R"sql(
ALTER TABLE pictures ADD COLUMN pair_kind TEXT NOT NULL DEFAULT 'affine';
ALTER TABLE pictures ADD COLUMN pair_spots BLOB NOT NULL DEFAULT x'00000000';
ALTER TABLE pictures ADD COLUMN pair_places BLOB NOT NULL DEFAULT x'00000000';
CREATE TABLE work (number INTEGER PRIMARY KEY, name TEXT NOT NULL, value TEXT NOT NULL) STRICT;
)sql";

const std::array<const char*, newest_project_form> steps{form_1, form_2, form_3};

tl::expected<void, Refusal> take_steps(const Database& database, std::int64_t from, std::int64_t to) {
    for (std::int64_t form = from; form < to; ++form)
        if (const auto done = database.run(steps.at(static_cast<std::size_t>(form))); !done) return done;
    return database.run(("PRAGMA user_version = " + std::to_string(to)).c_str());
}

using Columns = std::map<std::string, std::vector<std::string>>;

// Of each table its columns, each with type, whether it may be empty, and whether it is the key.
tl::expected<Columns, Refusal> columns_of(const Database& database) {
    const auto statement = database.prepare(
        "SELECT t.name, c.name || ' ' || c.type || ' ' || c.\"notnull\" || ' ' || c.pk || ' ' || c.hidden "
        "FROM sqlite_schema AS t, pragma_table_xinfo(t.name) AS c "
        "WHERE t.type = 'table' AND t.name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY t.name, c.cid");
    if (!statement) return tl::unexpected(statement.error());
    Columns columns;
    int result = SQLITE_ROW;
    while ((result = statement->step()) == SQLITE_ROW) columns[statement->text(0)].push_back(statement->text(1));
    if (result != SQLITE_DONE) return tl::unexpected(database.failure());
    return columns;
}

Refusal malformed(const Database& database, std::string found, std::string expected) {
    return {Refusal::Code::malformed, database.shown(), "", std::move(found), std::move(expected)};
}

}  // namespace

tl::expected<void, Refusal> bring_forward(const Database& database, std::int64_t form) {
    if (form == 0) {
        const std::string mark = "PRAGMA application_id = " + std::to_string(project_application_id);
        if (const auto marked = database.run(mark.c_str()); !marked) return marked;
    }
    return take_steps(database, form, newest_project_form);
}

tl::expected<std::int64_t, Refusal> form_of(const Database& database) {
    const auto application = database.whole("PRAGMA application_id");
    if (!application) return tl::unexpected(application.error());
    const auto form = database.whole("PRAGMA user_version");
    if (!form) return form;
    const std::string newest = std::to_string(newest_project_form);
    if (*application != project_application_id)
        return tl::unexpected(Refusal{Refusal::Code::wrong_format, database.shown(), "",
                                      Words::later("a file of another kind"), Words::later("a project file")});
    if (*form > newest_project_form)
        return tl::unexpected(
            Refusal{Refusal::Code::wrong_format, database.shown(), "",
                    Words::tell("a project of form {1}, which a later version wrote", {std::to_string(*form)}),
                    Words::tell("form {1} or an earlier one (open it with the later version)", {newest})});
    if (*form < 1)
        return tl::unexpected(malformed(database, Words::tell("a project of form {1}", {std::to_string(*form)}),
                                        Words::tell("a form from 1 to {1}", {newest})));
    return form;
}

tl::expected<void, Refusal> judge(const Database& database, std::int64_t form) {
    const auto check = database.prepare("PRAGMA quick_check(1)");
    if (!check) return tl::unexpected(check.error());
    if (check->step() != SQLITE_ROW) return tl::unexpected(database.failure());
    if (check->text(0) != "ok")
        return tl::unexpected(
            malformed(database, Words::later("a damaged or cut off file"), Words::later("a whole project file")));
    const auto acting = database.whole(
        "SELECT count(*) FROM sqlite_schema WHERE type IN ('view', 'trigger') OR rootpage = 0 OR (type = 'index' AND sql IS "
        "NOT "
        "NULL)");
    if (!acting) return tl::unexpected(acting.error());
    const auto columns = columns_of(database);
    if (!columns) return tl::unexpected(columns.error());
    const auto pattern = Database::in_memory();
    if (!pattern) return tl::unexpected(pattern.error());
    if (const auto made = take_steps(*pattern, 0, form); !made) return made;
    const auto expected = columns_of(*pattern);
    if (!expected) return tl::unexpected(expected.error());
    if (*acting != 0 || *columns != *expected)
        return tl::unexpected(malformed(database, Words::later("tables that are not a project's"),
                                        Words::tell("the tables of form {1}", {std::to_string(form)})));
    return {};
}

}  // namespace plugside
