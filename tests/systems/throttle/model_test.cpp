#include "systems/rig.hpp"
#include "systems/throttle/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

throttle::Model of(const std::string& change) { return resolved<throttle::System>(hand_car(change)).model; }

TEST(ThrottleModel, ACableOpensByItsPull) {
  const auto m = of(throttle_cable());
  ASSERT_TRUE(m.told());
  EXPECT_NEAR(m.opening_rad(20 * degree).value() / degree, 77.95, 0.05);  // 1.0945 of the 1.0950 in
  EXPECT_NEAR(m.opened_rad().value() / degree, 77.95, 0.05);
  // d opening/d pedal at the start, by hand: 3.2/(0.87 sin 129 deg).
  EXPECT_NEAR(m.ratio(0).value(), 3.2 / (0.87 * std::sin(129 * degree)), 1e-4);
}

// A rod with both arms square and its far pivot moved away by d opens the lever by asin(d/arm) nearly: the rod, 12 in
// long, turns by less than it matters.
TEST(ThrottleModel, ARodFromTheBodyIsPulledOpenByTheEngine) {
  const auto m =
      of("[throttle]\nopens = \"78 deg\"\n[throttle.pedal]\nturns = \"20 deg\"\n[throttle.link.rod]\nby = "
         "\"rod\"\nto_engine = true\nroll = \"0.3 in\"\nslope = \"90 deg\"\narm = \"1.5 in\"\nstart = \"90 "
         "deg\"\ndriven_arm = \"1.5 in\"\ndriven_start = \"90 deg\"\napart = \"12 in\"\n");
  EXPECT_NEAR(m.opening_rad(0).value(), 0, 1e-9);
  EXPECT_NEAR(m.opening_rad(0, {.roll = 1}).value(), std::asin(0.3 / 1.5), 2e-3);
  EXPECT_NEAR(m.opening_rad(0, {.roll = -1}).value(), -std::asin(0.3 / 1.5), 2e-3);
  // Along an upright line a lift is a pull of its own length.
  EXPECT_NEAR(m.opening_rad(0, {.lift_m = 0.3 * inch}).value(), m.opening_rad(0, {.roll = 1}).value(), 1e-9);
}

// Two links and a bell-crank: two parallelograms turn the throttle as the pedal turns.
TEST(ThrottleModel, ABellCrankPassesItsTurnOn) {
  const auto link = [](const std::string& name, double arm) {
    const std::string length = std::to_string(arm) + " in\"\n";
    return "[throttle.link." + name + "]\nby = \"rod\"\nto_engine = false\narm = \"" + length +
           "start = \"70 deg\"\ndriven_arm = \"" + length + "driven_start = \"110 deg\"\napart = \"10 in\"\n";
  };
  const auto m =
      of("[throttle]\nopens = \"40 deg\"\n[throttle.pedal]\nturns = \"40 deg\"\n" + link("a", 2) + link("b", 3.5));
  EXPECT_NEAR(m.opening_rad(33 * degree).value() / degree, 33, 1e-6);
  EXPECT_NEAR(m.pedal_at_open_rad() / degree, 40, 1e-6);
}

// 0.87 in of lever take no more than 0.87 (1 - cos 129 deg) in of pull: an engine lifted by more than that along an
// upright cable leaves the linkage no place to stand in, and that is no figure of 0.
TEST(ThrottleModel, OutOfReachIsNoFigure) {
  const auto m = of(throttle_cable("slack = \"0 in\"\nto_engine = true\nroll = \"0 in\"\nslope = \"90 deg\"\n"));
  const double most = 0.87 * (1 - std::cos(129 * degree)) * inch;
  EXPECT_TRUE(m.opened_rad({.lift_m = 0.99 * most}));
  EXPECT_FALSE(m.opened_rad({.lift_m = 1.01 * most}));
  EXPECT_FALSE(m.ratio(0, {.lift_m = 1.01 * most}));
}

TEST(ThrottleModel, WhatIsMissingIsNamed) {
  EXPECT_EQ(of(throttle_cable("to_engine = true\nslack = \"0 in\"\n")).missing,
            (std::vector<std::string>{"throttle.link.cable.roll"}));
  EXPECT_EQ(of(throttle_cable("to_engine = false\n")).missing, (std::vector<std::string>{"throttle.link.cable.slack"}));
}

TEST(ThrottleModel, WhatCannotBeIsAFault) {
  const std::string still = "to_engine = false\nslack = \"0 in\"\n";
  EXPECT_TRUE(Car(faulty_car(throttle_cable(still + "pushes = true\n"))).faults().any_fault());
  EXPECT_TRUE(Car(faulty_car(throttle_cable(still + "rod = \"9 in\"\n"))).faults().any_fault());
  EXPECT_TRUE(Car(faulty_car("[throttle]\nopens = \"78 deg\"\n[throttle.pedal]\nturns = \"20 deg\"\n[throttle.link."
                             "r]\nby = \"rod\"\nto_engine = false\narm = \"2 in\"\nstart = \"90 deg\"\ndriven_arm = "
                             "\"2 in\"\ndriven_start = \"90 deg\"\napart = \"12 in\"\nrod = \"20 in\"\n"))
                  .faults()
                  .any_fault());
}

}  // namespace
