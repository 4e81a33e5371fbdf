#pragma once
// What a solver found, on the terminal and as JSON.
#include <string>

#include "cli/look.hpp"
#include "proof/proof.hpp"
#include "solve/settings.hpp"

namespace sw::cli {

/// A finding before and with the settings; either may be missing.
struct BeforeAfter {
  const Finding* before = nullptr;
  const Finding* after = nullptr;
  const Finding& any() const { return after ? *after : *before; }
  /// Past its limit, and further than it was, whatever the doubt calls it.
  bool slips() const {
    return before && after && before->margin && after->margin && *after->margin < 0 &&
           after->share() < before->share() - slip_counts;
  }
  /// Worse than it was: it held, or was at least told, and no longer; or it slips.
  bool worse() const {
    return slips() || (before && after && after->state > before->state && after->state != State::tight);
  }
  /// Worse where people can come to harm: past a limit, no longer told, or no longer clear of it.
  bool harms() const {
    if (!after || after->hazard != Hazard::harm) return false;
    const bool open = after->state == State::fails || after->state == State::unproven;
    const bool lost = before && before->state == State::holds && after->state == State::tight;
    return before ? slips() || lost || (worse() && open) : open;
  }
  static constexpr double slip_counts = 0.01;  ///< of the finding's scale: less is no change to a shop
};

struct SolveTold {
  std::string title, build;  ///< of the car, and its file
  const Solver* solver = nullptr;
  Solution solution;
  std::vector<SettingText> settings;
  std::vector<BeforeAfter> concerned;  ///< of the requirement it is judged by
  std::vector<BeforeAfter> elsewhere;  ///< of all others, those that change state or go further past their limit
  bool tried = false;                  ///< there were settings, and the car was proved with them
  std::string written;                 ///< file they were written to; empty: none
  bool kept_out = false;               ///< --write was asked, and with the settings somebody would come to harm
  /// The findings of both lists that keep the settings out of a build.
  std::vector<const Finding*> harmed() const;
  int exit_code() const;
};

/// Findings of two proofs side by side: those of the requirement, and of the others what changes.
void compare(const Proof& before, const Proof& after, std::string_view judged_by, SolveTold& told);

std::string solve_page(const SolveTold& told, const WrittenUnits& units, const Look& look);
std::string solve_json(const SolveTold& told);

/// One line a key: what it finds, and what the build lacks for it.
struct KeyLine {
  const Solver* solver;
  std::vector<std::string> missing;
};
std::string keys_page(const std::vector<KeyLine>& keys, const std::string& title, const Look& look);
std::string keys_json(const std::vector<KeyLine>& keys, const std::string& build);

}  // namespace sw::cli
