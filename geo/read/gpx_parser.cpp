#include "geo/read/gpx_parser.h"

#include <expat.h>

#include <algorithm>
#include <cstring>
#include <new>

#include "core/words/words.h"
#include "geo/read/coordinate_place.h"
#include "geo/read/numbers.h"

namespace plugside {

namespace {

constexpr std::size_t deepest_nesting = 64;
constexpr std::size_t longest_text = 64 * 1024;
constexpr std::size_t longest_extension = 200;
constexpr std::size_t most_waypoints = 2'000'000;
constexpr std::size_t most_track_points = 20'000'000;
constexpr char namespace_separator = ' ';

std::optional<std::string_view> attribute(const char** attributes, std::string_view name) {
    for (; *attributes != nullptr; attributes += 2)
        if (name == attributes[0]) return std::string_view(attributes[1]);
    return std::nullopt;
}

}  // namespace

std::string place_of(const GpxWaypoint& waypoint) {
    std::string place =
        waypoint.called.empty() ? Words::tell("waypoint {1}", {std::to_string(waypoint.ordinal)}) : waypoint.called;
    const std::string name(trimmed(waypoint.name));
    if (!name.empty()) {
        const std::string quoted = quoted_for_display(name);
        place += ", " + quoted.substr(1, quoted.size() - 2);
    }
    return place;
}

GpxParser::GpxParser(std::string name)
    : name_(std::move(name)),
      parser_(XML_ParserCreateNS(nullptr, namespace_separator)),
      findings_(std::filesystem::path(name_).filename().string()) {
    if (parser_ == nullptr) throw std::bad_alloc();
    XML_SetUserData(parser_, this);
    XML_SetElementHandler(
        parser_,
        [](void* self, const XML_Char* element, const XML_Char** attributes) {
            static_cast<GpxParser*>(self)->start(element, attributes);
        },
        [](void* self, const XML_Char*) { static_cast<GpxParser*>(self)->end(); });
    XML_SetCharacterDataHandler(parser_, [](void* self, const XML_Char* text, int length) {
        static_cast<GpxParser*>(self)->characters({text, static_cast<std::size_t>(length)});
    });
    XML_SetStartDoctypeDeclHandler(parser_, [](void* self, const XML_Char*, const XML_Char*, const XML_Char*, int) {
        static_cast<GpxParser*>(self)->refuse_doctype();
    });
}

GpxParser::~GpxParser() { XML_ParserFree(parser_); }

std::size_t GpxParser::line() const { return static_cast<std::size_t>(XML_GetCurrentLineNumber(parser_)); }

void GpxParser::refuse(Refusal::Code code, const std::string& place, const std::string& found, const std::string& expected) {
    if (refusal_) return;
    refusal_ = Refusal{code, name_, place, found, expected};
    XML_StopParser(parser_, XML_FALSE);
}

void GpxParser::refuse_doctype() {
    refuse(Refusal::Code::malformed, line_place(), Words::later("a document type declaration"),
           Words::later("a GPX file without one (declared entities are never read)"));
}

bool GpxParser::feed(std::string_view bytes, bool last) {
    if (refusal_) return false;
    fed_anything_ = fed_anything_ || !bytes.empty();
    if (last && !fed_anything_) {
        refusal_ = Refusal{Refusal::Code::malformed, name_, "", Words::later("an empty file"), Words::later("a GPX file")};
        return false;
    }
    const XML_Status status = XML_Parse(parser_, bytes.data(), static_cast<int>(bytes.size()), last ? 1 : 0);
    if (refusal_) return false;
    if (status == XML_STATUS_OK) return true;
    refusal_ = Refusal{Refusal::Code::malformed, name_, line_place(),
                       Words::tell("XML that cannot be read ({1})", {XML_ErrorString(XML_GetErrorCode(parser_))}),
                       Words::later("a well-formed GPX file")};
    return false;
}

tl::expected<GpxFile, Refusal> GpxParser::result() {
    if (refusal_) return tl::unexpected(*refusal_);
    file_.findings = findings_.listed();
    return std::move(file_);
}

void GpxParser::start(const char* qualified_name, Attributes attributes) {
    if (refusal_) return;
    if (open_.size() >= deepest_nesting)
        return refuse(Refusal::Code::malformed, line_place(),
                      Words::tell("elements nested more than {1} deep", {std::to_string(deepest_nesting)}),
                      Words::later("a GPX file"));
    std::string_view name = qualified_name;
    bool gpx_namespace = true;
    if (const auto separator = name.rfind(namespace_separator); separator != std::string_view::npos) {
        const std::string_view uri = name.substr(0, separator);
        gpx_namespace = uri == "http://www.topografix.com/GPX/1/1" || uri == "http://www.topografix.com/GPX/1/0";
        name.remove_prefix(separator + 1);
    }
    if (open_.empty()) return open_root(name, gpx_namespace, attributes);
    const Element element = kind_of(name, open_.back(), gpx_namespace);
    if (element == Element::extension) {
        keep_extension();  // the text before a child is its parent's
        extension_name_ = name;
    }
    open_.push_back(element);
    if (element == Element::waypoint) {
        in_route_ = name == "rtept";
        open_waypoint(attributes);
    }
    if (element == Element::track_point) open_track_point(attributes);
    if (element == Element::segment) file_.segments.emplace_back();
    if (element == Element::link) open_link(attributes);
}

void GpxParser::open_root(std::string_view name, bool gpx_namespace, Attributes attributes) {
    const std::string shown = quoted_for_display(std::string(name));
    if (name != "gpx" || !gpx_namespace)
        return refuse(Refusal::Code::wrong_format, line_place(), Words::tell("a document of kind {1}", {shown}),
                      Words::later("a GPX file of version 1.0 or 1.1"));
    open_.push_back(Element::gpx);
    const auto version = attribute(attributes, "version");
    if (!version) {
        findings_.add(line_place(), Words::later("the file does not say its GPX version; read as 1.1"));
    } else if (*version != "1.1" && *version != "1.0") {
        refuse(Refusal::Code::wrong_format, line_place(),
               Words::tell("GPX version {1}", {quoted_for_display(std::string(*version))}),
               Words::later("version 1.0 or 1.1"));
    }
}

GpxParser::Element GpxParser::kind_of(std::string_view name, Element parent, bool gpx_namespace) {
    if (parent == Element::extension) return Element::extension;
    if (parent == Element::waypoint && (!gpx_namespace || name == "extensions")) return Element::extension;
    if (!gpx_namespace) return Element::other;
    if (parent == Element::gpx) {
        if (name == "wpt") return Element::waypoint;
        if (name == "trk") return Element::track;
        if (name == "rte") return Element::route;
        if (name == "metadata") return Element::metadata;
    }
    if (parent == Element::route && name == "rtept") return Element::waypoint;
    if (parent == Element::waypoint && name == "link") return Element::link;
    if (parent == Element::track && name == "trkseg") return Element::segment;
    if (parent == Element::segment && name == "trkpt") return Element::track_point;
    std::string* const target = text_target(name, parent);
    if (target == nullptr) return Element::other;  // `target_` stays: the text around a stray element goes on after it
    target_ = target;
    return Element::text;
}

std::string* GpxParser::text_target(std::string_view name, Element parent) {
    // In GPX 1.0 the file's name is a child of gpx itself.
    if ((parent == Element::metadata || parent == Element::gpx) && name == "name") return &file_.title;
    if (parent == Element::track_point && name == "time") return &track_time_text_;
    if (parent != Element::waypoint) return nullptr;
    if (name == "name") return &waypoint_.name;
    if (name == "cmt") return &waypoint_.comment;
    if (name == "desc") return &waypoint_.description;
    if (name == "sym") return &waypoint_.symbol;
    if (name == "type") return &waypoint_.type;
    if (name == "fix") return &waypoint_.fix;
    if (name == "time") return &time_text_;
    if (name == "hdop") return &hdop_text_;
    if (name == "sat") return &satellites_text_;
    if (name == "ele") return &elevation_text_;
    if (name == "url") return waypoint_.link.empty() ? &waypoint_.link : &unused_link_;  // GPX 1.0
    return nullptr;
}

void GpxParser::characters(std::string_view text) {
    if (refusal_ || open_.empty()) return;
    if (open_.back() == Element::extension) {
        if (extension_text_.size() <= longest_extension) extension_text_.append(text.substr(0, longest_extension + 1));
        return;
    }
    if (open_.back() != Element::text) return;
    if (target_->size() + text.size() > longest_text)
        return refuse(Refusal::Code::too_large, line_place(), Words::later("a text longer than 64 KiB"),
                      Words::later("a mark's short note"));
    target_->append(text);
}

void GpxParser::end() {
    if (refusal_ || open_.empty()) return;
    const Element closing = open_.back();
    open_.pop_back();
    if (closing == Element::extension) keep_extension();
    if (closing == Element::waypoint) close_waypoint();
    if (closing == Element::track_point) close_track_point();
    if (closing == Element::segment && file_.segments.back().empty()) file_.segments.pop_back();
}

std::optional<double> GpxParser::degrees(Attributes attributes, const char* which, double limit, const std::string& what) {
    const std::string range = std::to_string(static_cast<int>(limit));
    const std::string expected = Words::tell("a number of degrees from -{1} to {1}", {range});
    const auto text = attribute(attributes, which);
    const std::string place = line_place() + (what.empty() ? "" : ", " + what);
    if (!text) {
        waypoint_refusal_ = Refusal{Refusal::Code::malformed, name_, place, Words::tell("no {1}", {which}), expected};
        return std::nullopt;
    }
    const auto value = parse_number(*text);
    if (value && *value >= -limit && *value <= limit) return value;
    waypoint_refusal_ = Refusal{value ? Refusal::Code::out_of_range : Refusal::Code::malformed, name_, place,
                                std::string(which) + "=" + quoted_for_display(std::string(*text)), expected};
    return std::nullopt;
}

std::optional<GeographicPoint> GpxParser::place(Attributes attributes, const std::string& what, bool& exchanged) {
    const auto as_written = [&](const char* which) {
        const auto text = attribute(attributes, which);
        return text ? parse_number(*text) : std::nullopt;
    };
    const auto lat = as_written("lat");
    const auto lon = as_written("lon");
    if (lat && lon)
        if (const auto place = place_on_earth(*lon, *lat)) {
            exchanged = place->exchanged;
            return place->at;
        }
    // Which of the two it is, and how it is written, is for the refusal to say.
    if (degrees(attributes, "lat", 90.0, what)) static_cast<void>(degrees(attributes, "lon", 180.0, what));
    return std::nullopt;
}

void GpxParser::open_link(Attributes attributes) {
    const auto target = attribute(attributes, "href");
    if (target && waypoint_.link.empty()) waypoint_.link = *target;
}

// Texts of other makers' elements, each with its element's name; long ones are no notes.
void GpxParser::keep_extension() {
    const std::string_view text = trimmed(extension_text_);
    if (!text.empty() && text.size() <= longest_extension && waypoint_.extensions.size() < longest_text)
        waypoint_.extensions.append(waypoint_.extensions.empty() ? "" : "; ")
            .append(extension_name_)
            .append(": ")
            .append(text);
    extension_text_.clear();
}

void GpxParser::open_waypoint(Attributes attributes) {
    auto& waypoints = in_route_ ? file_.route_points : file_.waypoints;
    const std::size_t ordinal = waypoints.size() + 1;
    if (ordinal > most_waypoints)
        return refuse(Refusal::Code::too_large, line_place(), Words::later("more than 2,000,000 waypoints"),
                      Words::later("the marks of one field"));
    waypoint_ = {};
    waypoint_.ordinal = ordinal;
    waypoint_.line = line();
    if (in_route_) waypoint_.called = Words::tell("route point {1}", {std::to_string(ordinal)});
    for (std::string* text : {&time_text_, &hdop_text_, &satellites_text_, &elevation_text_, &extension_text_})
        text->clear();
    if (const auto at = place(attributes, place_of(waypoint_), waypoint_.exchanged)) waypoint_.at = *at;
}

void GpxParser::read_numbers(const std::string& where) {
    const auto read = [&](const std::string& text, const char* what, bool may_be_negative) -> std::optional<double> {
        if (trimmed(text).empty()) return std::nullopt;
        const auto number = parse_number(text);
        if (number && (may_be_negative || *number >= 0.0)) return number;
        findings_.add(where, Words::tell("the {1} {2} was not understood", {Words::shown(what), quoted_for_display(text)}));
        return std::nullopt;
    };
    waypoint_.hdop = read(hdop_text_, "hdop", false);
    waypoint_.elevation_m = read(elevation_text_, Words::later("elevation"), true);
    const auto satellites = read(satellites_text_, Words::later("number of satellites"), false);
    constexpr double most_satellites = 1000.0;
    if (satellites && *satellites <= most_satellites) waypoint_.satellites = static_cast<int>(*satellites);
}

void GpxParser::close_waypoint() {
    if (waypoint_refusal_) {
        waypoint_refusal_->place = Words::tell("line {1}", {std::to_string(waypoint_.line)}) + ", " + place_of(waypoint_);
        refusal_ = waypoint_refusal_;
        XML_StopParser(parser_, XML_FALSE);
        return;
    }
    const std::string where = place_of(waypoint_);
    if (!trimmed(time_text_).empty()) {
        waypoint_.time = parse_utc_time(time_text_);
        if (!waypoint_.time)
            findings_.add(where, Words::tell("the time {1} was not understood", {quoted_for_display(time_text_)}));
    }
    read_numbers(where);
    (in_route_ ? file_.route_points : file_.waypoints).push_back(std::move(waypoint_));
    in_route_ = false;
}

void GpxParser::open_track_point(Attributes attributes) {
    if (++track_points_ > most_track_points)
        return refuse(Refusal::Code::too_large, line_place(), Words::later("more than 20,000,000 track points"),
                      Words::later("the walks of one field"));
    track_point_ = {};
    track_time_text_.clear();
    bool exchanged = false;
    if (const auto at = place(attributes, Words::tell("track point {1}", {std::to_string(track_points_)}), exchanged)) {
        track_point_.at = *at;
        if (exchanged)
            findings_.add(
                line_place(),
                Words::later(
                    "a track point's latitude lies beyond 90 degrees; its latitude and longitude are taken as exchanged"));
        return;
    }
    refusal_ = waypoint_refusal_;
    XML_StopParser(parser_, XML_FALSE);
}

void GpxParser::close_track_point() {
    if (!trimmed(track_time_text_).empty()) {
        track_point_.time = parse_utc_time(track_time_text_);
        if (!track_point_.time)
            findings_.add(line_place(), Words::later("a track point's time was not understood; it has none"));
    }
    file_.segments.back().push_back(track_point_);
}

}  // namespace plugside
