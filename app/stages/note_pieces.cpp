#include "app/stages/note_pieces.h"

#include <QStringList>
#include <algorithm>
#include <cctype>

namespace plugside {

namespace {

struct Sensed {
    TextSpan span;
    PieceSense sense;
};

std::vector<Sensed> sensed_spans(const NoteReading& reading) {
    std::vector<Sensed> spans;
    for (const NotePart& part : reading.parts) spans.push_back({part.span, PieceSense::understood});
    for (const TextSpan span : reading.rest_spans) spans.push_back({span, PieceSense::left_over});
    for (const TextSpan span : reading.fillers) spans.push_back({span, PieceSense::plain});
    std::stable_sort(spans.begin(), spans.end(),
                     [](const Sensed& a, const Sensed& b) { return a.span.begin < b.span.begin; });
    return spans;
}

NotePiece piece(const std::string& note, TextSpan span, PieceSense sense) {
    return {span, sense, QString::fromUtf8(note.data() + span.begin, static_cast<qsizetype>(span.end - span.begin))};
}

bool is_blank(char c) { return c == ' ' || c == '\t' || c == '\n' || c == '\r'; }

bool is_punctuation(char c) {
    return static_cast<unsigned char>(c) < 128 && std::ispunct(static_cast<unsigned char>(c)) != 0;
}

}  // namespace

std::vector<NotePiece> pieces_of(const std::string& note, const NoteReading& reading) {
    std::vector<NotePiece> pieces;
    std::size_t at = 0;
    for (const Sensed& one : sensed_spans(reading)) {
        const std::size_t end = std::min(one.span.end, note.size());
        const std::size_t begin = std::max(one.span.begin, at);  // parts that a rule put in may share a span
        if (begin >= end) continue;
        if (begin > at) pieces.push_back(piece(note, {at, begin}, PieceSense::plain));
        pieces.push_back(piece(note, {begin, end}, one.sense));
        at = end;
    }
    if (at < note.size()) pieces.push_back(piece(note, {at, note.size()}, PieceSense::plain));
    return pieces;
}

std::vector<NotePiece> words_of(const std::string& note, const NoteReading& reading) {
    std::vector<NotePiece> words;
    for (const NotePiece& one : pieces_of(note, reading)) {
        std::size_t at = one.span.begin;
        while (at < one.span.end) {
            while (at < one.span.end && is_blank(note[at])) ++at;
            std::size_t end = at;
            bool says_something = false;
            for (; end < one.span.end && !is_blank(note[end]); ++end)
                says_something = says_something || !is_punctuation(note[end]);
            if (says_something) words.push_back(piece(note, {at, end}, one.sense));
            at = end;
        }
    }
    return words;
}

QString values_of(const NoteReading& reading) {
    QStringList values;
    for (const NotePart& part : reading.parts)
        if (const QString value = QString::fromStdString(part.value); !values.contains(value)) values << value;
    return values.join(QStringLiteral(" · "));
}

}  // namespace plugside
