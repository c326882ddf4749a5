#!/usr/bin/python3
"""Writes one made-up walk as it would come home: parts of it in files of different kinds, each untidy in its own way.

    messy_walk.py WALK.gpx OUT    WALK.gpx: a made-up walk of the sample projects, whose marks are dealt out

Eastings and northings are computed by the projection library's own Python, the pictures' EXIF by exiv2.
"""
import json
import os
import subprocess
import sys
import xml.etree.ElementTree as ET

from osgeo import gdal, ogr, osr

gdal.UseExceptions()
ogr.UseExceptions()
osr.UseExceptions()
GPX = "{http://www.topografix.com/GPX/1/1}"


def marks_of(path):
    marks = []
    for point in ET.parse(path).getroot().iter(GPX + "wpt"):
        said = {child.tag.replace(GPX, ""): child.text for child in point}
        marks.append((said["name"], float(point.get("lat")), float(point.get("lon")), said.get("cmt", ""), said.get("time", "")))
    return marks


def fan_and_rest(note):
    words = note.split()
    if len(words) > 1 and words[0] == "fan" and words[1].isdigit():
        return words[1], " ".join(words[2:])
    return "", note


def write(path, text, encoding="utf-8"):
    with open(path, "w", encoding=encoding, newline="") as file:
        file.write(text)


def receiver_gpx(path, marks, version):
    lines = ['<?xml version="1.0"?>', f'<gpx version="{version}" creator="a receiver" '
             f'xmlns="http://www.topografix.com/GPX/{version.replace(".", "/")}">']
    for name, lat, lon, note, time in marks:
        lines.append(f'<wpt lat="{lat:.8f}" lon="{lon:.8f}"><time>{time}</time><name>{name}</name><cmt>{note}</cmt></wpt>')
    lines.append("<trk><trkseg>")
    lines += [f'<trkpt lat="{lat:.8f}" lon="{lon:.8f}"><time>{time}</time></trkpt>' for _, lat, lon, _, time in marks]
    lines += ["</trkseg></trk>", "</gpx>"]
    write(path, "\n".join(lines))


def phone_table(path, marks):
    rows = ["Nombre;Latitud;Longitud;Abanico;Observación;Hora"]
    for name, lat, lon, note, time in marks:
        fan, rest = fan_and_rest(note)
        rows.append(";".join([name, f"{lat:.7f}".replace(".", ","), f"{lon:.7f}".replace(".", ","), fan, rest, time]))
    write(path, "\r\n".join(rows) + "\r\n", "latin-1")


def to_zone(marks):
    """Eastings and northings in the UTM zone of the marks."""
    zone = int((marks[0][2] + 180.0) // 6.0) + 1
    earth, plane = osr.SpatialReference(), osr.SpatialReference()
    earth.ImportFromEPSG(4326)
    plane.ImportFromEPSG(32600 + zone)
    for system in (earth, plane):
        system.SetAxisMappingStrategy(osr.OAMS_TRADITIONAL_GIS_ORDER)
    way = osr.CoordinateTransformation(earth, plane)
    return [way.TransformPoint(lon, lat)[:2] for _, lat, lon, _, _ in marks]


def metres_table(path, marks):
    rows = ["Mark\tX\tY\tThrown\tRemarks"]
    for (name, _, _, note, _), (east, north) in zip(marks, to_zone(marks)):
        fan, rest = fan_and_rest(note)
        rows.append(f"{name}\t{east:.2f}\t{north:.2f}\t{fan}\t{rest}")
    write(path, "\n".join(rows) + "\n")


def shapefile_without_system(path, marks):
    data = ogr.GetDriverByName("ESRI Shapefile").CreateDataSource(path)
    layer = data.CreateLayer("heaps", None, ogr.wkbPoint)
    layer.CreateField(ogr.FieldDefn("ID", ogr.OFTString))
    layer.CreateField(ogr.FieldDefn("AZ_SOIL", ogr.OFTReal))
    layer.CreateField(ogr.FieldDefn("NOTES", ogr.OFTString))
    for (name, _, _, note, _), (east, north) in zip(marks, to_zone(marks)):
        fan, rest = fan_and_rest(note)
        feature = ogr.Feature(layer.GetLayerDefn())
        feature.SetField("ID", name)
        if fan:
            feature.SetField("AZ_SOIL", float(fan))
        feature.SetField("NOTES", rest)
        feature.SetGeometry(ogr.CreateGeometryFromWkt(f"POINT ({east} {north})"))
        layer.CreateFeature(feature)


def photographs(folder, marks):
    for number, (_, lat, lon, note, _) in enumerate(marks, 1):
        path = os.path.join(folder, f"IMG_{number:04}.jpg")
        gdal.GetDriverByName("JPEG").CreateCopy(path, gdal.GetDriverByName("MEM").Create("", 32, 24, 3))
        settings = [f"GPSInfo.GPSLatitude {round(abs(lat) * 1e7)}/10000000 0/1 0/1", f"GPSInfo.GPSLatitudeRef {'NS'[lat < 0]}",
                    f"GPSInfo.GPSLongitude {round(abs(lon) * 1e7)}/10000000 0/1 0/1",
                    f"GPSInfo.GPSLongitudeRef {'EW'[lon < 0]}", f"Image.ImageDescription {note}"]
        commands = [word for setting in settings for word in ("-M", "set Exif." + setting)]
        subprocess.run(["exiv2", *commands, path], check=True)


def ring_about(marks, margin):
    west, east = min(m[2] for m in marks) - margin, max(m[2] for m in marks) + margin
    south, north = min(m[1] for m in marks) - margin, max(m[1] for m in marks) + margin
    return [[west, south], [east, south], [east, north], [west, north], [west, south]]


def boundary_geojson(path, marks):
    shape = {"type": "Polygon", "coordinates": [ring_about(marks, 0.0003)]}
    write(path, json.dumps({"type": "FeatureCollection", "name": "paddock",
                            "features": [{"type": "Feature", "properties": {"name": "Creek paddock"}, "geometry": shape}]}))


def well_kml(path, marks):
    _, lat, lon, _, _ = marks[len(marks) // 2]
    ring = " ".join(f"{x:.7f},{y:.7f}" for x, y in ring_about([("", lat, lon)], 0.00004))
    write(path, '<?xml version="1.0"?>\n<kml xmlns="http://www.opengis.net/kml/2.2"><Document><name>well</name><Placemark>'
                f"<name>old well</name><Polygon><outerBoundaryIs><LinearRing><coordinates>{ring}</coordinates></LinearRing>"
                "</outerBoundaryIs></Polygon></Placemark></Document></kml>\n")


def main(walk, out):
    os.makedirs(out, exist_ok=True)
    marks = marks_of(walk)
    into = lambda name: os.path.join(out, name)
    receiver_gpx(into("north-half.gpx"), marks[:50], "1.1")
    receiver_gpx(into("second-receiver.gpx"), marks[50:80], "1.0")
    phone_table(into("phone.csv"), marks[80:100])
    metres_table(into("from-the-office.txt"), marks[100:115])
    shapefile_without_system(into("heaps.shp"), marks[115:125])
    photographs(out, marks[125:128])
    boundary_geojson(into("paddock.geojson"), marks)
    well_kml(into("well.kml"), marks)
    with open(into("north-half.gpx"), encoding="utf-8") as whole:
        write(into("cut-off.gpx"), whole.read()[:900])


if __name__ == "__main__":
    if len(sys.argv) != 3:
        sys.exit(__doc__)
    main(*sys.argv[1:])
