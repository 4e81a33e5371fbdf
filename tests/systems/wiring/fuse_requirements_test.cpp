#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string old_path =
    "[wiring.run]\ncharge = false\n"
    "[wiring.run.stud]\nfrom = \"alternator\"\nto = \"ammeter\"\ngauge = \"10 AWG\"\nlength = \"6 ft\"\nfuse = \"30 "
    "A\"\n"
    "[wiring.run.meter]\nfrom = \"ammeter\"\nto = \"battery\"\ngauge = \"8 AWG\"\nlength = \"6 ft\"\nlimit = \"40 "
    "A\"\nfuse = \"30 A\"\ninsulation = \"105 degC\"\nbundle = 1\n";

// A 150 A machine behind an ammeter made for 40 A: the known fire. Both runs of the path fail.
TEST(WiringFuseRequirements, AnOldAmmeterBehindANewMachineFails) {
  Judging j(hand_car(old_path), "hot-idle");
  const auto found = j.of("wiring.charge-path");
  ASSERT_EQ(found.size(), 2u);
  for (auto* f : found) {
    EXPECT_EQ(*f->verdict.predicted, 150);
    EXPECT_LT(*f->margin(), 0) << f->verdict.place;
  }
  // The least of wire, meter and fuse counts: the 30 A fuse opens first.
  EXPECT_EQ(*j.one("wiring.charge-path", "", "meter").verdict.high, 30);
}

TEST(WiringFuseRequirements, AWireWithoutAFuseFails) {
  Build b = hand_car();
  for (auto& [name, load] : std::get<wiring::Input>(b.inputs).load.entries)
    if (name == "blower") load.wire.fuse.reset(), load.wire.unfused = true;
  const auto& v = Judging(b, "hot-idle").one("wiring.fuse-wire", "", "blower").verdict;
  EXPECT_EQ(v.rule, false);
  EXPECT_TRUE(v.missing.empty());
}

// A fuse is loaded to 80 % for good (common practice): what flows through the feed, 1.25 times, against its fuse.
TEST(WiringFuseRequirements, ARunsFuseIsHeldToWhatFlows) {
  Judging j(hand_car(), "hot-idle"), small(hand_car("[wiring.run.feed]\nfuse = \"5 A\"\n"), "hot-idle");
  const double flows = *j.one("wiring.fuse-run", "hot-idle", "feed").verdict.predicted / 1.25;
  EXPECT_GT(flows, 30);
  EXPECT_GT(j.one("wiring.fuse-run", "hot-idle", "feed").margin().value(), 0);
  EXPECT_LT(small.one("wiring.fuse-run", "hot-idle", "feed").margin().value(), 0);
}

// What a rule needs is the model's own: without the engine's torque curve, or one wire's size, the others are judged.
TEST(WiringFuseRequirements, RulesWaitForNoOtherFigure) {
  Build b = hand_car();
  std::get<engine::Input>(b.inputs).torque_curve.reset();
  Judging j(b, "hot-idle");
  EXPECT_EQ(j.one("wiring.fuse-wire", "", "charge").verdict.rule, true);
  EXPECT_TRUE(j.one("charging.polarity").verdict.rule.has_value());
  EXPECT_TRUE(j.one("cooling.pump-rotation").verdict.rule.has_value());
  EXPECT_FALSE(j.one("cooling.coolant-temperature", "hot-idle").verdict.predicted);
}

// 33 CFR 183.425 Table 5 (transcribed): 10 AWG, insulation 105 degC, outside engine spaces 60 A; inside them x 0.85 =
// 51 A. A 60 A fuse protects it in the cabin alone.
TEST(WiringFuseRequirements, AFuseIsHeldToTheTableInItsZone) {
  const std::string load =
      "[wiring.load.pump]\ncurrent = \"20 A\"\nwhen = [\"key\"]\ngauge = \"10 AWG\"\nlength = \"6 ft\"\nfuse = \"60 "
      "A\"\ninsulation = \"105 degC\"\nbundle = 1\nzone = ";
  Judging cabin(hand_car(load + "\"cabin\"\n"), "hot-idle"), bay(hand_car(load + "\"engine bay\"\n"), "hot-idle");
  EXPECT_TRUE(*cabin.one("wiring.fuse-wire", "", "pump").verdict.rule)
      << cabin.one("wiring.fuse-wire", "", "pump").verdict.reason;
  EXPECT_FALSE(*bay.one("wiring.fuse-wire", "", "pump").verdict.rule);
}

const Because* line(const std::vector<Because>& lines, std::string_view path) {
  for (auto& b : lines)
    if (b.path == path) return &b;
  return nullptr;
}

// What a wire is taken to be stands beside what was found, with where it is from.
TEST(WiringFuseRequirements, WhatAWireIsTakenToBeIsTold) {
  Judging j(hand_car("[wiring.load.pump]\ncurrent = \"5 A\"\nwhen = [\"key\"]\ngauge = \"14 AWG\"\nlength = \"6 ft\"\n"
                     "fuse = \"10 A\"\n"),
            "hot-idle");
  for (auto id : {"wiring.fuse-wire", "wiring.wire-current"}) {
    auto& told = j.one(id, "", "pump").verdict.because;
    for (auto field : {"gauge", "insulation", "zone", "bundle"})
      EXPECT_TRUE(line(told, std::string("wiring.load.pump.") + field)) << id << " " << field;
    EXPECT_EQ(line(told, "wiring.load.pump.insulation")->evidence->source, Source::typical);
    EXPECT_EQ(line(told, "wiring.load.pump.bundle")->evidence->source, Source::typical);
    EXPECT_EQ(line(told, "wiring.load.pump.gauge")->evidence->source, Source::stated);
  }
  EXPECT_TRUE(line(j.one("wiring.charge-path", "", "charge").verdict.because, "wiring.run.charge.insulation"));
}

// Blade fuses carry three quarters of their rating for good (common practice): 12 A asks for 1.25 x 12 = 15 A.
TEST(WiringFuseRequirements, AFuseCarriesThreeQuarters) {
  Judging j(hand_car("[wiring.load.headlamps]\nfuse = \"15 A\"\n"), "hot-idle");
  const auto& v = j.one("wiring.fuse-load", "", "headlamps").verdict;
  EXPECT_NEAR(*v.predicted, 15, 1e-9);
  EXPECT_NEAR(*v.high, 15, 1e-9);
}

TEST(WiringFuseRequirements, ALoadWithoutFuseOrGaugeIsUnproven) {
  Build b = hand_car();
  for (auto& [name, load] : std::get<wiring::Input>(b.inputs).load.entries)
    if (name == "headlamps") load.wire.fuse.reset();
  Judging j(b, "hot-idle");
  const auto& v = j.one("wiring.fuse-wire", "", "headlamps").verdict;
  EXPECT_FALSE(v.rule);
  EXPECT_EQ(v.missing, std::vector<std::string>{"wiring.load.headlamps.fuse"});
}

// Starter and ground cables are not fused in a car; asking for one would be noise.
TEST(WiringFuseRequirements, UnfusedCablesAreNotAskedForFuses) {
  Judging j(hand_car(), "hot-idle");
  EXPECT_FALSE(j.judged("wiring.fuse-wire", "", "starter_cable"));
  EXPECT_FALSE(j.judged("wiring.fuse-wire", "", "block_ground"));
  EXPECT_TRUE(j.judged("wiring.fuse-wire", "", "charge"));
}

// A run whose resistance was measured but whose size nobody gave carries current all the same.
TEST(WiringFuseRequirements, ARunOfUnknownSizeIsUnprovenNotPassedOver) {
  Build b = hand_car("[wiring.run.feed]\nresistance = \"2 mohm\"\n");
  for (auto& [name, run] : std::get<wiring::Input>(b.inputs).run.entries)
    if (name == "feed") run.wire.gauge.reset();
  Judging j(b, "hot-idle");
  const auto& v = j.one("wiring.wire-current", "hot-idle", "feed").verdict;
  EXPECT_FALSE(v.predicted);
  EXPECT_EQ(v.missing, std::vector<std::string>{"wiring.run.feed.gauge"});
}

}  // namespace
