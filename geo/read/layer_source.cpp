#include "geo/read/layer_source.h"

#include <ogrsf_frmts.h>

#include <fstream>
#include <sstream>

#include "core/words/words.h"

namespace plugside {

namespace {

constexpr std::uintmax_t largest_read_whole = 64ULL * 1024 * 1024;

const char* driver_of(FileKind kind) {
    switch (kind) {
        case FileKind::geopackage: return "GPKG";
        case FileKind::kml: return "LIBKML";
        case FileKind::shapefile: return "ESRI Shapefile";
        case FileKind::flatgeobuf: return "FlatGeobuf";
        default: return "GeoJSON";
    }
}

}  // namespace

void LayerSourceCloser::operator()(GDALDataset* data) const { GDALClose(data); }

const char* expected_of_layers(FileKind kind) {
    switch (kind) {
        case FileKind::geopackage: return Words::later("a GeoPackage with layers");
        case FileKind::kml: return Words::later("a KML file with placemarks");
        case FileKind::shapefile: return Words::later("a Shapefile");
        case FileKind::flatgeobuf: return Words::later("a FlatGeobuf layer");
        default: return Words::later("GeoJSON features");
    }
}

LayerSource open_layers(const std::filesystem::path& file, FileKind kind) {
    const char* const drivers[] = {driver_of(kind), nullptr};
    const std::string name = std::filesystem::absolute(file).lexically_normal().string();
    return LayerSource(GDALDataset::Open(name.c_str(), GDAL_OF_VECTOR | GDAL_OF_READONLY, drivers, nullptr, nullptr));
}

std::optional<Refusal> refusal_before_opening(const std::filesystem::path& file, FileKind kind) {
    const std::string name = file.string();
    std::error_code error;
    const bool read_whole = kind == FileKind::geojson || kind == FileKind::kml;
    if (read_whole && std::filesystem::file_size(file, error) > largest_read_whole)
        return Refusal{
            Refusal::Code::too_large, name, "",
            kind == FileKind::kml ? Words::later("a KML file over 64 MiB") : Words::later("a GeoJSON file over 64 MiB"),
            Words::later("the ground of one field")};
    if (kind == FileKind::shapefile) {
        std::filesystem::path index = file;
        if (!std::filesystem::exists(index.replace_extension(".shx"), error))
            return Refusal{Refusal::Code::missing_file, name, "",
                           Words::tell("a Shapefile without {1} beside it", {index.filename().string()}),
                           Words::later("all its parts: .shp, .shx, .dbf and .prj")};
    }
    if (kind != FileKind::kml) return std::nullopt;
    std::ifstream stream(file, std::ios::binary);
    std::ostringstream text;
    text << stream.rdbuf();
    if (text.str().find("<!DOCTYPE") != std::string::npos || text.str().find("<!ENTITY") != std::string::npos)
        return Refusal{Refusal::Code::malformed, name, "", Words::later("a document type declaration"),
                       Words::later("a KML file without one (declared entities are never read)")};
    return std::nullopt;
}

}  // namespace plugside
