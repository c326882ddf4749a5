// How the slip of the Sets step is laid out. The words scroll where they need more room, the keys never do.
#include <QHBoxLayout>
#include <QScrollBar>

#include "app/stages/mound_facts.h"
#include "app/stages/page_scroll.h"
#include "app/stages/row_edit.h"
#include "app/stages/rows_layout.h"
#include "app/stages/sets_page.h"
#include "app/window/dresser.h"
#include "app/window/look_sheet.h"

namespace plugside {

SetsPage::SetsPage(FieldSession& session, Choices& choices, WorkAccount& work, TourAccount& tours, QWidget* parent)
    : QWidget(parent), session_(session), choices_(choices), work_(work), account_(new SetAccount(session, this)) {
    dress_by_parts(*this);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    build_head(column);
    pages_ = new QStackedWidget(this);
    dress_by_parts(*pages_);
    pages_->addWidget(build_one_set());
    show_only_ = new ShowOnly(*account_, pages_);
    several_ = new Several(*account_, pages_);
    tours_ = new ToursView(session_, choices_, work_, tours, pages_);
    for (QWidget* panel : std::initializer_list<QWidget*>{show_only_, several_}) {
        auto* scroll = new QScrollArea(pages_);
        scroll->setWidgetResizable(true);
        scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
        scroll->setFocusPolicy(Qt::NoFocus);
        scroll->setWidget(panel);
        pages_->addWidget(scroll);
    }
    pages_->addWidget(new PageScroll(tours_, pages_));
    column->addWidget(pages_, 1);
    reached_ = label_in_role("quiet", this);
    column->addWidget(reached_);
    build_keys(column);
    bind();
    bind_move();
    refresh();
}

void SetsPage::build_head(QVBoxLayout* column) {
    auto* head = new QHBoxLayout;
    title_ = label_in_role("title", this);
    count_ = label_in_role("quiet", this);
    title_->setWordWrap(false);
    count_->setWordWrap(false);
    head->addWidget(title_);
    head->addStretch(1);
    head->addWidget(count_, 0, Qt::AlignBottom);
    column->addLayout(head);
    place_ = label_in_role("quiet", this);
    column->addWidget(place_);
    auto* many = RowsLayout::natural(6);
    shown_key_ = new QPushButton(this);
    several_key_ = new QPushButton(tr("several (T)"), this);
    tours_key_ = new QPushButton(tr("walking order (R)"), this);
    for (QPushButton* key : {shown_key_, several_key_, tours_key_}) {
        key->setProperty("way", true);
        key->setCheckable(true);
        many->addWidget(key);
    }
    shown_key_->setAccessibleName(tr("which sets are gone through"));
    several_key_->setAccessibleName(tr("decide on several sets at once"));
    tours_key_->setAccessibleName(tr("the order in which sets are walked to"));
    tours_key_->setToolTip(tr("the order in which sets are walked to (R)"));
    several_key_->setToolTip(tr("decide on several sets at once (T)"));
    connect(shown_key_, &QPushButton::clicked, this, &SetsPage::open_show_only);
    connect(several_key_, &QPushButton::clicked, this, &SetsPage::open_several);
    connect(tours_key_, &QPushButton::clicked, this, &SetsPage::open_tours);
    column->addLayout(many);
    hidden_ = label_in_role("quiet", this);
    column->addWidget(hidden_);
}

QWidget* SetsPage::build_one_set() {
    auto* one = new QWidget(pages_);
    auto* column = new QVBoxLayout(one);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(6);
    strip_ = new SetStrip(choices_, one);
    close_up_ = new CloseUp(choices_, one);
    readings_ = new SetReadings(choices_, one);
    readings_->hide();
    column->addWidget(strip_);
    column->addWidget(close_up_, 2);
    column->addWidget(readings_);
    column->addWidget(build_words(), 3);
    return one;
}

QWidget* SetsPage::build_words() {
    words_ = new QScrollArea(this);
    words_->setWidgetResizable(true);
    words_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    words_->setFocusPolicy(Qt::StrongFocus);
    words_->setAccessibleName(tr("what to do, the chance, and what to mind"));
    const auto fit = [this] { words_->setMinimumHeight(choices_.style().letters(90)); };
    connect(&choices_, &Choices::theme_changed, words_, fit);
    fit();
    take_what_is_left(*words_);
    auto* inside = new QWidget(words_);
    auto* column = new QVBoxLayout(inside);
    column->setContentsMargins(0, 0, 4, 0);
    column->setSpacing(7);
    column->addWidget(new MoundFacts(session_, choices_, inside));
    instruction_ = label_in_role("body", inside);
    column->addWidget(instruction_);
    auto* row = new QHBoxLayout;
    row->setSpacing(14);
    chance_ = label_in_role("chance", inside);
    chance_->setWordWrap(false);
    chance_words_ = label_in_role("quiet", inside);
    row->addWidget(chance_);
    row->addWidget(chance_words_, 1);
    column->addLayout(row);
    decided_ = label_in_role("decided", inside);
    column->addWidget(decided_);
    worth_ = label_in_role("quiet", inside);
    column->addWidget(worth_);
    method_ = page_choice(tr("the method of this set"), inside);
    method_->setObjectName(QStringLiteral("method_of_set"));
    mind_ = label_in_role("quiet", inside);
    cautions_ = new QVBoxLayout;
    cautions_->setSpacing(6);
    reasons_ = new SetReasons(session_, inside);
    column->addWidget(reasons_);
    column->addWidget(method_);
    column->addWidget(mind_);
    column->addLayout(cautions_);
    column->addStretch(1);
    words_->setWidget(inside);
    return words_;
}

void SetsPage::build_keys(QVBoxLayout* column) {
    auto* keys = RowsLayout::even(8, 3);
    keep_ = new KeyButton(tr("keep"), QStringLiteral("K"), choices_, this);
    move_ = new KeyButton(tr("move"), QStringLiteral("M"), choices_, this);
    drop_ = new KeyButton(tr("drop"), QStringLiteral("D"), choices_, this);
    for (KeyButton* key : {keep_, move_, drop_}) {
        keys->addWidget(key);
        keys_.push_back(key);
    }
    column->addLayout(keys);
    connect(keep_, &QPushButton::clicked, this, &SetsPage::keep);
    connect(move_, &QPushButton::clicked, this, &SetsPage::move);
    connect(drop_, &QPushButton::clicked, this, &SetsPage::drop);
    auto* ways = RowsLayout::natural(6);
    struct Way {
        QString text;
        QString name;
        QString keys;
        void (SetsPage::*go)();
    };
    for (const Way& way :
         {Way{tr("‹"), tr("previous set"), tr("Page up"), &SetsPage::previous},
          Way{tr("›"), tr("next set"), tr("Page down"), &SetsPage::next},
          Way{tr("worthiest  N"), tr("the undecided set that is worth most"), tr("N"), &SetsPage::next_undecided},
          Way{tr("undecide  U"), tr("take the decision back"), tr("U"), &SetsPage::undecide}}) {
        auto* button = new QPushButton(way.text, this);
        button->setProperty("way", true);
        button->setAccessibleName(way.name);
        button->setToolTip(tr("%1 (%2)").arg(way.name, way.keys));
        if (way.text.size() == 1) button->setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
        ways->addWidget(button);
        keys_.push_back(button);
        connect(button, &QPushButton::clicked, this, way.go);
    }
    column->addLayout(ways);
}

void SetsPage::bind() {
    connect(&choices_, &Choices::picks_changed, this, [this] {
        refresh();
        if (choices_.mound()) words_->verticalScrollBar()->setValue(0);
    });
    connect(&choices_, &Choices::units_changed, this, &SetsPage::refresh);
    connect(&choices_, &Choices::theme_changed, this, &SetsPage::refresh);
    connect(&session_, &FieldSession::survey_edited, this, &SetsPage::refresh);
    connect(&session_, &FieldSession::field_replaced, this, [this] {
        open(Panel::one_set);
        refresh();
    });
    connect(&session_, &FieldSession::plan_changed, this, &SetsPage::settle_on_a_set);
    connect(&session_, &FieldSession::decided, this, [this](const ProbeKey& probe) { choices_.pick_set(probe); });
    connect(&work_, &WorkAccount::changed, this, [this] {
        if (const auto set = at_hand()) {
            show_method(*set);
            show_cautions(*set);
        }
    });
    connect(method_, &PageChoice::settled, this, &SetsPage::choose_method);
    connect(account_, &SetAccount::counted, this, &SetsPage::show_reached);
    connect(account_, &SetAccount::filter_changed, this, [this] {
        // what is gone through begins with one of them
        if (const auto set = at_hand(); set && !account_->shows(*set))
            if (const auto first = account_->next_undecided()) pick(*first);
        refresh();
    });
    connect(several_, &Several::scope_changed, this, &SetsPage::show_many);
    connect(tours_, &ToursView::set_chosen, this, &SetsPage::pick);
    connect(strip_, &SetStrip::chosen, this, &SetsPage::pick);
    connect(reasons_, &SetReasons::folded, this, [this] {
        // once the words have their new height
        QMetaObject::invokeMethod(
            this, [this] { words_->verticalScrollBar()->setValue(reasons_->unfolded() ? reasons_->y() : 0); },
            Qt::QueuedConnection);
    });
    connect(reasons_, &SetReasons::taken, this, [this](const ProbeKey& instead) {
        const auto set = at_hand();
        if (!set || moving()) return;
        const auto goes_on = account_->next_undecided(*set);
        session_.decide_on_all({{session_.plan()->probes.at(session_.plan()->sets[*set].probe).key, SetChoice::dropped, {}},
                                {instead, SetChoice::kept, {}}},
                               tr("another place for set %1").arg(*set + 1));
        if (goes_on) pick(*goes_on);
    });
}

void SetsPage::bind_move() {
    connect(close_up_, &CloseUp::move_begun, this, [this] {
        const auto set = at_hand();
        if (!set) return;
        moving_set_ = choices_.set();
        in_hand_ = ladder();
        by_hand_.emplace(*in_hand_);
        refresh();
        Q_EMIT ladder_changed();
    });
    connect(close_up_, &CloseUp::shifted, this, [this] {
        if (by_hand_) in_hand_ = by_hand_->at(close_up_->place());
        show_place();
        Q_EMIT ladder_changed();
    });
    const auto let_go = [this] {
        by_hand_.reset();
        in_hand_.reset();
        words_->setFocus();  // arrow keys then scroll the words
    };
    connect(close_up_, &CloseUp::move_accepted, this, [this, let_go](const LadderPlace& place) {
        let_go();
        if (const auto set = at_hand()) {
            session_.decide_on(session_.plan()->probes.at(session_.plan()->sets[*set].probe).key, SetChoice::moved, place);
            next_undecided();
        }
        refresh();
        Q_EMIT ladder_changed();
    });
    connect(close_up_, &CloseUp::move_given_up, this, [this, let_go] {
        let_go();
        refresh();
        Q_EMIT ladder_changed();
    });
    connect(close_up_, &CloseUp::reading_begun, readings_, &SetReadings::begin_with);
    connect(readings_, &SetReadings::typed, close_up_, &CloseUp::lay);
    connect(readings_, &SetReadings::accepted, close_up_, &CloseUp::accept_move);
}

}  // namespace plugside
