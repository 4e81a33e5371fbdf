#include "proof/judge.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(EngineRequirements, OilIsJudgedAtItsHottestRow) {
  Judging j(hand_car());
  const auto& v = j.one("engine.oil-temperature", "grade").verdict;
  EXPECT_EQ(*v.predicted, j.highest("engine.oil_temperature", "grade"));
  EXPECT_NEAR(*v.high, 135 + zero_c, 1e-9);
}

// Nine tenths of full power in the air of the duty; at 10 000 ft a third of the air is gone (ISO 2533: density 0.7385
// of sea level at the standard temperature), so the limit falls in proportion.
TEST(EngineRequirements, PowerLimitFollowsTheAir) {
  Judging low(hand_car()), high(hand_car("[duty.grade]\nduration = \"5 min\"\nspeed = \"50 mph\"\ngrade = "
                                         "0.06\nambient = \"38 degC\"\naltitude = \"10000 ft\"\n"));
  const auto& sea = low.one("engine.power", "grade").verdict;
  const auto& top = high.one("engine.power", "grade").verdict;
  EXPECT_NEAR(*top.high / *sea.high, 69.68 / 101.325, 0.002);  // pressures, at the same temperature
  // 3700 + 300 lb on 6 % at 50 mph: 1814.4 kg x 9.80665 x (0.013 x 0.9982 + 0.059892) = 1296.6 N, drag 0.5 x 1.1345 x
  // 0.95 x 22.352^2 = 269.2 N, 35.0 kW at the wheels, x 1.06 / 0.9 = 41.2 kW into the box, accessories on top.
  EXPECT_GT(*sea.predicted, 41.0e3);
  EXPECT_LT(*sea.predicted, 41.4e3 + 8e3);
}

TEST(EngineRequirements, AHeavyTrainOnASmallEngineFails) {
  Judging j(hand_car("[vehicle]\nweight = \"15000 lb\"\n"));
  EXPECT_LT(j.one("engine.power", "grade").margin().value(), 0);
}

}  // namespace
