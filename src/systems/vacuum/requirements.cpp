#include <numbers>
#include "model/outside.hpp"

#include "model/told.hpp"
#include "physics/droplet.hpp"
#include "systems/vacuum/vacuum.hpp"

namespace sw::vacuum {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }
constexpr std::string_view idling[] = {"hot-idle"};
constexpr std::string_view chain[] = {"engine.speed", "vacuum.manifold"};
constexpr Port needs[] = {{"vacuum.manifold", &kind::vacuum}};

/// The least vacuum of the run is where the valve flows most and the engine is worst off.
std::size_t weakest(const Evidenced& run) { return run.trace->lowest(run.slot(0)); }

namespace idle_air {
constexpr double least_share = 0.30;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.valve_flow && !m.idle_air_m3_s) return;
  Verdict v{.scale = least_share,
            .row = weakest(run),
            .fix_hint =
                "a valve made for low vacuum (two stages or a fixed orifice), then the throttle stop set anew "
                "and the idle learnt again"};
  if (!m.valve_flow) v.missing.push_back(m.valve_path);
  if (!m.idle_air_m3_s) v.missing.push_back(m.idle_air_path);
  if (v.missing.empty()) {
    const double valve = m.valve_flow->at(run.at(v.row, 0)).value;
    v.predicted = 1 - (valve + m.throttle_leak_m3_s) / *m.idle_air_m3_s;
    v.low = least_share;
    v.because.push_back(told("manifold vacuum", run.at(v.row, 0), kind::vacuum, "inHg"));
    v.because.push_back(told("through the crankcase valve", valve, kind::volume_flow, "cfm"));
    v.because.push_back(told("past the closed throttle", m.throttle_leak_m3_s, kind::volume_flow, "cfm"));
  }
  out.push_back(std::move(v));
}
}  // namespace idle_air

namespace crankcase {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.blow_by_m3_s) return;
  Verdict v{.scale = *m.blow_by_m3_s > 0 ? *m.blow_by_m3_s : 1e-4,
            .row = weakest(run),
            .fix_hint = "a valve of more flow at this vacuum; rings and their leak-down looked at"};
  if (!m.valve_flow) v.missing.push_back(m.valve_path);
  if (v.missing.empty()) {
    v.predicted = m.valve_flow->at(run.at(v.row, 0)).value;
    v.low = *m.blow_by_m3_s;
  }
  out.push_back(std::move(v));
}
}  // namespace crankcase

/// Gas drawn into the valve against the fall of the drops that fly before it.
namespace carried {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.hole_m && !m.baffle_m2) return;
  Verdict v{.fix_hint =
                "a baffle of 3 in2 and more before the hole, away from the rockers' spray; a valve that suits this "
                "vacuum; a catch can only beside them"};
  if (!m.valve_flow) v.missing.push_back(m.valve_path);
  if (!v.missing.empty()) return out.push_back(std::move(v));
  double most = -1;
  for (std::size_t row = 0; row <= run.last(); ++row)
    if (const double flow = m.valve_flow->at(run.at(row, 0)).value; flow > most) {
      most = flow;
      v.row = row;
    }
  const double area = m.baffle_m2 ? *m.baffle_m2 : std::numbers::pi / 4 * *m.hole_m * *m.hole_m;
  v.predicted = physics::passage_m_s(most, area).value;
  v.high = physics::settling_m_s(m.droplet_m).value;
  v.scale = *v.high;
  v.because.push_back(told("through the crankcase valve", most, kind::volume_flow, "cfm"));
  v.because.push_back(told(m.baffle_m2 ? "inlet of the baffle" : "area of the hole", area, kind::area, "in2"));
  v.because.push_back(told("droplet", m.droplet_m, kind::length, "mm"));
  if (m.baffle_m2 && m.hole_m)
    v.because.push_back(told("in the hole without a baffle",
                             physics::passage_m_s(most, std::numbers::pi / 4 * *m.hole_m * *m.hole_m).value,
                             kind::speed, "m/s"));
  out.push_back(std::move(v));
}
}  // namespace carried

constexpr Requirement all[] = {
    {.id = "vacuum.idle-air",
     .title = "idle air left to the controller",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .caution = Caution::runaway_throttle,
     .quantity = &kind::number,
     .unit = "%",
     .source = "common practice: 30 % of the idle's air through the controller's own valve",
     .formula = "air the idle asks less what crankcase valve and closed throttle let by, over the air it asks",
     .duties = idling,
     .needs = needs,
     .chain = chain,
     .evaluate = idle_air::evaluate},
    {.id = "vacuum.crankcase",
     .title = "crankcase valve takes the blow-by",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .caution = Caution::none,
     .quantity = &kind::volume_flow,
     .unit = "cfm",
     .source = "common practice: no pressure in the crankcase at idle",
     .formula = "flow of the valve at the manifold's vacuum against the gas past the rings",
     .duties = idling,
     .needs = needs,
     .chain = chain,
     .evaluate = crankcase::evaluate},
    {.id = "vacuum.oil-carried",
     .title = "oil falls back before the crankcase valve",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::none,
     .quantity = &kind::speed,
     .unit = "m/s",
     .source = "speed at which such a drop falls (Schiller and Naumann's drag); size of the drops common practice",
     .formula = "flow of the valve at the manifold's vacuum over the area by which it draws",
     .duties = idling,
     .needs = needs,
     .chain = chain,
     .evaluate = carried::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::vacuum
