// What the Sets step knows of all sets together: what is decided, which are shown, which undecided one is worth most, and how many
// animals the kept ones are expected to reach.
//
// Order:   see core/sets/set_worth.h; brought up to date at once with every act where that is a matter of a few milliseconds, else beside
//          the window's thread, the earlier order standing meanwhile without what was decided.
// Reached: counted beside the window's thread after each act; nothing while it is being counted the first time.
// Chances: hold while nothing but decisions was edited since the plan was made, since those change no chance of another set.
#pragma once

#include <QObject>
#include <memory>
#include <optional>
#include <vector>

#include "app/planning/background_work.h"
#include "app/session/field_session.h"
#include "core/sets/set_filter.h"
#include "core/sets/set_worth.h"

namespace plugside {

class SetAccount : public QObject {
    Q_OBJECT

public:
    struct Reached {
        CountInterval kept;
        double with_undecided = 0.0;
        double animals = 0.0;   // expected in the field
        double interval = 0.9;  // level
    };

    explicit SetAccount(FieldSession& session, QObject* parent = nullptr);

    [[nodiscard]] const std::vector<SetChoice>& choices() const { return choices_; }
    [[nodiscard]] const SetFilter& filter() const { return filter_; }
    void use(const SetFilter& filter);
    // The sets that a filter lets through, ascending, and how many.
    [[nodiscard]] std::vector<std::size_t> through(const SetFilter& filter) const;
    [[nodiscard]] std::size_t count(const SetFilter& filter) const { return through(filter).size(); }
    [[nodiscard]] std::vector<std::size_t> shown() const { return through(filter_); }
    [[nodiscard]] bool shows(std::size_t set) const;
    // The undecided set that is worth most among those shown, another than `besides`.
    [[nodiscard]] std::optional<std::size_t> next_undecided(std::optional<std::size_t> besides = {}) const;
    // Of an undecided set.
    [[nodiscard]] std::optional<SetWorth> worth(std::size_t set) const;
    [[nodiscard]] const std::optional<Reached>& reached() const { return reached_; }
    [[nodiscard]] bool counting() const { return work_.running(); }
    [[nodiscard]] bool chances_hold() const { return chances_hold_; }

Q_SIGNALS:
    void filter_changed();
    void counted();

private:
    void follow();
    void follow_chances();
    void count_again(bool order_too);

    FieldSession& session_;
    BackgroundWork work_{nullptr, BackgroundWork::Overlap::none};
    std::shared_ptr<const Plan> plan_;            // what the choices are of
    std::shared_ptr<const FieldSurvey> field_;    // what they were read from
    std::shared_ptr<const FieldSurvey> planned_;  // what the plan was made from
    std::vector<SetChoice> choices_;
    std::vector<SetWorth> order_;
    SetFilter filter_;
    std::optional<Reached> reached_;
    bool chances_hold_ = false;
};

}  // namespace plugside
