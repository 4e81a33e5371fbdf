#include "systems/rig.hpp"

#include "physics/wire.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

using Resolved = rig::Resolved<wiring::System>;
Resolved wired(const std::string& change = "") { return resolved<wiring::System>(faulty_car(change)); }
std::vector<std::string> path_of(const wiring::Model& m) {
  std::vector<std::string> names;
  for (auto i : m.charge_path) names.push_back(m.runs[i].place);
  return names;
}
const wiring::Conductor& run(const wiring::Model& m, std::string_view name) {
  for (auto& c : m.runs)
    if (c.place == name) return c;
  throw std::out_of_range("no run " + std::string(name));
}

// ASTM B258 / NBS Handbook 100 (from memory): 4 AWG 0.2485 ohm/1000 ft at 20 degC, copper 0.393 %/K. 5 ft at 60 degC:
// 1.2425 mohm x 1.157 = 1.438 mohm, and two crimped ends of 0.3 mohm in all.
TEST(WiringModel, ResistanceByHand) {
  const auto r = wired();
  EXPECT_NEAR(run(r.model, "charge").resistance_ohm, 1.438e-3 + 0.3e-3, 0.01e-3);
  EXPECT_NEAR(run(wired("[wiring.run.charge]\nzone = \"cabin\"\n").model, "charge").resistance_ohm,
              1.2425e-3 * (1 + 0.00393 * 10) + 0.3e-3, 0.01e-3);
}

TEST(WiringModel, AMeasuredResistanceTakesThePlaceOfTheWire) {
  EXPECT_NEAR(run(wired("[wiring.run.charge]\nresistance = \"5 mohm\"\n").model, "charge").resistance_ohm, 5e-3, 1e-12);
}

TEST(WiringModel, FindsTheChargePath) {
  EXPECT_EQ(path_of(wired().model), std::vector<std::string>{"charge"});
  // The old way: stud to bulkhead, through it to the ammeter, to the battery.
  const std::string old =
      "[wiring.run]\ncharge = false\n"
      "[wiring.run.stud]\nfrom = \"bulkhead\"\nto = \"alternator\"\ngauge = \"10 AWG\"\nlength = \"6 ft\"\n"
      "[wiring.run.ammeter]\nfrom = \"bulkhead\"\nto = \"ammeter\"\nresistance = \"8 mohm\"\nlimit = \"40 A\"\n"
      "[wiring.run.back]\nfrom = \"ammeter\"\nto = \"battery\"\ngauge = \"10 AWG\"\nlength = \"6 ft\"\n";
  EXPECT_EQ(path_of(wired(old).model), (std::vector<std::string>{"stud", "ammeter", "back"}));
}

TEST(WiringModel, NoWayToTheBatteryIsSaid) {
  const auto r = wired("[wiring.run.charge]\nto = \"nowhere\"\n");
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_EQ(r.missing[0], "wiring.run: a way from \"alternator\" to \"battery\"");
}

TEST(WiringModel, UnreachedNodesAreSaid) {
  const auto r = wired("[wiring.run]\nblock_ground = false\nstarter_cable = false\n");
  EXPECT_EQ(r.missing, (std::vector<std::string>{"wiring.run: a run that reaches \"block\"",
                                                 "wiring.run: a run that reaches \"starter\""}));
}

TEST(WiringModel, AnUnknownConditionIsSaid) {
  const auto r = wired(
      "[wiring.load.horn]\ncurrent = \"8 A\"\nwhen = [\"nihgt\"]\ngauge = \"14 AWG\"\nlength = \"6 ft\"\nfuse = \"15 "
      "A\"\n");
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_EQ(r.missing[0], "wiring.load.horn.when");
}

TEST(WiringModel, MoreThanTheNetworkHoldsIsSaidNotLost) {
  std::string runs, loads;
  for (int i = 0; i < 140; ++i) {
    const auto n = std::to_string(i);
    runs += "[wiring.run.r" + n + "]\nfrom = \"battery\"\nto = \"n" + n + "\"\ngauge = \"10 AWG\"\nlength = \"3 ft\"\n";
    loads += "[wiring.load.l" + n +
             "]\ncurrent = \"1 A\"\nwhen = [\"key\"]\ngauge = \"14 AWG\"\nlength = \"6 ft\"\nfuse = \"15 A\"\n";
  }
  EXPECT_FALSE(wired(runs).missing.empty());
  EXPECT_FALSE(wired(loads).missing.empty());
}

// A mistyped node of a switch would be a node of its own, and the relay never pull in.
TEST(WiringModel, ANodeNothingElseReachesIsAFault) {
  const auto r =
      wired("[wiring.switch.relay]\nfrom = \"bus\"\nto = \"body\"\ncoil_from = \"bsu\"\nclosed = [\"key\"]\n");
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_EQ(r.missing[0], "wiring.switch.relay.coil_from");
}

// A name used twice would make two findings of one name: whoever reads them could not tell which is meant.
TEST(WiringModel, ARunAndALoadOfOneNameAreSaid) {
  const auto r = wired(
      "[wiring.load.feed]\ncurrent = \"8 A\"\nwhen = [\"key\"]\ngauge = \"14 AWG\"\nlength = \"6 ft\"\nfuse = \"15 "
      "A\"\n");
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_NE(r.missing[0].find("wiring.load.feed"), std::string::npos) << r.missing[0];
}

}  // namespace
