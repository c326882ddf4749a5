"""hand_out_reader.py EXPECTED FORMAT FILE [FORMAT FILE...]: reads a hand-out without the program's code and compares it with what was expected.

EXPECTED is JSON: {"sets": [{"id", "name", "lon", "lat"}...], "route": [the same, in walking order], "mounds": [{"id", "lon", "lat"}...],
"notes": whether notes of marks are wanted, "texts": {mound_id: note}}. Readers: Python's json, xml.etree, csv and sqlite3, and pyshp. Prints what
differs; exit 1 when anything does. Places within 1 cm on a sphere of 6371008.8 m.
"""
import csv
import io
import json
import math
import pathlib
import sqlite3
import struct
import sys
import xml.etree.ElementTree as xml

said = []


def check(holds, words):
    if not holds:
        said.append(words)


def metres(a, b):
    east = math.remainder(a[0] - b[0], 360.0) * math.cos(math.radians(b[1]))
    return math.hypot(east, a[1] - b[1]) * math.pi / 180 * 6371008.8


def same(what, found, wanted):
    """found and wanted: lists of (id, lon, lat), in order."""
    check([f[0] for f in found] == [w[0] for w in wanted], f"{what}: found {[f[0] for f in found]}, wanted {[w[0] for w in wanted]}")
    for f, w in zip(found, wanted):
        check(-180 <= f[1] < 180, f"{what} {w[0]}: longitude {f[1]}")
        check(metres(f[1:], w[1:]) < 0.01, f"{what} {w[0]}: {metres(f[1:], w[1:])} m off")


def wanted_of(expected, kind, key="id"):
    return [(one[key], one["lon"], one["lat"]) for one in expected[kind]]


def of_points(expected, sets, mounds, notes):
    same("set", [(s["set_id"], *s["at"]) for s in sets], wanted_of(expected, "sets"))
    check([s["name"] for s in sets] == [s["name"] for s in expected["sets"]], "names of sets")
    check(all(s["instruction"] for s in sets), "a set without an instruction")
    same("mound", [(m["mound_id"], *m["at"]) for m in mounds], wanted_of(expected, "mounds"))
    if expected["notes"]:
        check(notes == expected["texts"], f"notes {notes}, wanted {expected['texts']}")
    else:
        check(not notes, f"notes that nobody asked for: {notes}")


def twice_area(ring):
    """Of a ring of a field, across the 180th meridian too."""
    flat = [(math.remainder(x - ring[0][0], 360.0), y - ring[0][1]) for x, y in ring]
    return sum(a[0] * b[1] - b[0] * a[1] for a, b in zip(flat, flat[1:]))


def check_narrow(what, places):
    check(max(p[0] for p in places) - min(p[0] for p in places) < 1, f"{what} runs round the earth")


def check_polygon(what, rings):
    for i, ring in enumerate(rings):
        check(ring[0] == ring[-1] and len(ring) >= 4, f"{what}: a ring that does not close")
        check((twice_area(ring) > 0) == (i == 0), f"{what}: ring {i} runs the wrong way")
        check_narrow(what, ring)


def geojson(file, expected):
    whole = json.loads(pathlib.Path(file).read_bytes().decode("utf-8"))
    check(whole["type"] == "FeatureCollection" and "crs" not in whole, "no collection of RFC 7946")
    layers = {}
    for feature in whole["features"]:
        properties, shape = feature["properties"], feature["geometry"]
        check(feature["type"] == "Feature", "no feature")
        check(None not in properties.values(), "a property that says nothing")
        layers.setdefault(properties["layer"], []).append(dict(properties, at=(shape or {}).get("coordinates")))
        if shape and shape["type"] == "Polygon":
            check_polygon(properties["layer"], shape["coordinates"])
        elif shape and shape["type"] == "MultiPolygon":
            for part in shape["coordinates"]:
                check_polygon(properties["layer"], part)
        elif shape and shape["type"] == "MultiLineString":
            for part in shape["coordinates"]:
                check_narrow(properties["layer"], part)
    mounds = layers.get("mounds", [])
    of_points(expected, layers.get("set_points", []), mounds, {m["mound_id"]: m["note"] for m in mounds if "note" in m})
    for layer in expected["layers"]:
        check(layer in layers, f"no layer {layer}")


# What may stand in an element of KML, in this order: OGC 07-147r2, clauses 7 to 10 and its schema (of Feature, Container, Placemark,
# geometries, ExtendedData and Data). A list in parentheses is a choice of one, the star marks what may stand there several times.
FEATURE = ["name", "visibility", "open", "address", "phoneNumber", "Snippet", "description", "styleUrl", "Region", "ExtendedData"]
SHAPES = "Point LineString LinearRing Polygon MultiGeometry"
KML_ORDER = {
    "kml": ["Document"],
    "Document": FEATURE + ["Schema*", "Folder* Placemark*"],
    "Folder": FEATURE + ["Folder* Placemark*"],
    "Placemark": FEATURE + [SHAPES],
    "ExtendedData": ["Data*"],
    "Data": ["displayName", "value"],
    "Point": ["extrude", "altitudeMode", "coordinates"],
    "LineString": ["extrude", "tessellate", "altitudeMode", "coordinates"],
    "LinearRing": ["extrude", "tessellate", "altitudeMode", "coordinates"],
    "Polygon": ["extrude", "tessellate", "altitudeMode", "outerBoundaryIs", "innerBoundaryIs*"],
    "outerBoundaryIs": ["LinearRing"],
    "innerBoundaryIs": ["LinearRing"],
    "MultiGeometry": [" ".join(kind + "*" for kind in SHAPES.split())],
}


def check_kml_order(element):
    kind = element.tag.rpartition("}")[2]
    check(kind in KML_ORDER or len(element) == 0, f"{kind} has parts")
    check(not element.attrib or kind == "Data" and set(element.attrib) == {"name"}, f"attributes of {kind}: {element.attrib}")
    steps = [[one.rstrip("*") for one in step.split()] for step in KML_ORDER.get(kind, [])]
    many = [step.endswith("*") for step in KML_ORDER.get(kind, [])]
    at, used = 0, False
    for part in element:
        name = part.tag.rpartition("}")[2]
        place = next((i for i in range(at, len(steps)) if name in steps[i]), None)
        check(place is not None, f"{name} out of its place in {kind}")
        if place is None:
            return
        check(place > at or not used or many[at], f"{name} stands twice in {kind}")
        at, used = place, True
        check_kml_order(part)


def kml(file, expected):
    space = "{http://www.opengis.net/kml/2.2}"
    root = xml.parse(file).getroot()
    check(root.tag == space + "kml", root.tag)
    check_kml_order(root)
    for kind in ("Polygon", "LinearRing"):
        for ring in root.iter(space + kind):
            check(ring.find(space + {"Polygon": "outerBoundaryIs", "LinearRing": "coordinates"}[kind]) is not None, f"{kind} without a line")
    folders = {f.findtext(space + "name"): f for tag in ("Folder", "Document") for f in root.iter(space + tag)}
    for layer in expected["layers"]:
        check(layer in folders and folders[layer].find(f".//{space}Placemark") is not None, f"no folder {layer} in {list(folders)}")

    def points(layer):
        for mark in folders[layer].iter(space + "Placemark") if layer in folders else []:
            values = {d.get("name"): d.findtext(space + "value") for d in mark.iter(space + "Data")}
            values["at"] = tuple(map(float, mark.findtext(f"{space}Point/{space}coordinates").split(",")))[:2]
            values["name"] = mark.findtext(space + "name")
            values["instruction"] = mark.findtext(space + "description")
            yield values

    for line in root.iter(space + "coordinates"):
        check_narrow("a shape", [tuple(map(float, p.split(",")))[:2] for p in line.text.split()])
    sets = [dict(s, set_id=int(s["set_id"])) for s in points("set_points")]
    mounds = list(points("mounds"))
    check([m["name"] for m in mounds] == [m["mound_id"] for m in mounds], "names of mounds")
    of_points(expected, sets, mounds, {m["mound_id"]: m["note"] for m in mounds if m.get("note")})


def gpx(file, expected, route):
    space = "{http://www.topografix.com/GPX/1/1}"
    root = xml.parse(file).getroot()
    routes = root.findall(space + "rte")
    check(len(routes) == (1 if route else 0), f"{len(routes)} routes")
    points = routes[0].findall(space + "rtept") if route else root.findall(space + "wpt")
    found = [(p.findtext(space + "name"), float(p.get("lon")), float(p.get("lat"))) for p in points]
    same("set", found, wanted_of(expected, "route", "name"))
    check(all(p.findtext(space + "desc") for p in points), "a point without an instruction")


def shapefile(file, expected):
    import shapefile as pyshp
    stem = file[: -len(".shp")]
    legend = pathlib.Path(stem + "_legend.txt").read_text("utf-8")

    def table(layer):
        check(pathlib.Path(f"{stem}_{layer}.cpg").read_text().strip() == "UTF-8", f"{layer}: character set")
        check("WGS" in pathlib.Path(f"{stem}_{layer}.prj").read_text(), f"{layer}: reference system")
        meanings, here = {}, False
        for line in legend.splitlines():
            if line.endswith(".shp"):
                here = line == f"{pathlib.Path(stem).name}_{layer}.shp"
            elif here and line.startswith("  "):
                short, full = line.split()
                check(len(short) <= 10 and short not in meanings, f"{layer}: {short} is long or there twice")
                meanings[short] = full
        with pyshp.Reader(f"{stem}_{layer}.shp", encoding="utf-8") as reader:
            names = [field[0] for field in reader.fields[1:]]
            check(names == list(meanings), f"{layer}: columns {names}, legend {list(meanings)}")
            rows = [dict(zip(map(meanings.get, names), r.record)) for r in reader.shapeRecords()]
            for row, shape in zip(rows, reader.shapes()):
                row["at"] = tuple(shape.points[0]) if shape.points else None
                ends = list(getattr(shape, "parts", [0])[1:]) + [len(shape.points)]
                begins = list(getattr(shape, "parts", [0]))
                for begin, end in zip(begins, ends):
                    if shape.points:
                        check_narrow(layer, shape.points[begin:end])
            return rows

    for layer in expected["layers"]:
        check(len(table(layer)) > 0, f"{layer} is empty")
    mounds = table("mounds")
    of_points(expected, table("set_points"), mounds, {m["mound_id"]: m["note"] for m in mounds if m.get("note")})


def geopackage(file, expected):
    """SQLite, and the header of a geometry by OGC 12-128r17, clause 2.1.3: a point of 21 bytes of WKB behind it."""
    db = sqlite3.connect(f"file:{file}?mode=ro", uri=True)
    db.row_factory = sqlite3.Row

    def points(layer):
        for row in db.execute(f"SELECT * FROM {layer} ORDER BY fid"):
            blob = row["geom"]
            check(blob[:2] == b"GP" and struct.unpack("<i", blob[4:8])[0] == 4326, f"{layer}: no geometry in WGS 84")
            order, kind, lon, lat = struct.unpack("<BIdd", blob[-21:])
            check(order == 1 and kind == 1, f"{layer}: no point")
            yield dict(zip(row.keys(), tuple(row)), at=(lon, lat))

    same("set", [(s["set_id"], *s["at"]) for s in points("set_points")], wanted_of(expected, "sets"))
    visited = sorted((s for s in points("set_points") if s["decision"] != "dropped"), key=lambda s: s["visit_order"])
    same("set on the way", [(s["set_id"], *s["at"]) for s in visited], wanted_of(expected, "route"))
    same("mound", [(m["mound_id"], *m["at"]) for m in points("mounds")], wanted_of(expected, "mounds"))
    for layer in expected["layers"]:
        check(db.execute(f"SELECT count(*) FROM {layer}").fetchone()[0] > 0, f"{layer} is empty")


def csv_tables(file, expected):
    stem = file[: -len(".csv")]

    def table(layer):
        text = pathlib.Path(f"{stem}_{layer}.csv").read_bytes().decode("utf-8")
        check(text.endswith("\r\n"), f"{layer}: its last line does not end")
        rows = list(csv.reader(io.StringIO(text, newline=""), strict=True))
        check(all(len(row) == len(rows[0]) for row in rows), f"{layer}: rows of different lengths")
        check(not any(cell[:1] in tuple("=+@\t\r") for row in rows for cell in row if cell), f"{layer}: a cell that is a formula")
        for cell in (cell for row in rows for cell in row if cell.startswith("-")):
            float(cell)
        return [dict(zip(rows[0], (cell.removeprefix("'") for cell in row))) for row in rows[1:]]

    def placed(layer):
        return [dict(r, at=(float(r["longitude (deg, WGS 84)"]), float(r["latitude (deg, WGS 84)"]))) for r in table(layer)]

    sets = [dict(s, set_id=int(s["set_id"])) for s in placed("set_points")]
    mounds = placed("mounds")
    check(all("along (m)" in s for s in sets), "a column without its unit")
    of_points(expected, sets, mounds, {m["mound_id"]: m["note"] for m in mounds if m.get("note")})
    placed("probe_points")
    table("work_order")


wanted = json.loads(pathlib.Path(sys.argv[1]).read_text("utf-8"))
readers = {"geojson": geojson, "kml": kml, "shapefile": shapefile, "csv": csv_tables, "geopackage": geopackage,
           "gpx-waypoints": lambda f, e: gpx(f, e, False), "gpx-route": lambda f, e: gpx(f, e, True)}
for kind, given in zip(sys.argv[2::2], sys.argv[3::2], strict=True):
    before = len(said)
    readers[kind](given, wanted)
    said[before:] = [f"{kind}: {words}" for words in said[before:]]
print("\n".join(said))
sys.exit(1 if said else 0)
