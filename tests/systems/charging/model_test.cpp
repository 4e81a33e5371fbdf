#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

charging::Model hand_charging(const std::string& change = "") {
  return resolved<charging::System>(hand_car(change)).model;
}

// Common practice of the trade (BCI): 12.7 V full, 12.2 V about half, 11.8 V empty, rested at 25 degC.
TEST(ChargingModel, OpenCircuitLadder) {
  const auto m = hand_charging();
  EXPECT_NEAR(charging::open_circuit_v(m, 1.0, 298.15), 12.7, 0.05);
  EXPECT_NEAR(charging::open_circuit_v(m, 0.5, 298.15), 12.2, 0.1);
  EXPECT_NEAR(charging::open_circuit_v(m, 0.0, 298.15), 11.8, 0.1);
}

// SAE J537 (from memory): the rating holds 7.2 V at -18 degC. 680 A through the resistance that the model draws from it
// must bring the full battery to 7.2 V there.
TEST(ChargingModel, ResistanceGivesBackTheColdCrankingTest) {
  const auto m = hand_charging();
  const double cold = 255.15;
  EXPECT_NEAR(charging::open_circuit_v(m, 1, cold) - 680 * charging::resistance_ohm(m, 1, cold), 7.2, 0.01);
}

TEST(ChargingModel, AMeasuredResistanceGoesBeforeTheRating) {
  EXPECT_NEAR(hand_charging("[charging.battery]\nresistance = \"8 mohm\"\n").resistance_ohm, 0.008, 1e-12);
}

TEST(ChargingModel, CellsFollowTheRegulator) {
  const auto six =
      hand_charging("[vehicle]\nsystem_voltage = \"6 V\"\n[charging.alternator]\nregulator_voltage = \"7.2 V\"\n");
  EXPECT_EQ(six.cells, 3);
  EXPECT_EQ(six.least_crank_v, 0);  // by temperature, as nobody gave one
  EXPECT_EQ(hand_charging().cells, 6);
}

// Without the supplier's curve a usual one is scaled: rated at 6000 rpm (ISO 8854, from memory), nothing below cut-in.
TEST(ChargingModel, TheUsualCurveReachesTheRating) {
  Build b = hand_car();
  std::get<charging::Input>(b.inputs).alternator.output_curve.reset();
  const auto r = resolved<charging::System>(b);
  ASSERT_TRUE(r.missing.empty());
  EXPECT_NEAR(r.model.output->at(6000 * rpm).value, 150, 1e-9);
  EXPECT_EQ(r.model.output->at(900 * rpm).value, 0);
  for (double n = 900; n < 6000; n += 100)
    EXPECT_LE(r.model.output->at(n * rpm).value, r.model.output->at((n + 100) * rpm).value);
  auto& machine = std::get<charging::Input>(b.inputs).alternator;
  machine.rated_current.reset();
  EXPECT_EQ(resolved<charging::System>(b).missing, std::vector<std::string>{"charging.alternator.rated_current"});
  // The usual curve is an alternator's and no other machine's.
  machine.machine = charging::Machine::generator;
  EXPECT_EQ(resolved<charging::System>(b).missing, std::vector<std::string>{"charging.alternator.output_curve"});
}

TEST(ChargingModel, ACurveOfTooManyPointsIsSaid) {
  std::string points;
  for (int i = 0; i < 40; ++i)
    points += (i ? ", " : "") + ("[\"" + std::to_string(1000 + 100 * i) + " rpm\", \"90 A\"]");
  const auto r = resolved<charging::System>(faulty_car("[charging.alternator]\noutput_curve = [" + points + "]\n"));
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_NE(r.missing[0].find("charging.alternator.output_curve"), std::string::npos);
}

// 200 A through 60 mohm are 12 V, and the starter is fed with 10: nothing would turn it.
TEST(ChargingModel, AStarterThatDropsMoreThanItIsFedIsRefused) {
  const auto r = resolved<charging::System>(
      faulty_car("[charging.starter]\nvoltage = \"10 V\"\ncurrent = \"200 A\"\nresistance = \"60 mohm\"\n"));
  EXPECT_EQ(r.missing, std::vector<std::string>{"charging.starter.resistance"});
}

}  // namespace
