#include "app/words/language.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QLibraryInfo>
#include <QTranslator>
#include <atomic>
#include <memory>
#include <utility>

#include "app/words/language_here.h"
#include "core/words/words.h"

// Resources of a static library are made known by name; the macro wants to stand outside of a namespace.
static void make_translations_known() { Q_INIT_RESOURCE(translations); }

namespace plugside {

namespace {

struct Translators {
    std::unique_ptr<QTranslator> ours, of_the_toolkit;
};

std::atomic<Language> at_hand{Language::english};
std::atomic<char> decimal_mark{'.'};

Translators& translators() {
    static Translators installed;
    return installed;
}

thread_local std::optional<Language> language_here;

QLocale locale_of(Language language) {
    return {language == Language::spanish ? QLocale::Spanish : QLocale::English, QLocale::system().territory()};
}

QDateTime local_time(UtcTime time) { return QDateTime::fromMSecsSinceEpoch(time.time_since_epoch().count()); }

std::string text_at_hand(const char* english) { return QCoreApplication::translate("Words", english).toStdString(); }

char mark_of(Language language) { return locale_of(language).decimalPoint() == QStringLiteral(",") ? ',' : '.'; }

char mark_at_hand() { return language_here ? mark_of(*language_here) : decimal_mark.load(); }

const char* code_at_hand() { return spoken() == Language::spanish ? "es" : "en"; }

std::string moment_at_hand(UtcTime time) {
    const QDateTime moment = local_time(time);
    return (moment.toString(QStringLiteral("yyyy-MM-dd HH:mm:ss ")) + moment.timeZoneAbbreviation()).toStdString();
}

constexpr Tongue tongue{text_at_hand, mark_at_hand, code_at_hand, moment_at_hand};

std::string text_here(const char* english) { return said("Words", english).toStdString(); }

constexpr Tongue tongue_here{text_here, mark_at_hand, code_at_hand, moment_at_hand};

// Null where there is no such file.
std::unique_ptr<QTranslator> translator_of(const QString& name, const QString& folder) {
    auto translator = std::make_unique<QTranslator>();
    if (!translator->load(name, folder)) return nullptr;
    return translator;
}

}  // namespace

void speak(Language language) {
    make_translations_known();
    Translators& installed = translators();
    for (auto* translator : {&installed.ours, &installed.of_the_toolkit})
        if (const auto old = std::exchange(*translator, nullptr)) QCoreApplication::removeTranslator(old.get());
    at_hand = language;
    const QLocale locale = locale_of(language);
    QLocale::setDefault(locale);
    decimal_mark = mark_of(language);
    speak_with(&tongue);
    if (language == Language::spanish) {
        // what the toolkit says itself, as in its dialogs, where its translations are installed
        installed.of_the_toolkit =
            translator_of(QStringLiteral("qtbase_es"), QLibraryInfo::path(QLibraryInfo::TranslationsPath));
        installed.ours = translator_of(QStringLiteral("plugside_es"), QStringLiteral(":/translations"));
        if (installed.of_the_toolkit) QCoreApplication::installTranslator(installed.of_the_toolkit.get());
        if (installed.ours) QCoreApplication::installTranslator(installed.ours.get());
    }
}

Language spoken() { return language_here.value_or(at_hand.load()); }

LanguageHere::LanguageHere(Language language)
    : before_(std::exchange(language_here, language)), tongue_(std::make_unique<TongueHere>(&tongue_here)) {}

LanguageHere::~LanguageHere() { language_here = before_; }

QString said(const char* context, const char* text) {
    if (!language_here) return QCoreApplication::translate(context, text);
    // reads only, so that threads may share it; kept to the program's end, as the texts it gives may be
    static const std::unique_ptr<QTranslator> spanish = [] {
        make_translations_known();
        return translator_of(QStringLiteral("plugside_es"), QStringLiteral(":/translations"));
    }();
    const QString told = *language_here == Language::spanish && spanish ? spanish->translate(context, text) : QString();
    return told.isEmpty() ? QString::fromUtf8(text) : told;
}

Language language_of(const QLocale& system) {
    for (const QString& name : system.uiLanguages()) {
        const QLocale::Language one = QLocale(name).language();
        if (one == QLocale::Spanish) return Language::spanish;
        if (one == QLocale::English) return Language::english;
    }
    return Language::english;
}

QString code_of(Language language) { return language == Language::spanish ? QStringLiteral("es") : QStringLiteral("en"); }

std::optional<Language> language_from_code(const QString& code) {
    if (code == QStringLiteral("en")) return Language::english;
    if (code == QStringLiteral("es")) return Language::spanish;
    return std::nullopt;
}

QLocale locale_spoken() { return locale_of(spoken()); }

QString decimal(double value, int digits) { return in_their_digits(QString::number(value, 'f', digits)); }

QString in_their_digits(QString number_with_a_point) {
    return number_with_a_point.replace(QLatin1Char('.'), QLatin1Char(mark_at_hand()));
}

QString moment_words(UtcTime time) {
    const QDateTime moment = local_time(time);
    const QString pattern = spoken() == Language::spanish ? QStringLiteral("d 'de' MMMM 'de' yyyy, HH:mm")
                                                          : QStringLiteral("d MMMM yyyy, HH:mm");
    return locale_spoken().toString(moment, pattern) + QLatin1Char(' ') + moment.timeZoneAbbreviation();
}

}  // namespace plugside
