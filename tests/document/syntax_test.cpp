#include "document/syntax.hpp"

#include <gtest/gtest.h>

#include "document/document.hpp"

namespace sw {
namespace {

Node parsed(const std::string& text, bool json, std::vector<std::string>* said = nullptr) {
  Diagnostics faults;
  Node root = parse_text(text, 0, json, faults);
  for (auto& d : faults.all())
    if (said) said->push_back(say(d, {"t"}));
  return root;
}

std::string fault_of(const std::string& text, bool json = false) {
  std::vector<std::string> said;
  Node root = parsed(text, json, &said);
  EXPECT_TRUE(root.entries.empty());
  return said.size() == 1 ? said[0] : std::to_string(said.size()) + " faults";
}

TEST(Toml, KeysInOrderOfAppearance) {
  auto root = parsed("z = 1\na = 2\n[t]\ny = 1\nb.c = 2\n[m]\n[t.k]\n", false);
  std::string order;
  for (auto& e : root.entries) order += e.key;
  EXPECT_EQ(order, "zatm");
  order.clear();
  for (auto& e : root.find("t")->entries) order += e.key;
  EXPECT_EQ(order, "ybk");
}

TEST(Toml, PlacesCountInBytes) {
  auto root = parsed("k = \"é\" # c\nt = { \"é\" = 12, b = [1, 2] }\n", false);
  auto& k = root.find("k")->place;
  EXPECT_EQ(std::tie(k.line, k.column, k.end_line, k.end_column), std::make_tuple(1u, 5u, 1u, 9u));
  auto& t = *root.find("t");
  EXPECT_EQ(t.entries[0].key_place.column, 7u);
  EXPECT_EQ(t.entries[0].value.place.column, 14u);
  EXPECT_EQ(t.entries[1].value.place.column, 22u);
  EXPECT_EQ(t.entries[1].value.place.end_column, 28u);
  EXPECT_EQ(t.place.end_column, 30u);
}

TEST(Toml, ValuesAsWritten) {
  auto root = parsed("a = 0x1F\nb = 1_000\nc = 2.50\nd = true\ne = 1979-05-27\nf = 'x'\ng = -inf", false);
  EXPECT_EQ(root.find("a")->text, "0x1F");
  EXPECT_EQ(root.find("a")->number, 31);
  EXPECT_EQ(root.find("b")->text, "1_000");
  EXPECT_EQ(root.find("c")->text, "2.50");
  EXPECT_EQ(root.find("d")->number, 1);
  EXPECT_EQ(root.find("e")->type, Node::Type::other);
  EXPECT_EQ(root.find("e")->text, "1979-05-27");
  EXPECT_EQ(root.find("f")->text, "x");
  EXPECT_EQ(root.find("g")->text, "-inf");
}

TEST(Toml, TextsThatTrippedTheLibrary) {
  EXPECT_EQ(fault_of("[,b]").substr(0, 25), "t:1:2: this is not TOML: ");
  EXPECT_EQ(fault_of("a = \xC2\xA1").substr(0, 25), "t:1:5: this is not TOML: ");
  EXPECT_EQ(fault_of("a \xD2\x99 = 1").substr(0, 25), "t:1:3: this is not TOML: ");
}

TEST(Toml, TooDeep) {
  std::string dots = "a";
  for (int i = 0; i < 100'000; ++i) dots += ".a";
  EXPECT_EQ(fault_of(dots + " = 1"), "t:1:64: nested too deeply: at most 32 levels");
  EXPECT_EQ(fault_of("a = " + std::string(100'000, '[')), "t:1:37: nested too deeply: at most 32 levels");
  EXPECT_EQ(fault_of("a = [\"[[\", '[[', # [[\n\"\"\"[[\"\"\"" + std::string(32, '[')), "t:2:40: nested too deeply: at most 32 levels");
  std::vector<std::string> said;
  parsed("a = " + std::string(32, '[') + std::string(32, ']') + "\nb = \"" + std::string(1000, '.') + "\" # " + std::string(99, '.'), false, &said);
  EXPECT_TRUE(said.empty());
}

TEST(Toml, TooLarge) {
  EXPECT_EQ(fault_of(std::string(text_limit::bytes + 1, '\n')),
            "t: the text is larger than 4 MiB; a build is a few dozen kilobytes: is this the right file?");
  std::string many;
  for (std::size_t i = 0; i <= text_limit::entries; ++i) many += "k" + std::to_string(i) + " = 1\n";
  EXPECT_EQ(fault_of(many), "t: a table has more than 20000 entries");
}

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

TEST(Lines, ThereAndBack) {
  std::string text = "\xEF\xBB\xBF" "ab\n\ncd";
  Lines lines(text);
  EXPECT_EQ(lines.offset(1, 1), 3u);
  EXPECT_EQ(lines.offset(3, 2), 8u);
  EXPECT_EQ(lines.offset(9, 9), text.size());
  EXPECT_EQ(lines.place(8, 0).line, 3u);
  EXPECT_EQ(lines.place(8, 0).column, 2u);
  EXPECT_EQ(lines.place(0, 0).column, 1u);
}

}  // namespace
}  // namespace sw
