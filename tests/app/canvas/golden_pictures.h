// Pictures of the map that are kept, and how a new one is compared with them.
//
// Tolerance: another version of the font library moves the grey at the edges of letters and lines. A pixel is off where a channel differs
//     by more than 40 of 255; a picture is off where more than 1 in 1,000 pixels are, or more than a sixth of a square of 12 by 12 pixels:
//     a mark that moved or a letter that is missing fills such a square.
// Where one is off the picture made, and what is off in it, are left in golden-differences of the build directory.
// Made anew: with PLUGSIDE_MAKE_GOLDEN=1 in the environment each picture is written to where it is kept, and its test fails, so that
//     nobody leaves it on.
#pragma once

#include <gtest/gtest.h>

#include <QDir>
#include <QImage>
#include <algorithm>
#include <cstdlib>
#include <string>

namespace plugside {

struct PictureDifference {
    long off = 0;  // pixels
    int most_in_square = 0;
    bool other_size = false;
    QImage shown;  // what is off, in black on white
    [[nodiscard]] bool within(QSize size) const {
        return !other_size && off * 1000 <= static_cast<long>(size.width()) * size.height() && most_in_square * 6 <= 12 * 12;
    }
};

inline PictureDifference difference_of(const QImage& made, const QImage& kept) {
    constexpr int most_channel = 40;
    constexpr int square = 12;
    PictureDifference difference;
    difference.other_size = made.size() != kept.size();
    if (difference.other_size) return difference;
    const QImage a = made.convertToFormat(QImage::Format_RGB32);
    const QImage b = kept.convertToFormat(QImage::Format_RGB32);
    difference.shown = QImage(a.size(), QImage::Format_Grayscale8);
    difference.shown.fill(255);
    for (int top = 0; top < a.height(); top += square)
        for (int left = 0; left < a.width(); left += square) {
            int here = 0;
            for (int y = top; y < std::min(top + square, a.height()); ++y)
                for (int x = left; x < std::min(left + square, a.width()); ++x) {
                    const QRgb p = a.pixel(x, y);
                    const QRgb q = b.pixel(x, y);
                    const int off = std::max(
                        {std::abs(qRed(p) - qRed(q)), std::abs(qGreen(p) - qGreen(q)), std::abs(qBlue(p) - qBlue(q))});
                    if (off <= most_channel) continue;
                    ++here;
                    difference.shown.setPixel(x, y, 0);
                }
            difference.off += here;
            difference.most_in_square = std::max(difference.most_in_square, here);
        }
    return difference;
}

inline void expect_golden(const QImage& made, const std::string& name) {
    const QString kept_at =
        QStringLiteral(PLUGSIDE_SOURCE_DIR "/tests/app/canvas/golden/%1.png").arg(QString::fromStdString(name));
    if (std::getenv("PLUGSIDE_MAKE_GOLDEN") != nullptr) {
        QDir().mkpath(QStringLiteral(PLUGSIDE_SOURCE_DIR "/tests/app/canvas/golden"));
        ASSERT_TRUE(made.convertToFormat(QImage::Format_RGB888).save(kept_at, "PNG", 0));
        ADD_FAILURE() << name << " was made anew";
        return;
    }
    const QImage kept(kept_at);
    ASSERT_FALSE(kept.isNull()) << "no picture is kept at " << kept_at.toStdString();
    const PictureDifference difference = difference_of(made, kept);
    if (difference.within(made.size())) return;
    const QString beside = QStringLiteral(PLUGSIDE_BINARY_DIR "/golden-differences/");
    QDir().mkpath(beside);
    made.save(beside + QString::fromStdString(name) + QStringLiteral(".png"));
    difference.shown.save(beside + QString::fromStdString(name) + QStringLiteral("-off.png"));
    ADD_FAILURE() << name << ": " << difference.off << " pixels are off, " << difference.most_in_square
                  << " of them in one square; see " << beside.toStdString();
}

}  // namespace plugside
