// The page for a phone, alone and in a real browser (Debian's chromium).
#include <QFile>
#include <QRegularExpression>
#include <QTemporaryDir>

#include "app/sheets/figure_output.h"
#include "app/sheets/sheet_contents.h"
#include "app/sheets/sheet_files.h"
#include "core/survey/refusal.h"
#include "tests/app/application.h"
#include "tests/app/sheets/sheet_example.h"
#include "tests/hostile/listener.h"

namespace plugside {
namespace {

constexpr qsizetype most_bytes = 2'000'000;

class PhonePage : public OnScreen {
protected:
    QString write(const SheetInput& input) {
        const QString file = folder_.filePath(QStringLiteral("phone.html"));
        const auto done = write_phone_page(input, file.toStdString());
        EXPECT_TRUE(done) << (done ? "" : sentence(done.error()));
        return file;
    }
    static QString text_of(const QString& file) {
        QFile opened(file);
        EXPECT_TRUE(opened.open(QIODevice::ReadOnly));
        return QString::fromUtf8(opened.readAll());
    }
    // What the browser makes of a page: the document after it is laid out. Everything it asks a network for goes to `proxy`.
    QString browsed(const QString& file, const QStringList& more = {}) {
        const QTemporaryDir profile;
        QStringList words{"--headless",
                          "--no-sandbox",
                          "--disable-gpu",
                          "--disable-quic",
                          "--no-first-run",
                          "--disable-background-networking",
                          "--disable-component-update",
                          "--disable-sync",
                          "--disable-dev-shm-usage",
                          "--hide-scrollbars",
                          "--user-data-dir=" + profile.path(),
                          "--window-size=360,740",
                          "--dump-dom"};
        words += more;
        words << QStringLiteral("file://") + file;
        const auto dom = output_of("chromium", words, 300);
        EXPECT_TRUE(dom) << "chromium did not open the page";
        return QString::fromUtf8(dom.value_or(QByteArray()));
    }
    // A page that shows a copy of it 360 px wide and tells its measures: the page itself has no scripts and lets none run, and a browser's
    // own window is never as narrow as a phone.
    QString measuring_copy(const QString& file) {
        QString text = text_of(file);
        static const QRegularExpression policy(QStringLiteral("<meta http-equiv=\"Content-Security-Policy\"[^>]*>"));
        text.remove(policy);
        text.replace(
            QStringLiteral("</body>"),
            QStringLiteral(
                "<script>const all=[...document.querySelectorAll('body *')].map(e=>e.getBoundingClientRect().right);"
                "parent.postMessage([innerWidth,document.documentElement.scrollWidth,Math.ceil(Math.max(...all)),"
                "getComputedStyle(document.body).backgroundColor].join('|'),'*')</script></body>"));
        write_text(QStringLiteral("copy.html"), text);
        return write_text(QStringLiteral("measured.html"),
                          QStringLiteral("<!DOCTYPE html><title></title><script>onmessage=e=>document.title=e.data</script>"
                                         "<iframe src=\"copy.html\" style=\"width:360px;height:740px;border:0\"></iframe>"));
    }
    QString write_text(const QString& name, const QString& text) {
        const QString file = folder_.filePath(name);
        QFile opened(file);
        EXPECT_TRUE(opened.open(QIODevice::WriteOnly));
        opened.write(text.toUtf8());
        return file;
    }
    static QStringList measures_in(const QString& dom) {
        static const QRegularExpression title(QStringLiteral("<title>([^<]*)</title>"));
        return title.match(dom).captured(1).split(QLatin1Char('|'));
    }
    QTemporaryDir folder_;
};

TEST_F(PhonePage, HoldsEverythingInItselfAndForbidsTheRest) {
    const QString text = text_of(write(sheets_of(field_with_both_kinds())));
    EXPECT_TRUE(text.contains(QStringLiteral("default-src 'none'; style-src 'unsafe-inline'")));
    for (const char* word :
         {"<script", "<link", "<img", "<iframe", "<object", "@import", "url(", "src=", "://", "javascript:", " on"})
        EXPECT_FALSE(text.contains(QRegularExpression(QRegularExpression::escape(QLatin1String(word)) +
                                                      (QLatin1String(word) == QLatin1String(" on") ? "[a-z]+=" : ""))))
            << word;
    static const QRegularExpression reference(QStringLiteral("href=\"([^\"]*)\""));
    for (auto all = reference.globalMatch(text); all.hasNext();) {
        const QString to = all.next().captured(1);
        EXPECT_TRUE(to.startsWith(QLatin1Char('#'))) << to.toStdString();
        EXPECT_TRUE(text.contains(QStringLiteral("id=\"%1\"").arg(to.mid(1)))) << to.toStdString();
    }
}

TEST_F(PhonePage, LeavesOutThePointsOfLinesThatNobodySees) {
    Figure figure(QSizeF(20.0, 20.0));
    Stroke line;
    for (int i = 0; i <= 1000; ++i) line.points.emplace_back(5.0 + 0.01 * i, 5.0 + (i % 2) * 0.01);
    figure.add(line);
    const QString svg = figure_svg(figure, QString());
    EXPECT_LT(svg.count(QLatin1Char('L')), 60);
    EXPECT_GT(svg.count(QLatin1Char('L')), 40);
    EXPECT_TRUE(svg.contains(QStringLiteral("M5 5L")));
    EXPECT_TRUE(svg.contains(QStringLiteral("L15 5\"")));
}

TEST_F(PhonePage, SaysWhatThePaperSaysInBothLanguages) {
    const ExampleField example = field_with_both_kinds();
    for (const Language language : {Language::english, Language::spanish}) {
        const SheetInput input = sheets_of(example, language, LengthUnits::metres);
        const QString text = text_of(write(input)).replace(QChar::Nbsp, QLatin1Char(' '));
        const auto contents = sheet_contents(input);
        EXPECT_TRUE(text.contains(QStringLiteral("<html lang=\"%1\">").arg(code_of(language))));
        for (const SetCard& card : contents->cards)
            for (const QString& told : {card.code, card.place, card.instruction, card.chance, card.at, card.look_for})
                EXPECT_TRUE(text.contains(told.toHtmlEscaped())) << told.toStdString();
        for (const CautionRow& row : contents->cautions) EXPECT_TRUE(text.contains(row.caution.sentence.toHtmlEscaped()));
        EXPECT_TRUE(text.contains(contents->decides));
    }
}

TEST_F(PhonePage, WritesNamesAsTextWhateverTheyHold) {
    ExampleField example = field_with_both_kinds();
    example.field.field_name = "<b onclick=\"x\">Mill & \"Sons\"</b>";
    example.field.survey.mounds[0].name = "<M&1>";
    example.plan.probes[0].key.from_mound = "<M&1>";
    const QString text = text_of(write(sheets_of(example)));
    EXPECT_FALSE(text.contains(QStringLiteral("<b onclick")));
    EXPECT_FALSE(text.contains(QStringLiteral("<M&1>")));
    EXPECT_TRUE(text.contains(QStringLiteral("&lt;M&amp;1&gt;")));
}

TEST_F(PhonePage, OfTwoHundredSetsIsUnderTwoMegabytes) {
    const QString file = write(sheets_of(field_with_sets(200)));
    EXPECT_LT(QFile(file).size(), most_bytes);
    EXPECT_EQ(text_of(file).count(QStringLiteral("<article")), 200);
}

TEST_F(PhonePage, InABrowserIsNoWiderThanASmallPhone) {
    ExampleField example = field_with_both_kinds();
    example.field.field_name = "Averylongfieldnamewithoutasingleblankthatsomebodytypedinonego";
    for (const Language language : {Language::english, Language::spanish}) {
        const QString copy = measuring_copy(write(sheets_of(example, language)));
        const QStringList measures = measures_in(browsed(copy));
        ASSERT_EQ(measures.size(), 4);
        EXPECT_EQ(measures[0], QStringLiteral("360"));
        EXPECT_LE(measures[1].toInt(), 360);
        EXPECT_LE(measures[2].toInt(), 360);
    }
}

TEST_F(PhonePage, InABrowserIsDarkWhereThePhoneIs) {
    const QString copy = measuring_copy(write(sheets_of(field_with_sets(2))));
    const QStringList light = measures_in(browsed(copy, {"--blink-settings=preferredColorScheme=1"}));
    const QStringList dark = measures_in(browsed(copy, {"--blink-settings=preferredColorScheme=0"}));
    ASSERT_EQ(light.size(), 4);
    ASSERT_EQ(dark.size(), 4);
    EXPECT_EQ(light[3], QStringLiteral("rgb(255, 255, 255)"));
    EXPECT_EQ(dark[3], QStringLiteral("rgb(16, 18, 16)"));
}

TEST_F(PhonePage, InABrowserAsksNobodyForAnything) {
    testing_support::Listener listener;
    const QString proxy = QStringLiteral("--proxy-server=") + QString::fromStdString(listener.url()).mid(7);
    const QString file = write(sheets_of(field_with_both_kinds()));
    const auto for_the_page = [&] {
        QStringList asked;
        for (const std::string& line : listener.asked()) {
            // the browser itself calls its maker, whatever is shown
            static const QRegularExpression home(
                QStringLiteral("(//|CONNECT )([a-z0-9-]+\\.)*(google|googleapis|gvt1|gstatic)\\.com[:/]"));
            if (!home.match(QString::fromStdString(line)).hasMatch()) asked << QString::fromStdString(line);
        }
        return asked.join(QLatin1Char('\n')).toStdString();
    };
    EXPECT_TRUE(browsed(file, {proxy}).contains(QStringLiteral("<article")));
    EXPECT_EQ(for_the_page(), "");
    // the listener would have heard it: the same page with a picture from elsewhere, and without its policy
    QFile copy(measuring_copy(file));
    ASSERT_TRUE(copy.open(QIODevice::Append));
    copy.write("<img src=\"http://example.invalid/a.png\">");
    copy.close();
    browsed(copy.fileName(), {proxy, "--timeout=3000"});
    EXPECT_NE(for_the_page().find("http://example.invalid/a.png"), std::string::npos);
}

}  // namespace
}  // namespace plugside
