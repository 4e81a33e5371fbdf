// Hot brakes: metal against what linings stand, fluid against its boiling point, and the stop that is left.
#include "physics/brake_stop.hpp"
#include "systems/brakes/checks.hpp"
#include "systems/brakes/heat.hpp"

namespace sw::brakes {
namespace {

constexpr std::string_view heating[] = {"*braking"};
constexpr std::string_view after_snubs[] = {"repeated-stops"};
constexpr std::string_view metal_chain[] = {"road.speed", "duty.grade", "driveline.overrun_force",
                                            "brakes.front_force"};
constexpr std::string_view fluid_chain[] = {"driveline.overrun_force", "brakes.front_force",
                                            "brakes.front_temperature"};

constexpr Port metals[] = {heat::front_port, heat::rear_port};
constexpr Port fluids[] = {heat::front_fluid, heat::rear_fluid, outside::ambient};

const HeatModel& axle(const Model& m, int i) { return i ? m.rear.heat : m.front.heat; }
constexpr const char* names[] = {"front", "rear"};

void metal(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (int i = 0; i < 2; ++i) {
    const std::size_t row = run.trace->highest(run.slot(i));
    Verdict v{.place = names[i],
              .predicted = run.at(row, i),
              .high = axle(m, i).highest_k,
              .scale = axle(m, i).highest_k - run.at(0, i),
              .row = row,
              .fix_hint = "more rotor or drum, air led to it, a lower gear down the hill, linings that stand more"};
    if (axle(m, i).usual_highest)
      v.because.push_back(
          told("nobody said what its lining stands; taken as usual", axle(m, i).highest_k, kind::temperature, "degC"));
    if (const Left left = hot_friction(axle(m, i), run.at(row, i)); left.known)
      v.because.push_back(
          told(axle(m, i).fade ? "friction left there" : "friction left there, by a usual lining's curve", left.share,
               kind::number, "%"));
    out.push_back(std::move(v));
  }
}

void fluid(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (int i = 0; i < 2; ++i) {
    const std::size_t row = run.trace->highest(run.slot(i));
    Verdict v{.place = names[i],
              .row = row,
              .fix_hint =
                  "every circuit flushed with fresh fluid until a test at each bleeder shows less than 1 % of "
                  "water, new hoses; never silicone with glycol fluid"};
    if (all_given({&m.grade, &m.water}, v)) {
      v.predicted = run.at(row, i);
      v.high = fluid_boils_k(m);
      v.scale = *v.high - run.at(row, 2);
      v.because.push_back(told("water in the fluid", m.water.value, kind::number, "%"));
      v.because.push_back(told("boiling point of its grade fresh",
                               physics::least_boiling(static_cast<physics::BrakeFluid>(m.grade.value)).dry_k,
                               kind::temperature, "degC"));
    }
    out.push_back(std::move(v));
  }
}

/// Old fluid, however cool the drive.
void fluid_water(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  constexpr double most = 0.03;
  auto& m = of(model);
  if (m.grade.given() && m.grade.value == static_cast<double>(Fluid::dot_5)) return;  // silicone takes none up
  Verdict v{.fix_hint =
                "every circuit flushed with fresh fluid until a test at each bleeder shows less than 1 % of water"};
  if (all_given({&m.water}, v)) {
    v.predicted = m.water.value;
    v.high = v.scale = most;
  }
  out.push_back(std::move(v));
}

/// Ports of the stop, and the metal's after them.
namespace hot_stop {
enum Need { n_front = road::need_count, n_rear, need_count };
std::span<const Port> needs() {
  static const std::vector<Port> both = [] {
    std::vector<Port> list(road::foot.begin(), road::foot.end());
    list.insert(list.end(), std::begin(metals), std::end(metals));
    return list;
  }();
  return both;
}

/// The car's brakes at a row, and what they do there.
struct Hot {
  Model brakes;
  Stopped car;
  std::size_t row;
  double vacuum_pa = 0, rate = 0;  ///< rate at 500 N or the first lock
  Left front{}, rear{};            ///< torque left
};
Hot hot_at(const Model& cold, const Evidenced& run, std::size_t row) {
  Hot h{cold, road::car_at(run, row, road::laden_known(run)), row, run.at(row, road::n_vacuum)};
  h.front = hot_torque(cold.front, run.at(row, n_front));
  h.rear = hot_torque(cold.rear, run.at(row, n_rear));
  h.brakes.front.torque_m3 *= h.front.share;
  h.brakes.rear.torque_m3 *= h.rear.share;
  h.rate = rate_at_pedal(h.brakes, panic_n, h.vacuum_pa, h.car);
  return h;
}

/// The worst of the rows that can be: front or rear at their hottest, or the vacuum at its least.
Hot worst(const Model& cold, const Evidenced& run) {
  Hot worst = hot_at(cold, run, road::weakest_row(run));
  for (const int metal : {n_front, n_rear}) {
    Hot h = hot_at(cold, run, run.trace->highest(run.slot(metal)));
    const bool unknown = !h.front.known || !h.rear.known;
    if (unknown || h.rate < worst.rate) worst = std::move(h);
    if (unknown) break;  // nothing is worse than not to know
  }
  return worst;
}

void tell(Verdict& v, const Hot& h) {
  v.place = h.car.laden ? "laden" : "as driven";
  v.row = h.row;
  const auto axle = [&](const char* where, const AxleModel& a, const Left& left) {
    v.because.push_back(told(std::string("torque left ") + where + " at one pressure", left.share, kind::number, "%"));
    if (!a.heat.fade) v.because.back().what += ", by a usual lining's curve";
    if (a.usual_shoes) v.because.back().what += ", usual shoes";
  };
  axle("in front", h.brakes.front, h.front);
  axle("behind", h.brakes.rear, h.rear);
  if (!h.front.known || !h.rear.known) {
    v.predicted.reset();
    v.reason = "the metal is hotter than the last point of its lining's `fade` curve: measure or ask for more of it";
  }
}

constexpr const char* fix = "linings that fade less, more rotor or drum, air led to it";

/// Whether metal and vacuum can be told.
bool known(const Model& m, const Evidenced& run) {
  return road::foot_known(m, run) && !run.lacks(n_front) && !run.lacks(n_rear);
}

void distance(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  if (!known(of(model), run)) return out.push_back({});
  const Hot h = worst(of(model), run);
  const double most_m = physics::stop_limit(physics::StopTest::hot, hundred_km_h_m_s).distance_m;
  Verdict v{.predicted = stop_m(hundred_km_h_m_s, h.rate), .high = most_m, .scale = most_m, .fix_hint = fix};
  tell(v, h);
  v.because.push_back(told_rate("rate at 500 N, or at the first lock", h.rate));
  out.push_back(std::move(v));
}

/// The hot stop over the cold one at the cold one's pedal force.
void share(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  constexpr double least = 0.60;
  auto& m = of(model);
  if (!known(m, run)) return out.push_back({});
  const Hot h = worst(m, run);
  const Lock lock = first_lock(m, m.dry, h.car);
  const double pedal = std::min(panic_n, pedal_at_pressure(m, lock.line_pa, h.vacuum_pa));
  const double cold = rate_at_pedal(m, pedal, h.vacuum_pa, h.car);
  const double hot = rate_at_pedal(h.brakes, pedal, h.vacuum_pa, h.car);
  Verdict v{.predicted = hot / cold, .low = least, .scale = least, .fix_hint = fix};
  tell(v, h);
  v.because.push_back(told("force on the pedal in both", pedal, kind::force, "lbf"));
  v.because.push_back(told_rate("rate cold", cold));
  v.because.push_back(told_rate("rate hot", hot));
  out.push_back(std::move(v));
}
}  // namespace hot_stop

std::vector<Requirement> made() {
  return {
      {.id = "brakes.metal-temperature",
       .title = "rotors and drums stay below their limit",
       .kind = RequirementKind::most,
       .hazard = Hazard::harm,
       .caution = Caution::old_linings,
       .quantity = &kind::temperature,
       .unit = "degC",
       .source = "brakes.front.heat.highest; where it is not given 450 degC for a disc, 320 degC for a drum "
                 "(common practice)",
       .formula = "braking force of the axle times speed, less the dragged engine's part, into the metal; shed by "
                  "a conductance that grows with speed and by radiation",
       .duties = heating,
       .needs = metals,
       .chain = metal_chain,
       .evaluate = metal},
      {.id = "brakes.fluid-boils",
       .title = "fluid does not boil",
       .kind = RequirementKind::most,
       .hazard = Hazard::harm,
       .caution = Caution::brake_fluid,
       .quantity = &kind::temperature,
       .unit = "degC",
       .source = "49 CFR 571.116: least boiling points dry and with 3.7 % of water; between and beyond by the law of "
                 "physics/brake_fluid",
       .formula = "fluid follows the metal's rise over the air by its share within two minutes; against the boiling "
                  "point at the water that was tested",
       .duties = heating,
       .needs = fluids,
       .chain = fluid_chain,
       .evaluate = fluid},
      {.id = "brakes.fluid-water",
       .title = "fluid is not old",
       .kind = RequirementKind::most,
       .hazard = Hazard::harm,
       .caution = Caution::brake_fluid,
       .quantity = &kind::number,
       .unit = "%",
       .source = "common practice: changed at 3 % of water",
       .formula = "water by a tester at the worst bleeder",
       .own_missing = true,
       .evaluate = fluid_water},
      {.id = "brakes.hot-stop",
       .title = "stop after repeated hard slowing",
       .kind = RequirementKind::most,
       .hazard = Hazard::harm,
       .caution = Caution::braking_loss,
       .quantity = &kind::length,
       .unit = "m",
       .source = "49 CFR 571.135 S7.14: 89 m from 100 km/h at 500 N after the heating snubs of S7.13",
       .formula = "0.10 V for response (V in km/h), then the rate 500 N gives, or the first axle's lock on a dry road, "
                  "at the worst of front hottest, rear hottest and least vacuum; a disc loses torque as its friction "
                  "falls, a drum by its factor",
       .duties = after_snubs,
       .needs = hot_stop::needs(),
       .may_lack = road::n_vacuum,
       .chain = metal_chain,
       .evaluate = hot_stop::distance},
      {.id = "brakes.hot-share",
       .title = "hot brakes keep their share of the cold stop",
       .kind = RequirementKind::least,
       .hazard = Hazard::harm,
       .caution = Caution::old_linings,
       .quantity = &kind::number,
       .unit = "%",
       .source =
           "49 CFR 571.135 S7.14: the first hot stop at least 60 % of the cold one's deceleration at no more than "
           "its pedal force",
       .formula = "rate with hot brakes over rate with cold ones at the pedal force that locks the first axle cold, at "
                  "most 500 N",
       .duties = after_snubs,
       .needs = hot_stop::needs(),
       .may_lack = road::n_vacuum,
       .chain = metal_chain,
       .evaluate = hot_stop::share}};
}

}  // namespace

std::span<const Requirement> heat_requirements() {
  static const std::vector<Requirement> all = made();
  return all;
}

}  // namespace sw::brakes
