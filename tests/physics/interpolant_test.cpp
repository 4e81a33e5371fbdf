#include "physics/interpolant.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "near.hpp"

namespace sw::physics {
namespace {

// Fritsch and Carlson (1980), table 1, data set RPN 14: the case the method was made for.
const Curve rpn14{{7.99, 8.09, 8.19, 8.7, 9.2, 10, 12, 15, 20},
                  {0, 2.76429e-5, 4.37498e-2, 0.169183, 0.469428, 0.943740, 0.998636, 0.999919, 0.999994}};

Curve any_curve(bool monotone) {
  Curve c;
  double x = *rc::gen::inRange(-1000, 1000), y = *rc::gen::inRange(-1000, 1000);
  for (int k = 0, n = *rc::gen::inRange(2, 33); k < n; ++k) {
    c.x.push_back(x);
    c.y.push_back(y);
    x += *rc::gen::inRange(1, 1000) / 100.0;
    y += *rc::gen::inRange(monotone ? 0 : -1000, 1000) / 100.0;
  }
  return c;
}

TEST(Interpolant, NeverTurnsOnTheDataItWasMadeFor) {
  const auto f = *Interpolant::make(rpn14);
  double before = -1;
  for (double x = 7.99; x <= 20; x += 0.003) {
    const double y = f.at(x).value;
    EXPECT_GE(y, before - 1e-14);
    EXPECT_LE(y, 0.999994 + 1e-14);
    before = y;
  }
}

TEST(Interpolant, ReproducesAStraightLine) {
  const auto f = *Interpolant::make({{0, 1, 5, 7}, {3, 5, 13, 17}});
  for (double x = 0; x <= 7; x += 0.25) {
    EXPECT_NEAR(f.at(x).value, 3 + 2 * x, 1e-13);
    EXPECT_NEAR(f.at(x).slope, 2, 1e-13);
  }
}

TEST(Interpolant, HoldsTheEndValueOutsideAndSaysSo) {
  const auto f = *Interpolant::make({{1, 2, 3}, {10, 30, 35}});
  EXPECT_EQ(f.at(0.5).value, 10);
  EXPECT_EQ(f.at(0.5).slope, 0);
  EXPECT_FALSE(f.at(0.5).inside);
  EXPECT_EQ(f.at(3.5).value, 35);
  EXPECT_FALSE(f.at(3.5).inside);
  EXPECT_TRUE(f.at(1).inside);
  EXPECT_TRUE(f.at(3).inside);
  EXPECT_FALSE(f.at(std::nan("")).inside);
}

TEST(Interpolant, RefusesWhatIsNoCurve) {
  EXPECT_FALSE(Interpolant::make({{1}, {2}}));
  EXPECT_FALSE(Interpolant::make({{1, 1}, {2, 3}}));
  EXPECT_FALSE(Interpolant::make({{1, 2, 3}, {2, 3}}));
  Curve long_curve;
  for (int k = 0; k < 33; ++k) long_curve.x.push_back(k), long_curve.y.push_back(k);
  EXPECT_FALSE(Interpolant::make(long_curve));
}

RC_GTEST_PROP(Interpolant, PassesThroughItsPoints, ()) {
  const Curve c = any_curve(false);
  const auto f = *Interpolant::make(c);
  for (std::size_t k = 0; k < c.x.size(); ++k) RC_ASSERT(std::abs(f.at(c.x[k]).value - c.y[k]) < 1e-9);
}

RC_GTEST_PROP(Interpolant, RisesWhereTheDataRise, ()) {
  const Curve c = any_curve(true);
  const auto f = *Interpolant::make(c);
  for (int k = 0; k <= 200; ++k) {
    const double x = f.first() + (f.last() - f.first()) * k / 200.0;
    RC_ASSERT(f.at(x).slope >= -1e-9);
  }
}

RC_GTEST_PROP(Interpolant, SlopeIsTheDerivative, ()) {
  const Curve c = any_curve(false);
  const auto f = *Interpolant::make(c);
  const double x = f.first() + (f.last() - f.first()) * (*rc::gen::inRange(1, 1000)) / 1001.0, h = 1e-6;
  const double difference = (f.at(x + h).value - f.at(x - h).value) / (2 * h);
  RC_ASSERT(std::abs(f.at(x).slope - difference) < 1e-2 + 1e-4 * std::abs(difference));
}

}  // namespace
}  // namespace sw::physics
