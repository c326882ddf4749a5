// Any bytes as the end of a file of positions: a place on the earth or none, and remarks of one line.
#include <cmath>
#include <cstdint>
#include <cstdlib>

#include "geo/read/position_file.h"

namespace {

void demand(bool holds) {
    if (!holds) std::abort();
}

void read(const plugside::FileEnd& end) {
    const auto reading = plugside::read_positions(end, "track");
    demand(reading.remarks.size() <= plugside::PositionReading::most_remarks &&
           reading.remarks.size() <= reading.not_understood);
    for (const std::string& remark : reading.remarks) demand(!remark.empty() && remark.find('\n') == std::string::npos);
    if (!reading.last) return;
    demand(std::abs(reading.last->at.latitude_degrees) <= 90.0 && reading.last->at.longitude_degrees >= -180.0 &&
           reading.last->at.longitude_degrees < 180.0);
    demand(reading.last->ends_at <= end.size);
    demand(!reading.last->radius_m || *reading.last->radius_m > 0.0);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    plugside::FileEnd end;
    end.bytes.assign(reinterpret_cast<const char*>(data), size);
    end.size = size;
    end.first_line = end.bytes.substr(0, end.bytes.find('\n'));
    read(end);
    // the same as the end of a longer file whose first line was another
    end.size += 1'000'000;
    end.first_line = "lat,lon,time,accuracy";
    read(end);
    return 0;
}
