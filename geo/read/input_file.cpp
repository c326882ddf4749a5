#include "geo/read/input_file.h"

#include <array>
#include <fstream>
#include <string_view>

namespace plugside {

namespace {

constexpr std::uintmax_t largest_file = 512ULL * 1024 * 1024;

bool leads_elsewhere(const std::string& name) {
    return name.rfind("/vsi", 0) == 0 || name.find("://") != std::string::npos || name.find('<') != std::string::npos;
}

tl::expected<void, Refusal> plain_file(const std::filesystem::path& file) {
    const std::string name = file.string();
    const auto refuse = [&](Refusal::Code code, const std::string& found) {
        return tl::unexpected(Refusal{code, name, "", found, "a GPX, GeoPackage or GeoJSON file on this computer"});
    };
    if (leads_elsewhere(name) || leads_elsewhere(std::filesystem::absolute(file).lexically_normal().string()))
        return refuse(Refusal::Code::forbidden_source, "a name that leads to a network or into another file");
    std::error_code error;
    const auto status = std::filesystem::status(file, error);
    if (status.type() == std::filesystem::file_type::not_found) return refuse(Refusal::Code::missing_file, "no such file");
    if (error) return refuse(Refusal::Code::unreadable, "a file that cannot be reached (" + error.message() + ")");
    if (std::filesystem::is_directory(status)) return refuse(Refusal::Code::not_a_file, "a folder");
    if (!std::filesystem::is_regular_file(status)) return refuse(Refusal::Code::not_a_file, "a device or pipe");
    const auto size = std::filesystem::file_size(file, error);
    if (error) return refuse(Refusal::Code::unreadable, "a file that cannot be reached (" + error.message() + ")");
    if (size > largest_file)
        return tl::unexpected(Refusal{Refusal::Code::too_large, name, "", "a file over 512 MiB", "the files of one field"});
    return {};
}

}  // namespace

tl::expected<FileKind, Refusal> kind_of_file(const std::filesystem::path& file) {
    if (auto plain = plain_file(file); !plain) return tl::unexpected(plain.error());
    const std::string name = file.string();
    std::ifstream stream(file, std::ios::binary);
    if (!stream)
        return tl::unexpected(
            Refusal{Refusal::Code::unreadable, name, "", "a file that may not be opened", "a readable file"});
    std::array<char, 512> head{};
    stream.read(head.data(), static_cast<std::streamsize>(head.size()));
    std::string_view start(head.data(), static_cast<std::size_t>(stream.gcount()));
    if (start.empty())
        return tl::unexpected(
            Refusal{Refusal::Code::malformed, name, "", "an empty file", "a GPX, GeoPackage or GeoJSON file"});
    using namespace std::string_view_literals;
    if (start.substr(0, 16) == "SQLite format 3\0"sv) return FileKind::geopackage;
    if (start.substr(0, 2) == "\xFF\xFE"sv || start.substr(0, 2) == "\xFE\xFF"sv || start.substr(0, 2) == "<\0"sv ||
        start.substr(0, 2) == "\0<"sv)
        return FileKind::xml;
    if (start.substr(0, 3) == "\xEF\xBB\xBF"sv) start.remove_prefix(3);
    const auto first = start.find_first_not_of(" \t\r\n");
    if (first != std::string_view::npos && start[first] == '<') return FileKind::xml;
    if (first != std::string_view::npos && start[first] == '{') return FileKind::geojson;
    return tl::unexpected(Refusal{Refusal::Code::wrong_format, name, "",
                                  "a file that starts with " + quoted_for_display(std::string(start.substr(0, 16))),
                                  "a GPX, GeoPackage or GeoJSON file"});
}

}  // namespace plugside
