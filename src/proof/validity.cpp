#include "proof/validity.hpp"

#include <algorithm>
#include <cmath>
#include <cstdio>

#include "quantity/print.hpp"

namespace sw {
namespace {

std::vector<bool> spoilt_by(const Graph& graph, std::size_t origin) {
  std::vector<bool> spoilt(graph.width, false);
  std::vector<std::uint16_t> states;
  for (std::size_t i = origin; i < graph.steps.size(); ++i) {
    auto& step = graph.steps[i];
    if (i > origin && std::none_of(step.reads.begin(), step.reads.end(), [&](auto r) { return spoilt[r]; })) continue;
    for (auto w : step.writes) spoilt[w] = true;
    states.insert(states.end(), step.states.begin(), step.states.end());
  }
  for (auto s : states) spoilt[s] = true;
  // A torn port's result stands in a slot of its own.
  for (auto& t : graph.tears)
    if (spoilt[t.result]) spoilt[t.guess] = true;
  return spoilt;
}

std::string words(const Port& port, const Validity& v, const ValidRange& range, double value, double time) {
  const bool above = value > range.high;
  char at[32];
  std::snprintf(at, sizeof at, "%.3g s", time);
  return std::string(port.says.empty() ? port.name : port.says) + " comes to " +
         print(value, *port.kind, unit_of(port)) + (time > 0 ? " at " + std::string(at) : "") + "; " +
         std::string(v.law) + (above ? " end at " : " begin at ") +
         print(above ? range.high : range.low, *port.kind, unit_of(port));
}

}  // namespace

std::vector<Breach> breaches(const Graph& graph, const Trace& trace) {
  std::vector<Breach> out;
  for (std::size_t i = 0; i < graph.steps.size(); ++i)
    for (auto& v : graph.steps[i].block->validity) {
      const auto slot = static_cast<std::size_t>(graph.slot(v.port));
      const int when = v.when.empty() ? -1 : graph.slot(v.when);
      const ValidRange range = v.at(graph.steps[i].model);
      for (std::size_t row = 0; row < trace.rows(); ++row) {
        if (when >= 0 && !(trace.at(row, static_cast<std::size_t>(when)) > 0)) continue;
        const double value = trace.at(row, slot);
        if (value >= range.low && value <= range.high) continue;
        out.push_back({spoilt_by(graph, i), words(graph.ports[slot], v, range, value, trace.time[row]), row});
        break;
      }
    }
  return out;
}

}  // namespace sw
