#include "proof/touched.hpp"

#include <gtest/gtest.h>

#include "proof/doubt.hpp"
#include "systems/judged.hpp"

namespace sw {
namespace {

/// Index of a duty by its key.
std::size_t at(const DutySet& set, std::string_view key) {
  for (std::size_t i = 0; i < set.courses.size(); ++i)
    if (set.courses[i].key == key) return i;
  throw std::out_of_range(std::string(key));
}

TEST(Touched, WhatEverythingHangsOnIsRunInEveryDutyOfItsFindings) {
  const rig::Judging j(rig::hand_car());
  const std::vector<bool> all(j.set().courses.size(), true);
  const Touched touched(j.car(), j.set(), all, 0);
  for (auto key : {"hot-idle", "cruise", "cold-crank", "full-throttle"}) {
    EXPECT_TRUE(touched.by("vehicle.weight")->duties[at(j.set(), "cruise")]);
    EXPECT_TRUE(touched.by("charging.battery.capacity")->duties[at(j.set(), key)]) << key;
  }
}

TEST(Touched, TheDutyStaticRulesReadIsAlwaysRun) {
  const rig::Judging j(rig::hand_car());
  const std::vector<bool> all(j.set().courses.size(), true);
  const std::size_t first = at(j.set(), "commute");
  const Touched touched(j.car(), j.set(), all, first);
  EXPECT_TRUE(touched.by("brakes.pedal.ratio")->duties[first]);
  EXPECT_FALSE(touched.by("brakes.pedal.ratio")->duties[at(j.set(), "cruise")]);
  EXPECT_EQ(touched.by("nobody.knows.it"), nullptr);
}

TEST(Touched, NoMarginMovesOfWhatIsLeftOut) {
  // Each system in turn: whatever it moves, what is said to be untouched stands still.
  const Build base = rig::hand_car();
  const rig::Judging j(base);
  const std::vector<bool> all(j.set().courses.size(), true);
  const Touched touched(j.car(), j.set(), all, 0);
  for (auto* path : {"cooling.thermostat.opens", "belts.belt.front.tension", "engine.idle_speed", "driveline.axle",
                     "charging.battery.capacity", "brakes.pedal.ratio"}) {
    Build moved = base;
    ASSERT_TRUE(shift(moved, path, 0.01 * *value_at(base, path))) << path;
    const rig::Judging after(moved);
    const Touched::Reach& reach = *touched.by(path);
    // In a duty that is run again for others' sake the steps fall elsewhere: to a thousandth of the scale they agree.
    for (auto& b : j.all()) {
      const bool run = b.duty < 0 || reach.duties[static_cast<std::size_t>(b.duty)];
      if (reach.requirements.contains(b.requirement)) continue;
      for (auto& m : after.all())
        if (m.same_as(b) && b.margin()) {
          EXPECT_NEAR(m.margin().value(), *b.margin(), run ? 1e-3 * b.verdict.scale : 0)
              << path << " moves " << b.requirement->id;
        }
    }
  }
}

}  // namespace
}  // namespace sw
