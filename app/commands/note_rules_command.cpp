#include "app/commands/note_rules_command.h"

#include <utility>

namespace plugside {

NoteRulesCommand::NoteRulesCommand(std::vector<NoteRule> before, std::vector<NoteRule> after, const QString& words,
                                   Apply apply)
    : QUndoCommand(words), before_(std::move(before)), after_(std::move(after)), apply_(std::move(apply)) {}

void NoteRulesCommand::undo() { apply_(before_); }

void NoteRulesCommand::redo() { apply_(after_); }

}  // namespace plugside
