#include "geo/store/project_tables.h"

#include <string>
#include <type_traits>
#include <utility>
#include <vector>

#include "core/words/words.h"
#include "geo/store/survey_rows.h"
#include "geo/store/told_rows.h"

namespace plugside {

namespace {

class ColumnNames final : public Cells {
public:
    [[nodiscard]] const std::vector<std::string>& names() const { return names_; }

protected:
    [[nodiscard]] bool takes() const override { return false; }
    void next(const char* name, Cell&) override { names_.emplace_back(name); }

private:
    std::vector<std::string> names_;
};

class PutCells final : public Cells {
public:
    PutCells(const Statement& statement, int first) : statement_(statement.get()), column_(first) {}

protected:
    [[nodiscard]] bool takes() const override { return false; }
    void next(const char*, Cell& cell) override {
        const int column = column_++;
        // a cell goes before its row is written: SQLite takes a copy
        if (const auto* whole = std::get_if<std::int64_t>(&cell))
            sqlite3_bind_int64(statement_, column, *whole);
        else if (const auto* number = std::get_if<double>(&cell))
            sqlite3_bind_double(statement_, column, *number);
        else if (const auto* text = std::get_if<std::string>(&cell))
            sqlite3_bind_text64(statement_, column, text->data(), text->size(), SQLITE_TRANSIENT, SQLITE_UTF8);
        else if (const auto* bytes = std::get_if<Bytes>(&cell))
            sqlite3_bind_blob64(statement_, column, bytes->bytes.data(), bytes->bytes.size(), SQLITE_TRANSIENT);
        else
            sqlite3_bind_null(statement_, column);
    }

private:
    sqlite3_stmt* statement_;
    int column_;
};

class TakeCells final : public Cells {
public:
    TakeCells(const Statement& statement, int first) : statement_(statement), column_(first) {}

protected:
    [[nodiscard]] bool takes() const override { return true; }
    void next(const char*, Cell& cell) override {
        const int column = column_++;
        switch (sqlite3_column_type(statement_.get(), column)) {
            case SQLITE_INTEGER: cell = statement_.whole(column); return;
            case SQLITE_FLOAT: cell = sqlite3_column_double(statement_.get(), column); return;
            case SQLITE_TEXT: cell = statement_.text(column); return;
            case SQLITE_BLOB: {
                const auto* bytes = static_cast<const char*>(sqlite3_column_blob(statement_.get(), column));
                const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement_.get(), column));
                cell = Bytes{size == 0 ? std::string() : std::string(bytes, size)};
                return;
            }
            default: cell = std::monostate(); return;
        }
    }

private:
    const Statement& statement_;
    int column_;
};

template <typename Row>
std::vector<std::string> columns_of() {
    ColumnNames names;
    Row row{};
    cells_of(names, row);
    return names.names();
}

template <typename Row>
tl::expected<Statement, Refusal> writing(const Database& database, const char* table) {
    std::string names = "number";
    std::string values = "?1";
    std::string sets;
    int parameter = 1;
    for (const std::string& name : columns_of<Row>()) {
        names += ", " + name;
        values += ", ?" + std::to_string(++parameter);
        sets.append(sets.empty() ? "" : ", ").append(name).append(" = excluded.").append(name);
    }
    return database.prepare("INSERT INTO " + std::string(table) + " (" + names + ") VALUES (" + values +
                            ") ON CONFLICT (number) DO UPDATE SET " + sets);
}

template <typename Row>
tl::expected<void, Refusal> put_rows(const Database& database, const char* table, const std::vector<Row>& before,
                                     const std::vector<Row>& now) {
    tl::expected<Statement, Refusal> statement;
    for (std::size_t i = 0; i < now.size(); ++i) {
        if (i < before.size() && before[i] == now[i]) continue;
        if (statement && statement->get() == nullptr) statement = writing<Row>(database, table);
        if (!statement) return tl::unexpected(statement.error());
        sqlite3_bind_int64(statement->get(), 1, static_cast<std::int64_t>(i));
        PutCells cells(*statement, 2);
        Row row = now[i];
        cells_of(cells, row);
        if (statement->step() != SQLITE_DONE) return tl::unexpected(database.failure());
        statement->reset();
    }
    if (before.size() <= now.size()) return {};
    return database.run(("DELETE FROM " + std::string(table) + " WHERE number >= " + std::to_string(now.size())).c_str());
}

template <typename Row>
tl::expected<std::vector<Row>, Refusal> take_rows(const Database& database, const char* table) {
    std::string names = "number";
    for (const std::string& name : columns_of<Row>()) names += ", " + name;
    const auto statement = database.prepare("SELECT " + names + " FROM " + table + " ORDER BY number");
    if (!statement) return tl::unexpected(statement.error());
    const auto refused = [&](std::size_t row, std::string found, std::string expected) {
        return tl::unexpected(Refusal{Refusal::Code::malformed, database.shown(),
                                      Words::tell("table {1}, row {2}", {std::string(table), std::to_string(row)}),
                                      std::move(found), std::move(expected)});
    };
    std::vector<Row> rows;
    int result = SQLITE_ROW;
    while ((result = statement->step()) == SQLITE_ROW) {
        if (statement->whole(0) != static_cast<std::int64_t>(rows.size()))
            return refused(rows.size(), Words::tell("the number {1}", {std::to_string(statement->whole(0))}),
                           Words::later("rows without a gap"));
        TakeCells cells(*statement, 1);
        Row row{};
        cells_of(cells, row);
        if (!cells.wrong().empty()) return refused(rows.size(), cells.wrong(), Words::later("what a project holds there"));
        rows.push_back(std::move(row));
    }
    if (result != SQLITE_DONE) return tl::unexpected(database.failure());
    return rows;
}

tl::expected<void, Refusal> put_field(const Database& database, const FieldSurvey& before, const FieldSurvey& now) {
    const Survey& was = before.survey;
    const Survey& is = now.survey;
    tl::expected<void, Refusal> done;
    const auto put = [&](const char* table, const auto& rows_before, const auto& rows_now) {
        if (done) done = put_rows(database, table, rows_before, rows_now);
    };
    put("walks", walk_rows(was), walk_rows(is));
    // tracks are long: rows are made of them only where one differs
    if (was.walks != is.walks) put("segments", segment_rows(was), segment_rows(is));
    put("mounds", was.mounds, is.mounds);
    put("shapes", shape_rows(was.ground), shape_rows(is.ground));
    put("decisions", was.decisions, is.decisions);
    put("known_facts", was.known, is.known);
    put("answers", was.answers, is.answers);
    put("note_rules", was.note_rules, is.note_rules);
    if (was.work != is.work) put("work", rows_of(*was.work), rows_of(*is.work));
    put("read_findings", before.findings, now.findings);
    put("findings", before.of_reading, now.of_reading);
    return done;
}

tl::expected<void, Refusal> put_told(const Database& database, const Project& before, const Project& now,
                                     const std::filesystem::path& folder) {
    tl::expected<void, Refusal> done;
    const auto put = [&](const char* table, const auto& rows_before, const auto& rows_now) {
        if (done) done = put_rows(database, table, rows_before, rows_now);
    };
    put("files", file_rows(before, folder), file_rows(now, folder));
    put("told_tables", table_rows(before, folder), table_rows(now, folder));
    put("told_layers", layer_rows(before, folder), layer_rows(now, folder));
    put("told_norths", north_rows(before), north_rows(now));
    put("pictures", picture_rows(before, folder), picture_rows(now, folder));
    return done;
}

}  // namespace

tl::expected<void, Refusal> put_project(const Database& database, const Project* before, const Project& now,
                                        const std::filesystem::path& folder) {
    static const Project nothing;
    static const FieldSurvey no_field;
    const auto rows = [before](const auto& row_of) {
        using Row = std::decay_t<decltype(row_of(*before))>;
        return before ? std::vector<Row>{row_of(*before)} : std::vector<Row>{};
    };
    const auto field_of = [](const Project& project) { return field_row(*project.field); };
    auto done = put_rows(database, "field", rows(field_of), {field_of(now)});
    if (done) done = put_rows(database, "display", rows(view_row), {view_row(now)});
    if (done) done = put_field(database, before ? *before->field : no_field, *now.field);
    if (done) done = put_told(database, before ? *before : nothing, now, folder);
    return done;
}

tl::expected<Project, Refusal> take_project(const Database& database, const std::filesystem::path& folder) {
    std::optional<Refusal> refusal;
    const auto take = [&]<typename Row>(const char* table, std::vector<Row>& rows) {
        if (refusal) return;
        auto taken = take_rows<Row>(database, table);
        if (taken)
            rows = std::move(*taken);
        else
            refusal = taken.error();
    };
    const auto does_not_fit = [&](const char* table, std::string found) {
        return tl::unexpected(Refusal{Refusal::Code::malformed, database.shown(),
                                      Words::tell("table {1}", {std::string(table)}), std::move(found),
                                      Words::later("a field whose parts fit each other")});
    };
    std::vector<FieldRow> fields;
    std::vector<WalkRow> walks;
    std::vector<SegmentRow> segments;
    std::vector<ShapeRow> shapes;
    std::vector<WorkRow> work;
    FieldSurvey field;
    take("field", fields);
    take("walks", walks);
    take("segments", segments);
    take("mounds", field.survey.mounds);
    take("shapes", shapes);
    take("decisions", field.survey.decisions);
    take("known_facts", field.survey.known);
    take("answers", field.survey.answers);
    take("note_rules", field.survey.note_rules);
    take("work", work);
    take("read_findings", field.findings);
    take("findings", field.of_reading);
    ToldRows told;
    std::vector<ViewRow> views;
    take("files", told.files);
    take("told_tables", told.tables);
    take("told_layers", told.layers);
    take("told_norths", told.norths);
    take("pictures", told.pictures);
    take("display", views);
    if (refusal) return tl::unexpected(*refusal);
    if (fields.size() != 1) return does_not_fit("field", std::to_string(fields.size()) + " rows");
    if (views.size() != 1) return does_not_fit("display", std::to_string(views.size()) + " rows");
    field.field_name = std::move(fields.front().name);
    field.survey.revision = fields.front().revision;
    field.frame = LocalFrame::centred_on(fields.front().centre);
    auto tracks = walks_of(std::move(walks), std::move(segments));
    if (!tracks) return does_not_fit("segments", tracks.error());
    field.survey.walks = std::move(*tracks);
    auto ground = ground_of(std::move(shapes));
    if (!ground) return does_not_fit("shapes", ground.error());
    field.survey.ground = std::move(*ground);
    auto order = work_of(work);
    if (!order) return does_not_fit("work", order.error());
    field.survey.work = std::move(*order);
    if (const auto wrong = what_does_not_fit(field.survey)) return does_not_fit("mounds", *wrong);
    Project project;
    project.field = std::make_shared<const FieldSurvey>(std::move(field));
    told.view = views.front();
    take_told(project, std::move(told), folder);
    return project;
}

}  // namespace plugside
