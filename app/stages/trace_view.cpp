#include "app/stages/trace_view.h"

#include <QFrame>
#include <QVBoxLayout>

#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"

namespace plugside {

TraceView::TraceView(TraceTool& tool, QWidget* parent) : QWidget(parent), tool_(tool) {
    auto* side = new QVBoxLayout(this);
    side->setContentsMargins(0, 0, 0, 0);
    auto* paper = new QFrame(this);
    paper->setObjectName(QStringLiteral("slip"));
    side->addWidget(paper);
    auto* column = new QVBoxLayout(paper);
    column->setContentsMargins(16, 10, 16, 12);
    column->setSpacing(7);
    auto* heading = label_in_role("heading", paper);
    heading->setText(tr("Trace what is there"));
    words_ = label_in_role("body", paper);
    words_->setAccessibleName(tr("what is traced"));
    makes_ = new QWidget(paper);
    auto* grid = RowsLayout::even(5, 2);
    makes_->setLayout(grid);
    const auto make = [&](const QString& words, GroundKind kind) {
        auto* button = new QPushButton(words, makes_);
        connect(button, &QPushButton::clicked, this, [this, kind] { tool_.make(kind); });
        grid->addWidget(button);
    };
    make(tr("boundary (B)"), GroundKind::boundary);
    make(tr("barrier (D)"), GroundKind::barrier);
    make(tr("keep clear (K)"), GroundKind::keep_clear);
    make(tr("untreated (U)"), GroundKind::untreated);
    other_way_ = new QPushButton(tr("other way round (I)"), paper);
    connect(other_way_, &QPushButton::clicked, &tool_, &TraceTool::go_the_other_way);
    auto* acts = RowsLayout::natural(6);
    auto* open = new QPushButton(tr("open a layer (O)"), paper);
    auto* done = new QPushButton(tr("done (Esc)"), paper);
    acts->addWidget(open);
    acts->addWidget(done);
    for (QWidget* part : std::initializer_list<QWidget*>{heading, words_, makes_, other_way_}) column->addWidget(part);
    column->addLayout(acts);
    connect(open, &QPushButton::clicked, this, &TraceView::open_wanted);
    connect(done, &QPushButton::clicked, this, &TraceView::put_down_wanted);
    connect(&tool_, &TraceTool::changed, this, &TraceView::refresh);
    refresh();
}

void TraceView::refresh() {
    setVisible(tool_.active());
    if (!tool_.active()) return;
    const bool picked = tool_.picked().has_value();
    const bool ring = picked && tool_.lines().at(*tool_.picked()).line.closed;
    QString words;
    if (tool_.reading())
        words = tr("The layer is being read.");
    else if (tool_.lines().empty())
        words = tr("No line is there to trace: open a layer with lines or areas.");
    else if (!picked)
        words = tr("Click a line: a track, or one of a layer that was opened.");
    else if (tool_.is_whole())
        words =
            tr("%1. All of it; click it once more for the piece between both places. It becomes:").arg(tool_.picked_words());
    else
        words = tr("%1, between the two places. It becomes:").arg(tool_.picked_words());
    words_->setText(words);
    makes_->setVisible(picked);
    other_way_->setVisible(ring && !tool_.is_whole());
}

}  // namespace plugside
