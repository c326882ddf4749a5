// The window's part in following a receiver: which file, where its place is shown, and the map kept about it.
#include <QFileDialog>

#include "app/session/project_places.h"
#include "app/stages/standing_view.h"
#include "app/window/main_window.h"

namespace plugside {

void MainWindow::bind_positions() {
    auto* view = new StandingView(session_, choices_, positions_, slip_);
    slip_->put_below(view);
    connect(view, &StandingView::stop_wanted, &positions_, &PositionFollower::stop);
    connect(view, &StandingView::stands, map_,
            [this, view] { map_->stand(view->standing(), view->in_the_middle().isChecked()); });
    on_key(Qt::CTRL | Qt::Key_G, [this] { positions_.file() ? positions_.stop() : choose_positions(); });
    on_key(Qt::CTRL | Qt::SHIFT | Qt::Key_G, [this, view] {
        if (positions_.file()) view->in_the_middle().toggle();
    });
    map_->stand(view->standing(), false);
}

void MainWindow::choose_positions() {
    if (!session_.field()) {
        slip_->say(tr("A receiver is followed on a field: open a walk first."), Slip::Weight::refusal);
        return;
    }
    const QString name =
        QFileDialog::getOpenFileName(this, tr("The file that the receiver's program goes on writing"), QString(),
                                     tr("Sentences, tracks, tables (*.nmea *.nma *.log *.txt *.gpx *.csv);;All files (*)"));
    if (!name.isEmpty()) positions_.follow(as_path(name));
}

}  // namespace plugside
