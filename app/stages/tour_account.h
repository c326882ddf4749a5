// The tours on which the sets are walked to, as the window knows them: worked out beside its thread, shorter and shorter while one watches.
//
// Worked out: while it is looked at (`watch`), and whenever something was wished or kept, since what is handed out follows it then; after each
//        whole plan and each edit of wishes or methods. The first usable tours come at once; `stop` leaves it at the best so far.
// Held:  what is shown is gone on with when sets come and go (core/sets/tours.h). `keep` puts it into the project as an act of the history:
//        then nothing shorter takes its place, until `let_go` or another wish.
// Wishes: acts of the history, too. A wish that is edited lets go of what was kept for another.
// Picked: one tour that is drawn strong and listed, or all; no act.
#pragma once

#include <QObject>
#include <memory>
#include <optional>
#include <stop_token>

#include "app/canvas/tour_ways.h"
#include "app/planning/background_work.h"
#include "app/session/field_session.h"
#include "core/sets/tours.h"

namespace plugside {

class TourAccount : public QObject {
    Q_OBJECT

public:
    explicit TourAccount(FieldSession& session, QObject* parent = nullptr);
    ~TourAccount() override;

    [[nodiscard]] const WalkingWishes& wishes() const;
    // Null until some were found for this field; of `plan()`, which may be an earlier one.
    [[nodiscard]] std::shared_ptr<const Tours> tours() const { return tours_; }
    [[nodiscard]] std::shared_ptr<const Plan> plan() const { return plan_; }
    // Whether they are of the plan and the wishes as they are now.
    [[nodiscard]] bool holds() const;
    [[nodiscard]] bool working() const { return work_.running(); }
    [[nodiscard]] bool stopped() const { return stopped_; }
    // Length of the first ones of this search.
    [[nodiscard]] std::optional<Metres> first_length() const { return first_length_; }
    [[nodiscard]] bool kept() const { return !wishes().kept.empty(); }
    // Whether the order handed out is another than the plan's own.
    [[nodiscard]] bool wished() const;

    void watch(bool on);
    void stop();
    // Lets go of what is held and looks for tours anew; what was kept is let go of by an act.
    void again();
    void keep();
    void set_start(std::optional<LocalPoint> start, const QString& words);
    void set_end(bool back, std::optional<LocalPoint> end, const QString& words);
    [[nodiscard]] std::optional<LocalPoint> start() const;  // as wished
    [[nodiscard]] std::optional<LocalPoint> end() const;    // as wished, elsewhere than at the start
    [[nodiscard]] std::optional<int> picked() const { return picked_; }
    void pick(std::optional<int> number);
    // For the map; null where there are none.
    [[nodiscard]] std::shared_ptr<const TourWays> ways() const;
    // The order of what is handed out: null for the plan's own. Precondition: `holds` where `wished`.
    [[nodiscard]] std::shared_ptr<const Tours> to_hand_out() const;

Q_SIGNALS:
    void changed();

private:
    // What tours follow from, beside the plan.
    struct Asked {
        std::shared_ptr<const Plan> plan;
        WalkingWishes wishes;
        std::string method;
        std::vector<SetMethod> set_methods;
        std::vector<Method> own_methods;
        friend bool operator==(const Asked&, const Asked&) = default;
    };
    [[nodiscard]] Asked asked_now() const;
    [[nodiscard]] TourWishes wishes_here() const;
    [[nodiscard]] std::vector<KeptTour> held() const;
    void follow();
    void start_work(std::vector<KeptTour> held);
    void take(const Asked& asked, std::shared_ptr<const Tours> tours);
    void edit(WalkingWishes wishes, const QString& words);

    FieldSession& session_;
    BackgroundWork work_{nullptr, BackgroundWork::Overlap::none};
    std::stop_source enough_;
    bool watched_ = false;
    bool stopped_ = false;
    std::optional<Asked> asked_;
    std::optional<Asked> of_;  // what tours_ are of
    std::shared_ptr<const Tours> tours_;
    std::shared_ptr<const Plan> plan_;
    std::optional<Metres> first_length_;
    std::optional<int> picked_;
    mutable std::shared_ptr<const TourWays> ways_;
};

}  // namespace plugside
