// The state machine behind read_gpx: fed with bytes, it builds a GpxFile or stops at the first refusal.
// For geo/read/gpx.cpp alone; everything about meaning, limits and errors is said in gpx.h.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/words/words.h"
#include "geo/read/finding_list.h"
#include "geo/read/gpx.h"

struct XML_ParserStruct;

namespace plugside {

class GpxParser {
public:
    explicit GpxParser(std::string name);
    ~GpxParser();
    GpxParser(const GpxParser&) = delete;
    GpxParser& operator=(const GpxParser&) = delete;

    // False once the file is refused.
    bool feed(std::string_view bytes, bool last);
    [[nodiscard]] tl::expected<GpxFile, Refusal> result();

private:
    enum class Element {
        other,  // not ours: passed over, its text with it
        gpx,
        metadata,
        waypoint,
        track,
        segment,
        track_point,
        route,
        extension,  // within a waypoint, not of GPX itself: its text is kept
        link,
        text  // an element whose text is kept: `target_`
    };
    using Attributes = const char**;

    void start(const char* qualified_name, Attributes attributes);
    void end();
    void characters(std::string_view text);
    void refuse_doctype();

    [[nodiscard]] Element kind_of(std::string_view name, Element parent, bool gpx_namespace);
    [[nodiscard]] std::string* text_target(std::string_view name, Element parent);
    void open_root(std::string_view name, bool gpx_namespace, Attributes attributes);
    void open_link(Attributes attributes);
    void open_waypoint(Attributes attributes);
    void open_track_point(Attributes attributes);
    void close_waypoint();
    void close_track_point();
    [[nodiscard]] std::optional<GeographicPoint> place(Attributes attributes, const std::string& what, bool& exchanged);
    void read_numbers(const std::string& where);
    void keep_extension();
    [[nodiscard]] std::optional<double> degrees(Attributes attributes, const char* which, double limit,
                                                const std::string& what);
    void refuse(Refusal::Code code, const std::string& place, const std::string& found, const std::string& expected);
    [[nodiscard]] std::size_t line() const;
    [[nodiscard]] std::string line_place() const { return Words::tell("line {1}", {std::to_string(line())}); }

    std::string name_;
    XML_ParserStruct* parser_ = nullptr;
    std::vector<Element> open_;
    std::string* target_ = nullptr;
    GpxFile file_;
    FindingList findings_;
    std::optional<Refusal> refusal_;

    GpxWaypoint waypoint_;
    std::string time_text_;
    std::string hdop_text_;
    std::string satellites_text_;
    std::string elevation_text_;
    std::string extension_text_;
    std::string extension_name_;
    std::string unused_link_;
    bool in_route_ = false;
    // A place that is refused waits for the waypoint's name, which stands after it, so that the refusal can say it.
    std::optional<Refusal> waypoint_refusal_;
    GeographicTrackPoint track_point_;
    std::string track_time_text_;
    std::size_t track_points_ = 0;
    bool fed_anything_ = false;
};

}  // namespace plugside
