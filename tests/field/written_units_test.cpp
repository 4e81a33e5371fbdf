#include "field/written_units.hpp"

#include <gtest/gtest.h>

#include "document/document.hpp"
#include "field/field.hpp"

namespace sw {
namespace {

struct Things {
  std::optional<Temperature> hot, hotter, cool;
  std::optional<Current> small, smaller;
  std::optional<VolumeFlow> air, coolant;
  std::optional<Curve> loss;
};
constexpr FieldInfo table[] = {
    quantity<&Things::hot>("hot", "hot", kind::temperature).in("degC"),
    quantity<&Things::hotter>("hotter", "hotter", kind::temperature).in("degC"),
    quantity<&Things::cool>("cool", "cool", kind::temperature).in("degC"),
    quantity<&Things::air>("air", "air", kind::volume_flow).in("cfm"),
    quantity<&Things::coolant>("coolant", "coolant", kind::volume_flow).in("gal/min"),
    quantity<&Things::small>("small", "small", kind::current).in("A"),
    quantity<&Things::smaller>("smaller", "smaller", kind::current).in("A"),
    curve<&Things::loss>("loss", "loss", kind::speed, kind::temperature).in("mph", "degC"),
};

WrittenUnits of(const std::string& text) {
  Diagnostics faults;
  const Node root = parse_text(text, 0, false, faults);
  EXPECT_FALSE(faults.any_fault());
  return {root, table};
}

TEST(WrittenUnits, AreThoseMostFiguresStandIn) {
  const auto u = of("hot = \"100 degC\"\nhotter = \"220 degF\"\ncool = { value = \"40 degF\", from = \"measured\" }\n");
  EXPECT_EQ(u.of(kind::temperature, "degC"), "degF");
  EXPECT_EQ(u.of(kind::temperature_step, "K"), "degF");
  EXPECT_EQ(u.of(kind::speed, "mph"), "mph") << "nothing is known of it";
}

TEST(WrittenUnits, OfTwoAlikeAreTheFirst) {
  EXPECT_EQ(of("hot = \"100 degC\"\nhotter = \"220 degF\"\n").of(kind::temperature, "degF"), "degC");
}

TEST(WrittenUnits, TellEveryStepInOneWord) {
  const auto u = of("hot = \"100 degC\"\n");
  for (auto* usual : {"K", "degC", "degF"}) EXPECT_EQ(u.of(kind::temperature_step, usual), "K") << usual;
}

TEST(WrittenUnits, CountTheRowsOfACurve) {
  const auto u = of("hot = \"100 degC\"\nloss = [[\"10 km/h\", \"50 degF\"], [\"20 km/h\", \"60 degF\"]]\n");
  EXPECT_EQ(u.of(kind::speed, "mph"), "km/h");
  EXPECT_EQ(u.of(kind::temperature, "degC"), "degF");
}

TEST(WrittenUnits, AreNotOfAnotherSize) {
  EXPECT_EQ(of("small = \"20 mA\"\nsmaller = \"5 mA\"\n").of(kind::current, "A"), "A");
}

// Air in cfm and coolant in gal/min are one kind; neither is told in the other's unit.
TEST(WrittenUnits, AirIsNotToldInGallons) {
  const auto both = of("air = \"900 cfm\"\ncoolant = \"20 gal/min\"\n");
  EXPECT_EQ(both.of(kind::volume_flow, "cfm"), "cfm");
  EXPECT_EQ(both.of(kind::volume_flow, "gal/min"), "gal/min");
  EXPECT_EQ(of("coolant = \"80 L/min\"\n").of(kind::volume_flow, "cfm"), "cfm");
  EXPECT_EQ(of("coolant = \"80 L/min\"\n").of(kind::volume_flow, "gal/min"), "L/min");
}

}  // namespace
}  // namespace sw
