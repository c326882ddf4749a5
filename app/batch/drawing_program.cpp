#include "app/batch/drawing_program.h"

#include <clocale>
#include <cstdio>

namespace plugside {

namespace {

// A session without a runtime folder is usual on a server and nothing to a picture; everything else Qt has to say is passed
// on.
void pass_on(QtMsgType, const QMessageLogContext&, const QString& message) {
    if (!message.contains(QLatin1String("XDG_RUNTIME_DIR"))) std::fprintf(stderr, "%s\n", qPrintable(message));
}

int& prepared(int& words) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(pass_on);
    return words;
}

}  // namespace

DrawingProgram::DrawingProgram() : program_(prepared(words_), list_) {
    std::setlocale(LC_NUMERIC, "C");  // the toolkit takes the system's; files have a decimal point everywhere
}

}  // namespace plugside
