// A page that scrolls up and down where it needs more height than there is, and fills the room where there is enough.
//
// Least height: what its layout needs at the width at hand, its words wrapped; parts that stretch and scroll themselves (lists,
// longer texts) with their least height.
// What gets the focus is scrolled into sight.
#pragma once

#include <QScrollArea>

namespace plugside {

// least: parts of the page shrink to what they need at least before the page scrolls, for pages with a part that scrolls by itself.
// whole: none does; lines of words in a layout within a layout would lose their last line first.
enum class PageHeight { least, whole };

class PageScroll : public QScrollArea {
    Q_OBJECT

public:
    PageScroll(QWidget* page, QWidget* parent, PageHeight height = PageHeight::least);
    [[nodiscard]] QSize minimumSizeHint() const override { return {60, 60}; }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;
    bool viewportEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    void fit();
    PageHeight height_;
    bool fitting_ = false;
};

// Lets a list or a scrolled text take the height that is left over, without asking for more than its least.
void take_what_is_left(QWidget& part);

}  // namespace plugside
