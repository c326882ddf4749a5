#include "app/window/hand_out_dialog.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
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
    grid_ = new QGridLayout;
    grid_->setHorizontalSpacing(12);
    grid_->setVerticalSpacing(10);
    folder_ = new QLineEdit(QDir::toNativeSeparators(beside), this);
    folder_->setAccessibleName(tr("folder"));
    auto* choose = new QPushButton(tr("choose…"), this);
    auto* folder_label = new QLabel(tr("into"), this);
    folder_label->setBuddy(folder_);
    grid_->addWidget(folder_label, 0, 0);
    grid_->addWidget(folder_, 0, 1);
    grid_->addWidget(choose, 0, 2);
    plan_ = add_row(tr("plan, as a GeoPackage"), stem + QStringLiteral("-plan.gpkg"), tr("name of the GeoPackage"), true);
    sets_ = add_row(tr("sets, as waypoints"), stem + QStringLiteral("-sets.gpx"), tr("name of the waypoint file"), true);
    sheets_ =
        add_row(tr("field sheets, as a PDF"), stem + QStringLiteral("-sheets.pdf"), tr("name of the field sheets"), true);
    phone_ = add_row(tr("the sheets for a phone"), stem + QStringLiteral("-phone.html"), tr("name of the page for a phone"),
                     false);
    // whoever tapes feet prints on letter
    paper_ = add_choice(tr("paper"), {tr("letter"), tr("A4")}, choices_.units() == LengthUnits::feet_and_inches ? 0 : 1);
    language_ =
        add_choice(tr("language of the sheets"), {tr("English"), tr("Spanish")}, spoken() == Language::english ? 0 : 1);
    column->addLayout(grid_);
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
    connect(folder_, &QLineEdit::textChanged, this, &HandOutDialog::check);
    for (const Row& row : rows()) {
        connect(row.name, &QLineEdit::textChanged, this, &HandOutDialog::check);
        connect(row.box, &QCheckBox::toggled, this, &HandOutDialog::check);
    }
    check();
    go_->setFocus();
}

HandOutDialog::Row HandOutDialog::add_row(const QString& what, const QString& file, const QString& name_of_it,
                                          bool checked) {
    const Row row{new QCheckBox(what, this), new QLineEdit(file, this)};
    row.box->setChecked(checked);
    row.name->setAccessibleName(name_of_it);
    const int at = grid_->rowCount();
    grid_->addWidget(row.box, at, 0);
    grid_->addWidget(row.name, at, 1, 1, 2);
    return row;
}

QComboBox* HandOutDialog::add_choice(const QString& what, const QStringList& offered, int chosen) {
    auto* label = new QLabel(what, this);
    auto* choice = new QComboBox(this);
    choice->addItems(offered);
    choice->setCurrentIndex(chosen);
    choice->setAccessibleName(what);
    label->setBuddy(choice);
    const int at = grid_->rowCount();
    grid_->addWidget(label, at, 0);
    grid_->addWidget(choice, at, 1, 1, 2);
    return choice;
}

QString HandOutDialog::path_of(const QLineEdit& name) const { return QDir(folder_->text()).absoluteFilePath(name.text()); }

void HandOutDialog::check() {
    QStringList remarks;
    if (!QFileInfo(folder_->text()).isDir()) remarks << tr("There is no such folder.");
    bool fit = QFileInfo(folder_->text()).isDir();
    QStringList files;
    for (const auto& [box, name] : rows()) {
        name->setEnabled(box->isChecked());
        if (!box->isChecked()) continue;
        const bool named = !name->text().trimmed().isEmpty();
        if (!named)
            remarks << tr("A file needs a name.");
        else if (QFileInfo::exists(path_of(*name)))
            remarks << tr("%1 is there already and will be replaced.").arg(name->text());
        fit = fit && named && !files.contains(path_of(*name));
        files << path_of(*name);
    }
    const bool prints = sheets_.box->isChecked();
    paper_->setEnabled(prints);
    language_->setEnabled(prints || phone_.box->isChecked());
    if (!plan_.box->isChecked()) remarks << tr("Only the GeoPackage gives your decisions back when it is opened again.");
    remark_->setText(remarks.join('\n'));
    go_->setEnabled(fit && !files.isEmpty());
}

void HandOutDialog::choose_folder() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Into which folder?"), folder_->text());
    if (!folder.isEmpty()) folder_->setText(QDir::toNativeSeparators(folder));
}

FieldSession::HandOut HandOutDialog::chosen() const {
    FieldSession::HandOut where;
    where.units = choices_.units();
    where.paper = paper_->currentIndex() == 0 ? Paper::letter : Paper::a4;
    where.sheet_language = language_->currentIndex() == 0 ? Language::english : Language::spanish;
    for (const auto& [row, file] : {std::pair{plan_, &where.geopackage}, std::pair{sets_, &where.waypoints},
                                    std::pair{sheets_, &where.sheets}, std::pair{phone_, &where.phone}})
        if (row.box->isChecked()) *file = QFile::encodeName(path_of(*row.name)).toStdString();
    return where;
}

}  // namespace plugside
