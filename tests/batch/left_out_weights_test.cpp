#include "app/batch/left_out_weights.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <string>

#include "core/simulation/tuned_kinds.h"

namespace plugside {
namespace {

std::string text_of(const std::string& path) {
    std::ifstream in(path);
    return {std::istreambuf_iterator<char>(in), {}};
}

TEST(LeftOutWeights, OfEachKindWereLearntOnAllTheOthers) {
    for (const FieldKind kind : all_field_kinds()) {
        std::string word = to_text(kind);
        std::replace(word.begin(), word.end(), ' ', '_');
        const std::string text = text_of(std::string(PLUGSIDE_SOURCE_DIR) + "/resources/left_out/without_" + word + ".txt");
        const auto learnt_on = kinds_learnt_on(text);
        ASSERT_TRUE(learnt_on) << word;
        EXPECT_EQ(learnt_on->size() + 1, all_field_kinds().size()) << word;
        EXPECT_EQ(std::count(learnt_on->begin(), learnt_on->end(), kind), 0) << word;
        const LinkWeights& built_in = weights_without(kind);
        ASSERT_TRUE(built_in.net) << word;
        EXPECT_EQ(to_text(built_in), to_text(parse_link_weights(text))) << word;
        EXPECT_EQ(built_in.net->link_in.weight, parse_link_weights(text).net->link_in.weight) << word;
        EXPECT_NE(built_in.net->link_in.weight, learnt_link_weights().net->link_in.weight) << word;
    }
}

}  // namespace
}  // namespace plugside
