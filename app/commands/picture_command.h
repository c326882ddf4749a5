// What is said of a picture under the ground, kept as it was before and after: its pairs and its place, or that it is there at all.
//
// Steps of one kind that follow each other (`step` equal and not 0: the arrows' nudges of one pair) are one act.
#pragma once

#include <QUndoCommand>
#include <functional>
#include <optional>

#include "geo/store/project.h"

namespace plugside {

class PictureCommand : public QUndoCommand {
public:
    // Nothing: the picture is taken away.
    using State = std::optional<ProjectPicture>;
    using Apply = std::function<void(const std::filesystem::path& file, const State& to)>;
    PictureCommand(std::filesystem::path file, State before, State after, const QString& words, Apply apply, int step = 0);

    void undo() override { apply_(file_, before_); }
    void redo() override { apply_(file_, after_); }
    [[nodiscard]] int id() const override;
    bool mergeWith(const QUndoCommand* later) override;

private:
    std::filesystem::path file_;
    State before_;
    State after_;
    Apply apply_;
    int step_;
};

}  // namespace plugside
