#pragma once
// How the findings that fail hang together: which is cause and which effect, read off the chains of their requirements
// and the graph of ports. Nothing here knows any one system.
#include "model/finding.hpp"
#include "proof/judge.hpp"

namespace sw {

struct Story {
  /// One sentence from the first cause to the gravest effect; empty where no failing finding brings about another. The
  /// proof puts the part to change behind it.
  std::string opening;
  /// Indices of the failing findings, cause before effect. Those of one requirement at one place stand together, the
  /// worst first; of causes equally early, harm stands before damage before nuisance.
  std::vector<std::size_t> order;
};

/// `findings` has one for each of `base`, same index. Marks those that only say again, in the same duty and system,
/// what a graver or equal one before them fails by (Finding::follows).
Story tell_story(const Graph& graph, const std::vector<Judged>& base, std::vector<Finding>& findings);

/// A group of the build with what can be chosen in it and turns what fails, the weightiest group first. All are weighed
/// by one measure: what a tenth of each does (Role::choice).
struct HeavyPart {
  std::string path;
  double weight = 0;  ///< scales, summed over the worst finding of each failing requirement
  std::vector<std::string> labels;
};
std::vector<HeavyPart> heavy_parts(const std::vector<Finding>& findings);

/// Id without its duty: findings of one requirement at one place stand together.
std::string_view without_duty(std::string_view id);

}  // namespace sw
