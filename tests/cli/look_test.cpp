#include "cli/look.hpp"

#include <gtest/gtest.h>

#include <map>

namespace sw::cli {
namespace {

Surroundings with(std::map<std::string, std::string, std::less<>> variables, bool terminal = false, int columns = 0) {
  Surroundings s;
  s.variable = [variables](std::string_view name) -> std::optional<std::string> {
    const auto at = variables.find(name);
    return at == variables.end() ? std::nullopt : std::optional(at->second);
  };
  s.terminal = terminal;
  s.columns = columns;
  return s;
}

TEST(Look, TakesWidthFromColumnsThenTheTerminalThenEighty) {
  EXPECT_EQ(look_for(with({})).width, 80);
  EXPECT_EQ(look_for(with({}, true, 133)).width, 133);
  EXPECT_EQ(look_for(with({{"COLUMNS", "100"}}, true, 133)).width, 100);
  EXPECT_EQ(look_for(with({{"COLUMNS", "wide"}}, true, 133)).width, 133);
  EXPECT_EQ(look_for(with({{"COLUMNS", "-3"}})).width, 80);
  EXPECT_EQ(look_for(with({{"COLUMNS", "5"}})).width, least_width);
  EXPECT_EQ(look_for(with({{"COLUMNS", "9999"}})).width, most_width);
  EXPECT_EQ(look_for(with({{"COLUMNS", "99999999999999999999"}})).width, 80);
}

TEST(Look, KnowsUtf8ByTheFirstLocaleVariableThatIsSet) {
  EXPECT_FALSE(look_for(with({})).unicode);
  EXPECT_TRUE(look_for(with({{"LANG", "en_GB.UTF-8"}})).unicode);
  EXPECT_TRUE(look_for(with({{"LANG", "C"}, {"LC_CTYPE", "C.utf8"}})).unicode);
  EXPECT_FALSE(look_for(with({{"LC_ALL", "C"}, {"LANG", "en_GB.UTF-8"}})).unicode);
  EXPECT_TRUE(look_for(with({{"LC_ALL", ""}, {"LANG", "en_GB.UTF-8"}})).unicode)
      << "an empty variable counts as not set";
  EXPECT_FALSE(look_for(with({{"LANG", "en_GB.UTF-8"}}), Colour::automatic, true).unicode);
}

TEST(Look, ColoursOnATerminalUnlessToldNotTo) {
  EXPECT_FALSE(look_for(with({})).colour);
  EXPECT_TRUE(look_for(with({}, true)).colour);
  EXPECT_FALSE(look_for(with({{"NO_COLOR", "1"}}, true)).colour);
  EXPECT_TRUE(look_for(with({{"NO_COLOR", ""}}, true)).colour);
  EXPECT_FALSE(look_for(with({{"TERM", "dumb"}}, true)).colour);
  EXPECT_TRUE(look_for(with({{"NO_COLOR", "1"}}), Colour::always).colour);
  EXPECT_FALSE(look_for(with({}, true), Colour::never).colour);
}

}  // namespace
}  // namespace sw::cli
