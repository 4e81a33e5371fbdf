#include <algorithm>
#include <cmath>

#include "model/outside.hpp"
#include "systems/charging/charging.hpp"

namespace sw::charging {
namespace {

constexpr std::string_view every_running[] = {"*running"};
constexpr std::string_view every_cranking[] = {"*cranking"};
constexpr std::string_view every_off[] = {"*off"};
constexpr double late = 0.5;  ///< share of a duty over which its settled mean is taken

constexpr Port available_port{"alternator.available", &kind::current}, load_port{"load.current", &kind::current};

/// Current the alternator can give, over what everything asks for.
namespace balance {
enum Need { n_available, n_load, n_speed, n_ratio };
constexpr Port needs[] = {
    available_port, load_port, {"engine.speed", &kind::shaft_speed}, {"belts.alternator_ratio", &kind::number}};
constexpr std::string_view chain[] = {"engine.speed",         "belts.alternator_speed", "alternator.temperature",
                                      "alternator.available", "fans.current",           "load.current",
                                      "bus.voltage",          "battery.current"};

/// Engine speed at which the machine, as hot as it is now, gives `load`; 0 where it never does.
double break_even(const Model& m, double load, double hot, double ratio) {
  const auto gives = [&](double w) { return m.output->at(w).value * hot; };
  double high = m.output->first();
  while (high < m.output->last() && gives(high) < load) high += 1.0;
  if (gives(high) < load) return 0;
  double low = std::max(high - 1.0, m.output->first());
  for (int i = 0; i < 20; ++i) {
    const double mid = 0.5 * (low + high);
    (gives(mid) < load ? low : high) = mid;
  }
  return high / ratio;
}

void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const double available = run.trace->late_mean(run.slot(n_available), late),
               load = run.trace->late_mean(run.slot(n_load), late);
  Verdict v{
      .predicted = available - load, .low = 0.0, .scale = std::max(load, 1.0), .row = run.last(), .mean_share = late};
  const double ratio = run.at(v.row, n_ratio), turning = run.trace->late_mean(run.slot(n_speed), late) * ratio,
               cold = m.output->at(turning).value;
  if (cold > 0) {
    if (const double even = break_even(m, load, available / cold, ratio); even > 0)
      v.because.push_back({.what = "engine speed at which it breaks even",
                           .value = even,
                           .kind = &kind::shaft_speed,
                           .unit = "rpm",
                           .evidence = "computed"});
  }
  v.fix_hint =
      "a machine that gives more at this speed, a smaller alternator pulley (mind its speed limit), a higher idle, or "
      "less load";
  out.push_back(std::move(v));
}
}  // namespace balance

/// Bus voltage against what the regulator means it to be, less the drop a charge lead may have.
namespace bus {
constexpr double lead_v = 0.3;
enum Need { n_bus, n_set };
constexpr Port needs[] = {{"bus.voltage", &kind::voltage}, {"regulator.voltage", &kind::voltage}};
constexpr std::string_view chain[] = {"alternator.available", "load.current", "regulator.voltage", "alternator.voltage",
                                      "charge.lead_drop",     "ground.drop",  "bus.voltage"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const double cells = static_cast<const Model*>(model)->cells;
  out.push_back({.predicted = run.trace->late_mean(run.slot(n_bus), late),
                 .low = run.trace->late_mean(run.slot(n_set), late) - lead_v * cells / 6,
                 .scale = cells / 4,
                 .row = run.last(),
                 .mean_share = late,
                 .fix_hint = "where current is short, more of it at this speed; else thicker charge lead and ground, "
                             "or the sense wire moved to the bus"});
}
}  // namespace bus

template <int Limit>
void drop(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const double share = static_cast<const Model*>(model)->cells / 6;
  // The settled mean: the minute in which a battery takes back what the start cost is not what a cable is judged by.
  out.push_back({.predicted = run.trace->late_mean(run.slot(0), late),
                 .high = Limit / 100.0 * share,
                 .scale = 0.5 * share,
                 .row = run.last(),
                 .mean_share = late,
                 .fix_hint = "a thicker or shorter cable and bare, clean joint faces"});
}
constexpr Port ground_needs[] = {{"ground.drop", &kind::voltage}};
constexpr std::string_view ground_chain[] = {"alternator.current", "ground.drop"};
constexpr Port lead_needs[] = {{"charge.lead_drop", &kind::voltage}};
constexpr std::string_view lead_chain[] = {"alternator.current", "charge.lead_drop"};

/// What a battery and the lamps stand for long: 2.48 V a cell.
namespace over {
constexpr double most_v_cell = 14.9 / 6;
constexpr Port needs[] = {{"battery.voltage", &kind::voltage}};
constexpr std::string_view chain[] = {"regulator.voltage", "alternator.voltage", "battery.voltage"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const double cells = static_cast<const Model*>(model)->cells;
  out.push_back(
      {.predicted = run.trace->late_mean(run.slot(0), late),
       .high = most_v_cell * cells,
       .scale = cells / 4,
       .row = run.last(),
       .mean_share = late,
       .fix_hint =
           "the regulator the battery's maker asks for; machine, battery, starter and lamps all of the car's voltage"});
}
}  // namespace over

namespace rotor {
enum Need { n_red, n_ratio };
constexpr Port needs[] = {{"engine.red_line", &kind::shaft_speed}, {"belts.alternator_ratio", &kind::number}};
constexpr std::string_view chain[] = {"engine.red_line", "belts.alternator_ratio"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const double limit = static_cast<const Model*>(model)->highest_rad_s;
  out.push_back({.predicted = run.at(0, n_red) * run.at(0, n_ratio),
                 .high = limit,
                 .scale = limit,
                 .fix_hint = "a larger alternator pulley"});
}
}  // namespace rotor

namespace winding {
enum Need { n_winding, n_ambient };
constexpr Port needs[] = {{"alternator.temperature", &kind::temperature}, outside::ambient};
constexpr std::string_view chain[] = {"bay.temperature", "alternator.current", "alternator.temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const double limit = static_cast<const Model*>(model)->highest_k;
  const std::size_t row = run.trace->highest(run.slot(n_winding));
  out.push_back({.predicted = run.at(row, n_winding),
                 .high = limit,
                 .scale = limit - run.at(row, n_ambient),
                 .row = row,
                 .fix_hint = "cooler air led to the machine, or a larger one"});
}
}  // namespace winding

namespace recharge {
constexpr Port needs[] = {{"battery.charge", &kind::number}};
constexpr std::string_view chain[] = {"alternator.available", "load.current", "battery.current", "battery.charge"};
constexpr std::string_view duties[] = {"commute", "night-rain"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const double capacity = static_cast<const Model*>(model)->capacity_c;
  out.push_back({.predicted = (run.at(run.last(), 0) - run.at(0, 0)) * capacity,
                 .low = 0.0,
                 .scale = 0.1 * capacity,
                 .row = run.last(),
                 .fix_hint = "more output at the speeds this drive holds"});
}
}  // namespace recharge

namespace cranking {
constexpr std::string_view chain[] = {"engine.oil_temperature", "battery.emf",     "battery.resistance",
                                      "starter.current",        "battery.voltage", "starter.voltage"};
constexpr double coldest_k = 243.15;  ///< of physics/battery
constexpr Port volts_needs[] = {{"battery.voltage", &kind::voltage}, outside::ambient};
/// The usual load test allows 9.6 V at 70 degF and 8.5 V at 0 degF, a straight line between (common practice, from
/// memory).
double least_v(const Model& m, double air_k) {
  if (m.least_crank_v > 0) return m.least_crank_v;
  const double at = std::clamp((air_k - 255.37) / (294.26 - 255.37), 0.0, 1.0);
  return (8.5 + 1.1 * at) * m.cells / 6;
}
void volts(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const std::size_t row = run.trace->lowest(run.slot(0));
  if (run.at(row, 1) < coldest_k) {
    out.push_back({.reason = "colder than -30 degC: outside what the battery's laws cover"});
    return;
  }
  out.push_back({.predicted = run.at(row, 0),
                 .low = least_v(m, run.at(row, 1)),
                 .scale = m.cells / 3,
                 .row = row,
                 .fix_hint = "a battery with more cold cranking current, or a lighter oil"});
}
enum Need { n_starter_v, n_starter_a };
constexpr Port speed_needs[] = {{"starter.voltage", &kind::voltage}, {"starter.current", &kind::current}};
void speed(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const std::size_t row = run.trace->lowest(run.slot(n_starter_v));
  // Speed of a saturated series motor goes with its back-e.m.f.
  const double emf = run.at(row, n_starter_v) - run.at(row, n_starter_a) * m.starter_ohm,
               warm = m.starter_v - m.starter_a * m.starter_ohm;
  out.push_back(
      {.predicted = warm > 0 ? m.crank_rad_s * std::max(0.0, emf) / warm : 0.0,
       .low = m.least_crank_rad_s,
       .scale = m.crank_rad_s,
       .row = row,
       .fix_hint = "thicker battery and ground cables, a stronger battery, a lighter oil, or a geared starter"});
}
enum LoopNeed { n_battery_v, n_at_starter };
constexpr Port loop_needs[] = {{"battery.voltage", &kind::voltage}, {"starter.voltage", &kind::voltage}};
void loop(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const std::size_t row = run.trace->lowest(run.slot(n_at_starter));
  const double share = static_cast<const Model*>(model)->cells / 6;
  out.push_back({.predicted = run.at(row, n_battery_v) - run.at(row, n_at_starter),
                 .high = share,
                 .scale = share,
                 .row = row,
                 .fix_hint = "thicker or shorter starter and block-to-battery cables"});
}
}  // namespace cranking

namespace standing {
constexpr double least_charge = 0.5;  ///< share at which it still starts (common practice)
constexpr Port needs[] = {{"load.current", &kind::current}, {"battery.charge", &kind::number}};
constexpr std::string_view chain[] = {"load.current", "battery.charge"};

/// Time to the least charge: where the run passes it, else on the straight line through what the run lost, which tells
/// draw and self-discharge together.
double time_left(const Evidenced& run, std::size_t row, double longest) {
  const double from = run.at(0, 1), now = run.at(row, 1), time = run.trace->time[row];
  if (from <= least_charge) return 0;
  if (now >= from) return longest;
  if (now >= least_charge) return std::min(longest, time * (from - least_charge) / (from - now));
  const double before = run.at(row - 1, 1), earlier = run.trace->time[row - 1];
  return earlier + (time - earlier) * (before - least_charge) / (before - now);
}
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (run.duty->method != Method::rest) return;  // minutes after a stop tell nothing of weeks
  std::size_t row = 0;
  while (row < run.last() && (row == 0 || run.at(row, 1) > least_charge)) ++row;
  const double longest = 10 * m.days_s, left = time_left(run, row, longest);
  out.push_back({.predicted = left,
                 .low = m.days_s,
                 .scale = m.days_s,
                 .row = row,
                 .reason = left >= longest ? "at least so long" : "",
                 .fix_hint = "find the draw with an ammeter in the battery lead, pull fuses one by one"});
}
}  // namespace standing

namespace polarity {
constexpr Port needs[] = {{"vehicle.positive_earth", &kind::number}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  Verdict v{.fix_hint =
                "a machine of the car's polarity, or the whole car converted: battery, instruments, coil and every "
                "electronic part"};
  if (!m.earth_path.empty()) {
    v.missing = {m.earth_path};
  } else {
    const bool positive = run.at(0, 0) > 0;
    v.rule = m.earth == Earth::isolated || (m.earth == Earth::positive) == positive;
    v.reason = std::string("the machine's case is ") + std::string(earth_names[static_cast<std::size_t>(m.earth)]) +
               ", the car has " + (positive ? "positive" : "negative") + " earth";
  }
  out.push_back(std::move(v));
}
}  // namespace polarity

constexpr Requirement all[] = {
    {.id = "charging.balance",
     .title = "current made covers current used",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .caution = Caution::battery_gas,
     .quantity = &kind::current,
     .unit = "A",
     .source = "common practice: at least 0 A with the worst realistic load",
     .formula = "output of the machine at its speed and temperature, less all loads at their own volts; mean of the "
                "duty's second half",
     .duties = every_running,
     .needs = balance::needs,
     .chain = balance::chain,
     .evaluate = balance::evaluate},
    {.id = "charging.bus-voltage",
     .title = "bus reaches the regulator's voltage",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .quantity = &kind::voltage,
     .unit = "V",
     .source = "common practice: charge lead drop at most 0.3 V",
     .formula = "DC network solved for the bus, against the regulator's set-point at its temperature less 0.3 V; mean "
                "of the duty's second half",
     .duties = every_running,
     .needs = bus::needs,
     .chain = bus::chain,
     .evaluate = bus::evaluate},
    {.id = "charging.overvoltage",
     .title = "no more volts than battery and lamps stand",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::battery_gas,
     .quantity = &kind::voltage,
     .unit = "V",
     .source = "common practice: 14.9 V in a 12 V car, half of it in a 6 V car",
     .formula = "volts at the battery's posts; mean of the duty's second half",
     .duties = every_running,
     .needs = over::needs,
     .chain = over::chain,
     .evaluate = over::evaluate},
    {.id = "charging.ground-drop",
     .title = "alternator's way back to the battery",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::electrical_fire,
     .quantity = &kind::voltage,
     .unit = "V",
     .source = "common practice: 0.1 V",
     .formula = "current times resistance from the case to the battery's negative post; mean of the duty's second half",
     .duties = every_running,
     .needs = ground_needs,
     .chain = ground_chain,
     .evaluate = drop<10>},
    {.id = "charging.lead-drop",
     .title = "charge lead",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::electrical_fire,
     .quantity = &kind::voltage,
     .unit = "V",
     .source = "common practice: 0.3 V",
     .formula = "voltage from the output stud to the bus; mean of the duty's second half",
     .duties = every_running,
     .needs = lead_needs,
     .chain = lead_chain,
     .evaluate = drop<30>},
    {.id = "charging.alternator-speed",
     .title = "rotor speed at the red line",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::belts_pulleys,
     .quantity = &kind::shaft_speed,
     .unit = "rpm",
     .source = "the machine's data sheet",
     .formula = "red line times crank pulley over alternator pulley",
     .needs = rotor::needs,
     .chain = rotor::chain,
     .evaluate = rotor::evaluate},
    {.id = "charging.alternator-temperature",
     .title = "alternator winding",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .quantity = &kind::temperature,
     .unit = "degC",
     .source = "IEC 60085 thermal classes (from memory)",
     .formula = "air under the bonnet plus the winding's rise at its share of full output, lagged",
     .duties = every_running,
     .needs = winding::needs,
     .chain = winding::chain,
     .evaluate = winding::evaluate},
    {.id = "charging.recharge",
     .title = "the drive leaves the battery fuller",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .quantity = &kind::charge,
     .unit = "A h",
     .source = "common practice",
     .formula = "charge at the end less charge at the start",
     .duties = recharge::duties,
     .needs = recharge::needs,
     .chain = recharge::chain,
     .evaluate = recharge::evaluate},
    {.id = "charging.crank-voltage",
     .title = "volts while cranking",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .caution = Caution::battery_gas,
     .quantity = &kind::voltage,
     .unit = "V",
     .source = "common practice: load test, 9.6 V at 70 degF to 8.5 V at 0 degF in a 12 V car (from memory)",
     .formula = "battery's own voltage less its resistance times all current, cold",
     .duties = every_cranking,
     .needs = cranking::volts_needs,
     .chain = cranking::chain,
     .evaluate = cranking::volts},
    {.id = "charging.crank-speed",
     .title = "cranking speed",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .quantity = &kind::shaft_speed,
     .unit = "rpm",
     .source = "common practice",
     .formula = "warm cranking speed times back-e.m.f. now over warm; current by oil viscosity",
     .duties = every_cranking,
     .needs = cranking::speed_needs,
     .chain = cranking::chain,
     .evaluate = cranking::speed},
    {.id = "charging.crank-loop",
     .title = "starter cables",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::electrical_fire,
     .quantity = &kind::voltage,
     .unit = "V",
     .source = "common practice: 1.0 V for the loop",
     .formula = "battery voltage less starter voltage while cranking",
     .duties = every_cranking,
     .needs = cranking::loop_needs,
     .chain = cranking::chain,
     .evaluate = cranking::loop},
    {.id = "charging.standing",
     .title = "days it may stand",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .caution = Caution::battery_gas,
     .quantity = &kind::time,
     .unit = "day",
     .source = "common practice: half charge still starts",
     .formula = "charge above half over what draw and self-discharge take a day",
     .duties = every_off,
     .needs = standing::needs,
     .chain = standing::chain,
     .evaluate = standing::evaluate},
    {.id = "charging.polarity",
     .title = "machine and car of one polarity",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::electrical_fire,
     .source = "common practice",
     .formula = "the side joined to the machine's case must be the car's earth",
     .needs = polarity::needs,
     .own_missing = true,
     .evaluate = polarity::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::charging
