#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string hose = "[tubes.hose.h]\nlength = \"20 in\"\nbend_radius = \"4 in\"\n";
const std::string ways =
    "[tubes.hose.h.position.ride]\npath = \"17 in\"\n[tubes.hose.h.position.rolled]\npath = \"19.5 in\"\n";

TEST(TubesHoses, BendByItsMakersRadius) {
  EXPECT_LT(still(hose + "least_radius = \"5 in\"\ncarries = \"oil\"\n").one("tubes.hose-bend").margin().value(), 0);
  EXPECT_GT(still(hose + "least_radius = \"3 in\"\ncarries = \"fuel\"\n").one("tubes.fuel-hose-bend").margin().value(),
            0);
  EXPECT_EQ(still("[tubes.hose.h]\ncarries = \"fuel\"\nleast_radius = \"3 in\"\n")
                .one("tubes.fuel-hose-bend")
                .verdict.missing,
            (std::vector<std::string>{"tubes.hose.h.bend_radius"}));
  EXPECT_EQ(still(hose + "carries = \"brake fluid\"\n").one("tubes.brake-hose-bend").verdict.missing,
            (std::vector<std::string>{"tubes.hose.h.least_radius"}));
}

// 1 - 19.5/20 = 2.5 % where 5 are wanted, at the position that asks most.
TEST(TubesHoses, SlackAtTheWorstPosition) {
  const Judging j = still(hose + "carries = \"fuel\"\n" + ways);
  EXPECT_NEAR(j.one("tubes.fuel-hose-slack").verdict.predicted.value(), 0.025, 1e-9);
  EXPECT_LT(j.one("tubes.fuel-hose-slack").margin().value(), 0);
  EXPECT_NE(j.one("tubes.fuel-hose-slack").verdict.because.at(0).what.find("rolled"), std::string::npos);
  EXPECT_FALSE(still(hose + ways).one("tubes.brake-hose-slack").verdict.predicted);
  EXPECT_TRUE(still(hose).of("tubes.hose-slack").empty());
}

}  // namespace
