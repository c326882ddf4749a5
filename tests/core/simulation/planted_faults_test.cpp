#include "core/simulation/planted_faults.h"

#include <gtest/gtest.h>

#include <cmath>
#include <map>

#include "core/simulation/burrow_simulator.h"

namespace plugside {
namespace {

SimulatedField some_field(std::uint64_t seed = 11) {
    SimulationOptions options;
    options.seed = seed;
    options.mounds_wanted = 300;
    options.with_ground = true;
    return simulate_field(options);
}

const Mound& mark_named(const Survey& survey, const std::string& name) {
    for (const Mound& mound : survey.mounds)
        if (mound.name == name) return mound;
    throw std::out_of_range(name);
}

TEST(PlantedFaults, AreListedAndThereAndTheFirstMarksKeepTheirIndex) {
    const SimulatedField before = some_field();
    SimulatedField field = before;
    Random random(3);
    FaultsToPlant wanted;
    wanted.marked_later = 0.5;
    const PlantedFaults planted = plant_faults(field, wanted, random);
    ASSERT_GT(field.survey.mounds.size(), before.survey.mounds.size());
    for (std::size_t i = 0; i < before.survey.mounds.size(); ++i)
        EXPECT_EQ(field.survey.mounds[i].name, before.survey.mounds[i].name);
    EXPECT_GE(planted.pressed_twice.size(), 4U);
    EXPECT_GE(planted.met_again.size(), 3U);
    EXPECT_GE(planted.reversed.size(), 4U);
    EXPECT_EQ(planted.jumped.size(), 2U);
    EXPECT_EQ(planted.jumped_track_points.size(), 3U);
    EXPECT_EQ(planted.outside.size(), 2U);
    for (const MarkedAgain& again : planted.pressed_twice) {
        EXPECT_GE(again.seconds, 2.0);
        EXPECT_LE(again.seconds, 6.0);
        EXPECT_LT(distance_m(mark_named(field.survey, again.mark).plug, mark_named(field.survey, again.first).plug), 6.0);
    }
    for (const MarkedAgain& again : planted.met_again) EXPECT_GT(again.seconds, 100.0);
    for (const std::string& name : planted.reversed)
        EXPECT_EQ(mark_named(field.survey, name).fan, mark_named(before.survey, name).fan->reversed());
    for (const std::string& name : planted.outside)
        EXPECT_FALSE(contains(field.survey.ground.boundary, mark_named(field.survey, name).plug));
    for (const std::string& name : planted.jumped)
        EXPECT_GE(distance_m(mark_named(field.survey, name).plug, mark_named(before.survey, name).plug), 15.0);
    for (const std::string& name : planted.diggers) {
        EXPECT_EQ(mark_named(field.survey, name).kind, SignKind::gopher_mound);
        EXPECT_FALSE(is_gopher_sign(mark_named(before.survey, name).kind));
    }
}

TEST(PlantedFaults, AreTheSameForTheSameSeed) {
    SimulatedField one = some_field(), other = some_field();
    Random first(3), second(3);
    plant_faults(one, {}, first);
    plant_faults(other, {}, second);
    EXPECT_EQ(one.survey, other.survey);
}

TEST(PlantedFaults, AWholeWalkIsTurnedAndReadFromTheWrongEnd) {
    const SimulatedField before = some_field();
    SimulatedField field = before;
    FaultsToPlant wanted;
    wanted.turned_walk = 0;
    wanted.turned_degrees = 20.0;
    wanted.wrong_end_walk = 0;
    wanted.reversed = wanted.pressed_twice = wanted.met_again = 0.0;
    Random random(3);
    plant_faults(field, wanted, random);
    for (std::size_t i = 0; i < before.survey.mounds.size(); ++i) {
        const Mound &was = before.survey.mounds[i], &is = field.survey.mounds[i];
        if (was.fan && was.walk == 0) {
            EXPECT_NEAR(turn_degrees(*was.fan, *is.fan), -160.0, 1e-9);
        }
        if (was.fan && was.walk != 0) {
            EXPECT_EQ(was.fan, is.fan);
        }
    }
}

TEST(PlantedFaults, AnotherReceiverHasTheErrorsThatItIsToldToHave) {
    double own = 0.0, whole = 0.0, steps = 0.0, marks = 0.0;
    const Receiver receiver{0.2, 1.0, 600.0};
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
        SimulatedField field = some_field(seed);
        Random random(seed);
        record_with(field, receiver, random);
        std::map<std::pair<std::size_t, UtcTime>, LocalVector> errors;
        for (const TrueMound& truth : field.truth.mounds)
            if (truth.seen_as) {
                const Mound& mark = field.survey.mounds[*truth.seen_as];
                errors[{mark.walk, *mark.time}] = mark.plug - truth.plug;
            }
        for (auto it = errors.begin(), last = errors.end(); it != errors.end(); last = it++) {
            whole += dot(it->second, it->second) / 2.0;
            marks += 1.0;
            if (last == errors.end() || last->first.first != it->first.first) continue;
            const double wait_s = static_cast<double>((it->first.second - last->first.second).count()) / 1000.0;
            if (wait_s > 20.0) continue;
            const LocalVector step = it->second - last->second;
            own += dot(step, step) / 2.0 - 2.0 * (1.0 - std::exp(-wait_s / 600.0));
            steps += 1.0;
        }
    }
    EXPECT_NEAR(std::sqrt(own / steps / 2.0), 0.2, 0.02);
    EXPECT_NEAR(std::sqrt(whole / marks), std::hypot(0.2, 1.0), 0.25);
}

TEST(PlantedFaults, AnEmptyFieldStaysEmpty) {
    SimulatedField field;
    Random random(1);
    plant_faults(field, {}, random);
    EXPECT_TRUE(field.survey.mounds.empty());
}

}  // namespace
}  // namespace plugside
