#include "app/reading/system_chooser.h"

#include <QKeyEvent>
#include <QStyle>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/window/look_sheet.h"

namespace plugside {

namespace {

constexpr int pause_ms = 150;
constexpr int most_rows_in_sight = 5;

bool same(const std::vector<NamedPlace>& a, const std::vector<NamedPlace>& b) {
    return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(), [](const NamedPlace& p, const NamedPlace& q) {
               return p.name == q.name && p.at == q.at;
           });
}

}  // namespace

SystemChooser::SystemChooser(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(5);
    taken_ = label_in_role("heading", this);
    line_ = new QLineEdit(this);
    line_->setPlaceholderText(tr("search by code or name: 32610, UTM 10, California zone 2"));
    line_->setToolTip(line_->placeholderText());
    line_->setAccessibleName(tr("search for the reference system of the coordinates"));
    line_->setClearButtonEnabled(true);
    line_->installEventFilter(this);
    hint_ = label_in_role("quiet", this);
    list_ = new QListWidget(this);
    list_->setAccessibleName(tr("reference systems found, and where each would put the marks"));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setUniformItemSizes(true);
    for (QWidget* part : std::initializer_list<QWidget*>{taken_, line_, hint_, list_}) column->addWidget(part);
    pause_.setSingleShot(true);
    pause_.setInterval(pause_ms);
    connect(&pause_, &QTimer::timeout, this, &SystemChooser::search);
    connect(line_, &QLineEdit::textChanged, this, [this] {
        take_first_found_ = false;
        hint_->setText(tr("searching…"));
        hint_->show();
        pause_.start();
    });
    connect(list_, &QListWidget::itemClicked, this, [this](QListWidgetItem* item) { take(list_->row(item)); });
    connect(list_, &QListWidget::itemActivated, this, [this](QListWidgetItem* item) { take(list_->row(item)); });
}

SystemChooser::~SystemChooser() { searching_.stop(); }

void SystemChooser::ask(std::vector<std::array<double, 2>> places, std::vector<NamedPlace> others, const std::string& code) {
    taken_->setText(code.empty() ? tr("In which reference system are the eastings and northings?")
                                 : tr("reference system: %1").arg(name_of(code)));
    taken_->setProperty("role", code.empty() ? "stop" : "heading");
    taken_->style()->unpolish(taken_);
    taken_->style()->polish(taken_);
    const bool news = places != search_.places || !same(others, search_.others);
    code_ = code;
    search_.places = std::move(places);
    search_.others = std::move(others);
    if (news) search();
    show_list();
}

void SystemChooser::search() {
    pause_.stop();
    search_.words = line_->text().toStdString();
    searching_.start([this, wanted = search_](const Progress& progress) -> BackgroundWork::Apply {
        auto found = match_systems(wanted, progress);
        return [this, found = std::move(found)] {
            found_ = found;
            list_found();
            if (std::exchange(take_first_found_, false)) take(0);
        };
    });
}

QString SystemChooser::words_of(const SystemMatch& match) const {
    const QString name =
        tr("%1  (%2)").arg(QString::fromStdString(match.system.name), QString::fromStdString(match.system.code));
    if (!match.placed) return name;
    if (!match.at) return tr("%1  no such place").arg(name);
    if (!match.nearest) return tr("%1  at %2").arg(name, degrees_words(*match.at));
    return tr("%1  %2").arg(name, distance_words(match.nearest->first, match.nearest->second, choices_.units()));
}

void SystemChooser::list_found() {
    list_->clear();
    for (const SystemMatch& match : found_) {
        const QString words = words_of(match);
        auto* item = new QListWidgetItem(words, list_);
        item->setData(Qt::AccessibleTextRole, words);
        item->setToolTip(words);
    }
    if (!found_.empty()) list_->setCurrentRow(0);
    const bool searched = !search_.words.empty();
    hint_->setText(found_.empty() ? (searched ? tr("Nothing is called so.")
                                              : tr("Type a code, a zone or a name. Whoever made the file knows it; often it "
                                                   "stands in the settings of the receiver."))
                   : searched     ? tr("Enter takes the one at hand.")
                                  : tr("These put the marks beside the other files'. Enter takes the one at hand; type to "
                                           "search for another."));
    const int rows = std::min(static_cast<int>(found_.size()), most_rows_in_sight);
    if (rows > 0) list_->setFixedHeight(rows * list_->sizeHintForRow(0) + 2 * list_->frameWidth() + 4);
    show_list();
}

// Once a system is taken, the room is better used by what it makes of the file.
void SystemChooser::show_list() {
    const bool asking = code_.empty() || !line_->text().isEmpty();
    list_->setVisible(asking && !found_.empty());
    hint_->setVisible(asking);
}

QString SystemChooser::name_of(const std::string& code) const {
    return code == taken_system_.code
               ? tr("%1 (%2)").arg(QString::fromStdString(taken_system_.name), QString::fromStdString(code))
               : QString::fromStdString(code);
}

void SystemChooser::take(int row) {
    if (row < 0 || row >= static_cast<int>(found_.size())) return;
    taken_system_ = found_[static_cast<std::size_t>(row)].system;
    line_->clear();
    Q_EMIT taken(QString::fromStdString(taken_system_.code));
}

bool SystemChooser::eventFilter(QObject* watched, QEvent* event) {
    if (watched != line_ || event->type() != QEvent::KeyPress) return QWidget::eventFilter(watched, event);
    const auto* key = static_cast<QKeyEvent*>(event);
    const int row = list_->currentRow();
    if (key->key() == Qt::Key_Down) list_->setCurrentRow(std::min(row + 1, list_->count() - 1));
    if (key->key() == Qt::Key_Up) list_->setCurrentRow(std::max(row - 1, 0));
    const bool takes = (key->key() == Qt::Key_Return || key->key() == Qt::Key_Enter) && key->modifiers() == Qt::NoModifier;
    // Enter right after the last letter means what that letter will find
    if (takes && searching())
        take_first_found_ = true;
    else if (takes)
        take(row);
    return takes || key->key() == Qt::Key_Down || key->key() == Qt::Key_Up;
}

}  // namespace plugside
