#include "systems/belts/placed.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging judged(const std::string& change, const std::string& of_belt = ribbed) {
  return Judging(hand_car(two_pulleys(of_belt) + change), "hot-idle");
}
const char* const slide =
    "[belts.belt.side.adjuster]\npulley = \"steering\"\nkind = \"slide\"\ndirection = \"36.8699 deg\"\n"
    "loosen = \"0.5 in\"\ntighten = \"0.5 in\"\n";

// 0.05 in over 10 in: atan 0.005 = 0.2865 deg, inside 0.33; with 0.02 in of shims 0.401 deg. Of a V-belt 0.5 deg is
// allowed (common practice: a tenth of an inch a foot is 0.477 deg).
TEST(BeltsLine, AngleOfAnOffset) {
  const std::string place = "side, crank to steering";
  EXPECT_NEAR(*judged("").one("belts.line", {}, place).verdict.predicted / degree, 0.28648, 1e-4);
  const auto j = judged("shim = \"0.02 in\"\n");
  EXPECT_NEAR(*j.one("belts.line", {}, place).verdict.predicted / degree, 0.40106, 1e-4);
  EXPECT_LT(j.one("belts.line", {}, place).margin().value(), 0);
  const auto v = judged("shim = \"0.02 in\"\n", "section = \"v\"\n");
  EXPECT_GT(v.one("belts.line", {}, place).margin().value(), 0);
}

// Path 20 + 6 pi in less 4 pi mm = 38.355 in; the belt 0.3 in longer; half an inch of slide takes up one inch; stretch
// 0.4 % = 0.153 in; 1 % to get it on is 0.384 in, less the 0.3 in it is longer.
TEST(BeltsLine, LengthByHand) {
  const double path = 20 + 6 * M_PI - 2 * M_PI * 2 / 25.4;
  const auto j = judged(slide, ribbed + "length = \"" + std::to_string(path + 0.3) + " in\"\n");
  const auto& up = j.one("belts.length", {}, "side, taking up").verdict;
  EXPECT_NEAR(*up.predicted / inch, 0.3 + 0.004 * path, 1e-4);
  EXPECT_NEAR(*up.high / inch, 1.0, 1e-3);
  const auto& on = j.one("belts.length", {}, "side, letting on").verdict;
  EXPECT_NEAR(*on.predicted / inch, 0.01 * path - 0.3, 1e-4);
  EXPECT_NEAR(*on.high / inch, 1.0, 1e-3);
}

TEST(BeltsLine, AnAdjusterWithoutABeltsLengthAsksForIt) {
  EXPECT_EQ(judged(slide).one("belts.length", {}, "side").verdict.missing,
            std::vector<std::string>{"belts.belt.side.length"});
}

TEST(BeltsLine, RotationSmallestPulleyAndThread) {
  const auto j =
      judged("rotation = \"against crank\"\nbolt = \"0.375 in\"\nengagement = \"0.5 in\"\nshim = \"0.2 in\"\n");
  EXPECT_FALSE(*j.one("belts.rotation").verdict.rule);
  EXPECT_NEAR(*j.one("belts.thread-engaged").verdict.predicted / inch, 0.3, 1e-9);
  EXPECT_LT(j.one("belts.thread-engaged").margin().value(), 0);
  EXPECT_FALSE(*judged("rotation = \"against crank\"\n").one("belts.rotation").verdict.rule);
  EXPECT_TRUE(*judged("rotation = \"with crank\"\n").one("belts.rotation").verdict.rule);
  // ISO 9981:2020, 5.2: 45 mm effective; the cords run 2 mm outside that: 49 mm, and 1.9 in are 48.26 mm.
  Build b = hand_car(two_pulleys());
  std::get<belts::Input>(b.inputs).belt.entries.back().second.pulley.entries[0].second.diameter = Length{1.9 * inch};
  EXPECT_LT(Judging(b, "hot-idle").one("belts.smallest-pulley", {}, "side, steering").margin().value(), 0);
}

}  // namespace
