#include "proof/because.hpp"

#include <algorithm>
#include <cmath>

namespace sw {
namespace {

constexpr double least_weight = 1e-4;  ///< of the scale; less is not told

}  // namespace

std::vector<Because> chain_of(const Car& car, const Judged& j, const Trace& trace) {
  std::vector<Because> out;
  for (auto name : j.requirement->chain) {
    const int slot = car.graph().slot(name);
    if (slot < 0 || trace.rows() == 0) continue;
    auto& port = car.graph().ports[static_cast<std::size_t>(slot)];
    // Taken as the verdict was, so that the figures of the chain add up to it.
    const auto at = static_cast<std::size_t>(slot);
    const double value = j.verdict.mean_share > 0 ? trace.late_mean(at, j.verdict.mean_share)
                                                  : trace.at(std::min(j.verdict.row, trace.rows() - 1), at);
    if (!std::isfinite(value) || (value == 0 && port.kind == &kind::power))
      continue;  // what gives no heat here is no cause
    out.push_back({.what = std::string(port.says),
                   .value = value,
                   .kind = port.kind,
                   .unit = unit_of(port),
                   .path = std::string(name)});
  }
  return out;
}

namespace {

/// The line of an input, without its weight.
Because line_of(const Build& build, const Move& m, Role role, double weight) {
  auto* f = find_field(build_fields(), m.path);
  Because b{.what = std::string(f->label),
            .kind = f->kind,
            .unit = unit_of(*f),
            .role = role,
            .evidence = m.evidence,
            .path = m.path,
            .weight = weight};
  if (auto v = value_at(build, m.path))
    b.value = *v;
  else
    b.text = "a curve";
  return b;
}

}  // namespace

std::vector<Because> weights_of(const Build& build, const Study& study, std::size_t index, double scale, Role role,
                                std::size_t most) {
  std::vector<Because> out;
  for (auto& m : study.moves) {
    if (role == Role::choice ? !m.lever : !m.has_doubt()) continue;
    const double change = role == Role::choice ? m.slope(index) * a_tenth(build, m.path) : m.change(index);
    // What is only offered upwards and does harm so is no choice: nobody mends a cable's drop by a weaker battery.
    if (role == Role::choice && m.grows && change < 0) continue;
    if (std::abs(change / scale) >= least_weight) out.push_back(line_of(build, m, role, change / scale));
  }
  std::stable_sort(out.begin(), out.end(), [](auto& a, auto& b) { return std::abs(a.weight) > std::abs(b.weight); });
  if (out.size() > most) out.resize(most);
  return out;
}

}  // namespace sw
