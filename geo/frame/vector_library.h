// The vector library (GDAL) as this project uses it: the drivers in use, no network, no messages on the terminal.
//
// `prepare_vector_library` registers the drivers of GeoPackage, GeoJSON, KML, Shapefile, FlatGeobuf and, for photographs,
// JPEG, and nothing else; reading side files of pictures is switched off; it shuts the library's and the projection
// library's doors to the network. It may be called any number of times, from any thread. `LibraryMessages` gathers what the
// library says while it lives, on its own thread, in place of printing it.
#pragma once

#include <string>
#include <vector>

namespace plugside {

void prepare_vector_library();

class LibraryMessages {
public:
    LibraryMessages();
    ~LibraryMessages();
    LibraryMessages(const LibraryMessages&) = delete;
    LibraryMessages& operator=(const LibraryMessages&) = delete;

    // The first failure said, or empty.
    [[nodiscard]] const std::string& failure() const { return failure_; }
    [[nodiscard]] const std::vector<std::string>& warnings() const { return warnings_; }
    void note(bool is_failure, const char* message);

private:
    std::string failure_;
    std::vector<std::string> warnings_;
};

}  // namespace plugside
