// Does the controller hear the engine's turns, and nothing else?
#include "model/told.hpp"
#include "systems/ignition/checks.hpp"

namespace sw::ignition::hearing {
namespace {

/// Of the edge that is left on suppression leads, and of the coupling behind a screen grounded at one end (common
/// practice).
constexpr double suppressed = 0.2, behind_screen = 0.05;

}  // namespace

void noise(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& p = of(model).pick_up;
  if (!p.described) return;
  Verdict v{.fix_hint =
                "suppression leads of 500 ohm a foot and more; a screened twisted pair from a pick-up instead of "
                "the coil's negative side; 6 in and more from every lead, crossing at right angles"};
  if (!p.threshold_v) v.missing.push_back(p.threshold_path);
  if (!p.input_ohm) v.missing.push_back(p.input_path);
  if (!p.beside_m) v.missing.push_back(p.beside_path);
  if (!p.apart_m) v.missing.push_back(p.apart_path);
  if (!p.leads) v.missing.push_back(p.leads_path);
  if (!v.missing.empty()) return out.push_back(std::move(v));
  const auto c =
      physics::mutual_capacitance_f({.length_m = *p.beside_m, .apart_m = *p.apart_m, .height_m = p.height_m});
  if (!c.valid) {
    v.reason = "closer together than the conductors are thick: give the distance between their middles";
    return out.push_back(std::move(v));
  }
  const double edge = p.edge_v * (*p.leads == Leads::suppression ? suppressed : 1);
  const double screen = p.screened ? behind_screen : 1, farad = c.value * screen;
  v.predicted = physics::coupled_v(farad, *p.input_ohm, edge, p.edge_s).value;
  v.high = *p.threshold_v;
  v.scale = *p.threshold_v;
  v.because.push_back(told("edge on the lead", edge, kind::voltage, "V"));
  v.because.push_back(told("in", p.edge_s, kind::time, "ms"));
  v.because.push_back(told("coupling between wire and lead, pF", farad * 1e12, kind::number, ""));
  v.because.push_back(told("current it drives", farad * edge / p.edge_s, kind::current, "mA"));
  v.because.push_back(told("into", *p.input_ohm, kind::resistance, "kohm"));
  out.push_back(std::move(v));
}

void kick(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  auto& p = m.pick_up;
  if (p.from != Pulses::coil_negative) return;
  Verdict v{.fix_hint = "a signal from a pick-up or a tachometer filter between coil and input"};
  if (!p.stands_v) return out.push_back({.missing = {p.stands_path}});
  v.predicted = m.kick_v;
  v.high = *p.stands_v;
  v.scale = *p.stands_v;
  out.push_back(std::move(v));
}

void ground(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& p = of(model).pick_up;
  if (!p.ground) return;
  const bool block = *p.ground == Ground::block;
  out.push_back({.reason = block ? "signal ground on the block"
                                 : "signal ground on the body: whatever the body's strap "
                                   "drops is added to every sensor",
                 .fix_hint = "the controller's ground on the block, beside the engine's own strap",
                 .rule = block});
}

}  // namespace sw::ignition::hearing
