#include "app/session/project_places.h"

#include <QDateTime>
#include <QFile>
#include <QSettings>
#include <QStandardPaths>

#include "geo/store/project_store.h"

namespace plugside {

namespace {

QString recent_key() { return QStringLiteral("projects/recent"); }

}  // namespace

QString as_text(const std::filesystem::path& file) { return QFile::decodeName(file.c_str()); }
std::filesystem::path as_path(const QString& file) { return {QFile::encodeName(file).toStdString()}; }

QString file_stem(const QString& field_name) {
    QString stem;
    for (const QChar letter : field_name.toLower()) {
        if (letter.isLetterOrNumber())
            stem += letter;
        else if (!stem.isEmpty() && !stem.endsWith('-'))
            stem += '-';
    }
    while (stem.endsWith('-')) stem.chop(1);
    return stem.isEmpty() ? QStringLiteral("field") : stem.left(60);
}

std::filesystem::path unnamed_projects() {
    return as_path(QStandardPaths::writableLocation(QStandardPaths::AppDataLocation)) / "projects";
}

std::filesystem::path place_for(const QString& field_name) {
    std::error_code ignored;  // a folder that cannot be made is refused when the project is put there
    std::filesystem::create_directories(unnamed_projects(), ignored);
    const QString minute = QDateTime::currentDateTime().toString(QStringLiteral("yyyy-MM-dd HHmm"));
    const QString name = file_stem(field_name) + QLatin1Char(' ') + minute;
    for (int number = 1;; ++number) {
        const QString more = number == 1 ? QString() : QStringLiteral(" (%1)").arg(number);
        const auto place = unnamed_projects() / as_path(name + more + QLatin1String(project_ending));
        QFile file(as_text(place));
        const bool taken = file.open(QIODevice::NewOnly | QIODevice::WriteOnly);
        // where nothing can be made at all there is nothing to be kept apart from
        if (taken || !file.exists()) return place;
    }
}

bool is_unnamed(const std::filesystem::path& project) {
    return as_kept(project).parent_path() == as_kept(unnamed_projects());
}

std::vector<std::filesystem::path> recent_projects() {
    std::vector<std::filesystem::path> there;
    for (const QString& name : QSettings().value(recent_key()).toStringList())
        if (std::error_code error;
            std::filesystem::is_regular_file(as_path(name), error) && std::filesystem::file_size(as_path(name), error) > 0)
            there.push_back(as_path(name));
    return there;
}

void remember_project(const std::filesystem::path& project) {
    QSettings settings;
    QStringList names = settings.value(recent_key()).toStringList();
    names.removeAll(as_text(project));
    names.prepend(as_text(project));
    settings.setValue(recent_key(), QStringList(names.mid(0, most_recent)));
}

void forget_project(const std::filesystem::path& project) {
    QSettings settings;
    QStringList names = settings.value(recent_key()).toStringList();
    names.removeAll(as_text(project));
    settings.setValue(recent_key(), names);
}

}  // namespace plugside
