// The few words at the map's upper edge: nearer, further, whole field, coordinates, what is shown.
#pragma once

#include <QMenu>
#include <QToolButton>
#include <QWidget>

#include "app/canvas/map_view.h"

namespace plugside {

class MapButtons : public QWidget {
    Q_OBJECT

public:
    explicit MapButtons(MapView& map);
    void open_show_menu();
    void toggle_coordinates();
    // Ground not seen: hatched on the map or not; the menu and whoever else shows it agree.
    void show_not_seen(bool on);
    [[nodiscard]] bool shows_not_seen() const;

Q_SIGNALS:
    void not_seen_shown(bool on);

protected:
    bool event(QEvent* event) override;
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void fit();
    QToolButton* add_button(const QString& text, const QString& name, const QString& key);
    void build_show_menu();

    MapView& map_;
    QToolButton* coordinates_ = nullptr;
    QToolButton* show_ = nullptr;
    QMenu* menu_ = nullptr;
    QAction* not_seen_ = nullptr;
};

}  // namespace plugside
