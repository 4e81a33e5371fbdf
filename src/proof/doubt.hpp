#pragma once
// Doubt by re-running: each uncertain input in turn is moved by its half-width, up and down, and the whole car proved
// again. Of the two changes of a margin the larger counts, because a car is full of kinks (a belt lets go one way
// only); inputs taken as independent add in squares (first-order propagation; JCGM 100:2008, 5.1.2), those of a
// verdict judged by the worst case as they are.
#include <cmath>
#include <functional>
#include <string>
#include <vector>

#include "proof/judge.hpp"
#include "proof/touched.hpp"

namespace sw {

/// One input moved, and what each judgement's margin made of it.
struct Move {
  std::string path;
  Evidence evidence;
  double up = 0, down = 0;  ///< SI change of the input (of a curve: share of its values); 0 where its range ends
  bool lever = false;       ///< a part or setting the shop can choose
  bool grows = false;       ///< and only upwards
  /// Change of the margin of judgement i, same index as the base; NaN where the moved car gave none; empty where the
  /// input was not moved that way.
  std::vector<double> change_up, change_down;

  bool has_doubt() const { return evidence.half_width > 0; }
  /// The change of the larger size; NaN where either was lost.
  double change(std::size_t i) const;
  /// How far it takes judgement i's margin down (`toward` -1) or up (+1): 0 or more; NaN where either was lost.
  double reach(std::size_t i, int toward) const;
  /// Change of the margin for one unit of the input, from the side that gave a figure; 0 where neither did.
  double slope(std::size_t i) const;
};

struct Study {
  std::vector<Move> moves;  ///< in field order
};

struct StudyOptions {
  std::vector<bool> wanted;
  const Touched* touched = nullptr;  ///< where it is known what an input can change anything of
  const BaseRuns* runs = nullptr;    ///< the base's, so that an input that changes nothing of one spares it
  unsigned threads = 1;
  std::function<void(double)> progress;
};

/// Doubts of one judgement put together: in squares, or as they are where it is judged by the worst case.
class Together {
 public:
  explicit Together(const Verdict& v) : worst_case_(v.worst_case) {}
  void add(double part) { sum_ += worst_case_ ? part : part * part; }
  double all() const { return worst_case_ ? sum_ : std::sqrt(sum_); }
  /// What one part makes of `whole`.
  double share(double part, double whole) const { return worst_case_ ? part / whole : std::pow(part / whole, 2); }

 private:
  bool worst_case_;
  double sum_ = 0;
};

/// Moves of every input with doubt, and of every lever without (by a tenth of its value).
Study study(const Build& build, const DutySet& set, const std::vector<Judged>& base, const StudyOptions& options);

/// The build with the leaf at `path` changed by `by` (a curve by the factor 1 + by); false where it cannot be.
bool shift(Build& build, const std::string& path, double by);
/// A tenth of the input at `path`, SI: of its value; of a temperature, which has no share, or of nothing, of the
/// field's range; of a curve a factor's 0.1. 0 where there is nothing.
double a_tenth(const Build& build, const std::string& path);
/// The build's value at `path`; empty for a curve or nothing.
std::optional<double> value_at(const Build& build, const std::string& path);

}  // namespace sw
