#include "app/stages/set_readings.h"

#include <QGridLayout>

#include "app/window/look_sheet.h"
#include "core/units/length_text.h"

namespace plugside {

SetReadings::SetReadings(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(8);
    grid->setVerticalSpacing(2);
    from_ = label_in_role("quiet", this);
    auto* right = label_in_role("quiet", this);
    right->setText(tr("to the right"));
    along_ = new QLineEdit(this);
    across_ = new QLineEdit(this);
    complaint_ = label_in_role("stop", this);
    along_->setAccessibleName(tr("tape reading from the plug"));
    across_->setAccessibleName(tr("tape reading to the right; to the left with a minus"));
    for (QLineEdit* line : {along_, across_}) line->setToolTip(tr("a length: 1 ft 3, 15 in, 0.38 m"));
    // one under the other, so that the words need no second line at any size of text
    for (QLabel* label : {from_, right}) label->setWordWrap(false);
    grid->addWidget(from_, 0, 0);
    grid->addWidget(along_, 0, 1);
    grid->addWidget(right, 1, 0);
    grid->addWidget(across_, 1, 1);
    grid->addWidget(complaint_, 2, 0, 1, 2);
    grid->setColumnStretch(1, 1);
    complaint_->hide();
    connect(along_, &QLineEdit::textEdited, this, [this] { read(along_, &LadderPlace::along); });
    connect(across_, &QLineEdit::textEdited, this, [this] { read(across_, &LadderPlace::across); });
    connect(along_, &QLineEdit::returnPressed, this, &SetReadings::accept);
    connect(across_, &QLineEdit::returnPressed, this, &SetReadings::accept);
}

void SetReadings::write(QLineEdit* line, Metres length) const {
    line->setText(QString::fromStdString(tape_reading(length, choices_.units())));
}

void SetReadings::show_place(const LadderPlace& place, const QString& from) {
    place_ = place;
    from_->setText(tr("from the plug of %1").arg(from));
    if (reading_) return;
    write(along_, place.along);
    write(across_, place.across);
    complaint_->hide();
}

void SetReadings::begin_with(const QString& text) {
    along_->setFocus(Qt::OtherFocusReason);
    along_->setText(text);
    read(along_, &LadderPlace::along);
}

void SetReadings::read(QLineEdit* line, Metres LadderPlace::*axis) {
    const auto length = parse_length(line->text().toStdString(), choices_.units());
    complaint_->setVisible(!length.has_value());
    if (!length) {
        complaint_->setText(tr("“%1” is no length. Type 1 ft 3, 15 in or 0.38 m.").arg(line->text()));
        return;
    }
    LadderPlace place = place_;
    place.*axis = *length;
    reading_ = true;
    Q_EMIT typed(place);
    reading_ = false;
}

void SetReadings::accept() {
    for (const QLineEdit* line : {along_, across_})
        if (!parse_length(line->text().toStdString(), choices_.units())) return;
    Q_EMIT accepted();
}

}  // namespace plugside
