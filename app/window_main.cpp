// plugside [FILES...]: opens the window, with the files at once.
#include <QApplication>
#include <QCommandLineParser>
#include <QFile>

#include "app/window/main_window.h"

int main(int argc, char** argv) {
    QApplication program(argc, argv);
    QApplication::setOrganizationName(QStringLiteral("Plugside"));
    QApplication::setApplicationName(QStringLiteral("Plugside"));
    QApplication::setApplicationVersion(QStringLiteral(PLUGSIDE_VERSION));
    QCommandLineParser call;
    call.setApplicationDescription(QCoreApplication::translate("Call", "Plan pocket gopher control from a scouting walk."));
    call.addHelpOption();
    call.addVersionOption();
    call.addPositionalArgument(
        QStringLiteral("FILES"),
        QCoreApplication::translate("Call", "a project, or walks, the ground's layers, a plan handed out before"),
        QStringLiteral("[FILES...]"));
    call.process(program);
    plugside::MainWindow window;
    window.show();
    plugside::FieldSession::Files files;
    for (const QString& name : call.positionalArguments()) files.emplace_back(QFile::encodeName(name).toStdString());
    window.open_files(files);
    return QApplication::exec();
}
