"""Reads a GeoPackage with nothing but SQLite, the geometry header of the standard (OGC 12-128r17, clause 2.1.3) and shapely,
and compares it with a list of expected values: layer, row, column, value, separated by tabs; shapes as well-known text in the
column "geom"; \\N is null; what begins with "json:" is compared as JSON. Every layer and column that is listed has to be there, and the other way round."""

import json
import sqlite3
import struct
import sys

import shapely.wkb
import shapely.wkt

DEGREES = 1e-9
RELATIVE = 1e-12

problems = []


def problem(text):
    problems.append(text)


def geometry(blob):
    if blob[:2] != b"GP":
        raise ValueError("no GeoPackage geometry")
    flags = blob[3]
    order = "<" if flags & 1 else ">"
    (srs,) = struct.unpack(order + "i", blob[4:8])
    if srs != 4326:
        problem(f"geometry in reference system {srs}")
    envelope_bytes = {0: 0, 1: 32, 2: 48, 3: 48, 4: 64}[(flags >> 1) & 7]
    return shapely.wkb.loads(blob[8 + envelope_bytes:])


def coordinates(shape):
    if shape.geom_type == "Point" or shape.geom_type == "LineString":
        return [list(shape.coords)]
    if shape.geom_type == "Polygon":
        return [list(shape.exterior.coords)] + [list(ring.coords) for ring in shape.interiors]
    return [ring for part in shape.geoms for ring in coordinates(part)]


def same_shape(found, expected):
    if found.geom_type != expected.geom_type:
        return False
    a, b = coordinates(found), coordinates(expected)
    return [len(r) for r in a] == [len(r) for r in b] and all(
        abs(p[0] - q[0]) <= DEGREES and abs(p[1] - q[1]) <= DEGREES for r, s in zip(a, b) for p, q in zip(r, s))


def same_lists(found, expected):
    if isinstance(expected, list):
        return isinstance(found, list) and len(found) == len(expected) and all(map(same_lists, found, expected))
    return abs(found - expected) <= DEGREES if isinstance(expected, float) else found == expected


def same_value(found, expected):
    if found is None or expected == "\\N":
        return found is None and expected == "\\N"
    if isinstance(found, (int, float)):
        number = float(expected)
        return abs(found - number) <= RELATIVE * max(1.0, abs(number))
    if expected.startswith("json:"):
        return same_lists(json.loads(found), json.loads(expected[5:]))
    return found == expected.replace("\x1f", "\n")


def main(package, expected_file):
    db = sqlite3.connect(f"file:{package}?mode=ro", uri=True)
    version = db.execute("PRAGMA user_version").fetchone()[0]
    if version != 10300:
        problem(f"user_version {version}, expected 10300 (GeoPackage 1.3)")
    contents = dict(db.execute("SELECT table_name, data_type FROM gpkg_contents"))
    expected_columns, expected_rows, values = {}, {}, 0
    for line in open(expected_file, encoding="utf-8", newline="\n"):
        cells = line.rstrip("\n").split("\t")
        if cells[1] == "layer":
            expected_columns.setdefault(cells[0], set())
            expected_rows.setdefault(cells[0], 0)
            continue
        layer, row, column, value = cells
        row = int(row)
        expected_columns[layer].add(column)
        expected_rows[layer] = max(expected_rows[layer], row + 1)
        if layer not in contents:
            problem(f"layer {layer} is missing")
            continue
        try:
            found = db.execute(f'SELECT "{column}" FROM "{layer}" ORDER BY fid LIMIT 1 OFFSET {row}').fetchone()
        except sqlite3.OperationalError as error:
            problem(f"{layer}.{column}: {error}")
            continue
        values += 1
        if found is None:
            problem(f"{layer}: row {row} is missing")
        elif column == "geom" and value != "\\N":
            if found[0] is None or not same_shape(geometry(found[0]), shapely.wkt.loads(value)):
                problem(f"{layer}, row {row}: another shape than {value}")
        elif not same_value(found[0], value):
            problem(f"{layer}.{column}, row {row}: found {found[0]!r}, expected {value!r}")

    for layer, kind in contents.items():
        if layer not in expected_columns:
            problem(f"layer {layer} was not expected")
            continue
        rows = db.execute(f'SELECT count(*) FROM "{layer}"').fetchone()[0]
        if rows != expected_rows[layer]:
            problem(f"{layer}: {rows} rows, expected {expected_rows[layer]}")
        columns = {row[1] for row in db.execute(f'PRAGMA table_info("{layer}")')} - {"fid"}
        if expected_columns[layer] and columns != expected_columns[layer]:
            problem(f"{layer}: columns {sorted(columns ^ expected_columns[layer])} are on one side only")
        if (kind == "features") != ("geom" in columns):
            problem(f"{layer}: is listed as {kind}")
        if kind == "features" and rows:
            index = db.execute(f'SELECT count(*) FROM "rtree_{layer}_geom"').fetchone()[0]
            shapes = db.execute(f'SELECT count(*) FROM "{layer}" WHERE geom IS NOT NULL').fetchone()[0]
            if index != shapes:
                problem(f"{layer}: {index} of {shapes} shapes are in the spatial index")
    for layer in expected_columns:
        if layer not in contents:
            problem(f"layer {layer} is missing")
    kinds = dict(db.execute("SELECT table_name, geometry_type_name FROM gpkg_geometry_columns"))
    for layer, kind in {"mounds": "POINT", "burrow_systems": "MULTIPOLYGON", "main_runs": "LINESTRING",
                        "probe_points": "POINT", "set_points": "POINT", "walk_tracks": "MULTILINESTRING",
                        "findings": "POINT", "crossings": "POINT", "gates": "POINT", "untreated_areas": "MULTIPOLYGON",
                        "field_boundaries": "MULTIPOLYGON", "barriers": "MULTILINESTRING",
                        "keep_clear_areas": "MULTIPOLYGON", "unwalked_areas": "MULTIPOLYGON"}.items():
        if kinds.get(layer) != kind:
            problem(f"{layer}: shapes of kind {kinds.get(layer)}, expected {kind}")
    if values < 250:
        problem(f"only {values} values were compared")
    print("\n".join(problems))
    return 1 if problems else 0


sys.exit(main(*sys.argv[1:]))
