// A shape that is being drawn on the ground, corner by corner: no window in it, so that it can be tested as it is used.
//
// Strokes: a new shape of each kind; a hole in the area under its first corner; a line that splits the shape it meets.
// Tip:     where the next corner would come: the cursor, or, within reach, a corner or an edge that is there already, or the drawn
//          line's own first corner (which closes an area). Corners win over edges.
// leg:     the tip set by length and bearing from the last corner, as taped on the ground.
// finish:  the ground with the stroke, or a sentence that says what is missing. The pen is empty afterwards only if it went well.
// Cost:    O(corners of the ground) a move.
#pragma once

#include <optional>
#include <string>
#include <tl/expected.hpp>
#include <vector>

#include "core/survey/ground_edits.h"
#include "core/units/length_text.h"

namespace plugside {

enum class Stroke { boundary, barrier, crossing, gate, keep_clear, untreated, hole, split };

// What a stroke adds to the ground; nothing for a hole and a split.
[[nodiscard]] std::optional<GroundKind> kind_drawn_by(Stroke stroke);

struct PenReading {
    std::optional<Metres> leg;       // from the last corner to the tip
    std::optional<Bearing> bearing;  // of that leg
    Metres line;                     // along all corners to the tip
    double area_m2 = 0.0;            // enclosed with the tip as last corner; 0 for lines
};

class GroundPen {
public:
    void take(Stroke stroke);
    void put_down();
    [[nodiscard]] std::optional<Stroke> stroke() const { return stroke_; }
    [[nodiscard]] const std::vector<LocalPoint>& corners() const { return corners_; }
    [[nodiscard]] std::optional<LocalPoint> tip() const { return tip_; }
    [[nodiscard]] bool snapped() const { return snapped_; }
    [[nodiscard]] bool closes() const { return closes_; }  // the tip is on the first corner of an area
    [[nodiscard]] bool encloses() const;                   // the stroke is an area

    void hover(const Ground& ground, LocalPoint at, Metres reach);
    // Puts a corner at the tip. True where this ends the stroke: one place was all, or the area is closed.
    bool press();
    void take_corner_back();
    // Corners all at once, in place of those there are.
    void lay(std::vector<LocalPoint> corners);
    // Puts a corner at the end of a leg from the last corner; false without a corner to start from.
    bool leg(const Leg& leg);
    [[nodiscard]] PenReading reading() const;
    [[nodiscard]] EditedGround finish(const Ground& ground);

private:
    std::optional<Stroke> stroke_;
    std::vector<LocalPoint> corners_;
    std::optional<LocalPoint> tip_;
    bool snapped_ = false;
    bool closes_ = false;
};

}  // namespace plugside
