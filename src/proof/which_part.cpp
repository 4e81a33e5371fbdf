#include "proof/which_part.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace sw {
namespace {

constexpr std::size_t most_singles = 3, most_pairs = 6;  ///< looked at with their doubt
/// Of all that fails: sums of two changes are no surer than this, so that inside it the cheaper pair is tried first.
constexpr double coarse = 0.25;
constexpr std::size_t most_named = 2;

/// What fails with a part in the car: position and by how many scales.
using Shortfall = std::vector<std::pair<std::size_t, double>>;

double total(const Shortfall& s) {
  return std::accumulate(s.begin(), s.end(), 0.0, [](double sum, auto& f) { return sum + f.second; });
}

class Choosing {
 public:
  Choosing(const Standing& now, const std::vector<Swap>& tried) : now_(now), tried_(tried) {
    failing_ = static_cast<std::size_t>(std::count(now.fails.begin(), now.fails.end(), true));
    for (auto& s : tried_) rough_.push_back(roughly(s.judged));
    as_it_is_ = total(roughly(now.base));
  }

  std::string words() const {
    std::string text;
    const auto [best, left] = best_single();
    // Of one thing that fails its own finding says what mends it.
    if (best && failing_ > 1)
      text = "Of single shelf parts " + sw::words(tried_[*best]) + " leaves " + count_words(left) + ".";
    if (best && left.empty()) return text;
    const auto two = pair();
    if (two.empty()) return text;
    return text + (text.empty() ? "" : " ") + two + ".";
  }

 private:
  /// Failing by more than the doubt there was; a figure that is lost counts as wholly failing.
  Shortfall roughly(const std::vector<Judged>& judged) const {
    Shortfall s;
    for (std::size_t i = 0; i < now_.base.size(); ++i) {
      if (!now_.base[i].margin()) continue;
      const auto margin = margin_in(judged, now_.base[i]);
      const double width = now_.base[i].verdict.rule ? 0.0 : now_.half_widths[i];
      if (!margin || *margin < -width)
        s.push_back({i, margin && now_.base[i].verdict.scale > 0 ? -*margin / now_.base[i].verdict.scale : 1.0});
    }
    return s;
  }

  /// Failing by more than the doubt in the changed car; empty where a figure is lost.
  std::optional<std::vector<std::size_t>> failing(const std::vector<Judged>& judged, const Build& build,
                                                  const std::vector<std::string>& groups) const {
    std::vector<std::size_t> left;
    for (std::size_t i = 0; i < now_.base.size(); ++i) {
      if (!now_.base[i].margin()) continue;
      const auto margin = margin_in(judged, now_.base[i]);
      if (!margin) return std::nullopt;
      if (*margin >= 0) continue;
      const Question q{now_.build, now_.set, now_.base, i, now_.half_widths[i], now_.study};
      if (now_.base[i].verdict.rule || -*margin > doubt_in(q, build, *margin, groups)) left.push_back(i);
    }
    return left;
  }

  bool eases(std::size_t i) const { return total(rough_[i]) < as_it_is_; }
  /// Makes something else fail, or what fails worse: a machine that starves the car spares its charge lead.
  bool breaks(const Shortfall& s) const {
    constexpr double slack = 0.01;
    return std::any_of(s.begin(), s.end(), [&](auto& f) {
      auto& was = now_.base[f.first];
      return !now_.fails[f.first] || f.second > -*was.margin() / std::max(was.verdict.scale, 1e-12) + slack;
    });
  }
  bool breaks(const std::vector<std::size_t>& left) const {
    return std::any_of(left.begin(), left.end(), [&](auto i) { return !now_.fails[i]; });
  }

  std::pair<std::optional<std::size_t>, std::vector<std::size_t>> best_single() const {
    std::vector<std::size_t> order;
    for (std::size_t i = 0; i < tried_.size(); ++i)
      if (rough_[i].size() < failing_ && !breaks(rough_[i])) order.push_back(i);
    std::stable_sort(order.begin(), order.end(), [&](auto a, auto b) {
      return std::pair(rough_[a].size(), total(rough_[a])) < std::pair(rough_[b].size(), total(rough_[b]));
    });
    std::pair<std::optional<std::size_t>, std::vector<std::size_t>> best;
    for (std::size_t k = 0; k < std::min(order.size(), most_singles); ++k) {
      auto& s = tried_[order[k]];
      const auto left = failing(s.judged, s.build, {s.group});
      if (left && !breaks(*left) && left->size() < (best.first ? best.second.size() : failing_))
        best = {order[k], *left};
    }
    return best;
  }

  /// What two parts likely leave: the change of each margin by either, added.
  Shortfall left_by_both(const std::vector<Judged>& a, const std::vector<Judged>& b) const {
    Shortfall left;
    for (std::size_t i = 0; i < now_.base.size(); ++i) {
      auto& was = now_.base[i];
      if (!was.margin()) continue;
      const auto by_a = margin_in(a, was), by_b = margin_in(b, was);
      const double likely = by_a && by_b ? *by_a + *by_b - *was.margin() : -1.0;
      if (likely < 0) left.push_back({i, was.verdict.scale > 0 ? -likely / was.verdict.scale : 1.0});
    }
    return left;
  }

  std::vector<std::pair<std::size_t, std::size_t>> likely_pairs() const {
    struct Likely {
      std::size_t a, b;
      double step, price;
    };
    std::vector<Likely> all;
    for (std::size_t a = 0; a < tried_.size(); ++a)
      for (std::size_t b = a + 1; b < tried_.size(); ++b) {
        if (!eases(a) || !eases(b) || tried_[a].group == tried_[b].group) continue;
        const auto left = left_by_both(tried_[a].judged, tried_[b].judged);
        // Of a pair each part must do something the other does not.
        if (total(left) >= std::min(total(rough_[a]), total(rough_[b]))) continue;
        all.push_back({a, b, std::floor(total(left) / (coarse * as_it_is_)),
                       tried_[a].price.value_or(1e9) + tried_[b].price.value_or(1e9)});
      }
    std::stable_sort(all.begin(), all.end(),
                     [](auto& x, auto& y) { return std::pair(x.step, x.price) < std::pair(y.step, y.price); });
    std::vector<std::pair<std::size_t, std::size_t>> first;
    for (std::size_t i = 0; i < std::min(all.size(), most_pairs); ++i) first.emplace_back(all[i].a, all[i].b);
    return first;
  }

  std::string pair() const {
    for (auto [a, b] : likely_pairs()) {
      Build build = tried_[a].build;
      auto& second = tried_[b];
      if (!fit(build, second.group, second.part, *second.figures)) continue;
      const auto judged = judge_changed(build, now_.set, now_.wanted);
      if (!judged) continue;
      const auto left = failing(*judged, build, {tried_[a].group, second.group});
      if (!left || !left->empty()) continue;
      // The dearer need is told first: the part that alone leaves less failing.
      const bool turn = rough_[b].size() < rough_[a].size();
      return sw::words(tried_[turn ? b : a]) + " and " + sw::words(tried_[turn ? a : b]) +
             " together leave nothing failing";
    }
    return {};
  }

  std::string count_words(const std::vector<std::size_t>& left) const {
    if (left.empty()) return "nothing failing";
    std::string text = std::to_string(left.size()) + " of " + std::to_string(failing_) + " failing";
    if (left.size() > most_named) return text;
    for (std::size_t i = 0; i < left.size(); ++i) text += (i == 0 ? " (" : ", ") + id_of(now_.base[left[i]], now_.set);
    return text + ")";
  }

  const Standing& now_;
  const std::vector<Swap>& tried_;
  std::size_t failing_ = 0;
  std::vector<Shortfall> rough_;  ///< of each tried
  double as_it_is_ = 0;           ///< all that fails now, scales
};

}  // namespace

std::string which_part(const Standing& now, const std::vector<Swap>& tried) { return Choosing(now, tried).words(); }

}  // namespace sw
