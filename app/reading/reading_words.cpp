#include "app/reading/reading_words.h"

#include <QCoreApplication>

#include "app/window/look_sheet.h"

namespace plugside {

namespace {

QString tr(const char* text) { return QCoreApplication::translate("plugside::ReadingWords", text); }

QString sort_words(const FileLook& look) {
    switch (look.taken_for) {
        case TakenFor::walk: return tr("a receiver's walk");
        case TakenFor::table: return tr("a table");
        case TakenFor::photographs: return tr("photographs");
        case TakenFor::layers: return look.layers.size() == 1 ? tr("a layer") : tr("layers");
        case TakenFor::handed_out: return tr("ground, or a plan handed out");
        case TakenFor::unknown: return tr("not known");
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
        case ColumnRole::none: return tr("not used");
        case ColumnRole::name: return tr("name");
        case ColumnRole::longitude: return tr("longitude");
        case ColumnRole::latitude: return tr("latitude");
        case ColumnRole::easting: return tr("easting, metres");
        case ColumnRole::northing: return tr("northing, metres");
        case ColumnRole::fan_bearing: return tr("fan bearing");
        case ColumnRole::freshness: return tr("freshness");
        case ColumnRole::kind: return tr("kind of digger");
        case ColumnRole::note: return tr("note");
        case ColumnRole::date: return tr("date");
        case ColumnRole::time: return tr("time");
        case ColumnRole::hdop: return tr("HDOP");
        case ColumnRole::satellites: return tr("satellites");
        case ColumnRole::accuracy: return tr("accuracy, metres");
        case ColumnRole::walker: return tr("walker");
        case ColumnRole::picture: return tr("photograph's name");
    }
    return {};
}

QString name_of(const FileLook& look) {
    if (look.taken_for == TakenFor::photographs && look.files.size() > 1) return tr("%1 photographs").arg(look.files.size());
    return QString::fromStdString(look.file().filename().string());
}

QString taken_words(const FileLook& look) {
    QStringList parts;
    const auto add = [&](std::size_t count, const QString& one, const QString& many) {
        if (count > 0) parts << counted(static_cast<long long>(count), one, many);
    };
    add(look.marks, tr("%1 mark"), tr("%1 marks"));
    add(look.fans, tr("%1 fan"), tr("%1 fans"));
    if (may_miss_fans(look)) parts << tr("no fans: does a column tell them?");
    add(look.other_marks, tr("%1 other sign"), tr("%1 other signs"));
    add(look.tracks, tr("%1 track"), tr("%1 tracks"));
    add(look.boundary_parts, tr("a boundary"), tr("a boundary of %1 parts"));
    add(look.barriers, tr("%1 barrier"), tr("%1 barriers"));
    add(look.keep_clear, tr("%1 area kept clear"), tr("%1 areas kept clear"));
    if (parts.isEmpty()) return sort_words(look);
    return tr("%1: %2").arg(sort_words(look), parts.join(QStringLiteral(", ")));
}

QString trouble_words(const FileLook& look) {
    if (!look.refusal) return {};
    if (cannot_be_read(look)) return tr("cannot be read");
    if (look.refusal->code == Refusal::Code::needs_reference_system) return tr("which reference system?");
    if (look.refusal->code == Refusal::Code::nothing_to_plan) return tr("holds no place");
    return tr("cannot be read like this");
}

QString refusal_words(const Refusal& refusal) {
    Refusal shown = refusal;
    shown.file = std::filesystem::path(refusal.file).filename().string();
    return QString::fromStdString(sentence(shown));
}

QString north_words(North north) {
    switch (north) {
        case North::not_told: return tr("not known (true north is taken)");
        case North::true_north: return tr("true north");
        case North::magnetic_north: return tr("magnetic north");
    }
    return {};
}

}  // namespace plugside
