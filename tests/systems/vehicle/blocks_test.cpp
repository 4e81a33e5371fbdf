#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

vehicle::Model plain_car() {
  vehicle::Model m;
  m.mass_kg = 1500;
  m.drag_area_m2 = 0.8;
  m.rolling = 0.013;
  return m;
}

// Gillespie, Fundamentals of Vehicle Dynamics, ch. 4: rolling m g f, drag rho CdA v^2 / 2, grade m g sin; by hand at
// 20 m/s in air of 1.2 kg/m3: 1500 9.80665 0.013 = 191.23 N, 0.5 1.2 0.8 400 = 192 N.
TEST(VehicleBlocks, RoadLoadByHand) {
  const auto m = plain_car();
  auto b = bench<vehicle::System>(m, "vehicle.resistance");
  b.give("road.speed", 20).give("duty.density", 1.2).run();
  EXPECT_NEAR(b.get("road.force"), 383.23, 0.01);
  EXPECT_NEAR(b.get("road.power"), 383.23 * 20, 0.2);
  // 6 % of grade: angle atan(0.06), sin 0.0598922, cos 0.9982048 (adds 880.98 N, takes 0.34 N of the rolling part).
  b.give("duty.grade", 0.06).run();
  EXPECT_NEAR(b.get("road.force"), 192 + 191.23 * 0.9982048 + 1500 * gravity * 0.0598922, 0.05);
}

TEST(VehicleBlocks, AccelerationCountsOnARoadButNotInAPull) {
  const auto m = plain_car();
  auto b = bench<vehicle::System>(m, "vehicle.resistance");
  b.give("road.speed", 20).give("duty.density", 1.2).give("duty.acceleration", 1).give("duty.payload", 100).run();
  const double held = 192 + 1600 * gravity * 0.013;  // Newton: a further 1600 kg x 1 m/s2
  EXPECT_NEAR(b.get("road.force"), held + 1600, 0.01);
  EXPECT_NEAR(b.get("road.held_force"), held, 0.01);
  b.give("duty.pull", 1).run();  // there the car's own acceleration comes out of the surplus, not of the duty
  EXPECT_NEAR(b.get("road.force"), held, 0.01);
}

TEST(VehicleBlocks, PullGainsWhatTheRoadLeaves) {
  const auto m = plain_car();
  auto b = bench<vehicle::System>(m, "vehicle.travel");
  b.give("road.speed", 12).give("road.held_force", 400).give("driveline.pull_force", 5125).run();
  EXPECT_NEAR(b.rate("vehicle.pull_speed"), 3.0, 1e-12);  // (5125 - 400) / (1500 x 1.05)
  EXPECT_EQ(b.rate("vehicle.distance"), 12);
}

// The same against a constant-force start from the trace itself: distance is the integral of speed.
TEST(VehicleBlocks, DistanceIsTheIntegralOfSpeed) {
  Drive d(hand_car(), "full-throttle");
  EXPECT_NEAR(d.last("vehicle.distance"), d.integral("road.speed"), 0.002 * d.last("vehicle.distance"));
  EXPECT_GT(d.last("road.speed"), 60 * mph);
  d.run("commute");
  EXPECT_NEAR(d.last("vehicle.distance"), d.integral("road.speed"), 0.002 * d.last("vehicle.distance"));
}

// Density by the gas law at 35 degC, 101 325 Pa: 101325 / (287.05 x 308.15) = 1.1455 kg/m3. 3700 lb = 1678.3 kg.
// Rolling 0.013 x 1678.3 x 9.80665 = 213.96 N; drag 0.5 x 1.1455 x 0.95 x 29.0576^2 = 459.4 N.
TEST(VehicleBlocks, CruiseOfTheHandCarByHand) {
  Drive d(hand_car(), "cruise");
  EXPECT_NEAR(d.last("road.force"), 673.4, 1.0);
  EXPECT_NEAR(d.last("road.power"), 673.4 * 65 * mph, 30);
}

// Laden figures stand as those of the car as driven where nobody gave them, and the port says which it is.
TEST(VehicleBlocks, StandsOnItsAxlesAsDrivenAndLaden) {
  auto told = [](const std::string& change, std::string_view port) {
    const auto m = resolved<vehicle::System>(hand_car(change)).model;
    return bench<vehicle::System>(m, "vehicle.balance").run().get(port);
  };
  EXPECT_NEAR(told("", "vehicle.mass"), 3700 * pound, 1e-9);
  EXPECT_NEAR(told("", "vehicle.wheelbase"), 110 * inch, 1e-12);
  EXPECT_EQ(told("", "vehicle.laden"), 0);
  EXPECT_NEAR(told("", "vehicle.laden_mass"), 3700 * pound, 1e-9);
  const std::string laden = "[vehicle]\nladen_weight = \"4600 lb\"\nladen_front_share = 0.48\n";
  EXPECT_EQ(told(laden, "vehicle.laden"), 1);
  EXPECT_NEAR(told(laden, "vehicle.laden_mass"), 4600 * pound, 1e-9);
  EXPECT_DOUBLE_EQ(told(laden, "vehicle.laden_front_share"), 0.48);
  EXPECT_NEAR(told(laden, "vehicle.laden_centre_height"), 21 * inch, 1e-12);
}

TEST(VehicleBlocks, WhatTheBalanceLacksSilencesTheBalanceAlone) {
  const Build wanting = hand_car("[vehicle]\nladen_weight = \"4600 lb\"\n");
  const Car car(wanting);
  EXPECT_TRUE(car.graph().unavailable.at("vehicle.mass").contains("vehicle.laden_front_share"));
  EXPECT_FALSE(car.graph().unavailable.contains("road.force"));
  const Build lighter = faulty_car("[vehicle]\nladen_weight = \"3000 lb\"\nladen_front_share = 0.5\n");
  EXPECT_FALSE(Car(lighter).faults().all().empty());
}

// Aircraft Weight and Balance Handbook, FAA-H-8083-1, chapter 2, on finding a centre of gravity (from memory): 100 lb
// at 50 in, 100 lb at 90 in and 200 lb at 150 in balance 110 in from the datum. Ten times that here, the datum the
// front axle.
TEST(VehicleBlocks, MomentsAboutADatumByTheHandbook) {
  const double wheelbase = 200;
  vehicle::Balance b{1000, 1 - 50 / wheelbase, 20};
  b = with_part(b, wheelbase, 1000, 90, 30);
  b = with_part(b, wheelbase, 2000, 150, 40);
  EXPECT_NEAR(b.mass_kg, 4000, 1e-9);
  EXPECT_NEAR((1 - b.front_share) * wheelbase, 110, 1e-9);
  EXPECT_NEAR(b.height_m, (1000 * 20 + 1000 * 30 + 2000 * 40) / 4000.0, 1e-9);  // the same moments about the road
  // What goes in and out again leaves the car as it was.
  b = with_part(with_part(b, wheelbase, 300, -12, 5), wheelbase, -300, -12, 5);
  EXPECT_NEAR((1 - b.front_share) * wheelbase, 110, 1e-9);
  EXPECT_NEAR(b.height_m, 32.5, 1e-9);
}

TEST(VehicleBlocks, PartsThatCannotBe) {
  EXPECT_TRUE(Car(faulty_car("[vehicle.part.all]\nmoved = \"out\"\nmass = \"3900 lb\"\nbehind = \"50 in\"\n"))
                  .faults()
                  .any_fault());
  EXPECT_TRUE(Car(faulty_car("[vehicle.part.tail]\nmass = \"2000 lb\"\nbehind = \"399 in\"\n")).faults().any_fault());
}

}  // namespace
