#include "app/stages/sets_page.h"

#include <QApplication>
#include <QScrollBar>
#include <algorithm>
#include <cmath>

#include "app/canvas/map_view.h"
#include "app/stages/caution_view.h"
#include "app/stages/set_words.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"
#include "core/probing/instruction.h"
#include "core/sets/cautions.h"

namespace plugside {

SetProgress set_progress(const Survey& survey, const Plan& plan) {
    const std::vector<SetChoice> choices = choices_of(survey, plan);
    const auto undecided = std::count(choices.begin(), choices.end(), SetChoice::proposed);
    return {choices.size() - static_cast<std::size_t>(undecided), choices.size()};
}

std::optional<std::size_t> SetsPage::at_hand() const {
    const auto plan = session_.plan();
    if (!plan || !session_.field() || !choices_.set()) return std::nullopt;
    return set_at(*plan, *choices_.set());
}

// The plan may not have heard of a move yet: what it will say of it is known.
ProbeSite SetsPage::site_as_moved(const ProbeSite& site) const {
    const auto decision = decision_on(session_.field()->survey, site.key);
    if (!decision || !decision->moved_to) return site;
    if (decision->moved_to->along == site.ladder.along && decision->moved_to->across == site.ladder.across) return site;
    return LadderByHand(site).at(*decision->moved_to);
}

std::optional<ProbeSite> SetsPage::ladder() const {
    if (in_hand_) return in_hand_;
    const auto set = at_hand();
    if (!set) return std::nullopt;
    return site_as_moved(session_.plan()->probes.at(session_.plan()->sets[*set].probe));
}

void SetsPage::lay_ladder(const LadderPlace& place) {
    if (!at_hand()) return;
    if (!moving()) {
        open(Panel::one_set);
        close_up_->begin_move();
    }
    close_up_->lay(place);
}

void SetsPage::shift_ladder(double along_units, double across_units) {
    if (!at_hand() || panel() == Panel::several || panel() == Panel::tours) return;
    open(Panel::one_set);
    close_up_->shift(along_units, across_units);
}

bool SetsPage::put_away() {
    if (moving()) {
        close_up_->give_up_move();
        return true;
    }
    if (panel() == Panel::one_set) return false;
    open(Panel::one_set);
    return true;
}

void SetsPage::open(Panel panel) {
    if (panel != Panel::one_set && moving()) close_up_->give_up_move();
    const bool had_focus = pages_->isAncestorOf(QApplication::focusWidget());
    pages_->setCurrentIndex(static_cast<int>(panel));
    shown_key_->setChecked(panel == Panel::show_only);
    several_key_->setChecked(panel == Panel::several);
    tours_key_->setChecked(panel == Panel::tours);
    refresh();
    for (QWidget* key : keys_) key->setVisible(panel != Panel::tours);
    if (panel == Panel::tours) tours_->take_focus();
    if (panel == Panel::show_only) show_only_->take_focus();
    if (panel == Panel::several) several_->take_focus();
    if (panel == Panel::one_set && had_focus) words_->setFocus();
}

void SetsPage::open_show_only() {
    if (at_hand()) open(panel() == Panel::show_only ? Panel::one_set : Panel::show_only);
}

void SetsPage::open_several() {
    if (at_hand()) open(panel() == Panel::several ? Panel::one_set : Panel::several);
}

void SetsPage::open_tours() {
    if (at_hand()) open(panel() == Panel::tours ? Panel::one_set : Panel::tours);
}

void SetsPage::tell_why() {
    open(Panel::one_set);
    reasons_->fold(!reasons_->unfolded());
}

void SetsPage::take_instead() {
    if (panel() == Panel::one_set && at_hand() && !moving()) reasons_->take_first();
}

void SetsPage::go_to_strip() {
    open(Panel::one_set);
    if (strip_->isVisible()) strip_->setFocus(Qt::ShortcutFocusReason);
}

void SetsPage::settle_on_a_set() {
    const auto plan = session_.plan();
    if (plan && !plan->sets.empty() && !at_hand()) pick(account_->next_undecided().value_or(0));
    refresh();
}

void SetsPage::pick(std::size_t set) {
    const auto plan = session_.plan();
    if (plan && set < plan->sets.size()) choices_.pick_set(plan->probes.at(plan->sets[set].probe).key);
}

void SetsPage::refresh() {
    const auto set = at_hand();
    // a move belongs to the set it was begun on
    if (moving() && choices_.set() != moving_set_) {
        close_up_->give_up_move();
        return;
    }
    for (QWidget* key : keys_) key->setEnabled(set.has_value());
    for (QPushButton* key : {shown_key_, several_key_, tours_key_}) key->setVisible(set.has_value());
    words_->setVisible(set.has_value());
    close_up_->setVisible(set.has_value());
    readings_->setVisible(set && moving());
    show_many();
    show_reached();
    if (set) {
        show_set(*set);
        return;
    }
    close_up_->show_nothing();
    strip_->hide();
    place_->setVisible(true);
    title_->setText(tr("Sets"));
    count_->clear();
    place_->setText(!session_.field() ? tr("A set is proposed once a walk is open.")
                    : session_.plan() ? tr("The plan proposes no set. The Walk step says why.")
                                      : tr("The plan is being made."));
}

void SetsPage::show_set(std::size_t index) {
    const auto plan = session_.plan();
    const auto field = session_.field();
    const SetPoint& set = plan->sets[index];
    const ProbeSite& site = plan->probes.at(set.probe);
    const SetChoice choice = account_->choices().at(index);
    const bool of_all = panel() == Panel::tours;
    title_->setText(of_all ? tr("Walking order") : tr("Set %1").arg(index + 1));
    count_->setText(of_all ? QString() : tr("%1 of %2").arg(index + 1).arg(plan->sets.size()));
    place_->setVisible(!of_all);
    place_->setText(place_words(*plan, site));
    if (!moving()) {
        const ProbeSite placed = site_as_moved(site);
        close_up_->show_scene(close_up_scene(*field, *plan, site), {placed.ladder.along, placed.ladder.across},
                              choice == SetChoice::dropped);
    }
    show_place();
    show_strip(index);
    show_decided(choice);
    const auto worth = account_->worth(index);
    worth_->setVisible(worth.has_value());
    if (worth)
        worth_->setText(tr("Adds %1 animals to those reached, for about %2 minutes.")
                            .arg(decimal(worth->gain, 2))
                            .arg(std::max(1L, std::lround(worth->minutes))));
    keep_->set_in_force(choice == SetChoice::kept);
    move_->set_in_force(choice == SetChoice::moved);
    drop_->set_in_force(choice == SetChoice::dropped);
    reasons_->show_set(index);
    show_method(index);
    show_cautions(index);
    if (shown_set_ != choices_.set()) words_->verticalScrollBar()->setValue(0);
    shown_set_ = choices_.set();
}

void SetsPage::show_decided(SetChoice choice) {
    const LadderPlace from = close_up_->planned();
    const auto tape = [this](Metres length) { return QString::fromStdString(tape_reading(length, choices_.units())); };
    decided_->setText(
        moving() ? tr("moved %1 along, %2 to the right")
                       .arg(tape(close_up_->place().along - from.along), tape(close_up_->place().across - from.across))
                 : decided_words(choice));
    decided_->setVisible(moving() || choice != SetChoice::proposed);
}

// What follows from where the ladder is: while it is being moved the words follow the hand.
void SetsPage::show_place() {
    const auto site = ladder();
    if (!site) return;
    instruction_->setText(QString::fromStdString(instruction(*site, session_.field()->survey, choices_.units())));
    if (moving()) readings_->show_place(close_up_->place(), QString::fromStdString(site->key.from_mound));
    show_chance(*site);
    if (moving()) show_decided(SetChoice::proposed);
}

void SetsPage::show_chance(const ProbeSite& site) {
    const bool holds = account_->chances_hold();
    const auto rungs = static_cast<int>(std::lround(site.expected_rungs));
    chance_->setText(tr("%1 in 100").arg(site.hit.in_100()));
    chance_words_->setText(
        holds ? counted(rungs, tr("to meet the run,\nabout %1 rung"), tr("to meet the run,\nabout %1 rungs"))
              : tr("chance is\nrecomputed"));
    chance_->setEnabled(holds);
}

void SetsPage::show_strip(std::size_t set) {
    const auto plan = session_.plan();
    const std::size_t system = plan->probes.at(plan->sets[set].probe).system;
    std::vector<SetStrip::Item> items;
    std::size_t at_hand = 0;
    for (std::size_t s = 0; s < plan->sets.size(); ++s) {
        const ProbeSite& site = plan->probes.at(plan->sets[s].probe);
        if (site.system != system) continue;
        if (s == set) at_hand = items.size();
        const ProbeSite placed = site_as_moved(site);
        items.push_back({s,
                         close_up_scene(*session_.field(), *plan, site),
                         {placed.ladder.along, placed.ladder.across},
                         account_->choices().at(s),
                         placed.hit.in_100()});
    }
    // nothing stands beside a set that is alone, nor is another chosen while one is moved
    strip_->setVisible(items.size() > 1 && !moving());
    strip_->show_sets(letter_of(*plan, system), std::move(items), at_hand);
}

// The keys and panels that speak of many sets.
void SetsPage::show_many() {
    const auto set = at_hand();
    const auto plan = session_.plan();
    hidden_->setVisible(false);
    if (!set || !plan) return;
    const std::string letter = letter_of(*plan, plan->probes.at(plan->sets[*set].probe).system).toStdString();
    const std::size_t all = plan->sets.size();
    const std::size_t shown = account_->shown().size();
    const bool narrowed = !lets_all_through(account_->filter());
    shown_key_->setText(narrowed ? tr("%1 of %2 (O)").arg(shown).arg(all) : tr("all %1 sets (O)").arg(all));
    if (narrowed && panel() != Panel::show_only) {
        hidden_->setVisible(true);
        hidden_->setText(tr("%1 passed over; gone through: %2").arg(all - shown).arg(filter_words(account_->filter())));
    }
    if (panel() == Panel::show_only) show_only_->refresh(letter);
    if (panel() == Panel::several) several_->refresh(letter);
    const bool many = panel() == Panel::several;
    const auto count = many ? several_->scope().size() : 0;
    keep_->setText(many ? tr("keep %1").arg(count) : tr("keep"));
    drop_->setText(many ? tr("drop %1").arg(count) : tr("drop"));
    move_->setText(moving() ? tr("lay here") : tr("move"));
    // what is not seen is not decided on
    const bool shown_here = panel() == Panel::one_set || panel() == Panel::several;
    for (KeyButton* key : {keep_, drop_}) key->setEnabled(shown_here && (!many || count > 0));
    move_->setEnabled(panel() == Panel::one_set);
    for (KeyButton* key : {keep_, drop_, move_}) key->setAccessibleName(key->text());
}

void SetsPage::show_reached() {
    const auto& reached = account_->reached();
    reached_->setVisible(reached.has_value() && at_hand() && panel() != Panel::tours);
    if (!reached) return;
    const QString kept = reached->kept.expected <= 0.0
                             ? tr("No set is kept yet.")
                             : tr("Kept sets reach %1 of %2 animals; in %3 of 100 cases %4 to %5.")
                                   .arg(animals_words(reached->kept.expected), animals_words(reached->animals))
                                   .arg(std::lround(100.0 * reached->interval))
                                   .arg(std::lround(reached->kept.low))
                                   .arg(std::lround(reached->kept.high));
    reached_->setText(tr("%1 With the undecided: %2.").arg(kept, animals_words(reached->with_undecided)));
}

void SetsPage::decide_and_go_on(SetChoice choice) {
    const auto set = at_hand();
    if (!set || panel() != Panel::one_set) return;
    const ProbeKey probe = session_.plan()->probes.at(session_.plan()->sets[*set].probe).key;
    // to keep a set that was moved is to keep it where it was moved to
    if (choice != SetChoice::kept || account_->choices().at(*set) != SetChoice::moved) session_.decide_on(probe, choice);
    if (choice != SetChoice::proposed) next_undecided();
}

void SetsPage::decide_on_several(SetChoice choice) {
    const auto plan = session_.plan();
    std::vector<SetDecision> decisions;
    for (const std::size_t set : several_->scope())
        decisions.push_back({plan->probes.at(plan->sets[set].probe).key, choice, std::nullopt});
    if (decisions.empty()) return;
    const auto count = static_cast<long long>(decisions.size());
    const QString words = choice == SetChoice::kept ? counted(count, tr("keep %1 set"), tr("keep %1 sets"))
                                                    : counted(count, tr("drop %1 set"), tr("drop %1 sets"));
    session_.decide_on_all(std::move(decisions), words);
    open(Panel::one_set);
    if (const auto set = at_hand(); !set || account_->choices().at(*set) != SetChoice::proposed) next_undecided();
}

void SetsPage::keep() {
    if (moving())
        close_up_->accept_move();
    else if (panel() == Panel::several)
        decide_on_several(SetChoice::kept);
    else
        decide_and_go_on(SetChoice::kept);
}

void SetsPage::drop() {
    if (moving()) close_up_->give_up_move();
    if (panel() == Panel::several)
        decide_on_several(SetChoice::dropped);
    else
        decide_and_go_on(SetChoice::dropped);
}

void SetsPage::undecide() {
    if (!moving()) decide_and_go_on(SetChoice::proposed);
}

void SetsPage::move() {
    if (moving()) {
        close_up_->accept_move();
    } else if (at_hand() && panel() != Panel::several && panel() != Panel::tours) {
        open(Panel::one_set);
        close_up_->begin_move();
    }
}

void SetsPage::step(int by) {
    const std::vector<std::size_t> shown = account_->shown();
    if (shown.empty() || moving()) return;
    const auto count = static_cast<long long>(shown.size());
    // from a set that is passed over to its neighbours among those gone through
    const std::size_t here = at_hand().value_or(0);
    const auto at = std::lower_bound(shown.begin(), shown.end(), here);
    const long long from = at - shown.begin();
    const bool among = at != shown.end() && *at == here;
    const long long to = from + (among || by < 0 ? by : by - 1);
    pick(shown[static_cast<std::size_t>((to % count + count) % count)]);
}

void SetsPage::next() { step(1); }

void SetsPage::previous() { step(-1); }

void SetsPage::next_undecided() {
    if (moving()) return;
    if (const auto set = account_->next_undecided(at_hand())) pick(*set);
}

}  // namespace plugside
