// A picture without a position, to be looked at and clicked on: its own plane is its pixels, one metre each.
//
// A click, or Space, puts the spot of a pair; a pair's spot can be dragged, a click on it picks the pair. The picture is moved by
// dragging, zoomed by the wheel or plus and minus, shown whole by F and turned a quarter by R. Arrows move the tip by 8 pixels of
// the screen (with Shift by 1), and near the edge the picture with it; with Ctrl they move the picked pair's spot by 1 (with Shift
// by 8). Delete removes the picked pair.
// Size:   any that imagery has; what is seen is made in tiles away from the window's thread.
// Errors: `refused`, with the refusal.
#pragma once

#include <QWidget>
#include <filesystem>
#include <optional>

#include "app/placing/picture_placing.h"
#include "app/session/choices.h"
#include "app/session/imagery.h"

namespace plugside {

class PictureView : public QWidget {
    Q_OBJECT

public:
    PictureView(PicturePlacing& placing, Choices& choices, std::filesystem::path copies, QWidget* parent = nullptr);

    void open(const std::filesystem::path& file);
    void close();
    // Whether the picture is there to be clicked on.
    [[nodiscard]] bool is_open() const { return !tiles_.pictures().empty(); }
    [[nodiscard]] bool settled() const { return is_open() && tiles_.settled(); }
    [[nodiscard]] QPointF on_screen(PicturePixel spot) const;

public Q_SLOTS:
    void zoom_in();
    void zoom_out();
    void fit();
    void turn();

Q_SIGNALS:
    void refused(const QString& sentence);

protected:
    void paintEvent(QPaintEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] std::optional<PicturePixel> spot_at(QPointF pixel) const;
    [[nodiscard]] std::optional<std::size_t> pair_at(QPointF pixel) const;
    void take_spot_at(QPointF pixel);
    void move_tip(QPointF by);
    void draw_pairs(QPainter& painter, const MapStyle& style) const;

    PicturePlacing& placing_;
    Choices& choices_;
    Imagery tiles_;
    ViewTransform view_;
    bool fitted_ = true;
    int quarter_turns_ = 0;
    std::optional<QPointF> tip_;
    bool tip_by_key_ = false;
    std::optional<QPointF> pressed_;
    QPointF last_drag_;
    std::optional<std::size_t> held_;
    bool dragging_ = false;
};

}  // namespace plugside
