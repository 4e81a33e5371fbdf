#include "proof/story.hpp"

#include <filesystem>

#include "proof/proof.hpp"
#include "quantity/print.hpp"
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
  EXPECT_TRUE(text.starts_with("At hot-idle it is 62 A short in the mean (")) << text;
  EXPECT_NE(text.find("which at worst brings volts at the fans to 10.5 V and coolant at the engine to 109 degC"),
            std::string::npos)
      << text;
  EXPECT_NE(text.find("; with the fans at their rated volts it would hold at 97.4 degC at worst. Of single"),
            std::string::npos)
      << text;
}

TEST(Story, FiguresOfTheOpeningAreThoseOfTheChain) {
  const Finding& f = found("charging.balance@hot-idle");
  for (auto& b : f.because)
    if (b.path == "alternator.available" || b.path == "load.current") {
      const std::string told = b.what + " " + print(b.value, *b.kind, b.unit, 3);
      EXPECT_NE(starved().story.opening.find(told), std::string::npos) << told;
    }
}

// The cause is a mean and the effect an instant: that the two are not of one moment is said of each.
TEST(Story, OpeningSaysOfEachFigureWhetherItIsAMeanOrTheWorst) {
  const std::string& text = starved().story.opening;
  EXPECT_GT(found("charging.balance@hot-idle").mean_share, 0);
  EXPECT_EQ(found("cooling.coolant-temperature@hot-idle").mean_share, 0);
  const auto mean = text.find("in the mean"), worst = text.find("at worst"), hot = text.find("109 degC");
  ASSERT_NE(mean, std::string::npos) << text;
  EXPECT_LT(mean, worst);
  EXPECT_LT(worst, hot) << text;
}

TEST(Story, OpeningSaysWhichPartToChange) {
  const std::string& text = starved().story.opening;
  EXPECT_NE(text.find("Of single shelf parts high-idle-180 as charging.alternator leaves 1 of 9 failing "
                      "(charging.bus-voltage@hot-idle)."),
            std::string::npos)
      << text;
  EXPECT_TRUE(text.ends_with("together leave nothing failing.")) << text;
}

TEST(Story, AnOfferSaysWhatItLeavesOfItsDuty) {
  const std::string& hint = found("cooling.coolant-temperature@hot-idle").fix_hint;
  EXPECT_NE(hint.find("Holds with shelf part single-16 as cooling.fan.pair in place of its own flow and current, but "
                      "leaves charging.balance@hot-idle and 2 more of it failing"),
            std::string::npos)
      << hint;
  EXPECT_EQ(hint.find("engine-"), std::string::npos) << "no fan on the belt for an electric one: " << hint;
}

/// The demo with the parts told in its opening, fitted as told: their own lines taken out.
std::string fitted(std::string text, const std::string& machine, const std::string& fan) {
  auto swap = [&](const std::string& from, const std::string& to) {
    const auto at = text.find(from);
    if (at == std::string::npos) throw std::out_of_range(from);
    text.replace(at, from.size(), to);
  };
  if (!machine.empty()) swap("big-frame-200", machine);
  if (!fan.empty()) {
    swap("[cooling.fan.pair]\nflow", "[cooling.fan.pair]\npart = \"" + fan + "\"\n#");
    swap("current = { value = \"50 A\"", "# current = { value = \"50 A\"");
  }
  return text;
}
Proof proof_fitted(const std::string& machine, const std::string& fan) {
  const auto file = std::filesystem::path(STREETWRIGHT_SOURCE_DIR) / "demo/starved.toml";
  const Opened o = open(file, [&](const std::filesystem::path& p) {
    auto text = from_disk()(p);
    return p == file && text ? std::optional(fitted(*text, machine, fan)) : text;
  });
  for (auto& d : o.faults.all()) ADD_FAILURE() << say(d, o.files);
  return prove(o.build, *duties_of(o.build, from_disk()), {});
}
TEST(Story, WhatItPromisesHoldsWhenFittedAsTold) {
  const Proof one = proof_fitted("high-idle-180", "");
  EXPECT_EQ(one.count(State::fails), 1u);
  const std::string& text = starved().story.opening;
  const auto from = text.find("@hot-idle). ") + 12, as = text.find(" as charging.alternator and ", from);
  ASSERT_NE(as, std::string::npos) << text;
  const std::string machine = text.substr(from, as - from);
  const auto fan_from = as + std::string(" as charging.alternator and ").size();
  const std::string fan = text.substr(fan_from, text.find(" as cooling.fan.pair", fan_from) - fan_from);
  EXPECT_EQ(proof_fitted(machine, fan).count(State::fails), 0u) << machine << ", " << fan;
  const Proof fans = proof_fitted("", "single-16");
  for (auto& f : fans.findings)
    if (f.id == "cooling.coolant-temperature@hot-idle") {
      EXPECT_EQ(f.state, State::holds);
    }
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

/// With a doubt of the same group that weighs far more: it is no choice and must not count.
Finding failing(std::string id, std::string what, std::string path, double weight) {
  Finding f{.id = std::move(id), .state = State::fails};
  const std::string group = path.substr(0, path.rfind('.'));
  f.because = {{.what = "unknown", .role = Role::doubt, .path = group + ".unknown", .weight = 50},
               {.what = std::move(what), .role = Role::choice, .path = std::move(path), .weight = weight}};
  return f;
}
TEST(HeavyParts, AddUpChoicesOverRequirementsAndTakeTheWorstDuty) {
  Finding worst = failing("a.b@hot", "air flow", "cooling.fan.left.flow", -0.2),
          milder = failing("a.b@mild", "idle", "engine.idle", 9);
  worst.margin = -2, milder.margin = -1;
  const auto parts = heavy_parts({milder, worst, failing("c.d", "fan current", "cooling.fan.left.current", 0.1),
                                  failing("e", "wrap", "belts.wrap", 0.25)});
  ASSERT_EQ(parts.size(), 2u);
  EXPECT_EQ(parts[0].path, "cooling.fan.left");
  EXPECT_NEAR(parts[0].weight, 0.3, 1e-12);
  EXPECT_EQ(parts[0].labels, (std::vector<std::string>{"air flow", "fan current"}));
  EXPECT_EQ(parts[1].path, "belts");
}

TEST(WithoutDuty, LeavesRequirementAndPlace) {
  EXPECT_EQ(without_duty("a.b[c]@d"), "a.b[c]");
  EXPECT_EQ(without_duty("a.b"), "a.b");
}

}  // namespace
