// The states that strand or burn: what must be fed, and what must be dead.
#include "quantity/print.hpp"
#include "systems/wiring/checks.hpp"
#include "systems/wiring/states.hpp"

namespace sw::wiring {
namespace {

constexpr const char* start_too = "feed it while the starter turns as well: at key start, not at run alone";
constexpr const char* run_too = "feed it in the run position";
constexpr const char* back_feed =
    "what feeds it with the key off: a lamp or coil joined to the alternator; a diode in that wire";

std::string volts(double v) { return print(v, kind::voltage, "V", 3); }

/// One verdict a demand of this kind on a load the car has.
void judge(const Model& m, bool fed, std::vector<Verdict>& out) {
  if (m.named_twice) return;
  for (auto& d : demands()) {
    const auto load = load_named(m, d.load);
    if (d.fed != fed || !load) continue;
    const auto run = run_state(m, d.state->bits);
    Verdict v{.place = std::string(d.load) + ", " + std::string(d.state->told), .fix_hint = d.fix_hint};
    if (!run.usable()) {
      v.reason = trouble(m, run.solution.summary);
    } else {
      const std::string gets = "gets " + volts(run.volts_at(m, *load));
      v.rule = d.holds(m, run, *load);
      v.reason = fed ? gets + ", works from " + volts(works_from_v(m, m.loads[*load]))
                     : gets + ", dead below " + volts(dead_below_v(m));
    }
    out.push_back(std::move(v));
  }
}

}  // namespace

std::span<const Demand> demands() {
  using namespace state;
  static const Demand all[] = {
      {"ignition", &cranked, true, start_too},
      {"injection", &cranked, true, start_too},
      {"starter_solenoid", &cranked, true, "its feed closed at key start, out of gear"},
      {"ignition", &driving, true, run_too},
      {"injection", &driving, true, run_too},
      {"fuel_pump", &driving, true, run_too},
      {"cluster", &driving, true, run_too},
      {"headlamps", &night, true, "its switch and relay closed by night"},
      {"brake_lamps", &night, true, "its feed closed by the brake whatever else is on"},
      {"ignition", &off_turning, false, back_feed},
      {"injection", &off_turning, false, back_feed},
      {"starter_solenoid", &cranked_in_gear, false, "a neutral switch in the solenoid's feed: closed out of gear"},
      {"starter_solenoid", &driving, false, "the solenoid fed from key start alone"},
      {"ignition", &state::accessory, false, "the coil fed from run and start, not from accessory: it cooks there"},
      {"fuel_pump", &state::accessory, false, "the pump fed by the engine's turning, not from accessory"},
  };
  return all;
}

bool Demand::holds(const Model& m, const StateRun& run, std::size_t index) const {
  const double at = run.volts_at(m, index);
  return fed ? at >= works_from_v(m, m.loads[index]) : at < dead_below_v(m);
}

namespace must_run {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  judge(*static_cast<const Model*>(model), true, out);
}
}  // namespace must_run

namespace must_stop {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  judge(*static_cast<const Model*>(model), false, out);
}
}  // namespace must_stop

}  // namespace sw::wiring
