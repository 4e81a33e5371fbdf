#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/told.hpp"
#include "quantity/print.hpp"
#include "systems/transmission/judging.hpp"

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
  if (!m.gates_told) return;
  auto missing = m.box_missing;
  missing.insert(missing.end(), m.linkage_missing.begin(), m.linkage_missing.end());
  if (!missing.empty()) return out.push_back({.missing = missing});
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
  if (!m.gates_told) return;
  Verdict v{.scale = m.half_detent_rad,
            .fix_hint =
                "the switch on the box itself, where it cannot be off; starter tried in every gate, wheels "
                "chocked"};
  const bool on_box = m.neutral_switch == SwitchOn::box;
  v.missing = m.switch_missing;
  v.missing.insert(v.missing.end(), m.box_missing.begin(), m.box_missing.end());
  if (m.neutral_switch && !on_box)
    v.missing.insert(v.missing.end(), m.linkage_missing.begin(), m.linkage_missing.end());
  if (v.missing.empty()) {
    const double off = std::abs(m.gates[*m.neutral].off_rad);
    v.predicted = m.window_rad + (on_box ? 0 : off);
    v.high = m.half_detent_rad;
    v.because.push_back(told("neutral switch's window to a side", m.window_rad, kind::angle, "deg"));
    if (!on_box) v.because.push_back(told("box off its neutral with the shifter in N", off, kind::angle, "deg"));
  }
  out.push_back(std::move(v));
}
}  // namespace neutral

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
     .evaluate = judge_cable_travel},
    {.id = "transmission.throttle-turn",
     .title = "one throttle, told alike for gearbox and pedal",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::runaway_throttle,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: 2 deg, what two protractors differ by",
     .formula = "transmission.throttle_cable.throttle against throttle.opens",
     .needs = cable::stop_needs,
     .may_lack = 0,
     .own_missing = true,
     .evaluate = judge_one_throttle},
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
     .evaluate = judge_clutch_hold},
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
     .evaluate = judge_cable_line},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::transmission
