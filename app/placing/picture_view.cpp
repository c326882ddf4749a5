#include "app/placing/picture_view.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>
#include <cmath>
#include <utility>

#include "app/canvas/tip.h"
#include "app/placing/pair_marks.h"

namespace plugside {

namespace {

constexpr double click_slack_px = 4.0;
constexpr double key_zoom = 1.4;
constexpr double margin_px = 12.0;
constexpr double rim_px = 24.0;
constexpr double large_step_px = 8.0;
constexpr std::size_t most_tile_bytes = std::size_t{48} * 1024 * 1024;

ImageryAnswers own_plane() {
    ImageryAnswers answers;
    answers.placement = PicturePlacement{{0.0, 0.0}, {1.0, 0.0}, {0.0, -1.0}};
    return answers;
}

LocalPoint on_plane(PicturePixel spot) { return {spot.column, -spot.row}; }

}  // namespace

PictureView::PictureView(PicturePlacing& placing, Choices& choices, std::filesystem::path copies, QWidget* parent)
    : QWidget(parent), placing_(placing), choices_(choices), tiles_(std::move(copies), nullptr, most_tile_bytes) {
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(240, 240);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setAccessibleName(tr("picture to be placed"));
    setAccessibleDescription(tr("Arrow keys move the cross, Space puts a spot, plus and minus zoom, R turns the picture."));
    tiles_.set_tone(1.0);
    connect(&tiles_, &Imagery::tiles_arrived, this, qOverload<>(&QWidget::update));
    connect(&tiles_, &Imagery::changed, this, [this] {
        if (is_open() && fitted_) fit();
        update();
    });
    connect(&tiles_, &Imagery::refused, this, [this](const std::filesystem::path&, const Refusal& refusal) {
        Q_EMIT refused(QString::fromStdString(sentence(refusal)));
    });
    connect(&placing_, &PicturePlacing::changed, this, qOverload<>(&QWidget::update));
    connect(&choices_, &Choices::theme_changed, this, qOverload<>(&QWidget::update));
}

void PictureView::open(const std::filesystem::path& file) {
    close();
    tiles_.add(file, own_plane());
}

void PictureView::close() {
    tiles_.restore({}, 1.0);
    fitted_ = true;
    quarter_turns_ = 0;
    tip_.reset();
    held_.reset();
    pressed_.reset();
}

QPointF PictureView::on_screen(PicturePixel spot) const { return view_.to_screen(on_plane(spot)); }

// As its camera was held, and turned from there.
void PictureView::fit() {
    fitted_ = true;
    if (!is_open()) return;
    const int turns = tiles_.pictures().front().source.facts().quarter_turns + quarter_turns_;
    view_ = ViewTransform::fitting(tiles_.pictures().front().box, QSizeF(size()), margin_px, 360.0 - 90.0 * (turns % 4));
    update();
}

void PictureView::turn() {
    quarter_turns_ = (quarter_turns_ + 1) % 4;
    fit();
}

void PictureView::zoom_in() {
    fitted_ = false;
    view_ = view_.zoomed(key_zoom, tip_.value_or(view_.screen().center()));
    update();
}

void PictureView::zoom_out() {
    fitted_ = false;
    view_ = view_.zoomed(1.0 / key_zoom, tip_.value_or(view_.screen().center()));
    update();
}

std::optional<PicturePixel> PictureView::spot_at(QPointF pixel) const {
    if (!is_open()) return std::nullopt;
    const LocalPoint at = view_.to_local(pixel);
    const PicturePixel spot{at.east_m, -at.north_m};
    const ImageryFacts& facts = tiles_.pictures().front().source.facts();
    const bool on_picture = spot.column >= 0.0 && spot.row >= 0.0 && spot.column <= facts.width && spot.row <= facts.height;
    return on_picture ? std::optional(spot) : std::nullopt;
}

std::optional<std::size_t> PictureView::pair_at(QPointF pixel) const {
    std::optional<std::size_t> found;
    const auto& pairs = placing_.pairs();
    for (std::size_t i = 0; i < pairs.size(); ++i)
        if (QLineF(on_screen(pairs[i].pixel), pixel).length() <= pair_mark_px + 2.0) found = i;
    return found;
}

void PictureView::take_spot_at(QPointF pixel) {
    if (const auto spot = spot_at(pixel)) placing_.take_spot(*spot);
}

void PictureView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    view_ = view_.resized(QSizeF(size()));
    if (fitted_) fit();
}

void PictureView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton && event->button() != Qt::MiddleButton) return;
    held_ = event->button() == Qt::LeftButton ? pair_at(event->position()) : std::nullopt;
    pressed_ = last_drag_ = event->position();
    dragging_ = false;
}

void PictureView::mouseMoveEvent(QMouseEvent* event) {
    tip_ = event->position();
    if (std::exchange(tip_by_key_, false)) update();
    if (!pressed_) return;
    if (!dragging_ && (event->position() - *pressed_).manhattanLength() < click_slack_px) return;
    dragging_ = true;
    if (held_) {
        if (const auto spot = spot_at(event->position())) placing_.drag_spot(*held_, *spot);
    } else {
        fitted_ = false;
        view_ = view_.panned(event->position() - last_drag_);
        update();
    }
    last_drag_ = event->position();
}

void PictureView::mouseReleaseEvent(QMouseEvent* event) {
    if (!pressed_) return;
    pressed_.reset();
    const bool dragged = std::exchange(dragging_, false);
    if (const auto pair = std::exchange(held_, std::nullopt)) {
        if (dragged) placing_.drop();
        placing_.pick(*pair);
    } else if (!dragged && event->button() == Qt::LeftButton) {
        take_spot_at(event->position());
    }
}

void PictureView::wheelEvent(QWheelEvent* event) {
    const double notches = event->angleDelta().y() / 120.0;
    if (notches == 0.0) return;
    fitted_ = false;
    view_ = view_.zoomed(std::pow(1.25, notches), event->position());
    update();
    event->accept();
}

// At the rim the picture comes along, so that all of it is reached.
void PictureView::move_tip(QPointF by) {
    const QRectF room = view_.screen().adjusted(rim_px, rim_px, -rim_px, -rim_px);
    const QPointF to = tip_.value_or(view_.screen().center()) + by;
    tip_ = within(room, to);
    if (*tip_ != to && !fitted_) view_ = view_.panned(*tip_ - to);
    tip_by_key_ = true;
    update();
}

void PictureView::keyPressEvent(QKeyEvent* event) {
    const bool shift = event->modifiers().testFlag(Qt::ShiftModifier);
    if (const auto step = arrow_step(*event)) {
        if (!event->modifiers().testFlag(Qt::ControlModifier)) return move_tip(*step * (shift ? 1.0 : large_step_px));
        if (!placing_.picked()) return;
        const QPointF from = on_screen(placing_.pairs().at(*placing_.picked()).pixel);
        if (const auto spot = spot_at(from + *step * (shift ? large_step_px : 1.0)))
            placing_.shift_spot(*placing_.picked(), *spot);
        return;
    }
    switch (event->key()) {
        case Qt::Key_Space:
        case Qt::Key_Return:
        case Qt::Key_Enter: take_spot_at(tip_.value_or(view_.screen().center())); return;
        case Qt::Key_Delete: placing_.remove_picked(); return;
        case Qt::Key_R: turn(); return;
        default: QWidget::keyPressEvent(event); return;
    }
}

void PictureView::draw_pairs(QPainter& painter, const MapStyle& style) const {
    const auto& pairs = placing_.pairs();
    const auto& fit = placing_.fit();
    for (std::size_t i = 0; i < pairs.size(); ++i) {
        PairMark mark{on_screen(pairs[i].pixel), std::nullopt, static_cast<int>(i + 1), placing_.picked() == i, false};
        if (fit) {
            if (const auto there = fit->placement.to_pixel(pairs[i].ground)) mark.left_over = on_screen(*there);
            mark.worst = fit->worst == i;
        }
        draw_pair_mark(painter, mark, style);
    }
    if (const auto spot = placing_.waiting_spot()) draw_pair_mark(painter, {on_screen(*spot), {}, 0, true, false}, style);
    if (tip_ && tip_by_key_) draw_tip(painter, *tip_, style);
}

void PictureView::paintEvent(QPaintEvent*) {
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    painter.fillRect(rect(), style.paper);
    if (const auto scene = tiles_.scene(view_, devicePixelRatioF(), Theme::light)) {
        painter.save();
        draw_pieces(painter, *scene, view_);
        painter.restore();
    }
    draw_pairs(painter, style);
    if (!is_open()) {
        painter.setPen(style.quiet_ink);
        painter.drawText(rect(), Qt::AlignCenter, tiles_.opening() ? tr("The picture is being opened.") : QString());
    }
    painter.setPen(QPen(hasFocus() ? style.act : style.hairline, hasFocus() ? 3.0 : 1.0));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(rect().adjusted(0, 0, -1, -1));
}

}  // namespace plugside
