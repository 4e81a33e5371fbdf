// How far a needle moves though nothing it measures does: grounds that loads lift, a supply that follows the car's.
#include <algorithm>

#include "systems/gauges/checks.hpp"

namespace sw::gauges {
namespace {

using namespace steady;

constexpr int port_of(Ground g) { return static_cast<int>(g) - 1; }  ///< need of a ground; the battery's has none
static_assert(port_of(Ground::block) == n_block && port_of(Ground::support) == n_support);

double volts_of(Ground g, const Evidenced& run, std::size_t row) {
  return g == Ground::battery ? 0 : run.at(row, port_of(g));
}

struct Moved {
  double by = 0, value = 0;
  Instant at;
  std::size_t row = 0;
};

Instant instant(const DialModel& m, const Evidenced& run, std::size_t row) {
  Instant at{.lift_v = volts_of(m.sender_ground, run, row) - volts_of(m.ground, run, row)};
  if (!m.regulated) at.supply_v = run.at(row, n_cluster);
  return at;
}

/// Rows at which grounds lie farthest apart, and of a gauge on the car's own volts those with the most and the least.
std::vector<std::size_t> rows_that_count(const DialModel& m, const Evidenced& run) {
  std::size_t most = 0, least = 0, high = 0, low = 0;
  for (std::size_t r = 1; r <= run.last(); ++r) {
    const double lift = instant(m, run, r).lift_v;
    if (lift > instant(m, run, most).lift_v) most = r;
    if (lift < instant(m, run, least).lift_v) least = r;
    if (run.at(r, n_cluster) > run.at(high, n_cluster)) high = r;
    if (run.at(r, n_cluster) < run.at(low, n_cluster)) low = r;
  }
  return m.regulated ? std::vector{most, least} : std::vector{most, least, high, low};
}

double movement(const DialModel& m, double value, const Instant& at) {
  return shown(m, value, at).value - shown(m, value).value;
}

Moved farthest(const DialModel& m, const Evidenced& run, std::optional<double> at_value) {
  std::optional<Moved> worst;
  for (std::size_t row : rows_that_count(m, run)) {
    const Instant at = instant(m, run, row);
    for (int i = 0; i <= (at_value ? 0 : steps_of_range); ++i) {
      const double value = at_value.value_or(value_at(m, i));
      const double by = movement(m, value, at);
      if (!worst || std::abs(by) > std::abs(worst->by)) worst = {by, value, at, row};
    }
  }
  return *worst;
}

std::string port_name(Ground g) { return g == Ground::battery ? "" : std::string(needs[port_of(g)].name); }

Verdict verdict(const Terms& t, const DialModel& m, std::string place, const Moved& w, const Evidenced& run) {
  const double limit = t.limit_of(m);
  Verdict v{.place = std::move(place),
            .predicted = w.by,
            .low = -limit,
            .high = limit,
            .scale = limit,
            .row = w.row,
            .fix_hint =
                "a ground of its own from the gauge to where the sender is grounded, or to the battery, with no "
                "load on it"};
  const auto ground_line = [&](const char* what, Ground g) {
    Because b = told(what + std::string(ground_names[static_cast<std::size_t>(g)]), volts_of(g, run, w.row),
                     kind::voltage, "V");
    b.path = port_name(g);
    v.because.push_back(std::move(b));
  };
  v.because.push_back(told("sender's ground above the gauge's", w.at.lift_v, kind::voltage, "V"));
  v.because.push_back(told("shown with nothing between the grounds", shown(m, w.value).value, t.kind, t.unit));
  if (w.at.supply_v)
    v.because.push_back(told("volts at the gauge, made for another", *w.at.supply_v, kind::voltage, "V"));
  ground_line("gauge's ground above the battery's post: ", m.ground);
  ground_line("sender's ground above it: ", m.sender_ground);
  v.because.push_back(told("true", w.value, t.kind, t.unit));
  v.because.push_back(told("shown", shown(m, w.value, w.at).value, t.kind, t.unit));
  if (w.at.supply_v && std::abs(movement(m, w.value, {.supply_v = w.at.supply_v})) > limit)
    v.fix_hint = "a regulator for the gauges: it moves with the car's volts";
  return v;
}

void steadiness(const Terms& t, const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  for (auto& m : of(model).*t.list) {
    if (!m.usable()) continue;                                 // its reading says what is missing
    if (m.regulated && m.ground == m.sender_ground) continue;  // nothing lies between
    if (m.gauge.ohm <= 0) {
      out.push_back({.place = m.name, .missing = {m.own_ohm_path}});
      continue;
    }
    out.push_back(verdict(t, m, m.name, farthest(m, run, std::nullopt), run));
    if (m.usual && *m.usual >= m.from && *m.usual <= m.to)
      out.push_back(verdict(t, m, m.name + ", usual", farthest(m, run, m.usual), run));
  }
}

}  // namespace

namespace steady {
void fuel(const void* m, const Evidenced& run, std::vector<Verdict>& out) { steadiness(fuel_terms, m, run, out); }
void temperature(const void* m, const Evidenced& run, std::vector<Verdict>& out) {
  steadiness(temperature_terms, m, run, out);
}
void pressure(const void* m, const Evidenced& run, std::vector<Verdict>& out) {
  steadiness(pressure_terms, m, run, out);
}
}  // namespace steady

}  // namespace sw::gauges
