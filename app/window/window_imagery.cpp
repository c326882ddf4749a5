// The window's part in imagery: which files become pictures under the ground, and what is said of those that do not.
#include <QFile>
#include <QFileDialog>
#include <QShortcut>
#include <algorithm>

#include "app/commands/picture_command.h"
#include "app/reading/dropped_files.h"
#include "app/session/server_imagery.h"
#include "app/stages/imagery_list.h"
#include "app/window/main_window.h"
#include "app/window/server_dialog.h"

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
    connect(list, &ImageryList::place_wanted, this, &MainWindow::place_picture);
    connect(list, &ImageryList::take_away_wanted, this, &MainWindow::take_picture_away);
    connect(list, &ImageryList::server_wanted, this, &MainWindow::enter_server);
    connect(new QShortcut(QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_I), this), &QShortcut::activated, this,
            &MainWindow::enter_server);
    // the other steps, and the walk-through, need the room; with nothing under the ground it is the way to lay something there
    const auto show = [this, list] {
        list->setVisible(session_.field() && choices_.step() == Step::ground && !walk_through_.at());
    };
    connect(&imagery_, &Imagery::changed, list, show);
    connect(&choices_, &Choices::step_changed, list, show);
    connect(&walk_through_, &WalkThrough::changed, list, show);
    connect(&session_, &FieldSession::field_replaced, list, show);
    connect(&imagery_, &Imagery::server_failed, this, [this](const QString& sentence) {
        const bool goes_on = imagery_.server() != nullptr && imagery_.server()->asking();
        slip_->say(goes_on ? sentence : tr("%1 It is not asked again before you hide it and show it again.").arg(sentence),
                   Slip::Weight::refusal);
    });
    connect(&imagery_, &Imagery::wants_place, this, [this](const std::filesystem::path& file) {
        if (!placing_.active()) place_picture(file);
    });
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
void MainWindow::take_dropped(const FieldSession::Files& files) {
    judging_drop_.start([this, files](const Progress&) -> BackgroundWork::Apply {
        const DroppedFiles dropped = judged(files);
        return [this, files, dropped] {
            if (dropped.holds_project && took_project(files)) return;
            if (!session_.field() && !dropped.to_read.empty())
                pictures_waiting_ = dropped.imagery;
            else if (!dropped.imagery.empty())
                add_imagery(dropped.imagery);
            open_files(dropped.to_read);
        };
    });
}

// Both halves of the window's middle: the picture beside the map, and what is known of its pairs in place of the slip.
void MainWindow::bind_placing() {
    connect(&placing_, &PicturePlacing::begun, this, [this] {
        picture_->open(*placing_.file());
        show_placing(true);
    });
    connect(&placing_, &PicturePlacing::left, this, [this] {
        picture_->close();
        show_placing(false);
    });
    connect(picture_, &PictureView::refused, placing_panel_, &PlacingPanel::say);
    connect(placing_panel_, &PlacingPanel::done, &placing_, &PicturePlacing::leave);
    connect(placing_tool_, &PlacingTool::changed, map_, qOverload<>(&QWidget::update));
}

void MainWindow::show_placing(bool on) {
    for (QWidget* part : std::initializer_list<QWidget*>{slip_, map_buttons_}) part->setVisible(!on);
    for (QWidget* part : std::initializer_list<QWidget*>{picture_, placing_panel_}) part->setVisible(on);
    for (QWidget* part : std::initializer_list<QWidget*>{top_bar_, rail_}) part->setEnabled(!on);
    hold_shortcuts(on, {Qt::CTRL | Qt::Key_U, Qt::CTRL | Qt::Key_L, Qt::CTRL | Qt::Key_Z, Qt::CTRL | Qt::SHIFT | Qt::Key_Z,
                        Qt::CTRL | Qt::Key_Y, Qt::CTRL | Qt::Key_M, Qt::CTRL | Qt::Key_Q, Qt::Key_F1, Qt::Key_F11,
                        Qt::Key_Escape, Qt::Key_Plus, Qt::Key_Equal, Qt::Key_Minus, Qt::Key_F, Qt::Key_Q, Qt::Key_C});
    use_tape(false);
    (on ? static_cast<QWidget*>(picture_) : map_)->setFocus(Qt::ShortcutFocusReason);
}

void MainWindow::place_picture(const std::filesystem::path& file) {
    if (session_.field() && !reading_->isVisible()) placing_.begin(file);
}

void MainWindow::take_picture_away(const std::filesystem::path& file) {
    const auto state = imagery_.state_of(file);
    if (!state) return;
    session_.push(new PictureCommand(
        file, state, std::nullopt, tr("take a picture away"),
        [this](const std::filesystem::path& of, const PictureCommand::State& to) { imagery_.put(of, to); }));
}

// Nothing is asked of anyone before a yes here.
void MainWindow::enter_server() {
    if (!session_.field()) {
        slip_->say(tr("Imagery lies under a field: open a walk first."), Slip::Weight::refusal);
        return;
    }
    auto* dialog = new ServerDialog(this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &QDialog::accepted, this, [this, dialog] {
        if (const auto address = dialog->address()) imagery_.ask_server(*address, dialog->deepest());
    });
    dialog->open();
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
