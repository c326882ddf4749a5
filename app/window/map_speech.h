// What of the map is told to whoever does not see it: the mark, the set and the animal that are picked, as the map's value, through
// QAccessible; a screen reader hears of each change.
//
// The order is that of the step at hand: in the Sets step the set comes first, else the mark, then the animal. Nothing picked: how many marks
// and sets there are. Cost: O(1) a change.
#pragma once

#include <QObject>

#include "app/canvas/map_view.h"

namespace plugside {

class MapSpeech : public QObject {
    Q_OBJECT

public:
    // To be called before the map is made: what was asked about the map once is kept.
    static void install();
    // A child of the map.
    MapSpeech(FieldSession& session, Choices& choices, MapView& map);
    [[nodiscard]] QString told() const;

Q_SIGNALS:
    // What a screen reader is given with the change of the map's value.
    void value_changed(const QString& told);

private:
    void tell();
    [[nodiscard]] QString set_told(const FieldSurvey& field, const Plan& plan) const;

    FieldSession& session_;
    Choices& choices_;
    MapView& map_;
    QString last_told_;
};

}  // namespace plugside
