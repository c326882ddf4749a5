// Short GPX files for tests.
#pragma once

#include <string>

namespace plugside::testing_support {

inline std::string gpx(const std::string& inside, const std::string& version = "1.1") {
    return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"" + version +
           "\" creator=\"a handheld\" xmlns=\"http://www.topografix.com/GPX/1/" + version.substr(2) + "\">\n" + inside +
           "\n</gpx>\n";
}

inline std::string wpt(const std::string& inside, const std::string& lat = "38.25", const std::string& lon = "-120.5") {
    return "<wpt lat=\"" + lat + "\" lon=\"" + lon + "\">" + inside + "</wpt>\n";
}

}  // namespace plugside::testing_support
