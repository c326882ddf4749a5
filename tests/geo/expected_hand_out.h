// What a hand-out of a plan has to hold, from the plan itself, and a reader without the program's code that looks for it
// (tests/geo/write/hand_out_reader.py).
#pragma once

#include <sstream>
#include <utility>
#include <vector>

#include "geo/write/hand_out_formats.h"
#include "geo/write/set_words.h"
#include "geo/write/shown_layers.h"
#include "tests/geo/temporary_folder.h"

namespace plugside::testing_support {

inline std::string json_text(const std::string& text) {
    std::string quoted = "\"";
    for (const char c : text) {
        if (c == '"' || c == '\\') quoted += '\\';
        if (c == '\n')
            quoted += "\\n";
        else if (c == '\r')
            quoted += "\\r";
        else
            quoted += c;
    }
    return quoted + "\"";
}

inline std::string json_place(const LocalFrame& frame, LocalPoint at) {
    const GeographicPoint place = frame.to_geographic(at);
    std::ostringstream text;
    text.precision(15);
    text << "\"lon\": " << place.longitude_degrees << ", \"lat\": " << place.latitude_degrees;
    return text.str();
}

inline std::string json_set(const FieldSurvey& field, const Plan& plan, const SetPoint& set) {
    const auto id = static_cast<std::size_t>(&set - plan.sets.data()) + 1;
    return "{\"id\": " + std::to_string(id) + ", \"name\": " + json_text(set_name(set, plan)) + ", " +
           json_place(field.frame, plan.probes[set.probe].middle) + "}";
}

inline std::string joined(const std::vector<std::string>& parts) {
    std::string text;
    for (const std::string& part : parts) text += (text.empty() ? "" : ", ") + part;
    return text;
}

// What the second reader compares with, from the plan itself.
inline std::string expected_json(const FieldSurvey& field, const Plan& plan, PrivateRows rows) {
    std::vector<std::string> sets, route, mounds, texts, layers;
    for (const SetPoint& set : plan.sets) sets.push_back(json_set(field, plan, set));
    for (const SetPoint* set : sets_to_visit(plan)) route.push_back(json_set(field, plan, *set));
    for (const Mound& mound : field.survey.mounds) {
        mounds.push_back("{\"id\": " + json_text(mound.name) + ", " + json_place(field.frame, mound.plug) + "}");
        if (!mound.note.empty()) texts.push_back(json_text(mound.name) + ": " + json_text(mound.note));
    }
    for (const LayerContent& layer : shown_layers(field, plan, LengthUnits::metres, rows))
        if (!layer.rows.empty()) layers.push_back(json_text(layer.name));
    return "{\"sets\": [" + joined(sets) + "], \"route\": [" + joined(route) + "], \"mounds\": [" + joined(mounds) +
           "], \"texts\": {" + joined(texts) + "}, \"layers\": [" + joined(layers) +
           "], \"notes\": " + (rows == PrivateRows::included ? "true" : "false") + "}";
}

using HandedOutFiles = std::vector<std::pair<HandOutFormat, std::filesystem::path>>;

// "" when the second reader found everything in each.
inline std::string hand_out_reader_says(const HandedOutFiles& files, const FieldSurvey& field, const Plan& plan,
                                        PrivateRows rows, const TemporaryFolder& scratch) {
    scratch.file("expected.json", expected_json(field, plan, rows));
    std::string command = "/usr/bin/python3 '" + std::string(PLUGSIDE_SOURCE_DIR) + "/tests/geo/write/hand_out_reader.py' '" +
                          (scratch / "expected.json").string() + "'";
    for (const auto& [format, file] : files)
        command += std::string(" ") + format_name(format) + " '" + file.string() + "'";
    return run(command, scratch / "said.txt") == 0 ? "" : content_of(scratch / "said.txt");
}

}  // namespace plugside::testing_support
