// Following what is there already: a line or outline of a layer, or a walk's track, is picked on the map and becomes a shape of the
// ground, whole or between two places of it.
//
// Lines:  the walks' tracks, and those of every layer that was opened for it. They are drawn while the tool is in hand and become
//         nothing by themselves.
// Acts:   a click picks the nearest line within 12 pixels and is the first place on it; a second click on it is the other place, the
//         next one begins anew. `make` turns the whole line, or what lies between the places, into a shape and one act of the history.
//         Of an outline the shorter way between two places is taken; `go_the_other_way` takes the other.
// Keys:   arrows move the tip by 8 pixels (with Shift by 1), Space is a click, Backspace takes the last place back.
// A whole outline keeps its holes where it becomes an area.
#pragma once

#include <QObject>
#include <optional>
#include <vector>

#include "app/canvas/map_tool.h"
#include "app/drawing/ground_tool.h"
#include "geo/read/traceable_lines.h"

namespace plugside {

class TraceTool : public QObject, public MapTool {
    Q_OBJECT

public:
    TraceTool(FieldSession& session, Choices& choices, GroundTool& ground, QObject* parent = nullptr);

    void begin();
    void put_down();
    [[nodiscard]] bool active() const { return active_; }
    // Reads a layer file in the background; refused with a sentence by `said`.
    void open(const std::filesystem::path& file);
    [[nodiscard]] bool reading() const { return reading_.running(); }

    [[nodiscard]] const std::vector<Traceable>& lines() const { return lines_; }
    [[nodiscard]] std::optional<std::size_t> picked() const { return picked_; }
    // The whole line, or what lies between the two places; empty without a picked one.
    [[nodiscard]] std::vector<LocalPoint> way() const;
    [[nodiscard]] bool is_whole() const { return !to_; }
    // "farm, ditch · 120 ft"
    [[nodiscard]] QString picked_words() const;
    void go_the_other_way();
    void take_place_back();
    // Where nothing is picked, a sentence.
    void make(GroundKind kind);

    bool grabs(QPointF pixel, const ViewTransform& view) override;
    void drag(QPointF pixel, const ViewTransform& view) override;
    void drop(QPointF pixel, const ViewTransform& view) override;
    void hover(QPointF pixel, const ViewTransform& view) override;
    bool click(QPointF pixel, const ViewTransform& view, Qt::KeyboardModifiers with) override;
    bool double_click(QPointF pixel, const ViewTransform& view) override;
    bool key(const QKeyEvent& event, const ViewTransform& view) override;
    void paint(QPainter& painter, const MapStyle& style, const ViewTransform& view) const override;

Q_SIGNALS:
    void changed();
    void said(const QString& sentence);

private:
    struct Hit {
        std::size_t line = 0;
        PlaceOnLine place;
    };
    void gather();
    void press(LocalPoint at, Metres reach);
    [[nodiscard]] std::optional<Hit> nearest(LocalPoint at, Metres reach) const;
    [[nodiscard]] EditedGround made(GroundKind kind) const;
    [[nodiscard]] const Ground& ground() const { return session_.field()->survey.ground; }

    FieldSession& session_;
    Choices& choices_;
    GroundTool& ground_;
    bool active_ = false;
    std::vector<Traceable> of_files_;
    std::vector<Traceable> lines_;  // tracks and those of files
    std::vector<GroundBox> boxes_;  // of each
    std::optional<std::size_t> picked_;
    std::optional<std::size_t> under_hand_;
    std::optional<PlaceOnLine> from_;
    std::optional<PlaceOnLine> to_;
    bool other_way_ = false;
    std::optional<QPointF> tip_;
    bool tip_by_key_ = false;
    BackgroundWork reading_;
};

}  // namespace plugside
