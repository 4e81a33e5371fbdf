#include "proof/trial.hpp"

namespace sw {
namespace {

/// The duties the car was judged in before.
std::vector<bool> looked_at(const Question& q) {
  std::vector<bool> wanted(q.set.courses.size(), false);
  for (auto& j : q.base)
    if (j.duty >= 0) wanted[static_cast<std::size_t>(j.duty)] = true;
  return wanted;
}

}  // namespace

const std::vector<Judged>& Trial::own() {
  if (all_) return *all_;
  if (!own_) own_ = judge_one_duty(q_, changed_);
  return *own_;
}

double Trial::doubt() {
  if (!doubt_) doubt_ = doubt_in(q_, changed_, *margin(), fitted_);
  return *doubt_;
}

bool Trial::harms_any(bool worse) {
  if (harms_own(worse)) return true;
  if (all_) return false;
  const auto all = judge_changed(changed_, q_.set, looked_at(q_));
  return !all || harms(q_.base, *all, target(), worse);
}

bool Trial::mends(bool worse) {
  const auto got = margin();
  return got && *got >= 0 && !harms_own(worse) && *got >= doubt() && !harms_any(worse);
}

}  // namespace sw
