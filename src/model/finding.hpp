#pragma once
// A finding: one requirement evaluated at one place in one duty.
#include <algorithm>
#include <optional>
#include <string>
#include <vector>

#include "field/evidence.hpp"
#include "model/caution.hpp"
#include "quantity/kind.hpp"

namespace sw {

enum class State : std::uint8_t { holds, tight, fails, unproven };
inline constexpr std::string_view state_names[] = {"holds", "tight", "fails", "unproven"};

enum class RequirementKind : std::uint8_t { most, least, band, rule };
inline constexpr std::string_view requirement_kind_names[] = {"most", "least", "band", "rule"};

/// What a line of a because-list is.
enum class Role : std::uint8_t {
  figure,  ///< computed on the way from cause to effect
  alone,   ///< what it comes to with the requirement's coupling cut
  given,   ///< an input told for itself
  doubt,   ///< an input that is uncertain; its weight is for its own half-width
  choice,  ///< an input the shop can choose; its weight is for a tenth of it
};
inline constexpr std::string_view role_names[] = {"figure", "alone", "given", "doubt", "choice"};

/// One line of a because-list: a figure on the way from cause to effect, or an input that weighs on the margin.
struct Because {
  std::string what;
  double value = 0;  ///< SI
  const Kind* kind = &kind::number;
  std::string_view unit;
  Role role = Role::figure;
  std::optional<Evidence> evidence;  ///< of an input
  std::string path;                  ///< of an input: its path; of a computed figure: its port
  double weight = 0;                 ///< of a doubt or choice: change of the margin in scales
  std::string text;                  ///< for a rule: what stands there, in words, instead of a number

  bool is_input() const { return role >= Role::given; }
};

struct Finding {
  std::string id;  ///< `cooling.coolant-temperature@hot-idle`
  std::string system, duty, place, title;
  RequirementKind kind = RequirementKind::most;
  Hazard hazard = Hazard::nuisance;
  Caution caution = Caution::none;
  State state = State::unproven;

  const Kind* quantity = &kind::number;
  std::string_view unit;
  std::optional<double> predicted;  ///< SI; absent where unproven or a bare rule
  double far_width = 0;             ///< SI, half-width on the side away from the limit
  double half_width = 0;            ///< SI, half-width of the margin's band on its limit's side: what decides
  std::optional<double> low_limit, high_limit;  ///< `least` has low, `most` high, `band` both
  std::optional<double> margin;                 ///< SI, positive on the good side
  double scale = 1;                             ///< SI span the margin is measured against
  double time = 0;                              ///< s into the duty at which it is decided
  double mean_share = 0;                        ///< not 0: by the time mean over this last share of the duty
  std::string confidence;  ///< the weakest evidence that weighs on it: `typical`, `stated` …; `exact` where none does
  std::string source, formula;
  std::vector<Because> because;
  std::vector<std::string> missing;  ///< paths
  std::string reason;                ///< why unproven, or what a rule found
  std::string fix_hint;
  std::string follows;  ///< id of a failing finding that says it already: this one only comes of it

  double share() const { return margin ? *margin / scale : 0.0; }
};

/// The doubt band of what is predicted, SI; a band that has two limits is told by its wider half-width. Empty where
/// nothing is predicted.
struct Span {
  double low, high;
};
inline std::optional<Span> span_of(const Finding& f) {
  if (!f.predicted) return std::nullopt;
  // Toward a greatest limit from below is up, from beyond it down; of a least one the other way round.
  const bool up = (f.kind == RequirementKind::most) == (f.margin.value_or(0) >= 0);
  const double wide = std::max(f.half_width, f.far_width);
  const double above = f.kind == RequirementKind::band ? wide : up ? f.half_width : f.far_width;
  const double below = f.kind == RequirementKind::band ? wide : up ? f.far_width : f.half_width;
  return Span{*f.predicted - below, *f.predicted + above};
}

}  // namespace sw
