// A project file of form 2 as its own text: written down once, and not made by the code that reads it.
#pragma once

namespace plugside::testing_support {

inline const char* const project_of_form_2 = R"sql(
PRAGMA application_id = 1349284711;
CREATE TABLE field (number INTEGER PRIMARY KEY, name TEXT NOT NULL, revision INTEGER NOT NULL,
    centre_longitude REAL NOT NULL, centre_latitude REAL NOT NULL) STRICT;
CREATE TABLE walks (number INTEGER PRIMARY KEY, id TEXT NOT NULL, source TEXT NOT NULL,
    bearings_from TEXT NOT NULL DEFAULT 'not told') STRICT;
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
    mend_kind TEXT NOT NULL, mend_marks BLOB NOT NULL, mend_to BLOB NOT NULL, mend_fan REAL,
    mend_turn_degrees REAL NOT NULL, mend_sign TEXT, mend_freshness TEXT, mend_because TEXT NOT NULL,
    mend_position_sd_m REAL) STRICT;
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
CREATE TABLE told_layers (number INTEGER PRIMARY KEY, file TEXT NOT NULL, guessed INTEGER NOT NULL, layer TEXT,
    points TEXT, lines TEXT, polygons TEXT, columns BLOB, roles BLOB, date_order TEXT, minutes_east_of_utc INTEGER,
    has_reference_system INTEGER, reference_system TEXT) STRICT;
CREATE TABLE told_norths (number INTEGER PRIMARY KEY, name TEXT NOT NULL, north TEXT NOT NULL) STRICT;
CREATE TABLE pictures (number INTEGER PRIMARY KEY, file TEXT NOT NULL, visible INTEGER NOT NULL, reference_system TEXT,
    table_name TEXT, placed INTEGER NOT NULL, corner_east_m REAL, corner_north_m REAL, column_east_m REAL,
    column_north_m REAL, row_east_m REAL, row_north_m REAL) STRICT;
CREATE TABLE display (number INTEGER PRIMARY KEY, imagery_tone REAL NOT NULL, units TEXT NOT NULL,
    not_handed_out INTEGER NOT NULL) STRICT;
INSERT INTO field VALUES (0, 'Upper hay piece', 12, -120.5, 38.25);
INSERT INTO walks VALUES (0, 'walk 1', 'morning.gpx', 'magnetic');
-- two places, the first one with a time of 1000 ms
INSERT INTO segments VALUES (0, 0,
    x'02000000000000000000F03F000000000000004001E8030000000000000000000000000840000000000000104000');
INSERT INTO mounds VALUES (0, 'M001', 0, 12.5, -40.25, 135.0, 'gopher mound', 'fresh', 0.5, NULL, 'fan 135 fresh', NULL,
    NULL, 0, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, 0, NULL, NULL, NULL, NULL, x'00000000');
INSERT INTO decisions VALUES (0, 'plug side', 'M001', '', 'moved', 1, 0.25, -0.125);
INSERT INTO files VALUES (0, 0, 'morning.gpx');
INSERT INTO pictures VALUES (0, 'plat.jpg', 1, NULL, NULL, 1, 10.0, 20.0, 0.5, 0.0, 0.0, -0.5);
INSERT INTO display VALUES (0, 0.25, 'metres', 0);
PRAGMA user_version = 2;
)sql";

}  // namespace plugside::testing_support
