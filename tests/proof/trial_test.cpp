#include "proof/trial.hpp"

#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string weak_fans = "[cooling.fan.left]\nflow = \"250 cfm\"\n[cooling.fan.right]\nflow = \"200 cfm\"\n";
const std::string strong_fans = "[cooling.fan.left]\nflow = \"1100 cfm\"\n[cooling.fan.right]\nflow = \"1100 cfm\"\n";
const std::string more_in_rain =
    "[wiring.load.more]\ncurrent = \"150 A\"\nwhen = [\"rain\"]\ngauge = \"2 AWG\"\nlength = \"3 ft\"\nfuse = \"200 "
    "A\"\n";

/// Fans too weak for a hot idle; the rain is looked at too.
struct Weak {
  Weak() : set(duties_of(build, from_disk())) {
    for (auto& c : set->courses) wanted.push_back(c.key == "hot-idle" || c.key == "night-rain");
    const Car car(build);
    base = judge(car, *set, run_duties(car, *set, wanted), wanted);
    while (base.at(index).requirement->id != "cooling.coolant-temperature" ||
           set->courses[static_cast<std::size_t>(base[index].duty)].key != "hot-idle")
      ++index;
  }
  Question question() const { return {build, *set, base, index, 0.0, none}; }

  Build build = hand_car(weak_fans);
  std::unique_ptr<DutySet> set;
  std::vector<bool> wanted;
  std::vector<Judged> base;
  Study none;
  std::size_t index = 0;
};

TEST(Trial, WhatMendsOneDutyAndBreaksAnotherIsNoRemedy) {
  const Weak w;
  ASSERT_LT(w.base[w.index].margin().value(), 0);
  const Question q = w.question();
  const Build good = hand_car(strong_fans), bad = hand_car(strong_fans + more_in_rain);
  EXPECT_TRUE(Trial(q, good).mends());
  Trial rain(q, bad);
  EXPECT_GE(rain.margin().value(), 0) << "it holds in its own duty";
  EXPECT_FALSE(rain.harms_own(true)) << "and breaks nothing there";
  EXPECT_TRUE(rain.harms_any(true)) << "but leaves the car short of current in the rain";
  EXPECT_FALSE(rain.mends());
}

TEST(Trial, AnswersTheSameWhereTheCarIsJudgedAlready) {
  const Weak w;
  const Question q = w.question();
  for (auto& change : {strong_fans, strong_fans + more_in_rain, weak_fans}) {
    const Build changed = hand_car(change);
    const auto judged = judge_changed(changed, *w.set, w.wanted);
    ASSERT_TRUE(judged);
    EXPECT_EQ(Trial(q, changed, {}, &*judged).mends(), Trial(q, changed).mends()) << change;
  }
}

TEST(Trial, ACarThatCannotBeMendsNothing) {
  const Weak w;
  const Question q = w.question();
  const Build faulty = faulty_car("[wiring.load.more]\ncurrent = \"5 A\"\nwhen = [\"rain\"]\nfrom = \"nowhere\"\n");
  ASSERT_TRUE(Car(faulty).faults().any_fault());
  Trial trial(q, faulty);
  EXPECT_FALSE(trial.margin());
  EXPECT_FALSE(trial.mends());
}

}  // namespace
