#include "model/duty.hpp"

#include <gtest/gtest.h>

#include "document/document.hpp"
#include "field/walk.hpp"
#include "model/outside.hpp"

namespace sw {
namespace {

TEST(Duty, DefaultsLeaveNothingTheRunNeedsOpen) {
  Duty d;
  EvidenceMap evidence;
  fill_defaults(Duty::fields(), &d, "duty.x", evidence);
  EXPECT_EQ(d.method, Method::thermal);
  EXPECT_EQ(d.engine, EngineState::running);
  EXPECT_EQ(d.start, StartFrom::warm);
  ASSERT_TRUE(d.ambient && d.altitude && d.sun && d.grade && d.payload && d.charge);
  EXPECT_NEAR(d.ambient->si, 298.15, 1e-9);
  EXPECT_FALSE(d.duration || d.speed || d.speed_trace);  // the duty itself must say how long
}

TEST(Duty, ReadsItsWordsInTheOrderOfTheirNames) {
  Diagnostics faults;
  EvidenceMap evidence;
  for (std::size_t i = 0; i < std::size(method_names); ++i) {
    Duty d;
    read(parse_text("method = \"" + std::string(method_names[i]) + "\"", 0, false, faults), Duty::fields(), &d, "",
         evidence, faults);
    EXPECT_EQ(d.method, static_cast<Method>(i)) << method_names[i];
  }
  EXPECT_FALSE(faults.any_fault());
}

TEST(Condition, HasABitForEveryName) {
  EXPECT_EQ(bit(Condition::accessory), 1u << (std::size(condition_names) - 1));
  EXPECT_EQ(condition_names[static_cast<std::size_t>(Condition::air_conditioning)], "air-conditioning");
  EXPECT_EQ(condition_names[static_cast<std::size_t>(Condition::start)], "start");
}

TEST(Outside, NamesEachPortOnce) {
  for (auto& p : outside::all) {
    EXPECT_TRUE(p.name.starts_with("duty.")) << p.name;
    int same = 0;
    for (auto& q : outside::all) same += q.name == p.name;
    EXPECT_EQ(same, 1) << p.name;
  }
}

}  // namespace
}  // namespace sw
