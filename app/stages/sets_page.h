// The slip of the Sets step: one set at a time. Close-up, what to do in plain words, the chance, what speaks against it, the
// keys.
//
// At hand:  the set is named by its marks (ProbeKey), so it stays at hand when a new plan numbers the sets afresh.
// Order:    keep, move and drop go on to the undecided set that is worth most of those that the filter lets through (SetAccount);
//           previous and next go by number.
// Move:     begun by its key, by dragging the ladder in the close-up or on the map (LadderTool), or by typing a tape reading; chance, rungs
//           and instruction follow every step. Keep, move and Enter lay it where it is, Esc gives up.
// Tours:    the walking order of them all (ToursView), in place of the set at hand; a set chosen there is at hand.
// Several:  while its panel is open keep and drop decide on all of its scope, as one step of the history.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QStackedWidget>
#include <QVBoxLayout>
#include <QWidget>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/stages/close_up.h"
#include "app/stages/key_button.h"
#include "app/stages/set_account.h"
#include "app/stages/set_panels.h"
#include "app/stages/set_readings.h"
#include "app/stages/set_reasons.h"
#include "app/stages/set_strip.h"
#include "app/stages/tours_view.h"
#include "app/stages/work_account.h"
#include "core/probing/ladder_by_hand.h"

namespace plugside {

struct SetProgress {
    std::size_t decided = 0;
    std::size_t all = 0;
};
[[nodiscard]] SetProgress set_progress(const Survey& survey, const Plan& plan);

class SetsPage : public QWidget {
    Q_OBJECT

public:
    enum class Panel { one_set, show_only, several, tours };

    SetsPage(FieldSession& session, Choices& choices, WorkAccount& work, TourAccount& tours, QWidget* parent = nullptr);

    [[nodiscard]] bool moving() const { return close_up_->moving(); }
    [[nodiscard]] CloseUp& close_up() { return *close_up_; }
    [[nodiscard]] SetAccount& account() { return *account_; }
    [[nodiscard]] SetStrip& strip() { return *strip_; }
    [[nodiscard]] SetReadings& readings() { return *readings_; }
    [[nodiscard]] SetReasons& reasons() { return *reasons_; }
    [[nodiscard]] ShowOnly& show_only() { return *show_only_; }
    [[nodiscard]] Several& several() { return *several_; }
    [[nodiscard]] ToursView& tours() { return *tours_; }
    [[nodiscard]] QString instruction_text() const { return instruction_->text(); }
    [[nodiscard]] QString chance_text() const { return chance_->text(); }
    [[nodiscard]] QString reached_text() const { return reached_->text(); }
    [[nodiscard]] QString hidden_text() const { return hidden_->isHidden() ? QString() : hidden_->text(); }
    [[nodiscard]] Panel panel() const { return static_cast<Panel>(pages_->currentIndex()); }
    // The ladder at hand where it is now, be it in the hand or laid; nothing without a set.
    [[nodiscard]] std::optional<ProbeSite> ladder() const;
    // Moves it there; the move is begun if it was not.
    void lay_ladder(const LadderPlace& place);
    // The same by so many units of the tape.
    void shift_ladder(double along_units, double across_units);
    // Gives up a move or closes a panel; false where there is neither.
    bool put_away();

Q_SIGNALS:
    void ladder_changed();  // begun, moved, laid or given up

public Q_SLOTS:
    void keep();
    void drop();
    void move();
    void undecide();
    void next();
    void previous();
    void next_undecided();
    void tell_why();
    void take_instead();
    void go_to_strip();
    void open_show_only();
    void open_several();
    void open_tours();

private:
    void build_head(QVBoxLayout* column);
    QWidget* build_one_set();
    QWidget* build_words();
    void build_keys(QVBoxLayout* column);
    void bind();
    void bind_move();
    void open(Panel panel);
    void refresh();
    void show_set(std::size_t set);
    void show_place();
    void show_chance(const ProbeSite& site);
    void show_decided(SetChoice choice);
    void show_strip(std::size_t set);
    void show_many();
    void show_reached();
    void show_cautions(std::size_t set);
    void show_method(std::size_t set);
    void choose_method(int at);
    void decide_and_go_on(SetChoice choice);
    void decide_on_several(SetChoice choice);
    void step(int by);
    void pick(std::size_t set);
    void settle_on_a_set();
    [[nodiscard]] std::optional<std::size_t> at_hand() const;
    [[nodiscard]] ProbeSite site_as_moved(const ProbeSite& site) const;

    FieldSession& session_;
    Choices& choices_;
    WorkAccount& work_;
    SetAccount* account_;
    QLabel* title_ = nullptr;
    QLabel* count_ = nullptr;
    QLabel* place_ = nullptr;
    QPushButton* shown_key_ = nullptr;
    QPushButton* several_key_ = nullptr;
    QPushButton* tours_key_ = nullptr;
    QLabel* hidden_ = nullptr;
    QStackedWidget* pages_ = nullptr;
    SetStrip* strip_ = nullptr;
    CloseUp* close_up_ = nullptr;
    SetReadings* readings_ = nullptr;
    ShowOnly* show_only_ = nullptr;
    Several* several_ = nullptr;
    ToursView* tours_ = nullptr;
    QLabel* instruction_ = nullptr;
    QLabel* chance_ = nullptr;
    QLabel* chance_words_ = nullptr;
    QLabel* worth_ = nullptr;
    QLabel* decided_ = nullptr;
    SetReasons* reasons_ = nullptr;
    PageChoice* method_ = nullptr;
    QLabel* mind_ = nullptr;
    QVBoxLayout* cautions_ = nullptr;
    QScrollArea* words_ = nullptr;
    QLabel* reached_ = nullptr;
    std::optional<ProbeKey> moving_set_;
    std::optional<ProbeKey> shown_set_;
    std::optional<LadderByHand> by_hand_;  // while it is being moved
    std::optional<ProbeSite> in_hand_;
    std::vector<std::string> shown_cautions_;
    MapStyle shown_style_;
    KeyButton* keep_ = nullptr;
    KeyButton* move_ = nullptr;
    KeyButton* drop_ = nullptr;
    std::vector<QWidget*> keys_;
};

}  // namespace plugside
