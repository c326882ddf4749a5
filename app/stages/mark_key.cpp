#include "app/stages/mark_key.h"

#include <QPainter>
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

int row_height(const MapStyle& style) { return style.text_px + 13; }

}  // namespace

MarkKey::MarkKey(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    QStringList words;
    for (const Entry& entry : entries()) words << entry.word;
    setAccessibleName(tr("how marks are drawn"));
    setAccessibleDescription(words.join(QStringLiteral(", ")));
    connect(&choices_, &Choices::theme_changed, this, [this] { updateGeometry(); });
}

QSize MarkKey::sizeHint() const { return {300, 4 * row_height(style_of(choices_.theme())) + 6}; }

void MarkKey::paintEvent(QPaintEvent*) {
    const MapStyle& style = style_of(choices_.theme());
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const std::vector<Entry> all = entries();
    const double height = row_height(style);
    for (std::size_t i = 0; i < all.size(); ++i) {
        const double left = i % 2 == 0 ? 0.0 : 0.53 * width();
        const double middle = 3.0 + (static_cast<double>(i / 2) + 0.5) * height;
        const double forward = all[i].mark.fan ? -5.0 : 0.0;
        draw_mark(painter, all[i].mark, {left + 14.0 + forward, middle - forward * 0.5}, 14.0, style);
        QFont font = this->font();
        font.setPixelSize(style.text_px - 1);
        painter.setFont(font);
        painter.setPen(style.quiet_ink);
        painter.drawText(QRectF(left + 30.0, middle - 0.5 * height, 0.5 * width() - 30.0, height),
                         Qt::AlignLeft | Qt::AlignVCenter, all[i].word);
    }
}

}  // namespace plugside
