// Correcting systems on the map: what a person knows better is said of marks and lines, and a mark's fan and place are put right by
// hand.
//
// With a mark picked: say(one_animal | two_animals | run_here) and the next mark clicked is the other one; not_a_gopher and older are
//        said at once. By keys alone: Enter takes the likely other mark, which is ringed (the nearest of another system for one animal, of
//        the same for two, any for a run), or another that is picked with [ and ]. Ctrl with left and right turns the fan (turn_fan_by). The picked mark's fan has a handle at its far edge: dragged, it turns the fan; the plug dragged moves the mark.
// Without: no_run is a line drawn with the pen (as GroundTool's: click, click, double click or Enter); aside an area whose marks are set
//        aside.
// While the hand is on the mouse, what would change is shown by a NearbyPreview, also of a no_run line that is being drawn; what it lets
// go of is one step of the history.
// Esc puts away what was begun.
#pragma once

#include <QObject>

#include "app/canvas/map_tool.h"
#include "app/drawing/ground_pen.h"
#include "app/planning/nearby_preview.h"
#include "app/session/choices.h"
#include "app/session/field_session.h"

namespace plugside {

enum class Saying { one_animal, two_animals, run_here, not_a_gopher, older, no_run, aside };

class SystemsTool : public QObject, public MapTool {
    Q_OBJECT

public:
    SystemsTool(FieldSession& session, Choices& choices, QObject* parent = nullptr);

    [[nodiscard]] const std::optional<Saying>& saying() const { return saying_; }
    [[nodiscard]] NearbyPreview& preview() { return preview_; }
    // Something is begun that Esc would put away.
    [[nodiscard]] bool busy() const { return saying_.has_value() || moved_.has_value(); }
    void say(Saying saying);
    void put_away();
    void finish();
    void take_corner_back();
    // The picked mark's fan, in degrees from true north as typed; false, and a sentence, where it is no bearing.
    bool turn_fan(const QString& text);
    void turn_fan_by(double degrees);

    bool grabs(QPointF pixel, const ViewTransform& view) override;
    void drag(QPointF pixel, const ViewTransform& view) override;
    void drop(QPointF pixel, const ViewTransform& view) override;
    void hover(QPointF pixel, const ViewTransform& view) override;
    bool click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers with) override;
    bool double_click(QPointF pixel, const ViewTransform& view) override;
    bool key(const QKeyEvent& event, const ViewTransform& view) override;
    [[nodiscard]] bool shows_another_plan() const override { return preview_.picture() != nullptr; }
    void paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const override;

Q_SIGNALS:
    void changed();
    void said(const QString& sentence);

private:
    enum class Hold { nothing, fan, plug };
    [[nodiscard]] const Mound* picked() const;
    void say_with(const Mound* second);
    [[nodiscard]] const Mound* likely_other() const;
    void say_of_two(const std::string& first, const std::string& second);
    void keep(KnownFact fact);
    void mend_picked(Mend mend, const QString& words);
    void look_at_line();
    [[nodiscard]] QPointF fan_handle(const Mound& mound, const ViewTransform& view) const;

    FieldSession& session_;
    Choices& choices_;
    NearbyPreview preview_;
    std::optional<Saying> saying_;
    std::string first_;  // the mark that it is said of
    GroundPen pen_;
    QPointF tip_pixel_;
    Hold hold_ = Hold::nothing;
    std::optional<Mound> moved_;  // the picked mark as the hand would have it
};

// What is begun, in words: "Click the other mark of the same animal."
[[nodiscard]] QString saying_help(Saying saying);

}  // namespace plugside
