#include "app/commands/read_command.h"

#include <utility>

namespace plugside {

ReadCommand::ReadCommand(ReadField before, ReadField after, const QString& words, Apply apply)
    : QUndoCommand(words), before_(std::move(before)), after_(std::move(after)), apply_(std::move(apply)) {}

}  // namespace plugside
