// The reference systems that coordinates may be in, by code and name, and the way from one of them to longitude and
// latitude.
//
// Code:    "EPSG:25830". Only codes that the projection library's registry lists are taken: no text, file or address can
//          stand for one.
// List:    systems of the EPSG register in use: longitude/latitude and projected ones. A search finds those in whose code or
//          name every word of it occurs, capitals or not; exact codes first, then by code. One pass over some thousand
//          entries.
// Order:   whatever order a system defines for its axes: here east (or longitude) comes first.
// Errors:  an unknown code or one that cannot be turned into WGS 84 gives nothing; so does a place it has no answer for.
// Threads: an object is used from one thread at a time.
#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "geo/frame/local_frame.h"

namespace plugside {

struct ReferenceSystem {
    std::string code;
    std::string name;
    bool projected = true;  // eastings and northings rather than longitudes and latitudes
    friend bool operator==(const ReferenceSystem&, const ReferenceSystem&) = default;
};

[[nodiscard]] std::vector<ReferenceSystem> reference_systems(std::string_view search, std::size_t most = 200);

class ToGeographic {
public:
    // Nothing for a code that is not of the register.
    [[nodiscard]] static std::optional<ToGeographic> from(const std::string& code);
    ToGeographic(ToGeographic&&) noexcept;
    ToGeographic& operator=(ToGeographic&&) noexcept;
    ~ToGeographic();

    [[nodiscard]] std::optional<GeographicPoint> place(double east, double north) const;

private:
    struct Library;
    explicit ToGeographic(std::unique_ptr<Library> library);
    std::unique_ptr<Library> library_;
};

// Whether the code is one of the register's.
[[nodiscard]] bool is_reference_system(const std::string& code);

}  // namespace plugside
