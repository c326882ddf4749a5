// The PDF as other programs see it: poppler's tools read its text, fonts, sizes and lines.
#include "app/sheets/sheet_files.h"

#include <QFontMetricsF>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QXmlStreamReader>
#include <cmath>
#include <filesystem>

#include "app/sheets/lettering.h"
#include "app/sheets/sheet_contents.h"
#include "core/probing/instruction.h"
#include "core/survey/refusal.h"
#include "tests/app/application.h"
#include "tests/app/sheets/sheet_example.h"

namespace plugside {
namespace {

constexpr double most_off_mm = 0.2;

// A closed or open path as poppler gives it again, in millimetres on the page.
struct Path {
    QRectF box;
    bool curved = false;
    bool black_inside = false;
    bool white_inside = false;
    double width_mm = 0.0;
};

class PrintedSheets : public OnScreen {
protected:
    QString write(const SheetInput& input, const char* name = "sheets.pdf") {
        const QString file = folder_.filePath(QLatin1String(name));
        const auto done = write_sheets(input, file.toStdString());
        EXPECT_TRUE(done) << (done ? "" : sentence(done.error()));
        return file;
    }
    // All words with single blanks, in the order painted, whatever lines they stand in.
    static QString words_of(const QString& file) {
        const auto text = output_of("pdftotext", {"-raw", file, "-"});
        EXPECT_TRUE(text) << "pdftotext (poppler-utils) did not read the file";
        return QString::fromUtf8(text.value_or(QByteArray())).simplified();
    }
    static std::vector<Path> paths_of(const QString& file, int page);
    QTemporaryDir folder_;
};

Path path_from(const QString& style, const QString& d, const QString& transform) {
    double scale = 1.0;
    static const QRegularExpression matrix(QStringLiteral("matrix\\(([-0-9.]+),0,0,([-0-9.]+),0,0\\)"));
    if (const auto found = matrix.match(transform); found.hasMatch()) scale = found.captured(1).toDouble();
    const double mm = scale * 25.4 / 72.0;
    static const QRegularExpression number(QStringLiteral("[-0-9.]+"));
    std::vector<double> numbers;
    for (auto all = number.globalMatch(d); all.hasNext();) numbers.push_back(all.next().captured().toDouble());
    Path path;
    path.curved = d.contains(QLatin1Char('C'));
    path.black_inside = style.contains(QStringLiteral("fill:rgb(0%,0%,0%)"));
    path.white_inside = style.contains(QStringLiteral("fill:rgb(100%,100%,100%)"));
    static const QRegularExpression width(QStringLiteral("stroke-width:([0-9.]+)"));
    if (const auto found = width.match(style); found.hasMatch()) path.width_mm = found.captured(1).toDouble() * mm;
    double left = 1e9, right = -1e9, top = 1e9, bottom = -1e9;
    for (std::size_t i = 0; i + 1 < numbers.size(); i += 2) {
        left = std::min(left, numbers[i]);
        right = std::max(right, numbers[i]);
        top = std::min(top, numbers[i + 1]);
        bottom = std::max(bottom, numbers[i + 1]);
    }
    path.box = QRectF(QPointF(left, top) * mm, QPointF(right, bottom) * mm);
    return path;
}

std::vector<Path> PrintedSheets::paths_of(const QString& file, int page) {
    const QString svg = file + QStringLiteral(".svg");
    const QString number = QString::number(page);
    EXPECT_TRUE(output_of("pdftocairo", {"-svg", "-f", number, "-l", number, file, svg}));
    QFile opened(svg);
    EXPECT_TRUE(opened.open(QIODevice::ReadOnly));
    QXmlStreamReader xml(&opened);
    std::vector<Path> paths;
    bool in_symbol = false;  // letters
    while (!xml.atEnd()) {
        xml.readNext();
        if (xml.name() == QLatin1String("defs")) in_symbol = xml.isStartElement();
        if (xml.isStartElement() && !in_symbol && xml.name() == QLatin1String("path"))
            paths.push_back(path_from(xml.attributes().value("style").toString(), xml.attributes().value("d").toString(),
                                      xml.attributes().value("transform").toString()));
    }
    EXPECT_FALSE(xml.hasError()) << xml.errorString().toStdString();
    return paths;
}

bool same_size(double a, double b) { return std::abs(a - b) < 0.03; }

// Circles of one size in the order painted: the rungs of a card that stands alone, first the last one.
std::vector<QPointF> rungs_among(const std::vector<Path>& paths, std::size_t count) {
    std::vector<const Path*> circles;
    for (const Path& path : paths)
        if (path.curved && same_size(path.box.width(), path.box.height()) && path.width_mm > 0.0 &&
            (path.black_inside || path.white_inside))
            circles.push_back(&path);
    std::vector<QPointF> places;
    for (std::size_t i = 0; i < count && i < circles.size(); ++i)
        places.push_back(circles[circles.size() - 1 - i]->box.center());
    EXPECT_TRUE(!circles.empty() && circles.back()->black_inside) << "the first rung is filled";
    return places;
}

double scale_on(const QString& text, const char* pattern) {
    const auto found = QRegularExpression(QLatin1String(pattern)).match(text);
    EXPECT_TRUE(found.hasMatch()) << text.toStdString();
    return found.captured(1).toDouble();
}

TEST_F(PrintedSheets, HaveTapedDistancesToTheScaleThatTheirTextNames) {
    const ExampleField example = field_with_both_kinds();
    for (const Paper paper : {Paper::letter, Paper::a4})
        for (const LengthUnits units : {LengthUnits::feet_and_inches, LengthUnits::metres}) {
            SheetInput input = sheets_of(example, Language::english, units, paper);
            input.pages = {false, false, false, false, true, false, {1}};
            const QString file = write(input);
            const ProbeSite& site = example.plan.probes[0];
            const std::vector<Path> paths = paths_of(file, 1);
            const std::vector<QPointF> rungs = rungs_among(paths, site.rungs.size() + 1);
            const double scale = scale_on(words_of(file), "1:(\\d+), pale");
            // painted before the rungs: the plug's dot
            const QPointF plug = rungs.back();
            for (std::size_t i = 0; i < site.rungs.size(); ++i) {
                EXPECT_NEAR(plug.y() - rungs[i].y(), (site.ladder.along + site.rungs[i]).value() * 1000.0 / scale,
                            most_off_mm);
                EXPECT_NEAR(plug.x(), rungs[i].x(), most_off_mm);
            }
        }
}

TEST_F(PrintedSheets, HaveTheRowAndTheWholeTapeBetweenMoundsToScale) {
    const ExampleField example = field_with_both_kinds();
    SheetInput input = sheets_of(example);
    input.pages = {false, false, false, false, true, false, {4}};
    const QString file = write(input);
    const ProbeSite& site = example.plan.probes[3];
    const std::vector<Path> paths = paths_of(file, 1);
    const QString text = words_of(file);
    const double row = scale_on(text, "row 1:(\\d+)");
    const double tape = scale_on(text, "tape 1:(\\d+)");
    const std::vector<QPointF> rungs = rungs_among(paths, site.rungs.size());
    for (std::size_t i = 1; i < rungs.size(); ++i)
        EXPECT_NEAR(rungs[i].x() - rungs[0].x(), site.rungs[i].value() * 1000.0 / row, most_off_mm);
    std::vector<double> tapes;
    for (const Path& path : paths)
        if (same_size(path.width_mm, 0.5) && path.box.width() < 0.01) tapes.push_back(path.box.height());
    ASSERT_EQ(tapes.size(), 1U);
    EXPECT_NEAR(tapes[0], 10.0 * 1000.0 / tape, most_off_mm);
}

TEST_F(PrintedSheets, CanBeSearchedForWhatThePlanSaysInBothLanguages) {
    const ExampleField example = field_with_both_kinds();
    for (const Language language : {Language::english, Language::spanish})
        for (const LengthUnits units : {LengthUnits::feet_and_inches, LengthUnits::metres}) {
            const SheetInput input = sheets_of(example, language, units);
            const QString text = words_of(write(input));
            const auto contents = sheet_contents(input);
            ASSERT_TRUE(contents);
            for (const SetCard& card : contents->cards) {
                for (const QString& told :
                     {card.code, card.place, card.at, card.handheld, card.chance, card.instruction, card.look_for})
                    EXPECT_TRUE(text.contains(told)) << told.toStdString();
                for (const RungToTick& rung : card.rungs)
                    EXPECT_TRUE(text.contains(rung.reading)) << rung.reading.toStdString();
                const LanguageHere here(language);
                const ProbeSite& site = example.plan.probes[example.plan.sets[card.set].probe];
                EXPECT_TRUE(text.contains(QString::fromStdString(instruction(site, example.field.survey, units))));
                EXPECT_TRUE(card.chance.contains(QString::number(site.hit.in_100())));
            }
            for (const CautionRow& row : contents->cautions)
                EXPECT_TRUE(text.contains(row.reason)) << row.reason.toStdString();
            EXPECT_TRUE(text.contains(contents->animals));
            EXPECT_TRUE(text.contains(contents->decides));
            EXPECT_EQ(text.contains(QStringLiteral("plug side of M001")), language == Language::english);
            EXPECT_EQ(text.contains(QStringLiteral("lado del tapón de M001")), language == Language::spanish);
        }
}

TEST_F(PrintedSheets, EmbedEveryFont) {
    const QString file = write(sheets_of(field_with_both_kinds()));
    const auto fonts = output_of("pdffonts", {file});
    ASSERT_TRUE(fonts);
    const QStringList lines = QString::fromUtf8(*fonts).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    ASSERT_GE(lines.size(), 4) << "a heading, its line, plain and bold";
    const qsizetype embedded = lines[0].indexOf(QStringLiteral("emb"));
    for (const QString& line : lines.mid(2)) EXPECT_EQ(line.mid(embedded, 3), QStringLiteral("yes")) << line.toStdString();
}

TEST_F(PrintedSheets, HaveNoWordSmallerThanNinePoints) {
    for (const Paper paper : {Paper::letter, Paper::a4}) {
        const QString file = write(sheets_of(field_with_both_kinds(), Language::spanish, LengthUnits::metres, paper));
        const auto boxes = output_of("pdftotext", {"-bbox", file, "-"});
        ASSERT_TRUE(boxes);
        // the height of a word's box is that of its font: ascent and descent
        QFont font = sheet_font(false);
        font.setPixelSize(1000);
        const double height_of_a_point = (QFontMetricsF(font).ascent() + QFontMetricsF(font).descent()) / 1000.0;
        static const QRegularExpression word(
            QStringLiteral("<word xMin=\"([0-9.]+)\" yMin=\"([0-9.]+)\" xMax=\"([0-9.]+)\" yMax=\"([0-9.]+)\">([^<]*)<"));
        int words = 0;
        for (auto all = word.globalMatch(QString::fromUtf8(*boxes)); all.hasNext(); ++words) {
            const auto found = all.next();
            EXPECT_GE((found.captured(4).toDouble() - found.captured(2).toDouble()) / height_of_a_point, 8.95)
                << found.captured(5).toStdString();
        }
        EXPECT_GT(words, 300);
    }
}

TEST_F(PrintedSheets, AreOnThePaperAskedFor) {
    for (const auto& [paper, size] : {std::pair{Paper::letter, "612 x 792 pts"}, std::pair{Paper::a4, "595 x 842 pts"}}) {
        const auto facts =
            output_of("pdfinfo", {write(sheets_of(field_with_sets(3), Language::english, LengthUnits::metres, paper))});
        ASSERT_TRUE(facts);
        EXPECT_TRUE(facts->contains(size)) << facts->toStdString();
        EXPECT_TRUE(facts->contains("Creator:         Plugside"));
    }
}

TEST_F(PrintedSheets, ThatAreStoppedOrHaveNoFolderLeaveNothingBehind) {
    const ExampleField example = field_with_sets(40);
    std::stop_source source;
    Progress progress;
    progress.stop = source.get_token();
    progress.report = [&](double share, std::string_view) {
        if (share > 0.3) source.request_stop();
    };
    const auto stopped = write_sheets(sheets_of(example), folder_.filePath("stopped.pdf").toStdString(), progress);
    ASSERT_FALSE(stopped);
    EXPECT_EQ(stopped.error().code, Refusal::Code::stopped);
    const auto nowhere = write_sheets(sheets_of(example), folder_.filePath("no/folder/sheets.pdf").toStdString());
    ASSERT_FALSE(nowhere);
    EXPECT_EQ(nowhere.error().code, Refusal::Code::cannot_write);
    EXPECT_TRUE(std::filesystem::is_empty(folder_.path().toStdString()));
}

TEST_F(PrintedSheets, TellHowFarTheyAreAndNeverGoBack) {
    Progress progress;
    std::vector<double> shares;
    progress.report = [&](double share, std::string_view) { shares.push_back(share); };
    ASSERT_TRUE(write_sheets(sheets_of(field_with_sets(20)), folder_.filePath("sheets.pdf").toStdString(), progress));
    EXPECT_GT(shares.size(), 20U);
    EXPECT_TRUE(std::is_sorted(shares.begin(), shares.end()));
}

}  // namespace
}  // namespace plugside
