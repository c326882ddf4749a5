#include "app/stages/note_meanings.h"

#include <QCoreApplication>

namespace plugside {

namespace {

QString words(const char* text) { return QCoreApplication::translate("NoteMeanings", text); }

}  // namespace

std::vector<NoteMeaning> note_meanings() {
    return {{words(QT_TRANSLATE_NOOP("NoteMeanings", "nothing")), ""},
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

namespace {

// "fan 135" is told as what it says; the others by their own words.
QString meaning_words(const std::string& means) {
    for (const NoteMeaning& meaning : note_meanings())
        if (!meaning.wants_bearing && meaning.means == means) return meaning.words;
    const std::string fan = "fan ";
    if (means.rfind(fan, 0) == 0)
        return words(QT_TRANSLATE_NOOP("NoteMeanings", "fan %1")).arg(QString::fromStdString(means.substr(fan.size())));
    return QString::fromStdString(means);
}

}  // namespace

QString rule_words(const NoteRule& rule) {
    const QString said = QString::fromStdString(rule.words);
    const QString where = !rule.mark.empty()
                              ? words(QT_TRANSLATE_NOOP("NoteMeanings", "mark %1")).arg(QString::fromStdString(rule.mark))
                          : !rule.walk.empty() ? QString::fromStdString(rule.walk)
                                               : words(QT_TRANSLATE_NOOP("NoteMeanings", "every walk"));
    if (rule.means.empty()) return words(QT_TRANSLATE_NOOP("NoteMeanings", "“%1” says nothing: %2")).arg(said, where);
    return words(QT_TRANSLATE_NOOP("NoteMeanings", "“%1” means %2: %3")).arg(said, meaning_words(rule.means), where);
}

}  // namespace plugside
