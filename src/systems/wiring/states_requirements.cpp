// The states that strand or burn: what must be fed, and what must be dead.
#include "quantity/print.hpp"
#include "systems/wiring/checks.hpp"
#include "systems/wiring/states.hpp"

namespace sw::wiring {
namespace {

struct Demand {
  std::string_view load;
  const CarState* state;
  const char* fix_hint;
};

std::string volts(double v) { return print(v, kind::voltage, "V", 3); }

/// One verdict a demand on a load the car has.
void judge(const Model& m, std::span<const Demand> demands, bool fed, std::vector<Verdict>& out) {
  if (m.named_twice) return;
  for (auto& d : demands) {
    const auto load = load_named(m, d.load);
    if (!load) continue;
    const auto run = run_state(m, d.state->bits);
    Verdict v{.place = std::string(d.load) + ", " + std::string(d.state->told), .fix_hint = d.fix_hint};
    if (!run.usable()) {
      v.reason = trouble(m, run.solution.summary);
    } else {
      const double at = run.volts_at(m, *load), limit = fed ? works_from_v(m, m.loads[*load]) : dead_below_v(m);
      v.rule = fed ? at >= limit : at < limit;
      v.reason = fed ? "gets " + volts(at) + ", works from " + volts(limit)
                     : "gets " + volts(at) + ", dead below " + volts(limit);
    }
    out.push_back(std::move(v));
  }
}

}  // namespace

namespace must_run {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  constexpr const char* start_too = "feed it while the starter turns as well: at key start, not at run alone";
  constexpr const char* run_too = "feed it in the run position";
  static const Demand all[] = {
      {"ignition", &state::cranked, start_too},
      {"injection", &state::cranked, start_too},
      {"starter_solenoid", &state::cranked, "its feed closed at key start, out of gear"},
      {"ignition", &state::driving, run_too},
      {"injection", &state::driving, run_too},
      {"fuel_pump", &state::driving, run_too},
      {"cluster", &state::driving, run_too},
      {"headlamps", &state::night, "its switch and relay closed by night"},
      {"brake_lamps", &state::night, "its feed closed by the brake whatever else is on"},
  };
  judge(*static_cast<const Model*>(model), all, true, out);
}
}  // namespace must_run

namespace must_stop {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  constexpr const char* back_feed =
      "what feeds it with the key off: a lamp or coil joined to the alternator; a diode in that wire";
  static const Demand all[] = {
      {"ignition", &state::off_turning, back_feed},
      {"injection", &state::off_turning, back_feed},
      {"starter_solenoid", &state::cranked_in_gear, "a neutral switch in the solenoid's feed: closed out of gear"},
      {"starter_solenoid", &state::driving, "the solenoid fed from key start alone"},
      {"ignition", &state::accessory, "the coil fed from run and start, not from accessory: it cooks there"},
      {"fuel_pump", &state::accessory, "the pump fed by the engine's turning, not from accessory"},
  };
  judge(*static_cast<const Model*>(model), all, false, out);
}
}  // namespace must_stop

}  // namespace sw::wiring
