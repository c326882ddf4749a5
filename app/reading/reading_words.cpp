#include "app/reading/reading_words.h"

#include <QCoreApplication>

#include "app/window/look_sheet.h"

namespace plugside {

namespace {

class ReadingWords {
    Q_DECLARE_TR_FUNCTIONS(ReadingWords)
};

QString sort_words(const FileLook& look) {
    switch (look.taken_for) {
        case TakenFor::walk: return ReadingWords::tr("a receiver's walk");
        case TakenFor::table: return ReadingWords::tr("a table");
        case TakenFor::photographs: return ReadingWords::tr("photographs");
        case TakenFor::layers: return look.layers.size() == 1 ? ReadingWords::tr("a layer") : ReadingWords::tr("layers");
        case TakenFor::handed_out: return ReadingWords::tr("ground, or a plan handed out");
        case TakenFor::unknown: return ReadingWords::tr("not known");
    }
    return {};
}

}  // namespace

std::vector<ColumnRole> offered_roles(bool of_a_layer) {
    std::vector<ColumnRole> roles;
    for (const ColumnRole role : {ColumnRole::none, ColumnRole::name, ColumnRole::longitude, ColumnRole::latitude,
                                  ColumnRole::easting, ColumnRole::northing, ColumnRole::fan_bearing, ColumnRole::freshness,
                                  ColumnRole::kind, ColumnRole::note, ColumnRole::date, ColumnRole::time, ColumnRole::hdop,
                                  ColumnRole::satellites, ColumnRole::accuracy, ColumnRole::walker, ColumnRole::picture}) {
        const bool of_tables = role == ColumnRole::longitude || role == ColumnRole::latitude ||
                               role == ColumnRole::easting || role == ColumnRole::northing || role == ColumnRole::walker;
        if (!of_a_layer || !of_tables) roles.push_back(role);
    }
    return roles;
}

QString role_words(ColumnRole role) {
    switch (role) {
        case ColumnRole::none: return ReadingWords::tr("not used");
        case ColumnRole::name: return ReadingWords::tr("name");
        case ColumnRole::longitude: return ReadingWords::tr("longitude");
        case ColumnRole::latitude: return ReadingWords::tr("latitude");
        case ColumnRole::easting: return ReadingWords::tr("easting, metres");
        case ColumnRole::northing: return ReadingWords::tr("northing, metres");
        case ColumnRole::fan_bearing: return ReadingWords::tr("fan bearing");
        case ColumnRole::freshness: return ReadingWords::tr("freshness");
        case ColumnRole::kind: return ReadingWords::tr("kind of digger");
        case ColumnRole::note: return ReadingWords::tr("note");
        case ColumnRole::date: return ReadingWords::tr("date");
        case ColumnRole::time: return ReadingWords::tr("time");
        case ColumnRole::hdop: return ReadingWords::tr("HDOP");
        case ColumnRole::satellites: return ReadingWords::tr("satellites");
        case ColumnRole::accuracy: return ReadingWords::tr("accuracy, metres");
        case ColumnRole::walker: return ReadingWords::tr("walker");
        case ColumnRole::picture: return ReadingWords::tr("photograph's name");
    }
    return {};
}

QString name_of(const FileLook& look) {
    if (look.taken_for == TakenFor::photographs && look.files.size() > 1)
        return ReadingWords::tr("%1 photographs").arg(look.files.size());
    return QString::fromStdString(look.file().filename().string());
}

QString taken_words(const FileLook& look) {
    QStringList parts;
    const auto add = [&](std::size_t count, const QString& one, const QString& many) {
        if (count > 0) parts << counted(static_cast<long long>(count), one, many);
    };
    add(look.marks, ReadingWords::tr("%1 mark"), ReadingWords::tr("%1 marks"));
    add(look.fans, ReadingWords::tr("%1 fan"), ReadingWords::tr("%1 fans"));
    if (may_miss_fans(look)) parts << ReadingWords::tr("no fans: does a column tell them?");
    add(look.other_marks, ReadingWords::tr("%1 other sign"), ReadingWords::tr("%1 other signs"));
    add(look.tracks, ReadingWords::tr("%1 track"), ReadingWords::tr("%1 tracks"));
    add(look.boundary_parts, ReadingWords::tr("a boundary"), ReadingWords::tr("a boundary of %1 parts"));
    add(look.barriers, ReadingWords::tr("%1 barrier"), ReadingWords::tr("%1 barriers"));
    add(look.keep_clear, ReadingWords::tr("%1 area kept clear"), ReadingWords::tr("%1 areas kept clear"));
    if (parts.isEmpty()) return sort_words(look);
    return ReadingWords::tr("%1: %2").arg(sort_words(look), parts.join(QStringLiteral(", ")));
}

QString trouble_words(const FileLook& look) {
    if (!look.refusal) return {};
    if (cannot_be_read(look)) return ReadingWords::tr("cannot be read");
    if (look.refusal->code == Refusal::Code::needs_reference_system) return ReadingWords::tr("which reference system?");
    if (look.refusal->code == Refusal::Code::nothing_to_plan) return ReadingWords::tr("holds no place");
    return ReadingWords::tr("cannot be read like this");
}

QString refusal_words(const Refusal& refusal) {
    Refusal shown = refusal;
    shown.file = std::filesystem::path(refusal.file).filename().string();
    return QString::fromStdString(sentence(shown));
}

QString north_words(North north) {
    switch (north) {
        case North::not_told: return ReadingWords::tr("not known (true north is taken)");
        case North::true_north: return ReadingWords::tr("true north");
        case North::magnetic_north: return ReadingWords::tr("magnetic north");
    }
    return {};
}

}  // namespace plugside
