#include <gtest/gtest.h>

#include "solve/list.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return fan_set_points.solve(b, *duties_of(b, from_disk())); }
Build with(Build b, const Solution& s) {
  for (auto& one : s.settings) {
    auto leaf = find_leaf(build_fields(), static_cast<void*>(&b), one.path);
    leaf.field->access.set(leaf.owner, one.value);
  }
  return b;
}
/// Fans that go off below the thermostat's opening never stop.
Build never_off() {
  Build b = roomy_car();
  for (auto& [name, f] : std::get<cooling::Input>(b.inputs).fan.entries) {
    f.on = Temperature{273.15 + 82};
    f.off = Temperature{273.15 + 72};
  }
  return b;
}

TEST(SolveFanSetPoints, WhatIsFoundHoldsByTheRequirements) {
  const Build b = never_off();
  EXPECT_LT(Judging(b, "hot-idle").one("cooling.fan-set-points").margin().value(), 0);
  const Solution s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  ASSERT_EQ(s.settings.size(), 4u) << "on and off of two fans";
  const Judging j(with(b, s));
  for (std::string_view id : {"cooling.fan-set-points", "cooling.coolant-temperature", "cooling.fan-cycling"})
    for (auto* one : j.of(id)) {
      if (one->duty >= 0 && j.key(*one) != "hot-idle" && j.key(*one) != "parade") continue;
      EXPECT_GE(*one->margin(), 0) << id << " " << one->verdict.place;
    }
}

// A thermostat that opens just below the coolant's limit leaves no room.
TEST(SolveFanSetPoints, SaysWhatHoldsNowhere) {
  Build b = hand_car();
  std::get<cooling::Input>(b.inputs).thermostat.opens = Temperature{273.15 + 112};
  std::get<cooling::Input>(b.inputs).thermostat.fully_open.reset();
  const Solution s = solved(b);
  EXPECT_FALSE(s.solved());
  EXPECT_NE(s.trouble.find("cooling."), std::string::npos) << s.trouble;
}

TEST(SolveFanSetPoints, AsksForTheThermostat) {
  Build b = hand_car();
  std::get<cooling::Input>(b.inputs).thermostat.opens.reset();
  EXPECT_EQ(solved(b).missing, std::vector<std::string>{"cooling.thermostat.opens"});
}

}  // namespace
