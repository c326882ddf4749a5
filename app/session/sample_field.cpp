#include "app/session/sample_field.h"

#include <QCoreApplication>
#include <QFile>
#include <algorithm>

#include "app/session/project_places.h"

// Resources of a static library are made known by name; the macro wants to stand outside of a namespace.
static void make_sample_known() { Q_INIT_RESOURCE(sample_field); }

namespace plugside {

namespace {

QString name_of_walk() { return QStringLiteral("walk.gpx"); }
QString name_of_ground() { return QStringLiteral("ground.gpkg"); }
QString name_of_picture() { return QStringLiteral("imagery.tif"); }

}  // namespace

std::optional<SampleField::Files> SampleField::lay_out() {
    make_sample_known();
    const auto walk_and_ground = [this] {
        return Files{as_path(folder_->filePath(name_of_walk())), as_path(folder_->filePath(name_of_ground()))};
    };
    if (folder_) return walk_and_ground();
    folder_ = std::make_unique<QTemporaryDir>();
    why_not_ = folder_->isValid() ? QString() : folder_->errorString();
    for (const QString& name : {name_of_walk(), name_of_ground(), name_of_picture()}) {
        QFile carried(QStringLiteral(":/sample/") + name);
        QFile laid(folder_->filePath(name));
        if (!why_not_.isEmpty()) break;
        const bool written = carried.open(QIODevice::ReadOnly) && laid.open(QIODevice::WriteOnly) &&
                             laid.write(carried.readAll()) == carried.size() && laid.flush();
        if (!written) why_not_ = laid.errorString();
    }
    if (why_not_.isEmpty()) return walk_and_ground();
    why_not_ =
        QCoreApplication::translate("SampleField", "The sample could not be laid out in the folder for passing files: %1")
            .arg(why_not_);
    folder_.reset();
    return std::nullopt;
}

std::filesystem::path SampleField::picture() const {
    return folder_ ? as_path(folder_->filePath(name_of_picture())) : std::filesystem::path();
}

bool SampleField::holds(const Files& files) const {
    return folder_ && !files.empty() && std::all_of(files.begin(), files.end(), [&](const std::filesystem::path& file) {
               return file.parent_path() == as_path(folder_->path());
           });
}

void SampleField::clear_away() { folder_.reset(); }

}  // namespace plugside
