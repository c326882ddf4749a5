#include "geo/write/staged_files.h"

#include <gtest/gtest.h>

#include "geo/write/safe_file.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

StagedFiles::Writer text(std::string content) {
    return [content = std::move(content)](const std::filesystem::path& file) { return write_text_file(file, content); };
}

TEST(StagedFiles, of_several_folders_appear_together_and_leave_nothing_beside_them) {
    const TemporaryFolder one, other;
    one.file("a.txt", "earlier a");
    StagedFiles files;
    ASSERT_EQ(refusal_of(files.write(one / "a.txt", text("new a"))), "");
    ASSERT_EQ(refusal_of(files.write(other / "b.txt", text("new b"))), "");
    EXPECT_EQ(content_of(one / "a.txt"), "earlier a");
    const auto placed = files.commit();
    ASSERT_TRUE(placed.has_value()) << sentence(placed.error());
    EXPECT_EQ(*placed, (std::vector<std::filesystem::path>{one / "a.txt", other / "b.txt"}));
    EXPECT_EQ(content_of(one / "a.txt"), "new a");
    EXPECT_EQ(content_of(other / "b.txt"), "new b");
    const StagedFiles gone = std::move(files);
    EXPECT_EQ(one.entries() + other.entries(), 2U);
}

TEST(StagedFiles, leave_everything_as_it_was_when_one_cannot_be_written) {
    const TemporaryFolder folder;
    folder.file("a.txt", "earlier a");
    {
        StagedFiles files;
        ASSERT_EQ(refusal_of(files.write(folder / "a.txt", text("new a"))), "");
        const auto failed =
            files.write(folder / "b.txt", [](const std::filesystem::path& file) -> tl::expected<void, Refusal> {
                return tl::unexpected(Refusal{Refusal::Code::cannot_write, file.string(), "", "a full disk", "room"});
            });
        ASSERT_FALSE(failed.has_value());
        EXPECT_EQ(failed.error().file, (folder / "b.txt").string());
        EXPECT_EQ(files.write(folder / "missing/c.txt", text("c")).error().file, (folder / "missing/c.txt").string());
    }
    EXPECT_EQ(content_of(folder / "a.txt"), "earlier a");
    EXPECT_EQ(folder.entries(), 1U);
}

TEST(StagedFiles, put_earlier_ones_of_every_folder_back_when_one_name_is_taken_meanwhile) {
    const TemporaryFolder one, other;
    one.file("a.txt", "earlier a");
    {
        StagedFiles files;
        ASSERT_EQ(refusal_of(files.write(one / "a.txt", text("new a"))), "");
        ASSERT_EQ(refusal_of(files.write(one / "n.txt", text("new n"))), "");
        ASSERT_EQ(refusal_of(files.write(other / "b.txt", text("new b"))), "");
        std::filesystem::create_directory(other / "b.txt");
        const auto placed = files.commit();
        ASSERT_FALSE(placed.has_value());
        EXPECT_EQ(placed.error().file, (other / "b.txt").string());
    }
    EXPECT_EQ(content_of(one / "a.txt"), "earlier a");
    EXPECT_EQ(one.entries(), 1U);
    EXPECT_EQ(other.entries(), 1U);
}

TEST(StagedFiles, keep_a_link_and_replace_what_it_points_to) {
    const TemporaryFolder here, there;
    there.file("real.txt", "earlier");
    std::filesystem::create_symlink(there / "real.txt", here / "link.txt");
    StagedFiles files;
    ASSERT_EQ(refusal_of(files.write(here / "link.txt", text("new"))), "");
    const auto placed = files.commit();
    ASSERT_TRUE(placed.has_value()) << sentence(placed.error());
    EXPECT_EQ(*placed, std::vector<std::filesystem::path>{here / "link.txt"});
    EXPECT_TRUE(std::filesystem::is_symlink(here / "link.txt"));
    EXPECT_EQ(content_of(there / "real.txt"), "new");
}

}  // namespace
}  // namespace plugside
