#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

/// A round bar of 1 in radius along y, `above` the first straight of the line.
std::string header(double above, const std::string& more = "") {
  const std::string z = "\"" + std::to_string(above) + " in\"\n";
  return "[tubes.hot.header]\nradius = \"1 in\"\n" + more +
         "[tubes.hot.header.from]\nx = \"4 in\"\ny = \"-5 in\"\nz = " + z +
         "[tubes.hot.header.to]\nx = \"4 in\"\ny = \"5 in\"\nz = " + z;
}
const std::string fuel = "carries = \"fuel\"\n", brake = "carries = \"brake fluid\"\n", oil = "carries = \"oil\"\n";

// 5 in over the line, less 1 in and 1/8 in: 3.875 in where fuel wants 3; 4 in over it leave 2.875.
TEST(TubesClear, OfHotPartsByHand) {
  const Judging far = still(bent_line(fuel) + header(5));
  EXPECT_NEAR(far.one("tubes.fuel-heat").verdict.predicted.value() / inch, 3.875, 1e-9);
  EXPECT_GT(far.one("tubes.fuel-heat").margin().value(), 0);
  EXPECT_EQ(far.one("tubes.fuel-heat").requirement->caution, Caution::fuel_fire);
  EXPECT_LT(still(bent_line(fuel) + header(4)).one("tubes.fuel-heat").margin().value(), 0);
  EXPECT_LT(still(bent_line(brake) + header(4)).one("tubes.brake-heat").margin().value(), 0);
  EXPECT_GT(still(bent_line(oil) + header(4)).one("tubes.heat").margin().value(), 0);
  EXPECT_GT(still(bent_line(fuel) + header(4, "shielded = true\n")).one("tubes.fuel-heat").margin().value(), 0);
  EXPECT_LT(still(bent_line(oil) + header(4, "wanted = \"3 in\"\n")).one("tubes.heat").margin().value(), 0);
}

TEST(TubesClear, WhatItCarriesDecidesHarmAndIsAskedFor) {
  std::string untold = bent_line() + header(5);
  untold.erase(untold.find(oil), oil.size());
  EXPECT_EQ(still(untold).one("tubes.brake-heat").verdict.missing,
            (std::vector<std::string>{"tubes.tube.a.carries"}));
}

// Half an inch from the middle of the bend of 10/9 in towards its corner: 0.611 in from the arc, 0.758 in from the legs
// drawn out to the corner.
TEST(TubesClear, ABendIsNearerThanItsCorner) {
  const std::string at = "x = \"9.24244 in\"\ny = \"0.75756 in\"\nz = \"0 in\"\n";
  const std::string lump =
      "[tubes.hot.lump]\nradius = \"0.1 in\"\n[tubes.hot.lump.from]\n" + at + "[tubes.hot.lump.to]\n" + at;
  const double middles = still(bent_line(oil) + lump).one("tubes.heat").verdict.predicted.value() / inch + 0.1 + 0.125;
  EXPECT_NEAR(middles, 10.0 / 9 - 0.5, 0.002);
}

TEST(TubesClear, TubesKeepApartUnlessTheyShareClips) {
  const auto two = [](const std::string& more) {
    return bent_line(fuel) + "[tubes.tube.b]\noutside = \"0.25 in\"\n" + more + point("b", "p", 0, 0.4, 0) +
           point("b", "q", 8, 0.4, 0);
  };
  const Judging near = still(two(brake));
  EXPECT_NEAR(near.one("tubes.brake-apart").verdict.predicted.value() / inch, 0.15, 1e-9);
  EXPECT_LT(near.one("tubes.brake-apart").margin().value(), 0);
  EXPECT_EQ(still(two(oil)).one("tubes.fuel-apart").requirement->caution, Caution::fuel_fire);
  EXPECT_TRUE(still(two(brake + "beside = [\"a\"]\n")).of("tubes.brake-apart").empty());
}

}  // namespace
