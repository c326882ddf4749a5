#include "app/commands/decide_command.h"

#include <QCoreApplication>
#include <map>
#include <utility>

namespace plugside {

namespace {

QString history_text(SetChoice choice, const QString& set_name) {
    const auto words = [](const char* text) { return QCoreApplication::translate("History", text); };
    switch (choice) {
        case SetChoice::kept: return words(QT_TRANSLATE_NOOP("History", "keep %1")).arg(set_name);
        case SetChoice::dropped: return words(QT_TRANSLATE_NOOP("History", "drop %1")).arg(set_name);
        case SetChoice::moved: return words(QT_TRANSLATE_NOOP("History", "move %1")).arg(set_name);
        case SetChoice::proposed: break;
    }
    return words(QT_TRANSLATE_NOOP("History", "%1 undecided")).arg(set_name);
}

}  // namespace

DecideCommand::DecideCommand(std::optional<SetDecision> before, SetDecision after, const QString& set_name, Apply apply)
    : QUndoCommand(history_text(after.choice, set_name)),
      before_(before.value_or(SetDecision{after.probe, SetChoice::proposed, std::nullopt})),
      after_(std::move(after)),
      apply_(std::move(apply)) {}

void DecideCommand::undo() { apply_(before_); }

void DecideCommand::redo() { apply_(after_); }

DecideOnAllCommand::DecideOnAllCommand(const Survey& survey, std::vector<SetDecision> after, const QString& words, Apply apply)
    : QUndoCommand(words), after_(std::move(after)), apply_(std::move(apply)) {
    std::map<ProbeKey, const SetDecision*> decided;
    for (const SetDecision& decision : survey.decisions) decided[decision.probe] = &decision;
    for (const SetDecision& decision : after_) {
        const auto found = decided.find(decision.probe);
        before_.push_back(found == decided.end() ? SetDecision{decision.probe, SetChoice::proposed, std::nullopt}
                                                 : *found->second);
    }
}

void DecideOnAllCommand::undo() { apply_(before_); }

void DecideOnAllCommand::redo() { apply_(after_); }

}  // namespace plugside
