#include "app/stages/day_rail.h"

#include <QKeyEvent>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>

#include "app/canvas/mound_glyph.h"
#include "app/stages/ground_page.h"
#include "app/stages/sets_page.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

// Where the run hangs, and the words beside it; closer together where the text is large.
double run_x(const MapStyle& style) { return style.text_share > 1.25 ? 20.0 : 30.0; }
double words_left(const MapStyle& style) { return run_x(style) + (style.text_share > 1.25 ? 20.0 : 26.0); }
constexpr double words_right = 13.0;

QString walk_line(const FieldSurvey& field) {
    const QString read = counted(static_cast<long long>(field.survey.mounds.size()), DayRail::tr("%1 mark read"),
                                 DayRail::tr("%1 marks read"));
    if (field.findings.empty()) return read;
    return DayRail::tr("%1, %2 remarks").arg(read).arg(field.findings.size());
}

QString systems_line(const Plan& plan) {
    const auto doubtful = std::count_if(plan.mounds.begin(), plan.mounds.end(), [](const MoundInPlan& mound) {
        return mound.system && mound.belongs.value() < 0.5;
    });
    if (doubtful == 0) return DayRail::tr("%1 drawn").arg(plan.systems.size());
    return counted(doubtful, DayRail::tr("%1 doubtful mound"), DayRail::tr("%1 doubtful mounds"));
}

QString sets_line(const Survey& survey, const Plan& plan) {
    const SetProgress progress = set_progress(survey, plan);
    if (progress.all == 0) return DayRail::tr("none proposed");
    if (progress.decided == progress.all) return DayRail::tr("all decided");
    return DayRail::tr("%1 to decide").arg(progress.all - progress.decided);
}

}  // namespace

StepButton::StepButton(Step step, const QString& name, Choices& choices, QWidget* parent)
    : QAbstractButton(parent), step_(step), choices_(choices) {
    setText(name);
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setFocusPolicy(Qt::StrongFocus);
    setCursor(Qt::PointingHandCursor);
    setAccessibleName(name);
    connect(this, &QAbstractButton::clicked, this, [this] { choices_.go_to(step_); });
    connect(&choices_, &Choices::step_changed, this, qOverload<>(&QWidget::update));
    connect(&choices_, &Choices::theme_changed, this, qOverload<>(&QWidget::updateGeometry));
}

void StepButton::set_line(const QString& line) {
    if (line_ == line) return;
    line_ = line;
    setAccessibleDescription(line);
    updateGeometry();
    update();
}

QFont StepButton::name_font() const {
    QFont font = this->font();
    font.setBold(true);
    font.setPixelSize(choices_.style().text(2));
    return font;
}

QFont StepButton::line_font() const {
    QFont font = this->font();
    font.setBold(false);
    font.setPixelSize(choices_.style().text(-1));
    return font;
}

WrappedWords StepButton::lines_at(int width) const {
    const MapStyle& style = choices_.style();
    const QFontMetricsF metrics(line_font());
    // five steps stand one under the other, in a window of 800 px too
    const int most = metrics.height() > 32.0 ? 1 : metrics.height() > 24.0 ? 2 : 3;
    return wrapped_words(line_, metrics, width - words_left(style) - words_right, most);
}

QSize StepButton::sizeHint() const { return {least_width(), heightForWidth(least_width())}; }

int StepButton::heightForWidth(int width) const {
    const auto lines = static_cast<double>(std::max<qsizetype>(lines_at(width).lines.size(), 1));
    return static_cast<int>(
        std::ceil(36.0 + QFontMetricsF(name_font()).height() + lines * QFontMetricsF(line_font()).height()));
}

int StepButton::least_width() const {
    return static_cast<int>(
        std::ceil(words_left(choices_.style()) + QFontMetricsF(name_font()).horizontalAdvance(text()) + words_right + 2.0));
}

void StepButton::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Down)
        focusNextChild();
    else if (event->key() == Qt::Key_Up)
        focusPreviousChild();
    else if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter)
        click();
    else
        QAbstractButton::keyPressEvent(event);
}

void StepButton::paintEvent(QPaintEvent*) {
    const MapStyle& style = choices_.style();
    const bool at_hand = choices_.step() == step_;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF frame = QRectF(rect()).adjusted(7.0, 4.0, -7.0, -4.0);
    if (at_hand || hasFocus() || underMouse()) {
        painter.setPen(at_hand || hasFocus() ? QPen(style.act, hasFocus() ? 2.4 : 1.4) : QPen(style.hairline, 1.0));
        painter.setBrush(at_hand ? style.slip : QColor(Qt::transparent));
        painter.drawRoundedRect(frame, 9.0, 9.0);
    }
    const double middle = 0.5 * height();
    MapStyle glyph = style;
    if (at_hand) glyph.soil = style.act;
    draw_fan(painter, {run_x(style), middle}, Bearing::degrees(80.0), Freshness::fresh, 14.0, glyph);
    const double left = words_left(style);
    const double room = width() - left - 8.0;
    const QFontMetricsF big(name_font());
    const QFontMetricsF small(line_font());
    const WrappedWords lines = lines_at(width());
    double top = middle - 0.5 * (big.height() + static_cast<double>(lines.lines.size()) * small.height());
    painter.setFont(name_font());
    painter.setPen(style.ink);
    painter.drawText(QRectF(left, top, room, big.height()), Qt::AlignLeft | Qt::AlignVCenter, text());
    top += big.height();
    painter.setFont(line_font());
    painter.setPen(style.quiet_ink);
    for (const QString& line : lines.lines) {
        painter.drawText(QRectF(left, top, room, small.height()), Qt::AlignLeft | Qt::AlignVCenter, line);
        top += small.height();
    }
    setToolTip(lines.cut ? line_ : QString());
}

DayRail::DayRail(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), work_(work) {
    setObjectName(QStringLiteral("rail"));
    setAttribute(Qt::WA_StyledBackground);
    setAccessibleName(tr("the day's steps"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 14, 0, 0);
    column->setSpacing(6);
    for (const auto& [step, name] :
         {std::pair{Step::walk, tr("Walk")}, std::pair{Step::ground, tr("Ground")}, std::pair{Step::systems, tr("Systems")},
          std::pair{Step::method, tr("Method")}, std::pair{Step::sets, tr("Sets")}}) {
        auto* button = new StepButton(step, name, choices_, this);
        steps_.push_back(button);
        column->addWidget(button);
    }
    column->addStretch(1);
    connect(&session_, &FieldSession::field_replaced, this, &DayRail::refresh);
    connect(&session_, &FieldSession::survey_edited, this, &DayRail::refresh);
    connect(&session_, &FieldSession::plan_changed, this, &DayRail::refresh);
    connect(&work_, &WorkAccount::changed, this, &DayRail::refresh);
    connect(&choices_, &Choices::units_changed, this, &DayRail::refresh);
    connect(&choices_, &Choices::theme_changed, this, qOverload<>(&QWidget::update));
    refresh();
}

StepButton* DayRail::button(Step step) const {
    return *std::find_if(steps_.begin(), steps_.end(), [step](const StepButton* button) { return button->step() == step; });
}

int DayRail::fitting_width() const {
    const MapStyle& style = choices_.style();
    int least = style.text_share > 1.0 ? 196 : (style.theme == Theme::light ? 196 : 220);
    for (const StepButton* step : steps_) least = std::max(least, step->least_width());
    return least;
}

void DayRail::refresh() {
    const auto field = session_.field();
    const auto plan = session_.plan();
    button(Step::walk)->set_line(field ? walk_line(*field) : tr("no walk is open"));
    const QStringList ground = field ? ground_words(field->survey.ground, choices_.units()) : QStringList();
    button(Step::ground)
        ->set_line(!field             ? tr("after the walk")
                   : ground.isEmpty() ? tr("nothing drawn yet")
                                      : ground.join(QStringLiteral(", ")));
    button(Step::systems)->set_line(plan ? systems_line(*plan) : (field ? tr("being made") : tr("after the walk")));
    button(Step::method)->set_line(field ? work_.line() : tr("after the walk"));
    button(Step::sets)->set_line(plan ? sets_line(field->survey, *plan) : (field ? tr("being made") : tr("after the walk")));
}

void DayRail::paintEvent(QPaintEvent* event) {
    QWidget::paintEvent(event);
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(rect(), style.rail);
    painter.setPen(QPen(style.hairline, 1.0));
    painter.drawLine(QPointF(width() - 0.5, 0.0), QPointF(width() - 0.5, height()));
    // the run the steps hang on: it sways a little, as runs do
    const double x = run_x(style);
    QPainterPath run(QPointF(x + 2.0, 0.0));
    double from = 0.0;
    double sway = 7.0;
    for (const StepButton* step : steps_) {
        const double to = step->geometry().center().y();
        run.cubicTo(x + sway, from + 0.35 * (to - from), x - sway, from + 0.7 * (to - from), x, to);
        from = to;
        sway = -sway;
    }
    painter.setPen(QPen(mixed(style.rail, style.dry_soil, 0.55), 5.0 * style.line_factor, Qt::SolidLine, Qt::RoundCap));
    painter.drawPath(run);
}

}  // namespace plugside
