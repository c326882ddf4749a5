#include "app/canvas/palette.h"

namespace plugside {

namespace {

struct Named {
    const char* name;
    QColor colour;
};

void add(std::vector<ColourPair>& pairs, const Named& ink, const std::vector<Named>& grounds, PairUse use) {
    for (const Named& ground : grounds) pairs.push_back({ink.name, ink.colour, ground.name, ground.colour, use});
}

void add_words(std::vector<ColourPair>& pairs, const MapStyle& style) {
    const Named paper{"paper", style.paper}, rail{"rail", style.rail}, slip{"slip", style.slip}, field{"field", style.field};
    const Named drawing{"drawing", style.drawing()}, picked{"picked", style.picked()}, facts{"facts", style.facts()};
    const Named read{"read", style.read()};
    const Named ink{"ink", style.ink}, quiet{"quiet_ink", style.quiet_ink}, act{"act", style.act}, run{"run", style.run};
    add(pairs, ink, {paper, rail, slip, field, drawing, picked, facts, read}, PairUse::text);
    add(pairs, quiet, {paper, rail, slip, field, drawing, picked, facts}, PairUse::text);
    add(pairs, act, {slip, rail, drawing}, PairUse::text);
    add(pairs, run, {slip, drawing, picked}, PairUse::text);
    add(pairs, slip, {ink}, PairUse::text);
    add(pairs, {"on_act", style.on_act}, {act}, PairUse::text);
    add(pairs, {"stop_ink", style.stop_ink}, {{"stop_ground", style.stop_ground}, slip, paper, picked}, PairUse::text);
    add(pairs, {"caution_ink", style.caution_ink}, {{"caution_ground", style.caution_ground}}, PairUse::text);
    add(pairs, {"barrier", style.barrier}, {field}, PairUse::text);
    add(pairs, {"keep_clear", style.keep_clear}, {field}, PairUse::text);
    add(pairs, {"faint", style.faint()}, {slip, paper, rail, drawing}, PairUse::inactive);
    add(pairs, quiet, {{"hairline", style.hairline}}, PairUse::inactive);
}

void add_marks(std::vector<ColourPair>& pairs, const MapStyle& style) {
    const Named paper{"paper", style.paper}, rail{"rail", style.rail}, slip{"slip", style.slip}, field{"field", style.field};
    const Named kept_clear{"kept_clear", style.kept_clear()}, drawing{"drawing", style.drawing()};
    static constexpr const char* tint_names[] = {"tint 1", "tint 2", "tint 3", "tint 4"};
    static constexpr const char* band_names[] = {"band_1", "band_2", "band_3", "band_4"};
    static constexpr const char* edge_names[] = {"tint_edge_1", "tint_edge_2", "tint_edge_3", "tint_edge_4"};
    std::vector<Named> grounds{field, kept_clear};
    std::vector<Named> bands{{"band", mixed(style.field, style.run, style.band_share())}};
    for (std::size_t tint = 0; tint < style.tints.size(); ++tint) {
        grounds.push_back({tint_names[tint], style.tinted(tint)});
        bands.push_back({band_names[tint], mixed(style.tinted(tint), style.run, style.band_share())});
        add(pairs, {edge_names[tint], style.tint_edge(tint)}, {field}, PairUse::mark);
        add(pairs, {tint_names[tint], style.tinted(tint)}, {field},
            PairUse::ornament);  // the letter and the dots tell it too
    }
    for (const Named& mark : {Named{"soil", style.soil}, Named{"unread_soil", style.unread_soil}, Named{"act", style.act},
                              Named{"ink", style.ink}, Named{"quiet_ink", style.quiet_ink}}) {
        add(pairs, mark, grounds, PairUse::mark);
    }
    // older soil is told from the ground by its rim
    add(pairs, {"soil", style.soil}, {{"dry_soil", style.dry_soil}, slip, drawing}, PairUse::mark);
    add(pairs, {"dry_soil", style.dry_soil}, {field, rail}, PairUse::ornament);
    add(pairs, {"run", style.run}, grounds, PairUse::mark);
    add(pairs, {"run", style.run}, bands, PairUse::mark);
    add(pairs, {"barrier", style.barrier}, {field}, PairUse::mark);
    add(pairs, {"keep_clear", style.keep_clear}, {field, kept_clear}, PairUse::mark);
    add(pairs, {"unwalked", mixed(style.field, style.unwalked, style.theme == Theme::light ? 0.8 : 0.95)}, {field},
        PairUse::ornament);  // the slip tells in numbers what is hatched
    add(pairs, {"edge", style.edge()}, {slip, paper, rail}, PairUse::mark);
    add(pairs, {"act", style.act}, {slip, paper, rail, drawing}, PairUse::mark);  // focus
    add(pairs, {"ink", style.ink}, {slip, paper, rail, drawing}, PairUse::mark);
    add(pairs, {"stop_ink", style.stop_ink}, {{"stop_ground", style.stop_ground}, {"field", style.field}, {"paper", style.paper}},
        PairUse::mark);
    add(pairs, {"caution_ink", style.caution_ink}, {{"caution_ground", style.caution_ground}}, PairUse::mark);
    add(pairs, {"hairline", style.hairline}, {paper, rail, slip}, PairUse::ornament);
}

}  // namespace

std::vector<ColourPair> colour_pairs(const MapStyle& style) {
    std::vector<ColourPair> pairs;
    add_words(pairs, style);
    add_marks(pairs, style);
    return pairs;
}

double least_contrast(PairUse use) {
    switch (use) {
        case PairUse::text: return 4.5;
        case PairUse::large_text:
        case PairUse::mark: return 3.0;
        case PairUse::inactive:
        case PairUse::ornament: break;
    }
    return 1.0;
}

}  // namespace plugside
