#include "app/window/hand_out_dialog.h"

#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QVBoxLayout>
#include <algorithm>

#include "app/stages/page_scroll.h"
#include "app/stages/sets_page.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

// As wide and as high as the words need, up to the window it is asked from; what is more is scrolled to, the keys below stay.
void fit_to_words(QDialog& dialog, const QWidget& key) {
    const QWidget& page = *dialog.findChild<PageScroll*>()->widget();
    for (QWidget* part : dialog.findChildren<QWidget*>()) part->ensurePolished();
    for (QLayout* layout : {page.layout(), dialog.layout()}) layout->invalidate();
    const QSize most = dialog.parentWidget() != nullptr ? dialog.parentWidget()->size() - QSize(40, 40) : QSize(1240, 760);
    const QMargins rim = dialog.layout()->contentsMargins();
    const int beside = rim.left() + rim.right() + 16;  // and the scroll bar
    const int least = std::min(page.layout()->totalMinimumSize().width() + beside, most.width());
    dialog.setMinimumWidth(std::max(dialog.minimumWidth(), least));
    const int wide = std::max(dialog.minimumWidth(), dialog.isVisible() ? dialog.width() : 0);
    const int high = page.layout()->totalHeightForWidth(wide - beside) + key.sizeHint().height() + rim.top() + rim.bottom() +
                     dialog.layout()->spacing() + 6;
    dialog.resize(wide, std::max(dialog.isVisible() ? dialog.height() : 0, std::min(high, most.height())));
}

}  // namespace

HandOutDialog::HandOutDialog(FieldSession& session, Choices& choices, QWidget* parent) : QDialog(parent), choices_(choices) {
    setWindowTitle(tr("Hand out the plan"));
    const int wished = static_cast<int>(choices.style().room(540.0));
    setMinimumWidth(parent ? std::min(wished, parent->width() - 40) : wished);
    const auto field = session.field();
    const QString beside = session.files().empty()
                               ? QDir::homePath()
                               : QFileInfo(QFile::decodeName(session.files().front().c_str())).absolutePath();
    auto* page = new QWidget(this);
    auto* column = new QVBoxLayout(page);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(10);
    auto* title = label_in_role("title", page);
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
    grid_->setVerticalSpacing(8);
    folder_ = new QLineEdit(QDir::toNativeSeparators(beside), this);
    folder_->setAccessibleName(tr("folder"));
    choose_ = new QPushButton(tr("choose…"), this);
    auto* folder_label = new QLabel(tr("into"), this);
    folder_label->setBuddy(folder_);
    grid_->addWidget(folder_label, 0, 0);
    grid_->addWidget(folder_, 0, 1);
    grid_->addWidget(choose_, 0, 2);
    add_rows(file_stem(field ? QString::fromStdString(field->field_name) : QString()));
    column->addLayout(grid_);
    remark_ = label_in_role("quiet", this);
    column->addWidget(remark_);
    column->addStretch(1);
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(22, 18, 22, 18);
    outer->setSpacing(10);
    outer->addWidget(new PageScroll(page, this), 1);
    hindrance_ = label_in_role("stop", this);
    outer->addWidget(hindrance_);
    add_keys(*outer);
    listen();
    check();
    go_->setFocus();
}

void HandOutDialog::add_rows(const QString& stem) {
    using enum HandOutFormat;
    const auto add = [&](HandOutFormat format, const QString& what, const char* name, const QString& name_of_it) {
        rows_.push_back(add_row(what, stem + QLatin1String(name) + QLatin1String(ending_of(format)), name_of_it,
                                format == geopackage || format == gpx_waypoints, format));
    };
    add(geopackage, tr("plan, as a GeoPackage"), "-plan", tr("name of the GeoPackage"));
    add(gpx_waypoints, tr("sets, as waypoints"), "-sets", tr("name of the waypoint file"));
    sheets_ =
        add_row(tr("field sheets, as a PDF"), stem + QStringLiteral("-sheets.pdf"), tr("name of the field sheets"), true);
    // whoever tapes feet prints on letter
    paper_ = add_choice(tr("paper"), {tr("letter"), tr("A4")}, choices_.units() == LengthUnits::feet_and_inches ? 0 : 1);
    phone_ = add_row(tr("the sheets for a phone"), stem + QStringLiteral("-phone.html"), tr("name of the page for a phone"),
                     false);
    language_ =
        add_choice(tr("language of the sheets"), {tr("English"), tr("Spanish")}, spoken() == Language::english ? 0 : 1);
    add(gpx_route, tr("sets, as a route"), "-route", tr("name of the route file"));
    add(kml, tr("map layers, as KML"), "-plan", tr("name of the KML file"));
    add(geojson, tr("map layers, as GeoJSON"), "-plan", tr("name of the GeoJSON file"));
    add(shapefile, tr("map layers, as Shapefiles"), "-plan", tr("name that the Shapefiles begin with"));
    add(csv, tr("tables, as CSV"), "-plan", tr("name that the tables begin with"));
    rows_.push_back(sheets_);
    rows_.push_back(phone_);
    private_ = new QCheckBox(tr("with what is private"), this);
    private_->setAccessibleDescription(tr("names of people, licence numbers, reasons, notes"));
    grid_->addWidget(private_, grid_->rowCount(), 0, 1, 3);
}

void HandOutDialog::add_keys(QVBoxLayout& outer) {
    auto* keys = new QHBoxLayout;
    auto* stay = new QPushButton(tr("not now"), this);
    go_ = new QPushButton(tr("hand out"), this);
    go_->setObjectName(QStringLiteral("main_button"));
    go_->setDefault(true);
    keys->addStretch(1);
    keys->addWidget(stay);
    keys->addWidget(go_);
    outer.addLayout(keys);
    connect(stay, &QPushButton::clicked, this, &QDialog::reject);
    connect(go_, &QPushButton::clicked, this, &QDialog::accept);
}

void HandOutDialog::listen() {
    connect(choose_, &QPushButton::clicked, this, &HandOutDialog::choose_folder);
    connect(folder_, &QLineEdit::textChanged, this, &HandOutDialog::check);
    connect(private_, &QCheckBox::toggled, this, &HandOutDialog::check);
    for (const Row& row : rows_) {
        connect(row.name, &QLineEdit::textChanged, this, &HandOutDialog::check);
        connect(row.box, &QCheckBox::toggled, this, &HandOutDialog::check);
    }
}

HandOutDialog::Row HandOutDialog::add_row(const QString& what, const QString& file, const QString& name_of_it, bool checked,
                                          std::optional<HandOutFormat> format) {
    const Row row{new QCheckBox(what, this), new QLineEdit(file, this), label_in_role("quiet", this), format};
    row.box->setChecked(checked);
    row.name->setAccessibleName(name_of_it);
    const int at = grid_->rowCount();
    grid_->addWidget(row.box, at, 0);
    grid_->addWidget(row.name, at, 1, 1, 2);
    grid_->addWidget(row.limits, at + 1, 0, 1, 3);
    row.limits->setIndent(fontMetrics().height() + 10);  // under the words of the box
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

std::vector<std::filesystem::path> HandOutDialog::files_of_row(const Row& row) const {
    const std::filesystem::path file = QFile::encodeName(path_of(*row.name)).toStdString();
    return row.format ? files_of(*row.format, file) : std::vector{file};
}

QString HandOutDialog::limits_told(const Row& row) const {
    QStringList said;
    if (!row.format) return {};
    if (const auto files = files_of_row(row); files.size() > 1) {
        const auto name = [](const auto& file) { return QFile::decodeName(file.filename().c_str()); };
        said << tr("%1 files, %2 to %3.").arg(files.size()).arg(name(files.front()), name(files.back()));
    }
    for (const std::string& sentence : limits_of(*row.format)) said << QString::fromStdString(sentence);
    return said.join(QLatin1Char(' '));
}

// What keeps this row from going out, and what it would replace.
void HandOutDialog::check_row(const Row& row, QStringList& taken, QStringList& remarks, QStringList& hindrances) const {
    const QString limits = limits_told(row);
    row.box->setAccessibleDescription(limits);
    row.limits->setText(limits);
    row.limits->setVisible(row.box->isChecked() && !limits.isEmpty());
    row.name->setEnabled(row.box->isChecked());
    if (!row.box->isChecked()) return;
    if (row.name->text().trimmed().isEmpty()) {
        hindrances << tr("A file needs a name.");
        return;
    }
    QStringList there;
    for (const std::filesystem::path& file : files_of_row(row)) {
        const QString name = QFile::decodeName(file.c_str());
        if (QFileInfo::exists(name)) there << QFileInfo(name).fileName();
        if (taken.contains(name)) hindrances << tr("Two of them are to be written as %1.").arg(QFileInfo(name).fileName());
        taken << name;
    }
    if (there.size() == 1)
        remarks << tr("%1 is there already and will be replaced.").arg(there.front());
    else if (!there.isEmpty())
        remarks << tr("%1 and %2 more are there already and will be replaced.").arg(there.front()).arg(there.size() - 1);
}

void HandOutDialog::check() {
    QStringList remarks, taken, hindrances;
    if (!QFileInfo(folder_->text()).isDir()) hindrances << tr("There is no such folder.");
    for (const Row& row : rows_) check_row(row, taken, remarks, hindrances);
    hindrances.removeDuplicates();
    const bool prints = sheets_.box->isChecked();
    paper_->setEnabled(prints);
    language_->setEnabled(prints || phone_.box->isChecked());
    if (!wants(HandOutFormat::geopackage))
        remarks << tr("Only the GeoPackage gives your decisions back when it is opened again.");
    for (const std::string& sentence : true_of_all(private_->isChecked() ? PrivateRows::included : PrivateRows::left_out))
        remarks << QString::fromStdString(sentence);
    remark_->setText(remarks.join('\n'));
    hindrance_->setText(hindrances.join(QLatin1Char(' ')));
    hindrance_->setVisible(!hindrances.isEmpty());
    go_->setEnabled(hindrances.isEmpty() && !taken.isEmpty());
    fit_to_words(*this, *go_);
}

void HandOutDialog::choose_folder() {
    const QString folder = QFileDialog::getExistingDirectory(this, tr("Into which folder?"), folder_->text());
    if (!folder.isEmpty()) folder_->setText(QDir::toNativeSeparators(folder));
}

bool HandOutDialog::wants(HandOutFormat format) const {
    return std::any_of(rows_.begin(), rows_.end(),
                       [&](const Row& row) { return row.format == format && row.box->isChecked(); });
}

FieldSession::HandOut HandOutDialog::chosen() const {
    FieldSession::HandOut where;
    where.units = choices_.units();
    where.paper = paper_->currentIndex() == 0 ? Paper::letter : Paper::a4;
    where.sheet_language = language_->currentIndex() == 0 ? Language::english : Language::spanish;
    where.private_rows = private_->isChecked() ? PrivateRows::included : PrivateRows::left_out;
    const auto file_of = [&](const Row& row) { return QFile::encodeName(path_of(*row.name)).toStdString(); };
    for (const Row& row : rows_)
        if (row.format && row.box->isChecked()) where.files.push_back({*row.format, file_of(row)});
    if (sheets_.box->isChecked()) where.sheets = file_of(sheets_);
    if (phone_.box->isChecked()) where.phone = file_of(phone_);
    return where;
}

}  // namespace plugside
