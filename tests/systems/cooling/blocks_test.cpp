#include "physics/exchanger.hpp"
#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

cooling::Model cooled(const std::string& change = "") { return resolved<cooling::System>(hand_car(change)).model; }

// Effectiveness of crossflow, both streams unmixed, by hand from Mason's series: UA 1650 W/K at 5 m/s, air 2000,
// coolant 8000 W/K: N = 0.825, C = 0.25, C N = 0.20625. P_0 = 1 - e^-x, P_1 = 1 - e^-x (1 + x), ...: P(N) 0.56176,
// 0.20022, 0.05108, 0.01007; P(C N) 0.18637, 0.01856, 0.00125, 0.00006; sum of products 0.10848; over C N: 0.52597.
// Times 2000 x (95 - 40) = 57.86 kW.
TEST(CoolingBlocks, RadiatorHeatByNtu) {
  const auto m = cooled();
  auto b = bench<cooling::System>(m, "cooling.core");
  b.give("cooling.engine_temperature", 95 + zero_c)
      .give("cooling.capacity_rate", 8000)
      .give("air.capacity_rate", 2000)
      .give("air.face_speed", 5);
  b.give("air.swept", 1).give("duty.ambient", 40 + zero_c).give("road.speed", 20).run();
  EXPECT_NEAR(b.get("radiator.heat"), 57.86e3, 0.02e3);
  EXPECT_NEAR(b.get("radiator.air_out"), 40 + zero_c + 57.86e3 / 2000, 0.02);
}

// Air before the core: standing, hot air comes round (3 K in the hand car), and the condenser's heat warms it.
TEST(CoolingBlocks, AirBeforeTheCore) {
  const auto m = cooled();
  auto b = bench<cooling::System>(m, "cooling.core");
  b.give("cooling.engine_temperature", 370)
      .give("cooling.capacity_rate", 8000)
      .give("air.capacity_rate", 1500)
      .give("air.face_speed", 3);
  b.give("air.swept", 1).give("duty.ambient", 300).give("air_conditioning.condenser_heat", 6000).run();
  EXPECT_NEAR(b.get("radiator.air_in"), 300 + 3 + 4, 1e-9);
  EXPECT_NEAR(b.give("road.speed", 20).run().get("radiator.air_in"), 300 + 4, 1e-9);
  // Against the travel the core breathes the engine bay.
  EXPECT_EQ(b.give("air.face_speed", -1).give("bay.temperature", 350).run().get("radiator.air_in"), 350);
}

// Second law: the core never cools the coolant below the air nor heats the air above the coolant.
TEST(CoolingBlocks, NoHeatUphill) {
  const auto m = cooled();
  auto b = bench<cooling::System>(m, "cooling.core");
  b.give("air.swept", 1).give("duty.ambient", 310).give("road.speed", 20);
  for (double coolant : {320.0, 370.0})
    for (double rate : {0.0, 10.0, 500.0, 8000.0})
      for (double air : {0.0, 50.0, 3000.0})
        for (double face : {0.0, 0.1, 3.0, 10.0}) {
          b.give("cooling.engine_temperature", coolant)
              .give("cooling.capacity_rate", rate)
              .give("air.capacity_rate", air)
              .give("air.face_speed", face)
              .run();
          EXPECT_GE(b.get("radiator.heat"), 0);
          EXPECT_LE(b.get("radiator.heat"), std::max(rate, 1e-6) * (coolant - 310) + 1e-6);
          EXPECT_LE(b.get("radiator.air_out"), coolant + 1e-9);
        }
}

// Affinity: flow with pump speed, power with its cube; the other way round only a share of the flow.
TEST(CoolingBlocks, PumpByAffinity) {
  const auto m = cooled();
  auto b = bench<cooling::System>(m, "cooling.flow");
  b.give("cooling.wax_temperature", 380).give("cooling.engine_temperature", 365).give("belts.pump_direction", -1);
  b.give("belts.pump_speed", 2600 * rpm).run();
  EXPECT_NEAR(b.get("cooling.flow") / gallon_min, 60, 1e-9);
  EXPECT_NEAR(b.get("cooling.pump_power"), horsepower, 1e-6);
  b.give("belts.pump_speed", 1300 * rpm).run();
  EXPECT_NEAR(b.get("cooling.flow") / gallon_min, 30, 1e-9);
  EXPECT_NEAR(b.get("cooling.pump_power"), horsepower / 8, 1e-6);
  b.give("belts.pump_direction", 1).run();
  EXPECT_NEAR(b.get("cooling.flow") / gallon_min, 7.5, 1e-9);
}

TEST(CoolingBlocks, ThermostatOpensFromItsTemperatureOverItsTravel) {
  const auto m = cooled();
  auto b = bench<cooling::System>(m, "cooling.flow");
  b.give("cooling.engine_temperature", 365).give("belts.pump_speed", 200);
  const auto opening = [&](double celsius) {
    return b.give("cooling.wax_temperature", celsius + zero_c).run().get("cooling.opening");
  };
  EXPECT_LT(opening(80), 0.01);
  EXPECT_NEAR(opening(94), 0.5, 1e-9);  // half way of 88 to 100
  EXPECT_NEAR(opening(100), 1, 1e-12);
  EXPECT_NEAR(opening(120), 1, 1e-12);
  EXPECT_NEAR(b.get("cooling.capacity_rate") / b.get("cooling.flow"), 1030 * 3550,
              0.04 * 1030 * 3550);  // 50 % glycol, 92 degC (ASHRAE, from memory)
}

// First law over the loop: what the engine and the cooler put in and the core does not take is stored.
TEST(CoolingBlocks, LoopKeepsTheBalance) {
  const auto m = cooled();
  auto b = bench<cooling::System>(m, "cooling.loop");
  b.give("cooling.engine_temperature", 368)
      .give("cooling.radiator_temperature", 350)
      .give("cooling.capacity_rate", 3000);
  b.give("engine.heat_to_coolant", 60e3)
      .give("radiator.heat", 50e3)
      .give("driveline.cooler_heat", 2e3)
      .give("duty.ambient", 310)
      .run();
  const auto c = m.coolant->at(368);
  const double heat = c.density_kg_m3 * c.specific_heat_j_kg_k;
  const double stored = heat * (m.engine_m3 * b.rate("cooling.engine_temperature") +
                                m.radiator_m3 * b.rate("cooling.radiator_temperature"));
  EXPECT_NEAR(60e3 + 2e3 - 50e3 - 8 * (350 - 310), stored, 1e-6);  // 8 W/K: the radiator's own still loss
}

// First law over the hot idle: heat into the coolant's side leaves through core, tank walls, sump and engine surface,
// to 1 % over the settled half.
TEST(CoolingBlocks, HotIdleGivesOffWhatItTakesUp) {
  Drive d(hand_car(), "hot-idle");
  const auto mean = [&](auto port) { return d.trace().late_mean(d.slot(port), 0.5); };
  const double in = mean("engine.coolant_heat") + mean("engine.oil_heat") + mean("driveline.cooler_heat");
  const double out = mean("radiator.heat") + 8 * (mean("cooling.radiator_temperature") - 313.15) +
                     15 * (mean("engine.oil_temperature") - 313.15) + mean("engine.surface_heat");
  EXPECT_NEAR(out, in, 0.01 * in);
  EXPECT_GT(in, 5e3);
}

// First law over the warm-up: integral of heat in = heat stored in metal, oil and coolant + integral of heat out.
TEST(CoolingBlocks, WarmUpStoresWhatDoesNotLeave) {
  Drive d(hand_car(), "warm-up");
  const auto& e = d.car().model<engine::Model>();
  const auto& c = d.car().model<cooling::Model>();
  const double ambient = d.first("duty.ambient");
  double in = 0, out = 0, coolant = 0;
  for (std::size_t r = 1; r < d.trace().rows(); ++r) {
    const double dt = d.trace().time[r] - d.trace().time[r - 1];
    const auto mid = [&](auto port) { return 0.5 * (d.at(r, port) + d.at(r - 1, port)); };
    in += dt * (mid("engine.coolant_heat") + mid("engine.oil_heat") + mid("driveline.cooler_heat"));
    out +=
        dt * (mid("radiator.heat") + 8 * (mid("cooling.radiator_temperature") - ambient) + mid("engine.surface_heat") +
              (15 + 2.5 * mid("road.speed")) * (mid("engine.oil_temperature") - ambient));
    const auto fluid = c.coolant->at(mid("cooling.engine_temperature"));
    const auto rise = [&](auto port) { return d.at(r, port) - d.at(r - 1, port); };
    coolant +=
        fluid.density_kg_m3 * fluid.specific_heat_j_kg_k *
        (c.engine_m3 * rise("cooling.engine_temperature") + c.radiator_m3 * rise("cooling.radiator_temperature"));
  }
  const double stored = coolant +
                        e.metal_j_k * (d.last("engine.metal_temperature") - d.first("engine.metal_temperature")) +
                        e.oil_j_k * (d.last("engine.oil_temperature") - d.first("engine.oil_temperature"));
  EXPECT_NEAR(in, stored + out, 0.01 * in);
  EXPECT_GT(stored, 0.1 * in);  // it did warm up
}

}  // namespace
