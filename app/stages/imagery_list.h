// The pictures under the ground: which are shown, what they are, how strongly they are drawn; adding and taking away.
//
// Keys: the list is reached by Tab; Space shows or hides the chosen picture, Enter places one that has no position of its own, Delete
//       takes it away; the slider moves by arrows.
// Order: the topmost picture first, as one looks at them; a map server under all of them. Hidden, a server is not asked; shown again,
//        it is.
#pragma once

#include <QLabel>
#include <QListWidget>
#include <QPushButton>
#include <QSlider>
#include <QWidget>

#include "app/session/imagery.h"
#include "core/units/display.h"

namespace plugside {

class ImageryList : public QWidget {
    Q_OBJECT

public:
    explicit ImageryList(Imagery& imagery, QWidget* parent = nullptr);
    void use(LengthUnits units);

    [[nodiscard]] QListWidget& list() { return *list_; }
    [[nodiscard]] QSlider& tone() { return *tone_; }

Q_SIGNALS:
    void add_wanted();
    void server_wanted();
    void place_wanted(const std::filesystem::path& file);
    void take_away_wanted(const std::filesystem::path& file);

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    void refresh();
    void add_line(const QString& words, const std::filesystem::path& file, std::uint64_t number, bool visible);
    void follow_chosen();
    void place_chosen();
    void take_chosen_away();
    [[nodiscard]] std::optional<std::filesystem::path> chosen() const;
    [[nodiscard]] QString words_of(const ProjectPicture& unplaced) const;
    void add_server_line();
    [[nodiscard]] bool server_is_chosen() const;
    [[nodiscard]] QString words_of(const OpenImagery& picture) const;

    Imagery& imagery_;
    LengthUnits units_ = LengthUnits::feet_and_inches;
    QListWidget* list_;
    QSlider* tone_;
    QLabel* copying_;
    QWidget* strength_;
    QPushButton* add_;
    QPushButton* server_;
    QPushButton* place_;
    QPushButton* take_away_;
    bool refreshing_ = false;
};

}  // namespace plugside
