// A project in its file: what is kept comes back, every act is one transaction, and what is no project is refused and left alone.
#include "geo/store/project_store.h"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>
#include <signal.h>
#include <sqlite3.h>
#include <sys/resource.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include <functional>

#include "tests/geo/store/random_projects.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

std::shared_ptr<const Project> shared(Project project) { return std::make_shared<const Project>(std::move(project)); }

std::shared_ptr<const Project> example_project() {
    Project project;
    project.field = std::make_shared<const FieldSurvey>(answered_field());
    project.steps = {{"/media/card/morning.gpx"}};
    return shared(std::move(project));
}

Project with_decision(const Project& before, int number) {
    Project now = before;
    auto field = std::make_shared<FieldSurvey>(*before.field);
    decide(field->survey, {{ProbeKind::plug_side, "act " + std::to_string(number), ""}, SetChoice::kept, std::nullopt});
    now.field = std::move(field);
    return now;
}

std::string why(const tl::expected<ProjectStore, Refusal>& opened) { return opened ? "" : sentence(opened.error()); }

// What a child process does before it ends; its exit code, or minus the signal that ended it.
int in_a_child(const std::function<int()>& act) {
    const pid_t child = fork();
    if (child == 0) _exit(act());
    int status = 0;
    waitpid(child, &status, 0);
    return WIFSIGNALED(status) ? -WTERMSIG(status) : WEXITSTATUS(status);
}

RC_GTEST_PROP(ProjectStore, GivesBackEveryProjectThatWasKept, ()) {
    const TemporaryFolder folder;
    const auto project = shared(any_project(folder.path()));
    const auto file = folder / "field.plugside";
    {
        const auto made = ProjectStore::make(file, project);
        if (!made) RC_LOG() << sentence(made.error());
        RC_ASSERT(made.has_value());
    }
    const auto opened = ProjectStore::open(file);
    if (!opened) RC_LOG() << sentence(opened.error());
    RC_ASSERT(opened.has_value());
    RC_ASSERT(*opened->project() == *project);
}

RC_GTEST_PROP(ProjectStore, HoldsTheProjectAsItIsAfterEveryOneOfAnyActs, ()) {
    const TemporaryFolder folder;
    Project now = any_project(folder.path());
    const auto file = folder / "field.plugside";
    auto store = ProjectStore::make(file, shared(now));
    RC_ASSERT(store.has_value());
    for (int act = up_to(6); act > 0; --act) {
        const Project before = now;
        now = any_flag() ? after_an_act(now, folder.path()) : before;
        RC_ASSERT(store->keep(shared(now)).has_value());
        if (any_flag()) RC_ASSERT(store->keep(shared(before)).has_value());  // undone
        if (*store->project() == before) RC_ASSERT(store->keep(shared(now)).has_value());
        store = tl::unexpected(Refusal{});  // closed
        RC_ASSERT(folder.entries() == 1U);
        store = ProjectStore::open(file);
        RC_ASSERT(store.has_value());
        RC_ASSERT(*store->project() == now);
    }
}

TEST(ProjectStore, WritesNothingWhereNothingDiffersAndLittleWhereLittleDoes) {
    const TemporaryFolder folder;
    const auto project = example_project();
    auto store = ProjectStore::make(folder / "field.plugside", project);
    ASSERT_TRUE(store) << why(store);
    const std::string before = content_of(store->file());
    ASSERT_TRUE(store->keep(shared(*project)));
    EXPECT_EQ(content_of(store->file()), before);
    ASSERT_TRUE(store->keep(shared(with_decision(*project, 1))));
    const std::string after = content_of(store->file());
    ASSERT_EQ(after.size(), before.size());
    constexpr std::size_t page = 4096;
    std::size_t pages = 0;
    for (std::size_t at = 0; at < after.size(); at += page)
        pages += after.compare(at, page, before, at, page) != 0 ? 1U : 0U;
    EXPECT_LE(pages, 3U);  // the head, the field's revision, the decisions
}

TEST(ProjectStore, KeepsPathsBelowItsFolderAsSeenFromThereSoThatBothCanBeMoved) {
    const TemporaryFolder folder;
    std::filesystem::create_directories(folder / "here/pictures");
    Project project = *example_project();
    project.steps = {{folder / "here/walk.gpx", folder / "elsewhere/ground.gpkg"}};
    project.pictures = {{folder / "here/pictures/june.tif", true, {}}};
    ASSERT_TRUE(ProjectStore::make(folder / "here/field.plugside", shared(project)));
    std::filesystem::rename(folder / "here", folder / "there");
    const auto opened = ProjectStore::open(folder / "there/field.plugside");
    ASSERT_TRUE(opened) << why(opened);
    const std::vector<std::vector<std::filesystem::path>> expected{
        {folder / "there/walk.gpx", folder / "elsewhere/ground.gpkg"}};
    EXPECT_EQ(opened->project()->steps, expected);
    EXPECT_EQ(opened->project()->pictures.front().file, folder / "there/pictures/june.tif");
}

TEST(ProjectStore, RefusesAFileThatIsOpenAlreadyHereOrInAnotherProgramAndByAnyOfItsNames) {
    const TemporaryFolder folder;
    const auto file = folder / "field.plugside";
    auto store = ProjectStore::make(file, example_project());
    ASSERT_TRUE(store) << why(store);
    std::filesystem::create_hard_link(file, folder / "second.plugside");
    std::filesystem::create_symlink(file, folder / "third.plugside");
    for (const char* name : {"field.plugside", "second.plugside", "third.plugside"}) {
        const auto again = ProjectStore::open(folder / name);
        ASSERT_FALSE(again);
        EXPECT_EQ(again.error().code, Refusal::Code::in_use);
        EXPECT_NE(why(again).find("open already"), std::string::npos) << why(again);
    }
    const auto over_it = ProjectStore::make(file, example_project());
    ASSERT_FALSE(over_it);
    EXPECT_EQ(over_it.error().code, Refusal::Code::in_use);
    EXPECT_EQ(in_a_child([&] { return ProjectStore::open(file) ? 1 : 0; }), 0);
    // the attempts did not let go of it, nor hinder it
    EXPECT_EQ(in_a_child([&] { return ProjectStore::open(file) ? 1 : 0; }), 0);
    EXPECT_TRUE(store->keep(shared(with_decision(*example_project(), 1))));
    store = tl::unexpected(Refusal{});
    EXPECT_TRUE(ProjectStore::open(file));
}

TEST(ProjectStore, ACrashLeavesNoLockAndNoActThatWasKeptIsLost) {
    const TemporaryFolder folder;
    const auto file = folder / "field.plugside";
    const auto project = example_project();
    const int ended = in_a_child([&] {
        auto store = ProjectStore::make(file, project);
        Project now = *project;
        for (int act = 0; act < 5; ++act) {
            now = with_decision(now, act);
            if (!store || !store->keep(shared(now))) return 1;
        }
        return kill(getpid(), SIGKILL);
    });
    EXPECT_EQ(ended, -SIGKILL);
    const auto opened = ProjectStore::open(file);
    ASSERT_TRUE(opened) << why(opened);
    EXPECT_EQ(opened->project()->field->survey.decisions.size(), project->field->survey.decisions.size() + 5);
}

// Killed at any moment, the file holds the project after some whole act, and no earlier one than the last that was kept.
TEST(ProjectStore, KilledAtAnyMomentItHoldsWholeActs) {
    const TemporaryFolder folder;
    const auto file = folder / "field.plugside";
    const auto project = example_project();
    const std::size_t first = project->field->survey.decisions.size();
    { ASSERT_TRUE(ProjectStore::make(file, project)); }
    for (int round = 0; round < 12; ++round) {
        int pipe_ends[2];
        ASSERT_EQ(pipe(pipe_ends), 0);
        const pid_t child = fork();
        if (child == 0) {
            auto store = ProjectStore::open(file);
            if (!store) _exit(1);
            Project now = *store->project();
            for (;;) {
                // an act of two parts: both are there, or neither is
                now = with_decision(now, static_cast<int>(now.field->survey.decisions.size()));
                now.pictures.push_back({"/media/card/picture.tif", true, {}});
                if (!store->keep(shared(now))) _exit(1);
                const char kept = 1;
                if (write(pipe_ends[1], &kept, 1) != 1) _exit(1);
            }
        }
        close(pipe_ends[1]);
        std::size_t kept = 0;
        char byte = 0;
        while (kept < 3 && read(pipe_ends[0], &byte, 1) == 1) ++kept;
        usleep(static_cast<useconds_t>(700 * round));
        kill(child, SIGKILL);
        int status = 0;
        waitpid(child, &status, 0);
        while (read(pipe_ends[0], &byte, 1) == 1) ++kept;
        close(pipe_ends[0]);
        static std::size_t before = 0;
        const auto opened = ProjectStore::open(file);
        ASSERT_TRUE(opened) << why(opened);
        const std::size_t decisions = opened->project()->field->survey.decisions.size() - first;
        EXPECT_EQ(opened->project()->pictures.size(), decisions);
        EXPECT_GE(decisions, before + kept);
        EXPECT_LE(decisions, before + kept + 1);
        before = decisions;
    }
    for (const auto& entry : std::filesystem::directory_iterator(folder.path())) EXPECT_EQ(entry.path(), file);
}

TEST(ProjectStore, AFullDiskIsToldAndNothingIsLost) {
    const TemporaryFolder folder;
    const auto file = folder / "field.plugside";
    const auto project = example_project();
    const int ended = in_a_child([&] {
        auto store = ProjectStore::make(file, project);
        if (!store) return 1;
        signal(SIGXFSZ, SIG_IGN);
        rlimit room{};
        room.rlim_cur = std::filesystem::file_size(file);
        room.rlim_max = RLIM_INFINITY;
        setrlimit(RLIMIT_FSIZE, &room);
        Project now = *project;
        auto larger = std::make_shared<FieldSurvey>(*project->field);
        larger->survey.walks.front().segments.push_back(TrackSegment(20000, TrackPoint{{1.0, 2.0}, std::nullopt}));
        now.field = larger;
        const auto kept = store->keep(shared(now));
        if (kept || sentence(kept.error()).find("field.plugside") == std::string::npos) return 2;
        if (!(*store->project() == *project)) return 3;
        room.rlim_cur = RLIM_INFINITY;
        setrlimit(RLIMIT_FSIZE, &room);
        return store->keep(shared(with_decision(now, 1))) ? 0 : 4;  // tried again, with what came after
    });
    EXPECT_EQ(ended, 0);
    const auto opened = ProjectStore::open(file);
    ASSERT_TRUE(opened) << why(opened);
    EXPECT_EQ(opened->project()->field->survey.walks.front().segments.back().size(), 20000U);
    EXPECT_EQ(opened->project()->field->survey.decisions.back().probe.from_mound, "act 1");
}

TEST(ProjectStore, DoesNotWriteToAFileThatWasRemovedOrReplacedMeanwhile) {
    const TemporaryFolder folder;
    const auto file = folder / "field.plugside";
    auto store = ProjectStore::make(file, example_project());
    ASSERT_TRUE(store);
    std::filesystem::rename(file, folder / "away.plugside");
    const auto kept = store->keep(shared(with_decision(*example_project(), 1)));
    ASSERT_FALSE(kept);
    EXPECT_NE(sentence(kept.error()).find("moved, removed or replaced"), std::string::npos);
    std::filesystem::rename(folder / "away.plugside", file);
    EXPECT_TRUE(store->keep(shared(with_decision(*example_project(), 1))));
}

TEST(ProjectStore, ANewProjectInPlaceOfACrashedOneIsNotSpoiltByItsJournal) {
    const TemporaryFolder folder;
    const auto file = folder / "field.plugside";
    { ASSERT_TRUE(ProjectStore::make(file, example_project())); }
    // a journal as a crash in the middle of an act leaves it: the writer's own, kept before it is removed
    const int ended = in_a_child([&] {
        sqlite3* database = nullptr;
        sqlite3_open(file.c_str(), &database);
        sqlite3_exec(database, "PRAGMA cache_size = 1; BEGIN IMMEDIATE; UPDATE mounds SET note = hex(zeroblob(9000))",
                     nullptr, nullptr, nullptr);
        return kill(getpid(), SIGKILL);
    });
    EXPECT_EQ(ended, -SIGKILL);
    ASSERT_TRUE(std::filesystem::exists(file.string() + "-journal"));
    Project other = *example_project();
    other.steps = {{"/media/card/other.gpx"}};
    { ASSERT_TRUE(ProjectStore::make(file, shared(other))); }
    EXPECT_FALSE(std::filesystem::exists(file.string() + "-journal"));
    const auto opened = ProjectStore::open(file);
    ASSERT_TRUE(opened) << why(opened);
    EXPECT_TRUE(*opened->project() == other);
}

TEST(ProjectStore, KnowsAProjectByItsEndingOrItsFirstBytes) {
    const TemporaryFolder folder;
    { ASSERT_TRUE(ProjectStore::make(folder / "field.plugside", example_project())); }
    std::filesystem::copy_file(folder / "field.plugside", folder / "field.bin");
    EXPECT_TRUE(is_project_file(folder / "field.bin"));
    EXPECT_TRUE(is_project_file(folder / "not-there.plugside"));
    EXPECT_FALSE(is_project_file(folder.file("walk.gpx", "<gpx/>")));
    EXPECT_FALSE(is_project_file(folder / "not-there.gpx"));
    EXPECT_FALSE(is_project_file(folder.path()));
}

}  // namespace
}  // namespace plugside
