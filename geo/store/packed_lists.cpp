#include "geo/store/packed_lists.h"

#include <bit>
#include <cmath>
#include <cstdint>

namespace plugside {

namespace {

constexpr std::size_t count_bytes = 4;
constexpr std::size_t number_bytes = 8;

void put(std::string& bytes, std::uint64_t number, std::size_t width) {
    for (std::size_t i = 0; i < width; ++i) bytes.push_back(static_cast<char>((number >> (8 * i)) & 0xFFU));
}

void put(std::string& bytes, LocalPoint place) {
    put(bytes, std::bit_cast<std::uint64_t>(place.east_m), number_bytes);
    put(bytes, std::bit_cast<std::uint64_t>(place.north_m), number_bytes);
}

void put(std::string& bytes, const Places& places) {
    put(bytes, places.size(), count_bytes);
    for (const LocalPoint place : places) put(bytes, place);
}

// Takes from the front; once something is missing, `sound` stays false and zeros come.
class Reader {
public:
    explicit Reader(std::string_view bytes) : left_(bytes) {}

    std::uint64_t number(std::size_t width) {
        if (!has(width)) return 0;
        std::uint64_t number = 0;
        for (std::size_t i = 0; i < width; ++i)
            number |= static_cast<std::uint64_t>(static_cast<unsigned char>(left_[i])) << (8 * i);
        left_.remove_prefix(width);
        return number;
    }
    // Of things that take `least` bytes each at least.
    std::size_t count(std::size_t least) {
        const auto count = static_cast<std::size_t>(number(count_bytes));
        return sound_ && count <= left_.size() / least ? count : fail();
    }
    double metres() {
        const double number = std::bit_cast<double>(this->number(number_bytes));
        if (!(std::abs(number) <= furthest_place_m)) fail();  // what is no number at all neither
        return number;
    }
    std::string text() {
        const std::size_t length = count(1);
        std::string text(left_.substr(0, length));
        left_.remove_prefix(length);
        return text;
    }
    LocalPoint place() {
        const double east = metres();
        return {east, metres()};
    }
    Places places() {
        Places places(count(2 * number_bytes));
        for (LocalPoint& place : places) place = this->place();
        return places;
    }
    std::optional<UtcTime> time() {
        const auto there = number(1);
        if (there > 1) fail();
        if (there != 1) return std::nullopt;
        const auto milliseconds = static_cast<std::int64_t>(number(number_bytes));
        if (!is_project_time(milliseconds)) fail();
        return UtcTime{std::chrono::milliseconds(milliseconds)};
    }
    template <typename List>
    [[nodiscard]] std::optional<List> whole(List list) const {
        if (!sound_ || !left_.empty()) return std::nullopt;
        return list;
    }

private:
    [[nodiscard]] bool has(std::size_t bytes) {
        if (left_.size() < bytes) fail();
        return sound_;
    }
    std::size_t fail() {
        sound_ = false;
        left_ = {};
        return 0;
    }
    std::string_view left_;
    bool sound_ = true;
};

}  // namespace

std::string packed(const Texts& texts) {
    std::string bytes;
    put(bytes, texts.size(), count_bytes);
    for (const std::string& text : texts) {
        put(bytes, text.size(), count_bytes);
        bytes += text;
    }
    return bytes;
}

std::string packed(const Places& places) {
    std::string bytes;
    put(bytes, places);
    return bytes;
}

std::string packed(const Rings& rings) {
    std::string bytes;
    put(bytes, rings.size(), count_bytes);
    for (const Places& ring : rings) put(bytes, ring);
    return bytes;
}

std::string packed(const TrackSegment& segment) {
    std::string bytes;
    bytes.reserve(count_bytes + segment.size() * (3 * number_bytes + 1));
    put(bytes, segment.size(), count_bytes);
    for (const TrackPoint& fix : segment) {
        put(bytes, fix.at);
        put(bytes, fix.time ? 1U : 0U, 1);
        if (fix.time) put(bytes, static_cast<std::uint64_t>(fix.time->time_since_epoch().count()), number_bytes);
    }
    return bytes;
}

std::optional<Texts> unpacked_texts(std::string_view bytes) {
    Reader reader(bytes);
    Texts texts(reader.count(count_bytes));
    for (std::string& text : texts) text = reader.text();
    return reader.whole(std::move(texts));
}

std::optional<Places> unpacked_places(std::string_view bytes) {
    Reader reader(bytes);
    Places places = reader.places();
    return reader.whole(std::move(places));
}

std::optional<Rings> unpacked_rings(std::string_view bytes) {
    Reader reader(bytes);
    Rings rings(reader.count(count_bytes));
    for (Places& ring : rings) ring = reader.places();
    return reader.whole(std::move(rings));
}

std::optional<TrackSegment> unpacked_segment(std::string_view bytes) {
    Reader reader(bytes);
    TrackSegment segment(reader.count(2 * number_bytes + 1));
    for (TrackPoint& fix : segment) {
        fix.at = reader.place();
        fix.time = reader.time();
    }
    return reader.whole(std::move(segment));
}

}  // namespace plugside
