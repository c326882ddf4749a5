// The cells of one row of a project file, named one after the other in one place for all three uses: listing the columns, writing
// a row, reading it. What is said once cannot be written one way and read another.
//
//     void cells_of(Cells& cells, NoteRule& rule) {
//         cells.text("walk", rule.walk);
//         ...
//     }
//
// Numbers:  finite; a range that is given is demanded when reading.
// Absent:   a std::optional that holds nothing is an empty cell. `part`: a structure that may be absent, behind a cell that says so.
// Reading:  the first cell that cannot be meant is remembered in `wrong` ("column east: found ..., expected ..."); what comes after
//           it is not looked at.
#pragma once

#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "core/survey/mound.h"
#include "core/units/bearing.h"
#include "core/units/metres.h"
#include "core/units/probability.h"
#include "core/words/words.h"
#include "geo/store/packed_lists.h"

namespace plugside {

struct Bytes {
    std::string bytes;
    friend bool operator==(const Bytes&, const Bytes&) = default;
};
using Cell = std::variant<std::monostate, std::int64_t, double, std::string, Bytes>;

class Cells {
public:
    virtual ~Cells() = default;
    Cells() = default;
    Cells(const Cells&) = delete;
    Cells& operator=(const Cells&) = delete;

    void whole(const char* name, std::int64_t& number, std::int64_t least = std::numeric_limits<std::int64_t>::min(),
               std::int64_t most = std::numeric_limits<std::int64_t>::max());
    void whole(const char* name, int& number, int least = std::numeric_limits<int>::min(),
               int most = std::numeric_limits<int>::max());
    void whole(const char* name, std::optional<int>& number);
    void whole(const char* name, std::size_t& number);  // a place in a list
    void revision(const char* name, std::uint64_t& number);
    void flag(const char* name, bool& flag);
    void number(const char* name, double& number, double least = std::numeric_limits<double>::lowest(),
                double most = std::numeric_limits<double>::max());
    void number(const char* name, std::optional<double>& number);
    void place(const char* east, const char* north, LocalPoint& place);
    void length(const char* name, Metres& length);
    void length_above_0(const char* name, Metres& length);
    void length_above_0(const char* name, std::optional<Metres>& length);
    void bearing(const char* name, std::optional<Bearing>& bearing);
    void chance(const char* name, Probability& chance);
    void time(const char* name, std::optional<UtcTime>& time);
    void text(const char* name, std::string& text);
    void text(const char* name, std::optional<std::string>& text);
    void letter(const char* name, char& letter);
    void list(const char* name, Texts& texts);
    void list(const char* name, Places& places);
    void list(const char* name, std::optional<Places>& places);
    void list(const char* name, Rings& rings);
    void list(const char* name, TrackSegment& segment);

    template <typename Word>
    void word(const char* name, Word& word, std::string (*to_text)(Word),
              std::optional<Word> (*from_text)(const std::string&)) {
        std::string written = to_text(word);
        text(name, written);
        if (!reading()) return;
        if (const auto read = from_text(written))
            word = *read;
        else
            blame(name, quoted(written), Words::later("a word that this version knows"));
    }
    template <typename Word>
    void word(const char* name, std::optional<Word>& word, std::string (*to_text)(Word),
              std::optional<Word> (*from_text)(const std::string&)) {
        std::optional<std::string> written;
        if (word) written = to_text(*word);
        text(name, written);
        if (!reading()) return;
        word = written ? from_text(*written) : std::nullopt;
        if (written && !word) blame(name, quoted(*written), Words::later("a word that this version knows"));
    }
    template <typename Part, typename Visit>
    void part(const char* name, std::optional<Part>& part, const Visit& visit) {
        bool there = part.has_value();
        flag(name, there);
        Part inside = part ? *part : Part{};
        const bool outer = absent_;
        absent_ = absent_ || !there;
        visit(*this, inside);
        absent_ = outer;
        if (there)
            part = std::move(inside);
        else
            part.reset();
    }

    [[nodiscard]] const std::string& wrong() const { return wrong_; }
    // What is read has to be understood: not while writing, not within a part that is absent, not after a fault.
    [[nodiscard]] bool reading() const { return takes() && !absent_ && wrong_.empty(); }
    void blame(const char* name, const std::string& found, const char* expected);

protected:
    [[nodiscard]] virtual bool takes() const = 0;  // cells are taken from the file
    // The next cell, given to the file or taken from it.
    virtual void next(const char* name, Cell& cell) = 0;

private:
    [[nodiscard]] static std::string quoted(const std::string& text);
    // Whether `cell` now holds a value of its kind that was read and may be used.
    template <typename Kind>
    bool exchange(const char* name, Cell& cell, bool may_be_empty);
    template <typename List>
    void whole_list(const char* name, List& list);
    bool absent_ = false;
    std::string wrong_;
};

}  // namespace plugside
