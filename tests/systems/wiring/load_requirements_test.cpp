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

double late_bay_k(const Judging& j, std::string_view duty) {
  return j.trace(duty).late_mean(static_cast<std::size_t>(j.car().graph().slot("bay.temperature")), 0.2);
}

// 33 CFR 183.425 Table 5 (transcribed): 14 AWG at 105 degC 35 A, engine space x 0.85, three in a bundle x 0.70: 20.825
// A in 50 degC. In the bay of a hot idle less, by the root of what is left up to 105 degC over the table's 55 K.
TEST(WiringLoadRequirements, AWireInTheBayIsHeldToTheBaysAir) {
  Judging j(hand_car("[wiring.load.injection]\ninsulation = \"105 degC\"\nbundle = 3\n"));
  const double bay_c = late_bay_k(j, "hot-idle") - zero_c;
  ASSERT_GT(bay_c, 60);
  ASSERT_LT(bay_c, 100);
  const auto& v = j.one("wiring.wire-current", "hot-idle", "injection").verdict;
  EXPECT_NEAR(*v.high, 20.825 * std::sqrt((105 - bay_c) / 55), 1e-6);
  EXPECT_EQ(v.because.back().path, "bay.temperature");
  EXPECT_NEAR(v.because.back().value - zero_c, bay_c, 1e-9);
  // A wire in the cabin knows nothing of it: 12 AWG at 105 degC 45 A, three in a bundle.
  EXPECT_NEAR(*j.one("wiring.wire-current", "hot-idle", "fuel_pump").verdict.high, 45 * 0.7, 1e-9);
  // Cooler than the table's air gives nothing back.
  ASSERT_LT(late_bay_k(j, "warm-up"), 323.15);
  EXPECT_NEAR(*j.one("wiring.wire-current", "warm-up", "injection").verdict.high, 20.825, 1e-9);
  // The standing rules stay at the zone's air.
  EXPECT_NE(j.one("wiring.fuse-wire", "", "injection").verdict.reason.find("20.8 A"), std::string::npos);
}

TEST(WiringLoadRequirements, ABayHotterThanTheInsulationFailsWhateverFlows) {
  Judging j(hand_car("[wiring.load.wipers]\ninsulation = \"60 degC\"\n[wiring.load.injection]\ninsulation = \"60 "
                     "degC\"\n"),
            "hot-idle");
  for (auto place : {"wipers", "injection"}) {
    const auto& found = j.one("wiring.wire-current", "hot-idle", place);
    EXPECT_LT(found.margin().value(), 0) << place;
    EXPECT_NE(found.verdict.reason.find("the insulation stands 60 degC"), std::string::npos) << found.verdict.reason;
  }
  EXPECT_EQ(j.one("wiring.wire-current", "hot-idle", "wipers").verdict.reason.find("flow"), std::string::npos);
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
