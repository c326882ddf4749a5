#include "app/commands/decide_command.h"

#include <QCoreApplication>
#include <cassert>
#include <utility>

#include "core/sets/set_choices.h"

namespace plugside {

QString decision_words(SetChoice choice, const QString& set_name) {
    const auto words = [](const char* text) { return QCoreApplication::translate("History", text); };
    switch (choice) {
        case SetChoice::kept: return words(QT_TRANSLATE_NOOP("History", "keep %1")).arg(set_name);
        case SetChoice::dropped: return words(QT_TRANSLATE_NOOP("History", "drop %1")).arg(set_name);
        case SetChoice::moved: return words(QT_TRANSLATE_NOOP("History", "move %1")).arg(set_name);
        case SetChoice::proposed: break;
    }
    return words(QT_TRANSLATE_NOOP("History", "%1 undecided")).arg(set_name);
}

DecideCommand::DecideCommand(const Survey& survey, const std::vector<SetDecision>& decisions, const QString& words,
                             Apply apply)
    : QUndoCommand(words), apply_(std::move(apply)) {
    assert(!decisions.empty());
    Survey after;
    after.decisions = survey.decisions;
    decide_all(after, decisions);
    change_ = change_between(survey.decisions, after.decisions);
    on_ = decisions.front().probe;
}

}  // namespace plugside
