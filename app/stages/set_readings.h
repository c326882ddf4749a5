// The tape's readings of a ladder that is being moved, to be typed: "1 ft 3", "15 in", "0.38 m".
//
// Each reading that is a length moves the ladder at once; the other one stays exactly where it was, whatever is rounded in its line.
// Enter accepts while both are lengths; a text that is none says so and nothing moves.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QWidget>

#include "app/session/choices.h"

namespace plugside {

class SetReadings : public QWidget {
    Q_OBJECT

public:
    SetReadings(Choices& choices, QWidget* parent = nullptr);
    // `from`: the mound that the tape begins at. A line that is being typed in is left alone.
    void show_place(const LadderPlace& place, const QString& from);
    // The typing begins with this text in the line along the tape.
    void begin_with(const QString& text);
    [[nodiscard]] QLineEdit& along() { return *along_; }
    [[nodiscard]] QLineEdit& across() { return *across_; }
    [[nodiscard]] QString complaint() const { return complaint_->text(); }

Q_SIGNALS:
    void typed(const plugside::LadderPlace& place);
    void accepted();

private:
    void read(QLineEdit* line, Metres LadderPlace::*axis);
    void accept();
    void write(QLineEdit* line, Metres length) const;

    Choices& choices_;
    LadderPlace place_;
    QLabel* from_;
    QLineEdit* along_;
    QLineEdit* across_;
    QLabel* complaint_;
    bool reading_ = false;
};

}  // namespace plugside
