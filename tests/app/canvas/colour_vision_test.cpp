#include "tests/app/canvas/colour_vision.h"

#include <gtest/gtest.h>

#include <QProcess>
#include <QRegularExpression>

#include "app/canvas/mound_glyph.h"
#include "app/canvas/palette.h"

namespace plugside {
namespace {

// Neighbours that nothing but colour told apart would have to be this far apart. Our assumption: about twice what is just noticed.
constexpr double told_apart = 5.0;

QStringList words_of_r(const QString& script) {
    QProcess r;
    r.start(QStringLiteral("Rscript"), {QStringLiteral("--vanilla"), QStringLiteral("-e"), script});
    r.waitForFinished(120000);
    EXPECT_EQ(r.exitCode(), 0) << r.readAllStandardError().toStdString();
    return QString::fromUtf8(r.readAllStandardOutput())
        .split(QRegularExpression(QStringLiteral("\\s+")), Qt::SkipEmptyParts);
}

// R package colorspace (Zeileis and others; Debian r-cran-colorspace): simulate_cvd with the matrices of Machado 2009, and its L*a*b*.
TEST(ColourVision, IsSimulatedAsByTheReferencePackage) {
    QStringList names;
    const MapStyle& style = style_of(Theme::light);
    std::vector<QColor> colours(style.tints.begin(), style.tints.end());
    for (const QColor& colour : {style.act, style.run, style.soil, style.dry_soil, style.caution_ink})
        colours.push_back(colour);
    for (const QColor& colour : colours) names << QLatin1Char('\'') + colour.name() + QLatin1Char('\'');
    const QStringList said = words_of_r(QStringLiteral("suppressMessages(library(colorspace)); x <- c(%1); "
                                                       "for (m in list(protanomaly_cvd, deutanomaly_cvd, tritanomaly_cvd)) "
                                                       "cat(simulate_cvd(x, m[['10']], linear = TRUE), ''); "
                                                       "cat(t(as(hex2RGB(x), 'LAB')@coords))")
                                            .arg(names.join(QLatin1Char(','))));
    ASSERT_EQ(said.size(), static_cast<qsizetype>(6 * colours.size()));
    qsizetype at = 0;
    for (const Cones cones : {Cones::without_long, Cones::without_middle, Cones::without_short})
        for (const QColor& colour : colours) {
            const QColor theirs(said[at++]);
            const QColor ours = seen_with(cones, colour);
            EXPECT_LE(std::abs(theirs.red() - ours.red()), 1) << colour.name().toStdString();
            EXPECT_LE(std::abs(theirs.green() - ours.green()), 1) << colour.name().toStdString();
            EXPECT_LE(std::abs(theirs.blue() - ours.blue()), 1) << colour.name().toStdString();
        }
    for (const QColor& colour : colours)
        for (const double ours : lab_of(colour))
            EXPECT_NEAR(said[at++].toDouble(), ours, 0.1) << colour.name().toStdString();
}

TEST(ColourVision, KeepsGreysAsTheyAre) {
    for (const Cones cones : all_eyes)
        for (const int grey : {0, 60, 128, 200, 255})
            EXPECT_LE(std::abs(seen_with(cones, QColor(grey, grey, grey)).green() - grey), 1);
}

// A letter and a dotted edge tell systems apart, too.
TEST(ColourVision, TheFourTintsOfSystemsStayApartInTheFieldForAllEyes) {
    for (const Theme theme : {Theme::light, Theme::sunlight})
        for (const Cones cones : all_eyes)
            for (std::size_t a = 0; a < 4; ++a)
                for (std::size_t b = 0; b < a; ++b)
                    EXPECT_GE(colour_distance(style_of(theme).tinted(a), style_of(theme).tinted(b), cones), told_apart)
                        << "tints " << a << " and " << b << ", eyes " << static_cast<int>(cones);
}

// Freshness stands in the shape only where a mound was crushed: fresh, unread and older soil are told apart by colour.
TEST(ColourVision, FreshOlderAndUnreadSoilStayApartForAllEyes) {
    const std::array<Freshness, 4> kinds{Freshness::fresh, Freshness::unknown, Freshness::older, Freshness::crushed};
    for (const Theme theme : {Theme::light, Theme::sunlight})
        for (const Cones cones : all_eyes)
            for (std::size_t a = 0; a < kinds.size(); ++a)
                for (std::size_t b = 0; b < a; ++b)
                    EXPECT_GE(colour_distance(soil_colour(kinds[a], style_of(theme)), soil_colour(kinds[b], style_of(theme)),
                                              cones),
                              2.0 * told_apart);
}

TEST(ColourVision, RunsWhatIsDecidedAndCautionsStayApartForAllEyes) {
    for (const Theme theme : {Theme::light, Theme::sunlight}) {
        const MapStyle& style = style_of(theme);
        for (const Cones cones : all_eyes) {
            EXPECT_GE(colour_distance(style.run, style.act, cones), told_apart);
            EXPECT_GE(colour_distance(style.act, style.caution_ink, cones), told_apart);
            EXPECT_GE(colour_distance(style.run, style.caution_ink, cones), told_apart);
            EXPECT_GE(colour_distance(style.act, style.soil, cones), told_apart);
            EXPECT_GE(colour_distance(style.run, style.soil, cones), told_apart);
            // whoever confuses their inks (deuteranopes nearly do) has a bar and a triangle, their words, and the grounds
            EXPECT_GE(colour_distance(style.stop_ground, style.caution_ground, cones), told_apart);
        }
    }
}

// The tints before they were moved apart: a deuteranope saw the second and the third as one.
TEST(ColourVision, ColoursThatTheseEyesConfuseAreFound) {
    EXPECT_LT(colour_distance(QColor(0x7FB8C9), QColor(0xC6A4CF), Cones::without_middle), told_apart);
    EXPECT_GT(colour_distance(QColor(0x7FB8C9), QColor(0xC6A4CF), Cones::all), 4.0 * told_apart);
}

}  // namespace
}  // namespace plugside
