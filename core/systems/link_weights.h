// What speaks for a link counts for, learnt on simulated fields.
//
// Two forms: a net on links (link_net.h; resources/network_weights.txt), which is what plans are made with; and the first form of the
//          inference (resources/link_weights.tsv), kept as the reference to beat, which weighs features in stages:
// Stages:  the first weighs link_features alone; each later one weighs the features and the context (link_context) of the scores
//          of the stage before. The last stage's scores are the log weights of the forest, against starting a new system at a mark.
// shift:   common to all links of a field: foretold from the field's summary, with the standard deviation that this leaves open,
//          which carries the uncertainty of the survey's scales into the number of systems.
// Errors:  the resource is part of the program; a line that does not parse, or a feature without a weight, asserts.
#pragma once

#include <memory>
#include <string>
#include <string_view>
#include <vector>

#include "core/systems/field_summary.h"
#include "core/systems/link_context.h"
#include "core/systems/link_features.h"
#include "core/systems/link_net.h"

namespace plugside {

struct LinkStage {
    LinkFeatures of_feature{};
    LinkContext of_context{};  // all 0 in the first stage
};

struct LinkWeights {
    std::shared_ptr<const LinkNetWeights> net;  // nothing: the stages
    std::vector<LinkStage> stages;
    FieldSummary shift{};
    double shift_sd = 0.0;
    double presence_offset = 0.0;
    double presence_slope = 1.0;
};

// The shift foretold for a field, held within +-1.2, twice its spread over simulated fields: a field unlike those is not shifted by
// more than any of them.
[[nodiscard]] double foretold_shift(const FieldSummary& summary, const LinkWeights& weights);

// The chance that a run joins the ends of a link of the consensus tree which is in `link_probability` of the drawn forests:
// logistic in its log odds. A forest leaves out a link that others bypass although the run is there; how often is learnt.
// `link_probability` is held within 0.002 .. 0.998, since draws are finite.
[[nodiscard]] double run_presence(double link_probability, const LinkWeights& weights);

// The resource's format: # comments, "name<tab>value" lines, "stage" lines that open a stage; after a line "net" the tables of a
// net. to_text leaves the net out.
[[nodiscard]] LinkWeights parse_link_weights(std::string_view text);
[[nodiscard]] std::string to_text(const LinkWeights& weights);

// The weights built into the program, with the net; and those of the first form.
[[nodiscard]] const LinkWeights& learnt_link_weights();
[[nodiscard]] const LinkWeights& first_form_weights();

// Log weights of the links after all stages of the first form. O(stages x links x neighbours).
[[nodiscard]] std::vector<double> log_weights(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                              const std::vector<LinkFeatures>& features, const LinkWeights& weights);

// Link and root log weights, by the net where there is one, else by the stages.
[[nodiscard]] LinkScores scores_of(const std::vector<Mark>& marks, const std::vector<Link>& links,
                                   const std::vector<LinkFeatures>& features, const LinkWeights& weights,
                                   const Progress& progress = {});

// One stage: scores from features and context (empty in the first stage).
[[nodiscard]] std::vector<double> stage_scores(const std::vector<LinkFeatures>& features,
                                               const std::vector<LinkContext>& context, const LinkStage& stage);

}  // namespace plugside
