// Draws one row of the notes: the mark and what was read of it over its note, in which the words understood stand on a tint
// and those left over are bold and underlined. Rows are of one height, so that their number does not matter.
#pragma once

#include <QStyledItemDelegate>

#include "app/session/choices.h"
#include "app/stages/notes_model.h"

namespace plugside {

class NoteRowPainter : public QStyledItemDelegate {
    Q_OBJECT

public:
    NoteRowPainter(const NotesModel& model, const Choices& choices, QObject* parent = nullptr);
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    const NotesModel& model_;
    const Choices& choices_;
};

}  // namespace plugside
