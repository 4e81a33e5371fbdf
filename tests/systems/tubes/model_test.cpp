#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(TubesModel, StretchGoesByTheMaterialUnlessGiven) {
  const auto m = resolved<tubes::System>(hand_car("[tubes.tube.a]\nmaterial = \"hard stainless\"\n[tubes.tube.b]\n"
                                                  "material = \"hard stainless\"\nelongation = 0.5\n"))
                     .model;
  EXPECT_NEAR(m.tubes.at(0).elongation, 0.35, 1e-12);
  EXPECT_NEAR(m.tubes.at(1).elongation, 0.5, 1e-12);
}

TEST(TubesModel, FiguresThatCannotBe) {
  const Car wall(faulty_car("[tubes.tube.a]\noutside = \"0.25 in\"\nwall = \"0.2 in\"\n"));
  ASSERT_TRUE(wall.faults().any_fault());
  EXPECT_EQ(wall.faults().all()[0].path, "tubes.tube.a.wall");
  const Car flare(faulty_car("[tubes.tube.a]\noutside = \"0.25 in\"\n[tubes.tube.a.end]\nflared_to = \"0.2 in\"\n"));
  ASSERT_TRUE(flare.faults().any_fault());
  EXPECT_EQ(flare.faults().all()[0].path, "tubes.tube.a.end.flared_to");
}

}  // namespace
