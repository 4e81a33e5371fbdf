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
