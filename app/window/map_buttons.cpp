#include "app/window/map_buttons.h"

#include <QVBoxLayout>
#include <utility>

namespace plugside {

MapButtons::MapButtons(MapView& map) : QWidget(&map), map_(map) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    connect(add_button(tr("+"), tr("nearer"), QStringLiteral("+")), &QToolButton::clicked, &map_, &MapView::zoom_in);
    connect(add_button(tr("−"), tr("further"), QStringLiteral("-")), &QToolButton::clicked, &map_, &MapView::zoom_out);
    connect(add_button(tr("fit"), tr("the whole field"), QStringLiteral("F")), &QToolButton::clicked, &map_, &MapView::fit);
    coordinates_ = add_button(tr("lat"), tr("latitude and longitude"), QStringLiteral("C"));
    coordinates_->setCheckable(true);
    connect(coordinates_, &QToolButton::toggled, &map_, &MapView::show_coordinates);
    show_ = add_button(tr("show"), tr("what the map shows"), QStringLiteral("S"));
    build_show_menu();
    adjustSize();
    move(12, 12);
}

QToolButton* MapButtons::add_button(const QString& text, const QString& name, const QString& key) {
    auto* button = new QToolButton(this);
    button->setText(text);
    button->setAccessibleName(name);
    button->setToolTip(tr("%1 (%2)").arg(name, key));
    button->setProperty("map_button", true);
    button->setFixedSize(48, 34);
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
        connect(action, &QAction::toggled, &map_, [this, member = member](bool on) {
            MapShow show = map_.show_choices();
            show.*member = on;
            map_.set_show_choices(show);
        });
    }
    connect(show_, &QToolButton::clicked, this, &MapButtons::open_show_menu);
}

void MapButtons::open_show_menu() { menu_->popup(show_->mapToGlobal(QPoint(show_->width() + 6, 0))); }

void MapButtons::toggle_coordinates() { coordinates_->toggle(); }

}  // namespace plugside
