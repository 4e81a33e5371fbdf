#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging idling(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }
const char* const tank = "[vacuum.store]\nreservoir = \"300 in3\"\n";

// By hand, all stops as full applications would be: 250 in3, 15 at rest, 80 on; 18 inHg leave
// 101.3 - 40.4 x 235 / 170 = 45.5 kPa, 13.4 inHg, under the first foot.
TEST(BrakesEngineOff, TheFirstStopFindsLessThanTheGaugeShows) {
  const Judging j = idling("[vacuum]\nidle = \"18 inHg\"\n");
  const auto& v = j.one("brakes.engine-off-stop", "hot-idle").verdict;
  ASSERT_EQ(v.because.size(), 3u);
  EXPECT_NEAR(v.because[1].value / 3386.389, 13.4, 0.1);
  EXPECT_GT(j.one("brakes.engine-off-stop", "hot-idle").margin().value(), 0);
}

TEST(BrakesEngineOff, AReservoirKeepsTheLaterStopsAssisted) {
  const auto pedal = [](const Judging& j) { return *j.one("brakes.engine-off-row", "hot-idle").verdict.predicted; };
  const Judging without = idling(""), with = idling(tank), weak = idling("[vacuum]\nidle = \"8 inHg\"\n");
  EXPECT_LT(pedal(with), pedal(without));
  EXPECT_GT(pedal(weak), pedal(with));
}

// Table III by hand, every stop a whole sweep as the take-up is not known: 250 in3, 15 at rest, 80 on, 18 inHg. The
// second stop (12 ft/s2: 272 psi, 270 lbf at the master) finds 1.2 inHg, 17 lbf of assist: 63.3 lbf at the pad. The
// first has 444 lbf of assist for its 383, the third (10 ft/s2: 215 psi) none and the spring's 25 lbf against it: 59.7
// lbf.
TEST(BrakesEngineOff, TheRowByHand) {
  Build build = hand_car();
  std::get<brakes::Input>(build.inputs).front.clearance.reset();
  const Judging j(build, "hot-idle");
  EXPECT_NEAR(*j.one("brakes.engine-off-row", "hot-idle").verdict.predicted / lbf, 63.3, 0.7);
}

// The same with the stroke known: gentler stops sweep less, so the second still finds some vacuum.
TEST(BrakesEngineOff, AGentlerStopTakesLess) {
  const auto pedal = *idling("").one("brakes.engine-off-row", "hot-idle").verdict.predicted / lbf;
  EXPECT_LT(pedal, 63.3);
  EXPECT_GT(pedal, 40);
}

TEST(BrakesEngineOff, NobodySaidWhetherABoosterIsFitted) {
  Build build = hand_car();
  std::get<brakes::Input>(build.inputs).booster.fitted.reset();
  const Judging j(build, "hot-idle");
  for (auto* id : {"brakes.engine-off-stop", "brakes.engine-off-row"})
    EXPECT_EQ(j.one(id, "hot-idle").verdict.missing, std::vector<std::string>{"brakes.booster.fitted"}) << id;
}

TEST(BrakesEngineOff, WithoutBoosterNothingIsAsked) {
  EXPECT_TRUE(idling("[brakes.booster]\nfitted = false\n").of("brakes.engine-off-row").empty());
}

TEST(BrakesEngineOff, VolumesNobodyMeasuredAreAskedFor) {
  Build build = hand_car();
  std::get<vacuum::Input>(build.inputs).store.rear_volume.reset();
  const Judging j(build, "hot-idle");
  for (auto* id : {"brakes.engine-off-stop", "brakes.engine-off-row"}) {
    const auto& v = j.one(id, "hot-idle").verdict;
    EXPECT_EQ(v.missing, std::vector<std::string>{"vacuum.store.rear_volume"}) << id;
  }
}

}  // namespace
