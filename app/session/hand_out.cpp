#include "app/session/hand_out.h"

#include <algorithm>

#include "app/sheets/sheet_files.h"
#include "core/words/words.h"

namespace plugside {

namespace {

Progress part_of(const Progress& progress, double from, double to) {
    Progress part{progress.stop, {}};
    if (progress.report)
        part.report = [progress, from, to](double share, std::string_view doing) {
            progress.report(from + (to - from) * share, doing);
        };
    return part;
}

// Writes one file after the other until one fails, each with its share of the progress.
class Writing {
public:
    Writing(StagedFiles& into, const Progress& progress, std::size_t files)
        : into_(into), progress_(progress), files_(static_cast<double>(files)) {}

    template <class Writer>
    void write(const std::filesystem::path& file, const Writer& writer) {
        if (!done_ || file.empty()) return;
        const Progress part = part_of(progress_, written_ / files_, (written_ + 1.0) / files_);
        written_ += 1.0;
        done_ =
            part.stopped()
                ? tl::unexpected(Refusal{Refusal::Code::stopped, file.string(), "", Words::later("a request to stop"), ""})
                : into_.write(file, [&](const std::filesystem::path& hidden) { return writer(hidden, part); });
    }
    [[nodiscard]] const tl::expected<void, Refusal>& done() const { return done_; }

private:
    StagedFiles& into_;
    const Progress& progress_;
    double files_;
    double written_ = 0.0;
    tl::expected<void, Refusal> done_;
};

}  // namespace

std::filesystem::path HandOut::file_of(HandOutFormat format) const {
    const auto found =
        std::find_if(files.begin(), files.end(), [&](const HandOutFile& one) { return one.format == format; });
    return found == files.end() ? std::filesystem::path() : found->file;
}

std::vector<std::filesystem::path> HandOut::told_names() const {
    std::vector<std::filesystem::path> names;
    for (const auto& [format, file] : files)
        names.push_back(files_of(format, file).size() == 1
                            ? file
                            : file.parent_path() / (file.stem().string() + "_*" + ending_of(format)));
    for (const std::filesystem::path& file : {sheets, phone})
        if (!file.empty()) names.push_back(file);
    return names;
}

tl::expected<std::vector<std::string>, Refusal> stage_hand_out(const HandOut& what, const FieldSurvey& field,
                                                               const Plan& planned, UtcTime now, StagedFiles& into,
                                                               const Progress& progress) {
    const Plan ordered = what.tours ? in_order_of(planned, *what.tours) : Plan();
    const Plan& plan = what.tours ? ordered : planned;
    std::vector<std::string> remarks;
    Writing writing(into, progress, what.files.size() + 2);
    for (const auto& [format, file] : what.files)
        writing.write(file, [&, as = format](const auto& hidden, const Progress& part) -> tl::expected<void, Refusal> {
            auto written = write_as(as, field, plan, hidden, what.units, what.private_rows, part);
            if (!written) return tl::unexpected(written.error());
            remarks.insert(remarks.end(), written->of_this_plan.begin(), written->of_this_plan.end());
            return {};
        });
    SheetInput sheets{field, plan, what.units, what.sheet_language, what.paper, {}, now};
    if (!(*field.survey.work == WorkOrder{})) sheets.work = *field.survey.work;
    writing.write(what.sheets, [&](const auto& hidden, const Progress& part) { return write_sheets(sheets, hidden, part); });
    writing.write(what.phone,
                  [&](const auto& hidden, const Progress& part) { return write_phone_page(sheets, hidden, part); });
    if (!writing.done()) return tl::unexpected(writing.done().error());
    return remarks;
}

}  // namespace plugside
