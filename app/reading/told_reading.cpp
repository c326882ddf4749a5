#include "app/reading/told_reading.h"

#include <utility>

#include "core/words/words.h"
#include "geo/read/north_of_walk.h"

namespace plugside {

namespace {

void tell_norths(FieldSurvey& field, const FileChoices& choices) {
    for (const auto& [name, north] : choices.north)
        for (std::size_t i = 0; i < field.survey.walks.size(); ++i) {
            const Walk& walk = field.survey.walks[i];
            if (!is_from(walk.source, name) || walk.bearings_from == north) continue;
            if (const auto told = tell_north(field.survey, i, field.frame, north); !told)
                field.findings.push_back({name, "", sentence(told.error())});
        }
}

}  // namespace

bool is_from(const std::string& source, const std::string& name) {
    return source == name || source.rfind(name + ", ", 0) == 0;
}

tl::expected<FieldSurvey, Refusal> read_as_told(const std::vector<std::filesystem::path>& files, const FileChoices& choices,
                                                const Progress& progress) {
    auto field = read_field(files, choices.read, progress);
    if (field) tell_norths(*field, choices);
    return field;
}

tl::expected<FieldSurvey, Refusal> add_as_told(const FieldSurvey& field, const std::vector<std::filesystem::path>& files,
                                               const FileChoices& choices, const Progress& progress) {
    auto more = add_to_field(field, files, choices.read, progress);
    if (more) tell_norths(*more, choices);
    return more;
}

tl::expected<ReadAnew, Refusal> read_anew(const FieldSurvey& field,
                                          const std::vector<std::vector<std::filesystem::path>>& steps,
                                          const FileChoices& choices, const Progress& progress) {
    ReadChoices on_its_plane = choices.read;
    on_its_plane.plane = field.frame;
    tl::expected<FieldSurvey, Refusal> again = FieldSurvey{};
    bool first = true;
    for (const auto& files : steps) {
        if (files.empty()) continue;
        again = std::exchange(first, false) ? read_field(files, on_its_plane, progress)
                                            : add_to_field(*again, files, on_its_plane, progress);
        if (!again) return tl::unexpected(again.error());
    }
    if (first)
        return tl::unexpected(Refusal{Refusal::Code::nothing_to_plan, "", "", Words::later("no file"),
                                      Words::later("a walk's file at least")});
    ReadAnew result{std::move(*again), {}};
    result.carried = carry_over(field, result.field);
    tell_norths(result.field, choices);
    return result;
}

}  // namespace plugside
