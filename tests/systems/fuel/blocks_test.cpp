#include "physics/radiation.hpp"
#include "systems/fuel/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// 4.35e5 W of fuel heat are 10 g/s of gasoline; E10 holds less heat and asks for more.
TEST(FuelBlocks, DemandFromTheHeatBurnt) {
  const auto plain = fuel_model(), blend = fuel_model("[fuel]\nethanol = 0.1\n");
  const auto at = [](const fuel::Model& m) {
    return bench<fuel::System>(m, "fuel.demand")
        .give("engine.fuel_flow", 0.01)
        .give("fuel.tank_temperature", 288.15)
        .run()
        .get("fuel.demand");
  };
  EXPECT_NEAR(at(plain), 0.01 / 745, 1e-9);
  EXPECT_NEAR(at(blend) / at(plain), 1.035, 0.005);
}

Bench lines(const fuel::Model& m, double volts = 13.5, double demand_l_h = 5) {
  return bench<fuel::System>(m, "fuel.lines")
      .give("fuel.demand", demand_l_h * litre_h)
      .give("fuel_pump.voltage", volts)
      .give("fuel.tank_temperature", 300)
      .give("fuel.tank_mass", 25)
      .give("duty.running", 1)
      .give("duty.pressure", 101325)
      .give("duty.fuel_level", 0.5)
      .run();
}

TEST(FuelBlocks, FlowsBalanceAndFewVoltsGiveLess) {
  const auto m = fuel_model();
  const auto full = lines(m), low = lines(m, 10.5);
  EXPECT_NEAR(full.get("fuel.rail_pressure") / psi, 43, 0.6);
  EXPECT_NEAR(full.get("fuel.pump_flow"), full.get("fuel.return_flow") + 5 * litre_h, 1e-9);
  // The curve shifts by its free flow (250 L/h) times the share of volts lost.
  EXPECT_NEAR((full.get("fuel.pump_flow") - low.get("fuel.pump_flow")) / litre_h, 250 * 3 / 13.5, 4);
}

TEST(FuelBlocks, StarvedTheRailSinks) {
  const auto m = fuel_model();
  EXPECT_LT(lines(m, 13.5, 230).get("fuel.rail_pressure") / psi, 30);
  EXPECT_EQ(lines(m, 0, 5).get("fuel.pump_flow") < 1e-8, true);
}

TEST(FuelBlocks, AtRestTheCheckValveKeepsThePressure) {
  for (bool check : {true, false}) {
    const auto m = fuel_model(std::string("[fuel.pump]\ncheck_valve = ") + (check ? "true\n" : "false\n"));
    auto b = lines(m);
    b.give("duty.running", 0).run();
    EXPECT_NEAR(b.get("fuel.rail_pressure") / psi, check ? 43 : 0, 1e-9);
    EXPECT_EQ(b.get("fuel.pump_flow"), 0);
  }
}

// Boyle: 12.5 L drawn from 9 gal of air space, two fifths of the fall left by the vapour.
TEST(FuelBlocks, AShutTankGoesUnderVacuum) {
  const auto m = fuel_model("[fuel.tank]\nvent = \"none\"\n");
  auto b = lines(m);
  const double space = 9 * 3.785411784e-3, drawn = 0.0125;
  b.give("fuel.tank_mass", (space - drawn) * fuel::density_kg_m3(m, 300)).run();
  EXPECT_NEAR(b.get("fuel.tank_vacuum"), 101325 * drawn / (space + drawn) * 0.4, 1);
  EXPECT_EQ(lines(fuel_model()).get("fuel.tank_vacuum"), 0);
}

Bench heat(const fuel::Model& m, double flow_l_h) {
  return bench<fuel::System>(m, "fuel.heat")
      .give("fuel.tank_temperature", 330)
      .give("fuel.tank_mass", 25)
      .give("fuel.rail_temperature", 330)
      .give("fuel.demand", 5 * litre_h)
      .give("fuel.pump_flow", flow_l_h * litre_h)
      .give("fuel.return_flow", (flow_l_h - 5) * litre_h)
      .give("fuel_pump.voltage", 0)
      .give("duty.running", 1)
      .give("duty.ambient", 330)
      .give("bay.temperature", 330)
      .run();
}

// Half a metre of 9.5 mm line beside a primary at 450 degC, view 0.3: 53 W, 0.6 K at 190 L/h and 23 K at 5 L/h less
// what the line's film gives back to the air (recomputed by hand from the radiation law).
TEST(FuelBlocks, TheHeaderWarmsASlowFeed) {
  const std::string route =
      "[fuel]\nexhaust_surface = \"450 degC\"\n[fuel.feed.floor]\nbore = \"7.7 mm\"\nlength = \"0.5 "
      "m\"\nbeside_exhaust = \"0.5 m\"\nview = 0.3\n";
  EXPECT_NEAR(heat(fuel_model(route), 190).get("fuel.feed_rise"), 0.6, 0.1);
  EXPECT_NEAR(heat(fuel_model(route + "[fuel.regulator]\nplace = \"pump\"\n"), 190).get("fuel.feed_rise"), 23, 2);
  const double shielded =
      heat(fuel_model(route + "shielded = true\n[fuel.regulator]\nplace = \"pump\"\n"), 190).get("fuel.feed_rise");
  EXPECT_NEAR(shielded, 23.0 / 6, 0.5);
}

// What the pump's motor takes ends in the fuel, and with no air to cool it all of what is sent back warms the tank.
TEST(FuelBlocks, RecirculationWarmsTheTank) {
  const auto m = fuel_model("[fuel.tank]\nroad_heat = \"0 W\"\n[fuel.pump]\ncurrent = \"8 A\"\n");
  auto b = heat(m, 200);
  b.give("fuel_pump.voltage", 13.5).give("fuel.rail_temperature", 330).run();
  const double rail_at_330 = b.rate("fuel.tank_temperature");
  EXPECT_NEAR(rail_at_330, 0, 1e-6);  // the rail has not felt it yet
  EXPECT_GT(b.rate("fuel.rail_temperature"), 0);
  const auto dead = fuel_model(
      "[fuel.tank]\nroad_heat = \"0 W\"\n[fuel.pump]\ncurrent = \"8 A\"\n[fuel.regulator]\nplace = \"pump\"\n");
  auto c = heat(dead, 200);
  c.give("fuel_pump.voltage", 13.5).run();
  // 108 W, but for what leaves with the engine's fortieth part, over 25 kg of 2228 J/(kg K).
  EXPECT_NEAR(c.rate("fuel.tank_temperature"), 108.0 * 195 / 200 / (25 * 2228), 2e-5);
  EXPECT_NEAR(c.rate("fuel.tank_mass"), -5 * litre_h * fuel::density_kg_m3(dead, 330), 1e-9);
}

}  // namespace
