#include "proof/offers.hpp"

#include <algorithm>
#include <cmath>

#include "field/measure.hpp"
#include "proof/trade_size.hpp"
#include "proof/trial.hpp"
#include "quantity/print.hpp"

namespace sw {
namespace {

constexpr std::size_t most_parts = 2;

/// Of a part as of a lever: one of its figures is what the finding is measured by.
bool only_scales(const Question& q, const Swap& s) {
  return std::any_of(q.study.moves.begin(), q.study.moves.end(), [&](auto& m) {
    if (!m.path.starts_with(s.group + ".")) return false;
    const auto was = value_at(q.build, m.path), is = value_at(s.build, m.path);
    return was && is && *was != 0 && only_scales(q.base[q.index], s.judged, *is / *was);
  });
}

}  // namespace

std::vector<std::size_t> parts_that_hold(const Question& q, const std::vector<Swap>& tried, std::size_t most) {
  std::vector<std::size_t> good;
  if (!can_be_asked(q)) return good;
  for (std::size_t i = 0; i < tried.size() && good.size() < most; ++i)
    if (!only_scales(q, tried[i]) && Trial(q, tried[i].build, {tried[i].group}, &tried[i].judged).mends())
      good.push_back(i);
  return good;
}

std::string words(const Lever& l) {
  if (l.factor) {
    const double by = 100 * (l.needed - 1);
    return l.path + (by < 0 ? " less by " : " by ") + short_number(std::abs(by), 3) + " % throughout";
  }
  auto* f = find_field(build_fields(), l.path);
  const auto bound = setting_bound(l.path);
  return l.path + " from " + print(l.now, *f->kind, unit_of(*f), 3) + " to " + print(l.needed, *f->kind, unit_of(*f)) +
         (bound && l.needed > l.now ? " (" + std::string(bound->mind) + ")" : "");
}

std::string offers(const Question& q, const std::vector<Swap>& tried, std::size_t most) {
  std::string text;
  std::size_t count = 0;
  auto offer = [&](const std::string& what) { text += (count++ == 0 ? "Holds with " : "; or ") + what; };
  const auto wires = thicker_wires(q);
  for (auto& l : wires)
    if (count < most) offer(words(l) + l.leaves);
  if (count < most)
    for (std::size_t i : parts_that_hold(q, tried, std::min(most - count, most_parts)))
      offer("shelf part " + words(tried[i]) + leaves_failing(q, tried[i].judged));
  if (count < most)
    for (auto& l : other_levers(q, wires, most - count)) offer(words(l) + l.leaves);
  if (count > 0) return text;
  if (const auto c = conflict(q)) text = "No " + c->path + " satisfies both this and " + id_of(q.base[c->other], q.set);
  return text;
}

}  // namespace sw
