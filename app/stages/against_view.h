// What speaks against the sets that stand, grouped by caution, the weightiest first: which sets, because of what, what is asked.
//
// A hold-back that holds, or is not known, is signed with name and reason, for the whole field, the set at hand or its animal's; a stop cannot
// be signed. The sets of a caution are shown on the map, and with a rule of geometry the part of the system that is the reason.
#pragma once

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>
#include <QWidget>
#include <vector>

#include "app/stages/work_account.h"

namespace plugside {

// What a signature covers, of the sets that the caution concerns.
enum class SignedFor { field, set, animal };

class AgainstView : public QWidget {
    Q_OBJECT

public:
    AgainstView(FieldSession& session, Choices& choices, WorkAccount& work, QWidget* parent = nullptr);
    [[nodiscard]] const std::vector<CautionGroup>& groups() const { return groups_; }
    // Picks the group's first set, or the next one when it is shown already, and shows its reasons on the map.
    void show_on_map(const std::string& caution);
    // A sentence where it is refused.
    std::optional<QString> sign(const std::string& caution, const QString& name, const QString& reason,
                                SignedFor what = SignedFor::field);
    // That of one time; nothing: all of the caution.
    void take_signature_back(const std::string& caution, std::optional<UtcTime> at = std::nullopt);
    // "Signed by ...", a line each.
    [[nodiscard]] QStringList signatures(const std::string& caution) const;
    [[nodiscard]] QString head() const { return head_->text(); }
    // Whether its part of the page is the one at hand; its list is made only then.
    void look(bool now);
    void take_focus();

Q_SIGNALS:
    void reasons_shown(std::shared_ptr<const std::vector<plugside::ReachReason>> reasons);

private:
    void refresh();
    void build();
    void add_group(const CautionGroup& group);
    void add_signing(const CautionGroup& group, QVBoxLayout* column, QWidget* parent);
    void add_sign_form(const CautionGroup& group, QVBoxLayout* column, QWidget* parent);
    // One signature as it was given: by one person at one time, for the field or some of its sets.
    struct Signature {
        const SignedOverride* entry;
        std::vector<std::size_t> sets;  // of the plan; none: the whole field
    };
    [[nodiscard]] std::vector<Signature> signatures_of(const CautionGroup& group) const;
    [[nodiscard]] QString words_of(const Signature& signature) const;
    [[nodiscard]] std::vector<std::size_t> sets_signed_for(const CautionGroup& group, SignedFor what) const;
    [[nodiscard]] QString sets_words(const std::vector<std::size_t>& sets) const;
    [[nodiscard]] const CautionGroup* group_of(const std::string& caution) const;

    FieldSession& session_;
    Choices& choices_;
    WorkAccount& work_;
    QLabel* head_;
    QVBoxLayout* list_;
    std::vector<CautionGroup> groups_;
    std::shared_ptr<const WorkJudged> shown_of_;
    bool looked_at_now_ = false;
    bool built_ = false;  // the list, which is not made before it is seen
    QString signer_;         // typed before
    std::string looked_at_;  // caution whose sets are shown
    std::size_t looked_set_ = 0;
};

}  // namespace plugside
