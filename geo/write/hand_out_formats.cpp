#include "geo/write/hand_out_formats.h"

#include <algorithm>
#include <cassert>

#include "core/words/words.h"
#include "geo/write/csv_files.h"
#include "geo/write/geopackage_layers.h"
#include "geo/write/map_files.h"
#include "geo/write/shapefiles.h"
#include "geo/write/shown_layers.h"
#include "geo/write/survey_layers.h"
#include "geo/write/waypoints.h"

namespace plugside {

namespace {

using Files = tl::expected<std::vector<std::filesystem::path>, Refusal>;

Files one_file(const std::filesystem::path& file, const tl::expected<void, Refusal>& written) {
    if (!written) return tl::unexpected(written.error());
    return std::vector<std::filesystem::path>{file};
}

// The tables of a person with a spreadsheet: the points, and how the work is done.
std::vector<LayerContent> tables(const FieldSurvey& field, const Plan& plan, LengthUnits units, PrivateRows private_rows) {
    std::vector<LayerContent> points = shown_layers(field, plan, units, private_rows);
    points.resize(3);  // set_points, probe_points, mounds
    points.push_back(with_plain_values(work_layer(field.survey, private_rows)));
    return points;
}

Files shapefiles(const FieldSurvey& field, const std::vector<LayerContent>& layers, const std::filesystem::path& file,
                 const Progress& progress, std::vector<std::string>& cut) {
    auto written = write_shapefiles(layers, latest_time(field.survey), file, progress);
    if (!written) return tl::unexpected(written.error());
    if (written->texts_cut == 1)
        cut.push_back(Words::tell("1 text was cut at 254 bytes."));
    else if (written->texts_cut > 1)
        cut.push_back(Words::tell("{1} texts were cut at 254 bytes.", {std::to_string(written->texts_cut)}));
    return std::move(written->files);
}

const std::vector<const char*>& csv_endings() {
    static const std::vector<const char*> endings{".csv"};
    return endings;
}

const std::vector<const char*>& shapefile_endings() {
    static const std::vector<const char*> endings{".cpg", ".dbf", ".prj", ".shp", ".shx"};
    return endings;
}

std::string lower(std::string text) {
    for (char& c : text)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return text;
}

void say_of_waypoints(std::vector<std::string>& said) {
    said.push_back(
        Words::tell("Only the sets that are not dropped, each with its name, chance and instruction: no animals' systems, "
                    "runs, mounds or ground."));
    said.push_back(Words::tell("Every line end within a text becomes a space."));
}

void say_of_shapefiles(std::vector<std::string>& said) {
    said.push_back(
        Words::tell("Names of columns have ten characters at most: the legend beside the files says what each stands for."));
    said.push_back(Words::tell("Texts are cut at 254 bytes."));
    said.push_back(Words::tell("No times of day: they stand as texts, in UTC."));
    said.push_back(Words::tell("A text that is missing cannot be told from an empty one."));
}

}  // namespace

const char* format_name(HandOutFormat format) {
    switch (format) {
        case HandOutFormat::geopackage: return "geopackage";
        case HandOutFormat::gpx_waypoints: return "gpx-waypoints";
        case HandOutFormat::gpx_route: return "gpx-route";
        case HandOutFormat::kml: return "kml";
        case HandOutFormat::geojson: return "geojson";
        case HandOutFormat::shapefile: return "shapefile";
        case HandOutFormat::csv: return "csv";
    }
    return "";
}

const char* ending_of(HandOutFormat format) {
    switch (format) {
        case HandOutFormat::geopackage: return ".gpkg";
        case HandOutFormat::gpx_waypoints:
        case HandOutFormat::gpx_route: return ".gpx";
        case HandOutFormat::kml: return ".kml";
        case HandOutFormat::geojson: return ".geojson";
        case HandOutFormat::shapefile: return ".shp";
        case HandOutFormat::csv: return ".csv";
    }
    return "";
}

std::optional<HandOutFormat> format_of_ending(const std::filesystem::path& file) {
    const std::string ending = lower(file.extension().string());
    if (ending == ".json") return HandOutFormat::geojson;
    for (const HandOutFormat format : all_hand_out_formats)
        if (ending == ending_of(format)) return format;
    return std::nullopt;
}

std::vector<std::filesystem::path> files_of(HandOutFormat format, const std::filesystem::path& file) {
    std::vector<LayerContent> layers;
    if (format == HandOutFormat::shapefile) layers = shown_layers({}, {}, LengthUnits::metres, PrivateRows::left_out);
    if (format == HandOutFormat::csv) layers = tables({}, {}, LengthUnits::metres, PrivateRows::left_out);
    if (layers.empty()) return {file};
    const auto beside = [&](const std::string& name) { return file.parent_path() / (file.stem().string() + "_" + name); };
    std::vector<std::filesystem::path> files;
    for (const LayerContent& layer : layers)
        for (const char* ending : format == HandOutFormat::csv ? csv_endings() : shapefile_endings())
            files.push_back(beside(layer.name + std::string(ending)));
    if (format == HandOutFormat::shapefile) files.push_back(beside("legend.txt"));
    std::sort(files.begin(), files.end());
    return files;
}

std::vector<std::string> limits_of(HandOutFormat format) {
    std::vector<std::string> said;
    switch (format) {
        case HandOutFormat::geopackage: break;
        case HandOutFormat::gpx_waypoints:
        case HandOutFormat::gpx_route: say_of_waypoints(said); break;
        case HandOutFormat::kml:
        case HandOutFormat::geojson:
            said.push_back(Words::tell("Times stand as texts, in UTC."));
            said.push_back(Words::tell("Conditions, method and label are not in it."));
            break;
        case HandOutFormat::shapefile:
            say_of_shapefiles(said);
            said.push_back(Words::tell("Conditions, method and label are not in it."));
            break;
        case HandOutFormat::csv:
            said.push_back(Words::tell("Only sets, probe points, mounds and how the work is done: no lines and no areas."));
            said.push_back(Words::tell(
                "A text that a spreadsheet would take for a formula begins with an apostrophe that is not part of it."));
            break;
    }
    return said;
}

std::vector<std::string> true_of_all(PrivateRows private_rows) {
    if (private_rows == PrivateRows::included)
        return {Words::tell("Names of people, licence numbers, reasons and notes are in what can carry them.")};
    return {Words::tell("Names of people, licence numbers and reasons are left out, and notes in all but the GeoPackage.")};
}

std::vector<std::string> not_carried_by(HandOutFormat format, PrivateRows private_rows) {
    std::vector<std::string> said = limits_of(format);
    if (format != HandOutFormat::geopackage)
        said.push_back(Words::tell("Only the GeoPackage gives your decisions back when it is opened again."));
    if (private_rows == PrivateRows::left_out)
        said.push_back(format == HandOutFormat::geopackage
                           ? Words::tell("Names of people, licence numbers and reasons are left out.")
                           : Words::tell("Names of people, licence numbers, reasons and notes are left out."));
    return said;
}

tl::expected<HandedOut, Refusal> write_as(HandOutFormat format, const FieldSurvey& field, const Plan& plan,
                                          const std::filesystem::path& file, LengthUnits units, PrivateRows private_rows,
                                          const Progress& progress) {
    assert(plan.revision == field.survey.revision && plan.mounds.size() == field.survey.mounds.size());
    if (progress.stopped())
        return tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""});
    HandedOut result{{}, not_carried_by(format, private_rows), {}};
    const auto layers = [&] { return shown_layers(field, plan, units, private_rows); };
    const auto write = [&]() -> Files {
        switch (format) {
            case HandOutFormat::geopackage:
                return one_file(file, write_geopackage(field, plan, file, units, progress, private_rows));
            case HandOutFormat::gpx_waypoints: return one_file(file, write_waypoints(field, plan, file, units, progress));
            case HandOutFormat::gpx_route: return one_file(file, write_set_route(field, plan, file, units, progress));
            case HandOutFormat::kml: return one_file(file, write_kml(layers(), field.field_name, file, progress));
            case HandOutFormat::geojson: return one_file(file, write_geojson(layers(), field.field_name, file, progress));
            case HandOutFormat::shapefile: return shapefiles(field, layers(), file, progress, result.of_this_plan);
            case HandOutFormat::csv: return write_csv(tables(field, plan, units, private_rows), file, progress);
        }
        return std::vector<std::filesystem::path>{};
    };
    auto files = write();
    if (!files) return tl::unexpected(files.error());
    result.files = std::move(*files);
    result.not_carried.insert(result.not_carried.end(), result.of_this_plan.begin(), result.of_this_plan.end());
    return result;
}

}  // namespace plugside
