#include "app/batch/work_files.h"

#include <fstream>
#include <iterator>
#include <set>

#include "core/sets/work_order_rows.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

constexpr std::uintmax_t most_bytes = 1024 * 1024;  // typed by hand: far above any

tl::expected<std::string, Refusal> text_of_file(const fs::path& file) {
    const auto refusal = [&](Refusal::Code code, const char* found, const char* expected) {
        return tl::unexpected(Refusal{code, file.string(), "", found, expected});
    };
    std::error_code error;
    if (!fs::exists(file, error)) return refusal(Refusal::Code::missing_file, "no such file", "a file of names and values");
    if (!fs::is_regular_file(file, error))
        return refusal(Refusal::Code::not_a_file, "no file", "a file of names and values");
    if (fs::file_size(file, error) > most_bytes)
        return refusal(Refusal::Code::too_large, "more than a megabyte", "a short file of names and values");
    std::ifstream stream(file, std::ios::binary);
    std::string text{std::istreambuf_iterator<char>(stream), std::istreambuf_iterator<char>()};
    if (!stream) return refusal(Refusal::Code::unreadable, "a file that cannot be read", "a file of names and values");
    return text;
}

tl::expected<WorkReading, std::vector<Refusal>> rows_of_file(const fs::path& file) {
    const auto text = text_of_file(file);
    if (!text) return tl::unexpected(std::vector{text.error()});
    return work_order_of_lines(*text, file.string());
}

bool is_of_the_label(const std::string& name) {
    return name == "dose" || name == "given-at" || name.starts_with("label.") || name.starts_with("calibration.");
}

std::string without_stop(std::string sentence) {
    if (sentence.ends_with('.')) sentence.pop_back();
    return sentence;
}

// What each row may be by itself, but the file as a whole may not.
class Doubts {
public:
    Doubts(const fs::path& file, WorkReading& reading) : file_(file), reading_(reading) {}

    void of_rows_of_label() {
        for (const auto& [name, line] : reading_.lines)
            if (!is_of_the_label(name))
                refuse(name, quoted_for_display(name), "a figure of the label, a dose or a weighing");
    }

    void of_figures() {
        for (const std::string& wrong : what_is_wrong(reading_.work.label))
            refuse("", without_stop(wrong), "figures as they stand on the label");
    }

    void of_answers() {
        const WorkOrder& work = reading_.work;
        bool without_day = work.licence.value && !work.licence.at;
        for (const Question question : all_questions())
            without_day = without_day || (is_answered(work.conditions, question) && !answered_at(work.conditions, question));
        for (const BuildingUse& building : work.conditions.buildings)
            without_day = without_day || (building.lived_in.value && !building.lived_in.at);
        if (without_day)
            refuse("", "answers without the day they were given on",
                   "a line \"given-at = 2025-04-10\", or one for each answer");
    }

    // What a person signs in the window is looked at when it is signed.
    void of_signatures() {
        WorkOrder scratch;
        for (std::size_t i = 0; i < reading_.work.signed_off.size(); ++i)
            if (const auto wrong = sign(scratch, reading_.work.signed_off[i]))
                refuse("signed." + std::to_string(i + 1) + ".caution",
                       quoted_for_display(reading_.work.signed_off[i].caution),
                       "a hold-back, signed with name and reason: " + without_stop(*wrong));
    }

    void of_methods() {
        const WorkOrder& work = reading_.work;
        std::set<std::string> ids;
        for (std::size_t i = 0; i < work.own_methods.size(); ++i) {
            const Method& own = work.own_methods[i];
            const std::string name = "own-method." + std::to_string(i + 1);
            if (const auto wrong = what_is_wrong(own))
                refuse(name + ".id", without_stop(*wrong), "a method that can be used");
            if (!ids.insert(own.id).second)
                refuse(name + ".id", quoted_for_display(own.id), "an id of its own for each method");
        }
        if (!work.method.empty()) known("method", work.method);
        for (std::size_t i = 0; i < work.set_methods.size(); ++i)
            known("set-method." + std::to_string(i + 1) + ".method", work.set_methods[i].method);
    }

private:
    void known(const std::string& name, const std::string& id) {
        if (!find_method(reading_.work, id)) refuse(name, quoted_for_display(id), "one of " + all_method_ids(reading_.work));
    }
    void refuse(const std::string& name, const std::string& found, const std::string& expected) {
        reading_.problems.push_back(
            {Refusal::Code::malformed, file_.string(), row_place(reading_.lines, name), found, expected});
    }

    const fs::path& file_;
    WorkReading& reading_;
};

}  // namespace

tl::expected<WorkOrder, std::vector<Refusal>> read_work(const WorkFiles& files, const WorkOrder& held) {
    WorkOrder work = held;
    std::vector<Refusal> problems;
    const auto add = [&](const std::vector<Refusal>& more) { problems.insert(problems.end(), more.begin(), more.end()); };
    if (files.conditions) {
        auto reading = rows_of_file(*files.conditions);
        if (!reading) return tl::unexpected(reading.error());
        Doubts doubts(*files.conditions, *reading);
        doubts.of_answers();
        doubts.of_methods();
        doubts.of_signatures();
        doubts.of_figures();
        add(reading->problems);
        work = std::move(reading->work);
    }
    if (files.label) {
        auto reading = rows_of_file(*files.label);
        if (!reading) return tl::unexpected(reading.error());
        Doubts doubts(*files.label, *reading);
        doubts.of_rows_of_label();
        doubts.of_figures();
        add(reading->problems);
        work.label = std::move(reading->work.label);
        work.dose = reading->work.dose;
        work.calibration = std::move(reading->work.calibration);
    }
    if (!problems.empty()) return tl::unexpected(std::move(problems));
    return work;
}

std::string all_method_ids(const WorkOrder& work) {
    std::string ids;
    for (const std::string& id : built_in_method_ids()) ids += (ids.empty() ? "" : ", ") + id;
    for (const Method& own : work.own_methods) ids += ", " + own.id;
    return ids;
}

}  // namespace plugside
