#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/told.hpp"
#include "quantity/print.hpp"
#include "systems/transmission/checks.hpp"

namespace sw::transmission {
namespace {

constexpr double degree = std::numbers::pi / 180;
const Model& of(const void* model) { return *static_cast<const Model*>(model); }

namespace converter {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.gap_m) return;
  Verdict v{
      .predicted = *m.gap_m,
      .low = std::max(m.least_gap_m, m.grows_m),
      .high = m.most_gap_m,
      .scale = m.most_gap_m - m.least_gap_m,
      .fix_hint = *m.gap_m < m.least_gap_m
                      ? "crankshaft's pilot, flexplate's offset and converter looked at; the bell is never drawn up "
                        "by its bolts, and the converter turns freely with the bell tight"
                      : "a spacer at the pads, so that the hub stays in the pump's drive"};
  v.because.push_back(told("crankshaft's play, growth and ballooning take up", m.grows_m, kind::length, "in"));
  out.push_back(std::move(v));
}

enum Need { n_idle, need_count };
constexpr Port needs[] = {{"engine.plain_idle_speed", &kind::shaft_speed}};
static_assert(std::size(needs) == need_count);
constexpr double above_idle_rad_s = 500 * std::numbers::pi / 30;
void stall(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.stall_rad_s) return;
  const double idle = run.at(0, n_idle);
  Verdict v{
      .predicted = *m.stall_rad_s,
      .low = idle + above_idle_rad_s,
      .scale = above_idle_rad_s,
      .fix_hint = "a converter of more stall speed, or an engine that idles slower: it pulls at the brakes in gear"};
  v.because.push_back(told("idle", idle, kind::shaft_speed, "rpm"));
  out.push_back(std::move(v));
}
}  // namespace converter

namespace bell {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  const auto judge = [&](const char* place, const std::optional<double>& read, double most, const char* fix) {
    if (!read) return;
    Verdict v{.place = place, .predicted = *read, .high = most, .scale = most, .fix_hint = fix};
    v.because.push_back(told("out of the middle by", *read / 2, kind::length, "in"));
    out.push_back(std::move(v));
  };
  judge("bore", m.bore_m, m.bore_most_m,
        "dowels offset by half the reading, turned to where it is greatest; dialled "
        "again, three readings written down");
  judge("face", m.face_m, m.face_most_m, "paint and burrs off both faces, then shims between bell and block");
}
}  // namespace bell

/// Each gate's error where the lever of the box comes to stand; park, reverse and neutral decide whether it rolls.
namespace gate {
constexpr double standing_rad = 2 * degree;
bool standing(const std::string& name) { return name == "P" || name == "R" || name == "N"; }
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.gates.empty() && m.gates_missing.empty()) return;
  if (!m.gates_missing.empty()) return out.push_back({.missing = m.gates_missing});
  for (auto& g : m.gates) {
    const double most = standing(g.name) ? std::min(standing_rad, m.half_detent_rad) : m.half_detent_rad;
    Verdict v{.place = g.name,
              .predicted = std::abs(g.off_rad),
              .high = most,
              .scale = m.half_detent_rad,
              .fix_hint = "a linkage of ratio " + print(m.ratio_wanted, kind::number, "", 3) +
                          ": the box's lever longer by that, its indicator cut anew; pressure read in each gate"};
    v.because.push_back(told("half a detent of the box", m.half_detent_rad, kind::angle, "deg"));
    out.push_back(std::move(v));
  }
}
}  // namespace gate

/// The neutral switch lets the engine start: may the box be out of neutral then?
namespace neutral {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.gates.empty() || !m.neutral) return;
  Verdict v{.scale = m.half_detent_rad,
            .fix_hint =
                "the switch on the box itself, where it cannot be off; starter tried in every gate, wheels "
                "chocked"};
  if (!m.neutral_switch) {
    v.missing.push_back(m.neutral_switch_path);
  } else {
    const bool on_box = *m.neutral_switch == SwitchOn::box;
    const double off = std::abs(m.gates[*m.neutral].off_rad);
    v.predicted = m.window_rad + (on_box ? 0 : off);
    v.high = m.half_detent_rad;
    v.because.push_back(told("neutral switch's window to a side", m.window_rad, kind::angle, "deg"));
    if (!on_box) v.because.push_back(told("box off its neutral with the shifter in N", off, kind::angle, "deg"));
  }
  out.push_back(std::move(v));
}
}  // namespace neutral

namespace cable {
enum TravelNeed { n_opened, travel_need_count };
constexpr Port travel_needs[] = {{"throttle.opened", &kind::angle}};
static_assert(std::size(travel_needs) == travel_need_count);
constexpr std::string_view fix =
    "a lever or bracket of the right radius and start; the cable set with the throttle wide open, "
    "line pressure read before the road";

/// How far the throttle goes: to its stop, or as far as the pedal's linkage takes it where that is told.
double opened_rad(const CableModel& c, const Evidenced& run, int need) {
  const double by_pedal = run.at(0, need);
  return std::isnan(by_pedal) ? c.throttle_rad : std::min(c.throttle_rad, by_pedal);
}

void travel(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& c = of(model).cable;
  if (!c.told) return;
  constexpr double least_share = 0.97, most_share = 1.05;
  Verdict v{.fix_hint = std::string(fix)};
  v.missing = c.missing;
  if (!v.missing.empty()) return out.push_back(std::move(v));
  const double wanted = c.full_travel_m(), opened = opened_rad(c, run, n_opened);
  v.predicted = c.travel_m(c.radius_m, opened);
  v.low = least_share * wanted;
  v.high = most_share * wanted;
  v.scale = wanted;
  v.because.push_back(told("travel the box is made for", wanted, kind::length, "in"));
  v.because.push_back(told("of it", *v.predicted / wanted, kind::number, "%"));
  if (opened < c.throttle_rad) v.because.push_back(told("throttle as the pedal opens it", opened, kind::angle, "deg"));
  out.push_back(std::move(v));
  if (!c.curve) return;
  const OnTheWay worst = worst_on_the_way(c, c.radius_m);
  Verdict w{.place = "on the way",
            .predicted = worst.travel_m,
            .low = worst.wanted_m - c.within_m,
            .high = worst.wanted_m + c.within_m,
            .scale = wanted,
            .fix_hint = std::string(fix)};
  w.because.push_back(told("throttle there", worst.opening_rad, kind::angle, "deg"));
  w.because.push_back(told("travel wanted there", worst.wanted_m, kind::length, "in"));
  out.push_back(std::move(w));
}

constexpr std::string_view pulls[] = {"full-throttle"};
enum HoldNeed { n_torque, n_pedal_opens, hold_need_count };
constexpr Port needs[] = {{"engine.full_torque", &kind::torque}, {"throttle.opened", &kind::angle}};
static_assert(std::size(needs) == hold_need_count);
constexpr std::string_view chain[] = {"engine.full_torque"};
/// Line pressure goes with travel, what a clutch holds with line pressure.
void holds(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& c = of(model).cable;
  if (!c.told || (!c.holds_nm && c.pressure_missing.empty())) return;
  Verdict v{.row = run.trace->highest(run.slot(n_torque)),
            .fix_hint =
                "the cable's lever and setting first: more line pressure; a clutch pack of more plates, or a box "
                "for the torque"};
  v.missing = c.missing;
  v.missing.insert(v.missing.end(), c.pressure_missing.begin(), c.pressure_missing.end());
  if (v.missing.empty()) {
    const double pulled = c.travel_m(c.radius_m, opened_rad(c, run, n_pedal_opens));
    const double share = std::clamp(pulled / c.full_travel_m(), 0.0, 1.0);
    const double pressure = *c.closed_pa + share * (*c.open_pa - *c.closed_pa);
    v.predicted = *c.holds_nm * pressure / *c.open_pa;
    v.low = run.at(v.row, n_torque);
    v.scale = std::max(*v.low, 1.0);
    v.because.push_back(told("travel, of what the box is made for", share, kind::number, "%"));
    v.because.push_back(told("line pressure at full throttle", pressure, kind::gauge_pressure, "psi"));
  }
  out.push_back(std::move(v));
}

constexpr Port line_needs[] = {{"mounts.intake_raised", &kind::length}};
constexpr double most_off_rad = 3 * degree;
void line(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& c = of(model).cable;
  if (!c.arm_m) return;
  const double raised = run.at(0, 0), by_spacer = c.on_intake ? 0 : std::atan(std::abs(raised) / *c.arm_m);
  Verdict v{
      .predicted = c.off_line_rad + by_spacer,
      .high = most_off_rad,
      .scale = most_off_rad,
      .fix_hint = "the bracket raised with the throttle body, then the cable set anew with the throttle wide open"};
  v.because.push_back(told("intake raised", raised, kind::length, "in"));
  v.because.push_back(told("travel lost to the slope", *c.arm_m * (1 / std::cos(by_spacer) - 1), kind::length, "in"));
  out.push_back(std::move(v));
}
}  // namespace cable

constexpr Requirement all[] = {
    {.id = "transmission.converter-gap",
     .title = "converter is neither forced nor loose",
     .kind = RequirementKind::band,
     .hazard = Hazard::damage,
     .caution = Caution::lift,
     .quantity = &kind::length,
     .unit = "in",
     .source = "the gearbox's maker; common practice: 0.100 to 0.188 in",
     .formula = "as measured, against the least gap or what play, growth and ballooning take up, the greater",
     .own_missing = true,
     .evaluate = converter::evaluate},
    {.id = "transmission.stall-speed",
     .title = "converter lets the engine idle in gear",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .caution = Caution::unintended_motion,
     .quantity = &kind::shaft_speed,
     .unit = "rpm",
     .source = "common practice: 500 rpm above the idle",
     .formula = "stall speed against the engine's idle",
     .needs = converter::needs,
     .evaluate = converter::stall},
    {.id = "transmission.bell-run-out",
     .title = "bell in line with the crankshaft",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::lift,
     .quantity = &kind::length,
     .unit = "in",
     .source = "the gearbox's maker; common practice: bore 0.005 in, face 0.004 in",
     .formula = "total reading of a dial over a turn",
     .own_missing = true,
     .evaluate = bell::evaluate},
    {.id = "transmission.gate",
     .title = "box stands in the gate that is shown",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::unintended_motion,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: half a detent; 2 deg in park, reverse and neutral",
     .formula = "gates from where the linkage is set x (shifter's step x linkage - box's step)",
     .own_missing = true,
     .evaluate = gate::evaluate},
    {.id = "transmission.neutral-switch",
     .title = "starts in neutral alone",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::unintended_motion,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: half a detent",
     .formula = "the switch's window, and, where it sits on the column, how far the box is off its neutral then",
     .own_missing = true,
     .evaluate = neutral::evaluate},
    {.id = "transmission.cable-travel",
     .title = "throttle-valve cable travels as the box wants",
     .kind = RequirementKind::band,
     .hazard = Hazard::damage,
     .caution = Caution::runaway_throttle,
     .quantity = &kind::length,
     .unit = "in",
     .source = "the gearbox's maker; common practice: 97 to 105 % of the travel it is made for, on the "
               "way within transmission.throttle_cable.travel_within",
     .formula = "radius x (sin(start + opening) - sin(start)) of the lever there is, as far as the pedal opens the "
                "throttle, against that of the one wanted or the curve wanted",
     .needs = cable::travel_needs,
     .may_lack = 0,
     .own_missing = true,
     .evaluate = cable::travel},
    {.id = "transmission.clutch-hold",
     .title = "clutches hold the engine",
     .kind = RequirementKind::least,
     .hazard = Hazard::damage,
     .caution = Caution::unintended_motion,
     .quantity = &kind::torque,
     .unit = "lb-ft",
     .source = "the gearbox's maker: torque held at full line pressure",
     .formula = "line pressure in proportion to the cable's travel; torque held in proportion to line pressure",
     .duties = cable::pulls,
     .needs = cable::needs,
     .may_lack = cable::n_pedal_opens,
     .chain = cable::chain,
     .evaluate = cable::holds},
    {.id = "transmission.cable-line",
     .title = "cable pulls in line",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::runaway_throttle,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: 3 deg",
     .formula = "off its line as set up + atan(intake raised / bracket's arm) where the bracket stays below",
     .needs = cable::line_needs,
     .evaluate = cable::line},
};

}  // namespace

OnTheWay worst_on_the_way(const CableModel& c, double radius) {
  constexpr int steps = 60;
  OnTheWay worst;
  for (int i = 0; i <= steps; ++i) {
    const double opening = c.throttle_rad * i / steps;
    const OnTheWay at{opening, c.travel_m(radius, opening), c.curve->at(opening).value};
    if (at.off_m() >= worst.off_m()) worst = at;
  }
  return worst;
}

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::transmission
