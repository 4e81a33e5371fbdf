#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

/// Two lamps in parallel behind an old dash switch; with `relay` the switch carries the coil alone.
std::string lamps(bool relay) {
  const std::string load =
      "[wiring.load.headlamps]\ncurrent = \"17.4 A\"\nat_voltage = \"12.8 V\"\nfrom = \"lamps\"\nwhen = [\"always\"]\n"
      "gauge = \"10 AWG\"\nlength = \"3 ft\"\nfuse = \"30 A\"\n";
  const std::string dash =
      "[wiring.switch.dash]\nfrom = \"bus\"\nto = \"switched\"\nclosed = [\"night\"]\ncontact = \"60 mohm\"\nlimit = "
      "\"15 A\"\n";
  if (!relay)
    return dash + "[wiring.run.old_way]\nfrom = \"switched\"\nto = \"lamps\"\nresistance = \"90 mohm\"\n" + load;
  return dash +
         "[wiring.switch.lamp_relay]\nfrom = \"bus\"\nto = \"lamps\"\ncoil_from = \"switched\"\nclosed = [\"night\"]\n"
         "contact = \"3 mohm\"\nlimit = \"30 A\"\n" +
         load;
}

// 150 mohm with some 17 A: 2.5 V are lost before the lamps, which give (V/12.8)^3.4 of their light.
TEST(WiringSwitchRequirements, ADashSwitchThatCarriesTheLamps) {
  const Judging old(hand_car(lamps(false)), "hot-idle"), new_way(hand_car(lamps(true)), "hot-idle");
  EXPECT_LT(old.one("wiring.contact-current", "hot-idle", "dash").margin().value(), 0);
  EXPECT_GT(*old.one("wiring.lamp-feed", "hot-idle", "headlamps").verdict.predicted, 2.0);
  EXPECT_NEAR(*new_way.one("wiring.contact-current", "hot-idle", "dash").verdict.predicted, 12.8 / 85, 0.03);
  EXPECT_GT(new_way.one("wiring.lamp-feed", "hot-idle", "headlamps").margin().value(), 0);
}

TEST(WiringSwitchRequirements, ASwitchWithoutARatingIsAskedForIt) {
  Build b = hand_car(lamps(false));
  for (auto& [name, s] : std::get<wiring::Input>(b.inputs).switches.entries) s.limit.reset();
  EXPECT_EQ(Judging(b, "hot-idle").one("wiring.contact-current", "hot-idle", "dash").verdict.missing,
            std::vector<std::string>{"wiring.switch.dash.limit"});
}

TEST(WiringSwitchRequirements, ACoilNeedsItsVolts) {
  const Judging j(hand_car(lamps(true)), "hot-idle");
  EXPECT_GT(j.one("wiring.relay-coil", "hot-idle", "lamp_relay").margin().value(), 0);
  Build b = hand_car(lamps(true));
  for (auto& [name, s] : std::get<wiring::Input>(b.inputs).switches.entries) s.pull_in = Voltage{13.9};
  const Judging weak(b, "hot-idle");
  EXPECT_LT(weak.one("wiring.relay-coil", "hot-idle", "lamp_relay").margin().value(), 0);
}

}  // namespace
