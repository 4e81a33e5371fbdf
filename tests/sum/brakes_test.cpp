// The sums of braking: inputs that go back and forth, and what they refuse; published figures stand in tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(BrakeSums, StopGoesBackAndForth) {
  const double m = asked("stop-distance", {"speed=60 mph", "deceleration=7 m/s2", "delay=0.3 s"}, "distance", "m");
  EXPECT_NEAR(m, 26.8224 * 0.3 + 26.8224 * 26.8224 / 14, 1e-6);
  EXPECT_NEAR(asked("stop-distance", {"speed=60 mph", "distance=" + std::to_string(m) + " m", "delay=0.3 s"},
                    "deceleration", "m/s2"),
              7, 1e-5);
  EXPECT_EQ(code("stop-distance", {"speed=60 mph", "distance=5 m", "delay=0.3 s"}), 2);
  EXPECT_EQ(code("stop-distance", {"speed=60 mph"}), 2);
}

TEST(BrakeSums, BalanceGivesWhatItsInputsAllow) {
  const Words car = {"wheelbase=110 in", "cg_behind_front=50 in", "cg_height=21 in"};
  auto with = [&](Words more) {
    more.insert(more.begin(), car.begin(), car.end());
    return more;
  };
  EXPECT_FALSE(gives("brake-balance", with({"adhesion=0.8"}), "lock_front"));
  EXPECT_TRUE(gives("brake-balance", with({"adhesion=0.8"}), "ideal_front_share"));
  EXPECT_FALSE(gives("brake-balance", with({"front_share=0.7"}), "first_lock"));
  const auto r = run_sum("brake-balance", with({"adhesion=0.8", "front_share=0.8"}));
  ASSERT_NE(r.output("first_lock"), nullptr);
  EXPECT_EQ(r.output("first_lock")->text, "front");
  EXPECT_EQ(run_sum("brake-balance", with({"adhesion=0.8", "front_share=0.55"})).output("first_lock")->text, "rear");
  // at the ideal share both lock at once, at the adhesion
  const double ideal = asked("brake-balance", with({"adhesion=0.8"}), "ideal_front_share");
  char share[64];
  std::snprintf(share, sizeof share, "front_share=%.15g", ideal);
  EXPECT_EQ(run_sum("brake-balance", with({"adhesion=0.8", share})).output("first_lock")->text, "both");
  EXPECT_NEAR(asked("brake-balance", with({share}), "lock_both"), 0.8, 1e-9);
  EXPECT_EQ(code("brake-balance", {"wheelbase=110 in", "cg_behind_front=112 in", "cg_height=21 in"}), 2);
  EXPECT_EQ(code("brake-balance", with({"rate=2.8"})), 3);
}

TEST(BrakeSums, AdhesionLineEndsWhereItsRuleDoes) {
  EXPECT_EQ(code("adhesion-line", {"adhesion=0.2"}), 0);
  EXPECT_EQ(code("adhesion-line", {"adhesion=0.15"}), 3);
  EXPECT_NEAR(asked("adhesion-line", {"rate=0.31"}, "adhesion"), 0.5, 1e-9);
}

TEST(BrakeSums, HeatOfASnub) {  // 49 CFR 571.135 S7.13: 120 to 60 km/h is 416.7 J a kg
  const Words snub = {"mass=1200 kg", "speed=120 km/h",  "end_speed=60 km/h",         "share=0.7",
                      "rotors=2",     "rotor_mass=6 kg", "specific_heat=460 J/(kg K)"};
  EXPECT_NEAR(asked("stop-heat", snub, "energy", "kJ"), 500, 0.1);
  Words back = snub;
  back[2] = "end_speed=130 km/h";
  EXPECT_EQ(code("stop-heat", back), 2);
}

}  // namespace
}  // namespace sw
