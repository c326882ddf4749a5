#include "app/stages/mark_key.h"

#include <QPainter>
#include <algorithm>
#include <vector>

#include "app/canvas/mound_glyph.h"

namespace plugside {

namespace {

struct Entry {
    Mound mark;
    QString word;
};

Mound drawn(SignKind kind, Freshness freshness, bool with_fan) {
    Mound mark;
    mark.kind = kind;
    mark.freshness = freshness;
    if (with_fan) mark.fan = Bearing::degrees(60.0);
    return mark;
}

std::vector<Entry> entries() {
    return {{drawn(SignKind::gopher_mound, Freshness::fresh, true), MarkKey::tr("fresh")},
            {drawn(SignKind::mole, Freshness::unknown, false), MarkKey::tr("a mole's")},
            {drawn(SignKind::gopher_mound, Freshness::older, true), MarkKey::tr("older")},
            {drawn(SignKind::ground_squirrel, Freshness::unknown, false), MarkKey::tr("a ground squirrel's")},
            {drawn(SignKind::gopher_mound, Freshness::unknown, true), MarkKey::tr("age not noted")},
            {drawn(SignKind::vole, Freshness::unknown, false), MarkKey::tr("a vole's")},
            {drawn(SignKind::gopher_mound, Freshness::crushed, false), MarkKey::tr("crushed: no fan")},
            {drawn(SignKind::other, Freshness::unknown, false), MarkKey::tr("something else")}};
}

constexpr double words_left = 30.0;
constexpr double second_column = 0.53;  // of the width

int row_height(const MapStyle& style) { return style.text(13); }

}  // namespace

MarkKey::MarkKey(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    QSizePolicy policy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    QStringList words;
    for (const Entry& entry : entries()) words << entry.word;
    setAccessibleName(tr("how marks are drawn"));
    setAccessibleDescription(words.join(QStringLiteral(", ")));
    connect(&choices_, &Choices::theme_changed, this, [this] { updateGeometry(); });
}

QSize MarkKey::sizeHint() const { return {300, heightForWidth(300)}; }

QFont MarkKey::words_font() const {
    QFont font = this->font();
    font.setPixelSize(choices_.style().text(-1));
    return font;
}

int MarkKey::columns_at(int width) const {
    const QFontMetricsF metrics(words_font());
    double widest = 0.0;
    for (const Entry& entry : entries()) widest = std::max(widest, metrics.horizontalAdvance(entry.word));
    return words_left + widest <= (1.0 - second_column) * width ? 2 : 1;
}

int MarkKey::heightForWidth(int width) const {
    const int rows = static_cast<int>(entries().size()) / columns_at(width);
    return rows * row_height(choices_.style()) + 6;
}

void MarkKey::paintEvent(QPaintEvent*) {
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const std::vector<Entry> all = entries();
    const double height = row_height(style);
    const auto columns = static_cast<std::size_t>(columns_at(width()));
    // gophers' own marks stand in one column, those of others in the next or below
    const std::size_t rows = all.size() / columns;
    for (std::size_t i = 0; i < all.size(); ++i) {
        const std::size_t place = i / 2 + (i % 2) * all.size() / 2;
        const double left = place / rows == 0 ? 0.0 : second_column * width();
        const double middle = 3.0 + (static_cast<double>(place % rows) + 0.5) * height;
        const double forward = all[i].mark.fan ? -5.0 : 0.0;
        draw_mark(painter, all[i].mark, {left + 14.0 + forward, middle - forward * 0.5}, 14.0, style);
        painter.setFont(words_font());
        painter.setPen(style.quiet_ink);
        painter.drawText(QRectF(left + words_left, middle - 0.5 * height, width() - left - words_left, height),
                         Qt::AlignLeft | Qt::AlignVCenter, all[i].word);
    }
}

}  // namespace plugside
