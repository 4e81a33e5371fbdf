#include "systems/judged.hpp"

#include "solve/list.hpp"
#include "solve/settings.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return wires.solve(b, *duties_of(b, from_disk())); }
const Setting* setting(const Solution& s, std::string_view path) {
  for (auto& one : s.settings)
    if (one.path == path) return &one;
  return nullptr;
}
constexpr double awg_14 = 2.081e-6;  // ASTM B258, m2

std::string added(const std::string& drawn) {
  return "[wiring.load.added]\ncurrent = \"12 A\"\nwhen = [\"key\"]\nlength = \"6 ft\"\ninsulation = \"105 degC\"\n"
         "bundle = 4\nzone = \"cabin\"\n" +
         drawn;
}

// By hand: 12 A at 13.5 V are up to 12.8 A on a bus of 14.4 V, 1.25 times that 16 A: a fuse of 20 A. 33 CFR 183.425
// (transcribed) at 105 degC, four in a bundle x 0.60: 14 AWG carries 35 x 0.60 = 21 A, 16 AWG 25 x 0.60 = 15 A.
TEST(SolveWires, AWireNobodyDrewIsChosenByTableAndDrop) {
  const auto s = solved(hand_car(added("")));
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_TRUE(setting(s, "wiring.load.added.gauge"));
  EXPECT_NEAR(setting(s, "wiring.load.added.gauge")->value, awg_14, 0.01e-6);
  EXPECT_EQ(setting(s, "wiring.load.added.fuse")->value, 20);
}

TEST(SolveWires, WhatIsDrawnAndDoesIsLeft) {
  const auto s = solved(hand_car(added("gauge = \"10 AWG\"\nfuse = \"20 A\"\n")));
  ASSERT_TRUE(s.solved()) << s.trouble;
  EXPECT_FALSE(setting(s, "wiring.load.added.gauge"));
  EXPECT_FALSE(setting(s, "wiring.load.added.fuse"));
}

TEST(SolveWires, AThinWireBehindAGreatFuseIsChanged) {
  const auto s = solved(hand_car(added("gauge = \"18 AWG\"\nfuse = \"30 A\"\n")));
  ASSERT_TRUE(s.solved()) << s.trouble;
  // Not a wire for the great fuse, but the fuse for the load, and the wire for that.
  EXPECT_EQ(setting(s, "wiring.load.added.fuse")->value, 20);
  EXPECT_NEAR(setting(s, "wiring.load.added.gauge")->value, awg_14, 0.01e-6);
}

TEST(SolveWires, AGreaterFuseThatStillProtectsItsWireIsLeft) {
  const auto s = solved(hand_car(added("gauge = \"10 AWG\"\nfuse = \"30 A\"\n")));  // 10 AWG carries 36 A
  ASSERT_TRUE(s.solved()) << s.trouble;
  EXPECT_FALSE(setting(s, "wiring.load.added.fuse"));
}

// With what it found every rule of wires and fuses holds, whatever was drawn before.
TEST(SolveWires, TheCarHoldsWithIt) {
  Build b = hand_car(added("gauge = \"18 AWG\"\nfuse = \"30 A\"\n"));
  for (auto& [name, load] : std::get<wiring::Input>(b.inputs).load.entries) load.wire.gauge.reset();
  const auto s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  Diagnostics faults;
  const auto texts = setting_texts(b, s.settings, {}, faults);
  ASSERT_FALSE(faults.any_fault());
  const Judging j(with_settings(b, texts));
  for (auto id :
       {"wiring.wire-current", "wiring.fuse-wire", "wiring.fuse-load", "wiring.feed-drop", "wiring.lamp-feed"})
    for (auto* f : j.of(id)) EXPECT_GE(f->margin().value_or(-1), 0) << id << " " << f->verdict.place;
}

TEST(SolveWires, NoWireIsSaid) {
  const auto none =
      solved(hand_car("[wiring.load.added]\ncurrent = \"280 A\"\nwhen = [\"key\"]\nlength = \"30 ft\"\nbundle = 9\n"));
  EXPECT_FALSE(none.solved());
  EXPECT_NE(none.trouble.find("added"), std::string::npos);
}

}  // namespace
