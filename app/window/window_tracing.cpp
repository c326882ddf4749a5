// The window's part in following lines that are there already: the tool's place among the others, and opening layers for it.
#include <QFile>
#include <QFileDialog>

#include "app/stages/trace_view.h"
#include "app/window/main_window.h"

namespace plugside {

void MainWindow::bind_tracing() {
    auto* view = new TraceView(*tracing_, slip_);
    slip_->put_below(view);
    connect(&slip_->ground(), &GroundPage::trace_wanted, this, &MainWindow::trace);
    connect(view, &TraceView::open_wanted, this, &MainWindow::choose_layer_to_trace);
    connect(view, &TraceView::put_down_wanted, tracing_, &TraceTool::put_down);
    connect(tracing_, &TraceTool::said, this, [this](const QString& sentence) { slip_->say(sentence, Slip::Weight::news); });
    // a pen that is taken up takes the place of it
    connect(drawing_, &GroundTool::changed, this, [this] {
        if (drawing_->pen().stroke() && tracing_->active()) tracing_->put_down();
    });
    connect(tracing_, &TraceTool::changed, this, [this] {
        slip_->ground().show_tracing(tracing_->active());
        if (map_->tool() != tape_ && map_->tool() != tool_of_the_step()) map_->use_tool(tool_of_the_step());
        map_->update();
    });
}

void MainWindow::trace() {
    if (tracing_->active()) {
        tracing_->put_down();
        return;
    }
    drawing_->put_down();
    use_tape(false);
    tracing_->begin();
    map_->setFocus(Qt::ShortcutFocusReason);
    if (tracing_->active() && tracing_->lines().empty()) choose_layer_to_trace();
}

void MainWindow::choose_layer_to_trace() {
    const QString name =
        QFileDialog::getOpenFileName(this, tr("A layer to trace lines of"), QString(),
                                     tr("Layers (*.gpkg *.geojson *.json *.shp *.kml *.fgb);;All files (*)"));
    if (!name.isEmpty()) tracing_->open(QFile::encodeName(name).toStdString());
}

}  // namespace plugside
