#include "geo/store/told_rows.h"

#include <array>

#include "core/words/words.h"

namespace plugside {

namespace {

// Enumerations that have no words elsewhere: each word stands at its value's place.
template <typename Word, std::size_t count>
std::string word_at(Word word, const std::array<const char*, count>& words) {
    return words.at(static_cast<std::size_t>(word));
}

template <typename Word, std::size_t count>
std::optional<Word> value_of(const std::string& text, const std::array<const char*, count>& words) {
    for (std::size_t i = 0; i < count; ++i)
        if (text == words[i]) return static_cast<Word>(i);
    return std::nullopt;
}

constexpr std::array date_orders = {"year first", "day first", "month first"};
constexpr std::array point_uses = {"mounds", "not used"};
constexpr std::array line_uses = {"walks", "barriers", "not used"};
constexpr std::array polygon_uses = {"boundary", "keep clear", "not used"};
constexpr std::array pair_kinds = {"similarity", "affine"};
constexpr std::array unit_words = {"feet and inches", "metres"};

std::string date_order_text(DateOrder order) { return word_at(order, date_orders); }
std::optional<DateOrder> date_order_from(const std::string& text) { return value_of<DateOrder>(text, date_orders); }
std::string point_use_text(PointUse use) { return word_at(use, point_uses); }
std::optional<PointUse> point_use_from(const std::string& text) { return value_of<PointUse>(text, point_uses); }
std::string line_use_text(LineUse use) { return word_at(use, line_uses); }
std::optional<LineUse> line_use_from(const std::string& text) { return value_of<LineUse>(text, line_uses); }
std::string polygon_use_text(PolygonUse use) { return word_at(use, polygon_uses); }
std::optional<PolygonUse> polygon_use_from(const std::string& text) { return value_of<PolygonUse>(text, polygon_uses); }
std::string pair_kind_text(PlacementKind kind) { return word_at(kind, pair_kinds); }
std::optional<PlacementKind> pair_kind_from(const std::string& text) { return value_of<PlacementKind>(text, pair_kinds); }
std::string units_text(LengthUnits units) { return word_at(units, unit_words); }
std::optional<LengthUnits> units_from(const std::string& text) { return value_of<LengthUnits>(text, unit_words); }

std::optional<TextEncoding> encoding_from(const std::string& text) {
    for (const auto encoding :
         {TextEncoding::utf_8, TextEncoding::utf_16_little, TextEncoding::utf_16_big, TextEncoding::latin_1})
        if (text == to_text(encoding)) return encoding;
    return std::nullopt;
}

std::optional<ColumnRole> role_from(const std::string& text) {
    for (int i = 0; i <= static_cast<int>(ColumnRole::picture); ++i)
        if (text == to_text(static_cast<ColumnRole>(i))) return static_cast<ColumnRole>(i);
    return std::nullopt;
}

void role_cells(Cells& cells, std::vector<ColumnRole>& roles) {
    Texts texts;
    for (const ColumnRole role : roles) texts.push_back(to_text(role));
    cells.list("roles", texts);
    if (!cells.reading()) return;
    roles.clear();
    for (const std::string& text : texts) {
        const auto role = role_from(text);
        if (!role)
            return cells.blame("roles", quoted_for_display(text), Words::later("a column's role that this version knows"));
        roles.push_back(*role);
    }
}

void time_cells(Cells& cells, TimeWriting& times) {
    cells.word("date_order", times.order, &date_order_text, &date_order_from);
    cells.whole("minutes_east_of_utc", times.minutes_east_of_utc, -1440, 1440);
}

void guess_cells(Cells& cells, LayerGuess& guess) {
    cells.text("layer", guess.layer);
    cells.word("points", guess.points, &point_use_text, &point_use_from);
    cells.word("lines", guess.lines, &line_use_text, &line_use_from);
    cells.word("polygons", guess.polygons, &polygon_use_text, &polygon_use_from);
    cells.list("columns", guess.columns);
    role_cells(cells, guess.roles);
    time_cells(cells, guess.times);
    cells.flag("has_reference_system", guess.has_reference_system);
    cells.text("reference_system", guess.reference_system);
}

void placement_cells(Cells& cells, PicturePlacement& placement) {
    cells.place("corner_east_m", "corner_north_m", placement.corner);
    cells.number("column_east_m", placement.per_column.east_m);
    cells.number("column_north_m", placement.per_column.north_m);
    cells.number("row_east_m", placement.per_row.east_m);
    cells.number("row_north_m", placement.per_row.north_m);
}

// Spots of the picture (columns, rows) and places of the ground, in the pairs' order.
void pair_cells(Cells& cells, std::vector<PlacementPair>& pairs) {
    Places spots;
    Places places;
    for (const PlacementPair& pair : pairs) {
        spots.push_back({pair.pixel.column, pair.pixel.row});
        places.push_back(pair.ground);
    }
    cells.list("pair_spots", spots);
    cells.list("pair_places", places);
    if (!cells.reading()) return;
    if (spots.size() != places.size())
        return cells.blame("pair_places", std::to_string(places.size()), Words::later("as many places as spots"));
    pairs.clear();
    for (std::size_t i = 0; i < spots.size(); ++i) pairs.push_back({{spots[i].east_m, spots[i].north_m}, places[i]});
}

}  // namespace

void cells_of(Cells& cells, FileRow& row) {
    cells.whole("step", row.step);
    cells.text("file", row.file);
}

void cells_of(Cells& cells, TableRow& row) {
    cells.text("file", row.file);
    cells.letter("separator", row.guess.separator);
    cells.letter("decimal", row.guess.decimal);
    cells.word("encoding", row.guess.encoding, &to_text, &encoding_from);
    cells.flag("header_row", row.guess.header_row);
    role_cells(cells, row.guess.roles);
    cells.text("reference_system", row.guess.reference_system);
    cells.flag("packed_minutes", row.guess.packed_minutes);
    time_cells(cells, row.guess.times);
    cells.list("assumed", row.guess.assumed);
}

void cells_of(Cells& cells, LayerRow& row) {
    cells.text("file", row.file);
    cells.part("guessed", row.guess, guess_cells);
}

void cells_of(Cells& cells, NorthRow& row) {
    cells.text("name", row.name);
    cells.word("north", row.north, &to_text, &north_from_text);
}

void cells_of(Cells& cells, PictureRow& row) {
    cells.text("file", row.file);
    cells.flag("visible", row.visible);
    cells.text("reference_system", row.answers.reference_system);
    cells.text("table_name", row.answers.table);
    cells.part("placed", row.answers.placement, placement_cells);
    cells.word("pair_kind", row.answers.pair_kind, &pair_kind_text, &pair_kind_from);
    pair_cells(cells, row.answers.pairs);
}

void cells_of(Cells& cells, ViewRow& row) {
    cells.number("imagery_tone", row.imagery_tone, 0.0, 1.0);
    cells.word("units", row.units, &units_text, &units_from);
    cells.flag("not_handed_out", row.not_handed_out);
}

std::string kept_path(const std::filesystem::path& file, const std::filesystem::path& folder) {
    const auto from_there = file.lexically_relative(folder);
    const bool below = !from_there.empty() && *from_there.begin() != ".." && from_there != ".";
    return (below ? from_there : file).string();
}

std::filesystem::path path_kept(const std::string& text, const std::filesystem::path& folder) {
    return (folder / text).lexically_normal();  // a whole path stays what it is
}

std::vector<FileRow> file_rows(const Project& project, const std::filesystem::path& folder) {
    std::vector<FileRow> rows;
    for (std::size_t step = 0; step < project.steps.size(); ++step) {
        for (const auto& file : project.steps[step]) rows.push_back({step, kept_path(file, folder)});
        if (project.steps[step].empty()) rows.push_back({step, std::nullopt});
    }
    return rows;
}

std::vector<TableRow> table_rows(const Project& project, const std::filesystem::path& folder) {
    std::vector<TableRow> rows;
    for (const auto& [file, guess] : project.tables) rows.push_back({kept_path(file, folder), guess});
    return rows;
}

std::vector<LayerRow> layer_rows(const Project& project, const std::filesystem::path& folder) {
    std::vector<LayerRow> rows;
    for (const auto& [file, guesses] : project.layers) {
        for (const LayerGuess& guess : guesses) rows.push_back({kept_path(file, folder), guess});
        if (guesses.empty()) rows.push_back({kept_path(file, folder), std::nullopt});
    }
    return rows;
}

std::vector<NorthRow> north_rows(const Project& project) {
    std::vector<NorthRow> rows;
    for (const auto& [name, north] : project.norths) rows.push_back({name, north});
    return rows;
}

std::vector<PictureRow> picture_rows(const Project& project, const std::filesystem::path& folder) {
    std::vector<PictureRow> rows;
    for (const ProjectPicture& picture : project.pictures)
        rows.push_back({kept_path(picture.file, folder), picture.visible, picture.answers});
    return rows;
}

ViewRow view_row(const Project& project) { return {project.imagery_tone, project.units, project.not_handed_out}; }

void take_told(Project& project, ToldRows rows, const std::filesystem::path& folder) {
    for (FileRow& row : rows.files) {
        // a step follows the one before; what skips ahead in a file of someone else's is still only the next step
        if (project.steps.empty() || row.step >= project.steps.size()) project.steps.emplace_back();
        if (row.file) project.steps.back().push_back(path_kept(*row.file, folder));
    }
    for (TableRow& row : rows.tables) project.tables[path_kept(row.file, folder)] = std::move(row.guess);
    for (LayerRow& row : rows.layers) {
        auto& guesses = project.layers[path_kept(row.file, folder)];
        if (row.guess) guesses.push_back(std::move(*row.guess));
    }
    for (NorthRow& row : rows.norths) project.norths[row.name] = row.north;
    for (PictureRow& row : rows.pictures)
        project.pictures.push_back({path_kept(row.file, folder), row.visible, std::move(row.answers)});
    project.imagery_tone = rows.view.imagery_tone;
    project.units = rows.view.units;
    project.not_handed_out = rows.view.not_handed_out;
}

}  // namespace plugside
