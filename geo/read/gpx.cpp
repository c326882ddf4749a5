#include "geo/read/gpx.h"

#include <fstream>
#include <vector>

#include "core/words/words.h"
#include "geo/read/gpx_parser.h"
#include "geo/read/input_file.h"

namespace plugside {

namespace {

constexpr std::size_t piece_bytes = 1 << 20;

Refusal not_xml(const std::string& name, FileKind kind) {
    const char* found = Words::later("a file of another kind");
    if (kind == FileKind::geopackage) found = Words::later("an SQLite data base");
    if (kind == FileKind::geojson) found = Words::later("a JSON text");
    return {Refusal::Code::wrong_format, name, "", found, Words::later("a GPX file")};
}

}  // namespace

tl::expected<GpxFile, Refusal> read_gpx(const std::filesystem::path& file, const Progress& progress) {
    const auto kind = kind_of_file(file);
    if (!kind) return tl::unexpected(kind.error());
    const std::string name = file.string();
    if (*kind != FileKind::xml) return tl::unexpected(not_xml(name, *kind));
    std::ifstream stream(file, std::ios::binary);
    std::error_code error;
    const auto size = static_cast<double>(std::filesystem::file_size(file, error));
    GpxParser parser(name);
    std::vector<char> piece(piece_bytes);
    for (double done = 0.0;;) {
        if (progress.stopped())
            return tl::unexpected(Refusal{Refusal::Code::stopped, name, "", Words::later("a request to stop"), ""});
        stream.read(piece.data(), static_cast<std::streamsize>(piece.size()));
        const auto got = static_cast<std::size_t>(stream.gcount());
        const bool last = got < piece.size();
        if (!parser.feed({piece.data(), got}, last) || last) break;
        done += static_cast<double>(got);
        progress.say(std::min(1.0, done / std::max(1.0, size)), Words::later("reading the walk"));
    }
    if (stream.bad())
        return tl::unexpected(Refusal{Refusal::Code::unreadable, name, "", Words::later("an error while reading"),
                                      Words::later("a readable file")});
    return parser.result();
}

tl::expected<GpxFile, Refusal> read_gpx_text(std::string_view text, const std::string& name) {
    GpxParser parser(name);
    while (text.size() > piece_bytes && parser.feed(text.substr(0, piece_bytes), false)) text.remove_prefix(piece_bytes);
    parser.feed(text, true);
    return parser.result();
}

}  // namespace plugside
