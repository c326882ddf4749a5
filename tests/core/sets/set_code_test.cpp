// Names of sets on paper, with check figures by ISO/IEC 7064.
#include "core/sets/set_code.h"

#include <gtest/gtest.h>

namespace plugside {
namespace {

// Numbers with their check figures, as published: the example of ISO/IEC 7064 for MOD 97-10, and the bank account of ISO 13616's example with
// its country and check figures moved to the end [memory]. tests/published/set_codes.py has a library's word besides.
TEST(SetCode, LeavesOneAsThePublishedExamplesDo) {
    EXPECT_EQ(remainder_by_97("79444"), 1);
    EXPECT_EQ(remainder_by_97("WEST12345698765432GB82"), 1);
    EXPECT_NE(remainder_by_97("WEST12345698765423GB82"), 1);
}

TEST(SetCode, IsReadAgainAsItIsWrittenAndAsItIsCopied) {
    for (const char* letter : {"A", "B", "Z", "AA", "QX"})
        for (const int number : {1, 9, 10, 99, 100, 5000}) {
            const SetName name{letter, number};
            const std::string code = set_code(name);
            EXPECT_EQ(read_set_code(code), name) << code;
        }
    const std::string code = set_code({"C", 7});
    EXPECT_EQ(code.substr(0, 4), "C07-");
    EXPECT_EQ(read_set_code(" c 07 " + code.substr(4)), (SetName{"C", 7}));
}

TEST(SetCode, WithOneSignWrongIsNeverTakenForAnother) {
    const std::string signs = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    for (const SetName& name : {SetName{"C", 7}, SetName{"M", 22}, SetName{"AB", 118}}) {
        const std::string code = set_code(name);
        for (std::size_t at = 0; at < code.size(); ++at) {
            if (code[at] == '-') continue;
            for (const char sign : signs) {
                std::string wrong = code;
                wrong[at] = sign;
                if (wrong != code) {
                    EXPECT_FALSE(read_set_code(wrong)) << wrong << " for " << code;
                }
            }
        }
    }
}

TEST(SetCode, WithTwoNeighboursChangedIsNeverTakenForAnother) {
    for (int number = 1; number < 1000; ++number) {
        const std::string code = set_code({"AB", number});
        for (std::size_t at = 1; at < code.size(); ++at) {
            std::string wrong = code;
            std::swap(wrong[at], wrong[at - 1]);
            if (wrong[at] == '-' || wrong[at - 1] == '-' || wrong == code) continue;
            EXPECT_FALSE(read_set_code(wrong)) << wrong << " for " << code;
        }
    }
}

TEST(SetCode, ThatIsNoneReadsAsNothing) {
    for (const char* text : {"", "C", "C07", "07-13", "C-", "C0-97", "C07_13", "ñ07-13", "C00-97", "C99999999999-01"})
        EXPECT_FALSE(read_set_code(text)) << text;
}

}  // namespace
}  // namespace plugside
