#include "app/stages/slip.h"

#include <QHBoxLayout>
#include <QPainter>
#include <QStyle>
#include <QToolButton>
#include <QVBoxLayout>

#include "app/stages/page_scroll.h"
#include "app/window/dresser.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

// The paper that the steps stand on.
class SlipPaper : public QFrame {
public:
    SlipPaper(const Choices& choices, QWidget* parent) : QFrame(parent), choices_(choices) {}

protected:
    void paintEvent(QPaintEvent*) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(choices_.style().hairline, 1.0));
        painter.setBrush(choices_.style().slip);
        painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 8.5, 8.5);
    }

private:
    const Choices& choices_;
};

}  // namespace

Slip::Slip(FieldSession& session, Choices& choices, GroundTool& drawing, SystemsTool& correcting, WorkAccount& work,
           TourAccount& tours, QWidget* parent)
    : QWidget(parent), choices_(choices) {
    setObjectName(QStringLiteral("slip_side"));
    dress_by_parts(*this);
    auto* side = new QVBoxLayout(this);
    side->setContentsMargins(12, 12, 12, 12);
    side->setSpacing(10);
    notice_ = new QFrame(this);
    notice_->setObjectName(QStringLiteral("notice"));
    auto* notice_row = new QHBoxLayout(notice_);
    notice_row->setContentsMargins(12, 8, 6, 8);
    notice_words_ = label_in_role("body", notice_);
    notice_words_->setTextInteractionFlags(Qt::TextSelectableByMouse | Qt::TextSelectableByKeyboard);
    auto* away = new QToolButton(notice_);
    away->setText(tr("×"));
    away->setProperty("map_button", true);
    away->setAccessibleName(tr("put this notice away"));
    away->setToolTip(tr("put away (Esc)"));
    connect(away, &QToolButton::clicked, this, &Slip::put_notice_away);
    notice_row->addWidget(notice_words_, 1);
    notice_row->addWidget(away, 0, Qt::AlignTop);
    notice_->hide();
    side->addWidget(notice_);
    auto* paper = new SlipPaper(choices, this);
    paper->setObjectName(QStringLiteral("slip"));
    dress_by_parts(*paper);
    auto* inside = new QVBoxLayout(paper);
    inside->setContentsMargins(17, 13, 17, 15);
    pages_ = new QStackedWidget(paper);
    dress_by_parts(*pages_);
    walk_ = new WalkPage(session, choices, pages_);
    ground_ = new GroundPage(session, choices, drawing, pages_);
    systems_ = new SystemsPage(session, choices, correcting, pages_);
    method_ = new MethodPage(session, choices, work, pages_);
    sets_ = new SetsPage(session, choices, work, tours, pages_);
    for (QWidget* page : std::initializer_list<QWidget*>{walk_, ground_, systems_, method_, sets_})
        pages_->addWidget(new PageScroll(page, pages_, page == method_ ? PageHeight::whole : PageHeight::least));
    inside->addWidget(pages_);
    side->addWidget(paper, 1);
    connect(&choices_, &Choices::step_changed, this, &Slip::show_step);
    show_step();
}

void Slip::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), choices_.style().paper);
    painter.fillRect(0, 0, 1, height(), choices_.style().hairline);
}

void Slip::put_below(QWidget* widget) { layout()->addWidget(widget); }

void Slip::put_above(QWidget* widget) { static_cast<QVBoxLayout*>(layout())->insertWidget(0, widget); }

QList<QWidget*> Slip::pages() const {
    QList<QWidget*> pages;
    for (int i = 0; i < pages_->count(); ++i) pages << pages_->widget(i);
    return pages;
}

void Slip::show_step() { pages_->setCurrentIndex(static_cast<int>(choices_.step())); }

void Slip::say(const QString& sentence, Weight weight) {
    notice_words_->setText(sentence);
    notice_->setProperty("weight", weight == Weight::refusal ? QStringLiteral("stop") : QString());
    notice_->style()->unpolish(notice_);
    notice_->style()->polish(notice_);
    notice_->setAccessibleName(sentence);
    notice_->show();
}

void Slip::put_notice_away() {
    notice_->hide();
    notice_words_->clear();
}

QString Slip::notice() const { return notice_->isHidden() ? QString() : notice_words_->text(); }

}  // namespace plugside
