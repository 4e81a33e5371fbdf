#include "quantity/unit.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "quantity/support.hpp"
#include "quantity/unit_table.hpp"

namespace sw {
namespace {

TEST(Unit, ExpressionsHaveTheirDimension) {
  EXPECT_EQ(unit_of("W/(m2 K)").dimension, dim::heat_transfer);
  EXPECT_EQ(unit_of("W/(m^2 K)").dimension, dim::heat_transfer);
  EXPECT_EQ(unit_of("W m^-2 K^-1").dimension, dim::heat_transfer);
  EXPECT_EQ(unit_of("ohm cmil/ft").dimension, dim::resistivity);
  EXPECT_EQ(unit_of("lb/(ft s)").dimension, dim::viscosity);
  EXPECT_EQ(unit_of("m2/s").dimension, dim::kinematic_viscosity);
  EXPECT_EQ(unit_of("gal/min/rpm").dimension, dim::displacement_flow);
  EXPECT_EQ(unit_of("mph/s").dimension, dim::acceleration);
  EXPECT_EQ(unit_of("%/K").dimension, dim::per_temperature);
  EXPECT_EQ(unit_of("1/mile").dimension, dim::per_length);
  EXPECT_EQ(unit_of("(kg m)/(s2)").dimension, dim::force);
  EXPECT_EQ(unit_of("m/(km/h)^2").dimension, dim::length / dim::speed / dim::speed);
  EXPECT_EQ(unit_of("in/ft").dimension, dim::none);
  EXPECT_NEAR(unit_of("in/ft").factor, 1.0 / 12, 1e-15);
}

TEST(Unit, EveryUnitAQuickSumMayBeWrittenIn) {
  struct Row {
    const Kind& kind;
    std::vector<std::string_view> units;
  };
  const Row rows[] = {
      {kind::length, {"in", "ft", "mm", "cm", "m", "km", "mile", "um", "thou"}},
      {kind::area, {"in2", "ft2", "mm2", "m2", "cmil"}},
      {kind::wire_size, {"AWG", "mm2", "cmil", "in2"}},
      {kind::volume, {"in3", "ft3", "gal", "L", "cm3", "m3"}},
      {kind::angle, {"deg", "rad"}},
      {kind::time, {"ms", "s", "min", "h", "week"}},
      {kind::time_squared, {"week2", "h^2"}},
      {kind::speed, {"mph", "km/h", "m/s", "ft/s"}},
      {kind::acceleration, {"m/s2", "ft/s2", "mph/s"}},
      {kind::shaft_speed, {"rpm", "rad/s"}},
      {kind::frequency, {"Hz"}},
      {kind::mass, {"g", "kg", "lb"}},
      {kind::force, {"N", "lbf", "kip"}},
      {kind::torque, {"N m", "lbf ft", "lb ft", "lbf in", "lb-ft", "ft-lb", "lb-in"}},
      {kind::stress, {"Pa", "kPa", "MPa", "bar", "mbar", "psi", "ksi", "inHg"}},
      {kind::power, {"W", "kW", "hp"}},
      {kind::energy, {"J", "BTU"}},
      {kind::density, {"kg/m3", "lb/ft3", "lb/gal", "slug/ft3"}},
      {kind::viscosity, {"Pa s", "lb/(ft s)"}},
      {kind::kinematic_viscosity, {"m2/s"}},
      {kind::inductance, {"mH"}},
      {kind::charge, {"A h"}},
      {kind::resistivity, {"ohm cmil/ft"}},
      {kind::volume_flow, {"gph", "cfm", "gal/h", "gal/min"}},
      {kind::temperature, {"degC", "degF", "K", "degR"}},
      {kind::temperature_step, {"degC", "degF", "K", "degR"}},
      {kind::per_length, {"rev/mile", "pulse/mile"}},
  };
  for (auto& r : rows)
    for (auto u : r.units) EXPECT_TRUE(std::holds_alternative<Unit>(parse_unit_for(u, r.kind))) << r.kind.name << u;
}

TEST(Unit, ReadFromLeftToRight) {
  EXPECT_EQ(unit_of("W/m2 K").dimension, dim::power / dim::area * dim::temperature);
  EXPECT_DOUBLE_EQ(unit_of("km / h").factor, unit_of("km/h").factor);
  EXPECT_DOUBLE_EQ(unit_of("  kW   h ").factor, 3.6e6);
  EXPECT_DOUBLE_EQ(unit_of("A*h").factor, unit_of("Ah").factor);
}

TEST(Unit, PoundIsAMassExceptInATorque) {
  EXPECT_EQ(unit_of("lb").dimension, dim::mass);
  EXPECT_EQ(unit_of("lb/h").dimension, dim::mass_flow);
  EXPECT_EQ(unit_of("lb in2").dimension, dim::inertia);
  for (auto torque : {"lb-ft", "ft-lb", "lb ft", "lbf ft", "lbf-ft", "ft lbf"}) {
    EXPECT_EQ(unit_of(torque).dimension, dim::torque) << torque;
    EXPECT_NEAR(unit_of(torque).factor, 1.355818, 5e-7) << torque;  // NIST SP 811 B.8, pound-force foot
  }
  for (auto torque : {"lb-in", "in-lb", "lb in", "lbf in"})
    EXPECT_NEAR(unit_of(torque).factor, 0.1129848, 5e-8) << torque;  // the same, pound-force inch
  EXPECT_EQ(unit_of("kg m").dimension, dim::mass * dim::length);
  EXPECT_EQ(unit_of("lbm ft").dimension, dim::mass * dim::length);
}

TEST(Unit, RevolutionsAreAnAngleAndOverALengthACount) {
  EXPECT_EQ(unit_of("rev/min").dimension, dim::shaft_speed);
  EXPECT_DOUBLE_EQ(unit_of("rev/min").factor, unit_of("rpm").factor);
  EXPECT_EQ(unit_of("rev/mile").dimension, dim::per_length);
  EXPECT_DOUBLE_EQ(unit_of("rev/mile").factor, 1 / 1609.344);
  EXPECT_DOUBLE_EQ(unit_of("pulse/mile").factor, 1 / 1609.344);
  EXPECT_EQ(unit_of("rad/m").dimension, dim::angle / dim::length);
}

TEST(Unit, SignsBeyondAscii) {
  EXPECT_DOUBLE_EQ(unit_of("°C").offset, 273.15);
  EXPECT_DOUBLE_EQ(unit_of("°F").factor, 5.0 / 9);
  EXPECT_EQ(unit_of("Ω").dimension, dim::resistance);
  EXPECT_DOUBLE_EQ(unit_of("kΩ").factor, 1e3);
  EXPECT_DOUBLE_EQ(unit_of("µm").factor, 1e-6);
  EXPECT_DOUBLE_EQ(unit_of("J/(kg °C)").factor, 1);
}

TEST(Unit, StepsHaveNoZero) {
  EXPECT_DOUBLE_EQ(std::get<Unit>(parse_unit_for("degF", kind::temperature)).offset, 459.67 * 5 / 9);
  EXPECT_DOUBLE_EQ(std::get<Unit>(parse_unit_for("degF", kind::temperature_step)).offset, 0);
  EXPECT_DOUBLE_EQ(unit_of("BTU/(lb degF)").offset, 0);
}

TEST(Unit, GaugeAbsoluteAndVacuumKeepApart) {
  for (const Kind* k : {&kind::gauge_pressure, &kind::absolute_pressure, &kind::vacuum, &kind::pressure_difference})
    for (auto u : {"psi", "kPa", "bar", "inHg", "mbar", "lbf/in2"})
      EXPECT_TRUE(std::holds_alternative<Unit>(parse_unit_for(u, *k))) << k->name << ' ' << u;
  EXPECT_TRUE(std::holds_alternative<Unit>(parse_unit_for("psig", kind::gauge_pressure)));
  EXPECT_TRUE(std::holds_alternative<Unit>(parse_unit_for("psia", kind::absolute_pressure)));
  EXPECT_EQ(unit_fault_of("psia", kind::gauge_pressure).sentence(),
            "expected a unit of gauge pressure such as \"psi\", got \"psia\", which counts from a perfect vacuum");
  EXPECT_EQ(unit_fault_of("psig", kind::absolute_pressure).hint,
            "give the pressure above a perfect vacuum, in psia or psi");
  EXPECT_EQ(unit_fault_of("psig", kind::vacuum).remark, "which counts up from the surrounding air");
  EXPECT_EQ(unit_fault_of("psia", kind::vacuum).hint, "give how far it is below the surrounding air, in inHg or psi");
  EXPECT_EQ(unit_fault_of("psia", kind::pressure_difference).hint, "give the difference, in psi");
  EXPECT_EQ(unit_fault_of("psia s", kind::viscosity).remark, "which combines a unit that has to stand alone");
}

TEST(Unit, FaultsInWords) {
  EXPECT_EQ(unit_fault_of("psi", kind::length).sentence(),
            "expected a unit of length such as \"in\", got \"psi\", which is a pressure");
  EXPECT_EQ(unit_fault_of("foo", kind::length).sentence(),
            "expected a unit of length such as \"in\", got \"foo\", whose unit 'foo' is not known");
  EXPECT_EQ(unit_fault_of("mils", kind::length).hint, "did you mean thou?");
  EXPECT_EQ(unit_fault_of("W/(m2 K", kind::heat_transfer).remark, "whose unit has a bracket that is not closed");
  EXPECT_EQ(unit_fault_of("W/", kind::power).remark, "whose unit breaks off");
  EXPECT_EQ(unit_fault_of("W)", kind::power).remark, "which has ')' where a unit is expected");
  EXPECT_EQ(unit_fault_of("W/m2 K", kind::heat_transfer).hint, "put what divides in brackets, as in \"W/(m2 K)\"");
  EXPECT_EQ(unit_fault_of("lb", kind::force).hint, "lb is a mass; write lbf");
  EXPECT_EQ(unit_fault_of("lb/in2", kind::gauge_pressure).hint, "lb is a mass; write psi or lbf/in2");
  EXPECT_EQ(unit_fault_of("", kind::speed).hint, "units: mph, km/h, m/s, ft/s");
  EXPECT_EQ(unit_fault_of("AWG", kind::area).remark, "which is a wire size");
  EXPECT_EQ(unit_fault_of("AWG m", kind::volume).remark, "which combines a unit that has to stand alone");
  EXPECT_EQ(unit_fault_of("m²", kind::area).remark, "whose character 2 cannot stand in a unit");
  EXPECT_EQ(unit_fault_of("m²", kind::area).hint, "write m2 or m^2");
  EXPECT_EQ(unit_fault_of("Hz", kind::shaft_speed).remark, "which is a frequency");
  EXPECT_EQ(unit_fault_of("psi", kind::number).sentence(),
            "expected no unit, or \"%\", got \"psi\", which is a pressure");
}

TEST(Unit, RefusesWhatIsNoExpression) {
  for (auto wrong : {"1",
                     "5",
                     "m 2",
                     "m0",
                     "m10",
                     "m^",
                     "m^-",
                     "()",
                     "(",
                     ")",
                     "/s",
                     "m//s",
                     "m s-1",
                     "m2s",
                     "2m",
                     "m^2^2",
                     "lb--ft",
                     "-",
                     "lb- ft",
                     "(m)2",
                     "1 m",
                     "1/",
                     "km9 km9 km9 km9 km9 km9 km9 km9",
                     "\"",
                     "'"})
    EXPECT_TRUE(std::holds_alternative<TextFault>(parse_unit(wrong))) << wrong;
}

TEST(Unit, BracketsAreBounded) {
  const std::string deep = std::string(100000, '(') + "m" + std::string(100000, ')');
  EXPECT_TRUE(std::holds_alternative<TextFault>(parse_unit(deep)));
  EXPECT_EQ(unit_of("(((m)))").dimension, dim::length);
}

TEST(Unit, ExponentsNeverWrap) {
  std::string many = "m9";
  for (int i = 0; i < 300; ++i) many += " m9";
  EXPECT_TRUE(std::holds_alternative<TextFault>(parse_unit(many)));
  EXPECT_TRUE(std::holds_alternative<TextFault>(parse_unit("(((m9)^9)^9)^9")));
}

RC_GTEST_PROP(Unit, ProductsAndQuotientsFollowTheAlgebra, ()) {
  const auto names = unit_names();
  auto plain = [&] {
    return *rc::gen::suchThat(rc::gen::elementOf(std::vector<std::string_view>(names.begin(), names.end())),
                              [](auto n) {
                                const auto u = find_unit(n);
                                return u->reference == Reference::none && !u->gauge && n != "lb" && n != "rev";
                              });
  };
  const auto a = plain(), b = plain();
  const Unit ua = *find_unit(a), ub = *find_unit(b);
  const Unit product = unit_of(std::string(a) + ' ' + std::string(b));
  const Unit quotient = unit_of(std::string(a) + "/(" + std::string(b) + "^2)");
  RC_ASSERT(product.dimension == ua.dimension * ub.dimension);
  RC_ASSERT(quotient.dimension == ua.dimension / ub.dimension / ub.dimension);
  RC_ASSERT(std::abs(product.factor / (ua.factor * ub.factor) - 1) < 1e-14);
  RC_ASSERT(std::abs(quotient.factor / (ua.factor / ub.factor / ub.factor) - 1) < 1e-14);
}

}  // namespace
}  // namespace sw
