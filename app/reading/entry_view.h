// One of the files that lie on the desk, close up: what it was taken for and what can be said otherwise.
//
// Shown as the entry asks: of a table how it is parted and what each column means; of layers what their shapes and columns
// mean; the reference system where one has to be told; which north its bare bearings were read from; and where its marks
// would lie.
#pragma once

#include <QLabel>
#include <QWidget>

#include "app/reading/columns_view.h"
#include "app/reading/pick_button.h"
#include "app/reading/reading_desk.h"
#include "app/reading/system_chooser.h"

namespace plugside {

class EntryView : public QWidget {
    Q_OBJECT

public:
    EntryView(ReadingDesk& desk, Choices& choices, QWidget* parent);

    void show_entry(std::size_t entry);
    void refresh();
    [[nodiscard]] std::size_t entry() const { return entry_; }
    // Where an answer is typed or picked, for the focus.
    [[nodiscard]] QWidget* place_of_answer();
    [[nodiscard]] SystemChooser& system() { return *system_; }
    [[nodiscard]] ColumnsView& columns() { return *columns_; }
    [[nodiscard]] PickButton& separator() { return *separator_; }
    [[nodiscard]] PickButton& north() { return *north_; }
    [[nodiscard]] PickButton& lines() { return *lines_; }
    [[nodiscard]] QString where_text() const { return where_->text(); }

Q_SIGNALS:
    void reference_system_taken();

private:
    void build_table_picks();
    void build_layer_picks();
    void refresh_words(const FileLook& look);
    void refresh_table(const FileLook& look);
    void refresh_layers(const FileLook& look);
    void refresh_system(const FileLook& look);
    void change_table(const std::function<void(TableGuess&)>& change, bool other_columns);
    void change_layer(const std::function<void(LayerGuess&)>& change);
    void mean(int column, ColumnRole role);
    [[nodiscard]] const FileLook* look() const;

    ReadingDesk& desk_;
    Choices& choices_;
    std::size_t entry_ = 0;
    std::size_t layer_ = 0;
    QLabel* title_;
    QLabel* taken_;
    QLabel* trouble_;
    QLabel* where_;
    PickButton* north_;
    QLabel* turned_;
    QWidget* table_picks_;
    PickButton* separator_ = nullptr;
    PickButton* decimal_ = nullptr;
    PickButton* heading_ = nullptr;
    PickButton* encoding_ = nullptr;
    PickButton* degrees_ = nullptr;
    PickButton* dates_ = nullptr;
    QWidget* layer_picks_;
    PickButton* which_layer_ = nullptr;
    PickButton* points_ = nullptr;
    PickButton* lines_ = nullptr;
    PickButton* polygons_ = nullptr;
    SystemChooser* system_;
    QLabel* columns_words_;
    ColumnsView* columns_;
    QWidget* rest_;  // what is left of the height where there are no columns
};

}  // namespace plugside
