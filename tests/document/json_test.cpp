#include "document/parsing.hpp"

namespace sw {
namespace {

TEST(Json, SameTreeAsToml) {
  auto root = parsed(R"({"b": "x", "a": {"n": 2, "r": 2.50, "t": true, "l": [1, "two", null]}})", true);
  EXPECT_EQ(root.entries[0].key, "b");
  auto& a = *root.find("a");
  EXPECT_EQ(a.find("n")->type, Node::Type::integer);
  EXPECT_EQ(a.find("r")->text, "2.50");
  EXPECT_EQ(a.find("t")->number, 1);
  EXPECT_EQ(a.find("l")->items.size(), 3u);
  EXPECT_EQ(a.find("l")->items[2].type, Node::Type::other);
  EXPECT_FALSE(a.place.known());
  EXPECT_EQ(a.place.file, 0);
}

TEST(Json, Faults) {
  EXPECT_EQ(fault_of("[1]", true), "t: expected an object at the top of the text");
  EXPECT_EQ(fault_of("{\"a\": 1,\n \"b\" 2}", true).substr(0, 25), "t:2:6: this is not JSON: ");
  EXPECT_EQ(fault_of("", true).substr(0, 25), "t:1:1: this is not JSON: ");
  EXPECT_EQ(fault_of(std::string(100'000, '['), true), "t: nested too deeply: at most 32 levels");
  std::string deep;
  for (int i = 0; i < 40; ++i) deep += "{\"k\":";
  EXPECT_EQ(fault_of(deep, true).substr(0, 7), "t: k.k.");
  std::vector<std::string> said;
  parsed(R"({"a": {"b": 1, "b": 2}})", true, &said);
  EXPECT_EQ(said, std::vector<std::string>{"t: a.b: this key stands twice in its table"});
}

}  // namespace
}  // namespace sw
