#include "systems/mounts/mounts.hpp"

#include "systems/clearance/clearance.hpp"
#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

mounts::Model of(const std::string& change) { return resolved<mounts::System>(hand_car("[mounts]\n" + change)).model; }
double rise_in(const mounts::Model& m, double ahead_in) {
  return clearance::EngineMoved{.front_rise_m = m.front_rise_m(), .pitch_rad = m.pitch_rad()}.rise_m(ahead_in * inch) /
         inch;
}

// A rigid engine on two supports 40 in apart, by hand: the tail lifted by 1 in turns it about the front mounts, so what
// lies 8 in ahead of them sinks by 8/40 in; front mounts sunk by 0.5 in leave the rear mount where it is.
TEST(MountsModel, TheEngineTurnsAboutItsMounts) {
  const auto lifted = of("span = \"40 in\"\ntail_lift = \"1 in\"\n");
  EXPECT_NEAR(rise_in(lifted, 8), -0.2, 1e-9);
  EXPECT_NEAR(rise_in(lifted, -40), 1.0, 1e-9);
  EXPECT_NEAR(lifted.pitch_rad() / degree, 1.432, 1e-3);  // atan(1/40)
  const auto sunk = of("span = \"40 in\"\nsag = \"0.5 in\"\n");
  EXPECT_NEAR(rise_in(sunk, 0), -0.5, 1e-9);
  EXPECT_NEAR(rise_in(sunk, -40), 0, 1e-9);
  EXPECT_NEAR(rise_in(sunk, -20), -0.25, 1e-9);
}

TEST(MountsModel, AnEngineThatStandsWhereItStoodAsksForNothing) {
  const auto r = resolved<mounts::System>(hand_car());
  EXPECT_EQ(r.model.pitch_rad(), 0);
  EXPECT_TRUE(Drive(hand_car("[mounts]\nintake_raised = \"0.5 in\"\n"), "hot-idle").highest("mounts.intake_raised") >
              0);
}

}  // namespace
