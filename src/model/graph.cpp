#include "model/graph.hpp"

#include <algorithm>

namespace sw {
namespace {

struct Item {
  const Block* block;
  std::size_t system;
  std::set<std::string> blame = {};  ///< missing figures that keep it from running; empty: usable
  bool usable() const { return blame.empty(); }
};

/// Who writes each port: block index, or -1 for the driver. States and switches are written by nobody during an
/// evaluation; they are known beforehand.
struct Writers {
  std::map<std::string_view, int> of;
  std::map<std::string_view, const Kind*> kind;
  std::set<std::string_view> known;               ///< states, switches and outside ports
  std::map<std::string_view, std::size_t> owner;  ///< of states and switches: their block
};

Writers find_writers(const std::vector<Item>& items, std::span<const Port> outside, std::vector<std::string>& faults) {
  Writers w;
  auto claim = [&](const Port& p, int by) {
    if (!w.of.emplace(p.name, by).second) faults.push_back("port " + std::string(p.name) + " is written twice");
    w.kind[p.name] = p.kind;
  };
  for (auto& p : outside) {
    claim(p, -1);
    w.known.insert(p.name);
  }
  for (std::size_t i = 0; i < items.size(); ++i) {
    for (auto& p : items[i].block->writes) claim(p, static_cast<int>(i));
    auto keep = [&](const Port& p) {
      claim(p, static_cast<int>(i));
      w.known.insert(p.name);
      w.owner[p.name] = i;
    };
    for (auto& s : items[i].block->states) keep(s.port);
    for (auto& s : items[i].block->switches) keep(s.port);
  }
  return w;
}

void check_reads(const std::vector<Item>& items, const Writers& w, std::vector<std::string>& faults) {
  for (auto& item : items)
    for (auto& p : item.block->reads) {
      auto it = w.of.find(p.name);
      if (it == w.of.end())
        faults.push_back(std::string(item.block->name) + " reads " + std::string(p.name) + ", which nobody writes");
      else if (w.kind.at(p.name) != p.kind)
        faults.push_back(std::string(item.block->name) + " reads " + std::string(p.name) + " as " +
                         std::string(p.kind->name) + ", it is written as " + std::string(w.kind.at(p.name)->name));
    }
}

void check_tears(const std::vector<Item>& items, std::vector<std::string>& faults) {
  for (auto& item : items) {
    auto& b = *item.block;
    if (b.tear.empty()) continue;
    if (std::none_of(b.writes.begin(), b.writes.end(), [&](auto& p) { return p.name == b.tear; }))
      faults.push_back(std::string(b.name) + " tears a loop at " + std::string(b.tear) + ", which it does not write");
    if (!(b.tear_low < b.tear_high))
      faults.push_back(std::string(b.name) + " gives no bracket for " + std::string(b.tear));
  }
}

void check_validity(const std::vector<Item>& items, std::vector<std::string>& faults) {
  for (auto& item : items)
    for (auto& v : item.block->validity) {
      auto named = [&](auto& list) {
        return std::any_of(list.begin(), list.end(), [&](auto& p) { return p.name == v.port; });
      };
      if (!named(item.block->reads) && !named(item.block->writes))
        faults.push_back(std::string(item.block->name) + " gives a range for " + std::string(v.port) +
                         ", which it neither reads nor writes");
      if (!v.when.empty() &&
          std::none_of(item.block->reads.begin(), item.block->reads.end(), [&](auto& p) { return p.name == v.when; }))
        faults.push_back(std::string(item.block->name) + " has a range while " + std::string(v.when) +
                         ", which it does not read");
      // A range of the part's own is not there before its figures are.
      if (!v.of && !(v.range.low < v.range.high))
        faults.push_back(std::string(item.block->name) + " gives no range for " + std::string(v.port));
    }
}

/// Blocks of systems that lack figures cannot run, nor those that read from them. Names the figures for each port.
void mark_unavailable(std::vector<Item>& items, const std::vector<SystemOf>& systems, Graph& g) {
  /// Adds to an item's blame and to that of its ports; true where something was new.
  auto blame = [&](Item& item, const std::set<std::string>& what) {
    const std::size_t before = item.blame.size();
    item.blame.insert(what.begin(), what.end());
    if (item.blame.size() == before) return false;
    auto add = [&](const Port& p) { g.unavailable[std::string(p.name)].insert(what.begin(), what.end()); };
    for (auto& p : item.block->writes) add(p);
    for (auto& s : item.block->states) add(s.port);
    for (auto& s : item.block->switches) add(s.port);
    return true;
  };
  for (auto& item : items) {
    auto& s = systems[item.system];
    blame(item, {s.missing.begin(), s.missing.end()});
    if (auto own = s.missing_of.find(item.block->name); own != s.missing_of.end())
      blame(item, {own->second.begin(), own->second.end()});
  }
  for (bool changed = true; changed;) {
    changed = false;
    for (auto& item : items)
      for (auto& p : item.block->reads)
        if (auto bad = g.unavailable.find(p.name); bad != g.unavailable.end())
          changed |= blame(item, std::set(bad->second));
  }
}

/// Kahn's ordering, always taking the first block that is ready, so that the order is the same on every run.
std::vector<std::size_t> order(const std::vector<Item>& items, const Writers& w, std::vector<std::string>& faults) {
  std::vector<std::size_t> sequence;
  std::vector<bool> done(items.size(), false);
  std::set<std::string_view> torn;
  for (auto& item : items)
    if (!item.block->tear.empty()) torn.insert(item.block->tear);
  auto ready = [&](std::size_t i) {
    for (auto& p : items[i].block->reads) {
      if (w.known.contains(p.name) || torn.contains(p.name)) continue;
      auto by = w.of.find(p.name);
      if (by == w.of.end() || by->second < 0) continue;
      if (!done[static_cast<std::size_t>(by->second)] && items[static_cast<std::size_t>(by->second)].usable())
        return false;
    }
    return true;
  };
  std::size_t wanted =
      static_cast<std::size_t>(std::count_if(items.begin(), items.end(), [](auto& i) { return i.usable(); }));
  while (sequence.size() < wanted) {
    bool moved = false;
    for (std::size_t i = 0; i < items.size() && !moved; ++i)
      if (items[i].usable() && !done[i] && ready(i)) {
        sequence.push_back(i);
        done[i] = moved = true;
      }
    if (moved) continue;
    std::string chain;
    for (std::size_t i = 0; i < items.size(); ++i)
      if (items[i].usable() && !done[i]) chain += (chain.empty() ? "" : ", ") + std::string(items[i].block->name);
    faults.push_back("a loop that no block tears runs through " + chain);
    break;
  }
  return sequence;
}

class Builder {
 public:
  explicit Builder(Graph& g) : g_(g) {}
  std::uint16_t slot(const Port& p) {
    auto [it, fresh] = g_.slots.emplace(std::string(p.name), static_cast<std::uint16_t>(g_.width));
    if (fresh) {
      g_.ports.push_back(p);
      ++g_.width;
    }
    return it->second;
  }
  std::uint16_t hidden() {
    g_.ports.push_back({});
    return static_cast<std::uint16_t>(g_.width++);
  }
  void add(const Item& item, const void* model) {
    Graph::Step step{item.block, model, item.system, {}, {}, {}, {}, {}};
    for (auto& p : item.block->writes) step.writes.push_back(slot(p));
    for (auto& s : item.block->states) {
      const auto value = slot(s.port), rate = hidden();
      step.states.push_back(value);
      step.rates.push_back(rate);
      g_.states.push_back({&s, model, value, rate});
    }
    for (auto& s : item.block->switches) {
      step.switches.push_back(slot(s.port));
      g_.switches.push_back({&s, g_.steps.size(), step.switches.back()});
    }
    g_.steps.push_back(std::move(step));
  }
  void join_reads() {
    for (auto& step : g_.steps)
      for (auto& p : step.block->reads) step.reads.push_back(g_.slots.at(std::string(p.name)));
  }
  /// A torn port is written into a slot of its own, and read from the guess.
  void tear() {
    for (std::size_t last = 0; last < g_.steps.size(); ++last) {
      auto& step = g_.steps[last];
      if (step.block->tear.empty()) continue;
      const std::uint16_t guess = g_.slots.at(std::string(step.block->tear)), result = hidden();
      std::size_t first = last;
      for (std::size_t i = 0; i < last; ++i)
        if (std::find(g_.steps[i].reads.begin(), g_.steps[i].reads.end(), guess) != g_.steps[i].reads.end())
          first = std::min(first, i);
      if (!g_.tears.empty() && first <= g_.tears.back().last)
        g_.faults.push_back("the loops torn at " + std::string(g_.ports[g_.tears.back().guess].name) + " and " +
                            std::string(step.block->tear) + " run through one another");
      std::replace(step.writes.begin(), step.writes.end(), guess, result);
      g_.tears.push_back({first, last, guess, result, step.block->tear_low, step.block->tear_high});
    }
  }

 private:
  Graph& g_;
};

}  // namespace

int Graph::slot(std::string_view port) const {
  auto it = slots.find(port);
  return it == slots.end() ? -1 : it->second;
}

Graph join(const std::vector<SystemOf>& systems, std::span<const Port> outside) {
  Graph g;
  std::vector<Item> items;
  for (std::size_t s = 0; s < systems.size(); ++s)
    for (auto& b : systems[s].blocks) items.push_back({&b, s});
  const Writers w = find_writers(items, outside, g.faults);
  check_reads(items, w, g.faults);
  check_tears(items, g.faults);
  check_validity(items, g.faults);
  if (!g.faults.empty()) return g;
  mark_unavailable(items, systems, g);
  Builder build(g);
  for (auto& p : outside) build.slot(p);
  for (std::size_t i : order(items, w, g.faults)) build.add(items[i], systems[items[i].system].model);
  if (!g.faults.empty()) return g;
  build.join_reads();
  build.tear();
  return g;
}

std::string port_table(const std::vector<SystemOf>& systems, std::span<const Port> outside) {
  struct Line {
    const Port* port;
    std::string by;
    std::vector<std::string> to;
  };
  std::map<std::string, Line, std::less<>> lines;
  for (auto& p : outside) lines[std::string(p.name)] = {&p, "the duty", {}};
  auto each = [&](auto&& visit) {
    for (auto& s : systems)
      for (auto& b : s.blocks) visit(b);
  };
  each([&](const Block& b) {
    for (auto& p : b.writes) lines[std::string(p.name)] = {&p, std::string(b.name), {}};
    for (auto& s : b.states) lines[std::string(s.port.name)] = {&s.port, std::string(b.name) + " (state)", {}};
    for (auto& s : b.switches) lines[std::string(s.port.name)] = {&s.port, std::string(b.name) + " (switch)", {}};
  });
  each([&](const Block& b) {
    for (auto& p : b.reads)
      if (!lines[std::string(p.name)].by.starts_with(b.name))
        lines[std::string(p.name)].to.push_back(std::string(b.name));
  });
  const auto told = [&](std::string_view port, const std::string& how) {
    auto at = lines.find(port);
    if (at != lines.end() && std::find(at->second.to.begin(), at->second.to.end(), how) == at->second.to.end())
      at->second.to.push_back(how);
  };
  for (auto& s : systems)
    for (auto& r : s.requirements) {
      for (auto& p : r.needs) told(p.name, "findings of " + std::string(s.key));
      for (auto p : r.chain)
        if (std::none_of(r.needs.begin(), r.needs.end(), [&](auto& n) { return n.name == p; }))
          told(p, "because-lists of " + std::string(s.key));
    }
  std::string out = "| port | quantity | written by | read by |\n|---|---|---|---|\n";
  for (auto& [name, line] : lines) {
    if (!line.port) continue;
    std::string to;
    for (auto& t : line.to) to += (to.empty() ? "" : ", ") + t;
    out += "| `" + name + "` | " + std::string(line.port->kind->name) + " | " + line.by + " | " +
           (to.empty() ? "tables of `simulate` alone" : to) + " |\n";
  }
  return out;
}

}  // namespace sw
