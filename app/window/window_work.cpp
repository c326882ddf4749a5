// The Method step in the window: reasons go to the map, and what is handed out waits for stops and signatures.
#include <algorithm>

#include "app/window/main_window.h"
#include "core/sets/cautions.h"

namespace plugside {

namespace {

// "set 3, 7: sentence", a line each.
QString lines_of(const std::vector<const CautionGroup*>& groups) {
    constexpr std::size_t most = 8;
    QStringList lines;
    for (const CautionGroup* group : groups) {
        const Caution* caution = find_caution(group->caution);
        if (caution == nullptr) continue;
        QStringList numbers;
        for (std::size_t i = 0; i < std::min(most, group->sets.size()); ++i) numbers << QString::number(group->sets[i] + 1);
        if (group->sets.size() > most) numbers << QStringLiteral("…");
        lines << MainWindow::tr("sets %1: %2")
                     .arg(numbers.join(QStringLiteral(", ")), QString::fromStdString(caution->sentence));
    }
    return lines.join(QLatin1Char('\n'));
}

}  // namespace

void MainWindow::bind_work() {
    connect(&slip_->method().against(), &AgainstView::reasons_shown, map_, &MapView::show_reasons);
}

// The walking order is drawn while it is looked at; a place for it may be set on the map.
void MainWindow::bind_tours() {
    connect(&tours_, &TourAccount::changed, this, [this] { map_->show_tours(tours_.ways()); });
    map_->show_tours(tours_.ways());
    ToursView& view = slip_->sets().tours();
    connect(&view, &ToursView::place_wanted, this, [this, &view](ToursView::End end) {
        setting_place_->ask_for([&view, end](LocalPoint place) { view.set_place(end, place); });
        map_->setFocus(Qt::ShortcutFocusReason);
        slip_->say(tr("Click on the map where it is. Space takes the middle of the map, Esc gives up."), Slip::Weight::news);
    });
    connect(&view, &ToursView::opened, map_, &MapView::fit);
    connect(setting_place_, &PlaceTool::hovered, map_, qOverload<>(&QWidget::update));
    connect(setting_place_, &PlaceTool::changed, this, [this] {
        use_tape(false);
        map_->update();
        if (!setting_place_->asking()) slip_->put_notice_away();
    });
    connect(&session_, &FieldSession::field_replaced, setting_place_, &PlaceTool::give_up);
}

void MainWindow::hand_out(FieldSession::HandOut where) {
    where.tours = tours_.to_hand_out();
    session_.hand_out(where);
}

// Stops keep the plan in the house; hold-backs of a chosen method want a signature first.
bool MainWindow::work_holds_back() {
    const auto judged = work_.judged_now();
    if (!judged) {
        slip_->say(tr("What speaks against the sets is being judged. Hand out once it is."), Slip::Weight::news);
        return true;
    }
    if (tours_.wished() && !tours_.holds()) {
        slip_->say(tr("The walking order is being worked out. Hand out once it is."), Slip::Weight::news);
        return true;
    }
    const std::vector<CautionGroup> groups = caution_groups(*judged);
    std::vector<const CautionGroup*> stops;
    std::vector<const CautionGroup*> unsigned_ones;
    for (const CautionGroup& group : groups) {
        const bool of_a_method =
            std::any_of(group.methods.begin(), group.methods.end(), [](const auto& id) { return !id.empty(); });
        if (group.holds && group.weight == CautionWeight::stop) stops.push_back(&group);
        if (group.holds && group.weight == CautionWeight::hold_back && group.open() && of_a_method)
            unsigned_ones.push_back(&group);
    }
    const auto go_to_against = [this] {
        choices_.go_to(Step::method);
        slip_->method().show_part(MethodPart::against);
    };
    if (!stops.empty()) {
        slip_->say(tr("Not handed out: a stop holds. Drop these sets or change what it hangs on.\n%1").arg(lines_of(stops)),
                   Slip::Weight::refusal);
        go_to_against();
        return true;
    }
    if (unsigned_ones.empty()) return false;
    const int answer =
        ask_(tr("These hold-backs want a signed reason before the plan is handed out.\n%1").arg(lines_of(unsigned_ones)),
             {tr("sign them"), tr("not now")});
    if (answer == 0) go_to_against();
    return true;
}

}  // namespace plugside
