// The window's part in imagery: which files become pictures under the ground, and what is said of those that do not.
#include <QFile>
#include <QFileDialog>
#include <QShortcut>
#include <algorithm>

#include "app/stages/imagery_list.h"
#include "app/window/main_window.h"

namespace plugside {

void MainWindow::bind_imagery() {
    map_->lay_on(imagery_);
    auto* list = new ImageryList(imagery_, slip_);
    list->hide();  // until there is a picture
    slip_->put_below(list);
    connect(list, &ImageryList::add_wanted, this, &MainWindow::choose_imagery);
    connect(new QShortcut(QKeySequence(Qt::CTRL | Qt::Key_I), this), &QShortcut::activated, this,
            &MainWindow::choose_imagery);
    connect(&choices_, &Choices::units_changed, list, [this, list] { list->use(choices_.units()); });
    // the other steps, and the walk-through, need the room
    const auto show = [this, list] {
        list->setVisible(!imagery_.pictures().empty() && choices_.step() == Step::ground && !walk_through_.at());
    };
    connect(&imagery_, &Imagery::changed, list, show);
    connect(&choices_, &Choices::step_changed, list, show);
    connect(&walk_through_, &WalkThrough::changed, list, show);
    connect(&session_, &FieldSession::field_replaced, this, [this] {
        if (session_.field()) imagery_.lie_on(session_.field()->frame);
    });
    connect(&imagery_, &Imagery::refused, this, [this](const std::filesystem::path&, const Refusal& refusal) {
        slip_->say(QString::fromStdString(sentence(refusal)), Slip::Weight::refusal);
    });
}

void MainWindow::add_imagery(const FieldSession::Files& files) {
    if (!session_.field()) {
        slip_->say(tr("Imagery lies under a field: open a walk first."), Slip::Weight::refusal);
        return;
    }
    for (const std::filesystem::path& file : files) imagery_.add(file);
}

// Pictures of the ground wherever they are dropped; everything else is a walk or a layer.
void MainWindow::take_dropped(FieldSession::Files files) {
    if (took_project(files)) return;
    const auto pictures = std::stable_partition(files.begin(), files.end(),
                                                [](const std::filesystem::path& file) { return !is_imagery_file(file); });
    const FieldSession::Files imagery(pictures, files.end());
    files.erase(pictures, files.end());
    if (!session_.field() && !files.empty())
        pictures_waiting_ = imagery;
    else if (!imagery.empty())
        add_imagery(imagery);
    open_files(files);
}

void MainWindow::choose_imagery() {
    const QStringList names = QFileDialog::getOpenFileNames(
        this, tr("Add pictures of the ground"), QString(),
        tr("Pictures with a position (*.tif *.tiff *.png *.jpg *.jpeg *.jp2 *.gpkg *.mbtiles);;All files (*)"));
    FieldSession::Files files;
    for (const QString& name : names) files.emplace_back(QFile::encodeName(name).toStdString());
    if (!files.empty()) add_imagery(files);
}

}  // namespace plugside
