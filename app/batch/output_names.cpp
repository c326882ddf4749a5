#include "app/batch/output_names.h"

namespace plugside {

namespace {

namespace fs = std::filesystem;

Refusal cannot_write(const fs::path& file, const std::string& found, const std::string& expected) {
    return {Refusal::Code::cannot_write, file.string(), "", found, expected};
}

bool same_file(const fs::path& a, const fs::path& b) {
    std::error_code error;
    const fs::path real_a = fs::weakly_canonical(a, error);
    if (error) return a == b;
    const fs::path real_b = fs::weakly_canonical(b, error);
    return error ? a == b : real_a == real_b;
}

}  // namespace

tl::expected<void, Refusal> check_output_names(const std::vector<fs::path>& outputs, const std::vector<fs::path>& inputs) {
    for (std::size_t i = 0; i < outputs.size(); ++i) {
        std::error_code error;
        const fs::path folder = outputs[i].has_parent_path() ? outputs[i].parent_path() : fs::path(".");
        if (!fs::is_directory(folder, error))
            return tl::unexpected(cannot_write(outputs[i], "no folder of that name", "a folder that exists"));
        if (fs::is_directory(outputs[i], error))
            return tl::unexpected(cannot_write(outputs[i], "a folder", "a file's name"));
        for (std::size_t j = 0; j < i; ++j)
            if (same_file(outputs[i], outputs[j]))
                return tl::unexpected(cannot_write(outputs[i], "one name for two outputs", "a name for each"));
        for (const fs::path& input : inputs)
            if (same_file(outputs[i], input))
                return tl::unexpected(cannot_write(outputs[i], "an input's name", "a name that does not lose the input"));
    }
    return {};
}

}  // namespace plugside
