#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(WiringStatesRequirements, AnIgnitionFedFromRunAloneDoesNotStart) {
  const auto feed = [](const char* when) { return std::string("[wiring.load.ignition]\nwhen = ") + when + "\n"; };
  const std::string place = "ignition, cranked, no oil pressure yet";
  EXPECT_TRUE(*Judging(hand_car(feed("[\"key\"]")), "hot-idle").one("wiring.must-run", "", place).verdict.rule);
  EXPECT_FALSE(*Judging(hand_car(feed("[\"running\"]")), "hot-idle").one("wiring.must-run", "", place).verdict.rule);
}

TEST(WiringStatesRequirements, AStarterThatTurnsInGear) {
  const auto solenoid = [](const char* when) {
    return std::string("[wiring.load.starter_solenoid]\ncurrent = \"10 A\"\nwhen = ") + when + "\n";
  };
  const std::string place = "starter_solenoid, key at start, in gear";
  EXPECT_FALSE(*Judging(hand_car(solenoid("[\"start\"]")), "hot-idle").one("wiring.must-stop", "", place).verdict.rule);
  const Judging safe(hand_car(solenoid("[\"start and not in-gear\"]")), "hot-idle");
  EXPECT_TRUE(*safe.one("wiring.must-stop", "", place).verdict.rule);
  EXPECT_TRUE(*safe.one("wiring.must-run", "", "starter_solenoid, cranked, no oil pressure yet").verdict.rule);
}

TEST(WiringStatesRequirements, WhatACarDoesNotHaveIsNotAskedFor) {
  EXPECT_FALSE(Judging(hand_car(), "hot-idle").judged("wiring.must-run", "", "cluster, driving"));
}

}  // namespace
