#include "app/reading/place_words.h"

#include <QCoreApplication>
#include <algorithm>
#include <cmath>
#include <numbers>

#include "app/words/language.h"
#include "core/words/words.h"

namespace plugside {

namespace {

constexpr double earth_radius_m = 6'371'008.8;  // the mean radius of WGS 84
constexpr double reach_m = 50'000.0;
constexpr double told_in_field_units_m = 3'000.0;
constexpr double metres_a_mile = 1609.344;

class PlaceWords {
    Q_DECLARE_TR_FUNCTIONS(PlaceWords)
};

double radians(double degrees) { return degrees * std::numbers::pi / 180.0; }

QString one_axis(double degrees, const QString& positive, const QString& negative) {
    return QStringLiteral("%1° %2").arg(std::abs(degrees), 0, 'f', 5).arg(degrees < 0.0 ? negative : positive);
}

}  // namespace

double distance_on_earth_m(GeographicPoint a, GeographicPoint b) {
    const double half_latitude = std::sin(radians(b.latitude_degrees - a.latitude_degrees) / 2.0);
    const double half_longitude = std::sin(radians(b.longitude_degrees - a.longitude_degrees) / 2.0);
    const double h = half_latitude * half_latitude + std::cos(radians(a.latitude_degrees)) *
                                                         std::cos(radians(b.latitude_degrees)) * half_longitude *
                                                         half_longitude;
    return 2.0 * earth_radius_m * std::asin(std::sqrt(std::min(1.0, h)));
}

std::optional<std::pair<NamedPlace, double>> nearest_of(const std::vector<NamedPlace>& others, GeographicPoint at) {
    std::optional<std::pair<NamedPlace, double>> nearest;
    for (const NamedPlace& other : others) {
        const double distance = distance_on_earth_m(other.at, at);
        if (!nearest || distance < nearest->second) nearest = {other, distance};
    }
    return nearest;
}

bool in_reach(double distance_m) { return distance_m <= reach_m; }

QString degrees_words(GeographicPoint at) {
    return one_axis(at.latitude_degrees, PlaceWords::tr("N"), PlaceWords::tr("S")) + QStringLiteral(", ") +
           one_axis(at.longitude_degrees, PlaceWords::tr("E"), PlaceWords::tr("W"));
}

QString distance_words(const NamedPlace& other, double distance_m, LengthUnits units) {
    QString far;
    if (distance_m < told_in_field_units_m) {
        far = QString::fromStdString(ground_distance(Metres::of(distance_m), units));
    } else {
        const bool metric = units == LengthUnits::metres;
        const double shown = distance_m / (metric ? 1000.0 : metres_a_mile);
        far = (metric ? PlaceWords::tr("%1 km") : PlaceWords::tr("%1 miles"))
                  .arg(locale_spoken().toString(static_cast<qlonglong>(std::llround(shown))));
    }
    return in_reach(distance_m) ? PlaceWords::tr("%1 from %2").arg(far, other.name)
                                : PlaceWords::tr("%1 from %2: hardly the same field").arg(far, other.name);
}

}  // namespace plugside
