#include "app/commands/picture_command.h"

#include <utility>

namespace plugside {

namespace {

constexpr int of_pictures = 0x50494354;  // no other kind of command merges

}  // namespace

PictureCommand::PictureCommand(std::filesystem::path file, State before, State after, const QString& words, Apply apply,
                               int step)
    : QUndoCommand(words),
      file_(std::move(file)),
      before_(std::move(before)),
      after_(std::move(after)),
      apply_(std::move(apply)),
      step_(step) {}

int PictureCommand::id() const { return step_ == 0 ? -1 : of_pictures; }

bool PictureCommand::mergeWith(const QUndoCommand* later) {
    const auto* other = dynamic_cast<const PictureCommand*>(later);
    if (other == nullptr || other->step_ != step_ || other->file_ != file_ || other->before_ != after_) return false;
    after_ = other->after_;
    return true;
}

}  // namespace plugside
