#include "app/canvas/palette.h"

#include <QFontDatabase>
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <set>
#include <string>

#include "tests/app/application.h"

// The font library keeps 288 bytes to the program's end; a leak of ours would not have it in its trace.
extern "C" const char* __lsan_default_suppressions();
extern "C" const char* __lsan_default_suppressions() { return "leak:libfontconfig"; }

namespace plugside {
namespace {

TEST_F(OnScreen, AFontFamilyIsThere) {
    // without one every word of the window is a row of empty boxes
    EXPECT_FALSE(QFontDatabase::families().isEmpty());
}

// WCAG 2.2, definition of contrast ratio: black on white is 21, a colour on itself 1; the others as tables of accessible colours give
// them [memory].
TEST(Palette, ContrastIsMeasuredAsPublished) {
    struct Published {
        QRgb ink;
        QRgb ground;
        double ratio;
    };
    for (const Published& row :
         {Published{0x000000, 0xFFFFFF, 21.0}, Published{0xFFFFFF, 0x000000, 21.0}, Published{0x767676, 0xFFFFFF, 4.54},
          Published{0x777777, 0xFFFFFF, 4.48}, Published{0x595959, 0xFFFFFF, 7.00}, Published{0x949494, 0xFFFFFF, 3.03},
          Published{0xFF0000, 0xFFFFFF, 4.00}, Published{0x0000FF, 0xFFFFFF, 8.59}, Published{0x008000, 0xFFFFFF, 5.14},
          Published{0x767676, 0x767676, 1.0}})
        EXPECT_NEAR(contrast_ratio(QColor(row.ink), QColor(row.ground)), row.ratio, 0.005) << std::hex << row.ink;
}

TEST(Palette, EveryPairInUseHasTheContrastItsUseAsksFor) {
    for (const Theme theme : {Theme::light, Theme::sunlight}) {
        std::map<PairUse, double> least;
        for (const ColourPair& pair : colour_pairs(style_of(theme))) {
            const double contrast = contrast_ratio(pair.ink, pair.ground);
            EXPECT_GE(contrast, least_contrast(pair.use))
                << pair.ink_name << " on " << pair.ground_name << " (" << pair.ink.name().toStdString() << " on "
                << pair.ground.name().toStdString() << "), theme " << static_cast<int>(theme);
            least.try_emplace(pair.use, contrast).first->second = std::min(least[pair.use], contrast);
        }
        RecordProperty(theme == Theme::light ? "least_text_light" : "least_text_sunlight",
                       std::to_string(least[PairUse::text]));
        RecordProperty(theme == Theme::light ? "least_mark_light" : "least_mark_sunlight",
                       std::to_string(least[PairUse::mark]));
    }
}

TEST(Palette, EveryColourOfTheStyleStandsInAPair) {
    std::ifstream header(std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "app" / "canvas" / "palette.h");
    std::string text((std::istreambuf_iterator<char>(header)), std::istreambuf_iterator<char>());
    text.resize(text.find("Colours made of two others"));
    std::set<std::string> paired;
    for (const ColourPair& pair : colour_pairs(style_of(Theme::light))) {
        paired.insert(pair.ink_name);
        paired.insert(pair.ground_name);
    }
    const std::regex member(R"(    QColor (\w+);)");
    int members = 0;
    for (std::sregex_iterator found(text.begin(), text.end(), member); found != std::sregex_iterator(); ++found, ++members)
        EXPECT_TRUE(paired.contains((*found)[1])) << (*found)[1] << " is in no pair of colour_pairs";
    EXPECT_GE(members, 20);
    for (int tint = 1; tint <= 4; ++tint) EXPECT_TRUE(paired.contains("tint " + std::to_string(tint)));
}

// A colour that is made where it is painted would stand in no pair. Paper has four inks of its own: sheets/figure_output.cpp.
TEST(Palette, NothingIsPaintedInAColourOfItsOwn) {
    const std::regex colour(
        R"(QColor\((?!Qt::transparent|blend)[^)&]|Qt::(white|black|red|green|blue|gray|yellow|cyan|magenta)\b)");
    int sources = 0;
    for (const auto& entry :
         std::filesystem::recursive_directory_iterator(std::filesystem::path(PLUGSIDE_SOURCE_DIR) / "app")) {
        const std::string name = entry.path().generic_string();
        if (entry.path().extension() != ".cpp" || name.ends_with("palette.cpp") ||
            name.ends_with("sheets/figure_output.cpp") || name.find("/batch/") != std::string::npos)
            continue;
        ++sources;
        std::ifstream source(entry.path());
        int at = 0;
        for (std::string line; std::getline(source, line);) {
            ++at;
            EXPECT_FALSE(std::regex_search(line, colour)) << name << ":" << at << ": " << line;
        }
    }
    EXPECT_GT(sources, 60);
}

}  // namespace
}  // namespace plugside
