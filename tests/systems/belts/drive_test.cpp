#include "systems/belts/placed.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

belts::OneBelt side_belt(const std::string& change) {
  return resolved<belts::System>(hand_car(two_pulleys() + change)).model.belt.back();
}

// Two pulleys of one size: half round each, spans of the centre distance hypot(8, 6) = 10 in, length 20 + 6 pi in; the
// line of a ribbed belt's own length lies 2 mm inside the cords all the way round.
TEST(BeltsDrive, PathOfTwoEqualPulleys) {
  const auto b = side_belt("");
  ASSERT_TRUE(b.placed);
  EXPECT_NEAR(b.path.length_m / inch, 20 + 6 * M_PI, 1e-9);
  EXPECT_NEAR(b.pulley[1].wrap, M_PI, 1e-12);
  EXPECT_NEAR(b.span_m(0) / inch, 10, 1e-9);
  EXPECT_NEAR(*b.path_m, b.path.length_m - 2 * M_PI * 0.002, 1e-12);
}

// A slide along the line of centres: every inch takes up two.
TEST(BeltsDrive, SlideAlongTheCentresTakesUpTwice) {
  const auto b =
      side_belt("[belts.belt.side.adjuster]\npulley = \"steering\"\nkind = \"slide\"\ndirection = \"" +
                std::to_string(std::atan2(6, 8) / degree) + " deg\"\nloosen = \"0.5 in\"\ntighten = \"1 in\"\n");
  ASSERT_TRUE(b.adjuster && b.adjuster->missing.empty());
  EXPECT_NEAR(b.adjuster->take_up_m / inch, 2, 1e-6);
  EXPECT_NEAR(b.adjuster->let_on_m / inch, -1, 1e-6);
}

// Swung about a pivot square to the line of centres it moves along that line at first.
TEST(BeltsDrive, PivotTightensTheWayThatLengthensThePath) {
  const auto b = side_belt(
      "[belts.belt.side.adjuster]\npulley = \"steering\"\nkind = \"pivot\"\npivot_x = \"11.6 in\"\n"
      "pivot_y = \"1.2 in\"\nloosen = \"0.1 in\"\ntighten = \"0.1 in\"\n");
  ASSERT_TRUE(b.adjuster && b.adjuster->missing.empty());
  EXPECT_NEAR(b.adjuster->take_up_m / inch, 0.2, 0.005);
  EXPECT_NEAR(b.adjuster->let_on_m / inch, -0.2, 0.005);
}

// A crank that turns clockwise runs the belt from its left to its right over the top, that is clockwise round the
// faces: three pulleys listed the other way are run in reverse.
TEST(BeltsDrive, RunsTheWayTheCrankTurns) {
  const std::string third =
      "[belts.belt.side.pulley.guide]\ndrives = \"idler\"\ndiameter = \"3 in\"\nx = \"0 in\"\ny = \"12 in\"\n";
  const auto clockwise = side_belt(third), other = side_belt(third + "[belts]\ncrank_turns = \"anticlockwise\"\n");
  // Given: crank, steering at its right, guide above: against the clock.
  EXPECT_EQ(other.run, (std::vector<std::size_t>{0, 1, 2}));
  EXPECT_EQ(clockwise.run, (std::vector<std::size_t>{0, 2, 1}));
  EXPECT_NEAR(clockwise.span_m(0), other.span_m(2), 1e-12);
  EXPECT_NEAR(clockwise.span_m(1), other.span_m(1), 1e-12);
}

TEST(BeltsDrive, AStatedWrapThatThePlacesRuleOutIsAFault) {
  auto r = resolved<belts::System>(faulty_car(two_pulleys() + "wrap = \"120 deg\"\n"));
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_EQ(r.missing[0], "belts.belt.side.pulley.steering.wrap");
  EXPECT_TRUE(resolved<belts::System>(hand_car(two_pulleys() + "wrap = \"175 deg\"\n")).missing.empty());
}

TEST(BeltsDrive, APulleyTheBeltDoesNotReachIsAFault) {
  auto r = resolved<belts::System>(
      faulty_car(two_pulleys() + "[belts.belt.side.pulley.guide]\ndrives = \"idler\"\ndiameter = \"3 in\"\n"
                                 "x = \"30 in\"\ny = \"-30 in\"\nside = \"back\"\n"));
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_EQ(r.missing[0], "belts.belt.side");
}

TEST(BeltsDrive, HalfAGeometryNamesTheOtherHalf) {
  const auto b = side_belt("[belts.belt.side.pulley.guide]\ndrives = \"idler\"\ndiameter = \"3 in\"\nx = \"0 in\"\n");
  EXPECT_FALSE(b.placed);
  EXPECT_EQ(b.missing, std::vector<std::string>{"belts.belt.side.pulley.guide.y"});
}

}  // namespace
