#include "physics/belt.hpp"
#include "systems/belts/placed.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// 10 lb-ft on a 3 in radius: 40 lbf of pull; between fixed centres strands of 90 +- 20 lbf less m v^2. At the slowest m
// v^2 is least and grip best, at the highest speed it is worst: with a belt of next to no mass the share is
// 40 / (110 (1 - 1/k)), k = exp(0.25 pi / sin 20 deg) = 9.940: 0.4043.
TEST(BeltsPulleyGrip, TwoPulleysByHand) {
  const Judging j(hand_car(two_pulleys(ribbed + "mass = \"0.0001 kg/m\"\n")), "cruise");
  for (std::string place : {"side, steering", "side, crank"})
    EXPECT_NEAR(*j.one("belts.pulley-grip", "cruise", place).verdict.predicted, 0.4043, 0.0005) << place;
  EXPECT_FALSE(j.judged("belts.pulley-grip", "cruise", "front, alternator")) << "its belt has no places";
}

TEST(BeltsPulleyGrip, TheBeltsOwnMassTakesGripAway) {
  const auto share = [](const std::string& mass) {
    const Judging j(hand_car(two_pulleys(ribbed + "mass = \"" + mass + "\"\n")), "cruise");
    return *j.one("belts.pulley-grip", "cruise", "side, steering").verdict.predicted;
  };
  EXPECT_GT(share("0.3 kg/m"), share("0.1 kg/m") + 0.005);
}

TEST(BeltsPulleyGrip, WithoutTheSteeringsTorqueNoneOfItsBeltIsTold) {
  Build b = hand_car(two_pulleys());
  std::get<belts::Input>(b.inputs).belt.entries.back().second.pulley.entries[0].second.torque.reset();
  const Judging j(b, "cruise");
  const auto& v = j.one("belts.pulley-grip", "cruise", "side, steering").verdict;
  EXPECT_EQ(v.missing, std::vector<std::string>{"belts.belt.side.pulley.steering.torque"});
  EXPECT_FALSE(j.judged("belts.pulley-grip", "cruise", "side, crank"));
}

// The hand car's red line is 5500 rpm: on a pulley of the crank's size the same.
TEST(BeltsAccessorySpeed, AtTheRedLine) {
  const Judging j(hand_car(two_pulleys() + "highest_speed = \"5000 rpm\"\n"), "hot-idle");
  const auto& one = j.one("belts.accessory-speed", {}, "side, steering");
  EXPECT_NEAR(*one.verdict.predicted / rpm, 5500, 1e-6);
  EXPECT_LT(one.margin().value(), 0);
}

}  // namespace
