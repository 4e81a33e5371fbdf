#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "cli/command.hpp"

namespace sw::cli {
namespace {

std::string fault(std::vector<std::string> words) {
  const auto read = parse_args(words);
  const auto* f = std::get_if<UsageFault>(&read);
  return f ? f->problem + "; " + f->hint : "none";
}
Args good(std::vector<std::string> words) {
  auto read = parse_args(words);
  EXPECT_TRUE(std::holds_alternative<Args>(read)) << fault(words);
  return std::holds_alternative<Args>(read) ? std::get<Args>(read) : Args{};
}

TEST(ParseArgs, TakesOptionsAnywhereAndInBothSpellings) {
  for (auto words : {std::vector<std::string>{"check", "car.toml", "--duty", "grade", "--json"},
                     {"check", "--json", "--duty=grade", "car.toml"}}) {
    const Args a = good(words);
    EXPECT_EQ(a.command->name, "check");
    EXPECT_EQ(a.operands, std::vector<std::string>{"car.toml"});
    EXPECT_EQ(a.value("--duty"), "grade");
    EXPECT_TRUE(a.has("--json"));
    EXPECT_FALSE(a.has("--all"));
  }
}

TEST(ParseArgs, TakesNegativeNumbersAndWhatFollowsTwoDashesAsOperands) {
  EXPECT_EQ(good({"convert", "-10 degC", "degF"}).operands.front(), "-10 degC");
  EXPECT_EQ(good({"check", "--", "--odd.toml"}).operands.front(), "--odd.toml");
}

TEST(ParseArgs, CollectsAnOptionThatMayStandSeveralTimes) {
  EXPECT_EQ(good({"sum", "lmtd", "a=1", "--unit", "x=K", "--unit=y=W"}).values("--unit"),
            (std::vector<std::string>{"x=K", "y=W"}));
}

TEST(ParseArgs, LeadsHelpAndVersionToTheirCommands) {
  EXPECT_EQ(good({}).command->name, "help");
  EXPECT_EQ(good({"--help"}).command->name, "help");
  EXPECT_EQ(good({"-h"}).command->name, "help");
  EXPECT_EQ(good({"--version"}).command->name, "version");
  const Args a = good({"check", "--help"});
  EXPECT_EQ(a.command->name, "help");
  EXPECT_EQ(a.operands, std::vector<std::string>{"check"});
}

TEST(ParseArgs, NeedsNoOperandBesideAnOptionThatStandsAlone) {
  EXPECT_TRUE(good({"sum", "--list"}).has("--list"));
  EXPECT_EQ(fault({"check", "--all"}),
            "check: BUILD is missing; write streetwright check BUILD [--json] [--duty DUTY] [--because ID] [--all] "
            "[--system NAME]...");
}

TEST(ParseArgs, SaysWhatIsWrongAndWhatToDo) {
  EXPECT_EQ(fault({"chek"}), "there is no command \"chek\"; did you mean check?");
  EXPECT_EQ(fault({"frobnicate"}), "there is no command \"frobnicate\"; streetwright help lists the commands");
  EXPECT_EQ(fault({"--json"}), "a command comes first, before \"--json\"; streetwright help lists the commands");
  EXPECT_EQ(fault({"check", "a", "--jsn"}), "check: there is no option \"--jsn\"; did you mean --json?");
  EXPECT_EQ(fault({"check", "a", "--frobnicate"}),
            "check: there is no option \"--frobnicate\"; see streetwright help check");
  EXPECT_EQ(fault({"check", "a", "--duty"}), "check: --duty needs a value; write --duty DUTY");
  EXPECT_EQ(fault({"check", "a", "--duty", "--json"}), "check: --duty needs a value; write --duty DUTY");
  EXPECT_EQ(fault({"check", "a", "--json=yes"}), "check: --json takes no value; leave it out");
  EXPECT_EQ(fault({"check", "a", "--json", "--json"}), "check: --json is given twice; keep one");
  EXPECT_EQ(fault({"check", "a", "b"}),
            "check: \"b\" is one word too many; write streetwright check BUILD [--json] [--duty DUTY] [--because ID] "
            "[--all] [--system NAME]...");
  EXPECT_EQ(fault({"check", "a", "--color=allways"}), "check: --color cannot be \"allways\"; did you mean always?");
  EXPECT_EQ(fault({"completion", "fish"}), "completion: SHELL cannot be \"fish\"; it is one of bash");
}

TEST(ColourOf, ReadsItsThreeWords) {
  EXPECT_EQ(colour_of(good({"version"})), Colour::automatic);
  EXPECT_EQ(colour_of(good({"version", "--color=auto"})), Colour::automatic);
  EXPECT_EQ(colour_of(good({"version", "--color", "always"})), Colour::always);
  EXPECT_EQ(colour_of(good({"version", "--color=never"})), Colour::never);
}

// Any words give a command line or a fault with words to it, never anything else.
RC_GTEST_PROP(ParseArgs, AnswersAnything, (std::vector<std::string> words)) {
  const auto read = parse_args(words);
  if (auto* f = std::get_if<UsageFault>(&read))
    RC_ASSERT(!f->problem.empty() && !f->hint.empty());
  else
    RC_ASSERT(std::get<Args>(read).command != nullptr);
}

}  // namespace
}  // namespace sw::cli
