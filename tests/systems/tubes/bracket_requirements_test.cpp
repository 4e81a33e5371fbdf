#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

std::string bracket(const std::string& more = "", const char* web = "2 in") {
  return "[tubes.bracket.b]\nthickness = \"0.04 in\"\nradius = \"0.16 in\"\n" + more +
         "[tubes.bracket.b.flange.foot]\nlength = \"1 in\"\n[tubes.bracket.b.flange.web]\nlength = \"" + web +
         "\"\n[tubes.bracket.b.flange.lip]\nlength = \"1 in\"\n";
}
std::string hole(const char* along) {
  return "[tubes.bracket.b.hole.h]\nflange = \"web\"\ndiameter = \"0.2 in\"\nalong = \"" + std::string(along) + "\"\n";
}

TEST(TubesBrackets, RadiusForTheSheet) {
  EXPECT_GT(still(bracket()).one("tubes.bracket-bend").margin().value(), 0);
  EXPECT_NEAR(still(bracket("material = \"hard aluminium\"\n")).one("tubes.bracket-bend").margin().value(), 0, 1e-9);
  EXPECT_LT(still("[tubes.bracket.b]\nthickness = \"0.1 in\"\nradius = \"0.05 in\"\n[tubes.bracket.b.flange.one]\n"
                  "length = \"1 in\"\n[tubes.bracket.b.flange.two]\nlength = \"1 in\"\n")
                .one("tubes.bracket-bend")
                .margin()
                .value(),
            0);
}

// Setbacks of 0.2 in: of 2 in of web 1.6 are flat, of 0.45 in 0.05, less than two thicknesses.
TEST(TubesBrackets, FlangesTheBrakeCanHold) {
  EXPECT_NEAR(still(bracket()).one("tubes.bracket-flange", {}, "b web").verdict.predicted.value() / inch, 1.6, 1e-9);
  EXPECT_LT(still(bracket("", "0.45 in")).one("tubes.bracket-flange", {}, "b web").margin().value(), 0);
}

// 0.35 - 0.2 - 0.1 = 0.05 in from the hole's edge to the bend, where 0.08 are wanted.
TEST(TubesBrackets, HolesClearOfBends) {
  EXPECT_NEAR(still(bracket() + hole("0.35 in")).one("tubes.bracket-hole").verdict.predicted.value() / inch, 0.05,
              1e-9);
  EXPECT_LT(still(bracket() + hole("0.35 in")).one("tubes.bracket-hole").margin().value(), 0);
  EXPECT_NEAR(still(bracket() + hole("1.65 in")).one("tubes.bracket-hole").verdict.predicted.value() / inch, 0.05,
              1e-9);
  EXPECT_GT(still(bracket() + hole("1 in")).one("tubes.bracket-hole").margin().value(), 0);
}

TEST(TubesBrackets, AnOldStripIsFound) {
  EXPECT_EQ(still(bracket("flat_length = \"4 in\"\n")).one("tubes.flat-length").verdict.rule, false);
  EXPECT_EQ(still(bracket("flat_length = \"3.758 in\"\n")).one("tubes.flat-length").verdict.rule, true);
}

}  // namespace
