#include "quantity/respell.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "quantity/support.hpp"
#include "quantity/unit_table.hpp"

namespace sw {
namespace {

TEST(Respell, AsAWorkshopWritesIt) {
  struct Row {
    std::string_view loose, strict;
    const Kind& kind;
  };
  const Row rows[] = {
      {"750 RPM", "750 rpm", kind::shaft_speed},
      {"13 PSI", "13 psi", kind::gauge_pressure},
      {"900 CFM", "900 cfm", kind::volume_flow},
      {"11 amps", "11 A", kind::current},
      {"11 Amps", "11 A", kind::current},
      {"3700 LBS", "3700 lb", kind::mass},
      {"255 lph", "255 L/h", kind::volume_flow},
      {"12v", "12 V", kind::voltage},
      {"12 volts", "12 V", kind::voltage},
      {"180 F", "180 degF", kind::temperature},
      {"180 °f", "180 degF", kind::temperature},
      {"180 deg F", "180 degF", kind::temperature},
      {"82 C", "82 degC", kind::temperature},
      {"8 F", "8 degF", kind::temperature_step},
      {"60 ft-lbs", "60 lb-ft", kind::torque},
      {"60 ft.lbs", "60 lb-ft", kind::torque},
      {"60 Foot Pounds", "60 lb-ft", kind::torque},
      {"210 lb ft", "210 lb-ft", kind::torque},
      {"60 NM", "60 N m", kind::torque},
      {"3 gals", "3 gal", kind::volume},
      {"30 Kw", "30 kW", kind::power},
      {"250 BHP", "250 hp", kind::power},
      {"90 KM/H", "90 km/h", kind::speed},
      {"90 kph", "90 km/h", kind::speed},
      {"30 in. Hg", "30 inHg", kind::absolute_pressure},
      {"302 cu. in.", "302 in3", kind::volume},
      {"10 degrees", "10 deg", kind::angle},
      {"23 LBS/HR", "23 lb/h", kind::mass_flow},
      {"25 MM", "25 mm", kind::length},
      {"3600 J/(kg C)", "3600 J/(kg degC)", kind::specific_heat},
      {"60 amp hours", "60 A h", kind::charge},
      {"240 ohms", "240 ohm", kind::resistance},
  };
  for (auto& r : rows) EXPECT_DOUBLE_EQ(si_of(r.loose, r.kind), si_of(r.strict, r.kind)) << r.loose;
}

TEST(Respell, NeverWhereCaseMatters) {
  for (auto text : {"5 mw", "5 Mw", "5 MS"}) EXPECT_FALSE(fault_of(text, kind::power).remark.empty()) << text;
  for (auto text : {"5 MA", "5 Ma"}) EXPECT_FALSE(fault_of(text, kind::current).remark.empty()) << text;
  for (auto text : {"5 mpa", "5 Mpa", "5 MBAR"})
    EXPECT_FALSE(fault_of(text, kind::gauge_pressure).remark.empty()) << text;
  EXPECT_FALSE(fault_of("5 MOHM", kind::resistance).remark.empty());
  EXPECT_FALSE(fault_of("5 M", kind::length).remark.empty());
  EXPECT_EQ(fault_of("5 F", kind::length).hint, "did you mean degF?");
}

TEST(Respell, NothingLooseNothingChanged) {
  EXPECT_FALSE(respelled("psi", kind::gauge_pressure));
  EXPECT_FALSE(respelled("W/(m2 K)", kind::heat_transfer));
  EXPECT_FALSE(respelled("", kind::length));
}

TEST(Respell, GaugesInText) {
  EXPECT_EQ(gauge_in("14ga")->number, "14");
  EXPECT_EQ(gauge_in("4/0")->number, "4/0");
  EXPECT_EQ(gauge_in("2/0 AWG")->unit, "AWG");
  for (auto text : {"14", "ga", "1/2", "yoga", "3 saga"}) EXPECT_FALSE(gauge_in(text)) << text;
}

/// A unit in capitals is the unit itself or is refused, never another factor; `MJ` for `mJ` is a unit as it stands.
TEST(Respell, CapitalsNeverChangeTheAmount) {
  int read = 0;
  for (const Kind* kind : all_kinds()) {
    for (auto unit : kind->units) {
      std::string capitals(unit);
      for (char& c : capitals)
        if (c >= 'a' && c <= 'z') c = static_cast<char>(c - 'a' + 'A');
      if (unit.empty() || std::holds_alternative<Unit>(parse_unit(capitals))) continue;
      const auto strict = std::get<Unit>(parse_unit_for(unit, *kind));
      const auto loose = parse_unit_for(capitals, *kind);
      const auto* u = std::get_if<Unit>(&loose);
      if (!u) continue;
      ++read;
      EXPECT_DOUBLE_EQ(u->factor, strict.factor) << kind->name << " " << capitals;
      EXPECT_DOUBLE_EQ(u->offset, strict.offset) << kind->name << " " << capitals;
    }
  }
  EXPECT_GT(read, 60);
}

RC_GTEST_PROP(Respell, WhatComesBackIsStrict, (const std::string& text)) {
  for (const Kind* kind : all_kinds())
    if (const auto once = respelled(text, *kind); once && std::holds_alternative<Unit>(parse_unit(*once))) {
      // Not in the assertion itself: that evaluates both sides of an `or`.
      const auto twice = respelled(*once, *kind);
      const bool strict = !twice || std::holds_alternative<Unit>(parse_unit(*twice));
      RC_ASSERT(strict);
    }
}

}  // namespace
}  // namespace sw
