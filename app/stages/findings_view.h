// What looks wrong in a walk, one finding at a time: a picture of the ground, what was found, why, what is proposed, how
// sure; and the keys to accept or refuse it, alone or with all of its kind.
//
// The finding at hand is named by its id, so it stays at hand when the walk is judged anew.
// Cost: of the finding shown only, whatever their number.
#pragma once

#include <QLabel>
#include <QPushButton>
#include <QWidget>
#include <optional>
#include <string>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/stages/finding_picture.h"
#include "app/stages/key_button.h"

namespace plugside {

// "one mound marked twice", "fan read from the wrong end", ...
[[nodiscard]] QString finding_words(FindingKind kind);

class FindingsView : public QWidget {
    Q_OBJECT

public:
    FindingsView(FieldSession& session, Choices& choices, QWidget* parent = nullptr);

    [[nodiscard]] std::size_t open_findings() const { return open_.size(); }
    [[nodiscard]] const Finding* at_hand() const;

public Q_SLOTS:
    void accept();
    void refuse();
    void accept_all_alike();
    void refuse_all_alike();
    void next();
    void previous();

Q_SIGNALS:
    void changed();

private:
    void build_keys(QWidget* parent);
    void refresh();
    void show_at_hand();
    void answer(Answer answer, bool all_alike);
    void step(int by);

    FieldSession& session_;
    Choices& choices_;
    std::shared_ptr<const std::vector<Finding>> findings_;
    std::vector<std::size_t> open_;  // indexes of findings without an answer
    std::size_t shown_ = 0;          // into open_
    std::string shown_id_;
    QLabel* kind_;
    QLabel* count_;
    FindingPicture* picture_;
    QLabel* words_;
    QLabel* sure_;
    KeyButton* accept_;
    KeyButton* refuse_;
    QPushButton* accept_all_;
    QPushButton* refuse_all_;
    std::vector<QWidget*> keys_;
};

}  // namespace plugside
