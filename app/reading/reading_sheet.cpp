#include "app/reading/reading_sheet.h"

#include <QApplication>
#include <QHBoxLayout>
#include <QKeyEvent>
#include <QPainter>
#include <QVBoxLayout>
#include <algorithm>
#include <cmath>
#include <utility>

#include "app/reading/reading_words.h"
#include "app/stages/page_scroll.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

constexpr int list_width = 300;

// A bar: cannot be read. A triangle: waits for an answer. A dot: worth a look. Nothing: all is well.
QIcon sign_of(const FileLook& look, bool left_out, const MapStyle& style) {
    QPixmap picture(28, 28);
    picture.setDevicePixelRatio(2.0);
    picture.fill(Qt::transparent);
    QPainter painter(&picture);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    if (cannot_be_read(look)) {
        painter.setBrush(style.stop_ink);
        painter.drawRoundedRect(QRectF(1.0, 5.0, 12.0, 4.0), 1.5, 1.5);
    } else if (needs_answer(look) && !left_out) {
        painter.setBrush(style.act);
        painter.drawPolygon(QPolygonF{{7.0, 1.5}, {13.0, 12.0}, {1.0, 12.0}});
    } else if (may_miss_fans(look) && !left_out) {
        painter.setBrush(style.caution_ink);
        painter.drawEllipse(QPointF(7.0, 7.0), 3.0, 3.0);
    }
    return QIcon(picture);
}

}  // namespace

ReadingSheet::ReadingSheet(FieldSession& session, Choices& choices, QWidget* window, const QList<QWidget*>& over)
    : QFrame(window), session_(session), choices_(choices), over_(over), desk_(session) {
    setObjectName(QStringLiteral("reading_sheet"));
    setFocusPolicy(Qt::StrongFocus);
    setAccessibleName(tr("What the files hold"));
    lay_out_parts();
    bind();
    for (QWidget* part : over_) part->installEventFilter(this);
    list_->installEventFilter(this);
    refresh_keys();
    hide();
}

void ReadingSheet::lie_over() {
    QRect all;
    for (const QWidget* part : over_) all = all.united(part->geometry());
    setGeometry(all);
}

bool ReadingSheet::eventFilter(QObject* watched, QEvent* event) {
    if (watched != list_ && (event->type() == QEvent::Resize || event->type() == QEvent::Move)) lie_over();
    if (watched == list_ && event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Right) {
        if (QWidget* place = entry_->place_of_answer()) place->setFocus(Qt::TabFocusReason);
        return true;
    }
    return QFrame::eventFilter(watched, event);
}

void ReadingSheet::lay_out_parts() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 14, 20, 14);
    column->setSpacing(10);
    auto* head = new QHBoxLayout;
    title_ = label_in_role("title", this);
    title_->setWordWrap(false);
    state_ = label_in_role("quiet", this);
    head->addWidget(title_);
    head->addWidget(state_, 1, Qt::AlignBottom);
    column->addLayout(head);
    auto* middle = new QHBoxLayout;
    middle->setSpacing(18);
    auto* left = new QVBoxLayout;
    left->setSpacing(8);
    list_ = new QListWidget(this);
    list_->setWordWrap(true);
    list_->setIconSize(QSize(14, 14));
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setAccessibleName(tr("the files, what each was taken for, and whether it is read"));
    north_of_all_ = new PickButton(tr("all bearings"), this);
    north_of_all_->set_options({tr("as each file says"), tr("from true north"), tr("from magnetic north")});
    left->addWidget(list_, 1);
    left->addWidget(north_of_all_);
    entry_ = new EntryView(desk_, choices_, this);
    middle->addLayout(left);
    middle->addWidget(new PageScroll(entry_, this), 1);
    column->addLayout(middle, 1);
    auto* foot = new QHBoxLayout;
    message_ = label_in_role("stop", this);
    share_ = new QProgressBar(this);
    share_->setRange(0, 100);
    share_->setTextVisible(false);
    share_->setFixedWidth(140);
    away_ = new QPushButton(this);
    read_ = new QPushButton(this);
    read_->setObjectName(QStringLiteral("main_button"));
    read_->setToolTip(tr("Enter, or Ctrl+Enter from anywhere"));
    foot->addWidget(message_, 1);
    foot->addWidget(share_);
    foot->addWidget(away_);
    foot->addWidget(read_);
    column->addLayout(foot);
}

void ReadingSheet::bind() {
    connect(&desk_, &ReadingDesk::laid_out, this, &ReadingSheet::open);
    connect(&desk_, &ReadingDesk::look_changed, this, &ReadingSheet::refresh_entry);
    connect(&desk_, &ReadingDesk::read_done, this, [this] {
        const QString words = what_came();
        put_away();
        Q_EMIT told(words);
    });
    connect(&desk_, &ReadingDesk::read_failed, this, [this](const QString& sentence) {
        message_->setText(sentence);
        refresh_keys();
    });
    connect(&desk_, &ReadingDesk::read_stopped, this, &ReadingSheet::refresh_keys);
    connect(&session_.file_work(), &BackgroundWork::progressed, this,
            [this] { share_->setValue(static_cast<int>(std::lround(session_.file_work().share_done() * 100.0))); });
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (row >= 0 && !listing_) entry_->show_entry(static_cast<std::size_t>(row));
    });
    connect(list_, &QListWidget::itemChanged, this, [this](QListWidgetItem* item) {
        if (listing_) return;
        desk_.leave_out(static_cast<std::size_t>(list_->row(item)), item->checkState() == Qt::Unchecked);
        entry_->refresh();
    });
    connect(north_of_all_, &PickButton::picked, this, [this](int index) {
        if (index > 0) desk_.tell_north_of_all(index == 1 ? North::true_north : North::magnetic_north);
    });
    connect(entry_, &EntryView::reference_system_taken, this, &ReadingSheet::after_answer);
    connect(&choices_, &Choices::theme_changed, this, &ReadingSheet::list_entries);
    connect(away_, &QPushButton::clicked, this, [this] {
        if (desk_.reading())
            desk_.stop_reading();
        else
            put_away();
    });
    connect(read_, &QPushButton::clicked, this, &ReadingSheet::read);
}

void ReadingSheet::open() {
    const bool was_open = isVisible();
    const bool again = desk_.purpose() == ReadingDesk::Purpose::reading_again;
    title_->setText(again ? tr("How the files were read") : tr("What the files hold"));
    message_->clear();
    read_when_counted_ = false;
    lie_over();
    list_entries();
    north_of_all_->show_option(0);
    raise();
    show();
    if (was_open) return;
    Q_EMIT opened();
    // a file that can be looked at, and has something to see
    int first = 0;
    for (std::size_t i = desk_.looks().size(); i-- > 0;)
        if (has_choices(desk_.looks()[i])) first = static_cast<int>(i);
    row_at_first_ = first;
    questions_shown_ = false;
    list_->setCurrentRow(first);
    entry_->show_entry(static_cast<std::size_t>(first));
    list_->setFocus(Qt::OtherFocusReason);
}

void ReadingSheet::put_away() {
    if (isHidden()) return;
    hide();
    desk_.clear();
    Q_EMIT put_away_again();
}

void ReadingSheet::list_entries() {
    list_->setFixedWidth(
        std::min(static_cast<int>(choices_.style().room(list_width)), std::max(width() * 2 / 5, list_width)));
    listing_ = true;
    const int row = list_->currentRow();
    list_->clear();
    for (std::size_t i = 0; i < desk_.looks().size(); ++i) new QListWidgetItem(list_);
    listing_ = false;
    for (std::size_t i = 0; i < desk_.looks().size(); ++i) refresh_entry(static_cast<int>(i));
    if (row >= 0) list_->setCurrentRow(std::min(row, list_->count() - 1));
}

void ReadingSheet::refresh_entry(int entry) {
    const auto index = static_cast<std::size_t>(entry);
    QListWidgetItem* item = list_->item(entry);
    if (item == nullptr || index >= desk_.looks().size()) return;
    const FileLook& look = desk_.looks()[index];
    listing_ = true;
    const bool out = desk_.left_out(index);
    QStringList words{taken_words(look)};
    if (const QString trouble = trouble_words(look); !trouble.isEmpty()) words = {trouble};
    if (out) words << tr("left out");
    if (desk_.counting(index)) words << tr("being counted");
    const QString text = name_of(look) + QLatin1Char('\n') + words.join(QStringLiteral(", "));
    item->setText(text);
    item->setData(Qt::AccessibleTextRole, text);
    item->setToolTip(text);
    const bool takeable = !cannot_be_read(look) || desk_.purpose() == ReadingDesk::Purpose::reading_again;
    item->setFlags(Qt::ItemIsEnabled | Qt::ItemIsSelectable | (takeable ? Qt::ItemIsUserCheckable : Qt::NoItemFlags));
    item->setCheckState(out ? Qt::Unchecked : Qt::Checked);
    const MapStyle& style = choices_.style();
    item->setIcon(sign_of(look, out, style));
    item->setForeground(out ? style.quiet_ink : style.ink);
    listing_ = false;
    // where one file lies is told by the others
    entry_->refresh();
    refresh_keys();
    if (read_when_counted_ && desk_.settled()) read();
    if (!questions_shown_ && desk_.settled()) {
        // the person who has not begun anywhere begins where something is asked
        questions_shown_ = true;
        const auto question = desk_.first_open_question();
        if (question && QApplication::focusWidget() == list_ && list_->currentRow() == row_at_first_)
            go_to_question(*question);
    }
}

void ReadingSheet::refresh_keys() {
    const std::size_t questions = desk_.open_questions();
    const auto files = static_cast<long long>(desk_.looks().size());
    QString state = counted(files, tr("%1 file"), tr("%1 files"));
    if (!desk_.names_left_out().isEmpty()) state += tr(", %1 left out").arg(desk_.names_left_out().size());
    if (questions > 0)
        state += counted(static_cast<long long>(questions), tr("; %1 waits for an answer"), tr("; %1 wait for an answer"));
    state_->setText(state);
    const bool reading = desk_.reading();
    share_->setVisible(reading);
    if (!reading) share_->setValue(0);
    away_->setText(reading ? tr("stop") : tr("not now"));
    away_->setToolTip(tr("Escape"));
    read_->setText(reading || read_when_counted_                            ? tr("reading…")
                   : desk_.purpose() == ReadingDesk::Purpose::reading_again ? tr("read again")
                                                                            : tr("read these"));
    read_->setEnabled(!reading && !desk_.wanted().empty());
    list_->setEnabled(!reading);
    entry_->setEnabled(!reading);
    std::size_t with_bare_fans = 0;
    for (const FileLook& look : desk_.looks()) with_bare_fans += look.bare_fans > 0 ? 1U : 0U;
    north_of_all_->setVisible(with_bare_fans > 1);
    north_of_all_->setEnabled(!reading);
}

void ReadingSheet::read() {
    if (desk_.reading() || desk_.wanted().empty()) return;
    message_->clear();
    read_when_counted_ = !desk_.settled();
    const auto question = desk_.first_open_question();
    if (!read_when_counted_ && question) {
        go_to_question(*question);
        message_->setText(tr("%1 waits for an answer: say it, or leave the file out (Space in the list).")
                              .arg(name_of(desk_.looks()[*question])));
    } else if (!read_when_counted_) {
        desk_.read();
    }
    refresh_keys();
}

void ReadingSheet::go_to_question(std::size_t entry) {
    list_->setCurrentRow(static_cast<int>(entry));
    entry_->show_entry(entry);
    if (QWidget* place = entry_->place_of_answer())
        place->setFocus(Qt::OtherFocusReason);
    else
        list_->setFocus(Qt::OtherFocusReason);
    refresh_keys();
}

// The next question, or the list, where Enter reads.
void ReadingSheet::after_answer() {
    message_->clear();
    for (std::size_t i = 0; i < desk_.looks().size(); ++i)
        if (i != entry_->entry() && !desk_.left_out(i) && needs_answer(desk_.looks()[i])) {
            go_to_question(i);
            return;
        }
    list_->setFocus(Qt::OtherFocusReason);
}

QString ReadingSheet::what_came() const {
    const auto field = session_.field();
    if (!field) return {};
    std::size_t marks = 0;
    for (const Mound& mound : field->survey.mounds) marks += is_gopher_sign(mound.kind) ? 1U : 0U;
    std::size_t files = 0;
    for (std::size_t i = 0; i < desk_.looks().size(); ++i) files += desk_.left_out(i) ? 0U : desk_.looks()[i].files.size();
    QString words = counted(static_cast<long long>(files), tr("%1 file was read; "), tr("%1 files were read; ")) +
                    counted(static_cast<long long>(marks), tr("the survey has %1 mark"), tr("the survey has %1 marks")) +
                    counted(static_cast<long long>(field->survey.walks.size()), tr(" of %1 walk."), tr(" of %1 walks."));
    if (const QStringList out = desk_.names_left_out(); !out.isEmpty())
        words += tr("\nLeft out: %1").arg(out.join(tr(", ")));
    return words;
}

void ReadingSheet::keyPressEvent(QKeyEvent* event) {
    const bool enter = event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter;
    if (enter) {
        auto* button = qobject_cast<QPushButton*>(QApplication::focusWidget());
        if (button != nullptr && button != read_ && !(event->modifiers() & Qt::ControlModifier))
            button->click();
        else
            read();
    } else if (event->key() == Qt::Key_Escape) {
        away_->click();
    }
    // nothing that is typed here reaches the window's own keys
    event->accept();
}

bool ReadingSheet::event(QEvent* event) {
    if (event->type() == QEvent::MouseButtonPress) return true;
    return QFrame::event(event);
}

}  // namespace plugside
