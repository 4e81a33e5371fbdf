// Published facts of the electrical area that no sum gives, each by its number, held against what the systems judge by.
#include "physics/fuse.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// ELE-18: continuous drop on a 14 V aircraft bus, FAA AC 43.13-1B ch. 11 (from memory): 0.5 V.
TEST(ElectricFacts, ELE_18_DropOfAFeed) {
  const Judging j(hand_car(), "hot-idle");
  const auto found = j.of("wiring.feed-drop", "hot-idle");
  ASSERT_FALSE(found.empty());
  for (auto* f : found) EXPECT_DOUBLE_EQ(*f->verdict.high, 0.5) << f->verdict.place;
}

// ELE-32: continuous load as a share of a blade fuse's rating, 75 % to 5 points (common practice, 70 to 80 %).
// The rule asks a rating for the lamps' 12 A.
TEST(ElectricFacts, ELE_32_LoadOfAFuse) {
  const auto& v = Judging(hand_car(), "hot-idle").one("wiring.fuse-load", "", "headlamps").verdict;
  EXPECT_NEAR(12 / *v.predicted, 0.75, 0.05 + 1e-9);
}

// ELE-33: rated current is stated at 6000 rpm (ISO 8854, SAE J56; from memory): there the usual shape gives all of it.
TEST(ElectricFacts, ELE_33_SpeedOfTheRatedCurrent) {
  Build b = hand_car();
  std::get<charging::Input>(b.inputs).alternator.output_curve.reset();
  const auto m = resolved<charging::System>(b).model;
  ASSERT_TRUE(m.output);
  EXPECT_NEAR(m.output->last() / rpm, 6000, 1e-6);
  EXPECT_NEAR(m.output->at(6000 * rpm).value, 150, 1e-9);
}

}  // namespace
