// The manifold against throttle, load and height; the booster's store against check valve, foot, leak and pump.
#include <functional>

#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

constexpr double in_hg = 3386.389, sea = 101325;

vacuum::Model hand_vacuum(const std::string& change = "") {
  const Build build = hand_car(change);
  return resolved<vacuum::System>(build).model;
}

Bench& idling(Bench& b) {
  return b.give("duty.running", 1)
      .give("duty.pressure", sea)
      .give("engine.speed", 750 * rpm)
      .give("engine.plain_idle_speed", 750 * rpm)
      .give("engine.idle_speed", 750 * rpm)
      .give("engine.full_power", 100e3);
}

double manifold(const vacuum::Model& m, const std::function<void(Bench&)>& change) {
  Bench b = bench<vacuum::System>(m, "vacuum.manifold");
  idling(b);
  change(b);
  return b.run().get("vacuum.manifold");
}

TEST(VacuumManifold, IdleLoadOverrunAndStanding) {
  const auto m = hand_vacuum();
  EXPECT_NEAR(manifold(m, [](Bench&) {}) / in_hg, 18, 0.01);
  EXPECT_NEAR(manifold(m, [](Bench& b) { b.give("driveline.power", 50e3); }) / in_hg, 9, 0.01);
  EXPECT_NEAR(manifold(m, [](Bench& b) { b.give("duty.pull", 1); }), 0, 1e-6);
  EXPECT_GT(manifold(m, [](Bench& b) { b.give("engine.speed", 2000 * rpm); }) / in_hg, 22);
  EXPECT_EQ(manifold(m, [](Bench& b) { b.give("duty.running", 0); }), 0);
  // 97.7 kPa at 1000 ft: an inch less (common practice).
  EXPECT_NEAR(manifold(m, [](Bench& b) { b.give("duty.pressure", 97.7e3); }) / in_hg, 17, 0.2);
}

TEST(VacuumManifold, CompressorsDrop) {
  const auto pulled_down = [](Bench& b) {
    b.give("air_conditioning.on", 1).give("engine.idle_speed", 640 * rpm).give("engine.speed", 640 * rpm);
  };
  const auto raised = [](Bench& b) {
    b.give("air_conditioning.on", 1).give("engine.idle_speed", 850 * rpm).give("engine.speed", 850 * rpm);
  };
  const auto m = hand_vacuum();
  // The same air in fewer strokes: (101.3 - 61.0) x 750 / 640 = 47.3 kPa left.
  EXPECT_NEAR(manifold(m, pulled_down), sea - (sea - 18 * in_hg) * 750 / 640, 1);
  EXPECT_NEAR(manifold(m, raised) / in_hg, 18, 0.01);  // a raised idle gains nothing unmeasured
  EXPECT_NEAR(manifold(hand_vacuum("[vacuum]\nidle_air_conditioning = \"9 inHg\"\n"), pulled_down) / in_hg, 9, 0.01);
}

double store_rate(const vacuum::Model& m, double booster_hg, double manifold_hg, double braking = 0, double applied = 0,
                  double pump = 0) {
  Bench b = bench<vacuum::System>(m, "vacuum.store");
  b.give("vacuum.booster", booster_hg * in_hg).give("vacuum.manifold", manifold_hg * in_hg);
  b.give("duty.acceleration", -braking).give("vacuum.applied", applied).give("vacuum.pump_on", pump);
  return b.give("duty.running", 1).run().rate("vacuum.booster");
}

TEST(VacuumStore, TheCheckValveOnlyFills) {
  const auto m = hand_vacuum("[vacuum.store]\nfill_time = \"2 s\"\n");
  EXPECT_NEAR(store_rate(m, 10, 18), 8 * in_hg / 2, 1e-6);
  EXPECT_EQ(store_rate(m, 18, 3), 0);
  EXPECT_NEAR(store_rate(hand_vacuum("[vacuum.store]\nleak = \"3 inHg\"\n"), 18, 3), -3 * in_hg / 60, 1e-6);
}

TEST(VacuumStore, TheReleaseTakesAnApplicationsShare) {
  const auto m = hand_vacuum();
  ASSERT_TRUE(m.loss);
  EXPECT_NEAR(*m.loss, 80.0 / 250, 1e-9);
  EXPECT_EQ(store_rate(m, 18, 18, 8), 0);
  EXPECT_LT(store_rate(m, 18, 18, 0, 1), 0);
  // Through a whole stop from 60 mph the store gives up no more than one application's share of what it held.
  Drive d(hand_car("[vacuum.store]\nfill_time = \"60 s\"\n"), "panic-stop");
  const double low = d.lowest("vacuum.booster"), high = d.highest("vacuum.booster");
  EXPECT_GE(low, high * (1 - *m.loss) * 0.999);
  EXPECT_LT(low, high * (1 - 0.6 * *m.loss));
}

const char* const pumped = "[vacuum]\nidle = \"6 inHg\"\n[vacuum.pump]\ncut_in = \"16 inHg\"\ncut_out = \"20 inHg\"\n";

TEST(VacuumStore, ThePumpSwitchesAtItsPoints) {
  const auto m = hand_vacuum(pumped);
  Bench b = bench<vacuum::System>(m, "vacuum.store");
  b.give("duty.running", 1).give("vacuum.booster", 15 * in_hg);
  EXPECT_EQ(b.next(0), 1);
  EXPECT_GT(b.guard(0), 0);
  b.give("vacuum.booster", 18 * in_hg);
  EXPECT_EQ(b.next(0), 0);
  EXPECT_EQ(b.next(1), 1);
  b.give("vacuum.booster", 21 * in_hg);
  EXPECT_EQ(b.next(1), 0);
  EXPECT_GT(store_rate(m, 17, 6, 0, 0, 1), 0);
  EXPECT_EQ(store_rate(m, 17, 6), 0);
}

TEST(VacuumStore, APumpBringsTheStoreBack) {
  Drive d(hand_car(pumped), "panic-stop");
  EXPECT_GT(d.highest("vacuum.pump_on"), 0);
  EXPECT_LE(d.highest("vacuum.booster"), 24.1 * in_hg);
  EXPECT_GT(d.last("vacuum.booster"), 15.9 * in_hg);
}

}  // namespace
