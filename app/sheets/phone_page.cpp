#include "app/sheets/phone_page.h"

#include "app/sheets/close_up_figure.h"
#include "app/sheets/figure_output.h"
#include "app/sheets/lettering.h"
#include "app/sheets/map_figure.h"

namespace plugside {

namespace {

// Paper and ink by day and by night; the classes of figure_svg.
constexpr const char* style = R"(
:root{--paper:#fff;--ink:#000;--dark:#444;--pale:#ddd;--act:#00545c;--ground:#f2f0ea;color-scheme:light dark}
@media(prefers-color-scheme:dark){:root{--paper:#101210;--ink:#f2f2ea;--dark:#b9b9b0;--pale:#3a3f3a;--act:#8fd3d9;--ground:#1c201c}}
*{box-sizing:border-box}
body{margin:0 auto;padding:10px;max-width:44em;background:var(--paper);color:var(--ink);font:17px/1.4 sans-serif;overflow-wrap:anywhere}
h1{font-size:22px;margin:4px 0}h2{font-size:20px;margin:26px 0 6px;border-bottom:2px solid var(--ink)}h3{font-size:24px;margin:0}
p{margin:6px 0}a{color:var(--act)}small,.q{font-size:15px;color:var(--dark)}
article{border:2px solid var(--ink);border-radius:6px;padding:8px;margin:14px 0;scroll-margin-top:8px}
article:target{outline:4px solid var(--act)}
svg{display:block;width:100%;height:auto;margin:6px 0;font-family:sans-serif}
ol.way{list-style:none;padding:0;margin:0}ol.way li{border-bottom:1px solid var(--pale)}
ol.way a{display:block;padding:9px 2px;text-decoration:none;color:var(--ink)}ol.way b{color:var(--act)}
.t{display:grid;grid-template-columns:repeat(auto-fill,minmax(8.2em,1fr));gap:4px}
.t label{display:flex;align-items:center;gap:6px;background:var(--ground);border-radius:4px;padding:6px;min-height:44px}
input{width:22px;height:22px;flex:none;margin:0}
.c{background:var(--ground);border-left:6px solid var(--dark);padding:6px 8px;margin:6px 0}.c.s{border-color:var(--ink);border-width:0 0 0 12px}
nav{display:flex;gap:14px;justify-content:space-between;margin-top:8px}nav a{padding:10px 4px}nav a:first-child{flex:none}
.k{stroke:var(--ink)}.d{stroke:var(--dark)}.p{stroke:var(--pale)}.w{stroke:var(--paper)}
.K{fill:var(--ink)}.D{fill:var(--dark)}.P{fill:var(--pale)}.W{fill:var(--paper)}
path:not(.K):not(.D):not(.P):not(.W),circle:not(.K):not(.D):not(.P):not(.W){fill:none}.b{font-weight:bold}
)";

QString escaped(const QString& text) { return kept_together(text).toHtmlEscaped(); }
QString element(const char* name, const QString& text) {
    return QStringLiteral("<%1>%2</%1>\n").arg(QLatin1String(name), escaped(text));
}

QString caution(const CardCaution& caution, const QString& under = {}) {
    const QLatin1String strong(caution.weight == CautionWeight::stop ? " s" : "");
    QString text =
        QStringLiteral("<p class=\"c%1\"><b>%2</b> %3").arg(strong, escaped(caution.word), escaped(caution.sentence));
    if (!under.isEmpty()) text += QStringLiteral("<br><small>%1</small>").arg(escaped(under));
    return text + QStringLiteral("</p>\n");
}

QString list(const SheetContents& contents) {
    QString text = element("p", contents.way) + QStringLiteral("<ol class=\"way\">\n");
    for (const SetCard& card : contents.cards) {
        text += QStringLiteral("<li><a href=\"#s%1\"><b>%2</b> %3")
                    .arg(card.number)
                    .arg(escaped(card.code), escaped(card.place));
        if (!card.from_before.isEmpty()) text += QStringLiteral("<br><small>%1</small>").arg(escaped(card.from_before));
        text += QStringLiteral("</a></li>\n");
    }
    return text + QStringLiteral("</ol>\n");
}

QString ticks(const SetCard& card) {
    QString text = QStringLiteral("<div class=\"t\">");
    for (const RungToTick& rung : card.rungs)
        text += QStringLiteral("<label><input type=\"checkbox\"><b>%1</b> %2</label>")
                    .arg(rung.number)
                    .arg(escaped(rung.reading));
    return text + QStringLiteral("</div>\n");
}

QString steps(const SetCard& card) {
    if (card.method.isEmpty()) return {};
    QString text = QStringLiteral("<p><b>%1</b></p>\n<ol>").arg(escaped(card.method));
    for (const QString& step : card.steps) text += QStringLiteral("<li>%1</li>").arg(escaped(step));
    return text + QStringLiteral("</ol>\n<p><b>%1</b></p>\n").arg(escaped(card.cover));
}

QString conditions(const SheetContents& contents) {
    if (contents.conditions.empty() && contents.label.isEmpty()) return {};
    QString text = element("h2", sheet_words(QT_TRANSLATE_NOOP("Sheets", "Conditions")));
    for (const ConditionRow& row : contents.conditions)
        text += QStringLiteral("<p>%1 <b>%2</b> <small>%3</small></p>\n")
                    .arg(escaped(row.question), escaped(row.answer), escaped(row.told));
    for (const QString& line : contents.label) text += element("p", line);
    return text;
}

QString load(const SheetContents& contents) {
    QString text = element("h2", sheet_words(QT_TRANSLATE_NOOP("Sheets", "What to load")));
    for (const LoadRow& row : contents.load)
        text += QStringLiteral("<p><b>%1</b> %2 <small>%3</small></p>\n")
                    .arg(escaped(row.amount), escaped(row.what), escaped(row.remark));
    for (const QString& remark : contents.load_remarks) text += element("p", remark);
    return text;
}

QString card(const SheetInput& input, const SheetContents& contents, std::size_t at) {
    const SetCard& card = contents.cards[at];
    QString text = QStringLiteral("<article id=\"s%1\">\n").arg(card.number) + element("h3", card.code);
    text += QStringLiteral("<p>%1 <small>%2</small></p>\n").arg(escaped(card.place), escaped(card.state));
    for (const CardCaution& one : card.cautions) text += caution(one);
    text += element("p", card.instruction) + steps(card);
    text +=
        figure_svg(close_up_figure(card.scene, input.units, {86.0, 84.0}).figure, card.code + QLatin1Char(' ') + card.place);
    text += QStringLiteral("<p><b>%1</b></p>\n").arg(escaped(card.chance)) + element("p", card.rungs_meaning) + ticks(card);
    text += element("p", card.look_for);
    text += QStringLiteral("<p class=\"q\">%1 · %2</p>\n")
                .arg(escaped(sheet_words(QT_TRANSLATE_NOOP("Sheets", "waypoint %1")).arg(card.handheld)), escaped(card.at));
    text += QStringLiteral("<nav><a href=\"#way\">%1</a>").arg(escaped(sheet_words(QT_TRANSLATE_NOOP("Sheets", "list"))));
    if (at + 1 < contents.cards.size()) {
        const SetCard& next = contents.cards[at + 1];
        text += QStringLiteral("<a href=\"#s%1\">%2</a>")
                    .arg(next.number)
                    .arg(escaped(sheet_words(QT_TRANSLATE_NOOP("Sheets", "next: %1, %2")).arg(next.code, next.from_before)));
    }
    return text + QStringLiteral("</nav>\n</article>\n");
}

QString head(const SheetContents& contents) {
    return QStringLiteral(
               "<!DOCTYPE html>\n<html lang=\"%1\"><head><meta charset=\"utf-8\">\n"
               "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'; "
               "base-uri 'none'; "
               "form-action 'none'\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
               "<meta name=\"referrer\" content=\"no-referrer\">\n<title>%2</title>\n<style>%3</style></head>\n<body>\n")
        .arg(code_of(spoken()), escaped(contents.field), QLatin1String(style).trimmed());
}

}  // namespace

std::optional<QString> phone_page(const SheetInput& input, const SheetContents& contents, const Progress& progress) {
    const LanguageHere language(input.language);
    QString text = head(contents);
    text += element("h1", contents.field) + element("p", contents.animals);
    text += QStringLiteral("<p><b>%1</b></p>\n").arg(escaped(contents.decides)) +
            QStringLiteral("<p class=\"q\">%1</p>\n").arg(escaped(contents.made));
    if (input.pages.map) {
        const QString map = sheet_words(QT_TRANSLATE_NOOP("Sheets", "map"));
        text += figure_svg(small_map(input, contents, {96.0, 118.0}), map);
        const LocalPoint at = contents.cards.empty() ? LocalPoint() : contents.cards.front().middle;
        text += QStringLiteral("<p class=\"q\">%1</p>\n").arg(escaped(north_words(input, at)));
    }
    if (input.pages.cautions) {
        text += element("h2", sheet_words(QT_TRANSLATE_NOOP("Sheets", "Cautions")));
        for (const CautionRow& row : contents.cautions)
            text += caution(row.caution, row.where + QStringLiteral(". ") + row.reason);
    }
    if (input.pages.cautions) text += conditions(contents);
    if (input.pages.load) text += load(contents);
    if (input.pages.list) {
        text += QStringLiteral("<h2 id=\"way\">%1</h2>\n")
                    .arg(escaped(sheet_words(QT_TRANSLATE_NOOP("Sheets", "Sets in walking order"))));
        text += list(contents);
    }
    for (std::size_t at = 0; input.pages.cards && at < contents.cards.size(); ++at) {
        if (progress.stopped()) return std::nullopt;
        progress.say(static_cast<double>(at) / static_cast<double>(contents.cards.size()), "");
        text += card(input, contents, at);
    }
    return text + QStringLiteral("</body></html>\n");
}

}  // namespace plugside
