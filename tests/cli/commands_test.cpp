#include <gtest/gtest.h>

#include <set>

#include "cli/command.hpp"

namespace sw::cli {
namespace {

TEST(Commands, AreEachSaidOnceAndCanRun) {
  std::set<std::string_view> names;
  for (auto& c : commands()) {
    EXPECT_TRUE(names.insert(c.name).second) << c.name;
    EXPECT_TRUE(c.run != nullptr) << c.name;
    EXPECT_FALSE(c.summary.empty()) << c.name;
    EXPECT_EQ(find_command(c.name), &c);
    std::set<std::string_view> options;
    for (auto* o : options_of(c)) {
      EXPECT_TRUE(options.insert(o->name).second) << c.name << " " << o->name;
      EXPECT_TRUE(o->name.starts_with("--")) << o->name;
      EXPECT_TRUE(o->says.ends_with('.')) << o->name;
      EXPECT_EQ(o->fill == Fill::words, !o->words.empty()) << o->name;
    }
    bool optional = false;
    for (auto& o : c.operands) {
      EXPECT_TRUE(o.needed ? !optional : true) << c.name << ": a needed operand after one that may be left out";
      optional = !o.needed;
    }
  }
}

TEST(ExitsOf, PutsACommandsOwnBeforeTheCommonOnes) {
  const auto all = exits_of(*find_command("check"));
  std::string codes;
  for (auto& e : all) codes += std::to_string(e.code) + " ";
  EXPECT_EQ(codes, "0 1 2 3 70 ");
  EXPECT_NE(all.front().says, common_exits().front().says);
}

TEST(Gravest, IsOwnFaultThenInputThenFailsThenUnproven) {
  EXPECT_EQ(gravest(0, 0), 0);
  EXPECT_EQ(gravest(0, 3), 3);
  EXPECT_EQ(gravest(3, 1), 1);
  EXPECT_EQ(gravest(1, 2), 2);
  EXPECT_EQ(gravest(2, 70), 70);
  EXPECT_EQ(gravest(70, 1), 70);
}

}  // namespace
}  // namespace sw::cli
