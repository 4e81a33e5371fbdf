#include "proof/judge.hpp"

#include "proof/doubt.hpp"

#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judged with(Verdict v) {
  static const Requirement none;
  return {&none, 0, 0, std::move(v)};
}

TEST(Judge, MarginIsTheDistanceToTheNearerLimit) {
  EXPECT_EQ(with({.predicted = 3.0, .high = 5.0}).margin().value(), 2.0);
  EXPECT_EQ(with({.predicted = 7.0, .high = 5.0}).margin().value(), -2.0);
  EXPECT_EQ(with({.predicted = 3.0, .low = 2.5}).margin().value(), 0.5);
  EXPECT_EQ(with({.predicted = 3.0, .low = 1.0, .high = 4.0}).margin().value(), 1.0);
  EXPECT_EQ(with({.predicted = 0.0, .low = 1.0, .high = 4.0}).margin().value(), -1.0);
  EXPECT_EQ(with({.rule = true}).margin().value(), 1.0);
  EXPECT_EQ(with({.rule = false}).margin().value(), -1.0);
  EXPECT_FALSE(with({.missing = {"a.b"}}).margin());
}

TEST(Judge, LooksAtDutiesByKeyAndByEngineState) {
  static constexpr std::string_view running[] = {"*running"}, named[] = {"grade", "*off"};
  Requirement r{.id = "x", .duties = running}, n{.id = "y", .duties = named};
  Duty on{.engine = EngineState::running}, off{.engine = EngineState::off}, crank{.engine = EngineState::cranking};
  EXPECT_TRUE(looks_at(r, "any", on));
  EXPECT_FALSE(looks_at(r, "any", off));
  EXPECT_FALSE(looks_at(r, "any", crank));
  EXPECT_TRUE(looks_at(n, "grade", on));
  EXPECT_FALSE(looks_at(n, "cruise", on));
  EXPECT_TRUE(looks_at(n, "parked", off));
}

// Each judgement of the hand car has a number or a verdict, and its place is its own.
TEST(Judge, TheSoundCarIsJudgedThroughout) {
  Judging j(hand_car());
  std::set<std::tuple<std::string_view, int, std::string>> seen;
  for (auto& one : j.all()) {
    EXPECT_TRUE(one.margin()) << one.requirement->id << " " << one.verdict.reason;
    EXPECT_TRUE(seen.insert({one.requirement->id, one.duty, one.verdict.place}).second)
        << one.requirement->id << "[" << one.verdict.place << "] twice";
    EXPECT_GT(one.verdict.scale, 0) << one.requirement->id;
  }
  EXPECT_GT(j.all().size(), 150u);
}

// A run that did not come through leaves no number behind, nor does one that starts where it ended.
TEST(Judge, WhatStartsFromALostRunIsLostToo) {
  // A climb of weeks asks for more work than a run may take.
  const std::string endless =
      "[duty.grade]\nspeed_trace = [[\"0 s\", \"10 mph\"], [\"300000 s\", \"60 mph\"]]\ngrade = 0.06\nambient = \"38 "
      "degC\"\nduration = \"500000 min\"\n";
  Judging j(hand_car(endless));
  for (auto duty : {"grade", "hot-soak"}) {
    EXPECT_FALSE(j.trace(duty).summary.usable()) << duty;
    const auto& v = j.one("cooling.boil-margin", duty).verdict;
    EXPECT_FALSE(v.predicted) << duty;
    EXPECT_NE(v.reason.find("did not come through"), std::string::npos) << v.reason;
  }
}

/// The hand car with a run that is no wire any more: its resistance is beyond all numbers.
Build without_a_network() {
  Build b = hand_car();
  EXPECT_TRUE(shift(b, "wiring.run.charge.length", std::numeric_limits<double>::infinity()));
  return b;
}

// What the network says of why it has no solution stands in every finding that could not be computed because of it.
TEST(Judge, ANetworkWithoutASolutionIsTheReason) {
  Judging j(without_a_network(), "hot-idle");
  EXPECT_FALSE(j.trace("hot-idle").summary.usable());
  int lost = 0;
  for (auto& one : j.all()) {
    if (one.margin() || !one.verdict.missing.empty()) continue;
    ++lost;
    auto& why = one.verdict.reason;
    EXPECT_NE(why.find("the car's electrical network (wiring) has no solution"), std::string::npos)
        << one.requirement->id << ": " << why;
    // A rule that solves the network by itself knows of no duty.
    if (!one.requirement->duties.empty()) {
      EXPECT_NE(why.find("hot-idle"), std::string::npos) << one.requirement->id << ": " << why;
    }
    EXPECT_NE(why.find("of charge"), std::string::npos) << "which wire: " << why;
  }
  EXPECT_GT(lost, 10);
  EXPECT_NE(j.one("cooling.coolant-temperature").verdict.reason.find("electrical network"), std::string::npos)
      << "the fans hang on it";
}

TEST(Judge, OnlyTheWantedDutiesAreJudged) {
  Judging j(hand_car(), "cruise");
  for (auto& one : j.all())
    if (one.duty >= 0) {
      EXPECT_EQ(j.key(one), "cruise");
    }
}

// A number that is not one becomes a reason: flow over nothing, with the pump's pulley turned by a still engine.
TEST(Judge, NoNumberWithoutAReason) {
  Judging j(hand_car("[duty.cruise]\nduration = \"5 min\"\nspeed = \"65 mph\"\nengine = \"off\"\n"), "cruise");
  for (auto& one : j.all()) {
    const bool number = one.verdict.predicted && std::isfinite(*one.verdict.predicted);
    const bool words = !one.verdict.reason.empty() || !one.verdict.missing.empty();
    EXPECT_TRUE(number || one.verdict.rule || (words && !one.verdict.predicted)) << one.requirement->id;
  }
  EXPECT_FALSE(j.one("cooling.coolant-rise", "cruise").verdict.predicted);
}

// A coolant that leaves its table has failed long before it gets there: that stays said, with what was continued.
TEST(Judge, WhatFailsBeforeARangeIsLeftFails) {
  Judging j(hand_car("[cooling.radiator]\nblocked_share = 0.9\n"), "grade");
  const auto& v = j.one("cooling.coolant-temperature", "grade").verdict;
  ASSERT_TRUE(v.predicted) << v.reason;
  EXPECT_GT(*v.predicted, *v.high);
  EXPECT_NE(v.reason.find("the coolant's figures end at 140 degC"), std::string::npos) << v.reason;
}

// An ignition-hot winding has no figure at all where it is too hot from the first instant; nothing fails of it.
TEST(Judge, OutsideFromTheStartIsUnproven) {
  Judging j(hand_car("[duty.storage]\nduration = \"1 day\"\nengine = \"off\"\nambient = \"-40 degC\"\n"), "storage");
  for (auto& one : j.all())
    if (one.duty >= 0 && one.requirement->id.starts_with("charging.")) {
      EXPECT_FALSE(one.margin()) << one.requirement->id;
    }
}
}  // namespace
