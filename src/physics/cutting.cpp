#include "physics/cutting.hpp"

#include <algorithm>
#include <limits>
#include <numeric>

namespace sw::physics {
namespace {

constexpr double rounding = 1e-9;

/// Every piece carries its cut with it, and every stick has room for one more than it holds.
class Search {
 public:
  Search(std::span<const double> pieces, std::span<const StickKind> sticks, double kerf, std::size_t most)
      : kerf_(kerf), most_(most), kinds_(sticks.begin(), sticks.end()), order_(pieces.size()) {
    std::iota(order_.begin(), order_.end(), std::size_t{0});
    std::stable_sort(order_.begin(), order_.end(), [&](auto a, auto b) { return pieces[a] > pieces[b]; });
    for (auto i : order_) sizes_.push_back(pieces[i] + kerf);
    rest_.assign(sizes_.size() + 1, 0);
    for (std::size_t i = sizes_.size(); i-- > 0;) rest_[i] = rest_[i + 1] + sizes_[i];
    // Shortest first: of sticks that will do the shorter leaves less.
    by_length_.resize(kinds_.size());
    std::iota(by_length_.begin(), by_length_.end(), std::size_t{0});
    std::stable_sort(by_length_.begin(), by_length_.end(),
                     [&](auto a, auto b) { return kinds_[a].length < kinds_[b].length; });
    stick_.assign(sizes_.size(), 0);
  }

  void run() { place(0); }
  bool gave_up() const { return steps_ > most_; }
  std::optional<CutPlan> best() const {
    if (best_stick_.empty() && !sizes_.empty()) return std::nullopt;
    CutPlan plan{.opened = best_opened_, .stick_of = std::vector<std::size_t>(sizes_.size()), .proved = !gave_up()};
    for (std::size_t i = 0; i < order_.size(); ++i) plan.stick_of[order_[i]] = best_stick_[i];
    for (auto k : plan.opened) plan.opened_length += kinds_[k].length;
    return plan;
  }

 private:
  struct Open {
    std::size_t kind;
    double room;
  };

  /// What must be opened still, at the least: what finds no room in the open sticks.
  double bound(std::size_t next) const {
    double room = 0;
    for (auto& o : open_) room += o.room;
    const double lacking = rest_[next] - room;
    if (lacking <= rounding) return length_;
    const double shortest = kinds_[by_length_.front()].length;
    return length_ + std::max(shortest, lacking * shortest / (shortest + kerf_));
  }
  bool worse(double length, std::size_t sticks) const {
    return length > best_length_ + rounding || (length > best_length_ - rounding && sticks >= best_opened_count_);
  }

  void place(std::size_t next) {
    if (++steps_ > most_) return;
    if (next == sizes_.size()) return keep();
    const double least = bound(next);
    if (worse(least, open_.size() + (least > length_ + rounding))) return;
    // Of equal pieces none goes into a stick before that of the last: the other order is the same plan.
    const std::size_t first = next > 0 && sizes_[next] == sizes_[next - 1] ? stick_[next - 1] : 0;
    for (std::size_t k = first; k < open_.size(); ++k) {
      if (open_[k].room < sizes_[next] - rounding || same_before(k, first)) continue;
      open_[k].room -= sizes_[next];
      stick_[next] = k;
      place(next + 1);
      open_[k].room += sizes_[next];
    }
    open_another(next);
  }
  bool same_before(std::size_t k, std::size_t first) const {
    for (std::size_t j = first; j < k; ++j)
      if (open_[j].room == open_[k].room && open_[j].kind == open_[k].kind) return true;
    return false;
  }
  void open_another(std::size_t next) {
    for (auto kind : by_length_) {
      if (kinds_[kind].count < 1 || kinds_[kind].length + kerf_ < sizes_[next] - rounding) continue;
      --kinds_[kind].count;
      length_ += kinds_[kind].length;
      open_.push_back({kind, kinds_[kind].length + kerf_ - sizes_[next]});
      stick_[next] = open_.size() - 1;
      place(next + 1);
      open_.pop_back();
      length_ -= kinds_[kind].length;
      ++kinds_[kind].count;
    }
  }
  void keep() {
    if (worse(length_, open_.size())) return;
    best_length_ = length_;
    best_opened_count_ = open_.size();
    best_stick_ = stick_;
    best_opened_.clear();
    for (auto& o : open_) best_opened_.push_back(o.kind);
  }

  double kerf_;
  std::size_t most_, steps_ = 0;
  std::vector<StickKind> kinds_;
  std::vector<std::size_t> order_, by_length_, stick_, best_stick_, best_opened_;
  std::vector<double> sizes_, rest_;
  std::vector<Open> open_;
  double length_ = 0, best_length_ = std::numeric_limits<double>::infinity();
  std::size_t best_opened_count_ = std::numeric_limits<std::size_t>::max();
};

}  // namespace

std::optional<CutPlan> cut_plan(std::span<const double> pieces, std::span<const StickKind> sticks, double kerf,
                                bool& gave_up, std::size_t most_steps) {
  gave_up = false;
  if (pieces.empty()) return CutPlan{.proved = true};
  if (sticks.empty()) return std::nullopt;
  Search search(pieces, sticks, kerf, most_steps);
  search.run();
  gave_up = search.gave_up();
  return search.best();
}

}  // namespace sw::physics
