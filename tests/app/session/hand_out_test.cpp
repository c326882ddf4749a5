// The window and the batch program hand out the same: what one decided to do by hand is, said in files, the same plan, judged the same.
#include "app/session/hand_out.h"

#include <QSignalSpy>

#include "app/batch/work_summary.h"
#include "app/session/choices.h"
#include "app/session/field_session.h"
#include "app/stages/work_account.h"
#include "tests/app/application.h"
#include "tests/batch/run_program.h"

namespace plugside {
namespace {

using testing_batch::content_of;
using testing_batch::Outcome;
using testing_batch::run_batch;
using testing_batch::TemporaryFolder;

const std::string school = PLUGSIDE_SOURCE_DIR "/sample-projects/school-field/";
constexpr std::chrono::sys_days the_day = std::chrono::sys_days{std::chrono::year{2025} / 4 / 10};

// "name = value" lines as the rows that the window's forms edit, each answer given on the day at noon.
std::vector<WorkRow> rows_in(const std::string& file) {
    std::vector<WorkRow> rows;
    std::istringstream lines(content_of(file));
    for (std::string line; std::getline(lines, line);) {
        const std::size_t equals = line.find(" = ");
        if (line.starts_with('#') || equals == std::string::npos || line.starts_with("given-at")) continue;
        const std::string name = line.substr(0, equals);
        rows.push_back({name, line.substr(equals + 3)});
        const bool is_answer = name.find('.') == std::string::npos && name != "dose";
        if (is_answer || name.ends_with(".lived-in")) rows.push_back({name + ".at", "2025-04-10T12:00:00Z"});
    }
    return rows;
}

class HandOutAlike : public OnScreen {
protected:
    static bool wait_for(const std::function<bool()>& done) { return QTest::qWaitFor(done, 120000); }

    FieldSession session_;
    Choices choices_;
    WorkAccount account_{session_, choices_};
};

TEST_F(HandOutAlike, TheWindowAndTheBatchProgramGiveTheSamePlanTheSameJudgementsAndTheSameRows) {
    account_.set_clock([] { return UtcTime(the_day) + std::chrono::hours(12); });
    session_.open({school + "walk.gpx", school + "ground.gpkg"});
    ASSERT_TRUE(wait_for([&] { return session_.plan_is_current(); }));
    ASSERT_EQ(account_.edit_rows(rows_in(school + "conditions.txt"), QStringLiteral("answers")), std::nullopt);
    for (const auto& [method, label] : {std::pair{"trap-in-lateral", ""}, std::pair{"fumigant", "label-fumigant.txt"}}) {
        SCOPED_TRACE(method);
        const TemporaryFolder folder;
        std::vector<std::string> words{"plan",         school + "walk.gpx",
                                       "--ground",     school + "ground.gpkg",
                                       "--conditions", school + "conditions.txt",
                                       "--day",        "2025-04-10",
                                       "--method",     method,
                                       "--out",        folder.at("batch.gpkg")};
        std::vector<WorkRow> rows{{"method", method}};
        if (*label != '\0') {
            words.insert(words.end(), {"--label", school + label});
            for (WorkRow& row : rows_in(school + label)) rows.push_back(std::move(row));
        }
        const Outcome batch = run_batch(words);
        EXPECT_EQ(batch.code, 4) << batch.err;
        ASSERT_EQ(account_.edit_rows(rows, QStringLiteral("a method")), std::nullopt);
        ASSERT_TRUE(wait_for([&] { return account_.holds(); }));
        EXPECT_NE(batch.out.find(summary_of_work(session_.field()->survey, *session_.plan(), account_.judged()->judged,
                                                 account_.now())),
                  std::string::npos);
        QSignalSpy out(&session_, &FieldSession::handed_out);
        HandOut what;
        what.files = {{HandOutFormat::geopackage, folder.at("window.gpkg")}};
        session_.hand_out(what);
        ASSERT_TRUE(wait_for([&] { return out.count() == 1; }));
        EXPECT_TRUE(content_of(folder.at("window.gpkg")) == content_of(folder.at("batch.gpkg")));
    }
}

}  // namespace
}  // namespace plugside
