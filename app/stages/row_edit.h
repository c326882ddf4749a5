// One answer or figure of the work order in a form: its name, what a person types or chooses, and what was wrong with it.
//
// Row:     it shows and edits the row of that name (core/sets/work_order_rows.h); several rows where an amount has a unit are one value.
// Empty:   nothing was said; the row is taken away. `stamped`: with the time at which it was said, and "not known" as an answer.
// Committed when the choice is settled (page_choice.h), or the field is left or Enter pressed; what cannot be read stays in the field with a sentence.
#pragma once

#include <QCheckBox>
#include <QLabel>
#include <QLineEdit>
#include <QWidget>
#include <map>
#include <string>
#include <vector>

#include "app/stages/page_choice.h"
#include "app/stages/work_account.h"

namespace plugside {

enum class RowKind { words, text, number, count, day, length, temperature, amount, rate, many };

struct RowSpec {
    std::string row;
    QString name;
    RowKind kind = RowKind::text;
    std::vector<std::string> words{};  // of files, for `words` and `many`
    bool stamped = false;
};

using RowValues = std::map<std::string, std::string>;
[[nodiscard]] RowValues row_values(const WorkOrder& work);
// "yes", "home", "zinc-phosphide", ... as a person reads it.
[[nodiscard]] QString row_word_shown(const std::string& word);

class RowEdit : public QWidget {
    Q_OBJECT

public:
    RowEdit(RowSpec spec, WorkAccount& work, Choices& choices, QWidget* parent = nullptr);
    [[nodiscard]] const RowSpec& spec() const { return spec_; }
    void show_value(const RowValues& values);
    // As if a person had typed or chosen it: the word of files, or the text of the field.
    void enter(const QString& text);
    [[nodiscard]] QString wrong() const { return wrong_->text(); }
    [[nodiscard]] QString shown_text() const;
    [[nodiscard]] PageChoice* choice() { return choice_; }
    [[nodiscard]] QLineEdit* field() { return field_; }

Q_SIGNALS:
    void entered();

private:
    void build_choice();
    void build_field();
    void build_many();
    void commit();
    void commit_value(const std::string& value);
    [[nodiscard]] std::optional<std::string> value_typed();
    [[nodiscard]] QString text_of_value(const std::string& value) const;

    RowSpec spec_;
    WorkAccount& work_;
    Choices& choices_;
    QLabel* name_;
    PageChoice* choice_ = nullptr;
    QLineEdit* field_ = nullptr;
    PageChoice* unit_ = nullptr;
    PageChoice* per_ = nullptr;
    QLabel* suffix_ = nullptr;
    QCheckBox* unknown_ = nullptr;
    std::vector<QCheckBox*> boxes_;
    QLabel* wrong_;
    QString shown_;  // what stood in the field before it was typed in
    bool filling_ = false;
};

}  // namespace plugside
