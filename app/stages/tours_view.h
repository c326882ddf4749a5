// The walking order in the Sets step: from where and to where, how many people, minutes a day and what one carries; the tours with their
// length and minutes, each with its number and line as on the map; the sets of the tour picked, or of all, in their order.
//
// While tours are worked out their length falls in a figure; "stop" leaves them as they are, "work out anew" lets go of what is held, "keep
// this order" holds to it. What does not fit, or what no way leads to, is told.
// Places: where the walk began, a gate, the place of the other end, or one set on the map (`place_wanted`, PlaceTool).
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QListView>
#include <QListWidget>
#include <QPushButton>
#include <QStringListModel>
#include <QVBoxLayout>
#include <QWidget>

#include "app/stages/row_edit.h"
#include "app/stages/tour_account.h"

namespace plugside {

class ToursView : public QWidget {
    Q_OBJECT

public:
    enum class End { start, finish };

    ToursView(FieldSession& session, Choices& choices, WorkAccount& work, TourAccount& account, QWidget* parent = nullptr);
    void take_focus() { from_->setFocus(Qt::ShortcutFocusReason); }
    void set_place(End end, LocalPoint place);
    [[nodiscard]] PageChoice& from() { return *from_; }
    [[nodiscard]] PageChoice& to() { return *to_; }
    [[nodiscard]] RowEdit& people() { return *people_; }
    [[nodiscard]] RowEdit& minutes_a_day() { return *minutes_; }
    [[nodiscard]] RowEdit& carry() { return *carry_; }
    [[nodiscard]] QListWidget& tours() { return *tours_; }
    [[nodiscard]] QListView& stops() { return *stops_; }
    [[nodiscard]] QPushButton& stop_key() { return *stop_; }
    [[nodiscard]] QPushButton& keep_key() { return *keep_; }
    [[nodiscard]] QString told() const { return figure_->text(); }
    [[nodiscard]] QString left_out() const { return left_out_->isHidden() ? QString() : left_out_->text(); }

Q_SIGNALS:
    void place_wanted(plugside::ToursView::End end);
    void set_chosen(std::size_t set);
    void opened();

protected:
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;

private:
    void build_wishes(QVBoxLayout* column);
    void build_tours(QVBoxLayout* column);
    void choose(End end, int at);
    void refresh();
    void fill_places();
    void show_figure();
    void show_tours();
    void show_stops();
    void show_left_out();
    void press_stop();

    FieldSession& session_;
    Choices& choices_;
    TourAccount& account_;
    PageChoice* from_;
    PageChoice* to_;
    RowEdit* people_;
    RowEdit* minutes_;
    RowEdit* carry_;
    QLabel* figure_;
    QLabel* held_;
    QPushButton* stop_;
    QPushButton* keep_;
    QLabel* left_out_;
    QListWidget* tours_;
    QListView* stops_;
    QStringListModel* stop_words_;
    std::vector<std::size_t> stop_sets_;  // of each line, in the plan of the tours
    std::shared_ptr<const Tours> listed_;
    std::optional<int> listed_pick_;
    QStringList places_;
    bool filling_ = false;
};

}  // namespace plugside
