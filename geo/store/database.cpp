#include "geo/store/database.h"

#include <utility>

#include "core/words/words.h"

namespace plugside {

namespace {

constexpr int patience_ms = 5000;
// Larger than any part of a project is; smaller than what a made-up file could ask memory for.
constexpr int most_bytes_in_a_cell = 1 << 29;

const char* const expected_file = Words::later("a project file");

}  // namespace

void Statement::reset() const {
    sqlite3_reset(get());
    sqlite3_clear_bindings(get());
}

std::string Statement::text(int column) const {
    const auto* text = reinterpret_cast<const char*>(sqlite3_column_text(get(), column));
    return text == nullptr ? std::string()
                           : std::string(text, static_cast<std::size_t>(sqlite3_column_bytes(get(), column)));
}

tl::expected<Database, Refusal> Database::open(const std::filesystem::path& file, const std::string& shown) {
    return open(std::filesystem::absolute(file).string(), shown, SQLITE_OPEN_READWRITE);
}

tl::expected<Database, Refusal> Database::make(const std::filesystem::path& file, const std::string& shown) {
    return open(std::filesystem::absolute(file).string(), shown, SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE);
}

tl::expected<Database, Refusal> Database::in_memory() {
    return open(":memory:", Words::later("a project in memory"), SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE);
}

tl::expected<Database, Refusal> Database::open(const std::string& name, const std::string& shown, int flags) {
    sqlite3* opened = nullptr;
    const int result = sqlite3_open_v2(name.c_str(), &opened, flags, nullptr);
    Database database;
    database.database_.reset(opened);
    database.shown_ = shown;
    if (opened == nullptr)
        return tl::unexpected(
            Refusal{Refusal::Code::unreadable, shown, "", Words::later("not enough memory to open it"), expected_file});
    if (result != SQLITE_OK) return tl::unexpected(database.failure());
    sqlite3_extended_result_codes(opened, 1);
    sqlite3_busy_timeout(opened, patience_ms);
    sqlite3_limit(opened, SQLITE_LIMIT_LENGTH, most_bytes_in_a_cell);
    sqlite3_db_config(opened, SQLITE_DBCONFIG_DEFENSIVE, 1, nullptr);
    sqlite3_db_config(opened, SQLITE_DBCONFIG_TRUSTED_SCHEMA, 0, nullptr);
    sqlite3_db_config(opened, SQLITE_DBCONFIG_ENABLE_TRIGGER, 0, nullptr);
    sqlite3_db_config(opened, SQLITE_DBCONFIG_ENABLE_VIEW, 0, nullptr);
    const auto ready = database.run(
        "PRAGMA cell_size_check = ON; PRAGMA foreign_keys = ON; PRAGMA journal_mode = DELETE; PRAGMA synchronous = EXTRA;"
        "PRAGMA temp_store = MEMORY;");
    if (!ready) return tl::unexpected(ready.error());
    return database;
}

tl::expected<void, Refusal> Database::run(const char* sql) const {
    if (sqlite3_exec(get(), sql, nullptr, nullptr, nullptr) != SQLITE_OK) return tl::unexpected(failure());
    return {};
}

tl::expected<Statement, Refusal> Database::prepare(const std::string& sql) const {
    sqlite3_stmt* statement = nullptr;
    const int result = sqlite3_prepare_v2(get(), sql.c_str(), static_cast<int>(sql.size()), &statement, nullptr);
    Statement prepared(statement);
    if (result != SQLITE_OK) return tl::unexpected(failure());
    return prepared;
}

tl::expected<std::int64_t, Refusal> Database::whole(const std::string& sql) const {
    const auto statement = prepare(sql);
    if (!statement) return tl::unexpected(statement.error());
    const int result = statement->step();
    if (result == SQLITE_ROW) return statement->whole(0);
    if (result == SQLITE_DONE) return 0;
    return tl::unexpected(failure());
}

Refusal Database::failure() const {
    const int code = sqlite3_errcode(get()) & 0xFF;
    const auto refusal = [this](Refusal::Code kind, std::string found, const char* expected) {
        return Refusal{kind, shown_, "", std::move(found), expected};
    };
    const char* const writable = Words::later("a disk that takes each change");
    switch (code) {
        case SQLITE_FULL: return refusal(Refusal::Code::cannot_write, Words::later("a disk that is full"), writable);
        case SQLITE_READONLY:
            return refusal(Refusal::Code::cannot_write, Words::later("a file that may not be written"),
                           Words::later("a project that each change can be put into"));
        case SQLITE_BUSY:
        case SQLITE_LOCKED:
            return refusal(Refusal::Code::cannot_write, Words::later("a file that another program holds"),
                           Words::later("a project that is free to be written"));
        case SQLITE_NOTADB:
            return refusal(Refusal::Code::wrong_format, Words::later("a file of another kind"), expected_file);
        case SQLITE_CORRUPT:
            return refusal(Refusal::Code::malformed, Words::later("a damaged or cut off file"),
                           Words::later("a whole project file"));
        case SQLITE_CANTOPEN:
            return refusal(Refusal::Code::unreadable,
                           Words::later("a file that cannot be opened, or a folder in which nothing can be written"),
                           Words::later("a project that can be read and written"));
        case SQLITE_NOMEM:
            return refusal(Refusal::Code::unreadable, Words::later("not enough memory for it"), expected_file);
        case SQLITE_TOOBIG:
            return refusal(Refusal::Code::too_large, Words::later("a part of more than 512 MiB"),
                           Words::later("a smaller one"));
        default:
            return refusal(code == SQLITE_IOERR ? Refusal::Code::cannot_write : Refusal::Code::malformed,
                           Words::tell("a failure ({1})", {sqlite3_errmsg(get())}),
                           Words::later("a whole project file on a sound disk"));
    }
}

tl::expected<Transaction, Refusal> Transaction::begin(const Database& database) {
    const auto begun = database.run("BEGIN IMMEDIATE");
    if (!begun) return tl::unexpected(begun.error());
    return Transaction(database);
}

Transaction::~Transaction() {
    if (database_ != nullptr && sqlite3_get_autocommit(database_->get()) == 0) static_cast<void>(database_->run("ROLLBACK"));
}

tl::expected<void, Refusal> Transaction::commit() {
    const auto done = database_->run("COMMIT");
    if (!done) return tl::unexpected(done.error());
    database_ = nullptr;
    return {};
}

}  // namespace plugside
