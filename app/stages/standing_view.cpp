#include "app/stages/standing_view.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <cmath>

#include "app/session/project_places.h"
#include "app/stages/nearest_to_do.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

using namespace std::chrono;

constexpr double metres_a_degree = 111000.0;  // of latitude, roughly

// Whether it may be asked where that lies on the field's plane.
bool near_enough(const LocalFrame& frame, GeographicPoint place) {
    const GeographicPoint centre = frame.centre();
    const double east = std::remainder(place.longitude_degrees - centre.longitude_degrees, 360.0) *
                        std::cos(centre.latitude_degrees * M_PI / 180.0);
    const double north = place.latitude_degrees - centre.latitude_degrees;
    return std::hypot(east, north) * metres_a_degree < StandingView::furthest_m;
}

}  // namespace

QString age_words(milliseconds age) {
    const auto whole = std::max<long long>(duration_cast<seconds>(age).count(), 0);
    if (whole < 120) return StandingView::tr("%1 s").arg(whole);
    if (whole < 7200) return StandingView::tr("%1 min").arg(whole / 60);
    if (whole < 172800) return StandingView::tr("%1 h").arg(whole / 3600);
    return StandingView::tr("%1 days").arg(whole / 86400);
}

StandingView::StandingView(FieldSession& session, Choices& choices, PositionFollower& positions, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), positions_(positions) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(4, 0, 4, 0);
    column->setSpacing(4);
    heading_ = label_in_role("heading", this);
    words_ = label_in_role("body", this);
    way_ = label_in_role("body", this);
    remarks_ = label_in_role("small", this);
    in_the_middle_ = new QPushButton(tr("keep in the middle"), this);
    in_the_middle_->setCheckable(true);
    in_the_middle_->setToolTip(tr("Ctrl+Shift+G"));
    auto* stop = new QPushButton(tr("stop following"), this);
    stop->setToolTip(tr("Ctrl+G"));
    for (QWidget* line : std::initializer_list<QWidget*>{heading_, words_, way_, remarks_}) column->addWidget(line);
    auto* keys = new QHBoxLayout;
    for (QPushButton* key : {in_the_middle_, stop}) {
        key->setProperty("way", true);
        keys->addWidget(key, 1);
    }
    column->addLayout(keys);
    connect(stop, &QPushButton::clicked, this, &StandingView::stop_wanted);
    connect(in_the_middle_, &QPushButton::toggled, this, &StandingView::stands);
    connect(&positions_, &PositionFollower::changed, this, &StandingView::refresh);
    connect(&session_, &FieldSession::field_replaced, this, &StandingView::refresh);
    connect(&session_, &FieldSession::survey_edited, this, &StandingView::refresh);
    connect(&session_, &FieldSession::plan_changed, this, &StandingView::refresh);
    connect(&choices_, &Choices::step_changed, this, &StandingView::refresh);
    connect(&choices_, &Choices::units_changed, this, &StandingView::refresh);
    refresh();
}

std::optional<Standing> StandingView::standing_now() const {
    const auto field = session_.field();
    const auto& position = positions_.position();
    if (!field || !position || !near_enough(field->frame, position->told.at)) return std::nullopt;
    Standing standing;
    standing.at = field->frame.to_local(position->told.at);
    if (position->told.radius_m) standing.radius = Metres::of(*position->told.radius_m);
    const UtcTime now = utc_now();
    const PositionAge age = age_of(*position, now);
    standing.age = age == PositionAge::now   ? Standing::Age::now
                   : age == PositionAge::old ? Standing::Age::old
                                             : Standing::Age::past;
    if (age != PositionAge::now) standing.label = tr("%1 ago").arg(age_words(now - position->as_of));
    return standing;
}

QString StandingView::place_words() const {
    const auto& position = positions_.position();
    if (!position) return positions_.looked() ? tr("No place is in the file yet.") : tr("Looking into the file.");
    const UtcTime now = utc_now();
    const QString age = age_words(now - position->as_of);
    QStringList words;
    if (position->lost)
        words << tr("The receiver has no place now. The last one was told %1 ago.").arg(age);
    else if (age_of(*position, now) == PositionAge::past)
        words << tr("Nothing new for %1: this is where you were.").arg(age);
    else if (position->told.radius_m)
        words << tr("You are within %1 of here (19 times in 20), %2 ago.")
                     .arg(QString::fromStdString(ground_distance(Metres::of(*position->told.radius_m), choices_.units())),
                          age);
    else
        words << tr("You are about here, %1 ago. How near is not told.").arg(age);
    if (!position->told.by_receiver) words << tr("The receiver says that this place is guessed or made up.");
    if (position->clock_ahead) words << tr("The receiver's clock is ahead of this computer's.");
    if (const auto field = session_.field(); field && !near_enough(field->frame, position->told.at))
        words << tr("That is far from this field.");
    return words.join(' ');
}

QString StandingView::way_words() const {
    const auto field = session_.field();
    if (!field || !standing_ || standing_->age == Standing::Age::past) return {};
    const auto nearest = nearest_to_do(session_, choices_.step(), standing_->at);
    if (!nearest) return choices_.step() == Step::sets && session_.plan() ? tr("All sets are decided.") : QString();
    const Metres distance = Metres::of(distance_m(nearest->at, standing_->at));
    const auto bearing = Bearing::along(nearest->at - standing_->at);
    const QString name =
        nearest->waits ? tr("Nearest to decide: %1").arg(nearest->name) : tr("Nearest mound: %1").arg(nearest->name);
    if (!bearing || (standing_->radius && distance.value() < standing_->radius->value()))
        return tr("%1, within the receiver's error. Look for the plug, and tape from there.").arg(name);
    return tr("%1, %2 towards %3° (%4).")
        .arg(name, QString::fromStdString(ground_distance(distance, choices_.units())))
        .arg(std::lround(field->frame.true_bearing(*bearing, standing_->at).degrees()) % 360)
        .arg(QString::fromStdString(compass_point(*bearing)));
}

void StandingView::refresh() {
    const bool following = positions_.file().has_value();
    setVisible(following);
    const auto before = std::exchange(standing_, following ? standing_now() : std::nullopt);
    if (following) {
        heading_->setText(tr("Following %1").arg(as_text(positions_.file()->filename())));
        words_->setText(place_words());
        way_->setText(way_words());
        way_->setVisible(!way_->text().isEmpty());
        remarks_->setText(positions_.remarks().isEmpty() ? QString() : positions_.remarks().back());
        remarks_->setToolTip(positions_.remarks().join('\n'));
        remarks_->setVisible(!remarks_->text().isEmpty());
    }
    if (before != standing_) Q_EMIT stands();
}

}  // namespace plugside
