#include "app/window/hand_out_dialog.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QGridLayout>
#include <QVBoxLayout>
#include <algorithm>

#include "app/stages/sets_page.h"
#include "app/window/look_sheet.h"

namespace plugside {

HandOutDialog::HandOutDialog(FieldSession& session, Choices& choices, QWidget* parent) : QDialog(parent), choices_(choices) {
    setWindowTitle(tr("Hand out the plan"));
    const int wished = static_cast<int>(choices.style().room(540.0));
    setMinimumWidth(parent ? std::min(wished, parent->width() - 40) : wished);
    const auto field = session.field();
    const QString stem = file_stem(field ? QString::fromStdString(field->field_name) : QString());
    const QString beside = session.files().empty()
                               ? QDir::homePath()
                               : QFileInfo(QFile::decodeName(session.files().front().c_str())).absolutePath();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(22, 18, 22, 18);
    column->setSpacing(10);
    auto* title = label_in_role("title", this);
    title->setText(tr("Hand out"));
    column->addWidget(title);
    auto* state = label_in_role("quiet", this);
    if (const auto plan = session.plan(); field && plan) {
        const SetProgress progress = set_progress(field->survey, *plan);
        state->setText(
            tr("%1 of %2 sets are decided; undecided ones go out as proposals, dropped ones are not given to the handheld. "
               "The label, local rules and a licensed applicator decide what is done.")
                .arg(progress.decided)
                .arg(progress.all));
    }
    column->addWidget(state);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(10);
    folder_ = new QLineEdit(QDir::toNativeSeparators(beside), this);
    folder_->setAccessibleName(tr("folder"));
    auto* choose = new QPushButton(tr("choose…"), this);
    with_plan_ = new QCheckBox(tr("plan, as a GeoPackage"), this);
    plan_name_ = new QLineEdit(stem + QStringLiteral("-plan.gpkg"), this);
    plan_name_->setAccessibleName(tr("name of the GeoPackage"));
    with_sets_ = new QCheckBox(tr("sets, as waypoints"), this);
    sets_name_ = new QLineEdit(stem + QStringLiteral("-sets.gpx"), this);
    sets_name_->setAccessibleName(tr("name of the waypoint file"));
    with_plan_->setChecked(true);
    with_sets_->setChecked(true);
    auto* folder_label = new QLabel(tr("into"), this);
    folder_label->setBuddy(folder_);
    grid->addWidget(folder_label, 0, 0);
    grid->addWidget(folder_, 0, 1);
    grid->addWidget(choose, 0, 2);
    grid->addWidget(with_plan_, 1, 0);
    grid->addWidget(plan_name_, 1, 1, 1, 2);
    grid->addWidget(with_sets_, 2, 0);
    grid->addWidget(sets_name_, 2, 1, 1, 2);
    column->addLayout(grid);
    remark_ = label_in_role("quiet", this);
    column->addWidget(remark_);
    auto* keys = new QHBoxLayout;
    auto* stay = new QPushButton(tr("not now"), this);
    go_ = new QPushButton(tr("hand out"), this);
    go_->setObjectName(QStringLiteral("main_button"));
    go_->setDefault(true);
    keys->addStretch(1);
    keys->addWidget(stay);
    keys->addWidget(go_);
    column->addLayout(keys);
    connect(choose, &QPushButton::clicked, this, &HandOutDialog::choose_folder);
    connect(stay, &QPushButton::clicked, this, &QDialog::reject);
    connect(go_, &QPushButton::clicked, this, &QDialog::accept);
    for (QLineEdit* edit : {folder_, plan_name_, sets_name_})
        connect(edit, &QLineEdit::textChanged, this, &HandOutDialog::check);
    for (QCheckBox* box : {with_plan_, with_sets_}) connect(box, &QCheckBox::toggled, this, &HandOutDialog::check);
    check();
    go_->setFocus();
}

QString HandOutDialog::path_of(const QLineEdit& name) const { return QDir(folder_->text()).absoluteFilePath(name.text()); }

void HandOutDialog::check() {
    plan_name_->setEnabled(with_plan_->isChecked());
    sets_name_->setEnabled(with_sets_->isChecked());
    QStringList remarks;
    if (!QFileInfo(folder_->text()).isDir()) remarks << tr("There is no such folder.");
    for (const auto& [box, name] : {std::pair{with_plan_, plan_name_}, std::pair{with_sets_, sets_name_}}) {
        if (!box->isChecked()) continue;
        if (name->text().trimmed().isEmpty())
            remarks << tr("A file needs a name.");
        else if (QFileInfo::exists(path_of(*name)))
            remarks << tr("%1 is there already and will be replaced.").arg(name->text());
    }
    if (!with_plan_->isChecked()) remarks << tr("Only the GeoPackage gives your decisions back when it is opened again.");
    remark_->setText(remarks.join('\n'));
    const bool named = (!with_plan_->isChecked() || !plan_name_->text().trimmed().isEmpty()) &&
                       (!with_sets_->isChecked() || !sets_name_->text().trimmed().isEmpty());
    const bool apart = !with_plan_->isChecked() || !with_sets_->isChecked() || path_of(*plan_name_) != path_of(*sets_name_);
    go_->setEnabled(QFileInfo(folder_->text()).isDir() && named && apart &&
                    (with_plan_->isChecked() || with_sets_->isChecked()));
}

void HandOutDialog::choose_folder() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Into which folder?"), folder_->text());
    if (!folder.isEmpty()) folder_->setText(QDir::toNativeSeparators(folder));
}

FieldSession::HandOut HandOutDialog::chosen() const {
    FieldSession::HandOut where;
    where.units = choices_.units();
    if (with_plan_->isChecked()) where.geopackage = QFile::encodeName(path_of(*plan_name_)).toStdString();
    if (with_sets_->isChecked()) where.waypoints = QFile::encodeName(path_of(*sets_name_)).toStdString();
    return where;
}

}  // namespace plugside
