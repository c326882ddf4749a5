#include "app/window/work_banner.h"

#include <QGridLayout>
#include <algorithm>
#include <cmath>

#include "app/window/map_buttons.h"

namespace plugside {

namespace {

constexpr int patience_ms = 250;

}  // namespace

WorkBanner::WorkBanner(FieldSession& session, QWidget* map) : QFrame(map), session_(session) {
    setObjectName(QStringLiteral("working"));
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(12, 6, 8, 6);
    grid->setVerticalSpacing(4);
    words_ = new QLabel(this);
    words_->setTextFormat(Qt::PlainText);
    words_->setWordWrap(true);
    share_ = new QProgressBar(this);
    share_->setRange(0, 100);
    share_->setTextVisible(false);
    button_ = new QPushButton(this);
    grid->addWidget(words_, 0, 0);
    grid->addWidget(share_, 1, 0);
    grid->addWidget(button_, 0, 1, 2, 1);
    patience_.setSingleShot(true);
    patience_.setInterval(patience_ms);
    connect(&patience_, &QTimer::timeout, this, &WorkBanner::refresh);
    for (BackgroundWork* work : {&session_.planning(), &session_.file_work()}) {
        connect(work, &BackgroundWork::started, this, [this] {
            if (!patience_.isActive() && isHidden()) patience_.start();
        });
        connect(work, &BackgroundWork::progressed, this, [this] {
            if (!isHidden()) refresh();
        });
        connect(work, &BackgroundWork::ended, this, &WorkBanner::refresh);
    }
    connect(button_, &QPushButton::clicked, this, [this] {
        if (session_.file_work().running())
            session_.file_work().stop();
        else if (session_.planning().running())
            session_.planning().stop();
        else
            session_.plan_again();
    });
    hide();
}

void WorkBanner::refresh() {
    const bool on_files = session_.file_work().running();
    const BackgroundWork& work = on_files ? session_.file_work() : session_.planning();
    const bool stopped = !work.running() && session_.field() && !session_.plan_is_current();
    if (!work.running() && !stopped) {
        patience_.stop();
        hide();
        return;
    }
    const QString doing = work.doing().isEmpty() ? (on_files ? tr("files") : tr("planning")) : work.doing();
    const bool first_look = session_.plan_is_first_look() && !on_files;
    words_->setText(stopped      ? (first_look ? tr("stopped: this is a first look, not the whole plan")
                                               : tr("stopped: the plan is not up to date"))
                    : first_look ? tr("a first look; working: %1").arg(doing)
                                 : tr("working: %1").arg(doing));
    share_->setVisible(!stopped);
    share_->setValue(static_cast<int>(std::lround(work.share_done() * 100.0)));
    button_->setText(stopped ? tr("plan again") : tr("stop"));
    show();
    place();
}

void WorkBanner::place() {
    // the words go on in a second line where the map is too narrow for one
    const int room = parentWidget()->width() - 16;
    const int beside = 34 + button_->sizeHint().width();
    const int wish = words_->fontMetrics().horizontalAdvance(words_->text()) + 4;
    words_->setFixedWidth(std::clamp(wish, std::min(150, room - beside), std::max(room - beside, 60)));
    layout()->activate();
    resize(layout()->minimumSize().width(), layout()->totalMinimumHeightForWidth(layout()->minimumSize().width()));
    const auto* above = parentWidget()->findChild<MapButtons*>(QString(), Qt::FindDirectChildrenOnly);
    move(std::max((parentWidget()->width() - width()) / 2, 8), above ? above->geometry().bottom() + 12 : 50);
    raise();
}

}  // namespace plugside
