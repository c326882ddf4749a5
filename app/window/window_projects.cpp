// The window's part in projects: opening them, giving them a name, and what is said where a change could not be kept.
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QStandardPaths>
#include <algorithm>

#include "app/session/project_places.h"
#include "app/window/main_window.h"
#include "app/window/recent_projects.h"

namespace plugside {

void MainWindow::bind_projects() {
    auto* recent = new RecentProjects(slip_);
    slip_->put_below(recent);
    // after the click that asked for it: the button it came from goes
    connect(
        recent, &RecentProjects::wanted, this, [this](const std::filesystem::path& project) { open_project(project); },
        Qt::QueuedConnection);
    connect(&session_, &FieldSession::field_replaced, recent, &QWidget::hide);
    connect(&keeper_, &ProjectKeeper::changed, this, &MainWindow::name_window);
    connect(&keeper_, &ProjectKeeper::refused, this,
            [this](const QString& sentence) { slip_->say(sentence, Slip::Weight::refusal); });
    connect(&keeper_, &ProjectKeeper::opened, this, [this](const QString& earlier) {
        if (!earlier.isEmpty())
            slip_->say(
                tr("This project was of an earlier form and was brought forward. As it was, it is kept as %1.").arg(earlier),
                Slip::Weight::news);
    });
    connect(&keeper_, &ProjectKeeper::named_anew, this, [this](const QString& file) {
        name_window();
        slip_->say(tr("Every change is kept in %1\nin %2")
                       .arg(QFileInfo(file).fileName(), QDir::toNativeSeparators(QFileInfo(file).absolutePath())),
                   Slip::Weight::news);
    });
    auto* menu = new QMenu(top_bar_);
    top_bar_->project().setMenu(menu);
    connect(menu, &QMenu::aboutToShow, this, [this, menu] { fill_project_menu(*menu); });
}

void MainWindow::fill_project_menu(QMenu& menu) {
    menu.clear();
    const auto at_hand = keeper_.file();
    if (sample_is_open()) menu.addAction(tr("the sample: nothing of it is kept"))->setEnabled(false);
    if (at_hand) {
        QAction* where = menu.addAction(keeper_.kept() ? tr("kept in %1").arg(project_words(*at_hand))
                                                       : tr("not kept yet in %1").arg(project_words(*at_hand)));
        where->setEnabled(false);
    }
    QAction* name = menu.addAction(tr("keep as…\tCtrl+Shift+S"), this, &MainWindow::keep_project_as);
    name->setEnabled(at_hand.has_value());
    menu.addAction(tr("open…\tCtrl+O"), this, [this] { choose_files(false); });
    menu.addAction(positions_.file() ? tr("stop following the receiver\tCtrl+G") : tr("follow a receiver…\tCtrl+G"), this,
                   [this] { positions_.file() ? positions_.stop() : choose_positions(); });
    menu.addAction(tr("the job on a sample field\tF2"), this, &MainWindow::show_on_sample);
    if (sample_is_open()) menu.addAction(tr("leave the sample"), this, &MainWindow::leave_sample, Qt::QueuedConnection);
    bool first = true;
    for (const auto& project : recent_projects()) {
        if (at_hand && project == *at_hand) continue;
        if (std::exchange(first, false)) menu.addSection(tr("go on with"));
        menu.addAction(project_words(project).replace('&', QLatin1String("&&")), this,
                       [this, project] { open_project(project); });
    }
}

void MainWindow::name_window() {
    const auto field = session_.field();
    const auto project = keeper_.file();
    const QString name = field ? QString::fromStdString(field->field_name) : QString();
    if (!field)
        setWindowTitle(tr("Plugside"));
    else if (sample_is_open())
        setWindowTitle(tr("%1 – a sample, nothing of it is kept – Plugside").arg(name));
    else if (project && keeper_.named())
        setWindowTitle(tr("%1[*] – %2 – Plugside").arg(name, as_text(project->filename())));
    else
        setWindowTitle(tr("%1[*] – Plugside").arg(name));
    setWindowModified(!keeper_.kept());
}

bool MainWindow::took_project(const FieldSession::Files& files) {
    const auto project = std::find_if(files.begin(), files.end(), is_project_file);
    if (project == files.end()) return false;
    if (files.size() == 1)
        open_project(*project);
    else
        slip_->say(tr("%1 is a project and is opened by itself. Open it first, then add the other files.")
                       .arg(as_text(project->filename())),
                   Slip::Weight::refusal);
    return true;
}

void MainWindow::open_project(const std::filesystem::path& project) {
    if (!may_leave_field(tr("open without"))) return;
    reading_->put_away();
    keeper_.open(project);
}

void MainWindow::keep_project_as() {
    const auto field = session_.field();
    if (sample_is_open())
        slip_->say(tr("This is the sample: nothing of it is kept. A walk of your own has a project from the start."),
                   Slip::Weight::news);
    if (!field || !keeper_.file()) return;
    const QString folder = keeper_.named() ? QFileInfo(as_text(*keeper_.file())).absolutePath()
                                           : QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
    const QString proposed =
        QDir(folder).filePath(file_stem(QString::fromStdString(field->field_name)) + QLatin1String(project_ending));
    const QString chosen =
        QFileDialog::getSaveFileName(this, tr("Keep this project as"), proposed, tr("Projects (*.plugside)"));
    if (!chosen.isEmpty()) keeper_.keep_as(as_path(chosen));
}

// What is in the project file is not lost by leaving; what is not there yet would be.
bool MainWindow::may_leave_field(const QString& without) {
    while (!keeper_.settle()) {
        const QString why = keeper_.why_not().isEmpty() ? tr("The disk takes long.") : keeper_.why_not();
        const int answer = ask_(tr("The last changes to this field are not in its project file. %1").arg(why),
                                {tr("wait and try again"), tr("keep as…"), without, tr("stay")});
        if (answer == 0)
            keeper_.try_again();
        else if (answer == 1)
            keep_project_as();
        else
            return answer == 2;
    }
    return true;
}

}  // namespace plugside
