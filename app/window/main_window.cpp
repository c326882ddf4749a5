#include "app/window/main_window.h"

#include <QApplication>
#include <QCloseEvent>
#include <QDir>
#include <QDragEnterEvent>
#include <QFile>
#include <QFileDialog>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QMessageBox>
#include <QMimeData>
#include <QPainter>
#include <QPushButton>
#include <QScreen>
#include <QShortcut>
#include <QStandardPaths>
#include <QUrl>
#include <QVBoxLayout>
#include <algorithm>
#include <utility>

#include "app/canvas/mound_glyph.h"
#include "app/window/look_sheet.h"
#include "app/window/map_speech.h"
#include "app/window/work_banner.h"
#include "app/words/language.h"

namespace plugside {

namespace {

FieldSession::Files as_files(const QStringList& names) {
    FieldSession::Files files;
    for (const QString& name : names) files.emplace_back(QFile::encodeName(name).toStdString());
    return files;
}

int ask_in_a_box(QWidget* parent, const QString& question, const QStringList& answers) {
    QMessageBox box(parent);
    box.setWindowTitle(MainWindow::tr("Plugside"));
    box.setText(question);
    box.setTextFormat(Qt::PlainText);
    QList<QPushButton*> buttons;
    for (const QString& answer : answers)
        buttons << box.addButton(answer, answer == answers.back() ? QMessageBox::RejectRole : QMessageBox::AcceptRole);
    buttons.front()->setObjectName(QStringLiteral("main_button"));
    box.setDefaultButton(buttons.front());
    box.setEscapeButton(buttons.back());
    box.exec();
    for (int i = 0; i < buttons.size(); ++i)
        if (box.clickedButton() == buttons[i]) return i;
    return static_cast<int>(answers.size()) - 1;
}

}  // namespace

QIcon program_icon() {
    QIcon icon;
    for (const int size : {16, 32, 64, 128, 256}) {
        QPixmap pixmap(size, size);
        pixmap.fill(Qt::transparent);
        QPainter painter(&pixmap);
        painter.setRenderHint(QPainter::Antialiasing);
        const MapStyle& style = style_of(Theme::light);
        painter.setPen(Qt::NoPen);
        painter.setBrush(style.tints.at(3));
        painter.drawRoundedRect(QRectF(0.0, 0.0, size, size), 0.2 * size, 0.2 * size);
        draw_fan(painter, {0.36 * size, 0.74 * size}, Bearing::degrees(32.0), Freshness::fresh, 0.62 * size, style);
        icon.addPixmap(pixmap);
    }
    return icon;
}

MainWindow::MainWindow(QWidget* parent)
    : QWidget(parent),
      imagery_(std::filesystem::path(
          QFile::encodeName(QStandardPaths::writableLocation(QStandardPaths::CacheLocation)).toStdString())),
      keeper_(session_, imagery_, choices_),
      placing_(session_, imagery_),
      dresser_(*new Dresser(*this)) {
    setObjectName(QStringLiteral("window"));
    setAcceptDrops(true);
    setWindowIcon(program_icon());
    setMinimumSize(1000, 640);
    ask_ = [this](const QString& question, const QStringList& answers) { return ask_in_a_box(this, question, answers); };
    restore();
    make_parts();
    map_->setFocus();
}

void MainWindow::make_parts() {
    make_map();
    make_slip();
    lay_out();
    bind_parts();
}

void MainWindow::bind_parts() {
    bind_keys();
    bind_session();
    bind_work();
    bind_tours();
    bind_reading();
    bind_imagery();
    bind_placing();
    bind_tracing();
    bind_projects();
    bind_sample();
    bind_positions();
    dress();
    name_window();
}

MainWindow::~MainWindow() {
    // the parts listen to the session: they go first
    session_.planning().stop();
    session_.file_work().stop();
    let_go_of_parts();
}

// The project's keeper goes on listening.
void MainWindow::stop_hearing() {
    placing_.leave();
    for (QObject* heard :
         std::initializer_list<QObject*>{&session_, &imagery_, &keeper_, &positions_, &session_.history(), &choices_,
                                            &placing_, &tours_})
        heard->disconnect(this);
}

void MainWindow::let_go_of_parts() {
    stop_hearing();
    qDeleteAll(findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
    slip_ = nullptr;
    keys_ = nullptr;
    delete std::exchange(laying_, nullptr);
    delete std::exchange(setting_place_, nullptr);
    delete std::exchange(placing_tool_, nullptr);
    delete std::exchange(tracing_, nullptr);
    delete std::exchange(drawing_, nullptr);
    delete std::exchange(correcting_, nullptr);
    delete std::exchange(tape_, nullptr);
}

void MainWindow::make_map() {
    top_bar_ = new TopBar(session_, choices_, this);
    rail_ = new DayRail(session_, choices_, work_, this);
    MapSpeech::install();
    map_ = new MapView(session_, choices_, this);
    map_buttons_ = new MapButtons(*map_);
    new MapSpeech(session_, choices_, *map_);
    drawing_ = new GroundTool(session_, choices_, this);
    correcting_ = new SystemsTool(session_, choices_, this);
    tape_ = new TapeTool(
        session_, choices_, [this](LocalPoint to, Metres reach) { return map_->plug_near(to, reach); }, this);
}

void MainWindow::make_slip() { slip_ = new Slip(session_, choices_, *drawing_, *correcting_, work_, tours_, this); }

void MainWindow::lay_out() {
    laying_ = new LadderTool(choices_, slip_->sets(), this);
    setting_place_ = new PlaceTool(this);
    tracing_ = new TraceTool(session_, choices_, *drawing_, this);
    placing_tool_ = new PlacingTool(
        placing_, [this](LocalPoint to, Metres reach) { return map_->plug_near(to, reach); }, this);
    picture_ = new PictureView(placing_, choices_, imagery_.copies(), this);
    placing_panel_ = new PlacingPanel(placing_, session_, choices_, this);
    picture_->hide();
    placing_panel_->hide();
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(top_bar_);
    auto* row = new QHBoxLayout;
    row->setSpacing(0);
    row->addWidget(rail_);
    row->addWidget(picture_, 1);
    row->addWidget(map_, 1);
    row->addWidget(slip_);
    row->addWidget(placing_panel_);
    column->addLayout(row, 1);
    new WorkBanner(session_, map_);
    keys_ = new KeysOverlay(this);
}

void MainWindow::bind_session() {
    connect(&choices_, &Choices::step_changed, this, [this] {
        drawing_->put_down();
        tracing_->put_down();
        correcting_->put_away();
        use_tape(false);
        setting_place_->give_up();
        if (choices_.step() != Step::sets) slip_->sets().put_away();
    });
    connect(tape_, &TapeTool::changed, map_, qOverload<>(&QWidget::update));
    connect(tape_, &TapeTool::lifted, this, [this] { use_tape(false); });
    connect(drawing_, &GroundTool::changed, map_, qOverload<>(&QWidget::update));
    connect(correcting_, &SystemsTool::changed, map_, qOverload<>(&QWidget::update));
    connect(laying_, &LadderTool::changed, map_, qOverload<>(&QWidget::update));
    connect(laying_, &LadderTool::let_through, map_, &MapView::pick_at);
    connect(correcting_, &SystemsTool::said, this,
            [this](const QString& sentence) { slip_->say(sentence, Slip::Weight::news); });
    connect(drawing_, &GroundTool::said, this,
            [this](const QString& sentence) { slip_->say(sentence, Slip::Weight::news); });
    connect(&session_, &FieldSession::field_replaced, this, [this] {
        choices_.forget_picks();
        choices_.go_to(Step::walk);
        slip_->put_notice_away();
    });
    connect(&session_, &FieldSession::refused, this, [this](const QString& sentence) {
        if (!reading_->isVisible()) slip_->say(sentence, Slip::Weight::refusal);
    });
    connect(&session_, &FieldSession::handed_out, this, &MainWindow::say_handed_out);
    connect(&session_, &FieldSession::reopened_hand_out, this, [this](int decisions) {
        slip_->say(counted(decisions, tr("This plan was handed out before: %1 decision on its sets came back with it."),
                           tr("This plan was handed out before: %1 decisions on its sets came back with it.")),
                   Slip::Weight::news);
    });
    connect(&session_, &FieldSession::decided, this, [this] { choices_.go_to(Step::sets); });
    connect(&session_, &FieldSession::plan_changed, this, &MainWindow::follow_picked_system);
    connect(&choices_, &Choices::theme_changed, this, &MainWindow::dress);
    connect(&choices_, &Choices::units_changed, this, &MainWindow::remember);
    connect(&choices_, &Choices::theme_changed, this, &MainWindow::remember);
    connect(top_bar_, &TopBar::hand_out_wanted, this, &MainWindow::open_hand_out);
    connect(top_bar_, &TopBar::language_wanted, this, &MainWindow::speak_in);
    connect(top_bar_, &TopBar::keys_wanted, keys_, &KeysOverlay::toggle);
    connect(&slip_->walk().not_seen(), &NotSeenView::hatch_wanted, map_buttons_, &MapButtons::show_not_seen);
    connect(map_buttons_, &MapButtons::not_seen_shown, &slip_->walk().not_seen(), &NotSeenView::show_hatched);
    slip_->walk().not_seen().show_hatched(map_buttons_->shows_not_seen());
    connect(&slip_->walk(), &WalkPage::open_wanted, this, [this] { choose_files(false); });
    connect(&slip_->walk(), &WalkPage::add_wanted, this, [this] { choose_files(true); });
}

// After the session's own bindings: what the files became is said once the new field has put older notices away.
void MainWindow::bind_reading() {
    reading_ = new ReadingSheet(session_, choices_, this, {map_, slip_});
    connect(reading_, &ReadingSheet::opened, this, [this] { hold_still(true); });
    connect(reading_, &ReadingSheet::put_away_again, this, [this] { hold_still(false); });
    connect(reading_, &ReadingSheet::told, this, [this](const QString& words) { slip_->say(words, Slip::Weight::news); });
    connect(&slip_->walk(), &WalkPage::reading_wanted, this, [this] { reading_->desk().lay_out_again(); });
    connect(&session_, &FieldSession::anew_read, this, [this](int without_mark) {
        if (without_mark == 0) return;
        const QString more = counted(without_mark, tr("%1 thing said before names a mark that is not there now; it waits."),
                                     tr("%1 things said before name marks that are not there now; they wait."));
        slip_->say(slip_->notice().isEmpty() ? more : slip_->notice() + QLatin1Char('\n') + more, Slip::Weight::news);
    });
}

// While the files lie open nothing else of the window takes a key or a click.
void MainWindow::hold_still(bool still) {
    for (QWidget* part : std::initializer_list<QWidget*>{top_bar_, rail_, map_, slip_}) part->setEnabled(!still);
    const QList<QKeySequence> of_the_window{Qt::CTRL | Qt::Key_U,
                                            Qt::CTRL | Qt::Key_L,
                                            Qt::CTRL | Qt::Key_Plus,
                                            Qt::CTRL | Qt::Key_Equal,
                                            Qt::CTRL | Qt::Key_Minus,
                                            Qt::CTRL | Qt::Key_0,
                                            Qt::Key_F1,
                                            Qt::Key_F11,
                                            Qt::CTRL | Qt::Key_Q};
    hold_shortcuts(still, of_the_window);
    if (!still) map_->setFocus();
}

void MainWindow::hold_shortcuts(bool still, const QList<QKeySequence>& but) {
    for (QShortcut* shortcut : findChildren<QShortcut*>(QString(), Qt::FindDirectChildrenOnly))
        if (!but.contains(shortcut->key())) shortcut->setEnabled(!still);
}

void MainWindow::dress() {
    dresser_.put_on(choices_.style());
    if (!isVisible()) dresser_.finish();
    share_width();
    top_bar_->fit_words();
    if (keys_ != nullptr && keys_->isVisible()) keys_->fit();
}

// The slip grows with the text, by less than the text does; the map keeps what it needs.
void MainWindow::share_width() {
    constexpr int least_map_px = 330;
    constexpr int least_beside_picture_px = 250;
    const MapStyle& style = choices_.style();
    const int at_100 = style.theme == Theme::light ? 376 : 420;
    const int wished = static_cast<int>(at_100 * (1.0 + 0.45 * (style.text_share - 1.0)));
    const int rail = rail_->fitting_width();
    rail_->setFixedWidth(rail);
    slip_->setFixedWidth(std::max(std::min(wished, width() - rail - least_map_px), at_100));
    // beside a picture and the map
    placing_panel_->setFixedWidth(std::clamp(width() - rail - 2 * least_beside_picture_px, std::min(wished, 360), wished));
}

void MainWindow::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (slip_ != nullptr && layout() != nullptr) share_width();  // between two languages it has no parts
}

void MainWindow::restore() {
    const QSettings settings;
    const QSize wished = settings.value(QStringLiteral("window/size"), QSize(1366, 820)).toSize();
    // a size remembered from a larger screen would reach beyond this one
    resize(screen() ? wished.boundedTo(screen()->availableSize()) : wished);
    if (settings.value(QStringLiteral("units")).toString() == QLatin1String("metres")) choices_.use(LengthUnits::metres);
    if (settings.value(QStringLiteral("theme")).toString() == QLatin1String("sunlight")) choices_.use(Theme::sunlight);
    choices_.use_text(settings.value(QStringLiteral("text"), 100).toInt());
}

void MainWindow::remember() const {
    QSettings settings;
    if (!isFullScreen()) settings.setValue(QStringLiteral("window/size"), size());
    settings.setValue(QStringLiteral("units"), choices_.units() == LengthUnits::metres ? "metres" : "feet");
    settings.setValue(QStringLiteral("theme"), choices_.theme() == Theme::sunlight ? "sunlight" : "light");
    settings.setValue(QStringLiteral("text"), choices_.text_percent());
}

void MainWindow::open_files(const FieldSession::Files& files) {
    if (files.empty() || reading_->desk().reading() || took_project(files)) return;
    if (reading_->isVisible() && reading_->desk().purpose() != ReadingDesk::Purpose::reading_again) {
        reading_->desk().lay_out(files, reading_->desk().purpose());
        return;
    }
    reading_->put_away();
    const auto lay_out = [this](const FieldSession::Files& them, ReadingDesk::Purpose purpose) {
        reading_->desk().lay_out(them, purpose);
    };
    if (session_.field() && !sample_is_open()) {
        const int answer =
            ask_(tr("A field is open already. It stays in its project."), {tr("add to it"), tr("open instead"), tr("stay")});
        if (answer == 0) lay_out(files, ReadingDesk::Purpose::adding);
        if (answer == 1 && may_leave_field(tr("open without"))) lay_out(files, ReadingDesk::Purpose::opening);
        return;
    }
    lay_out(files, ReadingDesk::Purpose::opening);
}

void MainWindow::add_files(const FieldSession::Files& files) {
    if (took_project(files)) return;
    reading_->desk().lay_out(
        files, session_.field() && !sample_is_open() ? ReadingDesk::Purpose::adding : ReadingDesk::Purpose::opening);
}

void MainWindow::choose_files(bool to_add) {
    const QStringList names = QFileDialog::getOpenFileNames(
        this,
        to_add ? tr("Add a walk or ground to this field") : tr("Open a project, or a walk with its ground if there is one"),
        QString(),
        tr("Projects, walks, tables, photographs, ground, plans (*.plugside *.gpx *.csv *.txt *.tsv *.jpg *.jpeg *.kml "
           "*.gpkg *.geojson *.json *.shp *.fgb);;All files (*)"));
    if (names.isEmpty()) return;
    if (to_add)
        add_files(as_files(names));
    else
        open_files(as_files(names));
}

bool MainWindow::open_hand_out() {
    if (hand_out_dialog_ || !session_.field()) return false;
    if (!session_.plan_is_current()) {
        slip_->say(session_.plan_is_first_look() ? tr("This is a first look. Hand out once the whole plan is made.")
                                                 : tr("The plan is not up to date yet. Hand out once it is made."),
                   Slip::Weight::news);
        return false;
    }
    if (work_holds_back()) return false;
    hand_out_dialog_ = new HandOutDialog(session_, choices_, this);
    hand_out_dialog_->setAttribute(Qt::WA_DeleteOnClose);
    // beside the sample's files it would go with them
    if (sample_is_open()) {
        const QString documents = QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
        hand_out_dialog_->set_folder(QDir(documents).exists() ? documents : QDir::homePath());
    }
    connect(hand_out_dialog_, &QDialog::finished, this, [this](int result) {
        if (result == QDialog::Accepted) hand_out(hand_out_dialog_->chosen());
        hand_out_dialog_ = nullptr;
        walk_through_.handed_out();
    });
    hand_out_dialog_->open();
    return true;
}

void MainWindow::say_handed_out(const QStringList& files, const QString& remarks) {
    QStringList names;
    for (const QString& file : files) names << QFileInfo(file).fileName();
    const QString folder = QDir::toNativeSeparators(QFileInfo(files.front()).absolutePath());
    const QString told = tr("Handed out: %1\nin %2").arg(names.join(QStringLiteral(", ")), folder);
    slip_->say(remarks.isEmpty() ? told : told + QLatin1Char('\n') + remarks, Slip::Weight::news);
}

// The same animal stays picked when another plan numbers it otherwise.
void MainWindow::follow_picked_system() {
    const auto before = std::exchange(plan_picked_in_, session_.plan());
    const auto system = choices_.system();
    if (!system || !before || !plan_picked_in_ || before == plan_picked_in_ || *system >= before->systems.size()) return;
    choices_.pick_system(counterpart(*before, *system, *plan_picked_in_));
}

MapTool* MainWindow::tool_of_the_step() {
    if (placing_.active()) return placing_tool_;
    if (choices_.step() == Step::ground) return tracing_->active() ? static_cast<MapTool*>(tracing_) : drawing_;
    if (choices_.step() == Step::systems) return correcting_;
    if (choices_.step() != Step::sets) return nullptr;
    return setting_place_->asking() ? static_cast<MapTool*>(setting_place_) : laying_;
}

// With the tape lifted the hand does what the step asks for.
void MainWindow::use_tape(bool on) {
    if (!session_.field()) on = false;
    const bool was_on = map_->tool() == tape_;
    map_->use_tool(on ? tape_ : tool_of_the_step());
    if (on) map_->setFocus(Qt::ShortcutFocusReason);
    if (was_on && !on && !tape_->places().empty()) tape_->lift();
}

void MainWindow::put_something_away() {
    if (keys_->isVisible())
        keys_->hide();
    else if (map_->tool() == tape_)
        use_tape(false);
    else if (map_->magnifies())
        map_->magnify(false);
    else if (placing_.active()) {
        if (!placing_.put_half_away()) placing_.leave();
    } else if (tracing_->active())
        tracing_->put_down();
    else if (choices_.step() == Step::ground && drawing_->pen().stroke())
        drawing_->put_down();
    else if (choices_.step() == Step::systems && correcting_->busy())
        correcting_->put_away();
    else if (setting_place_->asking())
        setting_place_->give_up();
    else if (choices_.step() == Step::sets && slip_->sets().put_away())
        map_->update();
    else if (choices_.step() == Step::walk && slip_->walk().digger_key() != nullptr)
        slip_->walk().leave_digger_key();
    else if (walk_through_.at())
        leave_sample();
    else if (choices_.step() == Step::ground && drawing_->picked())
        drawing_->pick(std::nullopt);
    else if (!slip_->notice().isEmpty())
        slip_->put_notice_away();
    else if (choices_.mound())
        choices_.pick_mound(std::nullopt);
    else
        choices_.pick_system(std::nullopt);
}

void MainWindow::paintEvent(QPaintEvent* event) { QPainter(this).fillRect(event->rect(), choices_.style().paper); }

void MainWindow::closeEvent(QCloseEvent* event) {
    remember();
    event->setAccepted(may_leave_field(tr("close without")));
}

void MainWindow::dragEnterEvent(QDragEnterEvent* event) {
    for (const QUrl& url : event->mimeData()->urls())
        if (url.isLocalFile()) event->acceptProposedAction();
}

void MainWindow::dropEvent(QDropEvent* event) {
    QStringList names;
    for (const QUrl& url : event->mimeData()->urls())
        if (url.isLocalFile()) names << url.toLocalFile();
    if (names.isEmpty()) return;
    event->acceptProposedAction();
    // the drop has to end before a question may be asked; without its parts, between two languages, the window takes nothing
    QMetaObject::invokeMethod(
        this,
        [this, names] {
            if (layout() != nullptr) take_dropped(as_files(names));
        },
        Qt::QueuedConnection);
}

}  // namespace plugside
