#include "physics/shim_stack.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

namespace sw::physics {
namespace {

constexpr double rounding = 1e-9;  ///< m and shares: what a sum of thicknesses is let off

/// One way to fill a stack: how many of each kind.
struct Stack {
  std::vector<int> use;
  double total_m = 0;
  int shims = 0;
};

/// Every stack no thicker than the room, with at most `per_stack` shims, fewest first.
std::vector<Stack> stacks(std::span<const ShimKind> kinds, double room_m, int per_stack) {
  std::vector<Stack> all;
  Stack now{std::vector<int>(kinds.size(), 0)};
  std::function<void(std::size_t)> add = [&](std::size_t from) {
    all.push_back(now);
    if (now.shims == per_stack) return;
    for (std::size_t k = from; k < kinds.size(); ++k) {
      if (now.use[k] >= kinds[k].count || now.total_m + kinds[k].thickness_m > room_m + rounding) continue;
      ++now.use[k], ++now.shims, now.total_m += kinds[k].thickness_m;
      add(k);
      --now.use[k], --now.shims, now.total_m -= kinds[k].thickness_m;
    }
  };
  add(0);
  std::stable_sort(all.begin(), all.end(),
                   [](auto& a, auto& b) { return a.shims != b.shims ? a.shims < b.shims : a.total_m < b.total_m; });
  return all;
}

class Search {
 public:
  Search(std::span<const ShimPlace> places, std::span<const ShimPair> pairs, std::span<const ShimKind> kinds,
         int per_stack)
      : places_(places), pairs_(pairs), left_(kinds.size()), chosen_(places.size(), nullptr) {
    for (std::size_t k = 0; k < kinds.size(); ++k) left_[k] = kinds[k].count;
    for (auto& p : places) options_.push_back(stacks(kinds, p.room_m, per_stack));
  }
  const std::vector<const Stack*>* run() {
    next(0, 0, 0);
    return found_ ? &best_ : nullptr;
  }
  double worst() const { return best_worst_; }

 private:
  double position(std::size_t i) const { return places_[i].depth_m + chosen_[i]->total_m; }
  /// Greatest share of an allowance that pairs with place `i`, of those chosen already, use.
  double share_at(std::size_t i) const {
    double worst = 0;
    for (auto& p : pairs_) {
      if (std::max(p.a, p.b) != i) continue;
      const double offset = std::abs(position(p.a) - position(p.b));
      if (p.allowance_m > 0)
        worst = std::max(worst, offset / p.allowance_m);
      else if (offset > rounding)
        worst = INFINITY;
    }
    return worst;
  }
  bool better(int shims, double worst, double total) const {
    if (!found_) return true;
    if (shims != best_shims_) return shims < best_shims_;
    return worst < best_worst_ - rounding || (worst < best_worst_ + rounding && total < best_total_ - rounding);
  }
  bool take(const Stack& s, int sign) {
    bool enough = true;
    for (std::size_t k = 0; k < left_.size(); ++k) enough &= (left_[k] -= sign * s.use[k]) >= 0;
    return enough;
  }
  void next(std::size_t i, int shims, double worst) {
    if (found_ && shims > best_shims_) return;
    if (i == places_.size()) {
      double total = 0;
      for (auto* s : chosen_) total += s->total_m;
      if (!better(shims, worst, total)) return;
      best_ = chosen_, best_shims_ = shims, best_worst_ = worst, best_total_ = total, found_ = true;
      return;
    }
    for (auto& s : options_[i]) {
      if (found_ && shims + s.shims > best_shims_) break;
      chosen_[i] = &s;
      const double here = share_at(i);
      if (here > 1 + rounding) continue;
      if (take(s, 1)) next(i + 1, shims + s.shims, std::max(worst, here));
      take(s, -1);
    }
    chosen_[i] = nullptr;
  }

  std::span<const ShimPlace> places_;
  std::span<const ShimPair> pairs_;
  std::vector<std::vector<Stack>> options_;
  std::vector<int> left_;
  std::vector<const Stack*> chosen_, best_;
  bool found_ = false;
  int best_shims_ = 0;
  double best_worst_ = 0, best_total_ = 0;
};

std::vector<ShimKind> thickest_first(std::span<const ShimKind> on_hand) {
  std::vector<ShimKind> kinds(on_hand.begin(), on_hand.end());
  std::sort(kinds.begin(), kinds.end(), [](auto& a, auto& b) { return a.thickness_m > b.thickness_m; });
  return kinds;
}

std::vector<double> thicknesses(const Stack& s, const std::vector<ShimKind>& kinds) {
  std::vector<double> all;
  for (std::size_t k = 0; k < kinds.size(); ++k)
    all.insert(all.end(), static_cast<std::size_t>(s.use[k]), kinds[k].thickness_m);
  return all;
}

}  // namespace

std::optional<ShimFill> fill_with_shims(double wanted_m, double least_m, double most_m,
                                        std::span<const ShimKind> on_hand, int per_stack) {
  const auto kinds = thickest_first(on_hand);
  const auto all = stacks(kinds, std::max(0.0, most_m), per_stack);
  const Stack* best = nullptr;
  const auto off = [&](const Stack& s) { return std::abs(s.total_m - wanted_m); };
  for (auto& s : all)
    if (s.total_m >= least_m - rounding && s.total_m <= most_m + rounding && (!best || off(s) < off(*best) - rounding))
      best = &s;
  if (!best) return std::nullopt;
  return ShimFill{thicknesses(*best, kinds), best->total_m};
}

std::optional<ShimChoice> choose_shims(std::span<const ShimPlace> places, std::span<const ShimPair> pairs,
                                       std::span<const ShimKind> on_hand, int per_stack) {
  const auto kinds = thickest_first(on_hand);
  Search search(places, pairs, kinds, per_stack);
  const auto* best = search.run();
  if (!best) return std::nullopt;
  ShimChoice c;
  c.worst_share = search.worst();
  for (auto* s : *best) {
    c.stack.push_back(thicknesses(*s, kinds));
    c.total_m.push_back(s->total_m);
    c.shims += s->shims;
  }
  return c;
}

}  // namespace sw::physics
