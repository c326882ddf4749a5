// What the slip of the Sets step says of a set's method, and of what speaks against it there.
#include <QScrollBar>
#include <algorithm>

#include "app/stages/caution_view.h"
#include "app/stages/methods_view.h"
#include "app/stages/sets_page.h"
#include "app/window/look_sheet.h"
#include "core/sets/cautions.h"

namespace plugside {

namespace {

// A caution with what decided it at this set.
struct Said {
    std::string caution;
    QString because;
    friend bool operator==(const Said&, const Said&) = default;
};

std::vector<Said> said_of(const JudgedSet& judged) {
    std::vector<Said> said;
    for (const Judgement* judgement : judged.shown()) {
        const QString because = QString::fromStdString(judgement->because);
        if (judgement->signed_off)
            said.push_back(
                {judgement->caution,
                 SetsPage::tr("%1 Signed by %2.").arg(because, QString::fromStdString(judgement->signed_off->name))});
        else
            said.push_back({judgement->caution, because});
    }
    return said;
}

// Without a method what holds for every method; whatever the plan found, the last word is never its own.
std::vector<Said> said_of(const SetPoint& set) {
    std::vector<Said> said;
    for (const std::string& id : set.cautions) said.push_back({id, {}});
    if (std::find(set.cautions.begin(), set.cautions.end(), "label-decides") == set.cautions.end())
        said.push_back({"label-decides", {}});
    return said;
}

}  // namespace

void SetsPage::show_method(std::size_t index) {
    if (shown_set_ != choices_.set()) method_->give_up();
    if (method_->waits()) return;
    const WorkOrder& work = work_.work();
    const ProbeKey& probe = session_.plan()->probes.at(session_.plan()->sets[index].probe).key;
    const auto of_field = find_method(work, work.method);
    method_->clear();
    method_->addItem(
        of_field ? tr("as the field: %1").arg(QString::fromStdString(of_field->name)) : tr("no method chosen for the field"),
        QString());
    for (const Method& method : methods_to_choose(work))
        if (method.id != work.method)
            method_->addItem(QString::fromStdString(method.name), QString::fromStdString(method.id));
    const std::string chosen = method_at(work, probe);
    method_->setCurrentIndex(chosen == work.method ? 0 : std::max(0, method_->findData(QString::fromStdString(chosen))));
}

void SetsPage::choose_method(int at) {
    const auto set = at_hand();
    if (!set) return;
    WorkOrder order = work_.work();
    plugside::choose_method(order, session_.plan()->probes.at(session_.plan()->sets[*set].probe).key,
                            method_->itemData(at).toString().toStdString());
    work_.edit(std::move(order), tr("method of set %1").arg(*set + 1));
}

void SetsPage::show_cautions(std::size_t index) {
    const SetPoint& set = session_.plan()->sets[index];
    const JudgedSet* judged = work_.judged_set(index);
    const bool by_method = judged != nullptr && !judged->method.empty();
    const std::vector<Said> said = by_method ? said_of(*judged) : said_of(set);
    std::vector<std::string> shown;
    for (const Said& one : said) shown.push_back(one.caution + "\n" + one.because.toStdString());
    if (shown == shown_cautions_ && shown_style_ == choices_.style()) return;
    shown_cautions_ = shown;
    shown_style_ = choices_.style();
    mind_->setText(counted(static_cast<long long>(said.size()), tr("%1 thing to mind here"), tr("%1 things to mind here")));
    while (QLayoutItem* item = cautions_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    for (const Said& one : said)
        if (const Caution* caution = find_caution(one.caution)) {
            cautions_->addWidget(new CautionView(*caution, choices_.style(), words_->widget()));
            if (one.because.isEmpty()) continue;
            auto* because = label_in_role("quiet", words_->widget());
            because->setText(one.because);
            cautions_->addWidget(because);
        }
}

}  // namespace plugside
