// The notes of a field's marks as rows: all of them, those with words left over, those that speak of people or animals.
//
// Cost: a row is read when it is shown, not before; which rows a filter keeps is found away from the window's thread, and
//       until then the filter keeps none. `sorted` says that it was found.
#pragma once

#include <QAbstractListModel>
#include <memory>
#include <optional>
#include <unordered_map>
#include <vector>

#include "app/planning/background_work.h"
#include "app/session/field_session.h"
#include "app/stages/note_pieces.h"

namespace plugside {

enum class NotesShown { with_a_rest, all, with_mentions };

struct NoteRow {
    std::size_t mound = 0;
    QString name;
    QString values;
    std::vector<NotePiece> pieces;
};

class NotesModel : public QAbstractListModel {
    Q_OBJECT

public:
    explicit NotesModel(FieldSession& session, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;

    void show_only(NotesShown which);
    [[nodiscard]] NotesShown shown() const { return shown_; }
    [[nodiscard]] const NoteRow& row(int row) const;
    [[nodiscard]] std::size_t mound_of(int row) const { return rows_.at(static_cast<std::size_t>(row)); }
    [[nodiscard]] std::optional<int> row_of(std::size_t mound) const;
    // How many notes a filter keeps; nothing while that is still being found.
    [[nodiscard]] std::optional<std::size_t> count(NotesShown which) const;
    // Notes said of people or animals: "dog (3 marks)", most often said first.
    [[nodiscard]] QStringList said() const { return sorted_ ? sorted_->said : QStringList(); }
    [[nodiscard]] std::size_t rows_read() const { return read_.size(); }

Q_SIGNALS:
    void sorted();

private:
    struct Sorted {
        std::vector<std::size_t> with_a_rest;
        std::vector<std::size_t> with_mentions;
        QStringList said;
    };
    void take_field();
    void lay_rows();

    FieldSession& session_;
    std::shared_ptr<const FieldSurvey> field_;
    std::vector<std::size_t> all_;  // mounds with a note
    std::vector<std::size_t> rows_;
    std::shared_ptr<const Sorted> sorted_;
    mutable std::unordered_map<std::size_t, NoteRow> read_;  // by mound
    NotesShown shown_ = NotesShown::with_a_rest;
    BackgroundWork sorting_;
};

}  // namespace plugside
