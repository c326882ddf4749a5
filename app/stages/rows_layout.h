// Widgets side by side, in as many rows as their words need: a row of keys that stays whole when its text is twice as large.
//
// natural: each as wide as it wishes and the rest of a row shared out; as many in a row as fit.
// even:    all equally wide, as many in a row as fit with the widest, at most `most_columns`.
// A widget wider than the room gets the room. Hidden widgets take none.
// Cost: O(widgets) a pass.
#pragma once

#include <QLayout>
#include <vector>

namespace plugside {

class RowsLayout : public QLayout {
public:
    static RowsLayout* natural(int gap) { return new RowsLayout(gap, 0); }
    static RowsLayout* even(int gap, int most_columns) { return new RowsLayout(gap, most_columns); }
    ~RowsLayout() override;

    void addItem(QLayoutItem* item) override;
    [[nodiscard]] QLayoutItem* itemAt(int index) const override;
    QLayoutItem* takeAt(int index) override;
    [[nodiscard]] int count() const override { return static_cast<int>(items_.size()); }
    [[nodiscard]] Qt::Orientations expandingDirections() const override { return Qt::Horizontal; }
    [[nodiscard]] bool hasHeightForWidth() const override { return true; }
    [[nodiscard]] int heightForWidth(int width) const override;
    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSize() const override;
    void setGeometry(const QRect& place) override;

private:
    RowsLayout(int gap, int most_columns);

    struct Placed {
        QLayoutItem* item;
        QRect place;
    };
    [[nodiscard]] std::vector<QLayoutItem*> shown() const;
    [[nodiscard]] std::vector<std::size_t> rows_of(const std::vector<QLayoutItem*>& items, int width) const;
    [[nodiscard]] std::vector<Placed> placed(const QRect& place) const;

    std::vector<QLayoutItem*> items_;
    int gap_;
    int most_columns_;  // 0: natural widths
};

}  // namespace plugside
