#include "field/tree.hpp"

#include <gtest/gtest.h>

namespace sw {
namespace {

TEST(Nearest, OneSlipInThreeLetters) {
  const std::vector<std::string_view> names = {"gauge", "length", "fan", "core_width"};
  EXPECT_EQ(nearest("guage", names), "gauge");  // neighbours changed over count once
  EXPECT_EQ(nearest("core_widht", names), "core_width");
  EXPECT_EQ(nearest("fin", names), "fan");
  EXPECT_EQ(nearest("lnegth", names), "length");
  EXPECT_EQ(nearest("fx", names), "");
  EXPECT_EQ(nearest("volume", names), "");
  EXPECT_EQ(nearest(std::string(5000, 'a'), names), "");
  EXPECT_EQ(nearest("", names), "");
}

TEST(Diagnostics, SortedByFileLineColumnPath) {
  Diagnostics d;
  d.fault({1, 1, 1}, "e", "");
  d.fault({0, 10, 1}, "d", "");
  d.warn({0, 2, 7}, "c", "");
  d.fault({0}, "b", "");
  d.fault({0}, "a", "");
  d.sort();
  std::string order;
  for (auto& x : d.all()) order += x.path;
  EXPECT_EQ(order, "abcde");
}

TEST(Diagnostics, AWarningIsNoFault) {
  Diagnostics d;
  d.warn({}, "a", "b");
  EXPECT_FALSE(d.any_fault());
  d.fault({}, "a", "b");
  EXPECT_TRUE(d.any_fault());
}

TEST(Say, OneLine) {
  EXPECT_EQ(say({Severity::fault, {0, 6, 10}, "a.b", "is wrong", "do this"}, {"x.toml"}),
            "x.toml:6:10: a.b: is wrong; do this");
  EXPECT_EQ(say({Severity::warning, {0}, "a.b", "is odd", ""}, {"x.json"}), "x.json: warning: a.b: is odd");
  EXPECT_EQ(say({Severity::fault, {3, 1, 1}, "", "is wrong", ""}, {"x.toml"}), "is wrong");
}

TEST(Node, FindsOnlyInTables) {
  Node table;
  table.entries.push_back({"a", {}, {}});
  EXPECT_TRUE(table.find("a"));
  EXPECT_FALSE(table.find("b"));
  Node array;
  array.type = Node::Type::array;
  EXPECT_FALSE(array.find("a"));
}

}  // namespace
}  // namespace sw
