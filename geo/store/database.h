// SQLite's C interface held by values that close themselves, its failures as refusals. Internal to geo/store.
//
// Open:      for reading and writing, never made; foreign keys on; nothing of a file's own schema is trusted with more than storing.
// Journal:   a rollback journal that is removed at each commit, synced with its folder (synchronous=EXTRA). A log written ahead would
//            be faster but leaves two files beside the project while it is open, and after a crash the last acts would lie in one of
//            them: whoever copied the project alone would lose them. So one file is one file after every act, also on a network disk.
// Waiting:   a file that another program reads at the moment is waited for, five seconds at most.
// Threads:   one at a time.
#pragma once

#include <sqlite3.h>

#include <cstdint>
#include <filesystem>
#include <memory>
#include <string>
#include <tl/expected.hpp>

#include "core/survey/refusal.h"

namespace plugside {

class Statement {
public:
    Statement() = default;
    explicit Statement(sqlite3_stmt* statement) : statement_(statement) {}
    [[nodiscard]] sqlite3_stmt* get() const { return statement_.get(); }
    // SQLITE_ROW, SQLITE_DONE, or what went wrong.
    [[nodiscard]] int step() const { return sqlite3_step(get()); }
    // Ready to be used again; nothing stays bound.
    void reset() const;
    [[nodiscard]] std::string text(int column) const;
    [[nodiscard]] std::int64_t whole(int column) const { return sqlite3_column_int64(get(), column); }

private:
    struct Finalizer {
        void operator()(sqlite3_stmt* statement) const { sqlite3_finalize(statement); }
    };
    std::unique_ptr<sqlite3_stmt, Finalizer> statement_;
};

class Database {
public:
    // `shown`: what refusals call it.
    [[nodiscard]] static tl::expected<Database, Refusal> open(const std::filesystem::path& file, const std::string& shown);
    // A new one, in the place of nothing.
    [[nodiscard]] static tl::expected<Database, Refusal> make(const std::filesystem::path& file, const std::string& shown);
    [[nodiscard]] static tl::expected<Database, Refusal> in_memory();

    [[nodiscard]] tl::expected<void, Refusal> run(const char* sql) const;
    [[nodiscard]] tl::expected<Statement, Refusal> prepare(const std::string& sql) const;
    // The first column of the first row; zero without one.
    [[nodiscard]] tl::expected<std::int64_t, Refusal> whole(const std::string& sql) const;
    // What SQLite says of its last failure, in our words where a person can do something about it.
    [[nodiscard]] Refusal failure() const;
    [[nodiscard]] const std::string& shown() const { return shown_; }
    [[nodiscard]] sqlite3* get() const { return database_.get(); }

private:
    struct Closer {
        void operator()(sqlite3* database) const { sqlite3_close_v2(database); }
    };
    [[nodiscard]] static tl::expected<Database, Refusal> open(const std::string& name, const std::string& shown, int flags);
    std::unique_ptr<sqlite3, Closer> database_;
    std::string shown_;
};

// All of it or nothing: undone with the object unless it was committed.
class Transaction {
public:
    [[nodiscard]] static tl::expected<Transaction, Refusal> begin(const Database& database);
    Transaction(Transaction&& other) noexcept : database_(std::exchange(other.database_, nullptr)) {}
    Transaction& operator=(Transaction&&) = delete;
    ~Transaction();
    [[nodiscard]] tl::expected<void, Refusal> commit();

private:
    explicit Transaction(const Database& database) : database_(&database) {}
    const Database* database_;
};

}  // namespace plugside
