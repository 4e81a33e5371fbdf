#include "duty/same_run.hpp"

#include <gtest/gtest.h>

#include "duty/duties.hpp"
#include "proof/doubt.hpp"
#include "systems/rig.hpp"

namespace sw {
namespace {

struct Runs {
  Build build = rig::hand_car();
  Car car{build};
  std::unique_ptr<DutySet> set = duties_of(build, from_disk());
  std::vector<Trace> traces = run_duties(car, *set);
  BaseRuns base{car, *set, traces};
  std::size_t at(std::string_view key) const {
    for (std::size_t i = 0; i < set->courses.size(); ++i)
      if (set->courses[i].key == key) return i;
    throw std::out_of_range(std::string(key));
  }
  bool same_with(const std::string& path, double by, std::string_view duty) const {
    Build moved = build;
    EXPECT_TRUE(shift(moved, path, by)) << path;
    return base.same(Car(moved), at(duty)) != nullptr;
  }
};

TEST(SameRun, TheCarItselfDoesTheSameInEveryDuty) {
  const Runs r;
  for (std::size_t i = 0; i < r.traces.size(); ++i) EXPECT_TRUE(r.base.same(Car(r.build), i)) << r.set->courses[i].key;
}

TEST(SameRun, WhatMovesARunIsSeenHoweverLittle) {
  const Runs r;
  EXPECT_FALSE(r.same_with("vehicle.weight", 1e-6, "grade"));
  EXPECT_FALSE(r.same_with("charging.battery.capacity", 1e-3, "cold-crank"));
}

TEST(SameRun, ASetPointThatIsNotReachedYetIsSeenByItsGuard) {
  // At hot idle with the compressor on the fans run anyhow; where they would switch shows in the guard alone.
  const Runs r;
  EXPECT_FALSE(r.same_with("cooling.thermostat.opens", 1e-3, "warm-up"));
}

TEST(SameRun, WhatARunDoesNotAskForIsTakenOver) {
  const Runs r;
  EXPECT_TRUE(r.same_with("engine.highest_oil", 5, "grade"));
  EXPECT_TRUE(r.same_with("engine.highest_oil", 5, "cold-crank"));
}

TEST(SameRun, TakenOverOrRunAnewTheTracesAreTheSame) {
  const Runs r;
  for (auto* path : {"vehicle.weight", "engine.idle_speed", "cooling.thermostat.opens", "charging.battery.capacity",
                     "belts.belt.front.tension"}) {
    Build moved = r.build;
    ASSERT_TRUE(shift(moved, path, 0.02 * *value_at(r.build, path)));
    const Car car(moved);
    const auto anew = run_duties(car, *r.set), spared = run_duties(car, *r.set, {}, {.base = &r.base});
    for (std::size_t i = 0; i < anew.size(); ++i)
      EXPECT_EQ(anew[i].values, spared[i].values) << path << " in " << r.set->courses[i].key;
  }
}

}  // namespace
}  // namespace sw
