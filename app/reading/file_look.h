// What a person is shown of the files they dropped, before anything of them is taken: what each was taken for, what it would
// give as things stand, and where on the earth that would lie.
//
// Entry:   one file; all photographs together; a Shapefile with its parts. A photograph that cannot be read is an entry of
// its
//          own.
// By itself: counts and the middle are those of the entry read alone, with the choices given. Reading them together may
// still
//          find doubles and swapped coordinates.
// Refusal: why the entry cannot be read as things stand. Where it has a guess (a table, layers), other choices may help.
// Bare:    fans whose notes say no north; `turned` is the sentence of north_of_walk.h of what magnetic north would do to
// them. Cost:    sorting reads the first bytes of each file; looking closer reads the file. For a thread of its own.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "app/reading/told_reading.h"
#include "geo/read/layer_sample.h"

namespace plugside {

enum class TakenFor { walk, table, photographs, layers, handed_out, unknown };

struct FileLook {
    std::vector<std::filesystem::path> files;
    TakenFor taken_for = TakenFor::unknown;
    std::optional<Refusal> refusal;
    std::optional<TableGuess> table;
    std::optional<TablePreview> preview;
    std::vector<LayerGuess> layers;
    std::vector<LayerSample> samples;  // of the same layers, in their order

    std::size_t marks = 0;  // of gophers
    std::size_t fans = 0;
    std::size_t other_marks = 0;
    std::size_t tracks = 0;
    std::size_t boundary_parts = 0;
    std::size_t barriers = 0;
    std::size_t keep_clear = 0;
    std::size_t findings = 0;
    std::optional<GeographicPoint> middle;  // of its marks, else of its tracks, else of its ground
    std::size_t bare_fans = 0;
    std::string turned;

    [[nodiscard]] const std::filesystem::path& file() const { return files.front(); }
    // What its walks are known by, see FileChoices::north.
    [[nodiscard]] std::string source() const;
};

// The choices of a table or of layers can be seen and changed.
[[nodiscard]] bool has_choices(const FileLook& look);
// Nothing that a person could say here makes it readable.
[[nodiscard]] bool cannot_be_read(const FileLook& look);
// Nothing can be read of it until a person said something.
[[nodiscard]] bool needs_answer(const FileLook& look);
// Its marks have no fan although columns of it are not used: one of them may be the bearings.
[[nodiscard]] bool may_miss_fans(const FileLook& look);
// Eastings and northings, or a layer, that need a reference system to be told, told or not.
[[nodiscard]] bool wants_reference_system(const FileLook& look);
[[nodiscard]] std::string reference_system_of(const FileLook& look);
void set_reference_system(FileLook& look, const std::string& code);
// What was chosen for it, into `choices`.
void note_choices(const FileLook& look, FileChoices& choices);

// The entries, in the files' order, each with its kind, or the refusal of its first bytes.
[[nodiscard]] std::vector<FileLook> sorted_files(const std::vector<std::filesystem::path>& files);
// Guess, preview and sample, where `choices` have none of their own.
void look_inside(FileLook& look, const FileChoices& choices, const Progress& progress = {});
// The table's rows anew by its guess. `other_columns`: what parts it into columns has changed, so that they are guessed by
// their headings anew.
void preview_again(FileLook& look, bool other_columns);
// Counts, middle and refusal, by the look's own guess.
void read_alone(FileLook& look, const Progress& progress = {});

// The first places in the file's own numbers, east first, for trying reference systems; none where it needs none.
[[nodiscard]] std::vector<std::array<double, 2>> own_places(const FileLook& look);

}  // namespace plugside
