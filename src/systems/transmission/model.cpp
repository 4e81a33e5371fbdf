#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/needed.hpp"
#include "systems/transmission/transmission.hpp"

namespace sw::transmission {
namespace {

std::optional<std::size_t> gate_named(const std::vector<std::string>& gates, std::string_view name) {
  const auto at = std::find(gates.begin(), gates.end(), name);
  return at == gates.end() ? std::nullopt : std::optional(static_cast<std::size_t>(at - gates.begin()));
}

/// Where each detent of the shifter puts the box, the linkage set in one gate.
void resolve_gates(const Selector& in, Model& m, Resolver& r) {
  needed(in.neutral_switch, m.switch_missing, r);
  m.window_rad = needed(in.neutral_window, m.switch_missing, r);
  m.neutral_switch = in.neutral_switch;
  if (in.gates.empty()) return;
  const double box = needed(in.box_step, m.box_missing, r), shifter = needed(in.shifter_step, m.linkage_missing, r);
  const double linkage = needed(in.linkage, m.linkage_missing, r);
  const auto set = in.set_at.empty() ? std::optional<std::size_t>(0) : gate_named(in.gates, in.set_at);
  m.neutral = gate_named(in.gates, "N");
  if (!set) r.fault(&in.set_at, "\"" + in.set_at + "\" is none of the gates", "one of `gates`");
  if (!m.neutral) r.fault(&in.gates, "no gate is called \"N\"", "neutral is where the engine may start");
  if (!set || !m.neutral) return;
  m.gates_told = true;
  m.half_detent_rad = box / 2;
  m.ratio_wanted = shifter > 0 ? box / shifter : 1;
  for (std::size_t i = 0; i < in.gates.size(); ++i) {
    const double steps = static_cast<double>(i) - static_cast<double>(*set);
    m.gates.push_back({in.gates[i], steps * (shifter * linkage - box)});
  }
}

constexpr double enough_rad = 2 * std::numbers::pi / 180;  ///< a curve that ends that near the open stop tells of it

CableModel cable_of(const ThrottleCable& in, Resolver& r) {
  CableModel c{.start_rad = given(in.start),
               .before_square = r.get(in.before_square, 0.5),
               .closed_pa = given(in.pressure_closed),
               .open_pa = given(in.pressure_open),
               .holds_nm = given(in.clutch_holds),
               .arm_m = given(in.bracket_arm),
               .off_line_rad = r.get(in.off_line, 0),
               .on_intake = in.bracket_on_intake.value_or(false),
               .told = in.radius || in.radius_wanted || in.throttle || in.travel_wanted};
  c.curve_path = r.path_of(&in.travel_wanted);
  if (!c.told) return c;
  c.radius_m = needed(in.radius, c.missing, r);
  c.throttle_rad = needed(in.throttle, c.missing, r);
  c.within_m = r.get(in.travel_within, 0);
  if (in.travel_wanted) c.curve = physics::Interpolant::make(*in.travel_wanted);
  if (in.travel_wanted && in.throttle && in.travel_wanted->x.back() < in.throttle->si - enough_rad)
    r.fault(&in.travel_wanted, "the travel wanted ends before the throttle is wide open",
            "a row at the angle the throttle opens by");
  if (!c.curve) c.wanted_m = needed(in.radius_wanted, c.missing, r);
  if (!c.closed_pa && !c.open_pa && !c.holds_nm) return c;
  needed(in.pressure_closed, c.pressure_missing, r);
  needed(in.pressure_open, c.pressure_missing, r);
  needed(in.clutch_holds, c.pressure_missing, r);
  if (c.closed_pa && c.open_pa && *c.closed_pa >= *c.open_pa)
    r.fault(&in.pressure_open, "full travel gives no more pressure than none", "it rises with the throttle");
  return c;
}

}  // namespace

double CableModel::travel_m(double radius, double opening) const {
  const double from = start_rad.value_or(-before_square * throttle_rad);
  return radius * (std::sin(from + opening) - std::sin(from));
}

Model System::resolve(const Input& in, Resolver& r) {
  auto& c = in.converter;
  Model m{.gap_m = given(c.gap),
          .stall_rad_s = given(c.stall),
          .least_gap_m = r.need(c.least_gap),
          .most_gap_m = r.need(c.most_gap),
          .grows_m = r.get(c.end_play, 0) + r.get(c.ballooning, 0),
          .bore_m = given(in.bell.bore_run_out),
          .face_m = given(in.bell.face_run_out),
          .bore_most_m = r.get(in.bell.bore_most, 0),
          .face_most_m = r.get(in.bell.face_most, 0)};
  if (m.least_gap_m >= m.most_gap_m) r.fault(&c.least_gap, "the least gap is not below the greatest");
  resolve_gates(in.selector, m, r);
  m.cable = cable_of(in.throttle_cable, r);
  return m;
}

}  // namespace sw::transmission
