#include "app/stages/mark_picture.h"

#include <QFile>
#include <QImageReader>
#include <QKeyEvent>
#include <QLabel>
#include <QMouseEvent>
#include <QPainter>
#include <QShortcut>
#include <QVBoxLayout>
#include <memory>

#include "app/window/look_sheet.h"

namespace plugside {

namespace {

constexpr int high_px = 108;
constexpr int sentence_px = 40;
constexpr QSize small_room(640, 2 * high_px);

class PictureSheet : public QDialog {
public:
    PictureSheet(const LoadedPicture& picture, const QString& name, QWidget* parent) : QDialog(parent) {
        setWindowTitle(name);
        setAttribute(Qt::WA_DeleteOnClose);
        auto* column = new QVBoxLayout(this);
        auto* image = new QLabel(this);
        image->setPixmap(QPixmap::fromImage(picture.image));
        image->setAccessibleName(tr("photograph %1").arg(name));
        image->setAlignment(Qt::AlignCenter);
        column->addWidget(image);
        auto* words = label_in_role("quiet", this);
        words->setText(MarkPicture::tr("%1. Esc, Enter or a click puts it away.").arg(name));
        column->addWidget(words);
        for (const int key : {Qt::Key_Return, Qt::Key_Enter, Qt::Key_Space})
            connect(new QShortcut(QKeySequence(key), this), &QShortcut::activated, this, &QDialog::accept);
    }

protected:
    void mouseReleaseEvent(QMouseEvent*) override { accept(); }
};

}  // namespace

std::optional<std::filesystem::path> find_picture(const PictureFolders& files, const std::string& name) {
    const std::filesystem::path wanted = std::filesystem::path(name).filename();
    if (wanted.empty() || wanted == "." || wanted == "..") return std::nullopt;
    std::error_code ignored;
    for (const auto& file : files)
        if (file.filename() == wanted && std::filesystem::is_regular_file(file, ignored)) return file;
    for (const auto& file : files) {
        const auto beside = file.parent_path() / wanted;
        if (std::filesystem::is_regular_file(beside, ignored)) return beside;
    }
    return std::nullopt;
}

LoadedPicture load_picture(const PictureFolders& files, const std::string& name, QSize room) {
    const QString shown = QString::fromStdString(name);
    const auto file = find_picture(files, name);
    if (!file) return {{}, MarkPicture::tr("The photograph %1 is not beside the files that were read.").arg(shown)};
    QImageReader reader(QFile::decodeName(file->c_str()));
    reader.setAutoTransform(true);
    reader.setDecideFormatFromContent(true);
    QSize size = reader.size();
    const bool turned = reader.transformation().testFlag(QImageIOHandler::TransformationRotate90);
    const QSize fitting = turned ? room.transposed() : room;
    if (size.isValid() && (size.width() > fitting.width() || size.height() > fitting.height()))
        reader.setScaledSize(size.scaled(fitting, Qt::KeepAspectRatio));
    QImage image = reader.read();
    if (image.isNull()) return {{}, MarkPicture::tr("The photograph %1 cannot be read.").arg(shown)};
    if (image.width() > room.width() || image.height() > room.height())
        image = image.scaled(room, Qt::KeepAspectRatio, Qt::SmoothTransformation);
    return {image, {}};
}

MarkPicture::MarkPicture(Choices& choices, QWidget* parent) : QWidget(parent), choices_(choices) {
    setFocusPolicy(Qt::StrongFocus);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
    connect(&choices_, &Choices::theme_changed, this, qOverload<>(&QWidget::update));
    hide();
}

QSize MarkPicture::sizeHint() const { return {280, loaded_.sentence.isEmpty() ? high_px : sentence_px}; }

void MarkPicture::show_nothing() {
    loading_.stop();
    name_.clear();
    loaded_ = {};
    hide();
}

void MarkPicture::show_picture(const PictureFolders& files, const std::string& name) {
    if (name == name_ && files == files_) return;
    files_ = files;
    name_ = name;
    loaded_ = {};
    setAccessibleName(tr("photograph %1 of the mark").arg(QString::fromStdString(name)));
    setToolTip(tr("larger (Enter, or P)"));
    show();
    updateGeometry();
    update();
    loading_.start([this, files, name](const Progress&) -> BackgroundWork::Apply {
        auto picture = std::make_shared<LoadedPicture>(load_picture(files, name, small_room));
        return [this, picture] {
            loaded_ = *picture;
            setAccessibleDescription(loaded_.sentence);
            updateGeometry();
            update();
        };
    });
}

void MarkPicture::paintEvent(QPaintEvent*) {
    const MapStyle& style = choices_.style();
    QPainter painter(this);
    painter.setRenderHint(QPainter::SmoothPixmapTransform);
    const QRectF room = QRectF(rect()).adjusted(2.0, 2.0, -2.0, -2.0);
    QRectF frame = room;
    if (loaded_.image.isNull()) {
        painter.setPen(style.quiet_ink);
        painter.drawText(room, Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap,
                         loaded_.sentence.isEmpty() ? tr("the photograph is being read") : loaded_.sentence);
    } else {
        const QSizeF size = QSizeF(loaded_.image.size()).scaled(room.size(), Qt::KeepAspectRatio);
        frame = QRectF(room.topLeft(), size);
        painter.drawImage(frame, loaded_.image);
    }
    if (!hasFocus()) return;
    painter.setPen(QPen(style.act, 2.5));
    painter.setBrush(Qt::NoBrush);
    painter.drawRect(frame);
}

QDialog* MarkPicture::enlarge() {
    if (loaded_.image.isNull()) return nullptr;
    const QSize room = window()->size() - QSize(80, 110);
    // one picture at a screen's size, asked for by hand
    const LoadedPicture large = load_picture(files_, name_, room);
    if (large.image.isNull()) return nullptr;
    auto* sheet = new PictureSheet(large, QString::fromStdString(name_), window());
    sheet->open();
    return sheet;
}

void MarkPicture::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter || event->key() == Qt::Key_Space)
        enlarge();
    else
        QWidget::keyPressEvent(event);
}

void MarkPicture::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) enlarge();
}

}  // namespace plugside
