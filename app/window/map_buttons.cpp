#include "app/window/map_buttons.h"

#include <QEvent>
#include <algorithm>
#include <utility>

#include "app/stages/rows_layout.h"

namespace plugside {

MapButtons::MapButtons(MapView& map) : QWidget(&map), map_(map) {
    setLayout(RowsLayout::natural(5));
    connect(add_button(tr("nearer"), tr("nearer"), QStringLiteral("+")), &QToolButton::clicked, &map_, &MapView::zoom_in);
    connect(add_button(tr("further"), tr("further"), QStringLiteral("-")), &QToolButton::clicked, &map_, &MapView::zoom_out);
    connect(add_button(tr("whole field"), tr("the whole field"), QStringLiteral("F")), &QToolButton::clicked, &map_,
            &MapView::fit);
    coordinates_ = add_button(tr("lat, lon"), tr("latitude and longitude"), QStringLiteral("C"));
    coordinates_->setCheckable(true);
    connect(coordinates_, &QToolButton::toggled, &map_, &MapView::show_coordinates);
    show_ = add_button(tr("show"), tr("what the map shows"), QStringLiteral("S"));
    build_show_menu();
    move(10, 10);
    map.installEventFilter(this);
    fit();
}

QToolButton* MapButtons::add_button(const QString& text, const QString& name, const QString& key) {
    auto* button = new QToolButton(this);
    button->setText(text);
    button->setAccessibleName(name);
    button->setToolTip(tr("%1 (key %2)").arg(name, key));
    button->setProperty("map_button", true);
    button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    layout()->addWidget(button);
    return button;
}

void MapButtons::build_show_menu() {
    menu_ = new QMenu(this);
    const std::vector<std::pair<QString, bool MapShow::*>> entries{
        {tr("the way walked"), &MapShow::track},
        {tr("ground not seen"), &MapShow::unwalked},
        {tr("other diggers' signs"), &MapShow::other_diggers},
        {tr("systems"), &MapShow::systems},
        {tr("runs"), &MapShow::runs},
        {tr("runs less likely than not"), &MapShow::unlikely_runs},
        {tr("flags and ladders"), &MapShow::sets},
        {tr("letters and names"), &MapShow::names}};
    for (const auto& [text, member] : entries) {
        QAction* action = menu_->addAction(text);
        action->setCheckable(true);
        action->setChecked(map_.show_choices().*member);
        if (member == &MapShow::unwalked) not_seen_ = action;
        connect(action, &QAction::toggled, &map_, [this, member = member](bool on) {
            MapShow show = map_.show_choices();
            show.*member = on;
            map_.set_show_choices(show);
        });
    }
    connect(not_seen_, &QAction::toggled, this, &MapButtons::not_seen_shown);
    connect(show_, &QToolButton::clicked, this, &MapButtons::open_show_menu);
}

bool MapButtons::event(QEvent* event) {
    // words grow with the theme and with the text
    if (event->type() == QEvent::LayoutRequest) fit();
    return QWidget::event(event);
}

bool MapButtons::eventFilter(QObject* watched, QEvent* event) {
    if (watched == &map_ && event->type() == QEvent::Resize) fit();
    return QWidget::eventFilter(watched, event);
}

void MapButtons::fit() {
    const int width = std::min(layout()->sizeHint().width(), map_.width() - 20);
    resize(width, layout()->heightForWidth(width));
}

void MapButtons::open_show_menu() { menu_->popup(show_->mapToGlobal(QPoint(0, show_->height() + 4))); }

void MapButtons::show_not_seen(bool on) { not_seen_->setChecked(on); }

bool MapButtons::shows_not_seen() const { return not_seen_->isChecked(); }

void MapButtons::toggle_coordinates() { coordinates_->toggle(); }

}  // namespace plugside
