#include "physics/fuel_blend.hpp"
#include "systems/fuel/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(FuelModel, DepthByBoxAndByStrapping) {
  const auto box = fuel_model();
  EXPECT_NEAR(fuel::depth_m(box, box.tank_m3 / 2), box.height_m / 2, 1e-12);
  EXPECT_NEAR(box.height_m, 18 * 231.0 / (36 * 24) * inch, 1e-6);  // 18 gal of 231 in3 over 36 by 24 in
  const auto curve =
      fuel_model("[fuel.tank]\nstrapping = [[\"0 in\", \"0 gal\"], [\"4 in\", \"6 gal\"], [\"8 in\", \"18 gal\"]]\n");
  EXPECT_NEAR(fuel::depth_m(curve, 12 * 3.785411784e-3), 6 * inch, 1e-9);
  EXPECT_NEAR(fuel::depth_m(curve, 20 * 3.785411784e-3), 8 * inch, 1e-9);
}

TEST(FuelModel, JointsFollowTheFlow) {
  const auto m = fuel_model();
  std::vector<std::string> places;
  for (auto& j : m.joints) places.push_back(j.place);
  EXPECT_EQ(places, (std::vector<std::string>{"pump to floor", "floor to engine_hose", "engine_hose to rail",
                                              "rail to regulator", "regulator to engine_hose_back",
                                              "engine_hose_back to floor_back"}));
}

// Where the regulator stands decides what the feed carries: all of the pump's flow, or what the engine burns.
TEST(FuelModel, RegulatorPlaceShapesTheNetwork) {
  const auto flow = [](const std::string& place) {
    const auto m = fuel_model("[fuel.regulator]\nplace = \"" + place + "\"\n");
    fuel::pipes::Network n = m.network;
    fuel::set_network(m,
                      {.tank_k = 300,
                       .fuel_m3 = 0.03,
                       .demand_m3_s = 5 * litre_h,
                       .volts = 13.5,
                       .vacuum_pa = 0,
                       .manifold_vacuum_pa = 0,
                       .running = true},
                      n);
    fuel::pipes::Solution s;
    EXPECT_TRUE(fuel::pipes::solve(n, s).usable()) << place;
    EXPECT_NEAR(s.pressure_pa[m.n_rail] / psi, 43, 1) << place;
    return (s.pressure_pa[m.n_out] - s.pressure_pa[m.n_rail]) / psi;
  };
  EXPECT_GT(flow("rail"), 1.0);
  EXPECT_LT(flow("pump"), 0.1);
  EXPECT_GT(flow("filter"), flow("pump"));  // the filter's own loss at the pump's flow
}

TEST(FuelModel, FiguresThatCannotBe) {
  const auto fault = [](const std::string& change) {
    const Build build = std::move(opened_fuel_car(change).build);
    Resolver r(build_fields(), &build, build.evidence);
    fuel::System::resolve(std::get<fuel::Input>(build.inputs), r);
    return r.faults().all().empty() ? std::string() : r.faults().all().front().problem;
  };
  EXPECT_EQ(fault(""), "");
  EXPECT_NE(fault("[fuel.pick_up]\nfrom_side = \"40 in\"\n").find("outside the tank"), std::string::npos);
  EXPECT_NE(fault("[fuel.pump]\ncurve = [[\"0 psi\", \"100 L/h\"], [\"40 psi\", \"120 L/h\"]]\n").find("does not fall"),
            std::string::npos);
  EXPECT_NE(fault("[fuel.regulator]\nplace = \"none\"\n").find("no regulator"), std::string::npos);
  EXPECT_NE(fault("[fuel]\ndelivery = \"carburettor\"\n").find("injection rail"), std::string::npos);
}

// A build that tells only the rules of fire has those judged, and the lines wait for their figures.
TEST(FuelModel, RulesAloneNeedNoLines) {
  Judging j(hand_car("[fuel.tank]\nbonded = true\nvolume = \"18 gal\"\n[fuel.cut_off]\nimpact = false\n"), "hot-idle");
  EXPECT_TRUE(*j.one("fuel.tank-safety", "", "bonding").verdict.rule);
  EXPECT_FALSE(*j.one("fuel.cut-off", "", "impact").verdict.rule);
  EXPECT_EQ(j.one("fuel.cut-off", "", "engine stopped").verdict.missing,
            std::vector<std::string>{"fuel.cut_off.engine_stopped"});
}

}  // namespace
