#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

engine::Model hand_engine() { return resolved<engine::System>(hand_car()).model; }

TEST(EngineBlocks, NeverBelowIdleWhileItRunsAndStillWhenOff) {
  const auto m = hand_engine();
  auto b = bench<engine::System>(m, "engine.turning");
  b.give("duty.running", 1).give("driveline.input_speed", 300 * rpm);
  EXPECT_NEAR(b.run().get("engine.speed") / rpm, 750, 1e-9);
  EXPECT_NEAR(b.give("air_conditioning.on", 1).run().get("engine.speed") / rpm, 800, 1e-9);
  EXPECT_NEAR(b.give("driveline.input_speed", 2000 * rpm).run().get("engine.speed") / rpm, 2000, 1e-9);
  EXPECT_EQ(b.give("duty.running", 0).run().get("engine.speed"), 0);
}

// Thin air takes torque in proportion to its density: at 5000 ft and 25 degC (84.3 kPa) 84.3/101.325 = 0.832 of it.
TEST(EngineBlocks, FullTorqueFollowsAirDensity) {
  const auto m = hand_engine();
  auto b = bench<engine::System>(m, "engine.full");
  b.give("engine.speed", 2500 * rpm).give("duty.density", 1.184).run();
  EXPECT_NEAR(b.get("engine.full_torque") / lb_ft, 285, 0.01);
  EXPECT_NEAR(b.get("engine.full_power") / horsepower, 285.0 * 2500 / 5252.1, 0.1);  // hp = lb-ft rpm / 5252
  EXPECT_NEAR(b.give("duty.density", 1.184 * 0.832).run().get("engine.full_torque") / lb_ft, 285 * 0.832, 0.01);
}

TEST(EngineBlocks, PowerIsRoadPlusAccessoriesAndFullInAPull) {
  const auto m = hand_engine();
  auto b = bench<engine::System>(m, "engine.work");
  b.give("engine.speed", 2000 * rpm)
      .give("driveline.power", 20e3)
      .give("accessories.power", 3e3)
      .give("duty.running", 1);
  EXPECT_EQ(b.run().get("engine.power"), 23e3);
  // Shares of the fuel: 23.02 x 2000 / 750 + slope x 23 kW; here only that they are shares of one and the same heat.
  const double fuel = b.get("engine.fuel_heat");
  EXPECT_NEAR(b.get("engine.coolant_heat"), engine::coolant_heat_w(m, 2000 * rpm, 23e3), 1e-6);
  EXPECT_NEAR(b.get("engine.oil_heat"), 0.03 * fuel, 1e-6);
  EXPECT_NEAR(b.get("engine.bay_heat"), 0.04 * fuel, 1e-6);
  b.give("duty.pull", 1).give("engine.full_power", 90e3);
  EXPECT_EQ(b.run().get("engine.power"), 90e3);
  b.give("duty.running", 0).run();
  for (auto port : {"engine.power", "engine.fuel_heat", "engine.coolant_heat", "engine.oil_heat", "engine.bay_heat"})
    EXPECT_EQ(b.get(port), 0) << port;
}

TEST(EngineBlocks, AMeasuredHeatCurveTakesThePlaceOfTheShare) {
  const auto m =
      resolved<engine::System>(hand_car("[engine]\ncoolant_heat = [[\"0 hp\", \"5 kW\"], [\"100 hp\", \"65 kW\"]]\n"))
          .model;
  auto b = bench<engine::System>(m, "engine.work");
  b.give("duty.running", 1).give("engine.speed", 2000 * rpm).give("driveline.power", 50 * horsepower).run();
  EXPECT_NEAR(b.get("engine.coolant_heat"), 35e3, 1);  // half way along a straight line
}

// First law over the metal and the oil: what comes in and does not leave is stored, to the watt.
TEST(EngineBlocks, MetalAndOilKeepTheBalance) {
  const auto m = hand_engine();
  auto b = bench<engine::System>(m, "engine.heat");
  const double coolant = 363, metal = 385, oil = 372, air = 310, bay = 340, speed = 12;
  b.give("duty.running", 1)
      .give("engine.coolant_heat", 15e3)
      .give("engine.oil_heat", 2e3)
      .give("cooling.engine_temperature", coolant);
  b.give("engine.metal_temperature", metal)
      .give("engine.oil_temperature", oil)
      .give("duty.ambient", air)
      .give("road.speed", speed);
  b.give("bay.temperature", bay).run();
  const double stored = m.metal_j_k * b.rate("engine.metal_temperature") + m.oil_j_k * b.rate("engine.oil_temperature");
  const double sump = (15 + 2.5 * speed) * (oil - air);  // W: the block's own figures for a sump in the wind
  EXPECT_NEAR(17e3, stored + b.get("engine.heat_to_coolant") + b.get("engine.surface_heat") + sump, 1e-6);
  EXPECT_GT(b.get("engine.surface_heat"), 0);
}

TEST(EngineBlocks, HeatRunsDownhill) {
  const auto m = hand_engine();
  auto b = bench<engine::System>(m, "engine.heat");
  for (auto port : {"cooling.engine_temperature", "engine.metal_temperature", "engine.oil_temperature", "duty.ambient",
                    "bay.temperature"})
    b.give(port, 300);
  b.run();  // all at one temperature: nothing moves
  EXPECT_EQ(b.rate("engine.metal_temperature"), 0);
  EXPECT_EQ(b.rate("engine.oil_temperature"), 0);
  b.give("engine.metal_temperature", 350).run();
  EXPECT_GT(b.get("engine.heat_to_coolant"), 0);
  EXPECT_LT(b.rate("engine.metal_temperature"), 0);
  EXPECT_GT(b.rate("engine.oil_temperature"), 0);
  const double still = b.get("engine.heat_to_coolant");
  EXPECT_GT(b.give("duty.running", 1).run().get("engine.heat_to_coolant"), 3 * still);  // the pump stirs it
}

}  // namespace
