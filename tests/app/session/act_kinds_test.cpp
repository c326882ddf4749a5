// Random sequences of acts know every act that there is: a command of the history, a member of the session, an act on the ground or a
// word of an enumeration that is new in the program and not made by random_acts.h fails here.
#include <cxxabi.h>

#include <fstream>
#include <regex>
#include <set>
#include <typeinfo>

#include "tests/app/application.h"
#include "tests/app/session/random_acts.h"

namespace plugside {
namespace {

using namespace testing_support;
using Names = std::set<std::string>;

const std::filesystem::path source = PLUGSIDE_SOURCE_DIR;

static_assert(std::variant_size_v<SurveyPart> == 3,
              "RandomActs edits the ground, the known facts and the work order: teach it the new part");

// What a pattern's first group matches in a file.
Names named_in(const std::filesystem::path& file, const std::string& pattern) {
    const std::string text = content_of(file);
    EXPECT_FALSE(text.empty()) << file;
    const std::regex wanted(pattern);
    Names names;
    for (auto found = std::sregex_iterator(text.begin(), text.end(), wanted); found != std::sregex_iterator(); ++found)
        names.insert((*found)[1].str());
    return names;
}

std::size_t words_of_enumeration(const std::string& header, const std::string& name) {
    const std::string text = content_of(source / header);
    std::smatch body;
    EXPECT_TRUE(std::regex_search(text, body, std::regex("enum class " + name + " \\{([^}]*)\\}")))
        << header << ", " << name;
    const std::string words = std::regex_replace(body[1].str(), std::regex("//[^\n]*"), "");
    const std::regex word("[a-z_]+");
    return static_cast<std::size_t>(std::distance(std::sregex_iterator(words.begin(), words.end(), word), {}));
}

std::string class_of(const QUndoCommand& command) {
    int status = 0;
    const std::unique_ptr<char, void (*)(void*)> name(abi::__cxa_demangle(typeid(command).name(), nullptr, nullptr, &status),
                                                      std::free);
    const std::string whole = status == 0 ? name.get() : "?";
    return whole.substr(whole.rfind(':') + 1);
}

// What some random sequences do, without anything being written.
struct Seen {
    Names commands, members, mends, answers, facts, choices, ground, digger, freshness;
    Names done;
};

void look_at(const Survey& survey, Seen& seen) {
    for (const MendAnswer& answer : survey.answers) {
        seen.answers.insert(to_text(answer.answer));
        seen.mends.insert(to_text(answer.mend.kind));
        if (answer.mend.sign) seen.digger.insert(to_text(*answer.mend.sign));
        if (answer.mend.freshness) seen.freshness.insert(to_text(*answer.mend.freshness));
    }
    for (const KnownFact& fact : survey.known) seen.facts.insert(to_text(fact.kind));
    for (const SetDecision& decision : survey.decisions) seen.choices.insert(to_text(decision.choice));
    for (const GroundShape shape : shapes_of(survey.ground)) seen.ground.insert(to_text(shape.kind));
}

Seen seen_in_sequences(std::uint64_t count) {
    ActFields fields;
    Seen seen;
    for (std::uint64_t number = 0; number < count; ++number) {
        const ActField& field = fields.at(number % 4);
        FieldSession session;
        KeyedChoice random(mixed(77, number));
        RandomActs acts(session, field, random);
        session.resume(field.field, {field.files}, field.told, false);
        for (int act = 0; act < 40; ++act) {
            const int before = session.history().index();
            const std::string done = acts.act();
            session.planning().stop();
            look_at(session.field()->survey, seen);
            if (session.history().index() == before) continue;  // there was nothing to be done
            seen.done.insert(done);
            seen.members.insert(done.substr(0, done.find(' ')));
            seen.commands.insert(class_of(*session.history().command(session.history().index() - 1)));
        }
    }
    return seen;
}

class ActKinds : public OnScreen {
protected:
    static const Seen& seen() {
        static const Seen all = seen_in_sequences(40);
        return all;
    }
};

TEST_F(ActKinds, EveryCommandOfTheHistoryIsMade) {
    Names commands;
    for (const auto& entry : std::filesystem::recursive_directory_iterator(source / "app"))
        if (entry.path().extension() == ".h" || entry.path().extension() == ".cpp")
            commands.merge(named_in(entry.path(), "class (\\w+)[^;{]*: public QUndoCommand"));
    EXPECT_GE(commands.size(), 5U);
    // picture_acts.h makes those, and undo_property_test.cpp does them among the others
    EXPECT_EQ(commands.erase("PictureCommand"), 1U);
    EXPECT_EQ(seen().commands, commands);
}

TEST_F(ActKinds, EveryMemberOfTheSessionIsAnActThatIsMadeOrKnownToBeNone) {
    // what opens, plans, looks or writes changes nothing that the history keeps
    const Names none{"open",   "close",      "look_into_files", "resume",   "make_way", "adopt",
                     "accept", "plan_again", "look_back_again", "say_anew", "hand_out", "push"};
    std::string header = content_of(source / "app/session/field_session.h");
    const auto from = header.find("public:");
    header = header.substr(from, header.find("Q_SIGNALS:") - from);
    header = std::regex_replace(header, std::regex(" = \\{\\}"), "");
    const TemporaryFolder folder;
    const auto members =
        named_in(folder.file("public.h", header), "\n    (?:\\[\\[nodiscard\\]\\] )?(?:void|bool) (\\w+)\\([^;{]*\\);");
    Names acts;
    for (const std::string& member : members)
        if (!none.contains(member)) acts.insert(member);
    Names made;
    for (const RandomActs::Kind& kind : RandomActs::kinds()) made.insert(kind.member);
    EXPECT_EQ(made, acts);
    EXPECT_EQ(seen().members, acts) << "each has to be done now and then";
}

TEST_F(ActKinds, EveryActOnTheGroundIsMade) {
    const Names known(GroundActs::names().begin(), GroundActs::names().end());
    EXPECT_EQ(known, named_in(source / "core/survey/ground_edits.h", "EditedGround (\\w+)\\("));
    for (const std::string& name : known) EXPECT_TRUE(seen().done.contains("edit " + name)) << name;
    EXPECT_EQ(seen().ground.size(), words_of_enumeration("core/survey/ground_shapes.h", "GroundKind"));
}

TEST_F(ActKinds, EveryActOnWhatIsKnownIsMade) {
    EXPECT_EQ(named_in(source / "app/commands/known_facts.h", "std::vector<KnownFact> (\\w+)\\("),
              (Names{"said", "lifted"}));
    EXPECT_TRUE(seen().done.contains("edit said"));
    EXPECT_TRUE(seen().done.contains("edit lifted"));
    EXPECT_EQ(seen().facts.size(), words_of_enumeration("core/survey/known_fact.h", "FactKind"));
}

TEST_F(ActKinds, EveryWordOfAnAnswerAMendAndADecisionIsSaid) {
    EXPECT_EQ(seen().mends.size(), words_of_enumeration("core/survey/mend.h", "MendKind"));
    EXPECT_EQ(seen().answers.size(), words_of_enumeration("core/survey/mend.h", "Answer"));
    EXPECT_EQ(seen().digger.size(), words_of_enumeration("core/survey/mound.h", "SignKind"));
    EXPECT_EQ(seen().freshness.size(), words_of_enumeration("core/survey/mound.h", "Freshness"));
    // a set that is undecided has no row
    EXPECT_EQ(seen().choices.size() + 1, words_of_enumeration("core/survey/decision.h", "SetChoice"));
}

}  // namespace
}  // namespace plugside
