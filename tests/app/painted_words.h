// What is painted, as words: every piece of text that a widget or the map puts on its ground, with its colour, the colour under it, its
// size, and whether it was cut by the clip that was set for it.
//
// A paint device that hands everything on to a picture of its own, so that the ground under a text is what was painted before it: the
// commonest colour of the place. The same text painted again at the same place is one with its halo: the last colour is the text's, the
// first that of its ground.
#pragma once

#include <QImage>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>
#include <QPainterPath>
#include <QRegularExpression>
#include <QTextItem>
#include <map>
#include <vector>

namespace plugside {

struct PaintedWords {
    QString text;
    QRectF place;  // of the letters' ink
    QColor ink;
    QColor ground;
    int px = 0;
    bool bold = false;
    bool cut_by_clip = false;    // that the painting set for it
    bool cut_by_widget = false;  // the rim of what was rendered
    bool in_sight = false;       // not scrolled out of a part that scrolls
};

class WordEngine : public QPaintEngine {
public:
    explicit WordEngine(QSize size) : QPaintEngine(AllFeatures), picture_(size, QImage::Format_ARGB32_Premultiplied) {
        picture_.fill(Qt::white);
    }
    bool begin(QPaintDevice*) override {
        clip_ = {};
        has_clip_ = false;
        enabled_ = true;
        if (!shadow_.begin(&picture_)) return false;
        use_clip();
        return true;
    }
    bool end() override { return shadow_.end(); }
    [[nodiscard]] Type type() const override { return User; }

    void updateState(const QPaintEngineState& now) override {
        const DirtyFlags dirty = now.state();
        if (dirty & DirtyTransform) shadow_.setTransform(now.transform());
        if (dirty & DirtyPen) shadow_.setPen(now.pen());
        if (dirty & DirtyBrush) shadow_.setBrush(now.brush());
        if (dirty & DirtyBrushOrigin) shadow_.setBrushOrigin(now.brushOrigin());
        if (dirty & DirtyFont) shadow_.setFont(now.font());
        if (dirty & DirtyOpacity) shadow_.setOpacity(now.opacity());
        if (dirty & DirtyHints) shadow_.setRenderHints(now.renderHints());
        if (dirty & DirtyCompositionMode) shadow_.setCompositionMode(now.compositionMode());
        // a painter that begins on another widget says that everything is new, and has no clip yet
        if ((dirty & DirtyClipPath) && (dirty & DirtyClipRegion)) {
            take_clip({}, Qt::NoClip);
        } else if (dirty & DirtyClipPath) {
            take_clip(now.clipPath(), now.clipOperation());
        } else if (dirty & DirtyClipRegion) {
            QPainterPath path;
            path.addRegion(now.clipRegion());
            take_clip(path, now.clipOperation());
        }
        if (dirty & DirtyClipEnabled) {
            enabled_ = now.isClipEnabled();
            use_clip();
        }
        opacity_ = now.opacity();
        pen_ = now.pen();
    }
    void drawPath(const QPainterPath& path) override {
        follow_rim();
        shadow_.drawPath(path);
    }
    void drawPolygon(const QPointF* points, int count, PolygonDrawMode mode) override {
        follow_rim();
        if (mode == PolylineMode)
            shadow_.drawPolyline(points, count);
        else
            shadow_.drawPolygon(points, count, mode == WindingMode ? Qt::WindingFill : Qt::OddEvenFill);
    }
    void drawPolygon(const QPoint* points, int count, PolygonDrawMode mode) override {
        std::vector<QPointF> exact(points, points + count);
        drawPolygon(exact.data(), count, mode);
    }
    void drawRects(const QRectF* rects, int count) override {
        follow_rim();
        shadow_.drawRects(rects, count);
    }
    void drawRects(const QRect* rects, int count) override {
        follow_rim();
        shadow_.drawRects(rects, count);
    }
    void drawEllipse(const QRectF& rect) override {
        follow_rim();
        shadow_.drawEllipse(rect);
    }
    void drawPixmap(const QRectF& to, const QPixmap& pixmap, const QRectF& from) override {
        follow_rim();
        shadow_.drawPixmap(to, pixmap, from);
    }
    void drawImage(const QRectF& to, const QImage& image, const QRectF& from, Qt::ImageConversionFlags flags) override {
        follow_rim();
        shadow_.drawImage(to, image, from, flags);
    }
    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        follow_rim();
        record(at, item);
        shadow_.setFont(item.font());
        shadow_.drawText(at, item.text());
    }

    [[nodiscard]] const std::vector<PaintedWords>& words() const { return words_; }
    [[nodiscard]] const QImage& picture() const { return picture_; }

private:
    [[nodiscard]] bool clips() const { return has_clip_ && enabled_; }
    void take_clip(const QPainterPath& path, Qt::ClipOperation operation) {
        const QPainterPath placed = shadow_.transform().map(path);
        if (operation == Qt::NoClip) {
            has_clip_ = false;
        } else {
            clip_ = operation == Qt::IntersectClip && has_clip_ ? clip_.intersected(placed) : placed;
            has_clip_ = true;
        }
        use_clip();
    }
    // One painter may go from widget to widget, each with a rim of its own.
    void follow_rim() {
        if (systemClip() != rim_) use_clip();
    }
    void use_clip() {
        const QTransform transform = shadow_.transform();
        shadow_.resetTransform();
        // what a widget is cut to by those it lies in
        const QRegion rim = rim_ = systemClip();
        if (!rim.isEmpty()) shadow_.setClipRegion(rim);
        if (rim.isEmpty()) shadow_.setClipping(false);
        if (clips()) shadow_.setClipPath(clip_, rim.isEmpty() ? Qt::ReplaceClip : Qt::IntersectClip);
        shadow_.setTransform(transform);
    }
    void record(const QPointF& at, const QTextItem& item) {
        const QString text = item.text().trimmed();
        static const QRegularExpression sign(QStringLiteral("[\\p{L}\\p{N}]"));
        if (!text.contains(sign)) return;
        const QFontMetricsF metrics(item.font());
        PaintedWords words;
        words.text = text;
        words.place = shadow_.transform().mapRect(metrics.tightBoundingRect(item.text()).translated(at));
        if (words.place.isEmpty()) return;
        words.ink = pen_.color();
        words.px = QFontInfo(item.font()).pixelSize();
        words.bold = item.font().bold();
        // a letter such as I is no wider than that: a rectangle of no width lies in nothing
        const double in_x = std::min(1.0, 0.25 * words.place.width());
        const double in_y = std::min(1.0, 0.25 * words.place.height());
        const QRectF inner = words.place.adjusted(in_x, in_y, -in_x, -in_y);
        words.cut_by_clip = clips() && !clip_.boundingRect().contains(inner);
        words.cut_by_widget = !QRectF(picture_.rect()).contains(inner);
        const QRegion rim = systemClip();
        words.in_sight = rim.isEmpty() || rim.boundingRect().contains(inner.toRect());
        words.ground = commonest(words.place);
        const double share = static_cast<double>(words.ink.alphaF()) * opacity_;
        if (share < 1.0) words.ink = over(words.ground, words.ink, share);
        QColor full = pen_.color();
        full.setAlpha(255);
        for (std::size_t back = 1; back <= 8 && back <= words_.size(); ++back) {
            PaintedWords& before = words_[words_.size() - back];
            if (before.text != words.text || (before.place.center() - words.place.center()).manhattanLength() > 6.0)
                continue;
            before.ground = first_inks_[words_.size() - back];
            before.ink = words.ink;
            return;
        }
        first_inks_.push_back(full);
        words_.push_back(words);
    }
    static QColor over(const QColor& under, const QColor& ink, double share) {
        const auto blend = [share](int below, int above) {
            return static_cast<int>(below * (1.0 - share) + above * share + 0.5);
        };
        return QColor(blend(under.red(), ink.red()), blend(under.green(), ink.green()), blend(under.blue(), ink.blue()));
    }
    [[nodiscard]] QColor commonest(const QRectF& place) const {
        const QRect within = place.toAlignedRect().adjusted(-1, -1, 1, 1).intersected(picture_.rect());
        std::map<QRgb, int> counts;
        for (int y = within.top(); y <= within.bottom(); ++y)
            for (int x = within.left(); x <= within.right(); ++x) ++counts[picture_.pixel(x, y)];
        QRgb most = 0xFFFFFFFF;
        int times = 0;
        for (const auto& [colour, count] : counts)
            if (count > times) {
                times = count;
                most = colour;
            }
        return QColor(most);
    }

    QImage picture_;
    QPainter shadow_;
    QPainterPath clip_;
    QRegion rim_;
    bool has_clip_ = false;
    bool enabled_ = true;
    double opacity_ = 1.0;
    QPen pen_;
    std::vector<PaintedWords> words_;
    std::vector<QColor> first_inks_;  // of each of the words: where they were painted again, of their halo
};

class WordSheet : public QPaintDevice {
public:
    explicit WordSheet(QSize size) : size_(size), engine_(size) {}
    [[nodiscard]] QPaintEngine* paintEngine() const override { return &engine_; }
    [[nodiscard]] const std::vector<PaintedWords>& words() const { return engine_.words(); }
    [[nodiscard]] const QImage& picture() const { return engine_.picture(); }

protected:
    [[nodiscard]] int metric(PaintDeviceMetric metric) const override {
        switch (metric) {
            case PdmWidth: return size_.width();
            case PdmHeight: return size_.height();
            case PdmWidthMM: return size_.width() * 254 / 960;
            case PdmHeightMM: return size_.height() * 254 / 960;
            case PdmNumColors: return 1 << 24;
            case PdmDepth: return 32;
            case PdmDpiX:
            case PdmDpiY:
            case PdmPhysicalDpiX:
            case PdmPhysicalDpiY: return 96;
            case PdmDevicePixelRatio: return 1;
            case PdmDevicePixelRatioScaled: return static_cast<int>(devicePixelRatioFScale());
        }
        return 0;
    }

private:
    QSize size_;
    mutable WordEngine engine_;
};

}  // namespace plugside
