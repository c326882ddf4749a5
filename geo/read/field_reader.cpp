#include "geo/read/field_reader.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "geo/read/field_extent.h"
#include "geo/read/finding_list.h"
#include "geo/read/gpx.h"
#include "geo/read/gpx_marks.h"
#include "geo/read/input_file.h"
#include "geo/read/vector_layers.h"

namespace plugside {

namespace {

tl::expected<GeographicFile, Refusal> read_walk(const std::filesystem::path& path, const Progress& progress) {
    auto gpx = read_gpx(path, progress);
    if (!gpx) return tl::unexpected(gpx.error());
    const std::string source = path.filename().string();
    GeographicFile file;
    file.file = path.string();
    file.title = gpx->title;
    file.findings = std::move(gpx->findings);
    FindingList findings(source);
    GeographicWalk walk{source, std::move(gpx->segments), marks_of(*gpx, file.file, findings)};
    if (walk.marks.empty()) findings.add("", "the file has no waypoints, so no mounds");
    file.walks.push_back(std::move(walk));
    for (ReadFinding& finding : findings.listed()) file.findings.push_back(std::move(finding));
    return file;
}

tl::expected<GeographicFile, Refusal> read_file(const std::filesystem::path& path, const Progress& progress) {
    const auto kind = kind_of_file(path);
    if (!kind) return tl::unexpected(kind.error());
    return *kind == FileKind::xml ? read_walk(path, progress) : read_vector_layers(path, *kind, {}, progress);
}

// Gives every mark a name of its own and says where it had to change one.
class Names {
public:
    // Names that walkers gave are not handed to nameless marks.
    void reserve(const std::string& name) { given_.insert(name); }

    // The name to use for a mark that calls itself `name`.
    std::string unique(const std::string& name, const GeographicMark& mark, FindingList& findings) {
        if (name.empty()) {
            findings.add(mark.place, "the mark has no name; such marks are called M001, M002 and so on, in order");
            return numbered();
        }
        if (used_.insert(name).second) return name;
        std::size_t& last = repeats_.try_emplace(name, 1).first->second;
        std::string other;
        do other = name + " (" + std::to_string(++last) + ")";
        while (!used_.insert(other).second);
        findings.add(mark.place, "the name " + quoted_for_display(name) + " is used before; the mark is called " +
                                     quoted_for_display(other));
        return other;
    }

private:
    std::string numbered() {
        for (;;) {
            const std::string digits = std::to_string(++nameless_);
            std::string name = "M";
            name.append(digits.size() < 3 ? 3 - digits.size() : 0, '0').append(digits);
            if (!given_.contains(name) && used_.insert(name).second) return name;
        }
    }

    std::unordered_set<std::string> given_;
    std::unordered_set<std::string> used_;
    std::unordered_map<std::string, std::size_t> repeats_;
    std::size_t nameless_ = 0;
};

class Assembler {
public:
    Assembler(LocalFrame frame, const std::vector<GeographicFile>& files) {
        field_.frame = std::move(frame);
        for (const GeographicFile& file : files)
            for (const GeographicWalk& walk : file.walks)
                for (const GeographicMark& mark : walk.marks) names_.reserve(mark.mound.name);
    }

    void add(GeographicFile file) {
        FindingList findings(std::filesystem::path(file.file).filename().string());
        std::unordered_map<std::string, std::string> renamed;
        for (GeographicWalk& walk : file.walks) add_walk(walk, renamed, findings);
        add_ground(file.ground);
        for (SetDecision& decision : file.decisions) add_decision(std::move(decision), renamed);
        field_.survey.revision = std::max(field_.survey.revision, file.revision);
        for (ReadFinding& finding : file.findings) field_.findings.push_back(std::move(finding));
        for (ReadFinding& finding : findings.listed()) field_.findings.push_back(std::move(finding));
        if (field_.field_name.empty()) field_.field_name = file.title;
    }

    FieldSurvey field(const std::filesystem::path& first_file) {
        if (field_.field_name.empty()) field_.field_name = first_file.stem().string();
        return std::move(field_);
    }

private:
    void add_walk(GeographicWalk& walk, std::unordered_map<std::string, std::string>& renamed, FindingList& findings) {
        Survey& survey = field_.survey;
        Walk local{"walk " + std::to_string(survey.walks.size() + 1), walk.source, {}};
        for (const auto& segment : walk.segments) {
            TrackSegment points;
            points.reserve(segment.size());
            for (const GeographicTrackPoint& point : segment)
                points.push_back({field_.frame.to_local(point.at), point.time});
            local.segments.push_back(std::move(points));
        }
        for (GeographicMark& mark : walk.marks) {
            const std::string given = mark.mound.name;
            Mound mound = std::move(mark.mound);
            mound.name = names_.unique(given, mark, findings);
            if (mound.name != given) renamed.emplace(given, mound.name);
            mound.plug = field_.frame.to_local(mark.at);
            // The named edge: a note tells degrees from true north, core reckons on the plane.
            if (mark.fan_degrees) mound.fan = field_.frame.plane_bearing(Bearing::degrees(*mark.fan_degrees), mound.plug);
            mound.walk = survey.walks.size();
            survey.mounds.push_back(std::move(mound));
        }
        survey.walks.push_back(std::move(local));
    }

    void add_ground(const GeographicGround& ground) {
        Ground& all = field_.survey.ground;
        for (const GeographicPolygon& part : ground.boundary) all.boundary.parts.push_back(to_local(field_.frame, part));
        for (const GeographicBarrier& barrier : ground.barriers)
            all.barriers.push_back({barrier.name, to_local(field_.frame, barrier.line)});
        for (const GeographicKeepClear& area : ground.keep_clear)
            all.keep_clear.push_back({area.name, area.reason, area.kind, to_local(field_.frame, area.area)});
    }

    // A decision names marks as its own file does.
    void add_decision(SetDecision decision, const std::unordered_map<std::string, std::string>& renamed) {
        for (std::string* name : {&decision.probe.from_mound, &decision.probe.to_mound})
            if (const auto found = renamed.find(*name); !name->empty() && found != renamed.end()) *name = found->second;
        auto& decisions = field_.survey.decisions;
        std::erase_if(decisions, [&](const SetDecision& earlier) { return earlier.probe == decision.probe; });
        decisions.push_back(std::move(decision));
    }

    FieldSurvey field_;
    Names names_;
};

}  // namespace

tl::expected<FieldSurvey, Refusal> read_field(const std::vector<std::filesystem::path>& paths, const Progress& progress) {
    if (paths.empty())
        return tl::unexpected(Refusal{Refusal::Code::nothing_to_plan, "", "", "no file", "a walk's GPX file at least"});
    std::vector<GeographicFile> files;
    for (std::size_t i = 0; i < paths.size(); ++i) {
        const auto share = [&](double of_file) {
            return (static_cast<double>(i) + of_file) / static_cast<double>(paths.size());
        };
        const Progress of_this{progress.stop,
                               [&](double done, std::string_view doing) { progress.say(share(done), doing); }};
        auto file = read_file(paths[i], of_this);
        if (!file) return tl::unexpected(file.error());
        files.push_back(std::move(*file));
    }
    auto frame = frame_of(files);
    if (!frame) return tl::unexpected(frame.error());
    Assembler assembler(std::move(*frame), files);
    for (GeographicFile& file : files) {
        if (progress.stopped())
            return tl::unexpected(Refusal{Refusal::Code::stopped, file.file, "", "a request to stop", ""});
        assembler.add(std::move(file));
    }
    return assembler.field(paths.front());
}

}  // namespace plugside
