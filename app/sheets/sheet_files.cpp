#include "app/sheets/sheet_files.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPageSize>
#include <QPainter>
#include <QPdfWriter>

#include "app/sheets/figure_output.h"
#include "app/sheets/phone_page.h"
#include "app/sheets/sheet_pages.h"
#include "core/words/words.h"
#include "geo/write/safe_file.h"

namespace plugside {

namespace {

constexpr int dots_per_inch = 720;  // ten to a point: sizes of words are whole

Progress part_of(const Progress& progress, double from, double to) {
    Progress part;
    part.stop = progress.stop;
    if (progress.report)
        part.report = [progress, from, to](double share, std::string_view) {
            progress.report(from + (to - from) * share, Words::later("writing the field sheets"));
        };
    return part;
}

tl::expected<void, Refusal> stopped(const std::filesystem::path& file) {
    return tl::unexpected(
        Refusal{Refusal::Code::stopped, file.string(), "", Words::tell("a stop"), Words::tell("time to write it")});
}

// Nothing when it was stopped, or could not be drawn.
std::optional<QByteArray> pdf_of(const SheetInput& input, const QString& title, const std::vector<Figure>& pages,
                                 const Progress& progress) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(dots_per_inch);
    writer.setTitle(title);
    writer.setCreator(QStringLiteral("Plugside"));
    const QPageSize size(input.paper == Paper::letter ? QPageSize::Letter : QPageSize::A4);
    writer.setPageLayout(QPageLayout(size, QPageLayout::Portrait, QMarginsF()));
    QPainter painter;
    if (!painter.begin(&writer)) return std::nullopt;
    for (std::size_t i = 0; i < pages.size(); ++i) {
        if (progress.stopped()) return std::nullopt;
        progress.say(static_cast<double>(i) / static_cast<double>(pages.size()), "");
        if (i > 0) writer.newPage();
        paint_figure(painter, pages[i], dots_per_inch / 25.4);
    }
    painter.end();
    return bytes;
}

}  // namespace

tl::expected<void, Refusal> write_sheets(const SheetInput& input, const std::filesystem::path& file,
                                         const Progress& progress) {
    const auto contents = sheet_contents(input, part_of(progress, 0.0, 0.2));
    if (!contents) return stopped(file);
    const auto pages = sheet_pages(input, *contents, part_of(progress, 0.2, 0.5));
    if (!pages) return stopped(file);
    const auto bytes = pdf_of(input, contents->field, *pages, part_of(progress, 0.5, 1.0));
    if (!bytes) return stopped(file);
    return write_text_file(file, {bytes->constData(), static_cast<std::size_t>(bytes->size())});
}

tl::expected<void, Refusal> write_phone_page(const SheetInput& input, const std::filesystem::path& file,
                                             const Progress& progress) {
    const auto contents = sheet_contents(input, part_of(progress, 0.0, 0.5));
    if (!contents) return stopped(file);
    const auto page = phone_page(input, *contents, part_of(progress, 0.5, 1.0));
    if (!page) return stopped(file);
    const QByteArray bytes = page->toUtf8();
    return write_text_file(file, {bytes.constData(), static_cast<std::size_t>(bytes.size())});
}

}  // namespace plugside
