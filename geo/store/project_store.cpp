#include "geo/store/project_store.h"

#include <fstream>
#include <string_view>
#include <utility>

#include "core/words/words.h"
#include "geo/store/database.h"
#include "geo/store/migrations.h"
#include "geo/store/project_lock.h"
#include "geo/store/project_tables.h"
#include "geo/write/safe_file.h"

namespace plugside {

// In this order: the lock is let go of after the database is closed.
struct ProjectStore::Open {
    std::filesystem::path file;  // in its plain form
    std::string shown;           // as it was given
    ProjectLock lock;
    Database database;
    std::shared_ptr<const Project> project;
    std::optional<std::filesystem::path> earlier;
};

namespace {

std::filesystem::path folder_of(const std::filesystem::path& file) { return file.parent_path(); }

// The whole of `from` as a file of its own; what is there under that name stays, another number is taken.
tl::expected<std::filesystem::path, Refusal> copy_beside(const Database& from, const std::filesystem::path& file,
                                                         std::int64_t form) {
    std::filesystem::path copy;
    std::error_code error;
    int number = 1;
    do {
        const std::string more = number == 1 ? "" : ", " + std::to_string(number);
        copy = folder_of(file) / (file.stem().string() + " (form " + std::to_string(form) + more + ")" + project_ending);
        ++number;
    } while (std::filesystem::exists(copy, error));
    auto safe = SafeFile::beside(copy);
    if (!safe) return tl::unexpected(safe.error());
    {
        const auto to = Database::make(safe->temporary(), copy.string());
        if (!to) return tl::unexpected(to.error());
        sqlite3_backup* backup = sqlite3_backup_init(to->get(), "main", from.get(), "main");
        const int result = backup == nullptr ? SQLITE_ERROR : sqlite3_backup_step(backup, -1);
        sqlite3_backup_finish(backup);
        if (result != SQLITE_DONE) return tl::unexpected(to->failure());
    }
    if (const auto done = safe->commit(); !done) return tl::unexpected(done.error());
    return copy;
}

// With its lock, taken before the file has its name: nobody can come between.
tl::expected<ProjectLock, Refusal> write_anew(const std::filesystem::path& file, const Project& project) {
    auto safe = SafeFile::beside(file);
    if (!safe) return tl::unexpected(safe.error());
    {
        const auto database = Database::make(safe->temporary(), file.string());
        if (!database) return tl::unexpected(database.error());
        // nobody sees it before it is whole and synced
        if (const auto fast = database->run("PRAGMA journal_mode = MEMORY; PRAGMA synchronous = OFF"); !fast)
            return tl::unexpected(fast.error());
        auto transaction = Transaction::begin(*database);
        if (!transaction) return tl::unexpected(transaction.error());
        if (const auto made = bring_forward(*database, 0); !made) return tl::unexpected(made.error());
        if (const auto put = put_project(*database, nullptr, project, folder_of(file)); !put)
            return tl::unexpected(put.error());
        if (const auto done = transaction->commit(); !done) return tl::unexpected(done.error());
    }
    auto lock = ProjectLock::take(safe->temporary());
    if (!lock) return lock;
    if (const auto done = safe->commit(); !done) return tl::unexpected(done.error());
    return lock;
}

// Read in its newest form; brought to it only where all of it could be read.
tl::expected<Project, Refusal> taken_forward(const Database& database, std::int64_t form,
                                             const std::filesystem::path& folder) {
    if (form == newest_project_form) return take_project(database, folder);
    auto transaction = Transaction::begin(database);
    if (!transaction) return tl::unexpected(transaction.error());
    if (const auto brought = bring_forward(database, form); !brought) return tl::unexpected(brought.error());
    auto project = take_project(database, folder);
    if (!project) return project;
    if (const auto done = transaction->commit(); !done) return tl::unexpected(done.error());
    return project;
}

// An act that a crash cut short is undone from the journal beside the file, by the first reading. What is left of a journal then says
// nothing any more; it goes while nobody else can be writing one.
void sweep_journal(const Database& database, const std::filesystem::path& file) {
    const std::filesystem::path journal = file.string() + "-journal";
    std::error_code error;
    if (!std::filesystem::exists(journal, error)) return;
    if (const auto alone = Transaction::begin(database)) std::filesystem::remove(journal, error);
}

// Before a new file takes the name, an earlier one's journal goes: it would be taken for the new one's.
void settle_journal(const std::filesystem::path& file) {
    std::error_code error;
    if (!std::filesystem::exists(file.string() + "-journal", error)) return;
    if (const auto database = Database::open(file, file.string())) sweep_journal(*database, file);
    std::filesystem::remove(file.string() + "-journal", error);
}

// What is open elsewhere is not replaced; whoever opens it meanwhile has to wait until it is.
tl::expected<std::optional<ProjectLock>, Refusal> lock_of_the_earlier(const std::filesystem::path& file) {
    auto lock = ProjectLock::take(file);
    if (lock) return std::optional(std::move(*lock));
    if (lock.error().code == Refusal::Code::missing_file) return std::nullopt;
    return tl::unexpected(lock.error());
}

enum class Head { empty, cut_off, project, other };

// What the first bytes say, read without SQLite: opening a file of another kind with it could change that.
Head head_of(const std::filesystem::path& file) {
    constexpr std::size_t head_bytes = 100;
    constexpr std::size_t application_at = 68;
    constexpr std::string_view sign("SQLite format 3\0", 16);
    std::error_code error;
    if (!std::filesystem::is_regular_file(file, error)) return Head::other;
    std::ifstream stream(file, std::ios::binary);
    std::string head(head_bytes, '\0');
    stream.read(head.data(), static_cast<std::streamsize>(head.size()));
    head.resize(static_cast<std::size_t>(stream.gcount()));
    if (head.empty()) return Head::empty;
    if (!head.starts_with(sign)) return Head::other;
    if (head.size() < head_bytes) return Head::cut_off;
    std::int64_t application = 0;
    for (std::size_t i = 0; i < 4; ++i)
        application = application * 256 + static_cast<unsigned char>(head[application_at + i]);
    return application == project_application_id ? Head::project : Head::other;
}

tl::expected<void, Refusal> judge_head(const std::filesystem::path& file, const std::string& shown) {
    const auto refused = [&shown](Refusal::Code code, const char* found, const char* expected) {
        return tl::unexpected(Refusal{code, shown, "", found, expected});
    };
    switch (head_of(file)) {
        case Head::empty:
            return refused(Refusal::Code::wrong_format, Words::later("an empty file"), Words::later("a project file"));
        case Head::cut_off:
            return refused(Refusal::Code::malformed, Words::later("a damaged or cut off file"),
                           Words::later("a whole project file"));
        case Head::other:
            return refused(Refusal::Code::wrong_format, Words::later("a file of another kind"),
                           Words::later("a project file"));
        case Head::project: break;
    }
    return {};
}

}  // namespace

ProjectStore::ProjectStore(std::unique_ptr<Open> open) : open_(std::move(open)) {}
ProjectStore::ProjectStore(ProjectStore&&) noexcept = default;
ProjectStore& ProjectStore::operator=(ProjectStore&&) noexcept = default;
ProjectStore::~ProjectStore() = default;

const std::shared_ptr<const Project>& ProjectStore::project() const { return open_->project; }
const std::filesystem::path& ProjectStore::file() const { return open_->file; }
const std::optional<std::filesystem::path>& ProjectStore::earlier_kept_as() const { return open_->earlier; }

tl::expected<ProjectStore, Refusal> ProjectStore::make(const std::filesystem::path& given,
                                                       std::shared_ptr<const Project> project) {
    const std::filesystem::path file = as_kept(given);
    const auto earlier = lock_of_the_earlier(file);
    if (!earlier) return tl::unexpected(earlier.error());
    settle_journal(file);
    auto lock = write_anew(file, *project);
    if (!lock) return tl::unexpected(lock.error());
    auto database = Database::open(file, given.string());
    if (!database) return tl::unexpected(database.error());
    return ProjectStore(
        std::make_unique<Open>(Open{file, given.string(), std::move(*lock), std::move(*database), std::move(project), {}}));
}

tl::expected<ProjectStore, Refusal> ProjectStore::open(const std::filesystem::path& given) {
    const std::filesystem::path file = as_kept(given);
    auto lock = ProjectLock::take(file);
    if (!lock) return tl::unexpected(lock.error());
    if (const auto head = judge_head(file, given.string()); !head) return tl::unexpected(head.error());
    auto database = Database::open(file, given.string());
    if (!database) return tl::unexpected(database.error());
    const auto form = form_of(*database);
    if (!form) return tl::unexpected(form.error());
    if (const auto sound = judge(*database, *form); !sound) return tl::unexpected(sound.error());
    std::optional<std::filesystem::path> earlier;
    if (*form < newest_project_form) {
        auto copy = copy_beside(*database, file, *form);
        if (!copy) return tl::unexpected(copy.error());
        earlier = std::move(*copy);
    }
    auto project = taken_forward(*database, *form, folder_of(file));
    if (!project) {
        std::error_code ignored;
        if (earlier) std::filesystem::remove(*earlier, ignored);
        return tl::unexpected(project.error());
    }
    sweep_journal(*database, file);
    return ProjectStore(
        std::make_unique<Open>(Open{file, given.string(), std::move(*lock), std::move(*database),
                                    std::make_shared<const Project>(std::move(*project)), std::move(earlier)}));
}

tl::expected<void, Refusal> ProjectStore::keep(std::shared_ptr<const Project> now) {
    if (*now == *open_->project) {
        open_->project = std::move(now);
        return {};
    }
    if (!open_->lock.holds(open_->file))
        return tl::unexpected(
            Refusal{Refusal::Code::cannot_write, open_->shown, "",
                    Words::later("another file under that name, or none (it was moved, removed or replaced)"),
                    Words::later("the project that was opened (keep it under a name again)")});
    auto transaction = Transaction::begin(open_->database);
    if (!transaction) return tl::unexpected(transaction.error());
    const auto put = put_project(open_->database, open_->project.get(), *now, folder_of(open_->file));
    if (!put) return put;
    if (const auto done = transaction->commit(); !done) return done;
    open_->project = std::move(now);
    return {};
}

bool is_project_file(const std::filesystem::path& file) {
    return file.extension() == project_ending || head_of(file) == Head::project;
}

}  // namespace plugside
