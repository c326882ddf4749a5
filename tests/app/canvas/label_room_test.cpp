#include "app/canvas/label_room.h"

#include <gtest/gtest.h>

#include <random>

namespace plugside {
namespace {

TEST(LabelRoom, NoTwoLabelsCoverEachOther) {
    std::mt19937 generator(21);
    std::uniform_real_distribution<double> pixel(-200.0, 900.0);
    std::uniform_real_distribution<double> size(5.0, 120.0);
    LabelRoom room;
    std::vector<QRectF> taken;
    for (int i = 0; i < 500; ++i) {
        const double width = size(generator);
        const double height = 0.3 * size(generator) + 3.0;
        std::vector<QRectF> wished;
        for (int k = 0; k < 4; ++k) wished.emplace_back(pixel(generator), pixel(generator), width, height);
        if (const auto place = room.take(wished)) {
            for (const QRectF& other : taken) EXPECT_FALSE(other.intersects(*place));
            taken.push_back(*place);
        }
    }
    EXPECT_GT(taken.size(), 60U);
}

TEST(LabelRoom, OfTwoFreePlacesTheOneThatCoversNoMarkIsTaken) {
    LabelRoom room;
    room.avoid({15.0, 5.0});
    const QRectF over_the_mark(0.0, 0.0, 30.0, 12.0);
    const QRectF clear(100.0, 0.0, 30.0, 12.0);
    EXPECT_EQ(room.take({over_the_mark, clear}), clear);
    EXPECT_EQ(room.take({clear, over_the_mark}), over_the_mark);
    EXPECT_EQ(room.take({clear, over_the_mark}), std::nullopt);
}

}  // namespace
}  // namespace plugside
