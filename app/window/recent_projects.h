// The projects opened last, to go on with: on the slip while no field is open.
#pragma once

#include <QVBoxLayout>
#include <QWidget>
#include <filesystem>

namespace plugside {

class RecentProjects : public QWidget {
    Q_OBJECT

public:
    explicit RecentProjects(QWidget* parent = nullptr);
    // As they are now; hidden where there is none.
    void refresh();

Q_SIGNALS:
    void wanted(const std::filesystem::path& project);

private:
    QVBoxLayout* column_;
};

// "creek-meadow 2026-03-01 0930", with its folder where the person chose one.
[[nodiscard]] QString project_words(const std::filesystem::path& project);

}  // namespace plugside
