#include "geo/read/reference_systems.h"

#include <proj.h>

#include <algorithm>
#include <cmath>

#include "geo/frame/transverse_mercator.h"
#include "geo/read/numbers.h"

namespace plugside {

namespace {

struct Context {
    PJ_CONTEXT* context = proj_context_create();
    Context() {
        proj_context_set_enable_network(context, 0);
        proj_log_level(context, PJ_LOG_NONE);
    }
    ~Context() { proj_context_destroy(context); }
    Context(const Context&) = delete;
    Context& operator=(const Context&) = delete;
};

std::string lower(std::string_view text) {
    std::string result(text);
    for (char& c : result)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return result;
}

std::vector<std::string> words_of(std::string_view search) {
    std::vector<std::string> words;
    std::string_view rest = trimmed(search);
    while (!rest.empty()) {
        const auto end = std::min(rest.find_first_of(" \t"), rest.size());
        words.push_back(lower(rest.substr(0, end)));
        rest = trimmed(rest.substr(end));
    }
    return words;
}

std::vector<ReferenceSystem> all_systems() {
    const Context library;
    PROJ_CRS_LIST_PARAMETERS* wanted = proj_get_crs_list_parameters_create();
    const PJ_TYPE types[] = {PJ_TYPE_GEOGRAPHIC_2D_CRS, PJ_TYPE_PROJECTED_CRS};
    wanted->types = types;
    wanted->typesCount = 2;
    wanted->allow_deprecated = 0;
    int count = 0;
    PROJ_CRS_INFO** list = proj_get_crs_info_list_from_database(library.context, "EPSG", wanted, &count);
    std::vector<ReferenceSystem> systems;
    for (int i = 0; i < count; ++i)
        systems.push_back(
            {std::string(list[i]->auth_name) + ":" + list[i]->code, list[i]->name, list[i]->type == PJ_TYPE_PROJECTED_CRS});
    proj_crs_info_list_destroy(list);
    proj_get_crs_list_parameters_destroy(wanted);
    const auto number = [](const ReferenceSystem& system) { return parse_number(system.code.substr(5)).value_or(0.0); };
    std::sort(systems.begin(), systems.end(),
              [&](const ReferenceSystem& a, const ReferenceSystem& b) { return number(a) < number(b); });
    return systems;
}

const std::vector<ReferenceSystem>& systems() {
    static const std::vector<ReferenceSystem> all = all_systems();
    return all;
}

}  // namespace

std::vector<ReferenceSystem> reference_systems(std::string_view search, std::size_t most) {
    const std::vector<std::string> words = words_of(search);
    std::vector<ReferenceSystem> found;
    for (const ReferenceSystem& system : systems()) {
        const std::string text = lower(system.code + " " + system.name);
        if (std::all_of(words.begin(), words.end(),
                        [&](const std::string& word) { return text.find(word) != std::string::npos; }))
            found.push_back(system);
    }
    const auto exact = [&](const ReferenceSystem& system) {
        return words.size() == 1 && (lower(system.code) == words[0] || system.code.substr(5) == words[0]);
    };
    std::stable_partition(found.begin(), found.end(), exact);
    if (found.size() > most) found.resize(most);
    return found;
}

bool is_reference_system(const std::string& code) {
    const auto& all = systems();
    return std::any_of(all.begin(), all.end(), [&](const ReferenceSystem& system) { return system.code == code; });
}

struct ToGeographic::Library {
    Context library;
    PJ* transformation = nullptr;
    ~Library() { proj_destroy(transformation); }
};

ToGeographic::ToGeographic(std::unique_ptr<Library> library) : library_(std::move(library)) {}
ToGeographic::ToGeographic(ToGeographic&&) noexcept = default;
ToGeographic& ToGeographic::operator=(ToGeographic&&) noexcept = default;
ToGeographic::~ToGeographic() = default;

std::optional<ToGeographic> ToGeographic::from(const std::string& code) {
    if (!is_reference_system(code)) return std::nullopt;
    auto library = std::make_unique<Library>();
    PJ_CONTEXT* context = library->library.context;
    PJ* as_defined = proj_create_crs_to_crs(context, code.c_str(), "EPSG:4326", nullptr);
    if (as_defined == nullptr) return std::nullopt;
    library->transformation = proj_normalize_for_visualization(context, as_defined);
    proj_destroy(as_defined);
    if (library->transformation == nullptr) return std::nullopt;
    return ToGeographic(std::move(library));
}

std::optional<GeographicPoint> ToGeographic::place(double east, double north) const {
    proj_errno_reset(library_->transformation);
    const PJ_COORD result = proj_trans(library_->transformation, PJ_FWD, proj_coord(east, north, 0.0, HUGE_VAL));
    const double longitude = result.xy.x;
    const double latitude = result.xy.y;
    if (!std::isfinite(longitude) || !std::isfinite(latitude) || std::abs(latitude) > 90.0 || std::abs(longitude) > 360.0)
        return std::nullopt;
    return GeographicPoint{normalised_longitude(longitude), latitude};
}

}  // namespace plugside
