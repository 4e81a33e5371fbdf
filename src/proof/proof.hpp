#pragma once
// The proof: every requirement at every place in every duty it is looked at in, with its doubt, its because-list and
// what would change it.
#include <functional>
#include <string>
#include <vector>

#include "duty/duties.hpp"
#include "model/finding.hpp"
#include "proof/story.hpp"

namespace sw {

/// An unknown that decides a verdict: measure it next.
struct NextMeasure {
  std::string path;
  std::optional<Source> evidence;   ///< empty: the figure is missing
  std::string finding;              ///< id of the finding it weighs on most, of those that could do most harm
  double share = 0;                 ///< of that finding's doubt, 0 to 1; 1 where the figure is missing altogether
  int decides = 1;                  ///< findings that wait for it, or whose doubt it makes most of
  Hazard worst = Hazard::nuisance;  ///< of those
};

struct Proof {
  std::vector<Finding> findings;      ///< in system, requirement, duty, place order
  std::vector<std::string> duties;    ///< keys of the duties looked at
  std::vector<NextMeasure> next;      ///< what could do harm first, then by how many findings it decides
  Story story;                        ///< how what fails hangs together
  std::vector<std::string> left_out;  ///< keys of systems the build says nothing of: they were not looked at
  std::size_t count(State s) const;
  /// 1 something fails, 3 nothing fails but something is unproven or nothing was looked at, else 0.
  int exit_code() const;
};

struct ProofOptions {
  std::string duty;      ///< one duty alone (static rules are always looked at); empty: all
  bool doubt = true;     ///< bands, weights and remedies by re-running; off for sampling and sweeps
  unsigned threads = 0;  ///< 0: as many as the machine has
  std::function<void(double share, const std::string& what)>
      progress;          ///< called now and then, never from two threads at once
  bool remedies = true;  ///< with doubt: part alone, and what would make it hold, for whatever fails
};

/// `set` comes from duties_of(build, …) and is free of faults.
Proof prove(const Build& build, const DutySet& set, const ProofOptions& options = {});

}  // namespace sw
