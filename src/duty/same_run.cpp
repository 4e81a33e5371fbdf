#include "duty/same_run.hpp"

#include <algorithm>
#include <cstring>

namespace sw {
namespace {

std::vector<std::string> port_names(const Graph& graph) {
  std::vector<std::string> all;
  for (auto& p : graph.ports) all.emplace_back(p.name);
  return all;
}

}  // namespace

SameRun::SameRun(const Graph& graph, const Course& course, const Trace& trace)
    : course_(&course), trace_(&trace), ports_(port_names(graph)) {
  if (!trace.summary.usable() || trace.rows() == 0) return;
  const std::size_t count = std::min(trace.rows(), most_instants);
  for (std::size_t k = 0; k < count; ++k) rows_.push_back(count == 1 ? 0 : k * (trace.rows() - 1) / (count - 1));
  look(graph, &seen_, nullptr);
}

bool SameRun::holds_for(const Graph& other) const {
  return !rows_.empty() && port_names(other) == ports_ && look(other, nullptr, &seen_);
}

bool SameRun::look(const Graph& graph, std::vector<double>* write, const std::vector<double>* against) const {
  Rhs rhs(graph, *course_);
  std::size_t at = 0;
  const auto same = [&](const std::vector<double>& part) {
    if (write) write->insert(write->end(), part.begin(), part.end());
    // By their bits: a port without a figure is no number in both.
    if (against && (at + part.size() > against->size() ||
                    std::memcmp(part.data(), against->data() + at, part.size() * sizeof(double)) != 0))
      return false;
    at += part.size();
    return true;
  };
  rhs.start();
  if (!same(rhs.values())) return false;
  std::vector<double> y(rhs.size()), rates(rhs.size()), guards;
  for (std::size_t row : rows_) {
    rhs.start_from(&trace_->values[row * trace_->width]);
    rhs.get(y.data());
    rhs(trace_->time[row], y.data(), rates.data());
    rhs.guards(guards);
    if (!same(rhs.values()) || !same(guards)) return false;
  }
  return true;
}

}  // namespace sw
