// The coupled right-hand side: torn loops against closed forms, switches, and which states are alive.
#include "duty/rhs.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

#include "duty/tiny.hpp"

namespace sw {
namespace {

using tiny::Car;
using tiny::lasting;

constexpr Port slip{"slip", &kind::number}, load{"load", &kind::torque};

/// A loop through two blocks: load = gain (1 - slip), slip = law(slip, load). Torn at the slip.
struct Loop {
  double gain, grip;
  double (*law)(const Loop&, double guess, double load);
};
constexpr Port loads_reads[] = {slip}, loads_writes[] = {load};
constexpr Port slips_reads[] = {slip, load}, slips_writes[] = {slip};
constexpr Block loop[] = {
    {"loads",
     loads_reads,
     loads_writes,
     {},
     {},
     [](const void* m, View& v) { v.set(0, static_cast<const Loop*>(m)->gain * (1 - v.in(0))); }},
    {.name = "slips",
     .reads = slips_reads,
     .writes = slips_writes,
     .evaluate =
         [](const void* m, View& v) {
           v.set(0, static_cast<const Loop*>(m)->law(*static_cast<const Loop*>(m), v.in(0), v.in(1)));
         },
     .tear = "slip",
     .tear_low = 0,
     .tear_high = 0.95},
};

/// What a belt does: none below its grip, and beyond it just as much as brings the load down to the grip.
double kinked(const Loop& m, double guess, double load) {
  return std::clamp(guess + (load - m.grip) / m.grip, 0.0, 0.95);
}

double solved(const Car& car, Rhs& rhs) {
  double none = 0;
  rhs(0, &none, &none);
  return rhs.values()[car.slot("slip")];
}

RC_GTEST_PROP(Tear, ClosesAKinkedLoop, ()) {
  const Loop m{*rc::gen::inRange(1, 4000) / 100.0, *rc::gen::inRange(100, 2000) / 100.0, kinked};
  const Car car(loop, lasting(1), &m);
  Rhs rhs(car.graph, car.course);
  rhs.start();
  // gain (1 - s) = grip where it slips at all.
  const double exact = std::clamp(1 - m.grip / m.gain, 0.0, 0.95);
  RC_ASSERT(std::abs(solved(car, rhs) - exact) < 1e-6);
  RC_ASSERT(rhs.open_loop() == nullptr);
  RC_ASSERT(std::abs(solved(car, rhs) - exact) < 1e-6);  // and again from there
}

TEST(Tear, ClosesALoopThatIsAllSlope) {
  // slip = 1e3 (0.3 - slip): slope -1001 between guess and answer.
  const Loop m{1, 1, [](const Loop&, double guess, double) { return 1e3 * (0.3 - guess); }};
  const Car car(loop, lasting(1), &m);
  Rhs rhs(car.graph, car.course);
  rhs.start();
  EXPECT_NEAR(solved(car, rhs), 300.0 / 1001, 1e-6);
  EXPECT_EQ(rhs.open_loop(), nullptr);
}

struct OpenLaw {
  const char* why;
  double (*law)(const Loop&, double, double);
};
class OpenLoop : public testing::TestWithParam<OpenLaw> {};

TEST_P(OpenLoop, IsToldAndEndsTheRun) {
  const Loop m{1, 1, GetParam().law};
  const Car car(loop, lasting(1), &m);
  Rhs rhs(car.graph, car.course);
  rhs.start();
  solved(car, rhs);
  ASSERT_NE(rhs.open_loop(), nullptr);
  EXPECT_EQ(rhs.open_loop()->name, "slip");
  const Trace t = car.run();
  EXPECT_EQ(t.summary.outcome, Outcome::not_converged);
  EXPECT_NE(t.summary.reason.find("slip"), std::string::npos) << t.summary.reason;
}

INSTANTIATE_TEST_SUITE_P(
    Tear, OpenLoop,
    testing::Values(
        OpenLaw{"no root in the bracket", [](const Loop&, double guess, double) { return guess + 0.5; }},
        OpenLaw{"a jump over the root", [](const Loop&, double guess, double) { return guess < 0.4 ? 0.9 : 0.1; }},
        OpenLaw{"no number", [](const Loop&, double, double) { return std::numeric_limits<double>::quiet_NaN(); }}));

TEST(Tear, ResidualBeginsAnewWithStart) {
  const Loop m{1, 1, [](const Loop&, double guess, double) { return guess + 0.5; }};
  const Car car(loop, lasting(1), &m);
  Rhs rhs(car.graph, car.course);
  rhs.start();
  solved(car, rhs);
  EXPECT_NEAR(rhs.tear_residual(), 0.5, 1e-9);
  rhs.start();
  EXPECT_EQ(rhs.tear_residual(), 0);
}

/// One state for each method, and one for all.
namespace alive {
constexpr Port t{"t", &kind::number}, c{"c", &kind::number}, p{"p", &kind::number}, r{"r", &kind::number},
    all{"all", &kind::number};
double start(const void*, const Duty&) { return 7; }
constexpr StateInfo states[] = {{t, start, 1, in_thermal},
                                {c, start, 1, in_crank},
                                {p, start, 1, in_pull},
                                {r, start, 1, in_rest},
                                {all, start, 1, in_all}};
constexpr Block blocks[] = {{"alive", {}, {}, states, {}, [](const void*, View& v) {
                               for (int i = 0; i < 5; ++i) v.rate(i, 1);
                             }}};
}  // namespace alive

TEST(Rhs, OnlyStatesAliveInTheMethodMove) {
  for (auto [method, name] :
       {std::pair{Method::thermal, "t"}, {Method::crank, "c"}, {Method::pull, "p"}, {Method::rest, "r"}}) {
    Duty d = lasting(10);
    d.method = method;
    const Car car(alive::blocks, d);
    EXPECT_EQ(Rhs(car.graph, car.course).size(), 2u);
    const Trace trace = car.run();
    for (auto port : {"t", "c", "p", "r"})
      EXPECT_NEAR(trace.at(trace.rows() - 1, car.slot(port)), std::string_view(port) == name ? 17 : 7, 1e-9) << port;
    EXPECT_NEAR(trace.at(trace.rows() - 1, car.slot("all")), 17, 1e-9);
  }
}

TEST(Rhs, StartFromTakesOverEveryValue) {
  const Car car(alive::blocks, lasting(10));
  const Trace before = car.run();
  Rhs rhs(car.graph, car.course);
  rhs.start();
  rhs.start_from(&before.values[(before.rows() - 1) * before.width]);
  double y[2];
  rhs.get(y);
  EXPECT_NEAR(y[0], 17, 1e-9);
}

/// Fan stages: a level that rises one at a time up to what is asked.
TEST(Rhs, SettlesStageByStageAndCountsMoves) {
  static constexpr Port level{"level", &kind::number};
  static constexpr Port reads[] = {level};
  static constexpr SwitchInfo switches[] = {
      {level, [](const void*, const Duty&) { return 0.0; },
       [](const void*, const View&, double now) { return std::min(now + 1, 4.0); },
       [](const void*, const View&, double now) { return 3.5 - now; }}};
  static constexpr Block blocks[] = {{"stages", reads, {}, {}, switches, [](const void*, View&) {}}};
  const Car car(blocks, lasting(1));
  Rhs rhs(car.graph, car.course);
  rhs.start();
  double none = 0;
  rhs(0, &none, &none);
  std::size_t which = 9;
  EXPECT_EQ(rhs.guard(&which), 3.5);
  EXPECT_EQ(which, 0u);
  EXPECT_EQ(rhs.switch_port(which).name, "level");
  EXPECT_EQ(rhs.settle(0, &none, &none), 4);
  EXPECT_LE(rhs.guard(), 0);
  EXPECT_EQ(rhs.settle(0, &none, &none), 0);
}

TEST(Rhs, HoldsAPortAtAnother) {
  static constexpr Port made{"made", &kind::number}, doubled{"doubled", &kind::number};
  static constexpr Port reads[] = {made};
  static constexpr Port writes[] = {made}, more[] = {doubled};
  static constexpr Block blocks[] = {
      {"makes", {}, writes, {}, {}, [](const void*, View& v) { v.set(0, 3); }},
      {"doubles", reads, more, {}, {}, [](const void*, View& v) { v.set(0, 2 * v.in(0)); }}};
  const Car car(blocks, lasting(1));
  Rhs rhs(car.graph, car.course);
  rhs.start();
  rhs.hold(static_cast<std::uint16_t>(car.slot("made")), static_cast<std::uint16_t>(car.slot("duty.ambient")));
  double none = 0;
  rhs(0, &none, &none);
  EXPECT_DOUBLE_EQ(rhs.values()[car.slot("doubled")], 2 * car.duty.ambient->si);
}

}  // namespace
}  // namespace sw
