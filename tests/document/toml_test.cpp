#include "document/parsing.hpp"

namespace sw {
namespace {

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
  EXPECT_EQ(fault_of("a = [\"[[\", '[[', # [[\n\"\"\"[[\"\"\"" + std::string(32, '[')),
            "t:2:40: nested too deeply: at most 32 levels");
  std::vector<std::string> said;
  parsed("a = " + std::string(32, '[') + std::string(32, ']') + "\nb = \"" + std::string(1000, '.') + "\" # " +
             std::string(99, '.'),
         false, &said);
  EXPECT_TRUE(said.empty());
}

}  // namespace
}  // namespace sw
