#include "systems/wiring/faults.hpp"

#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;
using namespace sw::wiring;

namespace {

wiring::Model wired(const std::string& change) { return resolved<wiring::System>(faulty_car(change)).model; }

Feed cranking(double starter_a) {
  return {.emf_v = 12.6,
          .battery_ohm = 0.006,
          .starter_a = starter_a,
          .state = state_of(bit(Condition::always) | bit(Condition::key) | bit(Condition::start))};
}
Feed resting() { return {.emf_v = 12.6, .battery_ohm = 0.006, .state = state_of(bit(Condition::always))}; }
Feed driving() {
  return {.alternator_a = 100,
          .set_v = 14.2,
          .emf_v = 12.6,
          .battery_ohm = 0.006,
          .state =
              state_of(bit(Condition::always) | bit(Condition::key) | bit(Condition::running) | bit(Condition::night))};
}

const FaultRun& of(const std::vector<FaultRun>& all, std::string_view begins) {
  for (auto& r : all)
    if (r.fault.starts_with(begins)) return r;
  throw std::out_of_range("no such fault");
}
const Happens* what(const FaultRun& r, Effect e, std::string_view place) {
  for (auto& h : r.happens)
    if (h.what == e && h.place == place) return &h;
  return nullptr;
}

// The block's strap lost: all that the starter draws goes through a control cable between block and body. With the
// starter's current held, that current is what the starter takes less nothing: every other way is open.
TEST(WiringFaults, ALostStrapSendsTheStarterThroughACable) {
  const auto m =
      wired("[wiring.run.shift_cable]\nfrom = \"block\"\nto = \"body\"\nresistance = \"15 mohm\"\nstray = true\n");
  const auto all = try_faults(m, cranking(150));
  const auto& lost = of(all, "block_ground open");
  const auto* burns = what(lost, Effect::burns, "shift_cable");
  ASSERT_TRUE(burns);
  EXPECT_NEAR(burns->is, 150, 1);
  EXPECT_LT(burns->was, 0.1 * burns->is);
  EXPECT_EQ(*burns->limit, 1);
  EXPECT_EQ(lost.happens.front().what, Effect::burns);  // the gravest first
}

TEST(WiringFaults, WithoutAnotherWayTheStarterIsDead) {
  EXPECT_TRUE(what(of(try_faults(wired(""), cranking(150)), "block_ground open"), Effect::dead, "starter"));
}

// A battery the wrong way round drives current through the machine's two diodes in series: (12.6 V - 1.5 V) over
// battery, lead, diodes and block strap. The charge lead's fuse opens; without one the lead burns.
TEST(WiringFaults, ABatteryTheWrongWayRound) {
  const auto fused = try_faults(wired(""), resting());
  const auto& turned = of(fused, "battery the wrong way round");
  const auto* opens = what(turned, Effect::fuse_opens, "charge");
  ASSERT_TRUE(opens);
  EXPECT_NEAR(opens->is, (12.6 - 1.5) / (0.006 + 0.006 + 0.00174 + 0.00077), 60);
  EXPECT_TRUE(
      std::none_of(turned.happens.begin(), turned.happens.end(), [](auto& h) { return h.what == Effect::burns; }));
  Build b = faulty_car("");
  for (auto& [name, run] : std::get<wiring::Input>(b.inputs).run.entries)
    if (name == "charge") run.wire.fuse.reset(), run.wire.unfused = true;
  const auto bare = try_faults(resolved<wiring::System>(b).model, resting());
  EXPECT_TRUE(what(of(bare, "battery the wrong way round"), Effect::burns, "charge"));
}

// The charge lead lost: what the machine gave the battery now gives.
TEST(WiringFaults, ALostChargeLeadDrainsTheBattery) {
  EXPECT_TRUE(what(of(try_faults(wired(""), driving()), "charge open"), Effect::drains, "battery"));
}

TEST(WiringFaults, AStuckRelayKeepsThePumpOnAndAnOpenOneStopsIt) {
  const std::string relay =
      "[wiring.switch.pump_relay]\nfrom = \"bus\"\nto = \"pump\"\ncoil_from = \"bus\"\nclosed = [\"running\"]\n"
      "[wiring.load.fuel_pump]\nfrom = \"pump\"\nwhen = [\"always\"]\n";
  EXPECT_TRUE(what(of(try_faults(wired(relay), resting()), "pump_relay stuck closed"), Effect::stays_on, "fuel_pump"));
  EXPECT_TRUE(what(of(try_faults(wired(relay), driving()), "pump_relay stuck open"), Effect::dead, "fuel_pump"));
}

// A network without fault has nothing to tell: opening a run that carries nothing changes nothing.
TEST(WiringFaults, WhatCarriesNothingIsNotMissed) {
  EXPECT_TRUE(of(try_faults(wired(""), driving()), "starter_cable open").happens.empty());
}

TEST(WiringFaults, AreToldWithTheirFigures) {
  EXPECT_EQ(tell({Effect::burns, "cable", 0, 121.4, 1.0}), "cable burns: 121 A where it carries 1 A");
  EXPECT_EQ(tell({Effect::weak, "pump", 13.1, 9.04, {}}), "pump gets only 9.04 V (13.1 V before)");
}

}  // namespace
