#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const char* const running_duties[] = {"hot-idle", "parade", "commute", "cruise", "grade", "night-rain", "warm-up"};

// Kirchhoff's current law over the whole car: what the machine makes goes into loads and battery, at every row.
TEST(WiringBlocks, CurrentsBalance) {
  Drive d(hand_car());
  for (auto duty : running_duties) {
    d.run(duty);
    for (std::size_t r = 0; r < d.trace().rows(); ++r) {
      EXPECT_NEAR(d.at(r, "alternator.current"), d.at(r, "load.current") + d.at(r, "battery.current"), 2e-6)
          << duty << " row " << r;
    }
  }
  d.run("cold-crank");
  for (std::size_t r = 0; r < d.trace().rows(); ++r)
    EXPECT_NEAR(-d.at(r, "battery.current"), d.at(r, "load.current") + d.at(r, "starter.current"), 2e-6);
}

TEST(WiringBlocks, TheMachineNeverGivesMoreThanItCan) {
  Drive d(hand_car());
  for (auto duty : running_duties) {
    d.run(duty);
    for (std::size_t r = 0; r < d.trace().rows(); ++r) {
      EXPECT_LE(d.at(r, "alternator.current"), d.at(r, "alternator.available") * (1 + 1e-9) + 1e-9) << duty;
      EXPECT_GE(d.at(r, "alternator.current"), 0);
    }
  }
}

// The regulated point stands at the set-point, less 1 mV an ampere of regulation; the others differ by their drops.
TEST(WiringBlocks, SenseDecidesWhichPointIsHeld) {
  const std::pair<const char*, const char*> places[] = {
      {"own stud", "alternator.voltage"}, {"bus", "bus.voltage"}, {"battery", "battery.voltage"}};
  for (auto [sense, port] : places) {
    Drive d(hand_car("[wiring]\nsense = \"" + std::string(sense) + "\"\n"), "cruise");
    const double droop = 0.001 * d.last("alternator.current");
    EXPECT_NEAR(d.last(port), d.last("regulator.voltage") - droop, 0.02) << sense;
    EXPECT_LT(d.last("alternator.current"), d.last("alternator.available")) << "else nothing is held";
  }
}

// Ohm's law along the hand car's charge lead and block ground, from the model's own resistances at the end of a cruise.
TEST(WiringBlocks, DropsByOhm) {
  Drive d(hand_car(), "cruise");
  const auto& m = d.car().model<wiring::Model>();
  double block = 0, charge = 0;
  for (auto& c : m.runs) {
    if (c.place == "block_ground") block = c.resistance_ohm;
    if (c.place == "charge") charge = c.resistance_ohm;
  }
  const double a = d.last("alternator.current");
  EXPECT_NEAR(d.last("ground.drop"), a * block, 1e-6);
  EXPECT_NEAR(d.last("alternator.voltage"), a * (charge + block) + d.last("battery.voltage"), 1e-6);
}

// A load is off where none of its conditions is met, so that standing it is the clock alone that draws.
TEST(WiringBlocks, LoadsFollowTheirConditions) {
  Drive d(hand_car(), "parked");
  EXPECT_NEAR(d.first("load.current"), 0.018, 1e-6);
  EXPECT_NEAR(d.first("battery.current"), -0.018, 1e-6);
  d.run("cold-crank");
  // Memory, ignition, and the injection's 81 W, of which 22 mohm of its feed at 8 A take 0.18 V.
  const double bus = d.first("bus.voltage");
  EXPECT_NEAR(d.first("load.current"), 0.018 + 4 * bus / 13.5 + 81 / (bus - 0.18), 0.15);
}

TEST(WiringBlocks, WithoutAirConditioningItsLoadsStayOff) {
  Drive with(hand_car(), "hot-idle"), without(hand_car("[air_conditioning]\nfitted = false\n"), "hot-idle");
  EXPECT_GT(with.first("load.current"), without.first("load.current") + 10);  // clutch and blower, 13 A and a fan
}

// A load whose two ends were named the other way round uses its current all the same: it must not count as a source.
TEST(WiringBlocks, ALoadNamedBackwardsStillUsesCurrent) {
  Drive right(hand_car(), "night-rain"),
      swapped(hand_car("[wiring.load.headlamps]\nfrom = \"body\"\nto = \"bus\"\n"), "night-rain");
  EXPECT_NEAR(swapped.last("load.current"), right.last("load.current"), 1e-3);
  EXPECT_NEAR(swapped.last("battery.current"), right.last("battery.current"), 1e-3);
}

// The electrical energy balance: what the machine gives at its stud is what loads, wires and battery take; here that
// no power comes from nowhere: loads take no more than machine and battery give.
TEST(WiringBlocks, NoPowerFromNowhere) {
  Drive d(hand_car(), "night-rain");
  for (std::size_t r = 0; r < d.trace().rows(); ++r) {
    const double made = d.at(r, "alternator.voltage") * d.at(r, "alternator.current");
    const double taken = d.at(r, "bus.voltage") * d.at(r, "load.current") * 0.99 +
                         d.at(r, "battery.voltage") * d.at(r, "battery.current");
    EXPECT_GE(made, taken - 1e-6);
  }
}

// What is left over, and at which node, in the words of the build.
TEST(WiringBlocks, TroubleTellsWhatIsLeftOverAndWhere) {
  const Car car(hand_car());
  const auto& m = *static_cast<const wiring::Model*>(
      std::find_if(car.systems().begin(), car.systems().end(), [](auto& s) { return s.key == "wiring"; })->model);
  physics::dc::Summary s{
      .outcome = physics::dc::Outcome::not_converged, .reason = "no balance", .worst_residual_a = 12.5};
  s.worst_node = m.n_bus;
  EXPECT_EQ(wiring::trouble(m, s),
            "the car's electrical network (wiring) has no solution: no balance; 12.5 A are left over at bus");
  s.outcome = physics::dc::Outcome::converged;
  EXPECT_EQ(wiring::trouble(m, s), "");
}

}  // namespace
