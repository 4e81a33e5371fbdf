#include "model/trace.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace sw {
namespace {

/// One slot beside the one looked at, so that widths matter.
Trace trace_of(std::vector<double> time, const std::vector<double>& value) {
  Trace t;
  t.width = 2;
  t.time = std::move(time);
  for (double v : value) t.values.insert(t.values.end(), {-99.0, v});
  return t;
}

TEST(Trace, FindsTheFirstOfTheHighestAndLowest) {
  const Trace t = trace_of({0, 1, 2, 3, 4}, {3, 7, 1, 7, 1});
  EXPECT_EQ(t.highest(1), 1u);
  EXPECT_EQ(t.lowest(1), 2u);
  EXPECT_EQ(t.at(t.highest(1), 1), 7);
}

TEST(Trace, MeanOfALineIsExactWhateverTheRows) {
  // y = 2 t over 0..10; the last quarter 7.5..10 has the mean 17.5.
  EXPECT_NEAR(trace_of({0, 10}, {0, 20}).late_mean(1, 0.25), 17.5, 1e-12);
  EXPECT_NEAR(trace_of({0, 1, 7, 8, 10}, {0, 2, 14, 16, 20}).late_mean(1, 0.25), 17.5, 1e-12);
  EXPECT_NEAR(trace_of({0, 1, 7, 8, 10}, {0, 2, 14, 16, 20}).late_mean(1, 1), 10, 1e-12);
}

TEST(Trace, MeanTakesAJumpAsAJump) {
  // 5 until t = 8, then 1: over the last half (5..10) 3/5 of 5 and 2/5 of 1.
  EXPECT_NEAR(trace_of({0, 8, 8, 10}, {5, 5, 1, 1}).late_mean(1, 0.5), 3.4, 1e-12);
}

RC_GTEST_PROP(Trace, MeanLiesBetweenLeastAndMost, ()) {
  std::vector<double> time{0}, value{0};
  const int rows = *rc::gen::inRange(1, 20);
  for (int i = 0; i < rows; ++i) {
    time.push_back(time.back() + *rc::gen::inRange(0, 50) / 7.0);
    value.push_back(*rc::gen::inRange(-100, 101));
  }
  const Trace t = trace_of(time, value);
  const double mean = t.late_mean(1, *rc::gen::inRange(1, 101) / 100.0);
  RC_ASSERT(mean >= t.at(t.lowest(1), 1) - 1e-9);
  RC_ASSERT(mean <= t.at(t.highest(1), 1) + 1e-9);
}

TEST(Trace, MeanOfOneRowAndOfNone) {
  EXPECT_EQ(trace_of({3}, {8}).late_mean(1, 0.5), 8);
  EXPECT_EQ(trace_of({3, 3}, {8, 9}).late_mean(1, 0.5), 9);
  EXPECT_TRUE(std::isfinite(Trace{}.late_mean(0, 0.5)));
}

TEST(Summary, IsUsableOnlyWhenDone) {
  EXPECT_FALSE(Summary{}.usable());
  for (auto o : {Outcome::not_run, Outcome::not_converged, Outcome::chatter})
    EXPECT_FALSE((Summary{.outcome = o}.usable()));
  EXPECT_TRUE((Summary{.outcome = Outcome::done}.usable()));
}

}  // namespace
}  // namespace sw
