#include "app/stages/ground_page.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>
#include <algorithm>
#include <array>

#include "app/stages/page_scroll.h"
#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

constexpr std::array strokes{Stroke::boundary,   Stroke::barrier,   Stroke::crossing, Stroke::gate,
                             Stroke::keep_clear, Stroke::untreated, Stroke::hole,     Stroke::split};
constexpr std::array keep_clear_kinds{KeepClearKind::building, KeepClearKind::well, KeepClearKind::play_area,
                                      KeepClearKind::utility, KeepClearKind::other};

QString kind_words(KeepClearKind kind) {
    switch (kind) {
        case KeepClearKind::building: return GroundPage::tr("building");
        case KeepClearKind::well: return GroundPage::tr("well");
        case KeepClearKind::play_area: return GroundPage::tr("play area");
        case KeepClearKind::utility: return GroundPage::tr("marked utility");
        case KeepClearKind::other: return GroundPage::tr("other");
    }
    return {};
}

QString stroke_words(Stroke stroke) {
    switch (stroke) {
        case Stroke::boundary: return GroundPage::tr("boundary");
        case Stroke::barrier: return GroundPage::tr("barrier");
        case Stroke::crossing: return GroundPage::tr("crossing");
        case Stroke::gate: return GroundPage::tr("gate");
        case Stroke::keep_clear: return GroundPage::tr("keep clear");
        case Stroke::untreated: return GroundPage::tr("untreated");
        case Stroke::hole: return GroundPage::tr("hole");
        case Stroke::split: return GroundPage::tr("split");
    }
    return {};
}

// What the pen draws, for whoever has it in hand.
QString stroke_help(Stroke stroke) {
    switch (stroke) {
        case Stroke::boundary:
            return GroundPage::tr("Boundary: what belongs to the field. Click its corners; double click or Enter ends it.");
        case Stroke::barrier:
            return GroundPage::tr(
                "Barrier: what no run crosses, as a road, a ditch, a wall. Click along it; double click or Enter ends it.");
        case Stroke::crossing:
            return GroundPage::tr("Crossing: a gap in a barrier where a run passes, as a culvert. Click the place.");
        case Stroke::gate: return GroundPage::tr("Gate: where people pass. Click the place.");
        case Stroke::keep_clear:
            return GroundPage::tr("Keep clear: where nothing is set. Click its corners; double click or Enter ends it.");
        case Stroke::untreated:
            return GroundPage::tr(
                "Untreated piece: left alone, to compare with. Click its corners; double click or Enter ends it.");
        case Stroke::hole:
            return GroundPage::tr("Hole: cut out of the area it lies in. Click its corners; double click or Enter ends it.");
        case Stroke::split:
            return GroundPage::tr("Split: draw a line across an area, or over a barrier; double click or Enter splits it.");
    }
    return {};
}

QString shape_line(const Ground& ground, GroundShape shape, LengthUnits units) {
    const ShapeWords words = words_of(ground, shape);
    QString line = shape_words(shape.kind);
    if (!words.name.empty()) line = QString::fromStdString(words.name) + QStringLiteral(", ") + line;
    if (is_area(shape.kind))
        return GroundPage::tr("%1: %2").arg(line,
                                            QString::fromStdString(ground_area(area_m2(area_of(ground, shape)), units)));
    if (is_place(shape.kind))
        return GroundPage::tr("%1: %2 wide").arg(line, QString::fromStdString(tape_reading(words.width, units)));
    return GroundPage::tr("%1: %2").arg(
        line, QString::fromStdString(ground_distance(length(ground.barriers.at(shape.number).line), units)));
}

}  // namespace

QStringList ground_words(const Ground& ground, LengthUnits units) {
    QStringList words;
    if (!ground.boundary.empty())
        words << GroundPage::tr("field %1").arg(QString::fromStdString(ground_area(area_m2(ground.boundary), units)));
    const auto count = [&](std::size_t n, const QString& one, const QString& many) {
        if (n > 0) words << counted(static_cast<long long>(n), one, many);
    };
    count(ground.barriers.size(), GroundPage::tr("%1 barrier"), GroundPage::tr("%1 barriers"));
    count(ground.crossings.size(), GroundPage::tr("%1 crossing"), GroundPage::tr("%1 crossings"));
    count(ground.gates.size(), GroundPage::tr("%1 gate"), GroundPage::tr("%1 gates"));
    count(ground.keep_clear.size(), GroundPage::tr("%1 keep-clear area"), GroundPage::tr("%1 keep-clear areas"));
    count(ground.untreated.parts.size(), GroundPage::tr("%1 untreated piece"), GroundPage::tr("%1 untreated pieces"));
    return words;
}

GroundPage::GroundPage(FieldSession& session, Choices& choices, GroundTool& tool, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), tool_(tool) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(7);
    auto* title = label_in_role("title", this);
    title->setText(tr("Ground"));
    holds_ = label_in_role("quiet", this);
    column->addWidget(title);
    column->addWidget(holds_);
    build_pens();
    column->addWidget(pens_);
    doing_ = label_in_role("body", this);
    doing_->setAccessibleName(tr("what the pen does"));
    column->addWidget(doing_);
    leg_ = new QLineEdit(this);
    leg_->setAccessibleName(tr("next corner by length and bearing"));
    leg_->setPlaceholderText(tr("next corner: 40 ft NE, 12.5 m 135 (N)"));
    leg_->setToolTip(leg_->placeholderText());
    column->addWidget(leg_);
    list_ = new QListWidget(this);
    list_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list_->setAccessibleName(tr("shapes of the ground"));
    list_->setMinimumHeight(80);
    take_what_is_left(*list_);
    column->addWidget(list_, 1);
    build_picked();
    column->addWidget(picked_);
    column->addStretch(0);
    connect(leg_, &QLineEdit::returnPressed, this, [this] {
        if (tool_.enter_leg(leg_->text())) leg_->clear();
    });
    connect(list_, &QListWidget::currentRowChanged, this, [this](int row) {
        if (!filling_ && row >= 0 && static_cast<std::size_t>(row) < listed_.size())
            tool_.pick(listed_[static_cast<std::size_t>(row)]);
    });
    connect(&tool_, &GroundTool::changed, this, &GroundPage::refresh);
    connect(&session_, &FieldSession::field_replaced, this, &GroundPage::refresh);
    connect(&session_, &FieldSession::survey_edited, this, &GroundPage::refresh);
    connect(&choices_, &Choices::units_changed, this, &GroundPage::refresh);
    refresh();
}

void GroundPage::build_pens() {
    pens_ = new QWidget(this);
    auto* grid = RowsLayout::even(5, 3);
    pens_->setLayout(grid);
    const std::array keys{tr("B"), tr("D"), tr("X"), tr("T"), tr("K"), tr("U"), tr("H"), tr("Y")};
    for (std::size_t i = 0; i < strokes.size(); ++i) {
        auto* key = new KeyButton(stroke_words(strokes[i]), keys[i], choices_, pens_);
        const Stroke stroke = strokes[i];
        key->setToolTip(stroke_help(stroke));
        connect(key, &QPushButton::clicked, this, [this, stroke] { tool_.take(stroke); });
        pen_keys_.push_back(key);
        grid->addWidget(key);
    }
    auto* about = new KeyButton(tr("about walk"), tr("W"), choices_, pens_);
    about->setToolTip(
        tr("Corners about all that was walked, to begin a boundary with: Enter takes them, then they can be moved."));
    connect(about, &QPushButton::clicked, &tool_, &GroundTool::go_about_the_walk);
    grid->addWidget(about);
    trace_ = new KeyButton(tr("trace"), tr("R"), choices_, pens_);
    trace_->setToolTip(
        tr("Trace: a line of a layer, or a walk's track, becomes a shape, whole or between two places of it."));
    connect(trace_, &QPushButton::clicked, this, &GroundPage::trace_wanted);
    grid->addWidget(trace_);
}

void GroundPage::show_tracing(bool on) { trace_->set_in_force(on); }

void GroundPage::build_band(QVBoxLayout* column) {
    band_row_ = new QWidget(picked_);
    auto* row = new QHBoxLayout(band_row_);
    row->setContentsMargins(0, 0, 0, 0);
    band_ = new QLineEdit(band_row_);
    band_->setPlaceholderText(tr("width in all: 20 ft, 6 m"));
    band_->setToolTip(band_->placeholderText());
    band_->setAccessibleName(tr("width of a band kept clear about this line"));
    auto* make = new QPushButton(tr("keep clear (L)"), band_row_);
    make->setToolTip(tr("Keeps a band of that width about the line clear, as of a ditch or a buried pipe."));
    row->addWidget(band_, 1);
    row->addWidget(make);
    column->addWidget(band_row_);
    const auto make_band = [this] {
        if (tool_.make_band(band_->text())) band_->clear();
    };
    connect(band_, &QLineEdit::returnPressed, this, make_band);
    connect(make, &QPushButton::clicked, this, [this, make_band] {
        if (band_->text().trimmed().isEmpty())
            band_->setFocus(Qt::ShortcutFocusReason);
        else
            make_band();
    });
}

void GroundPage::type_a_band() {
    if (band_row_->isVisibleTo(this)) band_->setFocus(Qt::ShortcutFocusReason);
}

void GroundPage::build_picked() {
    picked_ = new QWidget(this);
    auto* column = new QVBoxLayout(picked_);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    picked_name_ = label_in_role("heading", picked_);
    name_ = new QLineEdit(picked_);
    name_->setPlaceholderText(tr("name"));
    name_->setAccessibleName(tr("name of the shape"));
    kind_ = new QComboBox(picked_);
    kind_->setAccessibleName(tr("what is kept clear"));
    for (const KeepClearKind kind : keep_clear_kinds) kind_->addItem(kind_words(kind));
    reason_ = new QLineEdit(picked_);
    reason_->setPlaceholderText(tr("reason"));
    reason_->setAccessibleName(tr("reason for keeping clear"));
    width_ = new QLineEdit(picked_);
    width_->setPlaceholderText(tr("width: 3 ft, 1.2 m"));
    width_->setAccessibleName(tr("width of the gap"));
    fault_ = label_in_role("stop", picked_);
    auto* acts = RowsLayout::natural(6);
    remove_ = new QPushButton(tr("remove (Del)"), picked_);
    join_ = new QPushButton(tr("join with… (J)"), picked_);
    mend_ = new QPushButton(tr("mend (E)"), picked_);
    for (QPushButton* act : {remove_, join_, mend_}) acts->addWidget(act);
    for (QWidget* part : std::initializer_list<QWidget*>{picked_name_, name_, kind_, reason_, width_, fault_})
        column->addWidget(part);
    build_band(column);
    column->addLayout(acts);
    for (QLineEdit* field : {name_, reason_, width_})
        connect(field, &QLineEdit::editingFinished, this, &GroundPage::keep_words);
    connect(kind_, &QComboBox::activated, this, &GroundPage::keep_words);
    connect(remove_, &QPushButton::clicked, &tool_, &GroundTool::remove_picked);
    connect(join_, &QPushButton::clicked, &tool_, &GroundTool::join_with_next);
    connect(mend_, &QPushButton::clicked, &tool_, &GroundTool::mend_picked);
}

void GroundPage::type_a_leg() {
    if (tool_.pen().stroke()) leg_->setFocus(Qt::ShortcutFocusReason);
}

void GroundPage::keep_words() {
    const auto field = session_.field();
    if (filling_ || !field || !tool_.picked()) return;
    ShapeWords words = words_of(field->survey.ground, *tool_.picked());
    words.name = name_->text().trimmed().toStdString();
    words.reason = reason_->text().trimmed().toStdString();
    if (tool_.picked()->kind == GroundKind::keep_clear)
        words.kind = keep_clear_kinds.at(static_cast<std::size_t>(std::max(0, kind_->currentIndex())));
    if (is_place(tool_.picked()->kind)) {
        const auto width = parse_length(width_->text().toStdString(), choices_.units());
        if (width)
            words.width = *width;
        else
            Q_EMIT tool_.said(tr("“%1” is no width, as in “3 ft” or “1.2 m”.").arg(width_->text()));
    }
    tool_.use_words(words);
}

void GroundPage::refresh() {
    const auto field = session_.field();
    const Ground ground = field ? field->survey.ground : Ground{};
    const QStringList words = ground_words(ground, choices_.units());
    holds_->setText(!field            ? tr("No walk is open: the ground is drawn about its marks.")
                    : words.isEmpty() ? tr("Nothing is drawn yet. Without a boundary nothing lies outside the field.")
                                      : words.join(QStringLiteral(" · ")));
    const auto stroke = tool_.pen().stroke();
    for (std::size_t i = 0; i < pen_keys_.size(); ++i) {
        pen_keys_[i]->setEnabled(field != nullptr);
        pen_keys_[i]->set_in_force(stroke == strokes[i]);
    }
    trace_->setEnabled(field != nullptr);
    const QString reading = tool_.reading_words();
    doing_->setText(stroke ? stroke_help(*stroke) + (reading.isEmpty() ? QString() : QStringLiteral("\n") + reading)
                    : tool_.joining() ? tr("Click the shape to join it with.")
                                      : QString());
    doing_->setVisible(!doing_->text().isEmpty());
    leg_->setVisible(stroke.has_value() && !tool_.pen().corners().empty());
    fill_list(ground);
    show_picked(ground);
}

void GroundPage::fill_list(const Ground& ground) {
    filling_ = true;
    listed_ = shapes_of(ground);
    while (list_->count() > static_cast<int>(listed_.size())) delete list_->takeItem(list_->count() - 1);
    for (std::size_t i = 0; i < listed_.size(); ++i) {
        const QString line = shape_line(ground, listed_[i], choices_.units());
        if (static_cast<int>(i) < list_->count())
            list_->item(static_cast<int>(i))->setText(line);
        else
            list_->addItem(line);
        list_->item(static_cast<int>(i))->setToolTip(line);  // a long name is shortened where it stands
    }
    const auto picked = tool_.picked() ? std::find(listed_.begin(), listed_.end(), *tool_.picked()) : listed_.end();
    list_->setCurrentRow(picked == listed_.end() ? -1 : static_cast<int>(picked - listed_.begin()));
    list_->setVisible(!listed_.empty());
    filling_ = false;
}

void GroundPage::show_picked(const Ground& ground) {
    const auto& shape = tool_.picked();
    picked_->setVisible(shape.has_value());
    if (!shape) return;
    filling_ = true;
    const ShapeWords words = words_of(ground, *shape);
    const bool named = shape->kind != GroundKind::boundary && shape->kind != GroundKind::untreated;
    picked_name_->setText(shape_line(ground, *shape, choices_.units()));
    const auto put = [](QLineEdit* field, const QString& text) {
        if (!field->hasFocus() && field->text() != text) field->setText(text);
    };
    put(name_, QString::fromStdString(words.name));
    put(reason_, QString::fromStdString(words.reason));
    put(width_, QString::fromStdString(tape_reading(words.width, choices_.units())));
    kind_->setCurrentIndex(static_cast<int>(std::find(keep_clear_kinds.begin(), keep_clear_kinds.end(), words.kind) -
                                            keep_clear_kinds.begin()));
    name_->setVisible(named);
    kind_->setVisible(shape->kind == GroundKind::keep_clear);
    reason_->setVisible(shape->kind == GroundKind::keep_clear);
    width_->setVisible(is_place(shape->kind));
    band_row_->setVisible(shape->kind == GroundKind::barrier);
    QString fault;
    if (is_area(shape->kind))
        for (const ShapeFault& one : faults_of(ground))
            if (one.shape == *shape) fault = QString::fromStdString(one.sentence);
    fault_->setText(fault);
    fault_->setVisible(!fault.isEmpty());
    mend_->setVisible(!fault.isEmpty());
    join_->setVisible(!is_place(shape->kind));
    filling_ = false;
}

}  // namespace plugside
