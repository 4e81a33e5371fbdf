#include "systems/fuel/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(FuelTankRequirements, AHighPumpNearsTheVapour) {
  const std::string high =
      "[fuel]\nreid_pressure = \"10 psi\"\n[fuel.pump]\nplace = \"outside\"\nheight = \"20 "
      "in\"\n[fuel.filter.sock]\ndrop = \"1.5 psi\"\n";
  Judging in_tank(fuel_car(), "cruise"), outside(fuel_car(high), "cruise");
  EXPECT_GT(in_tank.one("fuel.inlet-vapour", "cruise").margin().value(), 0);
  EXPECT_LT(outside.one("fuel.inlet-vapour", "cruise").margin().value(), 0);
}

TEST(FuelTankRequirements, OutsideTheVapourLawNothingIsSaid) {
  Judging j(fuel_car("[fuel]\nethanol = 0.85\n"), "cruise");
  const auto& v = j.one("fuel.inlet-vapour", "cruise").verdict;
  EXPECT_FALSE(v.predicted);
  EXPECT_NE(v.reason.find("at most 15 % ethanol"), std::string::npos);
}

// Dry for the whole bend without a tray; a tray fed by the return is emptied by the engine alone.
TEST(FuelTankRequirements, ABendOnAQuarterTank) {
  Judging bare(fuel_car("[fuel.pick_up]\nreserve = \"0 L\"\n"), "cornering"), tray(fuel_car(), "cornering");
  EXPECT_NEAR(*bare.one("fuel.pick-up", "cornering").verdict.predicted, 4, 1e-9);
  EXPECT_LT(bare.one("fuel.pick-up", "cornering").margin().value(), 0);
  EXPECT_GT(tray.one("fuel.pick-up", "cornering").margin().value(), 0);
  // A baffled cell 6 in wide keeps its own fuel.
  Judging cell(fuel_car("[fuel.pick_up]\nreserve = \"0 L\"\ncell_width = \"6 in\"\n"), "cornering");
  EXPECT_EQ(*cell.one("fuel.pick-up", "cornering").verdict.predicted, 0);
}

TEST(FuelTankRequirements, ATankToldByItsStrappingAloneAsksForItsWalls) {
  Build b =
      fuel_car("[fuel.tank]\nstrapping = [[\"0 in\", \"0 gal\"], [\"4 in\", \"9 gal\"], [\"8 in\", \"18 gal\"]]\n");
  std::get<fuel::Input>(b.inputs).tank.width.reset();
  const Judging j(b, "cornering");
  const auto& v = j.one("fuel.pick-up", "cornering").verdict;
  EXPECT_FALSE(v.predicted);
  EXPECT_EQ(v.missing, std::vector<std::string>{"fuel.tank.width"});
}

TEST(FuelTankRequirements, BrakingThrowsTheFuelForward) {
  const std::string rear =
      "[duty.panic-stop]\ntitle = \"hard stop on little fuel\"\nduration = \"8 s\"\nambient = \"20 degC\"\n"
      "charge = 1.0\nfuel_level = 0.1\nspeed_trace = [[\"0 s\", \"60 mph\"], [\"3.42 s\", \"0 mph\"], [\"8 s\", \"0 "
      "mph\"]]\n"
      "[fuel.pick_up]\nreserve = \"0 L\"\n";
  EXPECT_GT(*Judging(fuel_car(rear + "from_front = \"22 in\"\n"), "panic-stop")
                 .one("fuel.pick-up", "panic-stop")
                 .verdict.predicted,
            3);
  EXPECT_EQ(*Judging(fuel_car(rear + "from_front = \"2 in\"\n"), "panic-stop")
                 .one("fuel.pick-up", "panic-stop")
                 .verdict.predicted,
            0);
}

TEST(FuelTankRequirements, AShutTankAndAWantedRange) {
  Judging shut(fuel_car("[fuel]\nrange_wanted = \"900 mile\"\n[fuel.tank]\nvent = \"none\"\n"), "cruise");
  EXPECT_LT(shut.one("fuel.tank-vacuum", "cruise").margin().value(), 0);
  EXPECT_LT(shut.one("fuel.range", "cruise").margin().value(), 0);
  Judging open(fuel_car("[fuel]\nrange_wanted = \"150 mile\"\n"), "cruise");
  EXPECT_GT(open.one("fuel.tank-vacuum", "cruise").margin().value(), 0);
  EXPECT_GT(open.one("fuel.range", "cruise").margin().value(), 0);
}

TEST(FuelTankRequirements, WithoutACheckValveTheHotRailBoils) {
  Judging j(fuel_car("[fuel.pump]\ncheck_valve = false\n"));
  EXPECT_LT(j.one("fuel.rail-vapour", "hot-soak").margin().value(), 0);
  Judging held(fuel_car());
  EXPECT_GT(held.one("fuel.rail-vapour", "hot-soak").margin().value(), 0);
  EXPECT_GT(held.one("fuel.rail-vapour", "hot-restart").margin().value(), 0);
}

}  // namespace
