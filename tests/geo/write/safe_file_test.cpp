#include "geo/write/safe_file.h"

#include <gtest/gtest.h>

#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

TEST(SafeFile, appears_whole_with_nothing_beside_it) {
    const TemporaryFolder folder;
    ASSERT_EQ(refusal_of(write_text_file(folder / "a.txt", "new")), "");
    EXPECT_EQ(content_of(folder / "a.txt"), "new");
    ASSERT_EQ(refusal_of(write_text_file(folder / "a.txt", "newer")), "");
    EXPECT_EQ(content_of(folder / "a.txt"), "newer");
    EXPECT_EQ(folder.entries(), 1U);
}

TEST(SafeFile, without_a_commit_leaves_the_earlier_file_and_nothing_else) {
    const TemporaryFolder folder;
    folder.file("a.txt", "earlier");
    {
        auto safe = SafeFile::beside(folder / "a.txt");
        ASSERT_TRUE(safe.has_value());
        std::ofstream(safe->temporary()) << "half";
        SafeFile moved = std::move(*safe);
        EXPECT_TRUE(std::filesystem::exists(moved.temporary()));
    }
    EXPECT_EQ(content_of(folder / "a.txt"), "earlier");
    EXPECT_EQ(folder.entries(), 1U);
}

TEST(SafeFile, keeps_a_link_and_replaces_what_it_points_to) {
    const TemporaryFolder folder;
    folder.file("real.txt", "earlier");
    std::filesystem::create_symlink(folder / "real.txt", folder / "link.txt");
    ASSERT_EQ(refusal_of(write_text_file(folder / "link.txt", "new")), "");
    EXPECT_TRUE(std::filesystem::is_symlink(folder / "link.txt"));
    EXPECT_EQ(content_of(folder / "real.txt"), "new");
    std::filesystem::create_symlink(folder / "nowhere", folder / "broken.txt");
    EXPECT_NE(refusal_of(write_text_file(folder / "broken.txt", "new")), "");
}

TEST(SafeFile, refuses_folders_devices_and_places_that_do_not_exist) {
    const TemporaryFolder folder;
    for (const std::filesystem::path& file :
         {folder.path(), folder / "no/such.txt", std::filesystem::path("/dev/null"), folder.path() / ""}) {
        const auto written = write_text_file(file, "x");
        ASSERT_FALSE(written.has_value()) << file;
        EXPECT_EQ(written.error().code, Refusal::Code::cannot_write);
        EXPECT_EQ(written.error().file, file.string());
        EXPECT_FALSE(written.error().found.empty());
    }
    EXPECT_EQ(folder.entries(), 0U);
}

}  // namespace
}  // namespace plugside
