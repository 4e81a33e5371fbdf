#include "quantity/kind.hpp"

#include <fstream>
#include <set>
#include <sstream>
#include <string>

#include "quantity/support.hpp"

namespace sw {
namespace {

TEST(Kind, EveryNameIsFoundAndNoneTwice) {
  std::set<std::string_view> names;
  for (const Kind* k : all_kinds()) {
    EXPECT_TRUE(names.insert(k->name).second) << k->name;
    EXPECT_EQ(find_kind(k->name), k);
  }
  EXPECT_EQ(find_kind("length"), &kind::length);
  EXPECT_EQ(find_kind("gauge pressure"), &kind::gauge_pressure);
  EXPECT_EQ(find_kind("banana"), nullptr);
  EXPECT_EQ(find_kind(""), nullptr);
}

TEST(Kind, EveryKindOfTheHeaderIsListed) {
  std::ifstream header(STREETWRIGHT_SOURCE_DIR "/src/quantity/kind.hpp");
  std::stringstream text;
  text << header.rdbuf();
  const std::string all = text.str(), mark = "inline constexpr Kind ";
  std::size_t count = 0;
  for (auto at = all.find(mark); at != std::string::npos; at = all.find(mark, at + 1)) ++count;
  EXPECT_GT(count, 40u);
  EXPECT_EQ(count, all_kinds().size());
}

TEST(Kind, ExampleReadsAsThatKind) {
  for (const Kind* k : all_kinds()) EXPECT_NE(si_of(k->example, *k), 0.0) << k->name;
}

TEST(Kind, EveryOfferedUnitMeasuresTheKind) {
  for (const Kind* k : all_kinds()) {
    EXPECT_FALSE(k->units.empty()) << k->name;
    for (auto u : k->units) {
      const auto unit = parse_unit_for(u, *k);
      const auto* fault = std::get_if<TextFault>(&unit);
      EXPECT_EQ(fault, nullptr) << k->name << ": " << fault->sentence();
    }
  }
}

TEST(Quantity, ReferencesKeepApart) {
  // A step is not a temperature; absolute less absolute is a step.
  static_assert(std::is_same_v<decltype(Temperature{300} - Temperature{290}), TemperatureStep>);
  static_assert(std::is_same_v<decltype(Temperature{300} + TemperatureStep{5}), Temperature>);
  static_assert(!std::is_same_v<GaugePressure, AbsolutePressure> && !std::is_same_v<GaugePressure, VacuumPressure>);
  static_assert(std::is_same_v<decltype(Length{1} / Length{2}), double>);
  static_assert(dim::shaft_speed != dim::frequency);
  EXPECT_DOUBLE_EQ((Temperature{300} - Temperature{290}).si, 10);
  EXPECT_DOUBLE_EQ((Torque{100} / Length{0.5}).si, 200);
}

}  // namespace
}  // namespace sw
