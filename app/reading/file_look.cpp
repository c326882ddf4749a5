#include "app/reading/file_look.h"

#include <algorithm>
#include <utility>

#include "core/words/words.h"
#include "geo/read/input_file.h"
#include "geo/read/north_of_walk.h"
#include "geo/read/numbers.h"
#include "geo/read/photo.h"

namespace plugside {

namespace {

constexpr std::size_t rows_shown = 20;

bool has_role(const TableGuess& guess, ColumnRole role) {
    return std::find(guess.roles.begin(), guess.roles.end(), role) != guess.roles.end();
}

bool in_degrees(const TableGuess& guess) {
    return has_role(guess, ColumnRole::longitude) && has_role(guess, ColumnRole::latitude);
}

bool in_metres(const TableGuess& guess) {
    return has_role(guess, ColumnRole::easting) && has_role(guess, ColumnRole::northing) && !in_degrees(guess);
}

bool has_place(const TableGuess& guess) { return in_degrees(guess) || in_metres(guess); }

bool used(const LayerGuess& guess) {
    return guess.points != PointUse::not_used || guess.lines != LineUse::not_used || guess.polygons != PolygonUse::not_used;
}

TakenFor taken_for(FileKind kind) {
    switch (kind) {
        case FileKind::xml: return TakenFor::walk;
        case FileKind::table: return TakenFor::table;
        case FileKind::photograph: return TakenFor::photographs;
        case FileKind::shapefile_part: return TakenFor::unknown;
        default: return TakenFor::layers;
    }
}

FileLook look_at(const std::filesystem::path& file, TakenFor sort, std::optional<Refusal> refusal = std::nullopt) {
    FileLook look;
    look.files = {file};
    look.taken_for = sort;
    look.refusal = std::move(refusal);
    return look;
}

// Photographs in one entry, but for those that cannot be read.
void gather_photograph(std::vector<FileLook>& looks, const std::filesystem::path& file) {
    if (const auto read = read_photograph(file); !read) {
        looks.push_back(look_at(file, TakenFor::photographs, read.error()));
        return;
    }
    for (FileLook& look : looks)
        if (look.taken_for == TakenFor::photographs && !look.refusal) {
            look.files.push_back(file);
            return;
        }
    looks.push_back(look_at(file, TakenFor::photographs));
}

void forget_counts(FileLook& look) {
    look.marks = look.fans = look.other_marks = look.tracks = 0;
    look.boundary_parts = look.barriers = look.keep_clear = look.findings = look.bare_fans = 0;
    look.middle.reset();
    look.turned.clear();
    look.refusal.reset();
}

std::optional<LocalPoint> middle_of(const Survey& survey) {
    std::vector<LocalPoint> places;
    for (const Mound& mound : survey.mounds) places.push_back(mound.plug);
    if (places.empty())
        for (const Walk& walk : survey.walks)
            for (const TrackSegment& segment : walk.segments)
                for (const TrackPoint& point : segment) places.push_back(point.at);
    if (places.empty())
        for (const Polygon& part : survey.ground.boundary.parts)
            places.insert(places.end(), part.outer.vertices.begin(), part.outer.vertices.end());
    if (places.empty())
        for (const Barrier& barrier : survey.ground.barriers)
            places.insert(places.end(), barrier.line.vertices.begin(), barrier.line.vertices.end());
    if (places.empty())
        for (const KeepClearArea& area : survey.ground.keep_clear)
            places.insert(places.end(), area.area.outer.vertices.begin(), area.area.outer.vertices.end());
    if (places.empty()) return std::nullopt;
    LocalVector sum;
    for (const LocalPoint place : places) sum = sum + (place - LocalPoint{});
    return LocalPoint{} + sum * (1.0 / static_cast<double>(places.size()));
}

void count(FileLook& look, const FieldSurvey& field) {
    for (const Mound& mound : field.survey.mounds) {
        const bool gopher = is_gopher_sign(mound.kind);
        look.marks += gopher ? 1U : 0U;
        look.fans += gopher && mound.fan ? 1U : 0U;
        look.other_marks += gopher ? 0U : 1U;
    }
    for (std::size_t i = 0; i < field.survey.walks.size(); ++i) {
        look.tracks += field.survey.walks[i].segments.empty() ? 0U : 1U;
        const auto turn = turn_of_magnetic_walk(field.survey, i, field.frame);
        if (!turn) {
            look.turned = sentence(turn.error());
        } else if (*turn) {
            look.bare_fans += (*turn)->mend.marks.size();
            if (look.turned.empty()) look.turned = (*turn)->sentence;
        }
    }
    look.boundary_parts = field.survey.ground.boundary.parts.size();
    look.barriers = field.survey.ground.barriers.size();
    look.keep_clear = field.survey.ground.keep_clear.size();
    look.findings = field.findings.size() + field.of_reading.size();
    if (const auto middle = middle_of(field.survey)) look.middle = field.frame.to_geographic(*middle);
}

std::optional<double> number_in(const std::vector<std::string>& row, std::size_t column, char decimal) {
    if (column >= row.size()) return std::nullopt;
    std::string pointed = row[column];
    std::replace(pointed.begin(), pointed.end(), decimal, '.');
    return parse_number(pointed);
}

// The layer that waits for a reference system, else the first that could be told one.
std::size_t layer_without_system(const FileLook& look) {
    for (std::size_t i = 0; i < look.layers.size(); ++i)
        if (!look.layers[i].has_reference_system && used(look.layers[i])) return i;
    return look.layers.size();
}

}  // namespace

std::string FileLook::source() const {
    return taken_for == TakenFor::photographs ? photographs_source : file().filename().string();
}

bool has_choices(const FileLook& look) { return look.table.has_value() || !look.layers.empty(); }

bool cannot_be_read(const FileLook& look) {
    return look.refusal && !has_choices(look) && look.refusal->code != Refusal::Code::nothing_to_plan;
}

bool needs_answer(const FileLook& look) { return look.refusal && has_choices(look); }

bool may_miss_fans(const FileLook& look) {
    if (look.marks == 0 || look.fans > 0) return false;
    const auto unused = [](const std::vector<ColumnRole>& roles) {
        return std::find(roles.begin(), roles.end(), ColumnRole::none) != roles.end();
    };
    return (look.table && unused(look.table->roles)) ||
           std::any_of(look.layers.begin(), look.layers.end(), [&](const LayerGuess& l) { return unused(l.roles); });
}

bool wants_reference_system(const FileLook& look) {
    if (look.table) return in_metres(*look.table);
    return layer_without_system(look) < look.layers.size();
}

std::string reference_system_of(const FileLook& look) {
    if (look.table) return look.table->reference_system;
    const std::size_t layer = layer_without_system(look);
    return layer < look.layers.size() ? look.layers[layer].reference_system : std::string();
}

void set_reference_system(FileLook& look, const std::string& code) {
    if (look.table) look.table->reference_system = code;
    for (LayerGuess& layer : look.layers)
        if (!layer.has_reference_system) layer.reference_system = code;
}

void note_choices(const FileLook& look, FileChoices& choices) {
    for (const auto& file : look.files) {
        if (look.table) choices.read.tables[file] = *look.table;
        if (!look.layers.empty()) choices.read.layers[file] = look.layers;
    }
}

std::vector<FileLook> sorted_files(const std::vector<std::filesystem::path>& files) {
    std::vector<FileLook> looks;
    std::vector<std::filesystem::path> parts;
    for (const auto& file : files) {
        const auto kind = kind_of_file(file);
        if (!kind)
            looks.push_back(look_at(file, TakenFor::unknown, kind.error()));
        else if (*kind == FileKind::photograph)
            gather_photograph(looks, file);
        else if (*kind == FileKind::shapefile_part)
            parts.push_back(file);
        else
            looks.push_back(look_at(file, taken_for(*kind)));
    }
    for (const auto& part : parts) {
        std::filesystem::path whole = part;
        whole.replace_extension(".shp");
        const auto main = std::find_if(looks.begin(), looks.end(), [&](const FileLook& l) { return l.file() == whole; });
        if (main != looks.end())
            main->files.push_back(part);
        else
            looks.push_back(
                look_at(part, TakenFor::unknown,
                        Refusal{Refusal::Code::wrong_format, part.string(), "", Words::later("a part of a Shapefile"),
                                Words::tell("its main file {1}", {whole.filename().string()})}));
    }
    return looks;
}

void look_inside(FileLook& look, const FileChoices& choices, const Progress& progress) {
    if (look.refusal) return;
    if (look.taken_for == TakenFor::table) {
        const auto chosen = choices.read.tables.find(look.file());
        auto guess = chosen != choices.read.tables.end() ? tl::expected<TableGuess, Refusal>(chosen->second)
                                                         : guess_table(look.file());
        if (!guess) {
            look.refusal = guess.error();
            return;
        }
        // words in a row are prose, not a table, where none of them is a place
        if (guess->separator == ' ' && chosen == choices.read.tables.end() && !has_place(*guess)) {
            look.refusal = read_table(look.file(), *guess, progress).error();
            return;
        }
        look.table = std::move(*guess);
        preview_again(look, false);
    }
    if (look.taken_for == TakenFor::layers) {
        auto guesses = guess_layers(look.file());
        if (!guesses) {
            look.refusal = guesses.error();
            return;
        }
        if (guesses->empty()) look.taken_for = TakenFor::handed_out;
        auto samples = sample_layers(look.file(), rows_shown, progress);
        for (const LayerGuess& guess : *guesses) {
            const auto same = samples ? std::find_if(samples->begin(), samples->end(),
                                                     [&](const LayerSample& s) { return s.layer == guess.layer; })
                                      : std::vector<LayerSample>::iterator();
            if (!samples || same == samples->end()) continue;
            look.layers.push_back(guess);
            look.samples.push_back(*same);
        }
        if (const auto chosen = choices.read.layers.find(look.file()); chosen != choices.read.layers.end())
            for (LayerGuess& layer : look.layers)
                for (const LayerGuess& earlier : chosen->second)
                    if (earlier.layer == layer.layer && earlier.columns == layer.columns) layer = earlier;
    }
}

void preview_again(FileLook& look, bool other_columns) {
    auto preview = preview_table(look.file(), *look.table, rows_shown);
    if (!preview) {
        look.preview.reset();
        look.refusal = preview.error();
        return;
    }
    look.preview = std::move(*preview);
    if (!other_columns) return;
    auto& roles = look.table->roles;
    roles.assign(look.preview->columns, ColumnRole::none);
    for (std::size_t i = 0; i < look.preview->headings.size() && i < roles.size(); ++i) {
        const ColumnRole role = role_named(look.preview->headings[i]);
        if (role == ColumnRole::note || !has_role(*look.table, role)) roles[i] = role;
    }
}

void read_alone(FileLook& look, const Progress& progress) {
    if (cannot_be_read(look)) return;
    FileChoices choices;
    note_choices(look, choices);
    auto field = read_field(look.files, choices.read, progress);
    if (!field && field.error().code == Refusal::Code::stopped) return;
    forget_counts(look);
    if (!field)
        look.refusal = field.error();
    else
        count(look, *field);
}

std::vector<std::array<double, 2>> own_places(const FileLook& look) {
    if (!wants_reference_system(look)) return {};
    if (!look.table) {
        const std::size_t layer = layer_without_system(look);
        return layer < look.samples.size() ? look.samples[layer].places : std::vector<std::array<double, 2>>();
    }
    std::vector<std::array<double, 2>> places;
    const auto& roles = look.table->roles;
    const auto column = [&](ColumnRole role) {
        return static_cast<std::size_t>(std::find(roles.begin(), roles.end(), role) - roles.begin());
    };
    const std::size_t easting = column(ColumnRole::easting);
    const std::size_t northing = column(ColumnRole::northing);
    if (!look.preview) return places;
    for (const auto& row : look.preview->rows) {
        const auto east = number_in(row, easting, look.table->decimal);
        const auto north = number_in(row, northing, look.table->decimal);
        if (east && north) places.push_back({*east, *north});
    }
    return places;
}

}  // namespace plugside
