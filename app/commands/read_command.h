// Files added to the field, or its files read anew by other choices: one act. Undone the field is as it was before, with the files
// that it was read from and what was told of them.
//
// The field as it was stays whole in memory: what a reading changed of it cannot be told from the files any more.
// Guarantee: undo after redo leaves survey, findings of reading, files and choices as they were; the revision grows with each.
#pragma once

#include <QUndoCommand>
#include <filesystem>
#include <functional>
#include <memory>
#include <vector>

#include "app/reading/told_reading.h"

namespace plugside {

// A field with where it comes from.
struct ReadField {
    std::shared_ptr<const FieldSurvey> field;
    std::vector<std::filesystem::path> files;
    std::vector<std::vector<std::filesystem::path>> steps;  // the files that were read together, in the order of reading
    FileChoices told;
};

class ReadCommand : public QUndoCommand {
public:
    using Apply = std::function<void(const ReadField&)>;
    ReadCommand(ReadField before, ReadField after, const QString& words, Apply apply);

    void undo() override { apply_(before_); }
    void redo() override { apply_(after_); }

private:
    ReadField before_;
    ReadField after_;
    Apply apply_;
};

}  // namespace plugside
