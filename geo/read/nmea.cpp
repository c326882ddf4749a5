#include "geo/read/nmea.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

#include "core/survey/refusal.h"
#include "core/words/words.h"
#include "geo/read/degrees_text.h"
#include "geo/read/numbers.h"

namespace plugside {

namespace {

using namespace std::chrono;

constexpr std::size_t longest_line = 200;
constexpr int first_year_of_positions = 80;  // two digits of a year: 80..99 are 1980..1999

std::optional<int> hexadecimal_digit(char letter) {
    if (letter >= '0' && letter <= '9') return letter - '0';
    if (letter >= 'A' && letter <= 'F') return letter - 'A' + 10;
    if (letter >= 'a' && letter <= 'f') return letter - 'a' + 10;
    return std::nullopt;
}

std::string two_digits(unsigned value) {
    char text[3];
    std::snprintf(text, sizeof text, "%02X", value & 0xFFU);
    return text;
}

// Six digits as three numbers: hhmmss, ddmmyy.
std::optional<std::array<int, 3>> three_pairs(std::string_view text) {
    if (text.size() < 6) return std::nullopt;
    std::array<int, 3> pairs{};
    for (std::size_t i = 0; i < 6; ++i) {
        if (text[i] < '0' || text[i] > '9') return std::nullopt;
        pairs[i / 2] = pairs[i / 2] * 10 + (text[i] - '0');
    }
    return pairs;
}

std::optional<milliseconds> time_of_day(const std::string& text) {
    const auto pairs = three_pairs(text);
    if (!pairs || (*pairs)[0] > 23 || (*pairs)[1] > 59 || (*pairs)[2] > 60) return std::nullopt;
    milliseconds parts{0};
    if (text.size() > 6) {
        const auto fraction = parse_number("0" + text.substr(6));
        if (text[6] != '.' || !fraction) return std::nullopt;
        parts = milliseconds(std::lround(*fraction * 1000.0));
    }
    return hours((*pairs)[0]) + minutes((*pairs)[1]) + seconds((*pairs)[2]) + parts;
}

std::optional<sys_days> day_of(const std::string& text) {
    const auto pairs = three_pairs(text);
    if (!pairs || text.size() != 6) return std::nullopt;
    const int century = (*pairs)[2] >= first_year_of_positions ? 1900 : 2000;
    const year_month_day date{year(century + (*pairs)[2]), month(static_cast<unsigned>((*pairs)[1])),
                              day(static_cast<unsigned>((*pairs)[0]))};
    if (!date.ok()) return std::nullopt;
    return sys_days(date);
}

std::optional<double> axis_degrees(const std::string& packed, const std::string& letter, char positive, char negative,
                                   double limit) {
    if (packed.find_first_not_of("0123456789.") != std::string::npos || letter.size() != 1) return std::nullopt;
    const auto number = parse_number(packed);
    const auto degrees = number ? unpacked_minutes(*number) : std::nullopt;
    if (!degrees || *degrees > limit || (letter[0] != positive && letter[0] != negative)) return std::nullopt;
    return letter[0] == positive ? *degrees : -*degrees;
}

std::optional<GeographicPoint> place_of(const NmeaSentence& sentence, std::size_t from) {
    const auto latitude = axis_degrees(sentence.fields[from], sentence.fields[from + 1], 'N', 'S', 90.0);
    const auto longitude = axis_degrees(sentence.fields[from + 2], sentence.fields[from + 3], 'E', 'W', 180.0);
    if (!latitude || !longitude) return std::nullopt;
    return GeographicPoint{*longitude == 180.0 ? -180.0 : *longitude, *latitude};
}

std::optional<NmeaPosition> gga(const NmeaSentence& sentence) {
    if (sentence.fields.size() < 8) return std::nullopt;
    NmeaPosition position;
    const auto time = time_of_day(sentence.fields[0]);
    const std::string& quality = sentence.fields[5];
    if (quality.size() != 1 || quality[0] < '0' || quality[0] > '9') return std::nullopt;
    position.quality = quality[0] - '0';
    if (!time && position.quality != 0) return std::nullopt;
    position.time_of_day = time.value_or(milliseconds{0});
    if (position.quality == 0) return position;
    position.at = place_of(sentence, 1);
    position.hdop = parse_number(sentence.fields[7]);
    if (position.hdop && *position.hdop <= 0.0) position.hdop.reset();
    return position.at ? std::optional(position) : std::nullopt;
}

std::optional<NmeaPosition> rmc(const NmeaSentence& sentence) {
    if (sentence.fields.size() < 9) return std::nullopt;
    NmeaPosition position;
    const auto time = time_of_day(sentence.fields[0]);
    const bool none = sentence.fields[1] == "V" || (sentence.fields.size() > 11 && sentence.fields[11] == "N");
    if (!none && (sentence.fields[1] != "A" || !time)) return std::nullopt;
    position.time_of_day = time.value_or(milliseconds{0});
    position.day = day_of(sentence.fields[8]);
    if (none) return position;
    position.at = place_of(sentence, 2);
    return position.at ? std::optional(position) : std::nullopt;
}

}  // namespace

std::uint8_t nmea_sum(std::string_view between) {
    std::uint8_t sum = 0;
    for (const char letter : between) sum = static_cast<std::uint8_t>(sum ^ static_cast<unsigned char>(letter));
    return sum;
}

tl::expected<NmeaSentence, std::string> read_nmea_line(std::string_view line) {
    const std::string shown = quoted_for_display(std::string(line.substr(0, longest_line)));
    const auto start = line.rfind('$');
    if (line.size() > longest_line || start == std::string_view::npos)
        return tl::unexpected(Words::tell("found {1}, expected a sentence that begins with \"$\".", {shown}));
    const std::string_view sentence = trimmed(line.substr(start + 1));
    const auto star = sentence.rfind('*');
    const auto high = star + 3 == sentence.size() ? hexadecimal_digit(sentence[star + 1]) : std::nullopt;
    const auto low = high ? hexadecimal_digit(sentence[star + 2]) : std::nullopt;
    if (star == std::string_view::npos || !low)
        return tl::unexpected(Words::tell("found {1}, expected a sum of two digits behind a \"*\" at its end.", {shown}));
    const std::string_view between = sentence.substr(0, star);
    const unsigned said = static_cast<unsigned>(*high * 16 + *low);
    if (const unsigned sum = nmea_sum(between); sum != said)
        return tl::unexpected(Words::tell("the sum says {1}, but the sentence makes {2}: something of {3} was lost.",
                                          {two_digits(said), two_digits(sum), shown}));
    NmeaSentence read;
    std::string_view rest = between;
    const auto head = rest.substr(0, std::min(rest.find(','), rest.size()));
    if (head.size() < 4 || !std::all_of(head.begin(), head.end(), [](char letter) {
            return (letter >= 'A' && letter <= 'Z') || (letter >= '0' && letter <= '9');
        }))
        return tl::unexpected(Words::tell("found {1}, expected the kind of a sentence.", {shown}));
    read.talker = head.substr(0, head.size() - 3);
    read.type = head.substr(head.size() - 3);
    rest.remove_prefix(head.size());
    while (!rest.empty()) {
        rest.remove_prefix(1);
        const auto end = std::min(rest.find(','), rest.size());
        read.fields.emplace_back(rest.substr(0, end));
        rest.remove_prefix(end);
    }
    return read;
}

std::optional<NmeaPosition> nmea_position(const NmeaSentence& sentence) {
    if (sentence.type == "GGA") return gga(sentence);
    if (sentence.type == "RMC") return rmc(sentence);
    return std::nullopt;
}

std::optional<NmeaErrors> nmea_errors(const NmeaSentence& sentence) {
    if (sentence.type != "GST" || sentence.fields.size() < 7) return std::nullopt;
    const auto time = time_of_day(sentence.fields[0]);
    const auto latitude = parse_number(sentence.fields[5]);
    const auto longitude = parse_number(sentence.fields[6]);
    if (!time || !latitude || !longitude || *latitude < 0.0 || *longitude < 0.0) return std::nullopt;
    return NmeaErrors{*time, *latitude, *longitude};
}

}  // namespace plugside
