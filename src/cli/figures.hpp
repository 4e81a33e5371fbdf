#pragma once
// Figures of a finding in words, each in the finding's own unit and with no more digits than its doubt carries.
#include <set>
#include <string>
#include <string_view>
#include <vector>

#include "field/written_units.hpp"
#include "proof/proof.hpp"

namespace sw::cli {

/// The proof with every figure told in the units its build was written in: one for each kind in all of a report.
Proof in_written_units(Proof proof, const WrittenUnits& units);
/// Significant digits a figure of the finding is told with: three, or as many as its limit has decimals, and more only
/// where fewer would hide on which side of the limit it lies. `si` in the finding's unit.
int digits_of(double si, const Finding& f);
/// What is predicted: `23 A ± 4 A`, or `23 A (22 A to 31 A)` where its doubt is lopsided; without a doubt the value
/// alone.
std::string with_doubt(const Finding& f);
/// `112 degC ± 4 K where 105 degC is the most`; empty for a bare rule or where there is no number.
std::string measure_words(const Finding& f);
/// `105 degC at most`; empty for a bare rule.
std::string limit_words(const Finding& f);
/// A current or voltage that is nothing beside its scale: of a load that is off.
bool flows_nothing(const Finding& f);
/// The figure of a because-line: its words where it has some, else value and unit.
std::string because_value(const Because& b);

/// Letters that stand after a figure for where it came from. Those used are explained once a page.
class EvidenceMarks {
 public:
  std::string mark(Source source);  ///< ` (m)`
  /// The same of a line's; empty for a computed figure.
  std::string mark(const Because& line);
  /// `(m) measured  (t) typical`: of the marks used so far; empty where none was.
  std::string legend() const;

 private:
  std::set<Source> used_;
};

/// `fan left, hot-idle`; of a rule that looks at no duty only the place.
std::string where(const Finding& f);
/// `hot-idle, 38 min in`, `hot-idle, mean of its last 50 %`: when the figures of its because-list are taken.
std::string when(const Finding& f);

}  // namespace sw::cli
