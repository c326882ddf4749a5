// Any bytes as a project file: opened or refused in one sentence; what was opened fits together, is kept again and comes back the
// same. Bytes that do not begin like a database go to the lists that stand in cells, which are the innermost form.
#include <unistd.h>

#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "geo/store/packed_lists.h"
#include "geo/store/project_store.h"

namespace {

void demand(bool holds) {
    if (!holds) std::abort();
}

// A folder in memory where there is such a thing; taken away at the end.
class Folder {
public:
    Folder() {
        std::error_code error;
        const bool in_memory = std::filesystem::is_directory("/dev/shm", error);
        path_ = (in_memory ? std::filesystem::path("/dev/shm") : std::filesystem::temp_directory_path()) /
                ("plugside-fuzz-project-" + std::to_string(getpid()));
        std::filesystem::create_directory(path_, error);
    }
    ~Folder() {
        std::error_code error;
        std::filesystem::remove_all(path_, error);
    }
    // Nothing else is in it.
    std::filesystem::path write(const std::uint8_t* data, std::size_t size) const {
        std::error_code error;
        for (const auto& entry : std::filesystem::directory_iterator(path_))
            std::filesystem::remove_all(entry.path(), error);
        const auto file = path_ / "input.plugside";
        std::ofstream stream(file, std::ios::binary);
        stream.write(reinterpret_cast<const char*>(data), static_cast<std::streamsize>(size));
        return file;
    }

private:
    std::filesystem::path path_;
};

template <typename List>
void demand_same(std::string_view bytes, const std::optional<List>& list) {
    if (list) demand(plugside::packed(*list) == bytes);
}

void try_lists(std::string_view bytes) {
    demand_same(bytes, plugside::unpacked_texts(bytes));
    demand_same(bytes, plugside::unpacked_places(bytes));
    demand_same(bytes, plugside::unpacked_rings(bytes));
    demand_same(bytes, plugside::unpacked_segment(bytes));
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    static const Folder folder;
    if (size == 0 || data[0] != 'S') {
        try_lists({reinterpret_cast<const char*>(data), size});
        return 0;
    }
    const auto file = folder.write(data, size);
    std::shared_ptr<const plugside::Project> project;
    {
        auto opened = plugside::ProjectStore::open(file);
        if (!opened) {
            demand(!opened.error().found.empty() && !opened.error().expected.empty());
            demand(plugside::sentence(opened.error()).find('\n') == std::string::npos);
            return 0;
        }
        project = opened->project();
        for (const auto& mound : project->field->survey.mounds) {
            demand(mound.walk < project->field->survey.walks.size());
            demand(mound.position_sd.value() > 0.0);
        }
        auto edited = std::make_shared<plugside::Project>(*project);
        edited->pictures.push_back({"/media/card/picture.tif", true, {}});
        demand(opened->keep(edited).has_value());
        project = edited;
    }
    const auto again = plugside::ProjectStore::open(file);
    demand(again.has_value() && *again->project() == *project);
    return 0;
}
