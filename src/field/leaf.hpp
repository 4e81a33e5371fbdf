#pragma once
// Reading the value of one leaf, by its type. Every fault is reported; what has a fault stays empty.
#include <optional>

#include "field/curve.hpp"
#include "field/given.hpp"

namespace sw {

/// A figure (quantity, number, integer, yes_no, choice) in SI, in range.
std::optional<double> read_figure(const Node& value, const Site& site);
std::optional<Curve> read_curve(const Node& value, const Site& site);
std::optional<std::string> read_text(const Node& value, const Site& site);
std::optional<std::vector<std::string>> read_names(const Node& value, const Site& site);

/// Reads the leaf into its owner and enters its evidence.
void read_leaf(const Node& node, const Site& site, void* owner, EvidenceMap& evidence, Source usual);

}  // namespace sw
