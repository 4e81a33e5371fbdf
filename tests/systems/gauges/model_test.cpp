#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;
using namespace sw::gauges;

namespace {

Model model(const std::string& change) { return resolved<System>(hand_car(change)).model; }
DialModel fuel(const std::string& change) { return model("[gauges.fuel.tank]\n" + change).fuel.at(0); }

// Casebook IN-02, worked by hand: 5 V over 13 + 33 ohm are 0.109 A, 0.30 of a scale from 0.06 to 0.22 A.
constexpr const char* bimetal =
    "how = \"bimetal\"\nsupply = \"5 V\"\nheater = \"13 ohm\"\ncurrent_low = \"0.06 A\"\ncurrent_high = \"0.22 A\"\n";

TEST(GaugesModel, BimetalOnAnotherFamily) {
  const DialModel m = fuel(std::string(bimetal) + "sender_family = \"240-33\"\n");
  ASSERT_TRUE(m.usable());
  EXPECT_NEAR(shown(m, 1).value, 0.304, 1e-3);
  EXPECT_EQ(shown(m, 0).value, 0);
  EXPECT_DOUBLE_EQ(m.sender.y[1], 103);
}

TEST(GaugesModel, AFamilyOnItsOwnReadsRight) {
  const DialModel m = fuel("how = \"balance\"\nexpects_family = \"0-90\"\nsender_family = \"0-90\"\n");
  ASSERT_TRUE(m.usable());
  EXPECT_NEAR(worst_error(m).error, 0, 1e-12);
}

// Each gauge names what it lacks; the others are read all the same.
TEST(GaugesModel, MissingFiguresAreTheGaugesOwn) {
  const auto r =
      resolved<System>(hand_car("[gauges.fuel.tank]\nhow = \"bimetal\"\ncurrent_low = \"0.06 A\"\n"
                                "current_high = \"0.22 A\"\nsender_family = \"73-10\"\n"
                                "[gauges.pressure.oil]\nhow = \"electronic\"\nexpects_family = \"240-33\"\n"
                                "[gauges.temperature.oil]\nhow = \"electronic\"\nexpects_family = \"287-22\"\n"
                                "sender_family = \"287-22\"\n"));
  EXPECT_TRUE(r.missing.empty());
  EXPECT_EQ(r.model.fuel[0].missing, (std::vector<std::string>{"gauges.fuel.tank.heater", "gauges.fuel.tank.supply"}));
  EXPECT_EQ(
      r.model.pressure[0].missing,
      (std::vector<std::string>{"gauges.pressure.oil.sender", "gauges.pressure.oil.low", "gauges.pressure.oil.high"}));
  EXPECT_TRUE(r.model.temperature[0].usable());
}

std::vector<std::string> faults(const std::string& change) {
  const Build build = faulty_car(change);
  Resolver r(build_fields(), &build, build.evidence);
  System::resolve(std::get<Input>(build.inputs), r);
  std::vector<std::string> all;
  for (auto& d : r.faults().all()) all.push_back(d.path + ": " + d.problem);
  return all;
}

TEST(GaugesModel, WhatCannotBeIsAFault) {
  EXPECT_EQ(
      faults("[gauges.fuel.tank]\nhow = \"balance\"\nexpects = [[0, \"10 ohm\"], [0.5, \"90 ohm\"], [1, \"50 ohm\"]]\n"
             "sender_family = \"0-90\"\n"),
      std::vector<std::string>{"gauges.fuel.tank.expects: the curve turns: one reading would stand for two values"});
  EXPECT_EQ(faults("[gauges.pressure.oil]\nhow = \"balance\"\nlow = \"80 psi\"\nhigh = \"0 psi\"\n"
                   "expects = [[\"0 psi\", \"240 ohm\"], [\"80 psi\", \"33 ohm\"]]\n"
                   "sender = [[\"0 psi\", \"240 ohm\"], [\"80 psi\", \"33 ohm\"]]\n")
                .at(0),
            "gauges.pressure.oil.high: the scale does not rise from its low to its high end");
  EXPECT_EQ(
      faults("[gauges.temperature.oil]\nhow = \"balance\"\nexpects_family = \"287-22\"\n"
             "sender = [[\"0 degF\", \"900 ohm\"], [\"50 degF\", \"300 ohm\"]]\n"),
      std::vector<std::string>{"gauges.temperature.oil.sender: the sender's points do not reach the gauge's scale"});
}

// A keyed-in table is read along straight lines, a family's scale as its senders run: half-way between 100 and 200 degF
// the table's straight line lies far from the thermistor.
TEST(GaugesModel, ATableIsReadStraight) {
  const std::string sender = "sender = [[\"100 degF\", \"564 ohm\"], [\"200 degF\", \"64.3 ohm\"]]\n";
  const std::string table = "expects = [[\"100 degF\", \"564 ohm\"], [\"200 degF\", \"64.3 ohm\"]]\n";
  const auto error = [&](const char* how) {
    return worst_error(model("[gauges.temperature.coolant]\nhow = \"" + std::string(how) + "\"\n" + sender + table)
                           .temperature.at(0))
        .error;
  };
  EXPECT_NEAR(error("balance"), 0, 1e-9);
  EXPECT_GT(std::abs(error("electronic")), 10);
}

// A float goes by depth: in a tank with half its fuel in the lowest quarter it stands at a quarter when half is left.
TEST(GaugesModel, TankShapeTurnsFuelIntoDepth) {
  const TankShape tank{0.5, 0.7, 0.85};
  EXPECT_DOUBLE_EQ(tank.depth(0.5), 0.25);
  EXPECT_DOUBLE_EQ(tank.depth(0.85), 0.75);
  EXPECT_DOUBLE_EQ(tank.depth(0.925), 0.875);
  DialModel m = fuel("how = \"balance\"\nexpects_family = \"0-90\"\nsender_family = \"0-90\"\n");
  m.by_depth = true;
  EXPECT_NEAR(shown(m, 0.5, {.tank = tank}).value, 0.25, 1e-12);
  EXPECT_NEAR(worst_error(m, {.tank = tank}).error, -0.25, 1e-12);
}

TEST(GaugesModel, TachometerNodeByHand) {
  // 5 V through 4.7 kohm and 12 V through 1.5 kohm on 100 kohm: 9.0638 / 0.88943 mA/V = 10.19 V
  const auto t = model(
                     "[gauges.tachometer.dash]\nset = 4\nsource = 4\nlevel = \"5 V\"\nthreshold = \"8 V\"\n"
                     "source_resistance = \"4.7 kohm\"\npull_up = \"1.5 kohm\"\npull_up_to = \"12 V\"\n")
                     .tachometers.at(0);
  EXPECT_NEAR(t.at_input_v, 10.19, 0.01);
}

}  // namespace
