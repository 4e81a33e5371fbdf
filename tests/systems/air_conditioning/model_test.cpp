#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(AirConditioningModel, PressuresWantTheCondensersFiguresAlone) {
  Build b = hand_car();
  std::get<air_conditioning::Input>(b.inputs).condenser.effectiveness.reset();
  const Car car(b);
  EXPECT_TRUE(car.graph().unavailable.contains("air_conditioning.high_side"));
  EXPECT_FALSE(car.graph().unavailable.contains("air_conditioning.condenser_heat"));
}

TEST(AirConditioningModel, HeaterIsReadWithoutAirConditioningToo) {
  const auto m =
      resolved<air_conditioning::System>(
          hand_car("[air_conditioning]\nfitted = false\n[air_conditioning.heater]\nvalve = \"return hose\"\n"))
          .model;
  EXPECT_EQ(m.valve, air_conditioning::Valve::in_return);
}

}  // namespace
