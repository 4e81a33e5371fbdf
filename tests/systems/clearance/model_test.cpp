#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(ClearanceModel, BumpAndDroopExcludeEachOther) {
  const clearance::GapModel g{.place = "a",
                              .missing = {},
                              .gap_m = 3 * inch,
                              .roll_m = 0.3 * inch,
                              .bump_m = 1 * inch,
                              .droop_m = 0.4 * inch,
                              .lock_m = -0.2 * inch};
  EXPECT_NEAR(g.least_m({}) / inch, 1.7, 1e-12);  // 3 - 0.3 - 1; the lock opens it and is not counted
}

TEST(ClearanceModel, WhatIsWantedGoesByWhatItKeepsApart) {
  const auto m =
      resolved<clearance::System>(
          hand_car("[clearance.gap.a]\ngap = \"1 in\"\n[clearance.gap.b]\ngap = \"1 in\"\nbetween = \"wire and "
                   "hot part\"\n[clearance.gap.c]\ngap = \"1 in\"\nbetween = \"wire and hot part\"\nsleeved = "
                   "true\n[clearance.gap.d]\ngap = \"1 in\"\nwanted = \"0.3 in\"\n"))
          .model;
  EXPECT_NEAR(m.gaps.at(0).wanted_m / inch, 0.5, 1e-9);
  EXPECT_NEAR(m.gaps.at(1).wanted_m / inch, 2.0, 1e-9);
  EXPECT_NEAR(m.gaps.at(2).wanted_m / inch, 0.5, 1e-9);
  EXPECT_NEAR(m.gaps.at(3).wanted_m / inch, 0.3, 1e-9);
}

TEST(ClearanceModel, ASleeveOnWhatIsNoWireIsAFault) {
  const Car car(faulty_car("[clearance.gap.a]\ngap = \"1 in\"\nbetween = \"moving parts\"\nsleeved = true\n"));
  ASSERT_TRUE(car.faults().any_fault());
  EXPECT_EQ(car.faults().all()[0].path, "clearance.gap.a.sleeved");
}

// Moved 0.18 in at 52 in from the hinge is seen at 48 in: 0.166 in; three shims of 0.06 in undo it.
TEST(ClearanceModel, APanelIsALever) {
  clearance::PanelModel p{
      .place = "a", .missing = {}, .moved_m = 0.18 * inch, .lever = 48.0 / 52, .shim_m = 0.06 * inch};
  EXPECT_NEAR(p.opened_m() / inch, 0.16615, 1e-4);
  p.shims = 3;
  EXPECT_NEAR(p.opened_m(), 0, 1e-12);
}

}  // namespace
