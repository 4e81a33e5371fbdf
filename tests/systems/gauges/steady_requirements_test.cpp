#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string coolant =
    "[gauges.temperature.coolant]\nhow = \"electronic\"\nusual = \"200 degF\"\nsupply = \"5 V\"\npull_up = \"330 "
    "ohm\"\n"
    "expects_family = \"287-22\"\nsender_family = \"287-22\"\n";
const std::string dash =
    "[wiring.run.dash_ground]\nfrom = \"dash\"\nto = \"ground\"\nresistance = \"5 mohm\"\n"
    "[wiring.load.headlamps]\nto = \"dash\"\n[wiring.load.blower]\nto = \"dash\"\n";

Judging night(const std::string& change) { return Judging(hand_car(change), "night-rain"); }
double line(const Verdict& v, std::string_view path) {
  for (auto& b : v.because)
    if (b.path == path) return b.value;
  throw std::out_of_range(std::string(path));
}

// What the finding says is what the laws give at the ground volts of its own row; and loads on the dash's ground move
// it.
TEST(GaugesSteady, MovesByTheGroundsOfItsRow) {
  const Judging j = night(dash + coolant + "ground = \"dash\"\nsender_ground = \"battery\"\n");
  const Judged& found = j.one("gauges.temperature-steady", "night-rain", "coolant, usual");
  const double lift = -line(found.verdict, "ground.dash");
  EXPECT_NEAR(-lift, j.highest("ground.dash", "night-rain"), 1e-12);
  EXPECT_GT(-lift, 0.08) << "headlamps and blower on 5 mohm";
  const auto model = resolved<gauges::System>(hand_car(coolant)).model.temperature.at(0);
  const double usual = (200 + 459.67) / 1.8;
  EXPECT_NEAR(*found.verdict.predicted,
              gauges::shown(model, usual, {.lift_v = lift}).value - gauges::shown(model, usual).value, 1e-9);
  EXPECT_GT(*found.verdict.predicted, 0) << "the sender lies lower and is taken for hotter";
  EXPECT_LT(found.margin().value(), 0);
}

TEST(GaugesSteady, NothingBetweenTheGroundsNothingToSay) {
  EXPECT_TRUE(night(coolant + "ground = \"block\"\n").of("gauges.temperature-steady", "night-rain").empty());
}

TEST(GaugesSteady, NeedsTheGaugesOwnOhms) {
  const Judging j = night(
      "[gauges.fuel.tank]\nhow = \"balance\"\nexpects_family = \"0-90\"\nsender_family = \"0-90\"\nground = \"block\"\n"
      "sender_ground = \"body\"\n");
  EXPECT_EQ(j.one("gauges.fuel-steady", "night-rain", "tank").verdict.missing,
            std::vector<std::string>{"gauges.fuel.tank.pull_up"});
  EXPECT_TRUE(j.one("gauges.fuel-reading", {}, "tank").verdict.predicted) << "the reading is told without them";
}

// A bimetal without a regulator, made for 12 V: at 14 V and more it shows more than a tenth too much.
TEST(GaugesSteady, WithoutARegulatorItFollowsTheCar) {
  const Judging j = night(
      "[gauges.fuel.tank]\nhow = \"bimetal\"\nexpects_family = \"73-10\"\nsender_family = \"73-10\"\nsupply = \"12 "
      "V\"\n"
      "heater = \"60 ohm\"\nregulated = false\nground = \"body\"\nsender_ground = \"body\"\n");
  const Judged& found = j.one("gauges.fuel-steady", "night-rain", "tank");
  EXPECT_LT(found.margin().value(), 0);
  EXPECT_NE(found.verdict.fix_hint.find("a regulator"), std::string::npos) << found.verdict.fix_hint;
}

}  // namespace
