// Small made-up fields on the disk, for sequences of acts: a walk with all that can be wrong in it, the ground, and files to be added
// later. Each is simulated by its number, so that a number names a field.
#pragma once

#include <gtest/gtest.h>

#include <algorithm>
#include <map>
#include <string>

#include "app/reading/told_reading.h"
#include "core/simulation/burrow_simulator.h"
#include "geo/write/ground_layers.h"
#include "geo/write/survey_file.h"
#include "geo/write/walk_gpx.h"
#include "tests/app/session/keyed_choice.h"
#include "tests/geo/temporary_folder.h"

namespace plugside::testing_support {

struct ActField {
    std::vector<std::filesystem::path> files;  // that the field was read from
    std::vector<std::filesystem::path> more;   // that can be added
    FileChoices told;
    FieldSurvey field;
};

inline constexpr const char* act_notes[] = {
    "gr", "gr near the gate", "xyzzy", "f 135 bk", "zz gr", "dog runs here", "135M fresh", "f 200 older", "bk xyzzy zz"};
inline constexpr const char* act_note_words[] = {"gr", "xyzzy", "bk", "zz", "f"};

// What a walk brings home that a person has to look at: notes in words of the walker's own, marks pressed twice, fans read from the
// wrong end.
inline void make_messy(Survey& survey, KeyedChoice& random) {
    for (Mound& mound : survey.mounds)
        if (random.chance(0.5)) mound.note = random.one_of(act_notes);
    const std::size_t marks = survey.mounds.size();
    for (int again = 0; again < 3 && marks > 0; ++again) {
        Mound pressed = survey.mounds[random.below(marks)];
        pressed.name += " b";
        pressed.plug = pressed.plug + LocalVector{random.between(-0.1, 0.1), random.between(-0.1, 0.1)};
        if (pressed.time) pressed.time = *pressed.time + std::chrono::seconds(3);
        survey.mounds.push_back(pressed);
        Mound& turned = survey.mounds[random.below(marks)];
        if (turned.fan) turned.fan = turned.fan->reversed();
    }
}

// One longitude of the file loses its sign, as a person writes it down wrong.
inline void lose_a_sign(const std::filesystem::path& gpx, const TemporaryFolder& folder) {
    std::string text = content_of(gpx);
    auto at = text.find("lon=\"-", text.find("<wpt", text.find("<wpt", text.find("<wpt") + 1) + 1));
    if (at != std::string::npos) text.erase(at + 5, 1);
    folder.file(gpx.filename().string(), text);
}

class ActFields {
public:
    // Made when first asked for, of this many that there are.
    static constexpr std::uint64_t count = 14;
    const ActField& at(std::uint64_t number) {
        const auto made = made_.find(number % count);
        return made != made_.end() ? made->second : made_.emplace(number % count, make(number % count)).first->second;
    }
    // The sample project, with a later walk, a table and a plan handed out before to be added.
    const ActField& sample() {
        if (sample_.files.empty()) {
            const std::filesystem::path meadow = PLUGSIDE_SOURCE_DIR "/sample-projects/creek-meadow";
            sample_.files = {meadow / "walk.gpx", meadow / "ground.gpkg"};
            read(sample_);
            KeyedChoice random(43);
            folders_.push_back(std::make_unique<TemporaryFolder>());
            add_more(sample_, sample_.field.survey, sample_.field.frame, *folders_.back(), random);
            sample_.more.push_back(handed_out_before(sample_.field, *folders_.back()));
        }
        return sample_;
    }

private:
    static void read(ActField& made) {
        auto field = read_as_told(made.files, made.told);
        EXPECT_TRUE(field) << (field ? "" : sentence(field.error()));
        if (field) made.field = std::move(*field);
    }

    ActField make(std::uint64_t number) {
        KeyedChoice random(mixed(41, number));
        const auto kinds = all_field_kinds();
        SimulationOptions options;
        options.kind = kinds[number % kinds.size()];
        options.seed = 500 + number;
        options.mounds_wanted = 8 + random.below(18);
        options.with_ground = random.chance(0.7);
        Survey survey = simulate_field(options).survey;
        make_messy(survey, random);
        const std::vector<GeographicPoint> places{{-104.9, 41.0}, {-120.0, 38.25}, {-99.5, -35.0}};
        const LocalFrame frame = LocalFrame::centred_on(random.one_of(places));
        folders_.push_back(std::make_unique<TemporaryFolder>());
        const TemporaryFolder& folder = *folders_.back();
        ActField made;
        made.files = {folder / "walk.gpx"};
        EXPECT_EQ(refusal_of(write_walk(survey, frame, "Field of acts", made.files.front())), "");
        if (random.chance(0.5)) lose_a_sign(made.files.front(), folder);
        const auto ground = folder / "ground.gpkg";
        EXPECT_EQ(refusal_of(write_ground(survey.ground, frame, ground)), "");
        (random.chance(0.5) ? made.files : made.more).push_back(ground);
        if (random.chance(0.4)) made.told.north["walk.gpx"] = North::magnetic_north;
        add_more(made, survey, frame, folder, random);
        read(made);
        made.more.push_back(handed_out_before(made.field, folder));
        return made;
    }

    // A later walk that meets some of the marks again, and a table.
    static void add_more(ActField& made, const Survey& survey, const LocalFrame& frame, const TemporaryFolder& folder,
                         KeyedChoice& random) {
        Survey later = survey;
        later.ground = {};
        later.mounds.resize(std::min<std::size_t>(later.mounds.size(), 5));
        for (Mound& mound : later.mounds) {
            mound.plug = mound.plug + LocalVector{random.between(-0.6, 0.6), random.between(-0.6, 0.6)};
            if (mound.time) mound.time = *mound.time + std::chrono::hours(50);
            if (random.chance(0.5)) mound.name += " later";
        }
        made.more.push_back(folder / "later.gpx");
        EXPECT_EQ(refusal_of(write_walk(later, frame, "Later", made.more.back())), "");
        std::string table = "name,lat,lon,fan,note\n";
        for (int row = 0; row < 4; ++row) {
            const GeographicPoint at =
                frame.to_geographic(survey.mounds.front().plug + LocalVector{random.between(-9.0, 9.0), 3.0 * row});
            table += "T" + std::to_string(row) + "," + std::to_string(at.latitude_degrees) + "," +
                     std::to_string(at.longitude_degrees) + "," + std::to_string(random.below(360)) + "," +
                     random.one_of(act_notes) + "\n";
        }
        made.more.push_back(folder.file("table.csv", table));
    }

    // The field as somebody had it who decided, answered and said things of it.
    static std::filesystem::path handed_out_before(FieldSurvey field, const TemporaryFolder& folder) {
        Survey& survey = field.survey;
        const std::string first = survey.mounds.front().name;
        const std::string last = survey.mounds.back().name;
        survey.decisions = {{{ProbeKind::plug_side, first, ""}, SetChoice::kept, {}},
                            {{ProbeKind::between_mounds, first, last}, SetChoice::dropped, {}}};
        survey.known = {{FactKind::same_system, {first, last}, {}, {}, "", {}}};
        Mend older;
        older.kind = MendKind::freshness;
        older.marks = {first};
        older.freshness = Freshness::older;
        survey.answers.push_back({own_mend_id(MendKind::freshness, first), Answer::accepted, older});
        put_right(survey);
        const auto file = folder / "handed.gpkg";
        EXPECT_EQ(refusal_of(write_survey(field, {}, file)), "");
        return file;
    }

    std::vector<std::unique_ptr<TemporaryFolder>> folders_;
    std::map<std::uint64_t, ActField> made_;
    ActField sample_;
};

}  // namespace plugside::testing_support
