#include "quantity/unit_table.hpp"

#include <algorithm>
#include <set>

#include "quantity/support.hpp"

namespace sw {
namespace {

struct Factor {
  std::string_view unit;
  double si;
};

// NIST Special Publication 811 (2008 edition), appendix B.8, "multiply by", as printed to seven digits. Seen in a
// data package that transcribes the appendix.
constexpr Factor sp811_seen[] = {
    {"hp", 7.456999e2},       {"lbf ft", 1.355818},   {"lbf in", 1.129848e-1},    {"lbf", 4.448222},
    {"kip", 4.448222e3},      {"psi", 6.894757e3},    {"ksi", 6.894757e6},        {"lb", 4.535924e-1},
    {"lb/ft3", 1.601846e1},   {"lb/gal", 1.198264e2}, {"lb/(hp h)", 1.689659e-7}, {"lb/h", 1.259979e-4},
    {"lb/min", 7.559873e-3},  {"lb/ft", 1.488164},    {"lb/(ft s)", 1.488164},    {"lb ft2", 4.214011e-2},
    {"lb in2", 2.926397e-4},  {"lbf/in", 1.751268e2}, {"inHg", 3.386389e3},       {"inH2O", 2.490889e2},
    {"BTU/h", 2.930711e-1},   {"BTU/s", 1.055056e3},  {"BTU/lb", 2.326e3},        {"BTU/(lb degF)", 4.1868e3},
    {"BTU/degF", 1.899101e3}, {"qt", 9.463529e-4},    {"km/h", 2.777778e-1},      {"BTU/(h ft2 degF)", 5.678263},
    {"rev", 6.283185},        {"kW h", 3.6e6},
};
// The same appendix, from memory; each is also a product of exact definitions.
constexpr Factor sp811_from_memory[] = {
    {"gal", 3.785412e-3},   {"gal/min", 6.309020e-5}, {"gpm", 6.309020e-5},          {"cfm", 4.719474e-4},
    {"cmil", 5.067075e-10}, {"slug", 1.459390e1},     {"slug/ft3", 5.153788e2},      {"mile", 1.609344e3},
    {"mph", 4.4704e-1},     {"rpm", 1.047198e-1},     {"in3", 1.638706e-5},          {"ft3", 2.831685e-2},
    {"oz", 2.834952e-2},    {"deg", 1.745329e-2},     {"ohm cmil/ft", 1.662426e-9},  {"atm", 1.01325e5},
    {"ft2/s", 9.290304e-2}, {"A h", 3.6e3},           {"BTU/(h ft degF)", 1.730735},
};

// Half a unit of the last of seven digits is at most 5e-7 of the value.
void expect_factors(std::span<const Factor> factors) {
  for (auto& f : factors) EXPECT_NEAR(unit_of(f.unit).factor / f.si, 1, 5.1e-7) << f.unit;
}

TEST(UnitTable, FactorsOfSp811) {
  expect_factors(sp811_seen);
  expect_factors(sp811_from_memory);
}

TEST(UnitTable, ExactDefinitions) {
  // Exact by definition in NIST SP 811 B.8 (from memory).
  EXPECT_DOUBLE_EQ(unit_of("in").factor, 0.0254);
  EXPECT_DOUBLE_EQ(unit_of("thou").factor, 2.54e-5);
  EXPECT_DOUBLE_EQ(unit_of("ft").factor, 0.3048);
  EXPECT_DOUBLE_EQ(unit_of("mile").factor, 1609.344);
  EXPECT_DOUBLE_EQ(unit_of("lb").factor, 0.45359237);
  EXPECT_DOUBLE_EQ(unit_of("hp").factor, 550 * 0.3048 * 0.45359237 * 9.80665);
  EXPECT_DOUBLE_EQ(unit_of("gal").factor, 231 * 0.0254 * 0.0254 * 0.0254);
  EXPECT_DOUBLE_EQ(unit_of("degF").factor, 5.0 / 9);
}

TEST(UnitTable, PrefixesOnlyWhereTheyBelong) {
  EXPECT_DOUBLE_EQ(unit_of("um").factor, 1e-6);
  EXPECT_DOUBLE_EQ(unit_of("cm").factor, 1e-2);
  EXPECT_DOUBLE_EQ(unit_of("mA").factor, 1e-3);
  EXPECT_DOUBLE_EQ(unit_of("mohm").factor, 1e-3);
  EXPECT_DOUBLE_EQ(unit_of("kPa").factor, 1e3);
  EXPECT_DOUBLE_EQ(unit_of("MPa").factor, 1e6);
  EXPECT_DOUBLE_EQ(unit_of("kg").factor, 1);
  EXPECT_DOUBLE_EQ(unit_of("mbar").factor, 100);
  EXPECT_DOUBLE_EQ(unit_of("min").factor, 60) << "minutes, never milli-inches";
  for (auto wrong : {"kin", "mft", "cA", "Mm", "kpsi", "mmin", "klb", "mdegC", "uF", "k", "M", "mm m m mmmm"})
    EXPECT_FALSE(find_unit(wrong)) << wrong;
}

TEST(UnitTable, NoNameTwiceNotEvenWithPrefix) {
  std::set<std::string_view> seen;
  for (auto name : unit_names()) EXPECT_TRUE(seen.insert(name).second) << name;
  for (auto name : unit_names()) EXPECT_TRUE(find_unit(name)) << name;
  EXPECT_GT(unit_names().size(), named_units().size());
}

TEST(UnitTable, NearestUnit) {
  EXPECT_EQ(nearest_unit("PSI"), "psi");
  EXPECT_EQ(nearest_unit("Mpa"), "MPa");
  EXPECT_EQ(nearest_unit("RPM"), "rpm");
  EXPECT_EQ(nearest_unit("inches"), "in");
  EXPECT_EQ(nearest_unit("lbs"), "lb");
  EXPECT_EQ(nearest_unit("kph"), "km/h");
  EXPECT_EQ(nearest_unit("F"), "degF");
  EXPECT_EQ(nearest_unit("dgeC"), "degC");
  EXPECT_EQ(nearest_unit("inHgg"), "inHg");
  EXPECT_EQ(nearest_unit("mil"), "thou") << "a mile is nearer by letters, and never meant";
  EXPECT_EQ(nearest_unit("bananas"), "");
  EXPECT_EQ(nearest_unit(""), "");
}

}  // namespace
}  // namespace sw
