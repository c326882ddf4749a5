// What stands on field sheets, in words of their language, before it is laid out: the same for paper and for a phone.
//
// Order:   sets in walking order. `number` is SetPoint::visit_order, which waypoints carry too ("S07 C"); `code` is set_code of it.
// Cautions: a card has those that hold at its place; those that hold everywhere stand once, in `cautions`, with all others.
// Stop:    nothing comes back.
// Ways:    on foot around barriers and buildings and through gates, as the walking order goes (core/sets/visits.h).
// Cost:    O(sets x (runs + rungs)), and that of the ways.
#pragma once

#include <QString>
#include <QStringList>
#include <optional>
#include <vector>

#include "app/sheets/sheet_input.h"
#include "app/stages/close_up_drawing.h"
#include "core/plan/progress.h"
#include "core/sets/cautions.h"

namespace plugside {

struct CardCaution {
    CautionWeight weight = CautionWeight::mind;
    QString word;  // "STOP"
    QString sentence;
};

struct RungToTick {
    int number = 0;
    QString reading;  // on the tape, or to the left or right of the row's middle
};

struct SetCard {
    std::size_t set = 0;  // index into Plan::sets
    int number = 0;
    QString code;
    QString letter;
    QString handheld;  // the waypoint's name
    QString place;     // "plug side of M012"
    QString state;     // "proposed, not decided"
    QString instruction;
    QString rungs_meaning;
    std::vector<RungToTick> rungs;
    QString chance;
    QString promise;  // the same in short, for the list
    QString look_for;
    std::vector<CardCaution> cautions;
    QString method;     // empty: none was chosen
    QStringList steps;  // of the method, without the search for the run, which the instruction tells
    QString cover;      // whether the hole is covered, and why
    QString at;         // latitude and longitude
    LocalPoint middle;
    CloseUpScene scene;
    QString from_before;                      // how far and which way from the set before
    std::optional<Polyline> way_from_before;  // on foot; nothing for the first, and where no way is drawn
};

struct CautionRow {
    CardCaution caution;
    QString reason;  // with its source
    QString where;   // "at every set", "at 3, 7 and 12"
};

struct LoadRow {
    QString amount;
    QString what;
    QString remark;
};

struct ConditionRow {
    QString question;
    QString answer;
    QString told;  // when, and whether it is to be asked again
};

struct MethodText {
    QString name;
    struct Step {
        QString text;
        QString source;
    };
    std::vector<Step> steps;
    QString tools;
    QString cover;
};

struct SheetContents {
    QString field;
    QString animals;  // with their interval and the area walked
    QString made;
    QString decides;
    QString way;  // how long the whole way is
    std::vector<SetCard> cards;
    std::vector<CautionRow> cautions;
    std::vector<LoadRow> load;
    QStringList load_remarks;  // working time, and what could not be computed
    std::vector<ConditionRow> conditions;
    std::vector<MethodText> methods;
    QStringList label;  // the label's figures beside the plan's
};

[[nodiscard]] std::optional<SheetContents> sheet_contents(const SheetInput& input, const Progress& progress = {});

// A text of the sheets in the language spoken on this thread.
[[nodiscard]] inline QString sheet_words(const char* text) { return said("Sheets", text); }

}  // namespace plugside
