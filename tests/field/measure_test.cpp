#include "field/measure.hpp"

#include <gtest/gtest.h>

#include "field/sample_car.hpp"

namespace sw {
namespace {

using sample::Radiator;

TEST(Measure, ZeroOfATemperatureUnit) {
  EXPECT_NEAR(to_si(32, kind::temperature, "degF"), 273.15, 1e-12);
  EXPECT_NEAR(from_si(373.15, kind::temperature, "degC"), 100, 1e-12);
  EXPECT_NEAR(step_to_si(9, kind::temperature, "degF"), 5, 1e-12);
  EXPECT_NEAR(to_si(9, kind::temperature_step, "degF"), 5, 1e-12);
}

TEST(Measure, KindOfAStep) {
  EXPECT_EQ(&step_kind(kind::temperature), &kind::temperature_step);
  EXPECT_EQ(&step_kind(kind::vacuum), &kind::pressure_difference);
  EXPECT_EQ(&step_kind(kind::gauge_pressure), &kind::pressure_difference);
  EXPECT_EQ(&step_kind(kind::wire_size), &kind::area);
  EXPECT_EQ(&step_kind(kind::length), &kind::length);
}

TEST(Measure, OpenAndClosedEnds) {
  constexpr FieldInfo open = number<&Radiator::fin_share>("x", "x").above(0, 1);
  EXPECT_FALSE(in_range(0, open));
  EXPECT_TRUE(in_range(1e-12, open));
  EXPECT_TRUE(in_range(1, open));
  EXPECT_FALSE(in_range(1.00001, open));
  constexpr FieldInfo zero = quantity<&Radiator::thermostat>("x", "x", kind::temperature).in("degF").from(0, 100);
  EXPECT_TRUE(in_range(to_si(0, kind::temperature, "degF"), zero));
  EXPECT_FALSE(in_range(to_si(-0.001, kind::temperature, "degF"), zero));
}

TEST(Measure, HalfWidthIsShareAndStep) {
  constexpr FieldInfo both =
      quantity<&Radiator::core_width>("x", "x", kind::length).spread(Source::measured, {.share = 0.1, .absolute = 1});
  EXPECT_NEAR(usual_half_width(both, Source::measured, -2.0), 0.2 + 0.0254, 1e-15);
  EXPECT_EQ(usual_half_width(both, Source::chosen, 2.0), 0);
}

}  // namespace
}  // namespace sw
