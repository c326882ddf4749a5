#include "geo/read/note_corrections.h"

#include <gtest/gtest.h>

#include "geo/frame/declination.h"
#include "geo/read/field_reader.h"
#include "geo/read/numbers.h"
#include "tests/geo/read/gpx_text.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

const LocalFrame frame = LocalFrame::centred_on({-120.5, 38.25});

Mound noted(const std::string& name, const std::string& note, std::size_t walk = 0) {
    Mound mound;
    mound.name = name;
    mound.note = note;
    mound.time = parse_utc_time("2026-06-01T10:00:00Z");
    mound.walk = walk;
    const NoteReading reading = read_note(note);
    if (reading.fan_degrees) mound.fan = frame.plane_bearing(Bearing::degrees(*reading.fan_degrees), mound.plug);
    mound.freshness = reading.freshness.value_or(Freshness::unknown);
    mound.kind = reading.kind.value_or(SignKind::gopher_mound);
    mound.mentions = reading.mentions;
    return mound;
}

Survey survey() {
    Survey survey;
    survey.walks = {{"walk 1", "a.gpx", {}}, {"walk 2", "b.gpx", {}}};
    survey.mounds = {noted("M1", "fan 100 gr"), noted("M2", "gr"),    noted("M3", "fan 90 fresh, zz"),
                     noted("M4", "grand"),      noted("M5", "gr", 1), noted("M6", "fan 10"),
                     noted("M7", "dog gr"),     noted("M8", "qq gr")};
    return survey;
}

const Mound& named(const Survey& survey, const std::string& name) {
    for (const Mound& mound : survey.mounds)
        if (mound.name == name) return mound;
    throw std::runtime_error(name);
}

TEST(NoteCorrections, a_rule_of_a_walk_changes_just_the_marks_whose_notes_read_otherwise_and_keeps_what_was_recorded) {
    Survey corrected = survey();
    use_note_rules(corrected, frame, {{"walk 1", "gr", "old"}});
    for (const char* name : {"M1", "M2", "M7", "M8"}) {
        EXPECT_EQ(named(corrected, name).freshness, Freshness::older) << name;
        ASSERT_TRUE(named(corrected, name).recorded.has_value()) << name;
    }
    EXPECT_EQ(named(corrected, "M8").recorded->freshness, Freshness::unknown);
    for (const char* name : {"M3", "M4", "M5", "M6"}) EXPECT_EQ(named(corrected, name), named(survey(), name)) << name;
    EXPECT_EQ(named(corrected, "M1").fan, named(survey(), "M1").fan);
}

TEST(NoteCorrections, lifting_all_rules_leaves_no_trace) {
    Survey corrected = survey();
    use_note_rules(corrected, frame, {{"walk 1", "gr", "mole"}, {"walk 1", "dog", ""}, {"", "zz", "fan 200"}});
    EXPECT_NE(corrected, survey());
    EXPECT_EQ(named(corrected, "M2").kind, SignKind::mole);
    EXPECT_TRUE(named(corrected, "M7").mentions.empty());
    const Survey once = corrected;
    obey_note_rules(corrected, frame);
    EXPECT_EQ(corrected, once);
    use_note_rules(corrected, frame, {});
    EXPECT_EQ(corrected, survey());
}

TEST(NoteCorrections, a_rule_of_one_mark_is_about_that_mark_alone_and_goes_before_its_walks) {
    Survey corrected = survey();
    use_note_rules(corrected, frame, {{"walk 1", "gr", "crushed", "M1"}, {"walk 1", "gr", "old"}});
    EXPECT_EQ(named(corrected, "M1").freshness, Freshness::crushed);
    EXPECT_EQ(named(corrected, "M2").freshness, Freshness::older);
    use_note_rules(corrected, frame, {{"walk 1", "gr", "crushed", "M1"}});
    EXPECT_EQ(named(corrected, "M2"), named(survey(), "M2"));
}

TEST(NoteCorrections, what_a_person_said_of_a_single_mark_has_the_last_word) {
    Survey corrected = survey();
    Mend mend;
    mend.kind = MendKind::freshness;
    mend.marks = {"M2"};
    mend.freshness = Freshness::fresh;
    answer_finding(corrected, {own_mend_id(MendKind::freshness, "M2"), Answer::accepted, mend});
    use_note_rules(corrected, frame, {{"walk 1", "gr", "old"}});
    EXPECT_EQ(named(corrected, "M2").freshness, Freshness::fresh);
    EXPECT_EQ(named(corrected, "M1").freshness, Freshness::older);
}

TEST(NoteCorrections, tells_before_which_marks_a_rule_would_change) {
    const Survey before = survey();
    const RuleEffect older = effect_of_rules(before, frame, {{"walk 1", "gr", "old"}});
    EXPECT_EQ(older.taken_otherwise, (std::vector<std::size_t>{0, 1, 6, 7}));
    EXPECT_EQ(older.read_otherwise, older.taken_otherwise);
    const RuleEffect nothing = effect_of_rules(before, frame, {{"walk 1", "gr", ""}});
    EXPECT_TRUE(nothing.taken_otherwise.empty());
    EXPECT_EQ(nothing.read_otherwise, (std::vector<std::size_t>{0, 1, 6, 7}));
    EXPECT_EQ(before, survey());
}

TEST(NoteCorrections, a_bare_bearing_of_a_magnetic_walk_and_one_that_says_so_are_turned_alike) {
    Survey corrected = survey();
    corrected.walks[0].bearings_from = North::magnetic_north;
    use_note_rules(corrected, frame, {{"walk 1", "gr", "fan 50", "M2"}, {"walk 1", "gr", "fan 50 magnetic", "M8"}});
    const double declination = *declination_degrees({-120.5, 38.25}, *parse_utc_time("2026-06-01T10:00:00Z"));
    for (const char* name : {"M2", "M8"}) {
        ASSERT_TRUE(named(corrected, name).fan.has_value()) << name;
        EXPECT_NEAR(named(corrected, name).fan->degrees(), 50.0 + declination, 1e-6) << name;
    }
}

TEST(NoteCorrections, find_the_words_of_a_rule_however_they_are_written) {
    Survey survey;
    survey.walks = {{"walk 1", "a.gpx", {}}};
    survey.mounds = {noted("M1", "GR"), noted("M2", "Qué tal"), noted("M3", "fan 20,3b"), noted("M4", "que tal"),
                     noted("M5", "gr-2")};
    use_note_rules(survey, frame, {{"walk 1", "gr", "old"}, {"walk 1", "que tal", "mole"}, {"walk 1", "gr 2", "crushed"}});
    EXPECT_EQ(named(survey, "M1").freshness, Freshness::older);
    EXPECT_EQ(named(survey, "M2").kind, SignKind::mole);
    EXPECT_EQ(named(survey, "M4").kind, SignKind::mole);
    EXPECT_EQ(named(survey, "M5").freshness, Freshness::crushed);
    EXPECT_EQ(named(survey, "M3"), noted("M3", "fan 20,3b"));
}

TEST(NoteCorrections, hold_for_marks_that_are_added_later) {
    const TemporaryFolder folder;
    const std::string first = wpt("<time>2026-03-01T09:00:00Z</time><name>a</name><cmt>fan 90 gr</cmt>", "38.25", "-120.0");
    const auto file = folder.file("walk.gpx", gpx(first));
    auto field = read_field({file});
    ASSERT_TRUE(field.has_value());
    use_note_rules(field->survey, field->frame, {{"walk 1", "gr", "old"}});
    const auto longer = folder.file(
        "walk.gpx",
        gpx(first + wpt("<time>2026-03-01T09:05:00Z</time><name>b</name><cmt>gr, two dogs</cmt>", "38.2503", "-120.0")));
    const auto more = add_to_field(*field, {longer});
    ASSERT_TRUE(more.has_value());
    ASSERT_EQ(more->survey.mounds.size(), 2U);
    EXPECT_EQ(more->survey.note_rules, field->survey.note_rules);
    for (const Mound& mound : more->survey.mounds) EXPECT_EQ(mound.freshness, Freshness::older) << mound.name;
    ASSERT_EQ(more->survey.mounds[1].mentions.size(), 1U);
    EXPECT_EQ(more->survey.mounds[1].mentions[0].category, MentionCategory::pets);
}

}  // namespace
}  // namespace plugside
