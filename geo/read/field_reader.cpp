#include "geo/read/field_reader.h"

#include "core/words/words.h"
#include "geo/read/coordinate_faults.h"
#include "geo/read/field_assembler.h"
#include "geo/read/field_extent.h"
#include "geo/read/field_files.h"
#include "geo/read/note_corrections.h"

namespace plugside {

namespace {

tl::expected<FieldAssembler, Refusal> assembled(FieldSurvey field, std::vector<GeographicFile> files,
                                                std::vector<CoordinateFault> faults, const Progress& progress) {
    FieldAssembler assembler(std::move(field), files, std::move(faults));
    for (GeographicFile& file : files) {
        if (progress.stopped())
            return tl::unexpected(Refusal{Refusal::Code::stopped, file.file, "", Words::later("a request to stop"), ""});
        assembler.add(std::move(file));
    }
    return assembler;
}

// The field's own plane where it still serves; what would be left out of a try that fails must not be lost.
tl::expected<LocalFrame, Refusal> kept_frame(const LocalFrame& plane, std::vector<GeographicFile>& files) {
    std::vector<GeographicFile> tried = files;
    if (!check_reach(tried, plane.centre())) return frame_of(files);
    files = std::move(tried);
    return plane;
}

bool holds_nothing(const Survey& survey) {
    return survey.walks.empty() && survey.mounds.empty() && survey.ground == Ground{};
}

// Places that a new file's coordinates are compared with: all marks in use and some of each line.
KnownPlaces places_of(const FieldSurvey& field) {
    KnownPlaces known;
    const auto add = [&](LocalPoint place) { known.places.push_back(field.frame.to_geographic(place)); };
    for (const Mound& mound : field.survey.mounds) add(mound.plug);
    for (const Polygon& part : field.survey.ground.boundary.parts)
        for (const LocalPoint vertex : part.outer.vertices) add(vertex);
    constexpr std::size_t places_a_segment = 50;
    for (const Walk& walk : field.survey.walks)
        for (const TrackSegment& segment : walk.segments)
            for (std::size_t i = 0; i < segment.size(); i += segment.size() / places_a_segment + 1) add(segment[i].at);
    return known;
}

}  // namespace

tl::expected<FieldSurvey, Refusal> read_field(const std::vector<std::filesystem::path>& paths, const ReadChoices& choices,
                                              const Progress& progress) {
    auto files = read_files(paths, choices, progress);
    if (!files) return tl::unexpected(files.error());
    auto faults = mend_coordinates(*files);
    auto frame = choices.plane ? kept_frame(*choices.plane, *files) : frame_of(*files);
    if (!frame) return tl::unexpected(frame.error());
    FieldSurvey empty;
    empty.frame = std::move(*frame);
    auto assembler = assembled(std::move(empty), std::move(*files), std::move(faults), progress);
    if (!assembler) return tl::unexpected(assembler.error());
    return assembler->field(paths.front().stem().string());
}

tl::expected<FieldSurvey, Refusal> read_field(const std::vector<std::filesystem::path>& paths, const Progress& progress) {
    return read_field(paths, ReadChoices{}, progress);
}

tl::expected<FieldSurvey, Refusal> add_to_field(const FieldSurvey& field, const std::vector<std::filesystem::path>& paths,
                                                const ReadChoices& choices, const Progress& progress) {
    if (holds_nothing(field.survey)) return read_field(paths, choices, progress);
    auto files = read_files(paths, choices, progress);
    if (!files) return tl::unexpected(files.error());
    auto faults = mend_coordinates(*files, places_of(field));
    if (auto reached = check_reach(*files, field.frame.centre()); !reached) return tl::unexpected(reached.error());
    const std::uint64_t revision = field.survey.revision;
    auto assembler = assembled(field, std::move(*files), std::move(faults), progress);
    if (!assembler) return tl::unexpected(assembler.error());
    FieldSurvey result = assembler->field(field.field_name);
    const bool anything_new = assembler->anything_new();
    result.survey.revision = anything_new ? std::max(revision, result.survey.revision) + 1 : revision;
    obey_note_rules(result.survey, result.frame);
    return result;
}

}  // namespace plugside
