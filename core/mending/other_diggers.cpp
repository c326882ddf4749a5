#include "core/mending/other_diggers.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>

#include "core/geometry/near_places.h"

namespace plugside {

namespace {

// In order of weight: the first that a note holds counts. Negations are looked for in front of the word.
constexpr std::array<DiggerWord, 34> words{{
    {"mole", SignKind::mole, 0.95},
    {"moles", SignKind::mole, 0.95},
    {"molehill", SignKind::mole, 0.95},
    {"topo", SignKind::mole, 0.85},
    {"topos", SignKind::mole, 0.85},
    {"ground squirrel", SignKind::ground_squirrel, 0.95},
    {"squirrel", SignKind::ground_squirrel, 0.95},
    {"ardilla", SignKind::ground_squirrel, 0.95},
    {"ardillas", SignKind::ground_squirrel, 0.95},
    {"ardillon", SignKind::ground_squirrel, 0.95},
    {"vole", SignKind::vole, 0.95},
    {"voles", SignKind::vole, 0.95},
    {"meadow mouse", SignKind::vole, 0.95},
    {"meadow mice", SignKind::vole, 0.95},
    {"raton", SignKind::vole, 0.8},
    {"ratones", SignKind::vole, 0.8},
    {"runway", SignKind::vole, 0.85},
    {"runways", SignKind::vole, 0.85},
    {"surface trail", SignKind::vole, 0.85},
    {"vereda", SignKind::vole, 0.75},
    {"veredas", SignKind::vole, 0.75},
    {"volcano", SignKind::mole, 0.85},
    {"volcan", SignKind::mole, 0.85},
    {"raised ridge", SignKind::mole, 0.85},
    {"ridge", SignKind::mole, 0.7},
    {"hole in the middle", SignKind::mole, 0.8},
    {"open hole", SignKind::ground_squirrel, 0.8},
    {"open holes", SignKind::ground_squirrel, 0.8},
    {"hole open", SignKind::ground_squirrel, 0.8},
    {"hoyo abierto", SignKind::ground_squirrel, 0.8},
    {"agujero abierto", SignKind::ground_squirrel, 0.8},
    {"boca abierta", SignKind::ground_squirrel, 0.8},
    {"round", SignKind::mole, 0.35},
    {"redondo", SignKind::mole, 0.35},
}};

constexpr std::array<std::string_view, 7> negations{"no", "not", "not a", "sin", "no es", "no es un", "never"};

// Lower case, accents taken off (the two-byte letters of Spanish), everything else a space.
std::string plain(std::string_view note) {
    std::string text = " ";
    for (std::size_t i = 0; i < note.size(); ++i) {
        const auto byte = static_cast<unsigned char>(note[i]);
        if (byte == 0xC3 && i + 1 < note.size()) {
            const auto next = static_cast<unsigned char>(static_cast<unsigned char>(note[++i]) | 0x20U);
            text += next == 0xA1   ? 'a'
                    : next == 0xA9 ? 'e'
                    : next == 0xAD ? 'i'
                    : next == 0xB1 ? 'n'
                    : next == 0xB3 ? 'o'
                    : next == 0xBA ? 'u'
                                   : ' ';
        } else {
            text += std::isalpha(byte) != 0 && byte < 0x80 ? static_cast<char>(std::tolower(byte)) : ' ';
        }
    }
    text += ' ';
    text.erase(std::unique(text.begin(), text.end(), [](char a, char b) { return a == ' ' && b == ' '; }), text.end());
    return text;
}

bool denied(const std::string& text, std::size_t at) {
    return std::any_of(negations.begin(), negations.end(), [&](std::string_view no) {
        const std::string before = " " + std::string(no);
        return at >= before.size() && text.compare(at - before.size(), before.size(), before) == 0;
    });
}

constexpr double least_stride_m = 0.4, most_stride_m = 1.3;
constexpr double most_bend_degrees = 50.0;

class HillStrings {
public:
    HillStrings(const Survey& survey, const WalkMarks& walk) : survey_(survey), walk_(walk) {}

    // Marks first, first + 1, ... that follow one another as hills of a string; one past the last.
    [[nodiscard]] std::size_t end_of(std::size_t first, std::size_t limit) const {
        std::size_t last = first;
        while (last + 1 < limit && goes_on(first, last, last + 1)) ++last;
        return last + 1;
    }
    [[nodiscard]] bool may_be_hill(std::size_t mark) const {
        const Mound& mound = survey_.mounds[walk_.marks[mark].mound];
        return mound.kind == SignKind::gopher_mound && !mound.fan && mound.freshness != Freshness::crushed;
    }

private:
    [[nodiscard]] LocalVector step(std::size_t from, std::size_t to) const {
        return walk_.marks[to].place.at - walk_.marks[from].place.at;
    }
    [[nodiscard]] bool goes_on(std::size_t first, std::size_t last, std::size_t next) const {
        if (!may_be_hill(next)) return false;
        // jitter of two marks stretches and shortens a stride
        const double slack = 0.7 * std::hypot(walk_.marks[last].place.error.own_m, walk_.marks[next].place.error.own_m);
        const double step_m = step(last, next).length_m();
        if (step_m < std::max(least_stride_m - slack, 0.1) || step_m > most_stride_m + slack) return false;
        if (last == first) return true;
        const auto before = Bearing::along(step(first, last)), after = Bearing::along(step(first, next));
        return before && after && std::abs(turn_degrees(*before, *after)) <= most_bend_degrees;
    }
    const Survey& survey_;
    const WalkMarks& walk_;
};

}  // namespace

std::optional<DiggerWord> digger_word(std::string_view note) {
    if (note.empty()) return std::nullopt;
    const std::string text = plain(note);
    for (const DiggerWord& word : words) {
        const std::size_t at = text.find(" " + std::string(word.word) + " ");
        if (at != std::string::npos && !denied(text, at)) return word;
    }
    return std::nullopt;
}

std::vector<OtherDigger> other_diggers(const Survey& survey, const WalkMarks& walk) {
    std::vector<OtherDigger> found;
    const HillStrings strings(survey, walk);
    std::vector<bool> told(walk.marks.size(), false);
    for (std::size_t w = 0; w + 1 < walk.walk_begin.size(); ++w)
        for (std::size_t i = walk.walk_begin[w]; i < walk.walk_begin[w + 1];) {
            const std::size_t end = strings.may_be_hill(i) ? strings.end_of(i, walk.walk_begin[w + 1]) : i + 1;
            if (end - i >= 3) {
                OtherDigger hills;
                for (std::size_t k = i; k < end; ++k) {
                    hills.marks.push_back(k);
                    told[k] = true;
                    if (k > i) hills.stride_m += distance_m(walk.marks[k].place.at, walk.marks[k - 1].place.at);
                }
                hills.stride_m /= static_cast<double>(end - i - 1);
                hills.chance = end - i == 3 ? 0.7 : 0.85;
                found.push_back(std::move(hills));
            }
            i = end;
        }
    for (std::size_t i = 0; i < walk.marks.size(); ++i) {
        const Mound& mound = survey.mounds[walk.marks[i].mound];
        if (told[i] || !is_gopher_sign(mound.kind)) continue;
        auto word = digger_word(mound.note);
        if (!word || (word->word.starts_with("round") && mound.kind == SignKind::surface_plug)) continue;
        if (word->kind == mound.kind) continue;
        const double with_fan = mound.fan ? 0.5 : 1.0;  // a fan speaks against it
        found.push_back({{i}, word->kind, word->chance * with_fan, std::string(word->word), 0.0});
    }
    return found;
}

}  // namespace plugside
