// plugside [FILES...]: opens the window, with the files at once.
#include <QApplication>
#include <QCommandLineParser>
#include <QFile>
#include <QSettings>
#include <clocale>

#include "app/window/main_window.h"
#include "app/words/language.h"

int main(int argc, char** argv) {
    QApplication program(argc, argv);
    // the toolkit takes the system's way to write numbers; files are written with a decimal point everywhere
    std::setlocale(LC_NUMERIC, "C");
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
    const QCommandLineOption language(
        QStringLiteral("language"),
        QCoreApplication::translate("Call", "en or es; else as chosen before, else the system's"), QStringLiteral("code"));
    call.addOption(language);
    const QCommandLineOption sample(
        QStringLiteral("sample"),
        QCoreApplication::translate("Call", "show the job on a sample field; nothing of it is kept"));
    call.addOption(sample);
    call.process(program);
    const auto told = plugside::language_from_code(call.value(language));
    const auto chosen = plugside::language_from_code(QSettings().value(QStringLiteral("language")).toString());
    plugside::speak(told ? *told : chosen.value_or(plugside::language_of(QLocale::system())));
    plugside::MainWindow window;
    window.show();
    plugside::FieldSession::Files files;
    for (const QString& name : call.positionalArguments()) files.emplace_back(QFile::encodeName(name).toStdString());
    window.begin(files, call.isSet(sample));
    return QApplication::exec();
}
