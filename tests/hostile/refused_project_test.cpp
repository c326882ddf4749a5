// Files that are no project, or a broken one: refused by a sentence that names the file, never changed, never a crash.
#include <gtest/gtest.h>
#include <sqlite3.h>
#include <sys/stat.h>
#include <sys/wait.h>
#include <unistd.h>

#include "geo/store/project_store.h"
#include "tests/geo/example_field.h"
#include "tests/geo/temporary_folder.h"

namespace plugside {
namespace {

using namespace testing_support;

class RefusedProject : public testing::Test {
protected:
    RefusedProject() {
        Project project;
        project.field = std::make_shared<const FieldSurvey>(answered_field());
        project.pictures = {{"/media/card/june.tif", true, {}}};
        EXPECT_TRUE(ProjectStore::make(file_, std::make_shared<const Project>(project)));
    }
    void run(const std::string& sql) {
        sqlite3* database = nullptr;
        ASSERT_EQ(sqlite3_open(file_.c_str(), &database), SQLITE_OK);
        char* said = nullptr;
        EXPECT_EQ(sqlite3_exec(database, sql.c_str(), nullptr, nullptr, &said), SQLITE_OK) << said;
        sqlite3_close(database);
    }
    // The sentence, once nothing of the file was changed by refusing it.
    static std::string refusal_of_file(const std::filesystem::path& file) {
        const std::string before = content_of(file);
        const auto opened = ProjectStore::open(file);
        EXPECT_FALSE(opened);
        EXPECT_EQ(content_of(file), before);
        if (opened) return "";
        EXPECT_FALSE(opened.error().expected.empty());
        return sentence(opened.error());
    }
    void expect(const std::string& words) {
        const std::string said = refusal_of_file(file_);
        EXPECT_NE(said.find(words), std::string::npos) << said;
        EXPECT_NE(said.find("field.plugside"), std::string::npos) << said;
    }

    TemporaryFolder folder_;
    std::filesystem::path file_ = folder_ / "field.plugside";
};

TEST_F(RefusedProject, WhatIsNoDatabaseOrAnEmptyOrNoFileAtAll) {
    folder_.file("text.plugside",
                 "this is a shopping list, and longer than a database's head would have to be for it to be one....");
    folder_.file("empty.plugside", "");
    folder_.file("cut.plugside", content_of(file_).substr(0, 50));
    std::filesystem::create_directory(folder_ / "room.plugside");
    ASSERT_EQ(mkfifo((folder_ / "pipe.plugside").c_str(), 0600), 0);
    EXPECT_NE(refusal_of_file(folder_ / "text.plugside").find("a file of another kind"), std::string::npos);
    EXPECT_NE(refusal_of_file(folder_ / "empty.plugside").find("an empty file"), std::string::npos);
    EXPECT_NE(refusal_of_file(folder_ / "cut.plugside").find("cut off"), std::string::npos);
    for (const char* name : {"room.plugside", "pipe.plugside", "none.plugside"}) {
        const auto opened = ProjectStore::open(folder_ / name);
        ASSERT_FALSE(opened);
        EXPECT_NE(sentence(opened.error()).find(name), std::string::npos);
    }
}

TEST_F(RefusedProject, AnotherProgramsDatabaseIsNotEvenOpenedWithSqlite) {
    run("PRAGMA application_id = 1196444487; PRAGMA journal_mode = WAL");
    std::filesystem::remove(file_.string() + "-wal");
    std::filesystem::remove(file_.string() + "-shm");
    expect("a file of another kind");
    EXPECT_EQ(folder_.entries(), 1U);
}

TEST_F(RefusedProject, CutOffAnywhere) {
    const std::string whole = content_of(file_);
    for (std::size_t size = 100; size < whole.size(); size += 4099) {
        folder_.file("field.plugside", whole.substr(0, size));
        SCOPED_TRACE(size);
        const std::string said = refusal_of_file(file_);
        EXPECT_NE(said.find("field.plugside: found a damaged or cut off file"), std::string::npos) << said;
    }
}

TEST_F(RefusedProject, DamagedPagesAreRefusedOrDoNoHarm) {
    const std::string whole = content_of(file_);
    for (std::size_t at = 100; at < whole.size(); at += 1021) {
        std::string damaged = whole;
        for (std::size_t i = at; i < std::min(at + 40, damaged.size()); ++i)
            damaged[i] = static_cast<char>(damaged[i] ^ 0x5A);
        folder_.file("field.plugside", damaged);
        const auto opened = ProjectStore::open(file_);  // a text or number that was changed to another may pass
        const std::string said = opened ? "field.plugside" : sentence(opened.error());
        EXPECT_NE(said.find("field.plugside"), std::string::npos) << said;
    }
}

TEST_F(RefusedProject, CellsThatMeanNothing) {
    const std::vector<std::pair<std::string, std::string>> cases{
        {"UPDATE mounds SET kind = 'dragon' WHERE number = 2", "table mounds, row 2: found column kind: \"dragon\""},
        {"UPDATE mounds SET fan = 400 WHERE number = 1", "column fan"},
        {"UPDATE mounds SET east_m = 9e99 WHERE number = 1", "column east_m"},
        {"UPDATE mounds SET position_sd_m = 0 WHERE number = 1", "column position_sd_m"},
        {"UPDATE mounds SET time = 9223372036854775807 WHERE number = 1", "column time"},
        {"UPDATE mounds SET name = 'M001' WHERE number = 1", "two marks of the name"},
        {"PRAGMA foreign_keys = OFF; UPDATE mounds SET walk = 17 WHERE number = 1", "of no walk"},
        {"PRAGMA foreign_keys = OFF; UPDATE segments SET walk = 17", "a stretch of track"},
        {"UPDATE segments SET fixes = x'FFFFFFFF' WHERE number = 0", "column fixes: bytes that are no list"},
        {"UPDATE segments SET fixes = x'01000000000000000000F87F000000000000F87F00' WHERE number = 0", "column fixes"},
        {"UPDATE shapes SET rings = x'00000000' WHERE number = 0", "whose corners are none"},
        {"UPDATE known_facts SET marks = x'00000000' WHERE kind = 'different systems'", "a fact that is none"},
        {"UPDATE field SET centre_latitude = 91.0", "column centre_latitude"},
        {"DELETE FROM field", "0 rows"},
        {"DELETE FROM mounds WHERE number = 3", "rows without a gap"},
        {"UPDATE decisions SET from_mound = 'x', to_mound = '', probe = 'plug side'", "two decisions on one set"},
        {"UPDATE mounds SET mentions = x'010000000100000061'", "column mentions"}};
    const std::string whole = content_of(file_);
    for (const auto& [sql, words] : cases) {
        SCOPED_TRACE(sql);
        folder_.file("field.plugside", whole);
        run(sql);
        expect(words);
    }
}

TEST_F(RefusedProject, TablesThatAreNotAProjectsOrCouldAct) {
    const std::string whole = content_of(file_);
    for (const char* sql :
         {"DROP TABLE mounds", "ALTER TABLE mounds ADD COLUMN more TEXT", "CREATE TABLE more (number INTEGER)",
          "CREATE TRIGGER act AFTER UPDATE ON field BEGIN DELETE FROM mounds; END",
          "CREATE VIEW see AS WITH RECURSIVE n(i) AS (SELECT 1 UNION ALL SELECT i + 1 FROM n) SELECT i FROM n",
          "DROP TABLE mounds; CREATE VIEW mounds AS SELECT * FROM field", "CREATE INDEX by_name ON mounds(name)",
          "CREATE VIRTUAL TABLE words USING fts5(text)"}) {
        SCOPED_TRACE(sql);
        folder_.file("field.plugside", whole);
        run(sql);
        expect("tables that are not a project's");
    }
}

TEST_F(RefusedProject, AFileThatMayNotBeWrittenIsToldSoAndAFolderToo) {
    if (geteuid() == 0) {  // root may write everything: a child that is nobody tries
        const pid_t child = fork();
        if (child == 0) {
            std::filesystem::permissions(folder_.path(), std::filesystem::perms(0755));
            std::filesystem::permissions(file_, std::filesystem::perms(0444));
            if (setuid(65534) != 0) _exit(2);
            const auto opened = ProjectStore::open(file_);
            _exit(!opened && sentence(opened.error()).find("a file that may not be written") != std::string::npos ? 0 : 1);
        }
        int status = 0;
        waitpid(child, &status, 0);
        EXPECT_EQ(WEXITSTATUS(status), 0);
        return;
    }
    std::filesystem::permissions(file_, std::filesystem::perms(0444));
    expect("a file that may not be written");
}

}  // namespace
}  // namespace plugside
