#include "proof/causes.hpp"

#include <algorithm>

namespace sw {
namespace {

/// Of each slot, every slot that moves with it in the same instant, those of states and switches as far as their rate
/// or their next value goes.
std::vector<std::set<std::size_t>> moved_with(const Graph& g) {
  std::vector<std::set<std::size_t>> next(g.width), all(g.width);
  std::set<std::size_t> held;
  for (auto& s : g.states) held.insert(s.value);
  for (auto& s : g.switches) held.insert(s.value);
  for (auto& step : g.steps)
    for (std::size_t from : step.reads) {
      if (held.contains(from)) continue;
      for (auto* to : {&step.writes, &step.states, &step.switches})
        for (std::size_t slot : *to) {
          // What closes a torn loop is written beside the guess it is read from.
          auto tear = std::find_if(g.tears.begin(), g.tears.end(), [&](auto& t) { return t.result == slot; });
          next[from].insert(tear == g.tears.end() ? slot : tear->guess);
        }
    }
  for (std::size_t from = 0; from < g.width; ++from) {
    std::vector<std::size_t> open(next[from].begin(), next[from].end());
    while (!open.empty()) {
      const std::size_t slot = open.back();
      open.pop_back();
      if (all[from].insert(slot).second) open.insert(open.end(), next[slot].begin(), next[slot].end());
    }
  }
  return all;
}

/// The chain as far as the requirement's own ports; what is told after them is what comes of it.
std::set<std::string_view> causes_of(const Requirement& r) {
  std::size_t end = r.chain.size();
  for (std::size_t i = 0; i < r.chain.size(); ++i)
    if (std::any_of(r.needs.begin(), r.needs.end(), [&](auto& p) { return p.name == r.chain[i]; })) end = i + 1;
  return {r.chain.begin(), r.chain.begin() + static_cast<std::ptrdiff_t>(end)};
}

}  // namespace

Causes::Causes(const Graph& graph, const std::vector<Judged>& base)
    : graph_(graph), base_(base), moved_(moved_with(graph)) {
  for (auto& j : base) {
    subject_.push_back(subject_of(*j.requirement));
    causes_.push_back(causes_of(*j.requirement));
  }
}

bool Causes::reaches(std::string_view from, std::string_view to) const {
  const int a = graph_.slot(from), b = graph_.slot(to);
  return a >= 0 && b >= 0 && moved_[static_cast<std::size_t>(a)].contains(static_cast<std::size_t>(b));
}

/// The ports needed, without the duty's own and without those all others come of: they are read for the setting.
Causes::Ports Causes::subject_of(const Requirement& r) const {
  Ports ports;
  for (auto& p : r.needs)
    if (!p.name.starts_with("duty.")) ports.insert(p.name);
  Ports kept = ports;
  if (ports.size() > 1)
    std::erase_if(kept, [&](auto p) {
      return std::all_of(ports.begin(), ports.end(),
                         [&](auto q) { return p == q || (reaches(p, q) && !reaches(q, p)); });
    });
  return kept;
}

bool Causes::may(std::size_t a, std::size_t b) const {
  return a != b && (base_[a].duty == base_[b].duty || base_[a].duty < 0);
}

bool Causes::joint(std::size_t a, std::size_t b, std::string_view port) const {
  return subject_[a].contains(port) && !subject_[b].contains(port) && causes_[b].contains(port);
}

bool Causes::in_chain(std::size_t a, std::size_t b) const {
  return std::any_of(subject_[a].begin(), subject_[a].end(), [&](auto p) { return joint(a, b, p); });
}

bool Causes::told(std::size_t a, std::size_t b) const { return may(a, b) && in_chain(a, b) && !in_chain(b, a); }

bool Causes::flows(const Ports& from, const Ports& to) const {
  return std::any_of(from.begin(), from.end(),
                     [&](auto p) { return std::any_of(to.begin(), to.end(), [&](auto q) { return reaches(p, q); }); });
}

bool Causes::before(std::size_t a, std::size_t b, bool b_turned) const {
  if (!may(a, b)) return false;
  const bool ahead = in_chain(a, b), behind = in_chain(b, a);
  if (ahead != behind) return ahead;
  if (b_turned && flows(subject_[a], {base_[b].requirement->alone_port})) return true;
  return flows(subject_[a], subject_[b]) && !flows(subject_[b], subject_[a]);
}

}  // namespace sw
