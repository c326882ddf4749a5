#include "app/window/look_sheet.h"

namespace plugside {

namespace {

// Names in braces are replaced by the style's values.
constexpr const char* sheet_pattern = R"(
* { font-size: {text}px; color: {ink}; }
QDialog { background: {paper}; }
QWidget#top_bar { background: {paper}; border-bottom: 1px solid {hairline}; }
QWidget#rail { background: {rail}; border-right: 1px solid {hairline}; }
QWidget#slip_side { background: {paper}; border-left: 1px solid {hairline}; }
QFrame#slip { background: {slip}; border: 1px solid {hairline}; border-radius: 9px; }
QFrame#slip QWidget { background: transparent; }
QFrame#notice { background: {slip}; border: 1px solid {ink}; border-radius: 7px; }
QFrame#notice[weight="stop"] { background: {stop_ground}; border: 1px solid {stop_ink}; }
QFrame#walk_through { background: {slip}; border: 2px solid {act}; border-radius: 9px; }
QFrame#working { background: {slip}; border: 1px solid {act}; border-radius: 8px; }
QFrame#keys { background: {slip}; border: 2px solid {ink}; border-radius: 10px; }
QFrame#keys QWidget { background: transparent; }
QFrame#reading_sheet { background: {slip}; border: none; border-left: 1px solid {hairline}; }
QFrame#reading_sheet QScrollArea > QWidget, QFrame#reading_sheet QScrollArea > QWidget > QWidget { background: transparent; }
QDialog QScrollArea > QWidget, QDialog QScrollArea > QWidget > QWidget { background: transparent; }
QFrame#reading_sheet QTableView { gridline-color: {hairline}; }
QLabel { background: transparent; border: none; }
QFrame#caution QLabel { color: {caution_ink}; }
QFrame#caution[weight="stop"] QLabel { color: {stop_ink}; }
QLabel[role="title"] { font-size: {title}px; font-weight: 700; }
QLabel[role="chance"] { font-size: {chance}px; font-weight: 700; }
QLabel[role="heading"] { font-weight: 700; }
QLabel[role="body"] { font-size: {body}px; }
QLabel[role="small"] { font-size: {tiny}px; }
QLabel[role="quiet"] { color: {quiet_ink}; font-size: {small}px; }
QLabel[role="decided"] { color: {act}; font-weight: 700; }
QLabel[role="stop"] { color: {stop_ink}; font-weight: 700; }
QPushButton, QToolButton { background: {slip}; border: 1px solid {edge}; border-radius: 13px;
    padding: 4px 13px; min-height: {line}px; }
QPushButton:hover, QToolButton:hover { background: {rail}; }
QPushButton:focus, QToolButton:focus { border: 2px solid {act}; padding: 3px 12px; outline: none; }
QPushButton[tall="true"] { min-height: {tall}px; max-height: {tall}px; padding: 0; border: none; }
QPushButton[way="true"] { padding: 4px 7px; }
QPushButton[way="true"]:focus { padding: 3px 6px; }
QPushButton[place="true"] { border-radius: 8px; padding: 4px 9px; text-align: left; }
QPushButton[place="true"]:focus { padding: 3px 8px; }
QPushButton::menu-indicator { subcontrol-origin: border; subcontrol-position: right center; right: 9px; width: 8px; }
QPushButton[menu="true"] { padding-right: 24px; }
QFrame#slip QPushButton[way="true"]:checked { background: {ink}; color: {slip}; border-color: {ink}; }
QFrame#slip QPushButton[way="true"]:checked:focus { border: 2px solid {act}; }
QFrame#slip QPushButton#main_button { background: {ink}; }
QFrame#slip QPushButton#main_button:focus { background: {act}; color: {on_act}; }
QDialog QComboBox, QDialog QAbstractSpinBox, QFrame#slip QComboBox, QFrame#slip QAbstractSpinBox {
    background: {slip}; border: 1px solid {edge}; border-radius: 5px;
    padding: 3px 6px; min-height: {line}px; }
QDialog QComboBox:focus, QDialog QAbstractSpinBox:focus, QFrame#slip QComboBox:focus,
QFrame#slip QAbstractSpinBox:focus { border: 2px solid {act};
    padding: 2px 5px; }
QDialog QComboBox:disabled { color: {faint}; border-color: {hairline}; }
QComboBox QAbstractItemView { background: {slip}; color: {ink}; border: 1px solid {edge}; border-radius: 0; }
QComboBox QAbstractItemView::item { min-height: {cell}px; }
QPushButton:disabled, QToolButton:disabled { color: {faint}; border-color: {hairline}; }
QPushButton#main_button { background: {ink}; color: {slip}; border-color: {ink}; font-weight: 700; }
QPushButton#main_button * { color: {slip}; }
QPushButton#main_button:focus { border: 2px solid {act}; }
QPushButton#main_button:hover { background: {act}; border-color: {act}; color: {on_act}; }
QPushButton#main_button:disabled { background: {hairline}; border-color: {hairline}; color: {quiet_ink}; }
QToolButton[map_button="true"] { border-radius: 8px; padding: 2px 7px; min-height: {cell}px; font-size: {small}px; }
QToolButton[map_button="true"]:focus { padding: 1px 6px; }
QToolButton[map_button="true"]:checked { background: {ink}; color: {slip}; }
QToolButton::menu-indicator { image: none; }
QMenu { background: {slip}; border: 1px solid {edge}; padding: 5px; }
QMenu::item { padding: 5px 18px 5px 26px; border-radius: 4px; }
QMenu::item:selected { background: {rail}; }
QLineEdit, QPlainTextEdit { background: {slip}; border: 1px solid {edge}; border-radius: 5px; padding: 5px;
    selection-background-color: {act}; selection-color: {on_act}; }
QLineEdit:focus, QPlainTextEdit:focus { border: 2px solid {act}; padding: 4px; }
QScrollArea { border: 2px solid transparent; border-radius: 5px; background: transparent; }
QScrollArea:focus { border: 2px solid {act}; }
QScrollArea[page="true"] { border: none; }
QAbstractItemView { background: transparent; border: 1px solid {hairline}; border-radius: 6px;
    alternate-background-color: transparent; outline: none; }
QAbstractItemView:focus { border: 2px solid {act}; }
QAbstractItemView::item { padding: 3px 2px; border: none; }
QAbstractItemView::item:selected { background: {picked}; color: {ink}; }
QAbstractItemView::indicator { width: 13px; height: 13px; border: 1px solid {edge}; border-radius: 3px; background: {slip}; }
QAbstractItemView::indicator:checked { background: {act}; border: 1px solid {act}; }
QAbstractItemView::indicator:disabled { background: {hairline}; }
QHeaderView::section { background: transparent; border: none; border-bottom: 1px solid {hairline};
    color: {quiet_ink}; font-size: {small}px; padding: 3px 2px; }
QHeaderView { background: transparent; border: none; }
QTableCornerButton::section { background: transparent; border: none; }
QScrollBar:vertical { background: transparent; width: 10px; margin: 0; }
QScrollBar::handle:vertical { background: {edge}; border-radius: 4px; min-height: 28px; margin: 1px; }
QScrollBar::handle:vertical:hover { background: {quiet_ink}; }
QScrollBar:horizontal { background: transparent; height: 10px; margin: 0; }
QScrollBar::handle:horizontal { background: {edge}; border-radius: 4px; min-width: 28px; margin: 1px; }
QScrollBar::handle:horizontal:hover { background: {quiet_ink}; }
QAbstractScrollArea::corner { background: transparent; border: none; }
QScrollBar::add-line, QScrollBar::sub-line { height: 0; width: 0; }
QScrollBar::add-page, QScrollBar::sub-page { background: transparent; }
QProgressBar { background: {rail}; border: none; border-radius: 3px; max-height: 6px; min-height: 6px; }
QProgressBar::chunk { background: {act}; border-radius: 3px; }
QCheckBox, QRadioButton { spacing: 8px; background: transparent; }
QDialog { border: 1px solid {quiet_ink}; }
QCheckBox::indicator { width: {box}px; height: {box}px; border: 1px solid {edge}; border-radius: 3px; background: {slip}; }
QCheckBox::indicator:checked { background: {act}; border: 1px solid {act}; }
QCheckBox::indicator:focus { border: 2px solid {ink}; }
QCheckBox:focus, QRadioButton:focus { color: {act}; outline: none; }
QRadioButton::indicator { width: 13px; height: 13px; border: 1px solid {edge}; border-radius: 7px; background: {slip}; }
QRadioButton::indicator:checked { border: 4px solid {act}; width: 7px; height: 7px; }
QRadioButton::indicator:focus { border-color: {ink}; }
QToolTip { background: {slip}; color: {ink}; border: 1px solid {edge}; padding: 4px; }
)";

}  // namespace

QString look_sheet(const MapStyle& style) {
    QString sheet = QString::fromUtf8(sheet_pattern);
    const auto set = [&sheet](const char* name, const QString& value) {
        sheet.replace(QStringLiteral("{%1}").arg(QLatin1String(name)), value);
    };
    const auto colour = [&set](const char* name, const QColor& value) { set(name, value.name()); };
    colour("paper", style.paper);
    colour("rail", style.rail);
    colour("slip", style.slip);
    colour("ink", style.ink);
    colour("quiet_ink", style.quiet_ink);
    colour("hairline", style.hairline);
    colour("edge", style.edge());
    colour("faint", style.faint());
    colour("act", style.act);
    colour("on_act", style.on_act);
    colour("picked", style.picked());
    colour("caution_ground", style.caution_ground);
    colour("caution_ink", style.caution_ink);
    colour("stop_ground", style.stop_ground);
    colour("stop_ink", style.stop_ink);
    set("tall", QString::number(style.letters(48)));
    set("line", QString::number(style.letters(18)));
    set("cell", QString::number(style.letters(22)));
    set("box", QString::number(style.letters(15)));
    set("dot", QString::number(style.letters(13)));
    set("text", QString::number(style.text()));
    set("small", QString::number(style.text(-1)));
    set("tiny", QString::number(style.text(-2)));
    set("body", QString::number(style.text(1)));
    set("title", QString::number(style.text(5)));
    set("chance", QString::number(style.text(15)));
    return sheet;
}

QLabel* label_in_role(const char* role, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setProperty("role", QString::fromLatin1(role));
    label->setWordWrap(true);
    label->setTextFormat(Qt::PlainText);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

QString counted(long long count, const QString& one, const QString& many) {
    QString words = count == 1 ? one : many;
    return words.replace(QStringLiteral("%1"), QString::number(count));
}

}  // namespace plugside
