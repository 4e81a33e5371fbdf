#pragma once
// Requirements put to the traces: one judgement for each requirement, duty and place, in stable order.
#include <set>

#include "duty/duties.hpp"
#include "model/requirement.hpp"

namespace sw {

struct Judged {
  const Requirement* requirement;
  std::size_t system;
  int duty = -1;  ///< index into the duty set; -1 for a static rule
  Verdict verdict;

  bool same_as(const Judged& o) const {
    return requirement == o.requirement && duty == o.duty && verdict.place == o.verdict.place;
  }
  /// Distance to the nearer limit, positive on the good side; of a rule +1 or -1; empty where unproven.
  std::optional<double> margin() const;
};

/// Which duties a requirement is looked at in.
bool looks_at(const Requirement& r, const std::string& key, const Duty& duty);

/// The run static rules read: the first of those that came through, where any did; the number of runs where none ran.
std::size_t static_rules_read(const std::vector<Trace>& traces);

/// `wanted`: duties to look at (all where empty); `only`: requirements (all where null).
std::vector<Judged> judge(const Car& car, const DutySet& set, const std::vector<Trace>& traces,
                          const std::vector<bool>& wanted = {}, const std::set<const Requirement*>* only = nullptr);

}  // namespace sw
