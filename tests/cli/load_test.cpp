#include "cli/load.hpp"

#include <gtest/gtest.h>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

OpenText with(std::string text) {
  return [text](const std::filesystem::path& file) -> std::optional<std::string> {
    return file == "car.toml" ? std::optional(text) : std::nullopt;
  };
}

TEST(Load, TellsEveryFaultOfTheFileAtOnce) {
  Console console;
  const Loaded l = load("car.toml", with("[engine]\nidle_speed = 750\nred_lin = \"5000 rpm\"\n"));
  EXPECT_FALSE(l.good());
  EXPECT_EQ(tell_faults(l, false, console), 2);
  EXPECT_NE(console.err.find("car.toml:2:"), std::string::npos) << console.err;
  EXPECT_NE(console.err.find("car.toml:3:"), std::string::npos) << console.err;
  EXPECT_TRUE(console.err.ends_with("2 faults; nothing was computed.\n")) << console.err;
  EXPECT_EQ(console.out, "");
}

/// A field, a mistyped key, a rule over two fields, a part, a duty's field, and rules over duties: no second round.
TEST(Load, TellsFaultsOfEveryKindInOneRound) {
  Console console;
  const Loaded l = load("car.toml", with(R"([engine]
idle_speed = 750
[cooling.radiator]
part = "none-such"
[cooling.fan.left]
on = "190 degF"
off = "195 degF"
at_voltag = "12 V"
[duty.mine]
speed = "30 mph"
after = "yours"
[duty.theirs]
ambient = "hot"
speed = "30 mph"
[duty.yard]
trace_file = "lost.csv"
)"));
  EXPECT_EQ(tell_faults(l, false, console), 2);
  for (auto* told : {"car.toml:2:14: engine.idle_speed", "car.toml:4:8: cooling.radiator.part",
                     "car.toml:7:7: cooling.fan.left.off: the fan is switched off no lower than it is switched on",
                     "car.toml:8:1: cooling.fan.left.at_voltag", "car.toml:11:9: duty.mine.after", "duty.mine.duration",
                     "car.toml:13:11: duty.theirs.ambient", "duty.theirs.duration",
                     "car.toml:16:14: duty.yard.trace_file", "9 faults; nothing was computed."})
    EXPECT_NE(console.err.find(told), std::string::npos) << told << "\n" << console.err;
}

/// What could not be read is told once, and no rule is tried on what stands in for it.
TEST(Load, TriesNoRuleOnAFieldThatWasNotRead) {
  Console console;
  const Loaded l = load("car.toml", with(R"([cooling.fan.left]
on = "190"
off = "195 degF"
[wiring.run.feed]
from = 3
to = "fuse box"
[wiring.load.horn]
from = "battery"
[duty.mine]
speed_trace = "fast"
after = "yours"
[duty.yours]
duration = "long"
speed = "30 mph"
)"));
  EXPECT_EQ(tell_faults(l, false, console), 2);
  EXPECT_TRUE(console.err.ends_with("4 faults; nothing was computed.\n")) << console.err;
}

/// A text that cannot be had hides what stands in it, so that rules would be tried on half a car.
TEST(Load, TriesNoRuleWhereATextIsMissing) {
  Console console;
  const Loaded l = load("car.toml", with("base = \"gone.toml\"\n[duty.mine]\nspeed = \"30 mph\"\n"));
  EXPECT_EQ(tell_faults(l, false, console), 2);
  EXPECT_FALSE(l.good());
  EXPECT_EQ(console.err.find("duty.mine"), std::string::npos) << console.err;
}

TEST(Load, PutsFaultsOnTheOutputAsJson) {
  Console console;
  EXPECT_EQ(tell_faults(load("car.toml", with("x = \n")), true, console), 2);
  EXPECT_TRUE(console.out.starts_with("{\n  \"faults\": [")) << console.out;
  EXPECT_EQ(console.err, "");
}

TEST(Load, TellsFaultsOfDutiesToo) {
  Console console;
  const Loaded l = load("car.toml", with("[duty.mine]\nspeed = \"30 mph\"\nafter = \"yours\"\n"));
  EXPECT_EQ(tell_faults(l, false, console), 2);
  EXPECT_NE(console.err.find("car.toml:3:9: duty.mine.after"), std::string::npos) << console.err;
}

TEST(Load, SaysThatThereIsNoFile) {
  Console console;
  EXPECT_EQ(tell_faults(load("gone.toml", with("")), false, console), 2);
  EXPECT_NE(console.err.find("gone.toml"), std::string::npos);
}

TEST(Load, IsGoodWithoutFaults) {
  Console console;
  Loaded l = load("car.toml", with("[vehicle]\ntitle = \"Fernrill van (invented)\"\n"));
  EXPECT_EQ(tell_faults(l, false, console), 0) << console.err;
  EXPECT_TRUE(l.good());
  EXPECT_EQ(car_title(l.opened.build), "Fernrill van (invented)");
}

TEST(FindDuty, NamesTheNearest) {
  Console console;
  const Loaded l = load("car.toml", with(""));
  ASSERT_TRUE(l.good());
  EXPECT_TRUE(find_duty(*l.duties, "hot-idle", console));
  EXPECT_FALSE(find_duty(*l.duties, "hot-idel", console));
  EXPECT_EQ(console.err, "streetwright: there is no duty \"hot-idel\"; did you mean hot-idle?\n");
}

}  // namespace
}  // namespace sw::cli
