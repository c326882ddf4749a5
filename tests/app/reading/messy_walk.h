// The made-up walk of messy_walk.py in a folder of its own, written once for all tests of the executable.
#pragma once

#include <gtest/gtest.h>

#include <QTemporaryDir>
#include <cstdlib>
#include <filesystem>
#include <string>
#include <vector>

namespace plugside {

class MessyWalk {
public:
    static const MessyWalk& written() {
        static const MessyWalk walk;
        return walk;
    }
    [[nodiscard]] std::filesystem::path operator/(const std::string& name) const { return folder() / name; }
    [[nodiscard]] std::vector<std::filesystem::path> files(const std::vector<std::string>& names) const {
        std::vector<std::filesystem::path> all;
        for (const std::string& name : names) all.push_back(folder() / name);
        return all;
    }
    // As a person drops them: all at once, in the order of their names.
    [[nodiscard]] std::vector<std::filesystem::path> all() const {
        return files({"IMG_0001.jpg", "IMG_0002.jpg", "IMG_0003.jpg", "cut-off.gpx", "from-the-office.txt", "heaps.dbf",
                      "heaps.shp", "heaps.shx", "north-half.gpx", "paddock.geojson", "phone.csv", "second-receiver.gpx",
                      "well.kml"});
    }

private:
    MessyWalk() {
        const std::filesystem::path source = PLUGSIDE_SOURCE_DIR;
        const std::string call = "/usr/bin/python3 '" + (source / "tests" / "app" / "reading" / "messy_walk.py").string() +
                                 "' '" + (source / "sample-projects" / "creek-meadow" / "walk.gpx").string() + "' '" +
                                 folder().string() + "'";
        EXPECT_EQ(std::system(call.c_str()), 0);
    }
    [[nodiscard]] std::filesystem::path folder() const { return folder_.path().toStdString(); }

    QTemporaryDir folder_;
};

}  // namespace plugside
