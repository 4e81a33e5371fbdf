#pragma once
// A proof on the terminal: what fails first, each with its ruler, then tight, unproven, and how much holds.
#include <set>
#include <string>

#include "cli/page.hpp"
#include "proof/proof.hpp"

namespace sw::cli {

struct ReportOptions {
  bool all = false;                       ///< findings that hold are listed, not only counted
  std::string title;                      ///< of the car, as the build says it; may be empty
  std::string build;                      ///< file name
  std::vector<std::string> systems = {};  ///< whose findings are listed; empty: all
};
std::string report(const Proof& proof, const Look& look, const ReportOptions& options);

/// One finding opened: chain, inputs by weight, formula, source, limit, verdict.
std::string because_page(const Finding& finding, const Look& look);

/// The finding `id` names: the whole id, or a start with which only one begins. Else null, with what to do in `hint`.
const Finding* find_finding(const Proof& proof, std::string_view id, std::string& hint);

/// CARE and each caution whole; nothing where there is none.
void tell_cautions(Page& page, const std::set<Caution>& cautions);

/// `3 fail · 2 tight · 1 unproven · 41 hold`; what holds because nothing flows is counted by itself.
std::string count_line(const Proof& proof);

}  // namespace sw::cli
