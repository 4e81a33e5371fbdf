#include "proof/story.hpp"

#include <filesystem>

#include "proof/proof.hpp"
#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

/// The demo that starves: short of current at idle, and by that hot. Proved once for all tests.
const Proof& starved() {
  static const Proof p = [] {
    const Opened opened = open(std::filesystem::path(STREETWRIGHT_SOURCE_DIR) / "demo/starved.toml", from_disk());
    EXPECT_FALSE(opened.faults.any_fault());
    return prove(opened.build, *duties_of(opened.build, from_disk()), {});
  }();
  return p;
}
std::size_t place(std::string_view id) {
  auto& order = starved().story.order;
  for (std::size_t i = 0; i < order.size(); ++i)
    if (starved().findings[order[i]].id == id) return i;
  ADD_FAILURE() << id << " does not fail";
  return order.size();
}
const Finding& found(std::string_view id) { return starved().findings[starved().story.order.at(place(id))]; }

TEST(Story, HasWhatFailsAndNothingElse) {
  const auto& p = starved();
  EXPECT_EQ(p.story.order.size(), p.count(State::fails));
  for (std::size_t i : p.story.order) EXPECT_EQ(p.findings[i].state, State::fails);
}

TEST(Story, StandsCauseBeforeEffect) {
  EXPECT_LT(place("charging.balance@hot-idle"), place("charging.bus-voltage@hot-idle"));
  EXPECT_LT(place("charging.bus-voltage@hot-idle"), place("cooling.coolant-temperature@hot-idle"));
  EXPECT_LT(place("cooling.coolant-temperature@hot-idle"), place("charging.alternator-speed"))
      << "what hangs together stands together, the larger set first";
}

TEST(Story, FoldsWhatOnlyFollows) {
  EXPECT_EQ(found("charging.bus-voltage@hot-idle").follows, "charging.balance@hot-idle");
  EXPECT_EQ(found("charging.bus-voltage@night-rain").follows, "") << "there current is not short";
  EXPECT_EQ(found("cooling.coolant-temperature@hot-idle").follows, "") << "graver than its cause";
  EXPECT_EQ(found("charging.balance@hot-idle").follows, "");
}

TEST(Story, OpensWithOneSentenceOfFiguresThatAreFound) {
  const std::string& text = starved().story.opening;
  EXPECT_TRUE(text.starts_with("At hot-idle it is 62 A short (")) << text;
  EXPECT_NE(text.find("which brings volts at the fans to 10.5 V and coolant at the engine to 108 degC"),
            std::string::npos)
      << text;
  EXPECT_TRUE(text.ends_with("; with the fans at their rated volts it would hold at 97.1 degC.")) << text;
}

// The figures told before a mean are means: they add up to it.
TEST(Story, ChainOfAMeanAddsUpToIt) {
  const Finding& f = found("charging.balance@hot-idle");
  EXPECT_EQ(f.mean_share, 0.5);
  auto figure = [](const Finding& of, std::string_view port) {
    for (auto& b : of.because)
      if (b.path == port) return b.value;
    throw std::out_of_range(std::string(port));
  };
  EXPECT_NEAR(figure(f, "alternator.available") - figure(f, "load.current"), *f.predicted, 1e-9);
  const Finding& bus = found("charging.bus-voltage@hot-idle");
  EXPECT_NEAR(figure(bus, "bus.voltage"), *bus.predicted, 1e-9);
  EXPECT_NEAR(figure(f, "bus.voltage"), *bus.predicted, 1e-9) << "two findings, one bus";
}

TEST(Story, SilentWhereNothingIsJoined) {
  const Build b = hand_car("[vehicle]\nearth = \"positive\"\n");
  const Proof p = prove(b, *duties_of(b, from_disk()), {.duty = "cold-crank", .doubt = false});
  EXPECT_GT(p.count(State::fails), 0u);
  EXPECT_EQ(p.story.opening, "");
  EXPECT_EQ(p.story.order.size(), p.count(State::fails));
}

Finding failing(std::string id, std::string path, double weight) {
  Finding f{.id = std::move(id), .state = State::fails};
  f.because = {{.what = "x", .path = std::move(path), .weight = weight}};
  return f;
}
TEST(HeavyParts, AddUpOverRequirementsAndTakeTheWorstDuty) {
  Finding worst = failing("a.b@hot", "cooling.fan.left.flow", -0.2), milder = failing("a.b@mild", "engine.idle", 9);
  worst.margin = -2, milder.margin = -1;
  const auto parts =
      heavy_parts({milder, worst, failing("c.d", "cooling.fan.left.current", 0.1), failing("e", "belts.wrap", 0.25)});
  ASSERT_EQ(parts.size(), 2u);
  EXPECT_EQ(parts[0].path, "cooling.fan.left");
  EXPECT_NEAR(parts[0].weight, 0.3, 1e-12);
  EXPECT_EQ(parts[0].keys, (std::vector<std::string>{"flow", "current"}));
  EXPECT_EQ(parts[1].path, "belts");
}

TEST(WithoutDuty, LeavesRequirementAndPlace) {
  EXPECT_EQ(without_duty("a.b[c]@d"), "a.b[c]");
  EXPECT_EQ(without_duty("a.b"), "a.b");
}

}  // namespace
