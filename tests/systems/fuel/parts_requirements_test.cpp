#include "systems/fuel/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(FuelPartsRequirements, HosesByTheirPrintedRating) {
  Judging j(
      fuel_car(
          "[fuel.feed.engine_hose]\nrating = \"50 psi\"\nage = \"8 year\"\n[fuel.regulator]\npressure = \"58 psi\"\n"),
      "hot-idle");
  EXPECT_LT(j.one("fuel.hose-rating", "", "engine_hose").margin().value(), 0);
  EXPECT_LT(j.one("fuel.hose-rating-stuck", "", "engine_hose").margin().value(), 0);
  EXPECT_GT(*j.one("fuel.hose-rating-stuck", "", "engine_hose").verdict.predicted, 85 * psi);
  EXPECT_LT(j.one("fuel.hose-age", "", "engine_hose").margin().value(), 0);
  EXPECT_FALSE(j.judged("fuel.hose-rating", "", "floor"));
}

// What decides harm has no stand-in: without it there is no figure, and its path is named.
TEST(FuelPartsRequirements, WithoutARatingNothingIsPassed) {
  Build b = fuel_car();
  auto& in = std::get<fuel::Input>(b.inputs);
  in.feed.entries[1].second.rating.reset();
  in.pump.relief.reset();
  in.feed.entries[0].second.exhaust_distance.reset();
  in.feed.entries[0].second.end.reset();
  Judging j(b, "hot-idle");
  EXPECT_EQ(j.one("fuel.hose-rating", "", "engine_hose").verdict.missing,
            std::vector<std::string>{"fuel.feed.engine_hose.rating"});
  EXPECT_EQ(j.one("fuel.hose-rating-stuck", "", "engine_hose_back").verdict.missing,
            std::vector<std::string>{"fuel.pump.relief"});
  EXPECT_EQ(j.one("fuel.exhaust-distance", "", "floor").verdict.missing,
            std::vector<std::string>{"fuel.feed.floor.exhaust_distance"});
  EXPECT_EQ(j.one("fuel.ends", "", "floor to engine_hose").verdict.missing,
            std::vector<std::string>{"fuel.feed.floor.end"});
}

TEST(FuelPartsRequirements, SeatsOfTwoAnglesDoNotMate) {
  Judging j(fuel_car("[fuel.feed.engine_hose]\nstart = \"45 deg\"\n[fuel.return.engine_hose_back]\nend = "
                     "\"hose\"\n[fuel.return.floor_back]\nstart = \"bead\"\n"),
            "hot-idle");
  EXPECT_FALSE(*j.one("fuel.ends", "", "floor to engine_hose").verdict.rule);
  EXPECT_EQ(j.one("fuel.ends", "", "floor to engine_hose").verdict.reason, "37 deg meets 45 deg");
  EXPECT_TRUE(*j.one("fuel.ends", "", "engine_hose_back to floor_back").verdict.rule);
  EXPECT_TRUE(*j.one("fuel.ends", "", "pump to floor").verdict.rule);
}

TEST(FuelPartsRequirements, DistanceBareAndShielded) {
  Judging near(fuel_car("[fuel.feed.floor]\nexhaust_distance = \"2 in\"\n"), "hot-idle");
  EXPECT_LT(near.one("fuel.exhaust-distance", "", "floor").margin().value(), 0);
  Judging shielded(fuel_car("[fuel.feed.floor]\nexhaust_distance = \"2 in\"\nshielded = true\n"), "hot-idle");
  EXPECT_GT(shielded.one("fuel.exhaust-distance", "", "floor").margin().value(), 0);
}

TEST(FuelPartsRequirements, CutOffTankFiltersAndReference) {
  Judging j(fuel_car("[fuel.cut_off]\nengine_stopped = false\n[fuel.tank]\nbonded = false\n[fuel.filter.sock]\nmicron "
                     "= \"10 um\"\n"
                     "[fuel.filter.fine]\nmicron = \"100 um\"\n[fuel.regulator]\nvacuum_referenced = false\n"),
            "hot-idle");
  EXPECT_FALSE(*j.one("fuel.cut-off", "", "engine stopped").verdict.rule);
  EXPECT_TRUE(*j.one("fuel.cut-off", "", "impact").verdict.rule);
  EXPECT_FALSE(*j.one("fuel.tank-safety", "", "bonding").verdict.rule);
  EXPECT_TRUE(*j.one("fuel.tank-safety", "", "roll-over valve").verdict.rule);
  EXPECT_FALSE(*j.one("fuel.filters", "", "sock").verdict.rule);
  EXPECT_FALSE(*j.one("fuel.filters", "", "injectors").verdict.rule);
  EXPECT_FALSE(*j.one("fuel.vacuum-reference").verdict.rule);
}

}  // namespace
