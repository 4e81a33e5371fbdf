#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

cooling::Model cooled() { return resolved<cooling::System>(hand_car()).model; }

// The controller: each stage on at its own temperature and off at its own, with the key only.
TEST(CoolingFanControl, Stages) {
  const auto m = cooled();
  auto b = bench<cooling::System>(m, "cooling.control");
  const auto next = [&](double celsius, double now) {
    return b.give("cooling.engine_temperature", celsius + zero_c).next(now);
  };
  b.give("duty.conditions", bit(Condition::always) | bit(Condition::key));
  EXPECT_EQ(next(95.9, 0), 0);
  EXPECT_EQ(next(96.1, 0), 1);
  EXPECT_EQ(next(91.1, 1), 1);
  EXPECT_EQ(next(90.9, 1), 0);
  EXPECT_EQ(next(100.1, 1), 2);
  EXPECT_EQ(next(94.9, 2), 1);
  b.give("air_conditioning.on", 1);
  EXPECT_EQ(next(60, 0), 1);  // the left fan runs with the compressor
  EXPECT_EQ(next(60, 1), 1);
  b.give("duty.conditions", bit(Condition::always));
  EXPECT_EQ(next(110, 2), 1);  // key off: they stop
  b.give("fans.level", 2).run();
  EXPECT_NEAR(b.get("fans.asked"), 26, 1e-9);
  EXPECT_NEAR(b.get("fans.fitted"), 26, 1e-9);
}

TEST(CoolingFanControl, GuardAndNextAgree) {
  const auto m = cooled();
  auto b = bench<cooling::System>(m, "cooling.control");
  for (unsigned key : {0u, bit(Condition::key)})
    for (double ac : {0.0, 1.0})
      for (double celsius = 60; celsius < 120; celsius += 0.7)
        for (double level : {0.0, 1.0, 2.0}) {
          b.give("duty.conditions", key)
              .give("air_conditioning.on", ac)
              .give("cooling.engine_temperature", celsius + zero_c);
          EXPECT_EQ(b.guard(level) > 0, b.next(level) != level);
        }
}

}  // namespace
