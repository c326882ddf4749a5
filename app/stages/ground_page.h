// The slip of the Ground step: what is there, a pen for each kind of shape, the picked shape's own words, and what is wrong with an
// outline.
//
// Every button has its key (told on it). What the hand does on the map is GroundTool's.
#pragma once

#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "app/drawing/ground_tool.h"
#include "app/stages/key_button.h"

namespace plugside {

// "field 6.2 acres", "2 barriers", ...: what the ground holds; empty for nothing.
[[nodiscard]] QStringList ground_words(const Ground& ground, LengthUnits units);

class GroundPage : public QWidget {
    Q_OBJECT

public:
    GroundPage(FieldSession& session, Choices& choices, GroundTool& tool, QWidget* parent = nullptr);
    // Where a leg of exact length and bearing is typed.
    void type_a_leg();
    // Where the width of a band about the picked line is typed.
    void type_a_band();
    [[nodiscard]] QLineEdit& band() { return *band_; }
    // Whether the line is being followed that the button asks for.
    void show_tracing(bool on);
    [[nodiscard]] QLineEdit& leg() { return *leg_; }

Q_SIGNALS:
    void trace_wanted();

private:
    void build_pens();
    void build_band(QVBoxLayout* column);
    void build_picked();
    void refresh();
    void fill_list(const Ground& ground);
    void show_picked(const Ground& ground);
    void keep_words();

    FieldSession& session_;
    Choices& choices_;
    GroundTool& tool_;
    QLabel* holds_;
    QWidget* pens_;
    std::vector<KeyButton*> pen_keys_;
    QLabel* doing_;
    QLineEdit* leg_;
    QListWidget* list_;
    std::vector<GroundShape> listed_;
    QWidget* picked_;
    QLabel* picked_name_;
    QLineEdit* name_;
    QComboBox* kind_;
    QLineEdit* reason_;
    QLineEdit* width_;
    QWidget* band_row_;
    QLineEdit* band_;
    KeyButton* trace_;
    QLabel* fault_;
    QPushButton* remove_;
    QPushButton* join_;
    QPushButton* mend_;
    bool filling_ = false;
};

}  // namespace plugside
