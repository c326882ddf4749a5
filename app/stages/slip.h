// The right edge: a slip of paper with the step at hand, and above it what the program has to say (a refusal, where a file
// lies), which stays until it is put away.
#pragma once

#include <QFrame>
#include <QLabel>
#include <QStackedWidget>
#include <QWidget>

#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/stages/ground_page.h"
#include "app/stages/method_page.h"
#include "app/stages/sets_page.h"
#include "app/stages/systems_page.h"
#include "app/stages/walk_page.h"

namespace plugside {

class Slip : public QWidget {
    Q_OBJECT

public:
    Slip(FieldSession& session, Choices& choices, GroundTool& drawing, SystemsTool& correcting, WorkAccount& work,
         TourAccount& tours, QWidget* parent = nullptr);

    enum class Weight { news, refusal };
    void say(const QString& sentence, Weight weight);
    void put_notice_away();
    [[nodiscard]] QString notice() const;
    [[nodiscard]] SetsPage& sets() { return *sets_; }
    // Something that every step has, under its page; and over it.
    void put_below(QWidget* widget);
    void put_above(QWidget* widget);
    // With what they stand in, for whoever takes the slip down page by page.
    [[nodiscard]] QList<QWidget*> pages() const;
    [[nodiscard]] WalkPage& walk() { return *walk_; }
    [[nodiscard]] GroundPage& ground() { return *ground_; }
    [[nodiscard]] SystemsPage& systems() { return *systems_; }
    [[nodiscard]] MethodPage& method() { return *method_; }

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void show_step();

    Choices& choices_;
    QFrame* notice_;
    QLabel* notice_words_;
    QStackedWidget* pages_;
    WalkPage* walk_;
    GroundPage* ground_;
    SystemsPage* systems_;
    MethodPage* method_;
    SetsPage* sets_;
};

}  // namespace plugside
