#include "systems/tubes/parts.hpp"

#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string channel =
    "[tubes.bracket.b]\nthickness = \"0.04 in\"\nradius = \"0.16 in\"\n[tubes.bracket.b.flange.one]\nlength = \"1 "
    "in\"\n"
    "[tubes.bracket.b.flange.two]\nlength = \"2 in\"\n";

std::string fault_of(const std::string& change) {
  const Car car(faulty_car(change));
  return car.faults().any_fault() ? car.faults().all()[0].path : "";
}

TEST(TubesParts, ABracketIsBentBetweenItsFlanges) {
  const auto m = lines_of(channel);
  ASSERT_EQ(m.brackets.size(), 1u);
  EXPECT_EQ(m.brackets[0].flanges_m.size(), 2u);
  EXPECT_EQ(m.brackets[0].angles_rad.size(), 1u);
  EXPECT_NEAR(m.brackets[0].k, physics::usual_bend_k, 1e-12);
}

// 2 (0.16 + 0.04) - 1.5708 (0.16 + 0.4 x 0.04) = 0.1235 in: a deduction measured tells the 0.4.
TEST(TubesParts, ATrialBendTellsTheNeutralLine) {
  const auto m = lines_of("[tubes.bracket.b]\ndeduction = \"0.12354 in\"\n" + channel.substr(channel.find("thick")));
  EXPECT_NEAR(m.brackets.at(0).k, 0.4, 0.001);
  EXPECT_EQ(fault_of("[tubes.bracket.b]\ndeduction = \"0.3 in\"\n" + channel.substr(channel.find("thick"))),
            "tubes.bracket.b.deduction");
}

TEST(TubesParts, FiguresThatCannotBe) {
  EXPECT_EQ(
      fault_of(channel + "[tubes.bracket.b.hole.h]\nflange = \"three\"\nalong = \"1 in\"\ndiameter = \"0.2 in\"\n"),
      "tubes.bracket.b.hole.h.flange");
  EXPECT_EQ(fault_of("[tubes.hose.h]\ncarries = \"brake fluid\"\n[tubes.hose.h.position.lock]\npath = \"12 in\"\n"),
            "tubes.hose.h.carries");
}

TEST(TubesParts, WhatAnEntryLacksStaysWithIt) {
  const auto m = lines_of(
      "[tubes.hot.h]\nradius = \"1 in\"\n[tubes.hot.h.from]\nx = \"1 in\"\ny = \"1 in\"\n"
      "[tubes.stock.s]\noutside = \"0.25 in\"\nlength = \"6 ft\"\n");
  EXPECT_EQ(m.hot.at(0).missing.size(), 4u);
  EXPECT_EQ(m.stock.at(0).missing, (std::vector<std::string>{"tubes.stock.s.wall"}));
  EXPECT_EQ(tubes::group_of("a.b.c"), "a.b");
}

}  // namespace
