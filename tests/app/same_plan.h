// Whether two plans are the same to the last bit, letters apart: those depend on the plan that was shown before.
#pragma once

#include <gtest/gtest.h>

#include "core/plan/plan.h"

namespace plugside {

inline void expect_same_systems(const Plan& a, const Plan& b) {
    ASSERT_EQ(a.systems.size(), b.systems.size());
    for (std::size_t s = 0; s < a.systems.size(); ++s) {
        EXPECT_EQ(a.systems[s].mounds, b.systems[s].mounds);
        EXPECT_EQ(a.systems[s].single.value(), b.systems[s].single.value());
        EXPECT_EQ(a.systems[s].run_length.value(), b.systems[s].run_length.value());
        EXPECT_TRUE(a.systems[s].outline == b.systems[s].outline);
        EXPECT_EQ(a.systems[s].label_at, b.systems[s].label_at);
    }
    ASSERT_EQ(a.runs.size(), b.runs.size());
    for (std::size_t r = 0; r < a.runs.size(); ++r) {
        EXPECT_EQ(a.runs[r].line.vertices, b.runs[r].line.vertices);
        EXPECT_EQ(a.runs[r].sd_m, b.runs[r].sd_m);
        EXPECT_EQ(a.runs[r].probability.value(), b.runs[r].probability.value());
    }
}

inline void expect_same_ladders(const Plan& a, const Plan& b) {
    ASSERT_EQ(a.probes.size(), b.probes.size());
    for (std::size_t p = 0; p < a.probes.size(); ++p) {
        EXPECT_EQ(a.probes[p].key, b.probes[p].key);
        EXPECT_EQ(a.probes[p].system, b.probes[p].system);
        EXPECT_EQ(a.probes[p].hit.value(), b.probes[p].hit.value());
        EXPECT_EQ(a.probes[p].expected_rungs, b.probes[p].expected_rungs);
        EXPECT_EQ(a.probes[p].rung_places, b.probes[p].rung_places);
    }
    ASSERT_EQ(a.sets.size(), b.sets.size());
    for (std::size_t s = 0; s < a.sets.size(); ++s) {
        EXPECT_EQ(a.sets[s].probe, b.sets[s].probe);
        EXPECT_EQ(a.sets[s].rank, b.sets[s].rank);
        EXPECT_EQ(a.sets[s].visit_order, b.sets[s].visit_order);
        EXPECT_EQ(a.sets[s].choice, b.sets[s].choice);
        EXPECT_EQ(a.sets[s].cautions, b.sets[s].cautions);
    }
    EXPECT_EQ(a.expected_reached_by_sets, b.expected_reached_by_sets);
}

inline void expect_same_plan(const Plan& a, const Plan& b) {
    EXPECT_EQ(a.revision, b.revision);
    EXPECT_EQ(a.first_look, b.first_look);
    EXPECT_EQ(a.estimate.expected, b.estimate.expected);
    EXPECT_EQ(a.estimate.low, b.estimate.low);
    EXPECT_EQ(a.estimate.high, b.estimate.high);
    EXPECT_EQ(a.estimate.most_likely, b.estimate.most_likely);
    EXPECT_EQ(a.estimate.link_length.value(), b.estimate.link_length.value());
    EXPECT_EQ(a.mounds, b.mounds);
    expect_same_systems(a, b);
    expect_same_ladders(a, b);
    ASSERT_EQ(a.drawn != nullptr, b.drawn != nullptr);
    if (a.drawn) {
        EXPECT_EQ(a.drawn->tree, b.drawn->tree);
    }
    EXPECT_EQ(a.area_walked_m2, b.area_walked_m2);
    EXPECT_EQ(a.notices, b.notices);
}

}  // namespace plugside
