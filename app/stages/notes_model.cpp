#include "app/stages/notes_model.h"

#include <algorithm>
#include <map>
#include <set>

#include "app/window/look_sheet.h"
#include "geo/read/note_corrections.h"

namespace plugside {

namespace {

// "Dogs" and "dog" are said of the same.
QString said_word(const NoteMention& mention) { return QString::fromStdString(mention.words).toLower().simplified(); }

QStringList words_by_marks(const std::map<QString, std::size_t>& marks) {
    std::vector<std::pair<QString, std::size_t>> words(marks.begin(), marks.end());
    std::stable_sort(words.begin(), words.end(), [](const auto& a, const auto& b) { return a.second > b.second; });
    QStringList said;
    for (const auto& [word, count] : words)
        said << counted(static_cast<long long>(count), NotesModel::tr("%2 (%1 mark)"), NotesModel::tr("%2 (%1 marks)"))
                    .arg(word);
    return said;
}

}  // namespace

NotesModel::NotesModel(FieldSession& session, QObject* parent) : QAbstractListModel(parent), session_(session) {
    connect(&session_, &FieldSession::field_replaced, this, &NotesModel::take_field);
    connect(&session_, &FieldSession::survey_edited, this, &NotesModel::take_field);
    take_field();
}

int NotesModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(rows_.size()); }

QVariant NotesModel::data(const QModelIndex& index, int role) const {
    // what is painted may be shortened: the whole is told by pointing, and read out
    if (!index.isValid() || (role != Qt::DisplayRole && role != Qt::ToolTipRole) || index.row() >= rowCount()) return {};
    const NoteRow& one = row(index.row());
    QString text;
    QStringList left_over;
    for (const NotePiece& piece : one.pieces) {
        text += piece.text;
        if (piece.sense == PieceSense::left_over) left_over << piece.text;
    }
    QString words = tr("%1: %2. Read: %3.").arg(one.name, text, one.values.isEmpty() ? tr("nothing") : one.values);
    if (!left_over.isEmpty()) words += tr(" Not understood: %1.").arg(left_over.join(' '));
    return words;
}

const NoteRow& NotesModel::row(int row) const {
    const std::size_t mound = mound_of(row);
    const auto known = read_.find(mound);
    if (known != read_.end()) return known->second;
    const Mound& mark = field_->survey.mounds[mound];
    const NoteReading reading = corrected_reading(field_->survey, mark);
    return read_
        .emplace(mound, NoteRow{mound, QString::fromStdString(mark.name), values_of(reading), pieces_of(mark.note, reading)})
        .first->second;
}

std::optional<int> NotesModel::row_of(std::size_t mound) const {
    const auto found = std::lower_bound(rows_.begin(), rows_.end(), mound);
    if (found == rows_.end() || *found != mound) return std::nullopt;
    return static_cast<int>(found - rows_.begin());
}

std::optional<std::size_t> NotesModel::count(NotesShown which) const {
    if (which == NotesShown::all) return all_.size();
    if (!sorted_) return std::nullopt;
    return which == NotesShown::with_a_rest ? sorted_->with_a_rest.size() : sorted_->with_mentions.size();
}

void NotesModel::show_only(NotesShown which) {
    shown_ = which;
    lay_rows();
}

void NotesModel::lay_rows() {
    beginResetModel();
    rows_.clear();
    if (shown_ == NotesShown::all)
        rows_ = all_;
    else if (sorted_)
        rows_ = shown_ == NotesShown::with_a_rest ? sorted_->with_a_rest : sorted_->with_mentions;
    endResetModel();
}

void NotesModel::take_field() {
    const auto before = std::exchange(field_, session_.field());
    const bool as_before = before && field_ && before->survey.note_rules == field_->survey.note_rules &&
                           before->survey.mounds.size() == field_->survey.mounds.size();
    // an edit that is not about notes leaves the reading of them as it is
    if (as_before && std::equal(before->survey.mounds.begin(), before->survey.mounds.end(), field_->survey.mounds.begin(),
                                [](const Mound& a, const Mound& b) { return a.name == b.name && a.note == b.note; }))
        return;
    read_.clear();
    all_.clear();
    if (field_)
        for (std::size_t i = 0; i < field_->survey.mounds.size(); ++i)
            if (!field_->survey.mounds[i].note.empty()) all_.push_back(i);
    // rows of the reading before stay until the new one is known, as long as they are rows of the same marks
    if (!before || !field_ || before->survey.mounds.size() != field_->survey.mounds.size()) sorted_.reset();
    lay_rows();
    Q_EMIT sorted();
    if (!field_) return;
    sorting_.start([this, field = field_, all = all_](const Progress& progress) -> BackgroundWork::Apply {
        auto found = std::make_shared<Sorted>();
        std::map<QString, std::size_t> marks;
        for (const std::size_t mound : all) {
            if (progress.stopped()) return {};
            const Mound& mark = field->survey.mounds[mound];
            if (!corrected_reading(field->survey, mark).rest.empty()) found->with_a_rest.push_back(mound);
            if (mark.mentions.empty()) continue;
            found->with_mentions.push_back(mound);
            std::set<QString> words;
            for (const NoteMention& mention : mark.mentions) words.insert(said_word(mention));
            for (const QString& word : words) ++marks[word];
        }
        found->said = words_by_marks(marks);
        return [this, found] {
            sorted_ = found;
            lay_rows();
            Q_EMIT sorted();
        };
    });
}

}  // namespace plugside
