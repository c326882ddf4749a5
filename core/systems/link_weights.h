// What each link feature counts for, learnt on simulated fields (resources/link_weights.tsv says how and from what).
//
// A link's log weight, against starting a new system at a mark, is the sum of its features times these. `count_sd` is the
// standard deviation of a shift common to all links of a field that the features leave open: it carries the uncertainty of
// the survey's scales into the number of systems.
// Errors: the resource is part of the program; a line that does not parse, or a feature without a weight, asserts.
#pragma once

#include <vector>

#include "core/systems/link_features.h"

namespace plugside {

struct LinkWeights {
    LinkFeatures weight{};
    double count_sd = 0.0;
};

// Reads the resource's format: "name<tab>value" lines, # comments.
[[nodiscard]] LinkWeights parse_link_weights(std::string_view text);

// The weights built into the program.
[[nodiscard]] const LinkWeights& learnt_link_weights();

[[nodiscard]] std::vector<double> log_weights(const std::vector<LinkFeatures>& features, const LinkWeights& weights);

}  // namespace plugside
