// What a person knows better than the plan: the means to say it, what was said so far, and the few questions whose answers would narrow
// the number of animals most.
//
// Listed: every fact (Survey::known) and every mend of a person's own; the picked one is lifted with Delete.
// Asked:  from the plan that is current only, once they were worked out beside the window's thread; the question at hand picks its two
//         marks on the map.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QWidget>
#include <string>
#include <vector>

#include "app/drawing/systems_tool.h"
#include "app/planning/background_work.h"
#include "app/stages/key_button.h"
#include "core/systems/helpful_questions.h"

namespace plugside {

class CorrectionsView : public QWidget {
    Q_OBJECT

public:
    CorrectionsView(FieldSession& session, Choices& choices, SystemsTool& tool, QWidget* parent = nullptr);

    [[nodiscard]] const std::vector<HelpfulQuestion>& questions() const { return questions_; }
    // Whether they are still being worked out.
    [[nodiscard]] bool asking() const { return asking_.running(); }
    [[nodiscard]] int listed() const { return list_->count(); }

public Q_SLOTS:
    void answer(bool one_animal);
    void next_question();
    void lift_picked();
    void type_a_bearing();

private:
    void build_sayings();
    void build_question();
    void ask_anew();
    void refresh();
    void fill_list();
    void show_question();

    struct Listed {
        int fact = -1;     // into Survey::known
        std::string mend;  // or the id of an own mend
    };

    FieldSession& session_;
    Choices& choices_;
    SystemsTool& tool_;
    QWidget* sayings_;
    QLabel* doing_;
    QLineEdit* bearing_;
    QWidget* question_;
    QLabel* question_words_;
    QListWidget* list_;
    QLabel* list_name_;
    std::vector<Listed> listed_;
    std::vector<HelpfulQuestion> questions_;
    std::shared_ptr<const Plan> asked_of_;
    std::size_t at_hand_ = 0;
    BackgroundWork asking_;
};

}  // namespace plugside
