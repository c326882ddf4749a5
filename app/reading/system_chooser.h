// Which reference system a file's numbers are in: a line to search in, what was found, and where each would put the marks.
//
// Search: in the background, a moment after the last key.
// Keys:   typing searches; arrows go through what was found without leaving the line; Enter takes the one at hand.
// An empty line shows what fits to the other files' marks.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QTimer>
#include <QWidget>

#include "app/planning/background_work.h"
#include "app/reading/system_matches.h"
#include "app/session/choices.h"

namespace plugside {

class SystemChooser : public QWidget {
    Q_OBJECT

public:
    SystemChooser(Choices& choices, QWidget* parent);
    ~SystemChooser() override;

    // `code`: the one taken, or empty. Searches anew where anything of it is new.
    void ask(std::vector<std::array<double, 2>> places, std::vector<NamedPlace> others, const std::string& code);
    [[nodiscard]] QLineEdit& line() { return *line_; }
    [[nodiscard]] const std::vector<SystemMatch>& found() const { return found_; }
    [[nodiscard]] bool searching() const { return searching_.running() || pause_.isActive(); }
    void take(int row);

Q_SIGNALS:
    void taken(const QString& code);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void search();
    void list_found();
    void show_list();
    [[nodiscard]] QString name_of(const std::string& code) const;
    [[nodiscard]] QString words_of(const SystemMatch& match) const;

    Choices& choices_;
    SystemSearch search_;
    std::string code_;
    ReferenceSystem taken_system_;
    std::vector<SystemMatch> found_;
    QLabel* taken_;
    QLineEdit* line_;
    QListWidget* list_;
    QLabel* hint_;
    QTimer pause_;
    bool take_first_found_ = false;
    BackgroundWork searching_;
};

}  // namespace plugside
