#include "field/measured_by.hpp"

#include <gtest/gtest.h>

#include "field/field.hpp"

namespace sw {
namespace {

struct Thing {
  std::optional<Length> fine, short_one, shared, wide;
  std::optional<Mass> mass;
  std::optional<double> share;
  std::optional<bool> there;
};
constexpr FieldInfo table[] = {
    quantity<&Thing::fine>("fine", "fine", kind::length)
        .in("in")
        .above(0, 3)
        .spread(Source::measured, {.absolute = 0.002}),
    quantity<&Thing::short_one>("short_one", "short", kind::length)
        .in("in")
        .above(0, 3)
        .spread(Source::measured, {.absolute = 0.03}),
    quantity<&Thing::shared>("shared", "shared", kind::length).in("in").above(0, 12),
    quantity<&Thing::wide>("wide", "wide", kind::length).in("in").above(0, 250),
    quantity<&Thing::mass>("mass", "mass", kind::mass),
    number<&Thing::share>("share", "share"),
    yes_no<&Thing::there>("there", "there"),
};

// Readings of the tools, common practice: a calliper to 0.02 mm, a steel rule to half a millimetre, a tape to one and
// more.
TEST(MeasuredBy, TheCoarsestToolThatReachesTheTolerance) {
  EXPECT_EQ(tool_of(table[0]), Tool::calliper);
  EXPECT_EQ(tool_of(table[1]), Tool::rule);
}

TEST(MeasuredBy, AToleranceThatIsAShareGoesByHowLongTheThingCanBe) {
  EXPECT_EQ(tool_of(table[2]), Tool::rule);
  EXPECT_EQ(tool_of(table[3]), Tool::tape);
}

TEST(MeasuredBy, ByKindAndByTheFieldsOwnWord) {
  EXPECT_EQ(tool_of(table[4]), Tool::scales);
  EXPECT_EQ(tool_of(table[5]), Tool::data_sheet) << "a share is no reading";
  EXPECT_EQ(tool_of(table[6]), Tool::eye);
  EXPECT_EQ(tool_of(table[5].with(Tool::fluid_tester)), Tool::fluid_tester);
}

TEST(MeasuredBy, EveryToolAndStationHasItsName) {
  for (std::size_t i = 1; i < tool_names.size(); ++i) EXPECT_FALSE(tool_names[i].empty()) << i;
  for (std::size_t i = 1; i < station_names.size(); ++i) EXPECT_FALSE(station_names[i].empty()) << i;
  EXPECT_EQ(name_of(Tool::data_sheet), tool_names.back()) << "a tool too many or too few";
  EXPECT_EQ(name_of(Station::desk), station_names.back());
}

}  // namespace
}  // namespace sw
