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
  return b.give("duty.running", 1).give("duty.pressure", sea).run().rate("vacuum.booster");
}

TEST(VacuumStore, TheCheckValveOnlyFills) {
  const auto m = hand_vacuum("[vacuum.store]\nfill_time = \"2 s\"\n");
  EXPECT_NEAR(store_rate(m, 10, 18), 8 * in_hg / 2, 1e-6);
  EXPECT_EQ(store_rate(m, 18, 3), 0);
  EXPECT_NEAR(store_rate(hand_vacuum("[vacuum.store]\nleak = \"3 inHg\"\n"), 18, 3), -3 * in_hg / 60, 1e-6);
}

TEST(VacuumStore, TheReleaseTakesAnApplicationsShare) {
  const auto m = hand_vacuum();
  ASSERT_TRUE(m.store);
  EXPECT_LT(store_rate(m, 18, 18, 8), 0);     // the foot goes down: the front's air is pressed together
  EXPECT_LT(store_rate(m, 18, 18, 0, 1), 0);  // it comes up: the rear's air is let in
  EXPECT_EQ(store_rate(m, 0, 0, 8), 0);       // out of nothing nothing is taken
}

// One foot down and up with nothing to fill the store, the block's own rates added up in small steps: 18 inHg stand at
// 13.8 with the brakes on and at 9.4 after them (physics/vacuum_store_test, by hand).
TEST(VacuumStore, AlongTheStrokeItComesToTheAirsBalance) {
  const auto m = hand_vacuum("[vacuum.store]\nrear_at_rest = \"20 in3\"\n");
  double vacuum = 18 * in_hg, applied = 0;
  constexpr double step_s = 1e-4, foot_s = 0.3;
  const auto press = [&](double braking, double to) {
    while (std::abs(applied - to) > 1e-3) {
      vacuum += store_rate(m, vacuum / in_hg, 0, braking, applied) * step_s;
      applied += (to - applied) / foot_s * step_s;
    }
  };
  press(0.8 * 9.80665, 1);
  EXPECT_NEAR(vacuum / in_hg, 13.8, 0.1);
  press(0, 0);
  EXPECT_NEAR(vacuum / in_hg, 9.4, 0.15);
}

TEST(VacuumStore, APumpReachesAShareOfTheAirThereIs) {
  const auto m = hand_vacuum("[vacuum.pump]\ncut_in = \"16 inHg\"\ncut_out = \"20 inHg\"\n");
  const auto rate = [&](double air_pa) {
    Bench b = bench<vacuum::System>(m, "vacuum.store");
    b.give("vacuum.booster", 18 * in_hg)
        .give("vacuum.pump_on", 1)
        .give("duty.running", 1)
        .give("duty.pressure", air_pa);
    return b.run().rate("vacuum.booster");
  };
  EXPECT_GT(rate(sea), 0);
  EXPECT_EQ(rate(0.7 * sea), 0);  // 1.15 x 20 x 0.7 = 16.1 inHg is all it can do there
}

// The compressor pulls the idle to 640 rpm and nobody's gauge was at it: the store comes to what is left,
// 29.9 - (29.9 - 18) x 750 / 640 = 16.0 inHg, not to the 18 without it.
TEST(VacuumStore, TheCompressorsIdleReachesTheBooster) {
  Drive d(hand_car("[engine]\nidle_speed_air_conditioning = \"640 rpm\"\n[duty.hot-idle]\nair_conditioning = true\n"),
          "hot-idle");
  EXPECT_NEAR(d.last("vacuum.booster"), d.last("vacuum.manifold"), 0.05 * in_hg);
  EXPECT_LT(d.highest("vacuum.booster") / in_hg, 17);
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
