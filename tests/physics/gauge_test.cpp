#include "physics/gauge.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

using namespace sw;
using namespace sw::physics;

namespace {

constexpr double mph = 0.44704;

// A bimetal of 13 ohm on 5 V: full at 0.22 A, empty at 0.06 A, that is at 9.7 and 70.3 ohm. At 33 ohm 0.109 A flow:
// (0.109 - 0.06) / 0.16 = 0.30 of the scale (worked by hand).
Gauge bimetal() {
  return {.kind = GaugeKind::bimetal, .supply_v = 5, .ohm = 13, .current_low_a = 0.06, .current_high_a = 0.22};
}

TEST(Gauge, BimetalByItsCurrent) {
  EXPECT_NEAR(gauge_shown(bimetal(), {}, 33).value, 0.3043, 1e-4);
  EXPECT_NEAR(gauge_wants_ohm(bimetal(), 1), 9.727, 1e-3);
  EXPECT_NEAR(gauge_wants_ohm(bimetal(), 0), 70.33, 1e-2);
  EXPECT_EQ(gauge_shown(bimetal(), {}, 240).value, 0);
  EXPECT_TRUE(at_stop(gauge_shown(bimetal(), {}, 240)));
  EXPECT_NEAR(gauge_shown(bimetal(), {.supply_v = 5.5}, 33).value, (5.5 / 46 - 0.06) / 0.16, 1e-9);
}

// By the curve of its ohms the same bimetal shows what they say at its own supply, and at 10 % more the value whose
// ohms would draw that much.
TEST(Gauge, BimetalByItsCurve) {
  Gauge g = bimetal();
  g.current_low_a.reset();
  g.expects = {{0, 1}, {73, 10}};
  EXPECT_NEAR(gauge_shown(g, {}, 41.5).value, 0.5, 1e-9);
  const double seen = 46 / 1.1 - 13;
  EXPECT_NEAR(gauge_shown(g, {.supply_v = 5.5}, 33).value, (73 - seen) / 63, 1e-9);
}

Gauge electronic() {
  return {.kind = GaugeKind::electronic,
          .low = 311,
          .high = 394,
          .supply_v = 5,
          .ohm = 330,
          .expects = {{311, 366.5, 394}, {564, 64.3, 27.3}},
          .law = SenderLaw::thermistor};
}

TEST(Gauge, ElectronicReadsByRatioAndLeavesItByALift) {
  const Gauge g = electronic();
  EXPECT_NEAR(gauge_shown(g, {}, 64.3).value, 366.5, 1e-9);
  // Its ground 0.115 V up: the sender's lies that much below it. By hand: node 0.8154 - 0.115 x 330 / 394.3 = 0.7191 V,
  // which 5 V through 330 ohm make of 55.4 ohm.
  const GaugeCircuit lifted{.lift_v = -0.115};
  EXPECT_NEAR(gauge_input_v(g, lifted, 64.3), 0.7191, 1e-4);
  EXPECT_NEAR(gauge_wants_ohm(g, gauge_shown(g, lifted, 64.3).value), 55.43, 0.01);
}

TEST(Gauge, SecondReaderPullsItUp) {  // 330 and 2200 ohm to 5 V: node of 64.3 ohm by Millman
  const Reader other[] = {{5, 2200}};
  const double both = 1 / (1 / 330.0 + 1 / 2200.0), v = 5 * 64.3 / (64.3 + both);
  EXPECT_NEAR(gauge_input_v(electronic(), {.others = other}, 64.3), v, 1e-12);
  EXPECT_LT(gauge_shown(electronic(), {.others = other}, 64.3).value, 366.5) << "more ohms are taken for cooler";
}

TEST(Gauge, ByVolts) {
  Gauge g = electronic();
  g.by_volts = true;
  g.expects = {{311, 394}, {3, 0.4}};
  EXPECT_NEAR(gauge_shown(g, {}, 330 * 1.7 / 3.3).value, 352.5, 1e-9);  // 1.7 V, the middle
  EXPECT_NEAR(gauge_wants_ohm(g, 352.5), 170, 1e-9);
}

TEST(Gauge, SlopesAreDerivatives) {
  const Reader other[] = {{5, 2200}};
  const GaugeCircuit c{.network = {5, 400}, .joint_ohm = 2, .others = other, .lift_v = 0.05, .supply_v = 5.2};
  Gauge curve = bimetal(), volts = electronic();
  curve.current_low_a.reset();
  curve.expects = {{0, 1}, {73, 10}};
  volts.by_volts = true;
  volts.expects = {{311, 394}, {3, 0.2}};
  for (const Gauge& g : {bimetal(), curve, electronic(), volts}) {
    const double step = 1e-3;
    const double by_difference = (gauge_shown(g, c, 40 + step).value - gauge_shown(g, c, 40 - step).value) / (2 * step);
    EXPECT_NEAR(gauge_shown(g, c, 40).slope, by_difference, 1e-5 * std::abs(by_difference) + 1e-9);
    EXPECT_NE(by_difference, 0);
  }
}

// Whatever monotone curve a gauge was drawn with: alone and without lift it shows what is true of the ohms it wants.
RC_GTEST_PROP(Gauge, ShowsTheTruthOfWhatItWants, ()) {
  const auto count = *rc::gen::inRange<std::size_t>(2, 10);
  Gauge g{.kind = GaugeKind::electronic, .supply_v = 5, .ohm = 220};
  double x = 0, y = 1;
  for (std::size_t i = 0; i < count; ++i) {
    g.expects.x.push_back(x);
    g.expects.y.push_back(y);
    x += *rc::gen::inRange(1, 50), y += *rc::gen::inRange(1, 200);
  }
  g.low = g.expects.x.front(), g.high = g.expects.x.back();
  if (*rc::gen::arbitrary<bool>())
    for (auto& ohm : g.expects.y) ohm = y - ohm;  // falling
  const double value = g.low + (g.high - g.low) * *rc::gen::inRange(0, 1001) / 1000.0;
  RC_ASSERT(std::abs(gauge_shown(g, {}, gauge_wants_ohm(g, value)).value - value) < 1e-6 * g.high);
}

TEST(Gauge, TableRowsFollowTheKnees) {
  const Curve bent{{0, 1, 2, 3, 4, 5}, {0, 1, 2, 3, 14, 25}};  // one knee, at 3
  EXPECT_EQ(table_rows(bent, 10).x, (std::vector<double>{0, 3, 5}));
  EXPECT_EQ(table_rows(bent, 2).x, (std::vector<double>{0, 5}));
}

// A table of all points gives back each of them; one of fewer rows keeps the ends and the way it runs.
RC_GTEST_PROP(Gauge, TableInvertsTheCurve, ()) {
  const auto count = *rc::gen::inRange<std::size_t>(3, 30);
  Curve points;
  double x = 0, y = 1000;
  for (std::size_t i = 0; i < count; ++i) {
    points.x.push_back(x), points.y.push_back(y);
    x += *rc::gen::inRange(1, 50), y -= *rc::gen::inRange(1, 30);
  }
  const Curve all = table_rows(points, count), some = table_rows(points, 2 + count / 2);
  for (std::size_t i = 0; i < count; ++i)
    RC_ASSERT(std::abs(sender_value(all, SenderLaw::straight, points.y[i]).value - points.x[i]) < 1e-6 * x);
  RC_ASSERT(some.x.size() <= 2 + count / 2);
  RC_ASSERT(some.x.front() == points.x.front());
  RC_ASSERT(some.x.back() == points.x.back());
  RC_ASSERT(monotone(some));
}

// 1.5 kohm, 0.09 V a mph; 10, 2.2 and 10 kohm beside each other are 1.53 kohm: half is left, 0.5 V are met at 11 mph,
// on the first input alone at 6.4 (worked by hand).
TEST(Gauge, SensorWithSeveralListeners) {
  const CoilSensor s{1500, 0.9, 10 * mph};
  const double all[] = {10000, 2200, 10000}, one[] = {10000};
  EXPECT_NEAR(least_speed(s, all, 0.5).value / mph, 11.01, 0.01);
  EXPECT_NEAR(least_speed(s, one, 0.5).value / mph, 6.39, 0.01);
}

// TYR-06 (common practice) and TYR-13 (49 CFR 393.82).
TEST(Gauge, FactsOfSpeedometers) {
  EXPECT_NEAR(usual_head_turns_m * 1609.344, 1000, 1e-9);
  EXPECT_NEAR(us_speed_error_m_s / mph, 5, 1e-12);
  EXPECT_NEAR(us_speed_at_m_s / mph, 50, 1e-12);
  EXPECT_NEAR(exact_teeth(21, 1102.3 / 1000), 23.1, 0.1);
}

}  // namespace
