// The conditions of the work as one form: a question each, "not known" among the answers, with the time of the answer.
//
// Order: what the rules of the chosen method ask for comes first; the order is made when the form is shown, not while it is filled in.
// Age:   an answer older than it is believed is questioned; "still so" gives it again as of now.
// Water: rain and irrigation of the coming days are pasted as a table (core/sets/water_table.h).
#pragma once

#include <QLabel>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "app/stages/row_edit.h"

namespace plugside {

// One question with its answer, what goes with it, and its age.
class QuestionRow : public QWidget {
    Q_OBJECT

public:
    QuestionRow(Question question, WorkAccount& work, Choices& choices, QWidget* parent = nullptr);
    [[nodiscard]] Question question() const { return question_; }
    [[nodiscard]] RowEdit& answer() { return *answer_; }
    [[nodiscard]] RowEdit* more(const std::string& row);
    void refresh(const RowValues& values);
    void still_so();
    [[nodiscard]] QString age() const { return age_->text(); }

private:
    [[nodiscard]] bool is_old(const std::optional<UtcTime>& at) const;

    Question question_;
    WorkAccount& work_;
    RowEdit* answer_;
    std::vector<RowEdit*> more_;
    QLabel* age_;
    QPushButton* still_so_;
};

class ConditionsView : public QWidget {
    Q_OBJECT

public:
    ConditionsView(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent = nullptr);
    [[nodiscard]] QuestionRow* row(Question question) const;
    void paste_water(const QString& table);
    void water_still_so();
    [[nodiscard]] QString water_text() const { return water_said_->text(); }
    // The questions in the order in which they stand.
    [[nodiscard]] std::vector<Question> order() const { return order_; }
    void order_anew();
    void take_focus();

private:
    void refresh();
    void build_water();
    void show_water();
    void show_buildings();
    void tell_building(const std::string& name, const QString& word);

    FieldSession& session_;
    Choices& choices_;
    WorkAccount& work_;
    QLabel* others_;
    QLabel* first_;
    QLabel* also_;
    QVBoxLayout* list_;
    std::vector<QuestionRow*> rows_;
    std::vector<Question> order_;
    QWidget* water_;
    QPlainTextEdit* pasted_;
    QLabel* water_said_;
    QPushButton* water_still_so_;
    QWidget* buildings_;
    std::vector<std::string> building_names_;
    std::vector<PageChoice*> building_answers_;
    std::shared_ptr<const FieldSurvey> shown_of_;
};

}  // namespace plugside
