// The sheet over map and slip with the files that a person brought: what they hold, a line each, the one at hand close up,
// and the button that reads them.
//
// Keys: Enter reads (Ctrl+Enter from anywhere); Right goes from the list to what can be said of the file; Space leaves a
// file out or takes it in; Escape puts the sheet away with nothing
//       read and nothing changed. Where a file still waits for an answer, Enter goes to it instead.
// Open: the rest of the window does nothing until the sheet is put away; `opened` and `put_away` tell the window.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QListWidget>
#include <QProgressBar>
#include <QPushButton>

#include "app/reading/entry_view.h"
#include "app/reading/reading_desk.h"

namespace plugside {

class ReadingSheet : public QFrame {
    Q_OBJECT

public:
    // Lies over `over`, parts of the window.
    ReadingSheet(FieldSession& session, Choices& choices, QWidget* window, const QList<QWidget*>& over);

    [[nodiscard]] ReadingDesk& desk() { return desk_; }
    [[nodiscard]] EntryView& entry() { return *entry_; }
    [[nodiscard]] QListWidget& list() { return *list_; }
    [[nodiscard]] QString message() const { return message_->text(); }
    void read();
    void put_away();

Q_SIGNALS:
    void opened();
    void put_away_again();
    // What the files became, for the slip.
    void told(const QString& words);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void lie_over();
    void lay_out_parts();
    void bind();
    void open();
    void list_entries();
    void refresh_entry(int entry);
    void refresh_keys();
    void go_to_question(std::size_t entry);
    void after_answer();
    [[nodiscard]] QString what_came() const;

    FieldSession& session_;
    Choices& choices_;
    QList<QWidget*> over_;
    ReadingDesk desk_;
    QLabel* title_;
    QLabel* state_;
    QListWidget* list_;
    PickButton* north_of_all_;
    EntryView* entry_;
    QLabel* message_;
    QProgressBar* share_;
    QPushButton* away_;
    QPushButton* read_;
    bool listing_ = false;
    bool read_when_counted_ = false;
    bool questions_shown_ = false;
    int row_at_first_ = 0;
};

}  // namespace plugside
