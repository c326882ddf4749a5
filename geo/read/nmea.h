// Sentences of NMEA 0183 as receivers send them, one a line: what a position needs of them.
//
// Sentence: "$" talker and type, fields parted by commas, "*" and two hexadecimal digits: the exclusive or of all characters between
//           "$" and "*". A sentence without that sum is not taken: half of one could not be told from a whole one. What stands before
//           the line's last "$" is passed over (the end of a sentence that was cut off).
// Position: of GGA (place, quality, hdop) and RMC (place, date); its time is the time of day alone in GGA.
// None:     GGA of quality 0, RMC of status V or mode N: the receiver says that it has no place.
// Errors of places come from GST, in metres, one standard deviation.
// Range:    latitude -90..90, longitude -180..180 (180 is taken as -180), else the sentence is not understood.
// Limits:   lines of at most 200 bytes (the standard has 82; receivers go beyond it).
// Source:   NMEA 0183, GGA, GST and RMC [memory].
#pragma once

#include <chrono>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "geo/frame/local_frame.h"

namespace plugside {

struct NmeaSentence {
    std::string talker;  // "GP", "GN"
    std::string type;    // "GGA"
    std::vector<std::string> fields;
};

// What stands against a line, as a sentence for a person.
[[nodiscard]] tl::expected<NmeaSentence, std::string> read_nmea_line(std::string_view line);

// Of the characters between "$" and "*".
[[nodiscard]] std::uint8_t nmea_sum(std::string_view between);

struct NmeaPosition {
    std::chrono::milliseconds time_of_day{};
    std::optional<std::chrono::sys_days> day;  // RMC alone tells it
    std::optional<GeographicPoint> at;         // nothing: the receiver has no place
    int quality = 1;  // of GGA: 1 by itself, 2 with corrections, 4 and 5 to the centimetre and decimetre, 6 guessed, ...
    std::optional<double> hdop;
};

// Of a GGA or RMC sentence; nothing where its fields cannot be understood.
[[nodiscard]] std::optional<NmeaPosition> nmea_position(const NmeaSentence& sentence);

struct NmeaErrors {
    std::chrono::milliseconds time_of_day{};
    double latitude_sd_m = 0.0;
    double longitude_sd_m = 0.0;
};

// Of a GST sentence.
[[nodiscard]] std::optional<NmeaErrors> nmea_errors(const NmeaSentence& sentence);

}  // namespace plugside
