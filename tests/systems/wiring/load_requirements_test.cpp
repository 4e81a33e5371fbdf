#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// The fans' feed with its size unknown has no drop to tell; a stand-in must not hold in its place.
TEST(WiringLoadRequirements, AFanFeedOfUnknownSizeIsUnproven) {
  Build b = hand_car();
  std::get<wiring::Input>(b.inputs).fans.wire.gauge.reset();
  Judging j(b, "hot-idle");
  for (auto id : {"wiring.feed-drop", "wiring.wire-current"}) {
    const auto& v = j.one(id, "hot-idle", "fans").verdict;
    EXPECT_FALSE(v.predicted) << id;
    EXPECT_EQ(v.missing, std::vector<std::string>{"wiring.fans.gauge"}) << id;
  }
}

// V = I R of the feed alone: 9 A motor at about its rated volts through 6 ft of 12 AWG (1.588 ohm/1000 ft at 20 degC,
// cabin at 30 degC: x 1.0393) and 4 mohm of joints.
TEST(WiringLoadRequirements, FeedDropByOhm) {
  Judging j(hand_car(), "hot-idle");
  const auto& v = j.one("wiring.feed-drop", "hot-idle", "blower").verdict;
  const double ohm = 6 * 1.588e-3 * 1.0393 + 4e-3;
  EXPECT_NEAR(*v.predicted, 9 * ohm, 0.1 * 9 * ohm);
  EXPECT_FALSE(j.judged("wiring.feed-drop", "hot-idle", "wipers"));  // it does not rain
}

TEST(WiringLoadRequirements, LeastVoltageIsJudgedWhereItIsAsked) {
  Judging j(hand_car(), "hot-idle");
  const auto found = j.of("wiring.least-voltage");
  ASSERT_EQ(found.size(), 1u);
  EXPECT_EQ(found[0]->verdict.place, "injection");
  EXPECT_NEAR(*found[0]->verdict.low, 10.5, 1e-12);
  const auto& t = j.trace("hot-idle");
  const auto slot = static_cast<std::size_t>(j.car().graph().slot("bus.voltage"));
  EXPECT_LT(*found[0]->verdict.predicted, t.at(t.lowest(slot), slot));
}

}  // namespace
