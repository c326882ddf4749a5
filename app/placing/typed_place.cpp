#include "app/placing/typed_place.h"

#include <QCoreApplication>
#include <QStringList>
#include <cmath>
#include <optional>

#include "geo/read/degrees_text.h"

namespace plugside {

namespace {

constexpr double furthest_m = 50'000.0;
constexpr double furthest_degrees = 80.0;  // what the plane can be asked for

QString words(const char* text) { return QCoreApplication::translate("TypedPlace", text); }

std::optional<std::pair<DegreesText, DegreesText>> two_numbers(const QString& text) {
    QStringList halves;
    for (const QString& between : {QStringLiteral(";"), QStringLiteral(", "), QStringLiteral(",")})
        if (halves.size() != 2) halves = text.split(between, Qt::SkipEmptyParts);
    if (halves.size() != 2) {
        const QStringList pieces = text.simplified().split(QLatin1Char(' '));
        if (pieces.size() % 2 != 0) return std::nullopt;
        const qsizetype half = pieces.size() / 2;
        halves = {pieces.mid(0, half).join(QLatin1Char(' ')), pieces.mid(half).join(QLatin1Char(' '))};
    }
    std::optional<DegreesText> numbers[2];
    for (qsizetype i = 0; i < 2; ++i) {
        const std::string half = halves[i].trimmed().toStdString();
        numbers[i] = parse_degrees(half);
        if (!numbers[i]) numbers[i] = parse_degrees(half, ',');
        if (!numbers[i]) return std::nullopt;
    }
    return std::pair{*numbers[0], *numbers[1]};
}

}  // namespace

tl::expected<LocalPoint, QString> typed_place(const QString& text, const FieldSurvey& field) {
    const QString wanted = text.trimmed();
    for (const Mound& mound : field.survey.mounds)
        if (QString::fromStdString(mound.name).compare(wanted, Qt::CaseInsensitive) == 0) return mound.plug;
    auto numbers = two_numbers(wanted);
    if (!numbers)
        return tl::unexpected(
            words(QT_TRANSLATE_NOOP("TypedPlace",
                                    "“%1” is no mark's name and no latitude and longitude, as in “34.0612, -106.8921”."))
                .arg(wanted));
    if (numbers->first.axis == Axis::longitude || numbers->second.axis == Axis::latitude)
        std::swap(numbers->first, numbers->second);
    const GeographicPoint place{numbers->second.degrees, numbers->first.degrees};
    const bool on_earth = std::abs(place.latitude_degrees) < 90.0 && std::abs(place.longitude_degrees) <= 180.0 &&
                          numbers->first.axis != Axis::longitude && numbers->second.axis != Axis::latitude;
    if (!on_earth)
        return tl::unexpected(words(QT_TRANSLATE_NOOP("TypedPlace",
                                                      "“%1” is no place: a latitude from -90 to 90 comes first, then a "
                                                      "longitude from -180 to 180."))
                                  .arg(wanted));
    const double apart = std::remainder(place.longitude_degrees - field.frame.centre().longitude_degrees, 360.0);
    const LocalPoint at =
        std::abs(apart) < furthest_degrees ? field.frame.to_local(place) : LocalPoint{2.0 * furthest_m, 0.0};
    if (!(std::hypot(at.east_m, at.north_m) <= furthest_m))
        return tl::unexpected(
            words(QT_TRANSLATE_NOOP("TypedPlace", "“%1” lies more than 50 km from the field.")).arg(wanted));
    return at;
}

}  // namespace plugside
