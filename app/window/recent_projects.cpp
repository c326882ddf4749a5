#include "app/window/recent_projects.h"

#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>

#include "app/session/project_places.h"
#include "app/window/look_sheet.h"

namespace plugside {

namespace {

constexpr std::size_t most_shown = 5;

}  // namespace

QString project_words(const std::filesystem::path& project) {
    const QString name = as_text(project.stem());
    if (is_unnamed(project)) return RecentProjects::tr("%1 (not named)").arg(name);
    return RecentProjects::tr("%1 in %2").arg(name, QFileInfo(as_text(project)).dir().dirName());
}

RecentProjects::RecentProjects(QWidget* parent) : QWidget(parent), column_(new QVBoxLayout(this)) {
    column_->setContentsMargins(0, 0, 0, 0);
    column_->setSpacing(6);
    refresh();
}

void RecentProjects::refresh() {
    qDeleteAll(findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly));
    const auto projects = recent_projects();
    auto* heading = label_in_role("heading", this);
    heading->setText(tr("Go on with"));
    column_->addWidget(heading);
    for (std::size_t i = 0; i < projects.size() && i < most_shown; ++i) {
        auto* button = new QPushButton(this);
        button->setProperty("way", true);
        const QString words = project_words(projects[i]);
        const int room = 320;
        button->setText(button->fontMetrics().elidedText(words, Qt::ElideMiddle, room).replace('&', QLatin1String("&&")));
        button->setAccessibleName(tr("go on with %1").arg(words));
        button->setToolTip(QDir::toNativeSeparators(as_text(projects[i])));
        column_->addWidget(button);
        connect(button, &QPushButton::clicked, this, [this, project = projects[i]] { Q_EMIT wanted(project); });
    }
    setVisible(!projects.empty());
}

}  // namespace plugside
