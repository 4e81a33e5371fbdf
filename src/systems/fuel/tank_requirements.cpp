// Vapour and the tank: margins to boiling, warming, what covers the pick-up, range, vent.
#include <algorithm>
#include <cmath>

#include "physics/fuel_blend.hpp"
#include "physics/slosh.hpp"
#include "quantity/customary.hpp"
#include "systems/fuel/checks.hpp"

namespace sw::fuel {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

constexpr const char* outside_vapour =
    "the fuel lies outside the vapour law: 2 to 15 psi Reid with at most 15 % ethanol, -18 to 100 degC";

}  // namespace

namespace inlet {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const auto margin = [&](std::size_t r) { return run.at(r, n_inlet) - vapour_pa(m, run.at(r, n_tank)).value; };
  std::size_t row = 0;
  for (std::size_t r = 1; r < run.trace->rows(); ++r)
    if (margin(r) < margin(row)) row = r;
  const auto vapour = vapour_pa(m, run.at(row, n_tank));
  if (!vapour.valid) {
    out.push_back({.row = row, .reason = outside_vapour});
    return;
  }
  Verdict v{.predicted = margin(row),
            .low = m.needed_pa,
            .scale = std::max(m.needed_pa, psi_pa),
            .row = row,
            .fix_hint = m.in_tank ? "cooler fuel: less sent round, the return away from the pick-up, a shield to the "
                                    "exhaust; a clean strainer"
                                  : "the pump into the tank or below its outlet, less loss before it, a shield to the "
                                    "exhaust, the return away from the pick-up"};
  v.because.push_back(
      {.what = "vapour pressure there", .value = vapour.value, .kind = &kind::absolute_pressure, .unit = "psi"});
  out.push_back(std::move(v));
}
}  // namespace inlet

namespace rail_vapour {
constexpr double least_pa = 2 * psi_pa;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  // A float bowl is open to the air.
  const auto pressure = [&](std::size_t r) {
    return run.at(r, n_pressure) + (m.carburettor ? 0.0 : run.at(r, n_rail));
  };
  const auto margin = [&](std::size_t r) { return pressure(r) - vapour_pa(m, run.at(r, n_temperature)).value; };
  std::size_t row = 0;
  for (std::size_t r = 1; r < run.trace->rows(); ++r)
    if (margin(r) < margin(row)) row = r;
  const auto vapour = vapour_pa(m, run.at(row, n_temperature));
  if (!vapour.valid) {
    out.push_back({.row = row, .reason = outside_vapour});
    return;
  }
  Verdict v{.predicted = margin(row),
            .low = least_pa,
            .scale = 10 * psi_pa,
            .row = row,
            .fix_hint = m.carburettor
                            ? "a heat spacer under the carburettor, cooler air in the bay, less volatile fuel"
                            : "a check valve that holds, a shield to the exhaust, fuel sent round past the rail"};
  v.because.push_back(
      {.what = "vapour pressure there", .value = vapour.value, .kind = &kind::absolute_pressure, .unit = "psi"});
  v.because.push_back({.what = "it boils at",
                       .value = physics::fuel_bubble_k(m.reid_pa, m.ethanol, pressure(row) / m.vapour_ratio),
                       .kind = &kind::temperature,
                       .unit = "degC"});
  out.push_back(std::move(v));
}
}  // namespace rail_vapour

namespace rise {
constexpr double most_k = 15;
void evaluate(const void*, const Evidenced& run, std::vector<Verdict>& out) {
  const std::size_t row = run.trace->highest(run.slot(0));
  out.push_back({.predicted = run.at(row, 0),
                 .high = most_k,
                 .scale = most_k,
                 .row = row,
                 .fix_hint = "3 in and more from the exhaust, a shield and sleeve, the feed on the frame's outside, or "
                             "the regulator at the rail with a return"});
}
}  // namespace rise

namespace tank_heat {
constexpr double most_k = 20;
void evaluate(const void*, const Evidenced& run, std::vector<Verdict>& out) {
  std::size_t row = 0;
  const auto over = [&](std::size_t r) { return run.at(r, n_tank) - run.at(r, n_ambient); };
  for (std::size_t r = 1; r < run.trace->rows(); ++r)
    if (over(r) > over(row)) row = r;
  out.push_back({.predicted = over(row),
                 .high = most_k,
                 .scale = most_k,
                 .row = row,
                 .fix_hint = "less fuel sent round (a smaller or speed-controlled pump, the regulator at the tank), a "
                             "shield between exhaust and tank"});
}
}  // namespace tank_heat

namespace pick_up {
namespace {

/// Along one axis, in its cell where there is one: the pick-up in the cell's middle, else by its distance to the wall.
struct Axis {
  double length_m = 0, from_wall_m = 0;
};
Axis axis(double length_m, double cell_m, double from_wall_m) {
  return cell_m > 0 ? Axis{cell_m, cell_m / 2} : Axis{length_m, from_wall_m};
}

/// A pull along an axis that draws the fuel away from the pick-up, and the depth it leaves there.
struct Drawn {
  Axis axis;  ///< its distance taken from the wall the fuel leaves
  double pull = 0, depth_m = INFINITY;
};
Drawn drawn(const Model& m, const Axis& a, double mean_m, double pull) {
  return {a, pull, physics::tilted_depth_m({a.length_m, m.height_m, mean_m}, a.from_wall_m, pull)};
}
Axis other_way(const Axis& a) { return {a.length_m, a.length_m - a.from_wall_m}; }
const Drawn& less(const Drawn& a, const Drawn& b) { return b.depth_m < a.depth_m ? b : a; }

}  // namespace

void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.side_m && m.cell_width_m <= 0) {
    out.push_back({.missing = {m.side_path}});
    return;
  }
  const Axis across = axis(m.width_m, m.cell_width_m, m.side_m.value_or(0));
  const Axis along = axis(m.length_m, m.cell_length_m, m.front_m.value_or(0));
  const bool looks_along = m.front_m.has_value() || m.cell_length_m > 0;
  Drawn least;
  double dry = 0, longest = 0, greatest_pull = 0, greatest_flow = 0;
  std::size_t row = 0;
  for (std::size_t r = 0; r < run.trace->rows(); ++r) {
    const double mean = depth_m(m, run.at(r, n_mass) / density_kg_m3(m, run.at(r, n_tank)));
    const double side = run.at(r, n_lateral) / standard_gravity_m_s2,
                 ahead = run.at(r, n_acceleration) / standard_gravity_m_s2;
    Drawn now = less(drawn(m, across, mean, side), drawn(m, other_way(across), mean, side));
    // Braking throws the fuel forward: the deep end is the front.
    if (looks_along && ahead != 0)
      now = less(now, drawn(m, ahead < 0 ? other_way(along) : along, mean, std::abs(ahead)));
    if (r > 0) dry = now.depth_m < m.pick_height_m ? dry + run.trace->time[r] - run.trace->time[r - 1] : 0;
    if (now.depth_m < least.depth_m) least = now, row = r;
    longest = std::max(longest, dry);
    greatest_pull = std::max({greatest_pull, side, looks_along ? std::abs(ahead) : 0.0});
    greatest_flow = std::max(greatest_flow, run.at(r, m.fed_by_return ? n_demand : n_flow));
  }
  if (greatest_pull <= 0) return;
  const double holds = greatest_flow > 0 ? m.reserve_m3 / greatest_flow : 0;
  Verdict v{.predicted = longest,
            .high = holds,
            .scale = std::max(longest, 1.0),
            .row = row,
            .fix_hint = "a baffled tank, the pump in a tray the return runs into, or a surge pot"};
  v.because.push_back({.what = "pull to the side or ahead",
                       .value = least.pull * standard_gravity_m_s2,
                       .kind = &kind::acceleration,
                       .unit = "g"});
  v.because.push_back(
      {.what = "least depth at the pick-up", .value = least.depth_m, .kind = &kind::length, .unit = "in"});
  const double covers = physics::mean_depth_for_m({least.axis.length_m, m.height_m, 0}, least.axis.from_wall_m,
                                                  least.pull, m.pick_height_m);
  v.because.push_back({.what = "it would stay covered from a tank filled to",
                       .value = volume_m3(m, covers) / m.tank_m3,
                       .kind = &kind::number,
                       .unit = "%"});
  v.because.push_back({.what = "a tray or pot holds out for", .value = holds, .kind = &kind::time, .unit = "s"});
  out.push_back(std::move(v));
}
}  // namespace pick_up

namespace range {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.range_m) return;
  const std::size_t row = run.last();
  const double flow = run.at(row, n_demand), speed = run.at(row, n_speed);
  if (!(flow > 0) || !(speed > 0)) return;
  // What stands below the pick-up's mouth stays in the tank.
  const double kept = std::min(m.tank_m3, volume_m3(m, m.pick_height_m));
  out.push_back({.predicted = (m.tank_m3 - kept) / flow * speed,
                 .low = *m.range_m,
                 .scale = *m.range_m,
                 .row = row,
                 .fix_hint = "a larger tank, a taller gear, or a shorter wish"});
}
}  // namespace range

namespace vent {
constexpr double most_pa = 0.3 * psi_pa, within_s = 15 * 60;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = "an open vent with a roll-over valve, to a canister or above the filler, and a two-way cap"};
  if (!m.vent) {
    v.missing.push_back(m.vent_path);
  } else {
    std::size_t row = 0;
    while (row < run.last() && run.trace->time[row] < within_s) ++row;
    v.predicted = run.at(row, 0);
    v.high = most_pa;
    v.scale = most_pa;
    v.row = row;
  }
  out.push_back(std::move(v));
}
}  // namespace vent

}  // namespace sw::fuel
