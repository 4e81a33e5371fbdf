#include "systems/wiring/states.hpp"

#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;
using namespace sw::wiring;

namespace {

wiring::Model wired(const std::string& change) { return resolved<wiring::System>(faulty_car(change)).model; }
double volts(const wiring::Model& m, std::string_view load, const CarState& s) {
  return run_state(m, s.bits).volts_at(m, *load_named(m, load));
}

/// An ignition switch feeds the coil's node; a charge lamp joins that node to the machine's exciter.
std::string keyed(const std::string& lamp) {
  return "[wiring.switch.ignition_switch]\nfrom = \"bus\"\nto = \"ign\"\nclosed = [\"key\"]\nlimit = \"30 A\"\n"
         "[wiring.load.ignition]\nfrom = \"ign\"\nwhen = [\"always\"]\ncurrent = \"1 A\"\n"
         "[wiring.load.charge_lamp]\nfrom = \"ign\"\nto = \"exciter\"\nbehaviour = \"lamp\"\nwhen = [\"always\"]\n" +
         lamp;
}
const std::string small_lamp = "current = \"0.16 A\"\nat_voltage = \"12.5 V\"\n",
                  large_lamp = "current = \"2 A\"\nat_voltage = \"12.5 V\"\n";

// With the key off the machine's exciter feeds the ignition back through the charge lamp: of the two in series the lamp
// takes nearly all where it is small, and the engine stops; a great one keeps it running. By hand for the great one: a
// coil of 13.5 ohm behind a lamp of some 1.5 ohm at these volts leaves it more than half of 14 V.
TEST(WiringStates, AChargeLampFeedsTheIgnitionBack) {
  const auto small = wired(keyed(small_lamp)), large = wired(keyed(large_lamp));
  EXPECT_LT(volts(small, "ignition", state::off_turning), dead_below_v(small));
  EXPECT_GT(volts(small, "ignition", state::off_turning), 0.3);
  EXPECT_GT(volts(large, "ignition", state::off_turning), 7);
  EXPECT_LT(volts(large, "ignition", state::parked), 0.01);
  EXPECT_GT(volts(small, "ignition", state::driving), 12);
}

// Engine standing, key on: the lamp burns through the field's winding; the machine turning holds its other side up.
TEST(WiringStates, AChargeLampBurnsUntilTheMachineGives) {
  const auto m = wired(keyed(small_lamp));
  EXPECT_GT(volts(m, "charge_lamp", state::stalled), 11);
  EXPECT_LT(volts(m, "charge_lamp", state::driving), 1);
}

std::string pump(const std::string& closed, const std::string& more = "") {
  return "[wiring.switch.pump_relay]\nfrom = \"bus\"\nto = \"pump\"\ncoil_from = \"bus\"\nlimit = \"30 A\"\nclosed = " +
         closed + "\n" + more + "[wiring.load.fuel_pump]\nfrom = \"pump\"\nwhen = [\"always\"]\n";
}

TEST(WiringStates, WhatAControllerDoesWithThePumpIsTold) {
  const auto m = wired(pump("[\"prime and not hit\", \"key and turning and not hit\"]"));
  EXPECT_LT(*m.pump_fed.stalled_v, 0.1);
  EXPECT_LT(*m.pump_fed.hit_v, 0.1);
  EXPECT_GT(*m.pump_fed.cranking_v, 9);
  EXPECT_GT(*m.pump_fed.prime_v, 11);
  const auto by_oil = wired(pump("[\"key and oil-pressure\"]"));
  EXPECT_LT(*by_oil.pump_fed.cranking_v, 0.1);
  EXPECT_FALSE(by_oil.pump_fed.hit_v.has_value());  // nobody said what a crash does
  EXPECT_FALSE(wired("").pump_fed.stalled_v.has_value());
}

// A coil that gets too little does not close: fed behind 100 ohm it sees 85/185 of the volts, under 8 V.
TEST(WiringStates, ARelayWhoseCoilGetsTooLittleStaysOpen) {
  const std::string weak = "[wiring.run.coil_wire]\nfrom = \"bus\"\nto = \"coil\"\nresistance = \"1000 mohm\"\n";
  auto relay = [](const char* pull_in) {
    return "[wiring.switch.pump_relay]\nfrom = \"bus\"\nto = \"pump\"\ncoil_from = \"coil\"\ncoil = \"2 ohm\"\npull_in "
           "= " +
           std::string(pull_in) +
           "\nclosed = [\"key\"]\n[wiring.load.fuel_pump]\nfrom = \"pump\"\nwhen = [\"always\"]\n";
  };
  EXPECT_LT(volts(wired(weak + relay("\"10 V\"")), "fuel_pump", state::driving), 0.1);
  EXPECT_GT(volts(wired(weak + relay("\"6 V\"")), "fuel_pump", state::driving), 11);
}

TEST(WiringStates, EveryStateHasItsOwnWords) {
  for (auto& a : states())
    for (auto& b : states()) EXPECT_EQ(a.told == b.told, a.bits == b.bits) << a.told << ", " << b.told;
}

}  // namespace
