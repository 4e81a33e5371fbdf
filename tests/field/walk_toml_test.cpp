#include <gtest/gtest.h>

#include "field/walk.hpp"

namespace sw {
namespace {

TEST(WriteToml, KeysAndControlCharactersAreQuoted) {
  Node table;
  Node value;
  value.type = Node::Type::text;
  value.text = "a\x01\tb\n\"\\é";
  table.entries.push_back({"a b", {}, value});
  EXPECT_EQ(write_toml(table), "\"a b\" = \"a\\u0001\\tb\\n\\\"\\\\é\"\n");
}

TEST(WriteToml, OnlyValuesWithEvidenceStandOnOneLine) {
  auto text = [](std::string t) {
    Node n;
    n.type = Node::Type::text;
    n.text = std::move(t);
    return n;
  };
  Node figure, group, root;
  figure.entries = {{"value", {}, text("3 in")}, {"from", {}, text("measured")}};
  group.entries = {{"inner", {}, {}}, {"width", {}, figure}};
  root.entries = {{"outer", {}, group}, {"top", {}, text("x")}};
  EXPECT_EQ(write_toml(root),
            "top = \"x\"\n\n[outer]\nwidth = { value = \"3 in\", from = \"measured\" }\n\n[outer.inner]\n");
}

}  // namespace
}  // namespace sw
