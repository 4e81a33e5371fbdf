#include "systems/brakes/heat.hpp"

#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(BrakesHeat, OneStopBalancesWithItsEnergy) {
  // Nothing shed: the metal of four brakes takes the work of the brakes' force over the way, less the engine's part.
  const std::string still = "standing = \"0.5 W/K\"\nmoving = \"1 W/K\"\nsurface = \"0 m2\"\n";
  Drive d(hand_car("[brakes.front.heat]\n" + still + "[brakes.rear.heat]\n" + still), "panic-stop");
  const auto m = hand_brakes();
  const double front =
      2 * m.front.heat.capacity_j_k * (d.last("brakes.front_temperature") - d.first("brakes.front_temperature"));
  const double rear =
      2 * m.rear.heat.capacity_j_k * (d.last("brakes.rear_temperature") - d.first("brakes.rear_temperature"));
  // 3700 lb from 60 mph: 604 kJ, of which air, tyres and engine take some.
  const double energy = 0.5 * 3700 * pound * std::pow(60 * mph, 2);
  EXPECT_LT(front + rear, energy);
  EXPECT_GT(front + rear, 0.85 * energy);
}

TEST(BrakesHeat, HeldHillAgainstTheClosedForm) {
  auto m = hand_brakes("[brakes.front.heat]\nsurface = \"0 m2\"\n");
  Bench b = bench<brakes::System>(m, "brakes.heat");
  b.give("duty.ambient", 293.15).give("brakes.front_temperature", 293.15).give("brakes.front_fluid", 293.15);
  b.give("brakes.rear_temperature", 293.15).give("brakes.rear_fluid", 293.15);
  b.give("brakes.front_force", 800).give("brakes.rear_force", 200).give("driveline.overrun_force", 250);
  b.give("road.speed", 80 / 3.6).run();
  // 0.75 of 800 N at 22.2 m/s over two rotors
  EXPECT_NEAR(b.rate("brakes.front_temperature"), 0.75 * 800 * 80 / 3.6 / 2 / m.front.heat.capacity_j_k, 1e-9);
  EXPECT_EQ(b.rate("brakes.front_fluid"), 0);
  // Where it settles: power over conductance above the air.
  const double rise = 0.75 * 800 * 80 / 3.6 / 2 / physics::rotor_conductance_w_k(m.front.heat.cooling, 80 / 3.6).value;
  b.give("brakes.front_temperature", 293.15 + rise).run();
  EXPECT_NEAR(b.rate("brakes.front_temperature"), 0, 1e-9);
  EXPECT_NEAR(b.rate("brakes.front_fluid"), m.front.heat.fluid_share * rise / 120, 1e-9);
}

TEST(BrakesHeat, FrictionFallsWithHeat) {
  const brakes::HeatModel usual;
  EXPECT_EQ(brakes::hot_friction(usual, 400).share, 1);
  EXPECT_NEAR(brakes::hot_friction(usual, 400 + zero_c).share, 0.75, 1e-9);
  EXPECT_NEAR(brakes::hot_friction(usual, 900).share, 0.5, 1e-9);
  const auto own =
      hand_brakes("[brakes.front.heat]\nfade = [[\"20 degC\", 1.0], [\"300 degC\", 1.1], [\"500 degC\", 0.9]]\n");
  EXPECT_NEAR(brakes::hot_friction(own.front.heat, 300 + zero_c).share, 1.1, 1e-9);
}

TEST(BrakesHeat, BoilingByGradeAndWater) {  // 49 CFR 571.116: DOT 4 wet 155 degC at 3.7 %
  auto m = hand_brakes();
  m.water = {0.037, {}};
  EXPECT_NEAR(brakes::fluid_boils_k(m) - zero_c, 155, 1e-6);
  m.water.path = "brakes.fill.water";
  EXPECT_TRUE(std::isnan(brakes::fluid_boils_k(m)));
}

}  // namespace
