#include "geo/read/delimited_text.h"

#include <algorithm>
#include <optional>

#include "core/words/words.h"
#include "geo/read/numbers.h"

namespace plugside {

namespace {

constexpr std::size_t longest_cell = 64 * 1024;
constexpr std::size_t most_cells = 1000;
constexpr std::size_t most_rows = 2'000'000;

class Splitter {
public:
    Splitter(std::string_view text, char separator, const std::string& name)
        : text_(text), separator_(separator), name_(name) {}

    bool at_end() const { return at_ >= text_.size(); }

    // The next row; without cells when it is blank. Nothing once refused.
    std::optional<TextRow> row() {
        TextRow row{line_, {}};
        skip_blanks();
        for (;;) {
            auto cell = this->cell();
            if (!cell) return std::nullopt;
            row.cells.push_back(std::move(*cell));
            if (row.cells.size() > most_cells)
                return refuse(Refusal::Code::too_large, row.line, Words::later("more than 1,000 cells in a row"),
                              Words::later("a table of marks"));
            if (!take_separator()) break;
        }
        take_line_end();
        if (std::all_of(row.cells.begin(), row.cells.end(), [](const std::string& c) { return c.empty(); }))
            row.cells.clear();
        return row;
    }

    const Refusal& refusal() const { return *refusal_; }

private:
    std::nullopt_t refuse(Refusal::Code code, std::size_t line, const std::string& found, const std::string& expected) {
        refusal_ = Refusal{code, name_, Words::tell("line {1}", {std::to_string(line)}), found, expected};
        return std::nullopt;
    }

    bool is_separator(char c) const { return separator_ == ' ' ? c == ' ' || c == '\t' : c == separator_; }
    static bool is_line_end(char c) { return c == '\n' || c == '\r'; }

    void skip_blanks() {
        while (!at_end() && (text_[at_] == ' ' || text_[at_] == '\t') && (separator_ == ' ' || !is_separator(text_[at_])))
            ++at_;
    }

    // With blanks as separator, those at the end of a row part nothing.
    bool take_separator() {
        if (at_end() || !is_separator(text_[at_])) return false;
        ++at_;
        if (separator_ != ' ') return true;
        skip_blanks();
        return !at_end() && !is_line_end(text_[at_]);
    }

    void take_line_end() {
        if (at_end()) return;
        const bool carriage = text_[at_] == '\r';
        ++at_;
        if (carriage && !at_end() && text_[at_] == '\n') ++at_;
        ++line_;
    }

    std::optional<std::string> cell() {
        skip_blanks();
        std::string content;
        const std::size_t opened = line_;
        if (!at_end() && text_[at_] == '"' && !take_quoted(content))
            return refuse(Refusal::Code::malformed, opened, Words::later("a quotation mark that is never closed"),
                          Words::later("a cell with both of them"));
        const std::size_t start = at_;
        while (!at_end() && !is_separator(text_[at_]) && !is_line_end(text_[at_])) ++at_;
        content += trimmed(text_.substr(start, at_ - start));
        if (content.size() > longest_cell)
            return refuse(Refusal::Code::too_large, opened, Words::later("a cell longer than 64 KiB"),
                          Words::later("a mark's short note"));
        return content;
    }

    bool take_quoted(std::string& content) {
        ++at_;
        for (; !at_end(); ++at_) {
            const char c = text_[at_];
            if (c == '\n' || (c == '\r' && (at_ + 1 >= text_.size() || text_[at_ + 1] != '\n'))) ++line_;
            if (c != '"') {
                content += c;
                continue;
            }
            if (at_ + 1 >= text_.size() || text_[at_ + 1] != '"') {
                ++at_;
                content = std::string(trimmed(content));
                return true;
            }
            content += '"';
            ++at_;
        }
        return false;
    }

    std::string_view text_;
    char separator_;
    const std::string& name_;
    std::size_t at_ = 0;
    std::size_t line_ = 1;
    std::optional<Refusal> refusal_;
};

}  // namespace

tl::expected<std::vector<TextRow>, Refusal> split_delimited(std::string_view utf_8, char separator, const std::string& name,
                                                            std::size_t most) {
    Splitter splitter(utf_8, separator, name);
    std::vector<TextRow> rows;
    while (!splitter.at_end() && rows.size() < most) {
        auto row = splitter.row();
        if (!row) return tl::unexpected(splitter.refusal());
        if (row->cells.empty()) continue;
        rows.push_back(std::move(*row));
        if (rows.size() > most_rows)
            return tl::unexpected(Refusal{Refusal::Code::too_large, name, "", Words::later("more than 2,000,000 rows"),
                                          Words::later("the marks of one field")});
    }
    return rows;
}

}  // namespace plugside
