#include "app/stages/row_edit.h"

#include <QHBoxLayout>
#include <QVBoxLayout>
#include <array>
#include <cmath>

#include "app/stages/rows_layout.h"
#include "app/window/look_sheet.h"
#include "app/words/language.h"
#include "core/sets/row_values.h"

namespace plugside {

namespace {

constexpr const char* not_known = "not-known";
constexpr double metres_in_a_foot = 0.3048;

bool has_unit(RowKind kind) { return kind == RowKind::amount || kind == RowKind::rate; }

constexpr std::array amount_units{AmountUnit::teaspoons, AmountUnit::tablespoons, AmountUnit::cups,
                                  AmountUnit::ounces,    AmountUnit::pounds,      AmountUnit::grams,
                                  AmountUnit::kilograms, AmountUnit::tablets,     AmountUnit::cartridges};

QString unit_shown(AmountUnit unit) {
    switch (unit) {
        case AmountUnit::grams: return RowEdit::tr("grams");
        case AmountUnit::kilograms: return RowEdit::tr("kilograms");
        case AmountUnit::ounces: return RowEdit::tr("ounces");
        case AmountUnit::pounds: return RowEdit::tr("pounds");
        case AmountUnit::teaspoons: return RowEdit::tr("teaspoons");
        case AmountUnit::tablespoons: return RowEdit::tr("tablespoons");
        case AmountUnit::cups: return RowEdit::tr("cups");
        case AmountUnit::tablets: return RowEdit::tr("tablets");
        case AmountUnit::cartridges: break;
    }
    return RowEdit::tr("cartridges");
}

std::optional<double> number_in(QString text) {
    bool read = false;
    const double value = text.trimmed().replace(QLatin1Char(','), QLatin1Char('.')).toDouble(&read);
    return read && std::isfinite(value) ? std::optional(value) : std::nullopt;
}

QString number_shown(double value) { return in_their_digits(QString::number(value, 'g', 6)); }

}  // namespace

RowValues row_values(const WorkOrder& work) {
    RowValues values;
    for (const WorkRow& row : rows_of(work)) values.emplace(row.name, row.value);
    return values;
}

QString row_word_shown(const std::string& word) {
    if (word == "yes") return RowEdit::tr("yes");
    if (word == "no") return RowEdit::tr("no");
    if (word == not_known) return RowEdit::tr("not known");
    if (word == "none") return RowEdit::tr("none");
    if (word == "other") return RowEdit::tr("other");
    if (word == "private-applicator") return RowEdit::tr("private applicator");
    if (word == "commercial-applicator") return RowEdit::tr("commercial applicator");
    if (const auto ingredient = ingredient_from_text(word)) return QString::fromStdString(ingredient_shown(*ingredient));
    return QString::fromStdString(answer_shown(word));
}

RowEdit::RowEdit(RowSpec spec, WorkAccount& work, Choices& choices, QWidget* parent)
    : QWidget(parent), spec_(std::move(spec)), work_(work), choices_(choices) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(3);
    name_ = label_in_role("body", this);
    name_->setText(spec_.name);
    column->addWidget(name_);
    if (spec_.kind == RowKind::words)
        build_choice();
    else if (spec_.kind == RowKind::many)
        build_many();
    else
        build_field();
    wrong_ = label_in_role("stop", this);
    wrong_->hide();
    column->addWidget(wrong_);
}

void RowEdit::build_choice() {
    choice_ = page_choice(spec_.name, this);
    choice_->addItem(tr("—"), QString());
    for (const std::string& word : spec_.words) choice_->addItem(row_word_shown(word), QString::fromStdString(word));
    if (spec_.stamped) choice_->addItem(row_word_shown(not_known), QString::fromLatin1(not_known));
    layout()->addWidget(choice_);
    connect(choice_, &PageChoice::settled, this,
            [this](int at) { commit_value(choice_->itemData(at).toString().toStdString()); });
}

void RowEdit::build_field() {
    auto* row = RowsLayout::natural(6);
    field_ = new QLineEdit(this);
    field_->setAccessibleName(spec_.name);
    field_->setMinimumWidth(90);
    if (spec_.kind == RowKind::day) field_->setPlaceholderText(tr("year-month-day"));
    row->addWidget(field_);
    if (has_unit(spec_.kind)) {
        unit_ = page_choice(tr("unit of: %1").arg(spec_.name), this);
        for (const AmountUnit unit : amount_units) unit_->addItem(unit_shown(unit), QString::fromStdString(to_text(unit)));
        row->addWidget(unit_);
        connect(unit_, &PageChoice::settled, this, &RowEdit::commit);
    }
    if (spec_.kind == RowKind::rate) {
        per_ = page_choice(tr("area of: %1").arg(spec_.name), this);
        per_->addItem(tr("per acre"), QStringLiteral("acre"));
        per_->addItem(tr("per hectare"), QStringLiteral("hectare"));
        row->addWidget(per_);
        connect(per_, &PageChoice::settled, this, &RowEdit::commit);
    }
    if (spec_.kind == RowKind::length || spec_.kind == RowKind::temperature) {
        suffix_ = label_in_role("body", this);
        suffix_->setWordWrap(false);
        row->addWidget(suffix_);
    }
    if (spec_.stamped) {
        unknown_ = new QCheckBox(tr("not known"), this);
        unknown_->setAccessibleName(tr("not known: %1").arg(spec_.name));
        row->addWidget(unknown_);
        connect(unknown_, &QCheckBox::clicked, this, [this](bool on) { commit_value(on ? not_known : ""); });
    }
    static_cast<QVBoxLayout*>(layout())->addLayout(row);
    connect(field_, &QLineEdit::editingFinished, this, [this] {
        if (!filling_ && field_->text() != shown_) commit();
    });
}

void RowEdit::build_many() {
    for (const std::string& word : spec_.words) {
        auto* box = new QCheckBox(row_word_shown(word), this);
        box->setAccessibleName(box->text());
        box->setProperty("word", QString::fromStdString(word));
        boxes_.push_back(box);
        layout()->addWidget(box);
        connect(box, &QCheckBox::clicked, this, [this, box](bool on) {
            std::string value;
            const QString chosen = box->property("word").toString();
            const bool alone = chosen == QLatin1String(not_known) || chosen == QLatin1String("none-of-these");
            for (QCheckBox* each : boxes_) {
                const QString word_of = each->property("word").toString();
                const bool stands_alone = word_of == QLatin1String(not_known) || word_of == QLatin1String("none-of-these");
                // "none of these" and "not known" stand alone
                if (on && each != box && (alone || stands_alone)) continue;
                if (each->isChecked()) value += (value.empty() ? "" : " ") + word_of.toStdString();
            }
            commit_value(value);
        });
    }
}

QString RowEdit::text_of_value(const std::string& value) const {
    const QString plain = QString::fromStdString(value);
    if (spec_.kind == RowKind::text) {
        std::string text;
        return rows::take(value, text) ? QString::fromStdString(text) : plain;
    }
    const bool feet = choices_.units() == LengthUnits::feet_and_inches;
    if (spec_.kind == RowKind::length) {
        Metres length = Metres::of(0.0);
        if (!rows::take(value, length)) return plain;
        return number_shown(feet ? std::round(length.value() / metres_in_a_foot * 100.0) / 100.0 : length.value());
    }
    const QString number = has_unit(spec_.kind) ? plain.section(QLatin1Char(' '), 0, 0) : plain;
    const auto figure = spec_.kind == RowKind::day ? std::nullopt : number_in(number);
    if (!figure) return number;
    return number_shown(spec_.kind == RowKind::temperature && feet ? std::round((*figure * 1.8 + 32.0) * 10.0) / 10.0
                                                                   : *figure);
}

void RowEdit::show_value(const RowValues& values) {
    filling_ = true;
    const auto found = values.find(spec_.row);
    const std::string value = found == values.end() ? std::string() : found->second;
    if (choice_ != nullptr) choice_->show_item(std::max(0, choice_->findData(QString::fromStdString(value))));
    for (QCheckBox* box : boxes_)
        box->setChecked(QString::fromStdString(value).split(QLatin1Char(' ')).contains(box->property("word").toString()));
    if (field_ != nullptr) {
        const QString text = value == not_known ? QString() : text_of_value(value);
        // what is being typed, or could not be read, is not taken from the hand
        if (text != shown_ || (!field_->hasFocus() && wrong_->isHidden())) {
            field_->setText(text);
            shown_ = text;
            wrong_->hide();
        }
        if (unknown_ != nullptr) unknown_->setChecked(value == not_known);
        if (unit_ != nullptr && !value.empty())
            unit_->show_item(
                std::max(0, unit_->findData(QString::fromStdString(value).section(QLatin1Char(' '), 1, 1))));
        if (per_ != nullptr && !value.empty())
            per_->show_item(std::max(0, per_->findData(QString::fromStdString(value).section(QLatin1Char(' '), -1))));
    }
    if (suffix_ != nullptr) {
        const bool feet = choices_.units() == LengthUnits::feet_and_inches;
        suffix_->setText(spec_.kind == RowKind::length ? (feet ? tr("ft") : tr("m")) : (feet ? tr("°F") : tr("°C")));
    }
    filling_ = false;
}

std::optional<std::string> RowEdit::value_typed() {
    const QString text = field_->text().trimmed();
    if (text.isEmpty()) return std::string();
    if (spec_.kind == RowKind::text) return rows::text_of(text.toStdString());
    if (spec_.kind == RowKind::day) return text.toStdString();
    const auto number = number_in(text);
    if (!number) return std::nullopt;
    const bool feet = choices_.units() == LengthUnits::feet_and_inches;
    switch (spec_.kind) {
        case RowKind::count: return text.toStdString();
        case RowKind::length: return rows::text_of(Metres::of(feet ? *number * metres_in_a_foot : *number));
        case RowKind::temperature: return rows::text_of(feet ? (*number - 32.0) / 1.8 : *number);
        case RowKind::amount: return rows::text_of(*number) + " " + unit_->currentData().toString().toStdString();
        case RowKind::rate:
            return rows::text_of(*number) + " " + unit_->currentData().toString().toStdString() + " per " +
                   per_->currentData().toString().toStdString();
        default: break;
    }
    return rows::text_of(*number);
}

void RowEdit::commit() {
    const auto value = value_typed();
    if (value) {
        commit_value(*value);
        return;
    }
    wrong_->setText(tr("“%1” is not a number.").arg(field_->text()));
    wrong_->show();
}

void RowEdit::commit_value(const std::string& value) {
    std::vector<WorkRow> rows{{spec_.row, value}};
    if (spec_.stamped) rows.push_back({spec_.row + ".at", value.empty() ? std::string() : rows::text_of(work_.now())});
    const auto wrong = work_.edit_rows(rows, spec_.name);
    wrong_->setText(wrong.value_or(QString()));
    wrong_->setVisible(wrong.has_value());
    if (!wrong && field_ != nullptr) shown_ = field_->text();
    show_value(row_values(work_.work()));
    Q_EMIT entered();
}

void RowEdit::enter(const QString& text) {
    if (field_ == nullptr || text == QLatin1String(not_known)) {
        commit_value(text.toStdString());
        return;
    }
    field_->setText(text);
    commit();
}

QString RowEdit::shown_text() const {
    if (choice_ != nullptr) return choice_->currentText();
    return field_ != nullptr ? field_->text() : QString();
}

}  // namespace plugside
