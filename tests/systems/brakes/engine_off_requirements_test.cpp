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
  EXPECT_GT(*j.one("brakes.engine-off-stop", "hot-idle").margin(), 0);
}

TEST(BrakesEngineOff, AReservoirKeepsTheLaterStopsAssisted) {
  const auto pedal = [](const Judging& j) { return *j.one("brakes.engine-off-row", "hot-idle").verdict.predicted; };
  const Judging without = idling(""), with = idling(tank), weak = idling("[vacuum]\nidle = \"8 inHg\"\n");
  EXPECT_LT(pedal(with), pedal(without));
  EXPECT_GT(pedal(weak), pedal(with));
}

// 49 CFR 571.105 Table III lets a car pass whose foot alone is enough: the hardest is then the first stop, 16 ft/s2.
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
