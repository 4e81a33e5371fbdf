#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(CoolingHeatRequirements, TemperatureIsTheHighestOfTheRun) {
  Judging j(hand_car(), "hot-idle");
  const auto& v = j.one("cooling.coolant-temperature", "hot-idle").verdict;
  EXPECT_EQ(*v.predicted, j.highest("cooling.engine_temperature", "hot-idle"));
  EXPECT_NEAR(*v.high, 105 + zero_c, 1e-9);
}

// At 10 000 ft (69.7 kPa, ISO 2533) the same coolant boils sooner, by what the steam tables make of it: under 16 psi
// (110.3 kPa) 211.6 against 180.0 kPa of absolute pressure; water 121.9 against 116.9 degC.
TEST(CoolingHeatRequirements, BoilMarginShrinksWithAltitude) {
  const std::string high =
      "[duty.hot-idle]\nduration = \"45 min\"\nambient = \"40 degC\"\naltitude = \"10000 ft\"\nspeed = \"0 mph\"\n";
  const std::string low =
      "[duty.hot-idle]\nduration = \"45 min\"\nambient = \"40 degC\"\naltitude = \"0 ft\"\nspeed = \"0 mph\"\n";
  Judging top(hand_car(high), "hot-idle"), sea(hand_car(low), "hot-idle");
  const auto boils = [](const Judging& j) {
    return j.one("cooling.boil-margin", "hot-idle").verdict.because.at(0).value;
  };
  EXPECT_NEAR(boils(sea) - boils(top), 121.9 - 116.9, 0.6);
}

// A car that boils is one that fails, not one whose run is lost: a core far too small, both fans weak.
TEST(CoolingHeatRequirements, ACarThatBoilsFailsWithANumber) {
  Judging j(
      hand_car("[cooling.radiator]\nconductance = \"0.2 kW/K\"\n[cooling.fan.left]\nflow = \"60 "
               "cfm\"\n[cooling.fan.right]\nflow = \"60 cfm\"\n"));
  for (auto duty : {"hot-idle", "parade", "grade"}) {
    EXPECT_TRUE(j.trace(duty).summary.usable()) << duty << ": " << j.trace(duty).summary.reason;
    EXPECT_LT(j.one("cooling.coolant-temperature", duty).margin().value(), 0) << duty;
    EXPECT_LT(j.one("cooling.boil-margin", duty).margin().value(), 0) << duty;
  }
}

TEST(CoolingHeatRequirements, WithoutACapNothingIsSaidOfBoiling) {
  Build b = hand_car();
  std::get<cooling::Input>(b.inputs).cap.pressure.reset();
  Judging j(b, "hot-idle");
  const auto& v = j.one("cooling.boil-margin", "hot-idle").verdict;
  EXPECT_FALSE(v.predicted);
  EXPECT_EQ(v.missing, std::vector<std::string>{"cooling.cap.pressure"});
  EXPECT_FALSE(j.one("cooling.cap").verdict.predicted);
}

// Rise = heat / (flow x density x specific heat), at the end of the hot idle from the ports.
TEST(CoolingHeatRequirements, RiseByHand) {
  Judging j(hand_car(), "hot-idle");
  const auto& t = j.trace("hot-idle");
  const auto end = [&](auto port) { return t.at(t.rows() - 1, static_cast<std::size_t>(j.car().graph().slot(port))); };
  // 50 % glycol at 95 degC: 1023 kg/m3 x 3.57 kJ/(kg K) = 3.65 MJ/(m3 K) (ASHRAE, from memory), to 2 %.
  const double expected = end("engine.heat_to_coolant") / (end("cooling.flow") * 3.65e6);
  EXPECT_NEAR(*j.one("cooling.coolant-rise", "hot-idle").verdict.predicted, expected, 0.02 * expected);
}

TEST(CoolingHeatRequirements, FlowIsJudgedOnlyWhereAFigureIsAsked) {
  EXPECT_TRUE(Judging(hand_car(), "hot-idle").of("cooling.pump-flow").empty());
  Judging j(hand_car("[cooling.pump]\nneeded_at_idle = \"15 gal/min\"\n"), "hot-idle");
  // 800 rpm x 6.5 / 5.5 = 945 rpm of the pump; 60 gal/min x 945 / 2600 = 21.8.
  EXPECT_NEAR(*j.one("cooling.pump-flow", "hot-idle").verdict.predicted / gallon_min, 21.82, 0.02);
}

TEST(CoolingHeatRequirements, AThermostatThatHangsOpenNeverWarmsUp) {
  Judging sound(hand_car(), "warm-up"),
      open(hand_car("[cooling.thermostat]\nopens = \"61 degC\"\nfully_open = \"65 degC\"\n"), "warm-up");
  EXPECT_GT(sound.one("cooling.warm-up", "warm-up").margin().value(), 0);
  const auto& v = open.one("cooling.warm-up", "warm-up").verdict;
  // It is not reached in the duty: no time is made up, and as the duty is longer than the limit it fails.
  EXPECT_FALSE(v.predicted);
  EXPECT_EQ(v.rule, false);
  EXPECT_FALSE(v.reason.empty());
}

TEST(CoolingHeatRequirements, StartsAreCountedAndSharesAreShares) {
  Judging j(hand_car("[cooling.fan.left]\nwith_air_conditioning = false\n"));
  for (auto duty : {"hot-idle", "parade"}) {
    const auto& v = j.one("cooling.fan-cycling", duty).verdict;
    ASSERT_EQ(v.because.size(), 1u);
    EXPECT_GE(v.because[0].value, 0);
    EXPECT_LE(v.because[0].value, 1);
    EXPECT_GE(*v.predicted, 0);
  }
}

}  // namespace
