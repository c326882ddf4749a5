// Puts the look (look_sheet.h) on a window part by part, each for some milliseconds, with all else that waits for the thread between them.
//
// A sheet on the window itself would dress its 1,500 widgets in one go, a fifth of a second. Here a part that holds many others is marked by
// `dress_by_parts` and gets no sheet; its children do, each for itself, down to parts that are not marked. A marked part draws its own ground.
// Order:   what is seen first; until that is dressed the window keeps its picture of before. What is hidden follows.
// Later:   a child that comes to a marked part, a dialogue of the window among them, is dressed as it is first shown.
// Another sheet while one is being put on: begins anew with that.
#pragma once

#include <QPointer>
#include <QTimer>
#include <QWidget>
#include <vector>

#include "app/canvas/palette.h"

namespace plugside {

void dress_by_parts(QWidget& part);
[[nodiscard]] bool is_dressed_by_parts(const QWidget& part);

class Dresser : public QObject {
    Q_OBJECT

public:
    // `window` is marked.
    explicit Dresser(QWidget& window);
    void put_on(const MapStyle& style);
    // The window's picture was held by its owner, who made its parts: it is let go once those that are seen are dressed.
    void show_when_dressed();
    // What is left, at once.
    void finish();
    [[nodiscard]] bool at_work() const { return !waiting_.empty(); }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void take_turn();
    void take_parts(QWidget& of, std::vector<QPointer<QWidget>>& parts);
    void dress(QWidget& part);
    void put_seen_first();
    void show_again();

    QWidget& window_;
    QTimer turns_;
    QString sheet_;
    QColor hint_;
    std::vector<QPointer<QWidget>> waiting_;  // the last is the next
    std::size_t seen_ = 0;                    // how many of them are not among the hidden, at the end
    bool held_ = false;                       // the window's picture
};

}  // namespace plugside
