#include "quantity/print.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <limits>

#include "quantity/support.hpp"
#include "quantity/wire_gauge.hpp"

namespace sw {
namespace {

TEST(ShortNumber, ForPeople) {
  EXPECT_EQ(short_number(12.5), "12.5");
  EXPECT_EQ(short_number(12.0), "12");
  EXPECT_EQ(short_number(3.14159265), "3.142");
  EXPECT_EQ(short_number(3.14159265, 2), "3.1");
  EXPECT_EQ(short_number(0), "0");
  EXPECT_EQ(short_number(-0.0), "0");
  EXPECT_EQ(short_number(-2.5), "-2.5");
  EXPECT_EQ(short_number(0.0001), "0.0001");
  EXPECT_EQ(short_number(0.00012346), "0.0001235");
  EXPECT_EQ(short_number(0.00001), "1e-5");
  EXPECT_EQ(short_number(1e7), "10000000");
  EXPECT_EQ(short_number(12345678), "1.235e7");
  EXPECT_EQ(short_number(9999.9), "10000");
  EXPECT_EQ(short_number(1e100), "1e100");
  EXPECT_EQ(short_number(5, -3), "5");
  EXPECT_EQ(short_number(1.0 / 3, 99), "0.3333333333333333");
}

TEST(ExactNumber, ReadsBack) {
  EXPECT_EQ(exact_number(0.1), "0.1");
  EXPECT_EQ(exact_number(-0.0), "0");
  EXPECT_EQ(exact_number(1e300), "1e300");
  EXPECT_EQ(exact_number(2.5e-10), "2.5e-10");
}

RC_GTEST_PROP(ExactNumber, EveryFiniteDouble, ()) {
  const double value = *rc::gen::suchThat(rc::gen::arbitrary<double>(), [](double v) { return std::isfinite(v); });
  if (std::abs(value) < std::numeric_limits<double>::min()) return;  // below that, digits are lost before we see them
  RC_ASSERT(parse_number(exact_number(value))->value == value);
}

TEST(Print, InTheUnitAsked) {
  EXPECT_EQ(print(12.5 * 6894.757293168361, kind::gauge_pressure), "12.5 psi");
  EXPECT_EQ(print(17.25 * 0.0254, kind::length), "17.25 in");
  EXPECT_EQ(print(17.25 * 0.0254, kind::length, "mm", 2), "440 mm");
  EXPECT_EQ(print(17.25 * 0.0254, kind::length, "mm", 6), "438.15 mm");
  EXPECT_EQ(print(355.3722222, kind::temperature, "degF"), "180 degF");
  EXPECT_EQ(print(355.3722222, kind::temperature), "82.22 degC");
  EXPECT_EQ(print(273.15, kind::temperature), "0 degC");
  EXPECT_EQ(print(5, kind::temperature_step, "degF"), "9 degF");
  EXPECT_EQ(print(0.35, kind::number), "0.35");
  EXPECT_EQ(print(0.06, kind::number, "%"), "6 %");
  EXPECT_EQ(print(776 / 1609.344, kind::per_length), "776 rev/mile");
  EXPECT_EQ(print(-1e-20, kind::length), "-3.937e-19 in");
}

TEST(Print, AUnitThatMeasuresSomethingElseIsNotUsed) {
  EXPECT_EQ(print(0.0254, kind::length, "psi"), "1 in");
  EXPECT_EQ(print(0.0254, kind::length, "nonsense"), "1 in");
}

TEST(Print, WireSizes) {
  EXPECT_EQ(print(gauge_area(10), kind::wire_size), "10 AWG");
  EXPECT_EQ(print(gauge_area(-1), kind::wire_size, "AWG"), "2/0 AWG");
  EXPECT_EQ(print(67.43e-6, kind::wire_size), "2/0 AWG");
  EXPECT_EQ(print(2.5e-6, kind::wire_size), "2.5 mm2");
  EXPECT_EQ(print(gauge_area(10), kind::wire_size, "mm2"), "5.261 mm2");
  EXPECT_EQ(print(0, kind::wire_size), "0 mm2");
  EXPECT_EQ(print_exact(67.43e-6, kind::wire_size), "67.43 mm2") << "near a gauge is not exactly it";
  EXPECT_EQ(print_exact(gauge_area(4), kind::wire_size), "4 AWG");
}

TEST(PrintExact, WhatWasWrittenComesBack) {
  for (auto text : {"67.43 mm2", "2.5 mm2", "10 AWG", "4/0 AWG"})
    EXPECT_EQ(print_exact(si_of(text, kind::wire_size), kind::wire_size), text);
  for (auto text : {"17.25 in", "0.3 in", "1.1 in", "26.7 in"})
    EXPECT_EQ(print_exact(si_of(text, kind::length), kind::length, "in"), text);
  for (auto text : {"180 degF", "0 degF", "98.6 degF", "-12.3 degF"})
    EXPECT_EQ(print_exact(si_of(text, kind::temperature), kind::temperature, "degF"), text);
}

TEST(PrintWithDoubt, DigitsFollowTheHalfWidth) {
  EXPECT_EQ(print_with_doubt(12.345678, 0.0234, kind::length, "m"), "12.346 m");
  EXPECT_EQ(print_with_doubt(12.345678, 0.9, kind::length, "m"), "12.35 m");
  EXPECT_EQ(print_with_doubt(12.345678, 3, kind::length, "m"), "12.3 m");
  EXPECT_EQ(print_with_doubt(12345.678, 340, kind::length, "m"), "12350 m");
  EXPECT_EQ(print_with_doubt(0.2, 30, kind::length, "m"), "0.2 m");
  EXPECT_EQ(print_with_doubt(12.34567891, 1e-9, kind::length, "m"), "12.3457 m");
  EXPECT_EQ(print_with_doubt(12.34567891, 0, kind::length, "m"), "12.3457 m");
  EXPECT_EQ(print_with_doubt(0, 1, kind::length, "m"), "0 m");
  // The half-width is a step: it has no zero of its own.
  EXPECT_EQ(print_with_doubt(355.3722222, 2.0 * 5 / 9, kind::temperature, "degF"), "180 degF");
}

TEST(InUnit, UndoesToSi) {
  const Unit f = std::get<Unit>(parse_unit_for("degF", kind::temperature));
  EXPECT_NEAR(in_unit(to_si(180, f), f, kind::temperature), 180, 1e-12);
  EXPECT_NEAR(in_unit(5, unit_of("degF"), kind::temperature_step), 9, 1e-12) << "the zero is left out for a step";
  const Unit awg = std::get<Unit>(parse_unit_for("AWG", kind::wire_size));
  EXPECT_NEAR(in_unit(to_si(10, awg), awg, kind::wire_size), 10, 1e-12);
}

/// A value of the kind: any sign and size a car could have and far beyond, none below an absolute zero, for a wire a
/// size above nothing.
double value_of(const Kind& kind) {
  const double mantissa = *rc::gen::inRange<std::int64_t>(1, 1000000000000000) / 1e15;
  const double value = mantissa * std::pow(10.0, *rc::gen::inRange(-12, 13));
  const bool positive = kind.reference == Reference::absolute || kind.wire_gauge;
  return positive || *rc::gen::arbitrary<bool>() ? value : -value;
}

RC_GTEST_PROP(PrintExact, NoDigitsLostInAnyOfferedUnit, ()) {
  for (const Kind* k : all_kinds()) {
    const double si = value_of(*k);
    for (auto unit : k->units) {
      const std::string text = print_exact(si, *k, unit);
      const double back = si_of(text, *k);
      // A temperature near absolute zero written in degC keeps the digits of its zero, 273 K, not its own.
      const double size =
          k->reference == Reference::absolute && k->dimension == dim::temperature ? std::max(si, 273.15) : si;
      RC_ASSERT(std::abs(back - si) <= 1e-12 * std::abs(size));
      // And once more through text: nothing drifts.
      RC_ASSERT(std::abs(si_of(print_exact(back, *k, unit), *k) - si) <= 1e-12 * std::abs(size));
    }
  }
}

RC_GTEST_PROP(Print, RoundedToTheDigitsAsked, ()) {
  const int digits = *rc::gen::inRange(2, 10);
  for (const Kind* k : all_kinds()) {
    if (k->wire_gauge || (k->dimension == dim::temperature && k->reference == Reference::absolute)) continue;
    const double si = value_of(*k);
    for (auto unit : k->units)
      RC_ASSERT(std::abs(si_of(print(si, *k, unit, digits), *k) / si - 1) <= 0.5001 * std::pow(10.0, 1 - digits));
  }
}

}  // namespace
}  // namespace sw
