#include "geo/read/field_files.h"

#include <algorithm>
#include <set>

#include "core/words/words.h"
#include "geo/read/finding_list.h"
#include "geo/read/gpx.h"
#include "geo/read/gpx_marks.h"
#include "geo/read/input_file.h"
#include "geo/read/notes_grammar.h"
#include "geo/read/photo.h"
#include "geo/read/vector_layers.h"

namespace plugside {

namespace {

bool carries_a_note(const GpxWaypoint& point) {
    for (const std::string* text : {&point.comment, &point.description}) {
        const NoteReading note = read_note(*text);
        if (note.fan_degrees || note.magnetic_fan_degrees || note.freshness || note.kind) return true;
    }
    return false;
}

void take_route_points(GpxFile& gpx, FindingList& findings) {
    std::size_t taken = 0;
    for (GpxWaypoint& point : gpx.route_points) {
        if (!carries_a_note(point)) continue;
        gpx.waypoints.push_back(std::move(point));
        ++taken;
    }
    const std::size_t left = gpx.route_points.size() - taken;
    const auto points = [](std::size_t count) {
        const std::string number = std::to_string(count);
        return count == 1 ? Words::tell("{1} point", {number}) : Words::tell("{1} points", {number});
    };
    if (taken > 0)
        findings.add("", Words::tell("taken as marks, as they carry notes of mounds: {1} of a route", {points(taken)}));
    if (left > 0)
        findings.add("", Words::tell("not used, as they carry no note of a mound: {1} of a route", {points(left)}));
}

tl::expected<GeographicFile, Refusal> read_walk(const std::filesystem::path& path, const Progress& progress) {
    auto gpx = read_gpx(path, progress);
    if (!gpx) return tl::unexpected(gpx.error());
    const std::string source = path.filename().string();
    GeographicFile file;
    file.file = path.string();
    file.title = gpx->title;
    file.findings = std::move(gpx->findings);
    FindingList findings(source);
    take_route_points(*gpx, findings);
    GeographicWalk walk{source, std::move(gpx->segments), marks_of(*gpx, file.file, findings)};
    if (walk.marks.empty()) findings.add("", Words::later("the file has no waypoints, so no mounds"));
    file.walks.push_back(std::move(walk));
    for (ReadFinding& finding : findings.listed()) file.findings.push_back(std::move(finding));
    return file;
}

tl::expected<GeographicFile, Refusal> read_by_guess(const std::filesystem::path& path, const ReadChoices& choices,
                                                    const Progress& progress) {
    const auto chosen = choices.tables.find(path);
    if (chosen != choices.tables.end()) return read_table(path, chosen->second, progress);
    const auto guess = guess_table(path);
    if (!guess) return tl::unexpected(guess.error());
    return read_table(path, *guess, progress);
}

tl::expected<GeographicFile, Refusal> read_file(const std::filesystem::path& path, FileKind kind, const ReadChoices& choices,
                                                const Progress& progress) {
    switch (kind) {
        case FileKind::xml: return read_walk(path, progress);
        case FileKind::table: return read_by_guess(path, choices, progress);
        case FileKind::photograph: return read_photograph(path);
        default: break;
    }
    const auto chosen = choices.layers.find(path);
    return read_vector_layers(path, kind, chosen == choices.layers.end() ? std::vector<LayerGuess>{} : chosen->second,
                              progress);
}

// Photographs' marks that no other mark names as its picture, in one walk in place of the first photograph's.
void gather_photographs(std::vector<GeographicFile>& files) {
    const auto is_photograph = [](const GeographicFile& file) {
        return file.walks.size() == 1 && file.walks.front().source == photographs_source;
    };
    std::set<std::string> named;
    for (const GeographicFile& file : files)
        for (const GeographicWalk& walk : file.walks)
            for (const GeographicMark& mark : walk.marks)
                if (mark.mound.picture && !is_photograph(file)) named.insert(*mark.mound.picture);
    GeographicFile* first = nullptr;
    for (GeographicFile& file : files) {
        if (!is_photograph(file)) continue;
        auto& marks = file.walks.front().marks;
        if (!marks.empty() && named.contains(*marks.front().mound.picture)) {
            file.findings.push_back(
                {*marks.front().mound.picture, "",
                 Words::later("the photograph belongs to a mark that names it; it is no mark of its own")});
            marks.clear();
        }
        if (first == nullptr) {
            first = &file;
            continue;
        }
        for (GeographicMark& mark : marks) first->walks.front().marks.push_back(std::move(mark));
        first->findings.insert(first->findings.end(), file.findings.begin(), file.findings.end());
        file.gathered = true;
    }
    std::erase_if(files, [](const GeographicFile& file) { return file.gathered; });
}

}  // namespace

tl::expected<std::vector<GeographicFile>, Refusal> read_files(const std::vector<std::filesystem::path>& paths,
                                                              const ReadChoices& choices, const Progress& progress) {
    if (paths.empty())
        return tl::unexpected(Refusal{Refusal::Code::nothing_to_plan, "", "", Words::later("no file"),
                                      Words::later("a walk's file at least")});
    std::vector<GeographicFile> files;
    for (std::size_t i = 0; i < paths.size(); ++i) {
        if (progress.stopped())
            return tl::unexpected(
                Refusal{Refusal::Code::stopped, paths[i].string(), "", Words::later("a request to stop"), ""});
        const auto share = [&](double of_file) {
            return (static_cast<double>(i) + of_file) / static_cast<double>(paths.size());
        };
        const Progress of_this{progress.stop,
                               [&](double done, std::string_view doing) { progress.say(share(done), doing); }};
        const auto kind = kind_of_file(paths[i]);
        if (!kind) return tl::unexpected(kind.error());
        if (*kind == FileKind::shapefile_part) {
            std::filesystem::path whole = paths[i];
            if (std::find(paths.begin(), paths.end(), whole.replace_extension(".shp")) != paths.end()) continue;
            return tl::unexpected(Refusal{Refusal::Code::wrong_format, paths[i].string(), "",
                                          Words::later("a part of a Shapefile"),
                                          Words::tell("its main file {1}", {whole.filename().string()})});
        }
        auto file = read_file(paths[i], *kind, choices, of_this);
        if (!file) return tl::unexpected(file.error());
        files.push_back(std::move(*file));
    }
    gather_photographs(files);
    return files;
}

}  // namespace plugside
