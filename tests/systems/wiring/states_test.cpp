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
  EXPECT_GT(*by_oil.pump_fed.hit_v, 11);  // what is drawn tells, and nothing drawn stops it in a crash
  const auto by_key = wired(pump("[\"key\"]"));
  EXPECT_GT(*by_key.pump_fed.stalled_v, 11);
  EXPECT_FALSE(wired(pump("[\"running\"]")).pump_fed.stalled_v.has_value());  // that only says when it draws
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

// The coil's node hangs on the charge lamp alone once the key is off, and on the switch while it is on.
TEST(WiringStates, WhatIsFedBackwardsIsToldWithItsWay) {
  const auto m = wired(keyed(large_lamp));
  const auto off = fed_back(m, run_state(m, state::off_turning.bits));
  ASSERT_EQ(off.size(), 1u);
  EXPECT_EQ(m.loads[off[0].load].wire.place, "ignition");
  ASSERT_EQ(off[0].through.size(), 1u);
  EXPECT_EQ(m.loads[off[0].through[0]].wire.place, "charge_lamp");
  EXPECT_TRUE(fed_back(m, run_state(m, state::driving.bits)).empty());
  EXPECT_TRUE(fed_back(m, run_state(m, state::parked.bits)).empty());
}

// A diode in the lamp's wire lets the lamp burn and nothing come back.
TEST(WiringStates, ADiodeEndsIt) {
  std::string with_diode = keyed(large_lamp);
  const std::string from = "[wiring.load.charge_lamp]\nfrom = \"ign\"";
  ASSERT_NE(with_diode.find(from), std::string::npos);
  with_diode.replace(with_diode.find(from), from.size(), "[wiring.load.charge_lamp]\nfrom = \"lamp\"");
  with_diode += "[wiring.run.diode]\nfrom = \"ign\"\nto = \"lamp\"\nresistance = \"10 mohm\"\none_way = true\n";
  const auto m = wired(with_diode);
  EXPECT_TRUE(fed_back(m, run_state(m, state::off_turning.bits)).empty());
  EXPECT_LT(volts(m, "ignition", state::off_turning), 0.05);
  EXPECT_NEAR(volts(m, "charge_lamp", state::stalled), volts(wired(keyed(large_lamp)), "charge_lamp", state::stalled),
              0.7);
}

// The starter draws some 150 A through 10 mohm of battery: all else loses more than a volt, unless a neutral switch
// keeps the solenoid from being fed.
TEST(WiringStates, AStarterWhoseSolenoidIsDeadDrawsNothing) {
  const std::string solenoid =
      "[wiring.switch.neutral]\nfrom = \"bus\"\nto = \"start\"\nclosed = [\"start and not in-gear\"]\nlimit = \"30 "
      "A\"\n"
      "[wiring.load.starter_solenoid]\nfrom = \"start\"\nto = \"block\"\nwhen = [\"always\"]\ncurrent = \"8 A\"\n";
  const auto m = wired(keyed(small_lamp) + solenoid);
  EXPECT_LT(volts(m, "starter_solenoid", state::cranked_in_gear), 0.05);
  EXPECT_GT(volts(m, "ignition", state::cranked_in_gear), volts(m, "ignition", state::cranked) + 1);
  EXPECT_NEAR(volts(m, "ignition", state::cranked_in_gear), volts(m, "ignition", state::stalled), 0.1);
}

TEST(WiringStates, EveryStateHasItsOwnWords) {
  for (auto& a : states())
    for (auto& b : states()) EXPECT_EQ(a.told == b.told, a.bits == b.bits) << a.told << ", " << b.told;
}

}  // namespace
