#include "app/reading/columns_view.h"

#include <QHeaderView>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QStyledItemDelegate>
#include <algorithm>
#include <utility>

#include "app/reading/pick_button.h"
#include "app/reading/reading_words.h"

namespace plugside {

namespace {

constexpr int narrowest_px = 70;
constexpr int widest_px = 210;
constexpr int columns_measured = 60;

QString as_text(const std::string& text) { return QString::fromStdString(text).simplified(); }

// The meanings look like what they are: buttons over their columns.
class CellPainter : public QStyledItemDelegate {
public:
    CellPainter(Choices& choices, QObject* parent) : QStyledItemDelegate(parent), choices_(choices) {}

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        const MapStyle& style = choices_.style();
        const auto& model = static_cast<const ColumnsModel&>(*index.model());
        const bool used = model.role_of(index.column()) != ColumnRole::none;
        const bool current = (option.state & QStyle::State_HasFocus) != 0;
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        painter->setFont(option.font);
        QRectF box = QRectF(option.rect).adjusted(2.5, 2.5, -2.5, -2.5);
        if (index.row() == 0) {
            painter->setPen(current ? QPen(style.act, 2.0) : QPen(style.edge(), 1.0));
            painter->setBrush(used ? style.picked() : style.slip);
            painter->drawRoundedRect(box, 9.0, 9.0);
            painter->setPen(used ? style.ink : style.quiet_ink);
            painter->drawText(
                box.adjusted(8, 0, -18, 0), Qt::AlignVCenter | Qt::AlignLeft,
                option.fontMetrics.elidedText(index.data().toString(), Qt::ElideRight, static_cast<int>(box.width()) - 26));
            painter->drawText(box.adjusted(0, 0, -7, 0), Qt::AlignVCenter | Qt::AlignRight, QStringLiteral("▾"));
        } else {
            if (current) {
                painter->setPen(QPen(style.act, 1.5));
                painter->setBrush(Qt::NoBrush);
                painter->drawRoundedRect(box, 4.0, 4.0);
            }
            painter->setPen(used ? style.ink : style.quiet_ink);
            painter->drawText(
                box.adjusted(6, 0, -4, 0), Qt::AlignVCenter | Qt::AlignLeft,
                option.fontMetrics.elidedText(index.data().toString(), Qt::ElideRight, static_cast<int>(box.width()) - 10));
        }
        painter->restore();
    }

private:
    Choices& choices_;
};

}  // namespace

void ColumnsModel::show(ColumnSheet sheet) {
    beginResetModel();
    sheet_ = std::move(sheet);
    std::size_t columns = std::max(sheet_.headings.size(), sheet_.roles.size());
    for (const auto& row : sheet_.rows) columns = std::max(columns, row.size());
    columns_ = static_cast<int>(columns);
    endResetModel();
}

ColumnRole ColumnsModel::role_of(int column) const {
    const auto at = static_cast<std::size_t>(column);
    return at < sheet_.roles.size() ? sheet_.roles[at] : ColumnRole::none;
}

int ColumnsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() || columns_ == 0 ? 0 : static_cast<int>(sheet_.rows.size()) + 1;
}

int ColumnsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : columns_; }

QVariant ColumnsModel::data(const QModelIndex& index, int role) const {
    const auto column = static_cast<std::size_t>(index.column());
    if (index.row() == 0) {
        if (role == Qt::DisplayRole) return role_words(role_of(index.column()));
        if (role == Qt::AccessibleTextRole || role == Qt::ToolTipRole)
            return tr("column %1 means: %2 (Enter to change)")
                .arg(headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString(),
                     role_words(role_of(index.column())));
        return {};
    }
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    const auto& row = sheet_.rows[static_cast<std::size_t>(index.row() - 1)];
    return column < row.size() ? as_text(row[column]) : QString();
}

QVariant ColumnsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal) return {};
    if (role == Qt::TextAlignmentRole) return static_cast<int>(Qt::AlignLeft | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    const auto column = static_cast<std::size_t>(section);
    if (column < sheet_.headings.size() && !sheet_.headings[column].empty()) return as_text(sheet_.headings[column]);
    return tr("column %1").arg(section + 1);
}

ColumnsView::ColumnsView(Choices& choices, QWidget* parent)
    : QTableView(parent), choices_(choices), model_(new ColumnsModel(this)) {
    setModel(model_);
    setItemDelegate(new CellPainter(choices_, this));
    setSelectionMode(QAbstractItemView::NoSelection);
    setEditTriggers(QAbstractItemView::NoEditTriggers);
    setShowGrid(false);
    setTabKeyNavigation(false);
    setHorizontalScrollMode(QAbstractItemView::ScrollPerPixel);
    verticalHeader()->hide();
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setSectionsClickable(false);
    setAccessibleName(tr("the first rows, under what each column means"));
}

void ColumnsView::show_sheet(ColumnSheet sheet) {
    const bool same = sheet.rows == model_->sheet().rows && sheet.headings == model_->sheet().headings;
    const QModelIndex at = currentIndex();
    const int column = at.isValid() ? at.column() : 0;
    const int row = at.isValid() ? at.row() : 0;
    model_->show(std::move(sheet));
    fit_columns(same);
    if (model_->columnCount() > 0)
        setCurrentIndex(model_->index(same ? std::min(row, model_->rowCount() - 1) : 0,
                                      same ? std::min(column, model_->columnCount() - 1) : 0));
}

void ColumnsView::fit_columns(bool only_wider) {
    const int line = fontMetrics().height();
    verticalHeader()->setDefaultSectionSize(line + 6);
    if (model_->rowCount() > 0) verticalHeader()->resizeSection(0, line + 12);
    if (!only_wider) horizontalHeader()->setDefaultSectionSize(120);
    for (int column = 0; column < std::min(model_->columnCount(), columns_measured); ++column) {
        int width = fontMetrics().horizontalAdvance(model_->index(0, column).data().toString()) + 40;
        width = std::max(
            width,
            fontMetrics().horizontalAdvance(model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString()) + 16);
        for (int row = 1; row < model_->rowCount(); ++row)
            width = std::max(width, fontMetrics().horizontalAdvance(model_->index(row, column).data().toString()) + 18);
        width = std::clamp(width, choices_.style().letters(narrowest_px), choices_.style().letters(widest_px));
        if (!only_wider || width > columnWidth(column)) horizontalHeader()->resizeSection(column, width);
    }
}

void ColumnsView::open_meanings(int column) {
    const auto& offered = model_->sheet().offered;
    QStringList words;
    int marked = 0;
    for (std::size_t i = 0; i < offered.size(); ++i) {
        words << role_words(offered[i]);
        if (offered[i] == model_->role_of(column)) marked = static_cast<int>(i);
    }
    const QRect cell = visualRect(model_->index(0, column));
    open_choice_menu(this, words, marked, viewport()->mapToGlobal(cell.bottomLeft()), [this, column](int picked) {
        Q_EMIT meaning_picked(column, model_->sheet().offered[static_cast<std::size_t>(picked)]);
    });
}

void ColumnsView::keyPressEvent(QKeyEvent* event) {
    const bool opens = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space;
    if (opens && event->modifiers() == Qt::NoModifier && currentIndex().isValid()) {
        open_meanings(currentIndex().column());
        return;
    }
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Escape) {
        event->ignore();
        return;
    }
    QTableView::keyPressEvent(event);
}

void ColumnsView::mousePressEvent(QMouseEvent* event) {
    QTableView::mousePressEvent(event);
    const QModelIndex at = indexAt(event->pos());
    if (at.isValid() && at.row() == 0) open_meanings(at.column());
}

void ColumnsView::changeEvent(QEvent* event) {
    QTableView::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fit_columns(false);
}

}  // namespace plugside
