#include "systems/judged.hpp"

#include "solve/list.hpp"
#include "solve/settings.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return ground_points.solve(b, *duties_of(b, from_disk())); }
const Setting* setting(const Solution& s, std::string_view path) {
  for (auto& one : s.settings)
    if (one.path == path) return &one;
  return nullptr;
}

const std::string dash =
    "[wiring.run.dash_ground]\nfrom = \"dash\"\nto = \"body\"\nresistance = \"5 mohm\"\n"
    "[wiring.load.blower]\nto = \"dash\"\n"
    "[wiring.load.cluster]\ncurrent = \"0.6 A\"\nbehaviour = \"current\"\nwhen = [\"key\"]\nto = \"dash\"\n";

// 9 A of blower over 5 mohm lift the gauges' ground by 45 mV; grounded to the body they do not, and the gauges stay.
TEST(SolveGroundPoints, WhatLiftsTheGaugesIsMoved) {
  const Build b = hand_car(dash);
  const auto s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_TRUE(setting(s, "wiring.load.blower.to")) << s.says;
  EXPECT_EQ(setting(s, "wiring.load.blower.to")->words, "body");
  EXPECT_FALSE(setting(s, "wiring.load.cluster.to"));
  Diagnostics faults;
  const auto texts = setting_texts(b, s.settings, {}, faults);
  ASSERT_FALSE(faults.any_fault());
  const Build then = with_settings(b, texts);
  EXPECT_EQ(std::get<wiring::Input>(then.inputs).load.find("blower")->to, "body");
  EXPECT_EQ(lines_to_paste(texts).find("to = \"body\"") != std::string::npos, true);
}

// 24 A of fans over 12 mohm of a coated support: 0.29 V in the coolant.
TEST(SolveGroundPoints, FansThatLiftTheSupportGoToTheBlock) {
  const std::string support =
      "[wiring.fans]\nto = \"support\"\n[wiring.run.support_path]\nfrom = \"support\"\nto = \"ground\"\nresistance = "
      "\"12 mohm\"\n";
  const auto s = solved(hand_car(support));
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_TRUE(setting(s, "wiring.fans.to")) << s.says;
  EXPECT_EQ(setting(s, "wiring.fans.to")->words, "block");
  EXPECT_FALSE(setting(solved(hand_car(support + "[cooling.radiator]\nisolated = true\n")), "wiring.fans.to"));
}

TEST(SolveGroundPoints, AThinStrapIsThickened) {
  const auto s = solved(hand_car("[wiring.run.body_ground]\ngauge = \"14 AWG\"\n"));
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_TRUE(setting(s, "wiring.run.body_ground.gauge")) << s.says;
  EXPECT_GT(setting(s, "wiring.run.body_ground.gauge")->value, 2.1e-6);
}

}  // namespace
