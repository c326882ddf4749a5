// The photograph that belongs to a mark, scaled to the room there is; Enter or a click shows it large.
//
// Found: the file of that name among the files that were read, or beside one of them. A name never leads out of these
// folders. Loaded: away from the window's thread, at the size shown, turned as its orientation tag says. A file that is
// missing or
//         cannot be read gives a sentence instead.
#pragma once

#include <QDialog>
#include <QImage>
#include <QWidget>
#include <filesystem>
#include <vector>

#include "app/planning/background_work.h"
#include "app/session/choices.h"

namespace plugside {

using PictureFolders = std::vector<std::filesystem::path>;  // files that were read

[[nodiscard]] std::optional<std::filesystem::path> find_picture(const PictureFolders& files, const std::string& name);

// What is shown: an image that fits into `room`, or why there is none.
struct LoadedPicture {
    QImage image;
    QString sentence;
};
[[nodiscard]] LoadedPicture load_picture(const PictureFolders& files, const std::string& name, QSize room);

class MarkPicture : public QWidget {
    Q_OBJECT

public:
    explicit MarkPicture(Choices& choices, QWidget* parent = nullptr);

    void show_picture(const PictureFolders& files, const std::string& name);
    void show_nothing();
    [[nodiscard]] const LoadedPicture& loaded() const { return loaded_; }
    // Opens the picture in a sheet over the window; null where there is none to open.
    QDialog* enlarge();

    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;

private:
    Choices& choices_;
    PictureFolders files_;
    std::string name_;
    LoadedPicture loaded_;
    BackgroundWork loading_;
};

}  // namespace plugside
