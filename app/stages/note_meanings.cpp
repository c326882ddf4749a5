#include "app/stages/note_meanings.h"

#include <QCoreApplication>

namespace plugside {

namespace {

QString words(const char* text) { return QCoreApplication::translate("NoteMeanings", text); }

}  // namespace

const std::vector<NoteMeaning>& note_meanings() {
    static const std::vector<NoteMeaning> meanings{
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "nothing")), ""},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "a fan towards…")), "fan", true},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "no fan to be read")), "no fan"},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "fresh")), "fresh"},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "older")), "old"},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "crushed")), "crushed"},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "a gopher's mound")), "gopher mound"},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "a gopher's surface plug")), "surface plug"},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "a mole's")), "mole"},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "a ground squirrel's")), "ground squirrel"},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "a vole's")), "vole"},
        {words(QT_TRANSLATE_NOOP("NoteMeanings", "something else")), "not a mound"}};
    return meanings;
}

std::string told_meaning(const NoteMeaning& meaning, int degrees) {
    return meaning.wants_bearing ? meaning.means + " " + std::to_string(degrees) : meaning.means;
}

std::vector<NoteRule> rules_from(const std::vector<std::string>& stretches, const std::string& means,
                                 const std::string& walk, const std::string& mark) {
    std::vector<NoteRule> rules;
    for (const std::string& stretch : stretches) rules.push_back({walk, stretch, rules.empty() ? means : "", mark});
    return rules;
}

QString rule_words(const NoteRule& rule) {
    const QString said = QString::fromStdString(rule.words);
    const QString where = !rule.mark.empty()
                              ? words(QT_TRANSLATE_NOOP("NoteMeanings", "mark %1")).arg(QString::fromStdString(rule.mark))
                          : !rule.walk.empty() ? QString::fromStdString(rule.walk)
                                               : words(QT_TRANSLATE_NOOP("NoteMeanings", "every walk"));
    if (rule.means.empty()) return words(QT_TRANSLATE_NOOP("NoteMeanings", "“%1” says nothing: %2")).arg(said, where);
    return words(QT_TRANSLATE_NOOP("NoteMeanings", "“%1” means %2: %3"))
        .arg(said, QString::fromStdString(rule.means), where);
}

}  // namespace plugside
