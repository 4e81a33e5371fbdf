#include <algorithm>

#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

constexpr double heating_value = 43.5e6;  // J/kg, lower, gasoline: Heywood, Table D.4, 42 to 44 MJ/kg (from memory)

engine::Model hand_engine(const std::string& change = "") { return resolved<engine::System>(hand_car(change)).model; }

// 4.2 lb/h = 4.2 x 0.45359237 / 3600 = 5.2919e-4 kg/s, times 43.5 MJ/kg = 23.02 kW at idle without load.
TEST(EngineModel, IdleFuelByHand) {
  const auto m = hand_engine();
  EXPECT_NEAR(engine::fuel_heat_w(m, 750 * rpm, 0), 23.02e3, 10);
  EXPECT_NEAR(engine::fuel_heat_w(m, 1500 * rpm, 0), 46.04e3, 20);  // friction work goes with turns
}

// Where nobody gave it: 0.6 lb/h a litre; 302 in3 = 4.949 L: 2.969 lb/h = 16.27 kW.
TEST(EngineModel, IdleFuelFromDisplacement) {
  Build b = hand_car();
  std::get<engine::Input>(b.inputs).idle_fuel.reset();
  const auto r = resolved<engine::System>(b);
  EXPECT_TRUE(r.missing.empty());
  EXPECT_NEAR(r.model.fuel.idle_heat_w, 16.27e3, 20);
}

// The Willans line must give back the consumption it was told, at full power: 0.5 lb/(hp h).
TEST(EngineModel, LinePassesThroughTheStatedConsumption) {
  const auto m = hand_engine();
  const double fuel_kg_s = engine::fuel_heat_w(m, m.peak_speed_rad_s, m.peak_power_w) / heating_value;
  EXPECT_NEAR(fuel_kg_s / m.peak_power_w, 0.5 * pound / (horsepower * hour), 1e-11);
}

// P = T n / 5252 hp: 250 lb-ft at 4500 rpm are 214.2 hp, 195 at 5500 are 204.2; the peak lies between and not far
// above.
TEST(EngineModel, PeakPowerOfTheCurve) {
  const auto m = hand_engine();
  EXPECT_GE(m.peak_power_w / horsepower, 214.2 - 0.1);
  EXPECT_LE(m.peak_power_w / horsepower, 220);
  EXPECT_GT(m.peak_speed_rad_s, 4400 * rpm);
  EXPECT_LT(m.peak_speed_rad_s, 5500 * rpm);
}

// First law: what is not shaft power, coolant, oil or bay heat leaves with the exhaust, and that is never negative.
// Heywood, Table 12.1 (from memory): exhaust and the rest 34 to 45 % and more at full power; turning fast without load
// all that does not go into coolant, oil and bay leaves by the exhaust.
TEST(EngineModel, WhatIsLeftForTheExhaustIsPositiveEverywhere) {
  const auto m = hand_engine();
  for (double n = 600; n <= 5500; n += 100) {
    const double most = m.torque->at(n * rpm).value * n * rpm;
    for (double share = 0; share <= 1; share += 0.1) {
      const double power = share * most, fuel = engine::fuel_heat_w(m, n * rpm, power);
      const double rest = fuel * (1 - m.oil_share - m.bay_share) - engine::coolant_heat_w(m, n * rpm, power) - power;
      EXPECT_GT(rest / fuel, 0.3) << n << " rpm at " << share;
      EXPECT_LT(rest / fuel, share >= 0.5 ? 0.6 : 0.85);
    }
  }
}

// Shares of which more than the fuel's heat would come are not figures of an engine.
TEST(EngineModel, SharesThatMakeMoreThanTheFuelAreRefused) {
  const auto r = resolved<engine::System>(
      faulty_car("[engine]\nbsfc = \"0.34 lb/(hp h)\"\ncoolant_share = 0.5\noil_share = 0.15\nbay_share = 0.2\n"));
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_EQ(r.missing[0], "engine.bsfc");
}

// `metal_rise` is what it says: at a third of full power the metal stands so far above the coolant.
TEST(EngineModel, MetalRiseIsGivenBack) {
  const auto m = hand_engine();
  const double heat = engine::coolant_heat_w(m, 0.6 * m.peak_speed_rad_s, m.peak_power_w / 3);
  EXPECT_NEAR(heat / m.metal_conductance_w_k, 18, 1e-9);
}

// 330 lb of iron at 460 J/(kg K): 149.69 x 460 = 68.86 kJ/K.
TEST(EngineModel, HeatCapacities) {
  const auto m = hand_engine();
  EXPECT_NEAR(m.metal_j_k, 68.86e3, 10);
  EXPECT_NEAR(m.oil_j_k, 5 * 1750, 1e-9);
}

TEST(EngineModel, ACurveOfTooManyPointsIsSaidNotDropped) {
  std::string points;
  for (int i = 0; i < 40; ++i)
    points += (i ? ", " : "") + ("[\"" + std::to_string(800 + 100 * i) + " rpm\", \"250 lb-ft\"]");
  const auto r = resolved<engine::System>(faulty_car("[engine]\ntorque_curve = [" + points + "]\n"));
  ASSERT_FALSE(r.missing.empty());
  EXPECT_NE(r.missing[0].find("engine.torque_curve"), std::string::npos);
}

TEST(EngineModel, NamesWhatItLacks) {
  Build b = hand_car();
  auto& in = std::get<engine::Input>(b.inputs);
  in.displacement.reset();
  in.red_line.reset();
  EXPECT_EQ(resolved<engine::System>(b).missing, (std::vector<std::string>{"engine.red_line", "engine.displacement"}));
}

// 285 lb-ft from 309 cc would be 4 pi x 386 N m / 309 cm3 = 157 bar (Heywood eq. 2.19): the size was meant in in3.
TEST(EngineModel, TorqueThatNoEngineOfItsSizeGivesIsRefused) {
  for (auto [size, faults] : {std::pair{"309 cc", 1}, {"309 in3", 0}}) {
    const auto build = faulty_car("[engine]\ndisplacement = \"" + std::string(size) + "\"\n");
    const auto r = resolved<engine::System>(build);
    EXPECT_EQ(std::count(r.missing.begin(), r.missing.end(), "engine.displacement"), faults) << size;
  }
}

}  // namespace
