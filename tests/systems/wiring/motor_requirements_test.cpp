#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

std::string fan(const char* gauge, const char* fuse) {
  return std::string("[wiring.load.extra_fan]\ncurrent = \"10 A\"\nbehaviour = \"motor\"\nstall = \"26 A\"\n") +
         "when = [\"key\"]\ninsulation = \"105 degC\"\nbundle = 4\nlength = \"6 ft\"\ngauge = \"" + gauge +
         "\"\nfuse = \"" + fuse + "\"\n";
}

// 33 CFR 183.425 (transcribed): 16 AWG, 105 degC 25 A, engine space x 0.85, four in a bundle x 0.60: 12.75 A. 26 A and
// a fuse of 30 A: nothing opens, and the wire settles far beyond its insulation; on 10 AWG (30.6 A) it does not.
TEST(WiringMotorRequirements, AStalledFanOnAThinWire) {
  const Judging thin(hand_car(fan("16 AWG", "30 A")), "cruise"), thick(hand_car(fan("10 AWG", "30 A")), "cruise");
  const auto& hot = thin.one("wiring.stalled-motor", "cruise", "extra_fan").verdict;
  EXPECT_GT(*hot.predicted - 273.15, 200);
  EXPECT_LT(*thick.one("wiring.stalled-motor", "cruise", "extra_fan").verdict.predicted, 378.15);
}

// A fuse of 10 A opens at 2.5 times its rating within 5 s at the latest (ISO 8820-3, from memory): by then the copper
// has taken up I2 t and no more.
TEST(WiringMotorRequirements, AFuseThatOpensSavesTheWire) {
  const Judging j(hand_car(fan("16 AWG", "10 A")), "cruise");
  EXPECT_GT(j.one("wiring.stalled-motor", "cruise", "extra_fan").margin().value(), 0);
}

// Ten times a lamp's current for 10 ms: a fuse of 15 A stands 100 A for 0.02 s (6/6.67)^2 = 16 ms, one of 7.5 A for
// 4 ms.
TEST(WiringMotorRequirements, LampsAsTheyAreSwitchedOn) {
  const auto lamp = [](const char* fuse) {
    return std::string("[wiring.load.headlamps]\ncurrent = \"10 A\"\nbehaviour = \"lamp\"\nfuse = \"") + fuse + "\"\n";
  };
  const auto& holds = Judging(hand_car(lamp("15 A")), "hot-idle").one("wiring.fuse-inrush", "", "headlamps");
  EXPECT_NEAR(*holds.verdict.predicted, 0.0162, 1e-4);
  EXPECT_GT(holds.margin().value(), 0);
  EXPECT_LT(Judging(hand_car(lamp("7.5 A")), "hot-idle").one("wiring.fuse-inrush", "", "headlamps").margin().value(),
            0);
}

}  // namespace
