// The sample field that the program carries within itself, so that it is there however the program was installed: the walk, the ground
// and the picture from above of sample-projects/creek-meadow, laid out in a folder of their own while they are looked at.
//
// lay_out:    the files that make the field; written once, to a temporary folder. Nothing, where the disk refuses; `why_not` says why.
// picture:    the picture of the ground that lies under it; after lay_out.
// holds:      whether a field was read from these files alone.
// clear_away: the folder goes, as it does with the object.
#pragma once

#include <QString>
#include <QTemporaryDir>
#include <filesystem>
#include <memory>
#include <optional>
#include <vector>

namespace plugside {

class SampleField {
public:
    using Files = std::vector<std::filesystem::path>;

    [[nodiscard]] std::optional<Files> lay_out();
    [[nodiscard]] const QString& why_not() const { return why_not_; }
    [[nodiscard]] std::filesystem::path picture() const;
    [[nodiscard]] bool holds(const Files& files) const;
    void clear_away();

private:
    std::unique_ptr<QTemporaryDir> folder_;
    QString why_not_;
};

}  // namespace plugside
