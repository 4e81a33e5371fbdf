#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

air_conditioning::Model fitted(const std::string& change = "") {
  return resolved<air_conditioning::System>(hand_car(change)).model;
}

TEST(AirConditioningBlocks, OnOnlyWhereItIsFittedAndAskedFor) {
  const auto with = fitted(), without = fitted("[air_conditioning]\nfitted = false\n");
  EXPECT_EQ(bench<air_conditioning::System>(with, "air_conditioning.request")
                .give("duty.air_conditioning", 1)
                .run()
                .get("air_conditioning.on"),
            1);
  EXPECT_EQ(bench<air_conditioning::System>(with, "air_conditioning.request").run().get("air_conditioning.on"), 0);
  EXPECT_EQ(bench<air_conditioning::System>(without, "air_conditioning.request")
                .give("duty.air_conditioning", 1)
                .run()
                .get("air_conditioning.on"),
            0);
}

// Figures at idle and from 15 m/s on, a straight line between; off it gives and takes nothing.
TEST(AirConditioningBlocks, FiguresBetweenIdleAndRoad) {
  const auto m = fitted(
      "[air_conditioning]\ncondenser_heat_idle = \"6 kW\"\ncondenser_heat_road = \"8 kW\"\ncompressor_power_idle = \"2 "
      "kW\"\ncompressor_power_road = \"3 kW\"\n");
  auto b = bench<air_conditioning::System>(m, "air_conditioning.load");
  b.run();
  EXPECT_EQ(b.get("air_conditioning.condenser_heat"), 0);
  EXPECT_EQ(b.get("air_conditioning.compressor_power"), 0);
  b.give("air_conditioning.on", 1).run();
  EXPECT_NEAR(b.get("air_conditioning.condenser_heat"), 6e3, 1e-9);
  EXPECT_NEAR(b.give("road.speed", 7.5).run().get("air_conditioning.condenser_heat"), 7e3, 1e-9);
  EXPECT_NEAR(b.give("road.speed", 40).run().get("air_conditioning.compressor_power"), 3e3, 1e-9);
}

// First law of the refrigerant circuit: the condenser gives off at least the compressor's work. The stand-ins must.
TEST(AirConditioningBlocks, CondenserGivesMoreThanTheCompressorTakes) {
  const auto m = fitted();
  EXPECT_GT(m.heat_idle_w, m.power_idle_w);
  EXPECT_GT(m.heat_road_w, m.power_road_w);
}

TEST(AirConditioningBlocks, WithoutItNoFiguresAreAskedFor) {
  Build b = hand_car("[air_conditioning]\nfitted = false\n");
  std::get<air_conditioning::Input>(b.inputs).condenser_heat_idle.reset();
  EXPECT_TRUE(resolved<air_conditioning::System>(b).missing.empty());
}

// What the rest of the car feels: idle speed, clutch current, heat before the radiator.
TEST(AirConditioningBlocks, TheCarFeelsIt) {
  Drive with(hand_car(), "hot-idle"), without(hand_car("[air_conditioning]\nfitted = false\n"), "hot-idle");
  EXPECT_NEAR(with.last("engine.speed") / rpm, 800, 1e-6);
  EXPECT_NEAR(without.last("engine.speed") / rpm, 750, 1e-6);
  EXPECT_GT(with.last("radiator.air_in"), without.last("radiator.air_in") + 1);
  EXPECT_GT(with.last("accessories.power"), without.last("accessories.power") + 1000);
}

/// What the rule says of the hand car with a change: empty where it is not looked at.
std::optional<Judged> drive_rule(const std::string& change, void (*then)(Build&) = nullptr) {
  Build b = hand_car(change);
  if (then) then(b);
  const Judging j(b, "cold-crank");
  const auto found = j.of("air_conditioning.compressor-drive");
  EXPECT_LE(found.size(), 1u);
  return found.empty() ? std::nullopt : std::optional(*found[0]);
}
constexpr const char* no_pulley = "[belts.belt.front.pulley]\ncompressor = false\n";
constexpr const char* none_fitted = "[air_conditioning]\nfitted = false\n";

TEST(AirConditioningDrive, FittedItNeedsAPulley) {
  EXPECT_EQ(drive_rule("")->verdict.rule, true);
  const auto without = drive_rule(no_pulley);
  EXPECT_EQ(without->verdict.rule, false);
  EXPECT_NE(without->verdict.reason.find("no pulley"), std::string::npos);
  EXPECT_NE(without->verdict.fix_hint.find("compressor"), std::string::npos);
}

TEST(AirConditioningDrive, APulleyAloneAsksWhetherItIsFitted) {
  EXPECT_EQ(drive_rule(none_fitted)->verdict.rule, true) << "taken out, the compressor turns free";
  const auto unsaid = drive_rule(none_fitted, [](Build& b) { b.evidence["air_conditioning.fitted"].defaulted = true; });
  EXPECT_FALSE(unsaid->verdict.rule);
  EXPECT_EQ(unsaid->verdict.missing, std::vector<std::string>{"air_conditioning.fitted"});
}

TEST(AirConditioningDrive, NothingToSayWhereThereIsNeither) {
  EXPECT_FALSE(drive_rule(std::string(none_fitted) + no_pulley));
}

}  // namespace
