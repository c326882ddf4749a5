#include "geo/read/input_file.h"

#include <algorithm>
#include <array>
#include <fstream>
#include <string_view>

#include "core/words/words.h"
#include "geo/read/text_encoding.h"

namespace plugside {

namespace {

constexpr const char* readable = Words::later("a walk, table, photograph or layer file");
constexpr std::uintmax_t largest_file = 512ULL * 1024 * 1024;

bool leads_elsewhere(const std::string& name) {
    return name.rfind("/vsi", 0) == 0 || name.find("://") != std::string::npos || name.find('<') != std::string::npos;
}

// The root element, after declarations and comments, is kml.
bool names_kml(std::string_view start) {
    while (const auto open = start.find('<') + 1) {
        start.remove_prefix(open);
        if (start.empty()) return false;
        if (start.front() == '?' || start.front() == '!') continue;
        const std::string_view name = start.substr(0, start.find_first_of(" \t\r\n/>"));
        return name == "kml" || (name.size() > 4 && name.substr(name.size() - 4) == ":kml");
    }
    return false;
}

bool is_part_of_shapefile(const std::filesystem::path& file) {
    const std::string ending = file.extension().string();
    constexpr std::array<std::string_view, 6> parts{".shx", ".dbf", ".prj", ".cpg", ".qix", ".sbn"};
    if (std::find(parts.begin(), parts.end(), ending) == parts.end()) return false;
    std::filesystem::path main_file = file;
    std::error_code error;
    return std::filesystem::exists(main_file.replace_extension(".shp"), error);
}

}  // namespace

tl::expected<void, Refusal> plain_file(const std::filesystem::path& file, const std::string& wanted,
                                       std::optional<std::uintmax_t> largest) {
    const std::string name = file.string();
    const auto refuse = [&](Refusal::Code code, const std::string& found) {
        return tl::unexpected(Refusal{code, name, "", found, Words::tell("{1} on this computer", {Words::shown(wanted)})});
    };
    if (leads_elsewhere(name) || leads_elsewhere(std::filesystem::absolute(file).lexically_normal().string()))
        return refuse(Refusal::Code::forbidden_source, Words::later("a name that leads to a network or into another file"));
    std::error_code error;
    const auto status = std::filesystem::status(file, error);
    if (status.type() == std::filesystem::file_type::not_found)
        return refuse(Refusal::Code::missing_file, Words::later("no such file"));
    if (error)
        return refuse(Refusal::Code::unreadable, Words::tell("a file that cannot be reached ({1})", {error.message()}));
    if (std::filesystem::is_directory(status)) return refuse(Refusal::Code::not_a_file, Words::later("a folder"));
    if (!std::filesystem::is_regular_file(status))
        return refuse(Refusal::Code::not_a_file, Words::later("a device or pipe"));
    const auto size = std::filesystem::file_size(file, error);
    if (error)
        return refuse(Refusal::Code::unreadable, Words::tell("a file that cannot be reached ({1})", {error.message()}));
    if (largest && size > *largest)
        return tl::unexpected(Refusal{Refusal::Code::too_large, name, "",
                                      Words::tell("a file over {1} MiB", {std::to_string(*largest / 1024 / 1024)}),
                                      Words::later("the files of one field")});
    return {};
}

tl::expected<FileKind, Refusal> kind_of_file(const std::filesystem::path& file) {
    if (auto plain = plain_file(file, readable, largest_file); !plain) return tl::unexpected(plain.error());
    const std::string name = file.string();
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        return tl::unexpected(Refusal{Refusal::Code::unreadable, name, "", Words::later("a file that may not be opened"),
                                      Words::later("a readable file")});
    std::array<char, 512> head{};
    stream.read(head.data(), static_cast<std::streamsize>(head.size()));
    std::string_view start(head.data(), static_cast<std::size_t>(stream.gcount()));
    if (start.empty())
        return tl::unexpected(Refusal{Refusal::Code::malformed, name, "", Words::later("an empty file"), readable});
    using namespace std::string_view_literals;
    if (start.substr(0, 16) == "SQLite format 3\0"sv) return FileKind::geopackage;
    if (start.substr(0, 4) == "\xFF\xFE<\0"sv || start.substr(0, 4) == "\xFE\xFF\0<"sv || start.substr(0, 2) == "<\0"sv ||
        start.substr(0, 2) == "\0<"sv)
        return FileKind::xml;
    if (start.substr(0, 3) == "\xEF\xBB\xBF"sv) start.remove_prefix(3);
    const auto first = start.find_first_not_of(" \t\r\n");
    if (first != std::string_view::npos && start[first] == '<') return names_kml(start) ? FileKind::kml : FileKind::xml;
    if (first != std::string_view::npos && start[first] == '{') return FileKind::geojson;
    if (start.substr(0, 3) == "\xFF\xD8\xFF"sv) return FileKind::photograph;
    if (start.substr(0, 4) == "fgb\x03"sv) return FileKind::flatgeobuf;
    if (start.substr(0, 4) == "\0\0\x27\x0A"sv)
        return is_part_of_shapefile(file) ? FileKind::shapefile_part : FileKind::shapefile;
    if (is_part_of_shapefile(file)) return FileKind::shapefile_part;
    if (is_text(start)) return FileKind::table;
    return tl::unexpected(Refusal{
        Refusal::Code::wrong_format, name, "",
        Words::tell("a file that starts with {1}", {quoted_for_display(std::string(start.substr(0, 16)))}), readable});
}

}  // namespace plugside
