// The toolkit's part of the batch program: made when something is to be drawn or told in another language, on its offscreen platform, so that
// the rest of the program does without.
#pragma once

#include <QGuiApplication>

namespace plugside {

// One at a time in a program. Files keep their decimal point whatever the system's language.
class DrawingProgram {
public:
    DrawingProgram();

private:
    int words_ = 1;
    char name_[15] = "plugside-batch";
    char* list_[2] = {name_, nullptr};
    QGuiApplication program_;
};

}  // namespace plugside
