#include "app/batch/picture_output.h"

#include <QGuiApplication>
#include <QImage>
#include <QString>
#include <clocale>
#include <cstdio>

#include "app/canvas/map_painter.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

// A session without a runtime folder is usual on a server and nothing to a picture; everything else Qt has to say is passed
// on.
void pass_on(QtMsgType, const QMessageLogContext&, const QString& message) {
    if (!message.contains(QLatin1String("XDG_RUNTIME_DIR"))) std::fprintf(stderr, "%s\n", qPrintable(message));
}

}  // namespace

tl::expected<void, Refusal> write_picture(const FieldSurvey& field, const Plan& plan, const std::filesystem::path& file,
                                          LengthUnits units) {
    if (qEnvironmentVariableIsEmpty("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(pass_on);
    int words = 1;
    char name[] = "plugside-batch";
    char* word_list[] = {name, nullptr};
    const QGuiApplication drawing(words, word_list);
    std::setlocale(LC_NUMERIC, "C");  // the toolkit takes the system's; files have a decimal point everywhere
    constexpr QSize size(1600, 1200);
    const QImage picture = map_picture(field, &plan, size, style_of(Theme::light), units == LengthUnits::metres);
    auto beside = SafeFile::beside(file);
    if (!beside) return tl::unexpected(beside.error());
    if (!picture.save(QString::fromStdString(beside->temporary().string()), "PNG"))
        return tl::unexpected(Refusal{Refusal::Code::cannot_write, file.string(), "", "a picture that could not be written",
                                      "a folder with room that can be written to"});
    return beside->commit();
}

}  // namespace plugside
