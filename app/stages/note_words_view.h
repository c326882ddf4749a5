// One note, large, as words that can be picked: those understood on a tint, those left over underlined and bold.
//
// Keys: left and right go from word to word, with Shift they take more; Home and End; mouse: click, or drag over several.
// At first what was left over is picked: the first stretch of it, or nothing where all was understood.
#pragma once

#include <QWidget>
#include <optional>
#include <utility>

#include "app/session/choices.h"
#include "app/stages/note_pieces.h"

namespace plugside {

class NoteWordsView : public QWidget {
    Q_OBJECT

public:
    explicit NoteWordsView(Choices& choices, QWidget* parent = nullptr);

    void show_note(const std::string& note, const NoteReading& reading);
    // The stretch of the note that is picked; empty when none is.
    [[nodiscard]] std::string picked() const;
    // Stretches of words left over, one after the other.
    [[nodiscard]] std::vector<std::string> left_over() const;
    void pick(std::size_t first, std::size_t last);
    // All words left over are shown as picked, whatever is.
    void show_all_left_over(bool on);
    [[nodiscard]] std::size_t words() const { return words_.size(); }

    [[nodiscard]] QSize sizeHint() const override { return {320, heightForWidth(320)}; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;

Q_SIGNALS:
    void picked_changed();

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;

private:
    [[nodiscard]] std::vector<QRectF> places(int width) const;
    [[nodiscard]] std::optional<std::size_t> word_at(QPointF place) const;
    [[nodiscard]] QFont word_font(const NotePiece& word) const;
    [[nodiscard]] bool is_picked(std::size_t word) const;
    void tell();

    Choices& choices_;
    std::string note_;
    std::vector<NotePiece> words_;
    bool all_left_over_ = false;
    std::optional<std::pair<std::size_t, std::size_t>> picked_;  // where picking began, and where it stands
};

}  // namespace plugside
