#include "physics/refrigerant.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

constexpr double sea = 101325, psi = 6894.757293168;

air_conditioning::Model plain() {
  return resolved<air_conditioning::System>(
             hand_car("[air_conditioning.condenser]\neffectiveness = { value = 0.65, from = \"measured\" }\n"))
      .model;
}

// 46 degC before it, 6.5 kW, 0.349 kW/K: 46 + 6.5/(0.65 x 0.349) = 74.65 degC, about 326 psi by gauge (trade's table:
// 70 degC 293, 80 degC 367).
TEST(AirConditioningRequirements, HighSideByHand) {
  const auto m = plain();
  auto b = bench<air_conditioning::System>(m, "air_conditioning.high_side");
  b.give("air_conditioning.on", 1)
      .give("air_conditioning.condenser_heat", 6500)
      .give("air.capacity_rate", 349)
      .give("air.face_speed", 1)
      .give("radiator.air_in", zero_c + 46 + 6500.0 / 349)
      .give("duty.pressure", sea)
      .run();
  EXPECT_NEAR(b.get("air_conditioning.air_in"), zero_c + 46, 1e-9);
  EXPECT_NEAR(b.get("air_conditioning.condensing"), zero_c + 74.65, 0.02);
  EXPECT_NEAR(b.get("air_conditioning.high_side") / psi, 326, 3);
}

// No fan: the pressure rises to the switch and stays there, and the finding tells of it.
TEST(AirConditioningRequirements, TheSwitchEndsTheClimb) {
  const auto m = plain();
  auto b = bench<air_conditioning::System>(m, "air_conditioning.high_side");
  b.give("air_conditioning.on", 1)
      .give("air_conditioning.condenser_heat", 6500)
      .give("air.capacity_rate", 20)
      .give("radiator.air_in", zero_c + 46 + 6500.0 / 20)
      .give("duty.pressure", sea)
      .run();
  EXPECT_NEAR(b.get("air_conditioning.high_side") / psi, 430, 0.5);
}

// Against the travel the condenser breathes what the radiator has warmed.
TEST(AirConditioningRequirements, ReversedAirComesFromTheRadiator) {
  const auto m = plain();
  auto b = bench<air_conditioning::System>(m, "air_conditioning.high_side");
  b.give("air_conditioning.on", 1)
      .give("air_conditioning.condenser_heat", 6500)
      .give("air.capacity_rate", 349)
      .give("air.face_speed", -1)
      .give("radiator.air_in", zero_c + 60)
      .give("radiator.air_out", zero_c + 80)
      .give("duty.pressure", sea)
      .run();
  EXPECT_NEAR(b.get("air_conditioning.air_in"), zero_c + 80, 1e-9);
}

TEST(AirConditioningRequirements, MoreAirLowersThePressure) {
  const Judging much(hand_car("[cooling.fan.left]\nflow = \"1100 cfm\"\n[cooling.fan.right]\nflow = \"1100 cfm\"\n"),
                     "hot-idle"),
      little(hand_car("[cooling.fan.left]\nflow = \"300 cfm\"\n[cooling.fan.right]\nflow = \"300 cfm\"\n"), "hot-idle");
  EXPECT_GT(*little.one("air_conditioning.high-side", "hot-idle").verdict.predicted,
            *much.one("air_conditioning.high-side", "hot-idle").verdict.predicted + 50 * psi);
}

TEST(AirConditioningRequirements, SilentWhereItIsNotFitted) {
  const Judging j(hand_car("[air_conditioning]\nfitted = false\n"), "hot-idle");
  EXPECT_TRUE(j.of("air_conditioning.high-side").empty());
  EXPECT_TRUE(j.of("air_conditioning.fan").empty());
  EXPECT_TRUE(j.of("air_conditioning.vents").empty());
}

TEST(AirConditioningRequirements, AnotherRefrigerantHasNoFigure) {
  const Judging j(hand_car("[air_conditioning.condenser]\nrefrigerant = \"another\"\n"), "hot-idle");
  const auto& v = j.one("air_conditioning.high-side", "hot-idle").verdict;
  EXPECT_FALSE(v.predicted);
  EXPECT_FALSE(v.reason.empty());
}

// 1.4 kW into 0.11 kg/s: 12.65 K; the valve in the supply keeps all of it out.
TEST(AirConditioningRequirements, HeaterByHand) {
  const std::string box = "[air_conditioning.heater]\nair = \"0.11 kg/s\"\ncooling = \"5.0 kW\"\n";
  const Judging wrong(hand_car(box + "valve = \"return hose\"\nleak = \"1.4 kW\"\n"), "hot-idle"),
      right(hand_car(box + "valve = \"supply hose\"\n"), "hot-idle"),
      untold(hand_car(box + "valve = \"none\"\n"), "hot-idle");
  EXPECT_NEAR(*wrong.one("air_conditioning.vents").verdict.predicted, 12.65, 0.02);
  EXPECT_EQ(*right.one("air_conditioning.vents").verdict.predicted, 0);
  EXPECT_EQ(untold.one("air_conditioning.vents").verdict.missing,
            std::vector<std::string>{"air_conditioning.heater.leak"});
}

TEST(AirConditioningRequirements, AFanThatWaitsForTheCoolant) {
  const std::string alone = "with_air_conditioning = false\n";
  const Judging j(hand_car("[cooling.fan.left]\n" + alone + "[cooling.fan.right]\n" + alone), "hot-idle");
  EXPECT_EQ(j.one("air_conditioning.fan", "hot-idle").verdict.rule, false);
}

}  // namespace
