#include "systems/ignition/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string weights = "mechanical = [[\"800 rpm\", \"0 deg\"], [\"3000 rpm\", \"22 deg\"]]\n";

Judging judged(const std::string& timing, const Lines& add = {}) {
  Lines l = add;
  l.rest = "[ignition.timing]\n" + timing;
  return Judging(hand_car(module_ignition(l)), "hot-idle");
}

// 34 of the table, 22 of the weights, 10 of the canister: 56 deg at full load, 66 at light load.
TEST(TimingRequirements, AddedTwiceByHand) {
  const Judging j = judged("by = \"controller\"\nlocked = false\ncanister = \"connected\"\nvacuum = \"10 deg\"\n" +
                           weights + "table_full = \"34 deg\"\nmost = \"36 deg\"\n");
  EXPECT_NEAR(*j.one("ignition.advance", "", "full load").verdict.predicted, 56 * degree, 1e-9);
  EXPECT_NEAR(*j.one("ignition.advance", "", "light load").verdict.predicted, 66 * degree, 1e-9);
  EXPECT_LT(j.one("ignition.advance", "", "full load").margin().value(), 0);
}

TEST(TimingRequirements, LockedAndPluggedTheTableStandsAlone) {
  const Judging j = judged("by = \"controller\"\nlocked = true\ncanister = \"plugged\"\nvacuum = \"10 deg\"\n" +
                           weights + "table_full = \"34 deg\"\nmost = \"36 deg\"\n");
  EXPECT_NEAR(*j.one("ignition.advance", "", "full load").verdict.predicted, 34 * degree, 1e-9);
  EXPECT_NEAR(*j.one("ignition.advance", "", "light load").verdict.predicted, 34 * degree, 1e-9);
}

// A distributor alone: the canister counts at light load only, where the engine stands more.
TEST(TimingRequirements, ADistributorAloneIsSound) {
  const Judging j =
      judged("by = \"distributor\"\nbase = \"12 deg\"\nvacuum = \"10 deg\"\n" + weights + "most = \"36 deg\"\n");
  EXPECT_NEAR(*j.one("ignition.advance", "", "full load").verdict.predicted, 34 * degree, 1e-9);
  EXPECT_NEAR(*j.one("ignition.advance", "", "light load").verdict.predicted, 44 * degree, 1e-9);
  EXPECT_GT(j.one("ignition.advance", "", "light load").margin().value(), 0);
}

// Weights count only as far as the engine turns: 22 deg at 8000 rpm are (5500-800)/(8000-800) of that at the red line.
TEST(TimingRequirements, WeightsUpToTheRedLine) {
  const Judging j = judged(
      "by = \"distributor\"\nbase = \"10 deg\"\nmechanical = [[\"800 rpm\", \"0 deg\"], [\"8000 rpm\", \"22 "
      "deg\"]]\nmost = \"36 deg\"\n");
  EXPECT_NEAR(*j.one("ignition.advance", "", "full load").verdict.predicted, (10 + 22 * 4700.0 / 7200) * degree, 1e-6);
}

TEST(TimingRequirements, AControllerMustSayWhatBecameOfTheDistributor) {
  const Judging j = judged("by = \"controller\"\ntable_full = \"34 deg\"\nmost = \"36 deg\"\nvacuum = \"10 deg\"\n");
  EXPECT_EQ(j.one("ignition.advance").verdict.missing,
            (std::vector<std::string>{"ignition.timing.locked", "ignition.timing.canister"}));
  const Judging none = judged("by = \"controller\"\ntable_full = \"34 deg\"\nmost = \"36 deg\"\n",
                              {.coil = "one_for = \"a pair\"\n"});  // no distributor left to add anything
  EXPECT_TRUE(none.one("ignition.advance").verdict.predicted);
  EXPECT_TRUE(none.of("ignition.rotor").empty());
}

TEST(TimingRequirements, SilentWhereNothingIsTold) {
  EXPECT_TRUE(Judging(hand_car(module_ignition()), "hot-idle").of("ignition.advance").empty());
}

// Table from 10 to 34 deg, rotor set at 22: 12 deg of the crankshaft either way, 6 of the rotor.
TEST(TimingRequirements, RotorByHand) {
  const std::string table =
      "by = \"controller\"\nlocked = true\ncanister = \"plugged\"\ntable_least = \"10 deg\"\ntable_full = "
      "\"34 deg\"\nmost = \"36 deg\"\n";
  const Judging good = judged(table + "rotor_phase = \"22 deg\"\n"), bad = judged(table + "rotor_phase = \"0 deg\"\n");
  EXPECT_NEAR(*good.one("ignition.rotor").verdict.predicted, 6 * degree, 1e-9);
  EXPECT_GT(good.one("ignition.rotor").margin().value(), 0);
  EXPECT_NEAR(*bad.one("ignition.rotor").verdict.predicted, 17 * degree, 1e-9);
  EXPECT_LT(bad.one("ignition.rotor").margin().value(), 0);
  EXPECT_EQ(judged(table).one("ignition.rotor").verdict.missing,
            std::vector<std::string>{"ignition.timing.rotor_phase"});
}

}  // namespace
