#pragma once
// A change of the build put to a question. A part of the shelf and a lever are held to the same: the finding holds by
// more than its doubt in the changed car, and nothing else breaks in any duty looked at. Each answer is found when it
// is first asked for, the cheap ones first, so that only what mends the finding is proved in every duty.
#include "proof/changed.hpp"

namespace sw {

class Trial {
 public:
  /// `fitted`: groups a part was put into; its own sheet is then in doubt. `judged`: the changed car in all duties
  /// looked at, where that is known already.
  Trial(const Question& q, const Build& changed, std::vector<std::string> fitted = {},
        const std::vector<Judged>* judged = nullptr)
      : q_(q), changed_(changed), fitted_(std::move(fitted)), all_(judged) {}

  /// The changed car in the question's own duty, or in more; empty where it cannot be.
  const std::vector<Judged>& own();
  std::optional<double> margin() { return margin_in(own(), target()); }
  /// Half-width toward the limit; only where there is a margin.
  double doubt();
  /// `worse` as in `harms`: in the question's own duty, and in all of them.
  bool harms_own(bool worse) { return harms(q_.base, own(), target(), worse); }
  bool harms_any(bool worse);
  /// All of it: holds by more than its doubt and breaks nothing.
  bool mends(bool worse = true);

 private:
  const Judged& target() const { return q_.base[q_.index]; }

  const Question& q_;
  const Build& changed_;
  std::vector<std::string> fitted_;
  const std::vector<Judged>* all_;
  std::optional<std::vector<Judged>> own_;
  std::optional<double> doubt_;
};

}  // namespace sw
