#include "duty/course.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "duty/tiny.hpp"

namespace sw {
namespace {

using tiny::lasting;

Course course_of(const Duty& d, const std::string& trace = "") {
  std::vector<CourseFault> faults;
  Course c = make_course("drive", d, trace, faults);
  EXPECT_TRUE(faults.empty()) << faults.front().problem;
  return c;
}

Duty driving(Curve trace) {
  Duty d = lasting(trace.x.back());
  d.speed_trace = std::move(trace);
  return d;
}

TEST(Course, HoldsOneSpeed) {
  Duty d = lasting(60);
  d.speed = Speed{20};
  const Course c = course_of(d);
  std::size_t hint = 0;
  for (double t : {0.0, 30.0, 60.0, 1e6}) {
    EXPECT_EQ(c.motion(t, hint).speed, 20);
    EXPECT_EQ(c.motion(t, hint).acceleration, 0);
  }
  EXPECT_EQ(c.step_limit(10), 50);
  EXPECT_FALSE(c.corner_at(0));
}

TEST(Course, FollowsTheTraceWhateverWasAskedBefore) {
  const Duty d = driving({{0, 10, 20, 40}, {0, 0, 10, 6}});
  const Course c = course_of(d);
  struct At {
    double t, speed, acceleration;
  };
  const At all[] = {{-5, 0, 0},     {0, 0, 0},     {10, 0, 1}, {15, 5, 1},
                    {20, 10, -0.2}, {30, 8, -0.2}, {40, 6, 0}, {50, 6, 0}};
  std::size_t hint = 0;
  for (auto& first : all)
    for (auto& second : all) {  // the look-up remembers where it was; the answer must not
      c.motion(first.t, hint);
      EXPECT_NEAR(c.motion(second.t, hint).speed, second.speed, 1e-12) << second.t << " after " << first.t;
      EXPECT_NEAR(c.motion(second.t, hint).acceleration, second.acceleration, 1e-12)
          << second.t << " after " << first.t;
    }
}

RC_GTEST_PROP(Course, NoStepRunsPastACorner, ()) {
  Curve trace{{0}, {0}};
  const int corners = *rc::gen::inRange(2, 12);
  for (int i = 0; i < corners; ++i) {
    trace.x.push_back(trace.x.back() + *rc::gen::inRange(1, 8000) / 100.0);
    trace.y.push_back(*rc::gen::inRange(0, 30));
  }
  const Duty d = driving(trace);
  const Course c = course_of(d);
  const double t = c.duration * *rc::gen::inRange(0, 1000) / 1000.0, limit = c.step_limit(t);
  RC_ASSERT(limit > 0);
  for (double corner : trace.x) RC_ASSERT(!(corner > t + 1e-6 && corner < t + limit - 1e-6));
}

TEST(Course, KnowsItsCornersToRounding) {
  const Duty d = driving({{0, 0.1 + 0.2, 20}, {0, 5, 5}});
  const Course c = course_of(d);
  EXPECT_TRUE(c.corner_at(0.3));
  EXPECT_FALSE(c.corner_at(0.3001));
  EXPECT_NEAR(c.step_limit(0.3), 19.7, 1e-9);  // not the rest of a rounding
}

TEST(Course, ReadsARecordedTraceAndTellsWhereItIsWrong) {
  Duty d = lasting(1);
  d.duration.reset();
  d.trace_file = "drive.csv";
  const Course c = course_of(d, "time_s,speed_kmh\n0,0\n10,36\n");
  EXPECT_EQ(c.duration, 10);
  std::size_t hint = 0;
  EXPECT_NEAR(c.motion(5, hint).speed, 5, 1e-12);
  std::vector<CourseFault> faults;
  make_course("drive", d, "time_s,speed_kmh\n0,0\n10,fast\n", faults);
  ASSERT_FALSE(faults.empty());
  EXPECT_NE(faults[0].problem.find("drive.csv:3"), std::string::npos) << faults[0].problem;
}

TEST(Course, WantsADuration) {
  Duty d = lasting(1);
  d.duration.reset();
  std::vector<CourseFault> faults;
  make_course("drive", d, "", faults);
  ASSERT_EQ(faults.size(), 1u);
  EXPECT_NE(faults[0].key.find("duration"), std::string::npos);
}

TEST(Course, PutsConditionsTogether) {
  Duty d = lasting(1);
  auto has = [&](Condition c) { return (course_of(d).conditions & bit(c)) != 0; };
  d.engine = EngineState::running;
  EXPECT_TRUE(has(Condition::always) && has(Condition::key) && has(Condition::running));
  EXPECT_FALSE(has(Condition::start) || has(Condition::air_conditioning) || has(Condition::night));
  d.air_conditioning = true;
  d.conditions = {"night", "rain"};
  EXPECT_TRUE(has(Condition::air_conditioning) && has(Condition::night) && has(Condition::rain));
  d.engine = EngineState::off;
  EXPECT_TRUE(has(Condition::always) && has(Condition::night));
  EXPECT_FALSE(has(Condition::key) || has(Condition::running) || has(Condition::air_conditioning));
  d.engine = EngineState::cranking;
  EXPECT_TRUE(has(Condition::start) && has(Condition::key));
  EXPECT_FALSE(has(Condition::running));
  d.conditions = {"fog"};
  std::vector<CourseFault> faults;
  make_course("drive", d, "", faults);
  ASSERT_EQ(faults.size(), 1u);
  EXPECT_NE(faults[0].problem.find("\"fog\""), std::string::npos);
}

TEST(Course, TakesTheAirOfItsHeight) {
  Duty d = lasting(1);
  d.altitude = Length{1609.344};
  d.ambient = Temperature{308.15};
  const Course c = course_of(d);
  // U.S. Standard Atmosphere 1976, gradient layer: 101325 (1 - 0.0065 H / 288.15)^5.2559, H = 1608.94 m geopotential.
  EXPECT_NEAR(c.pressure, 101325 * std::pow(1 - 0.0065 * 1608.94 / 288.15, 5.2559), 5);
  // Ideal gas, R = 287.05 J/(kg K).
  EXPECT_NEAR(c.density, c.pressure / (287.05 * 308.15), 1e-3);
}

}  // namespace
}  // namespace sw
