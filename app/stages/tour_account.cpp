#include "app/stages/tour_account.h"

#include <utility>

#include "core/sets/visits.h"

namespace plugside {

TourAccount::TourAccount(FieldSession& session, QObject* parent) : QObject(parent), session_(session) {
    connect(&session_, &FieldSession::survey_edited, this, &TourAccount::follow);
    connect(&session_, &FieldSession::plan_changed, this, &TourAccount::follow);
    connect(&session_, &FieldSession::field_replaced, this, [this] {
        enough_.request_stop();
        work_.stop();
        tours_.reset();
        plan_.reset();
        ways_.reset();
        asked_.reset();
        of_.reset();
        picked_.reset();
        follow();
    });
    for (auto signal : {&BackgroundWork::started, &BackgroundWork::ended})
        connect(&work_, signal, this, &TourAccount::changed);
}

TourAccount::~TourAccount() {
    enough_.request_stop();
    work_.disconnect(this);
}

const WalkingWishes& TourAccount::wishes() const {
    static const WalkingWishes none;
    return session_.field() ? session_.field()->survey.work->walking : none;
}

bool TourAccount::wished() const { return wishes() != WalkingWishes{}; }

bool TourAccount::holds() const { return tours_ && session_.plan_is_current() && of_ == asked_now(); }

TourAccount::Asked TourAccount::asked_now() const {
    const WorkOrder& work = *session_.field()->survey.work;
    return {session_.plan(), work.walking, work.method, work.set_methods, work.own_methods};
}

std::optional<LocalPoint> TourAccount::start() const {
    const auto& place = wishes().start;
    if (!place || !session_.field()) return std::nullopt;
    return session_.field()->frame.to_local({place->longitude, place->latitude});
}

std::optional<LocalPoint> TourAccount::end() const {
    const auto& place = wishes().end;
    if (!place || wishes().back || !session_.field()) return std::nullopt;
    return session_.field()->frame.to_local({place->longitude, place->latitude});
}

TourWishes TourAccount::wishes_here() const {
    TourWishes here{start(), end(), wishes().people, wishes().minutes_a_day, wishes().carry};
    if (wishes().back) here.end = start() ? start() : where_the_walk_began(session_.field()->survey);
    return here;
}

// What is shown is held to while the same is wished.
std::vector<KeptTour> TourAccount::held() const {
    if (kept()) return wishes().kept;
    if (!tours_ || !of_ || !of_->wishes.alike(wishes())) return {};
    return kept_form(*plan_, *tours_);
}

void TourAccount::watch(bool on) {
    if (watched_ == on) return;
    watched_ = on;
    follow();
}

void TourAccount::follow() {
    if ((watched_ || wished()) && session_.plan_is_current() && asked_ != asked_now()) start_work(held());
    Q_EMIT changed();
}

void TourAccount::start_work(std::vector<KeptTour> held) {
    enough_.request_stop();
    enough_ = {};
    stopped_ = false;
    first_length_.reset();
    asked_ = asked_now();
    const auto applying = [this, asked = *asked_](Tours made) -> BackgroundWork::Apply {
        return [this, asked, tours = std::make_shared<const Tours>(std::move(made))] { take(asked, tours); };
    };
    TourOptions options;
    options.held = std::move(held);
    options.fixed = kept();
    options.stop = enough_.get_token();
    work_.start_in_stages([field = session_.field(), plan = session_.plan(), here = wishes_here(), options, applying,
                           enough = enough_](const Progress& progress,
                                             const BackgroundWork::Meanwhile& meanwhile) -> BackgroundWork::Apply {
        std::stop_source both = enough;
        const std::stop_callback given_up(progress.stop, [&both] { both.request_stop(); });
        TourOptions telling = options;
        telling.better = [&](Tours better) { meanwhile(applying(std::move(better))); };
        return applying(make_tours(field->survey, *plan, here, telling));
    });
}

void TourAccount::take(const Asked& asked, std::shared_ptr<const Tours> tours) {
    if (!session_.field() || asked != asked_now()) return;
    of_ = asked;
    plan_ = asked.plan;
    tours_ = std::move(tours);
    ways_.reset();
    if (!first_length_) first_length_ = tours_->length;
    if (picked_ && static_cast<std::size_t>(*picked_) > tours_->tours.size()) picked_.reset();
    Q_EMIT changed();
}

void TourAccount::stop() {
    if (!work_.running()) return;
    stopped_ = true;
    enough_.request_stop();
}

void TourAccount::again() {
    if (kept()) {
        WalkingWishes wishes = this->wishes();
        wishes.kept.clear();
        tours_.reset();  // nothing is gone on with
        edit(std::move(wishes), tr("let go of the walking order"));
    } else if (session_.plan_is_current()) {
        start_work({});
        Q_EMIT changed();
    }
}

void TourAccount::keep() {
    if (!holds() || tours_->tours.empty()) return;
    enough_.request_stop();
    WalkingWishes wishes = this->wishes();
    wishes.kept = kept_form(*plan_, *tours_);
    edit(std::move(wishes), tr("keep the walking order"));
}

void TourAccount::edit(WalkingWishes wishes, const QString& words) {
    if (!session_.field()) return;
    WorkOrder order = *session_.field()->survey.work;
    order.walking = std::move(wishes);
    session_.edit(HeldWork(std::move(order)), words);
}

namespace {

std::optional<PlaceInDegrees> in_degrees(const FieldSurvey& field, const std::optional<LocalPoint>& place) {
    if (!place) return std::nullopt;
    const GeographicPoint at = field.frame.to_geographic(*place);
    return PlaceInDegrees{at.latitude_degrees, at.longitude_degrees};
}

}  // namespace

void TourAccount::set_start(std::optional<LocalPoint> start, const QString& words) {
    if (!session_.field()) return;
    WalkingWishes wishes = this->wishes();
    wishes.start = in_degrees(*session_.field(), start);
    if (wishes.start != this->wishes().start) wishes.kept.clear();
    edit(std::move(wishes), words);
}

void TourAccount::set_end(bool back, std::optional<LocalPoint> end, const QString& words) {
    if (!session_.field()) return;
    WalkingWishes wishes = this->wishes();
    wishes.back = back;
    wishes.end = back ? std::nullopt : in_degrees(*session_.field(), end);
    if (wishes.end != this->wishes().end || back != this->wishes().back) wishes.kept.clear();
    edit(std::move(wishes), words);
}

void TourAccount::pick(std::optional<int> number) {
    if (picked_ == number) return;
    picked_ = number;
    ways_.reset();
    Q_EMIT changed();
}

std::shared_ptr<const TourWays> TourAccount::ways() const {
    if (!tours_ || !watched_) return nullptr;
    if (!ways_) {
        auto ways = std::make_shared<TourWays>();
        int number = 0;
        for (const Tour& tour : tours_->tours) ways->tours.push_back({++number, tour.way});
        ways->picked = picked_;
        ways->start = tours_->start;
        ways->end = tours_->end;
        ways_ = std::move(ways);
    }
    return ways_;
}

std::shared_ptr<const Tours> TourAccount::to_hand_out() const { return wished() && holds() ? tours_ : nullptr; }

}  // namespace plugside
