// One QApplication for all window tests of the executable, its thread watched, with settings of its own in a temporary folder.
#pragma once

#include <gtest/gtest.h>

#include <QApplication>
#include <QSettings>
#include <QTemporaryDir>
#include <QTest>

#include "tests/app/watchdog.h"

namespace plugside {

inline WatchedApplication& application() {
    static QTemporaryDir* settings = nullptr;
    static WatchedApplication* program = [] {
        settings = new QTemporaryDir;
        // projects that nobody named are put there too
        qputenv("XDG_DATA_HOME", QFile::encodeName(settings->path()));
        QSettings::setDefaultFormat(QSettings::IniFormat);
        QSettings::setPath(QSettings::IniFormat, QSettings::UserScope, settings->path());
        static int words = 1;
        static char name[] = "app_tests";
        static char* list[] = {name, nullptr};
        auto* made = new WatchedApplication(words, list);
        QApplication::setOrganizationName(QStringLiteral("Plugside tests"));
        QApplication::setApplicationName(QStringLiteral("Plugside tests"));
        return made;
    }();
    return *program;
}

// A fixture whose tests need the application; settings are forgotten between them.
class OnScreen : public testing::Test {
protected:
    OnScreen() {
        application();
        QSettings().clear();
    }
};

}  // namespace plugside
