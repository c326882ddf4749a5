#include "app/batch/picture_output.h"

#include <QImage>
#include <QString>

#include "app/canvas/map_painter.h"
#include "geo/write/safe_file.h"

namespace plugside {

tl::expected<void, Refusal> write_picture(const FieldSurvey& field, const Plan& plan, const std::filesystem::path& file,
                                          LengthUnits units) {
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
