#include <gtest/gtest.h>

#include "solve/list.hpp"
#include "solve/settings.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return gauge_table.solve(b, *duties_of(b, from_disk())); }
const std::string coolant =
    "[gauges.temperature.coolant]\nhow = \"electronic\"\nlow = \"110 degF\"\nhigh = \"240 degF\"\nusual = \"200 "
    "degF\"\n"
    "supply = \"5 V\"\npull_up = \"330 ohm\"\nsender_family = \"287-22\"\nground = \"block\"\ntable_points = 12\n"
    "expects = [[\"110 degF\", \"900 ohm\"], [\"240 degF\", \"60 ohm\"]]\n";
const std::string other = "[gauges.temperature.coolant.other.controller]\npull_up = \"1 kohm\"\nsupply = \"5 V\"\n";

std::vector<SettingText> texts(const Build& b, const Solution& s) {
  Diagnostics faults;
  auto all = setting_texts(b, s.settings, {}, faults);
  for (auto& d : faults.all()) ADD_FAILURE() << d.problem;
  return all;
}

// The table makes the reading hold, alone on the sender and with another reader that pulls its wire up, in ohms and in
// volts, by the requirement itself and as it is written.
TEST(SolveGaugeTable, WhatIsFoundHoldsByTheReading) {
  for (const std::string& change :
       {coolant, coolant + other, coolant + "programs = \"volts\"\n", coolant + "programs = \"volts\"\n" + other}) {
    const Build b = hand_car(change);
    EXPECT_LT(Judging(b, "hot-idle").one("gauges.temperature-reading", {}, "coolant").margin().value(), 0);
    const Solution s = solved(b);
    ASSERT_TRUE(s.solved()) << s.trouble;
    ASSERT_EQ(s.settings.size(), 1u);
    const bool volts = change.find("volts") != std::string::npos;
    EXPECT_EQ(s.settings[0].path,
              volts ? "gauges.temperature.coolant.input_volts" : "gauges.temperature.coolant.expects");
    ASSERT_TRUE(s.settings[0].curve);
    EXPECT_LE(s.settings[0].curve->x.size(), 12u);
    const Judging after(with_settings(b, texts(b, s)), "hot-idle");
    for (auto* one : after.of("gauges.temperature-reading")) EXPECT_GE(*one->margin(), 0) << one->verdict.place;
  }
}

TEST(SolveGaugeTable, TheTextReadsBackAsTheCurve) {
  const Build b = hand_car(coolant);
  const auto all = texts(b, solved(b));
  ASSERT_EQ(all.size(), 1u);
  Diagnostics faults;
  const auto text = write_settings("[gauges.temperature.coolant]\nhow = \"electronic\" # so\n", all, faults);
  ASSERT_TRUE(text);
  const Opened again = open("x.toml", [&](const std::filesystem::path&) { return text; });
  EXPECT_FALSE(again.faults.any_fault());
  const Leaf leaf = find_leaf(build_fields(), static_cast<const void*>(&again.build), all[0].path);
  EXPECT_TRUE(stands(all[0], leaf));
  EXPECT_EQ(again.build.evidence.at(all[0].path).source, Source::solved);
}

TEST(SolveGaugeTable, RefusesTooFewRowsAndWhatCannotBeKeyedIn) {
  std::string three = coolant;
  three.replace(three.find("= 12"), 4, "= 3");
  const Solution few = solved(hand_car(three));
  EXPECT_FALSE(few.solved());
  EXPECT_NE(few.trouble.find("a cluster that takes more"), std::string::npos) << few.trouble;
  const Solution bimetal =
      solved(hand_car("[gauges.fuel.tank]\nhow = \"balance\"\nexpects_family = \"0-90\"\nsender_family = \"0-90\"\n"));
  EXPECT_NE(bimetal.trouble.find("cannot be keyed in"), std::string::npos) << bimetal.trouble;
}

}  // namespace
