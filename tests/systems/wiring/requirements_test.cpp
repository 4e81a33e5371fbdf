#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string old_path =
    "[wiring.run]\ncharge = false\n"
    "[wiring.run.stud]\nfrom = \"alternator\"\nto = \"ammeter\"\ngauge = \"10 AWG\"\nlength = \"6 ft\"\nfuse = \"30 "
    "A\"\n"
    "[wiring.run.meter]\nfrom = \"ammeter\"\nto = \"battery\"\ngauge = \"8 AWG\"\nlength = \"6 ft\"\nlimit = \"40 "
    "A\"\nfuse = \"30 A\"\n";

// A 150 A machine behind an ammeter made for 40 A: the known fire. Both runs of the path fail.
TEST(WiringRequirements, AnOldAmmeterBehindANewMachineFails) {
  Judging j(hand_car(old_path), "hot-idle");
  const auto found = j.of("wiring.charge-path");
  ASSERT_EQ(found.size(), 2u);
  for (auto* f : found) {
    EXPECT_EQ(*f->verdict.predicted, 150);
    EXPECT_LT(*f->margin(), 0) << f->verdict.place;
  }
  EXPECT_EQ(*j.one("wiring.charge-path", "", "meter").verdict.high, 40);
}

// 33 CFR 183.425 Table 5 (transcribed): 10 AWG, insulation 105 degC, outside engine spaces 60 A; inside them x 0.85 =
// 51 A. A 60 A fuse protects it in the cabin alone.
TEST(WiringRequirements, AFuseIsHeldToTheTableInItsZone) {
  const std::string load =
      "[wiring.load.pump]\ncurrent = \"20 A\"\nwhen = [\"key\"]\ngauge = \"10 AWG\"\nlength = \"6 ft\"\nfuse = \"60 "
      "A\"\nzone = ";
  Judging cabin(hand_car(load + "\"cabin\"\n"), "hot-idle"), bay(hand_car(load + "\"engine bay\"\n"), "hot-idle");
  EXPECT_TRUE(*cabin.one("wiring.fuse-wire", "", "pump").verdict.rule)
      << cabin.one("wiring.fuse-wire", "", "pump").verdict.reason;
  EXPECT_FALSE(*bay.one("wiring.fuse-wire", "", "pump").verdict.rule);
}

// Blade fuses carry three quarters of their rating for good (common practice): 12 A asks for 1.25 x 12 = 15 A.
TEST(WiringRequirements, AFuseCarriesThreeQuarters) {
  Judging j(hand_car("[wiring.load.headlamps]\nfuse = \"15 A\"\n"), "hot-idle");
  const auto& v = j.one("wiring.fuse-load", "", "headlamps").verdict;
  EXPECT_NEAR(*v.predicted, 15, 1e-9);
  EXPECT_NEAR(*v.high, 15, 1e-9);
}

TEST(WiringRequirements, ALoadWithoutFuseOrGaugeIsUnproven) {
  Build b = hand_car();
  for (auto& [name, load] : std::get<wiring::Input>(b.inputs).load.entries)
    if (name == "headlamps") load.wire.fuse.reset();
  Judging j(b, "hot-idle");
  const auto& v = j.one("wiring.fuse-wire", "", "headlamps").verdict;
  EXPECT_FALSE(v.rule);
  EXPECT_EQ(v.missing, std::vector<std::string>{"wiring.load.headlamps.fuse"});
}

// Starter and ground cables are not fused in a car; asking for one would be noise.
TEST(WiringRequirements, UnfusedCablesAreNotAskedForFuses) {
  Judging j(hand_car(), "hot-idle");
  EXPECT_FALSE(j.judged("wiring.fuse-wire", "", "starter_cable"));
  EXPECT_FALSE(j.judged("wiring.fuse-wire", "", "block_ground"));
  EXPECT_TRUE(j.judged("wiring.fuse-wire", "", "charge"));
}

// A run whose resistance was measured but whose size nobody gave carries current all the same.
TEST(WiringRequirements, ARunOfUnknownSizeIsUnprovenNotPassedOver) {
  Build b = hand_car("[wiring.run.feed]\nresistance = \"2 mohm\"\n");
  for (auto& [name, run] : std::get<wiring::Input>(b.inputs).run.entries)
    if (name == "feed") run.wire.gauge.reset();
  Judging j(b, "hot-idle");
  const auto& v = j.one("wiring.wire-current", "hot-idle", "feed").verdict;
  EXPECT_FALSE(v.predicted);
  EXPECT_EQ(v.missing, std::vector<std::string>{"wiring.run.feed.gauge"});
}

// The fans' feed with its size unknown has no drop to tell; a stand-in must not hold in its place.
TEST(WiringRequirements, AFanFeedOfUnknownSizeIsUnproven) {
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
TEST(WiringRequirements, FeedDropByOhm) {
  Judging j(hand_car(), "hot-idle");
  const auto& v = j.one("wiring.feed-drop", "hot-idle", "blower").verdict;
  const double ohm = 6 * 1.588e-3 * 1.0393 + 4e-3;
  EXPECT_NEAR(*v.predicted, 9 * ohm, 0.1 * 9 * ohm);
  EXPECT_FALSE(j.judged("wiring.feed-drop", "hot-idle", "wipers"));  // it does not rain
}

TEST(WiringRequirements, LeastVoltageIsJudgedWhereItIsAsked) {
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
