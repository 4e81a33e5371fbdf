#include "proof/swaps.hpp"

#include "proof/doubt.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

constexpr const char* two_fans =
    "[fan.\"a\"]\nprice = 90\ntitle = \"a fan\"\nflow = \"1200 cfm\"\nat_voltage = \"13.5 V\"\ncurrent = \"14 A\"\n"
    "[fan.\"b\"]\nflow = \"1300 cfm\"\nat_voltage = \"13.5 V\"\ncurrent = \"16 A\"\n"
    "[fan.\"on-the-belt\"]\ndrive = \"engine\"\nflow = \"2000 cfm\"\nat_speed = \"2000 rpm\"\n"
    "[fan.\"broken\"]\nflow = \"3 ohm\"\n";

Build with_shelf(const std::string& change = "") {
  Build b = hand_car(change);
  Diagnostics faults;
  b.shelf = std::make_shared<const std::vector<Node>>(std::vector<Node>{parse_text(two_fans, 0, false, faults)});
  EXPECT_FALSE(faults.any_fault());
  return b;
}

TEST(Fit, TakesThePartsFiguresAndLeavesTheShopsSettings) {
  Build b = with_shelf("[cooling.fan.left]\nflow = { value = \"700 cfm\", from = \"measured\" }\non = \"93 degC\"\n");
  ASSERT_TRUE(fit(b, "cooling.fan.left", "a", *b.shelf->front().find("fan")->find("a")));
  EXPECT_NEAR(*value_at(b, "cooling.fan.left.flow"), 1200 * 4.719474432e-4, 1e-9);
  EXPECT_NEAR(*value_at(b, "cooling.fan.left.on"), 93 + 273.15, 1e-9) << "a setting is the shop's, not the part's";
  EXPECT_EQ(b.evidence.at("cooling.fan.left.flow").source, Source::data_sheet);
  EXPECT_EQ(b.evidence.at("cooling.fan.left.flow").part, "a");
  EXPECT_NEAR(b.evidence.at("cooling.fan.left.flow").half_width, 0.08 * 1200 * 4.719474432e-4, 1e-9)
      << "of the sheet, not what was measured on the old one";
  EXPECT_FALSE(b.evidence.contains("cooling.fan.left.price"));
}

TEST(Fit, SaysWhereAPartCannotBeRead) {
  Build b = with_shelf();
  EXPECT_FALSE(fit(b, "cooling.fan.left", "broken", *b.shelf->front().find("fan")->find("broken")));
}

TEST(Swaps, TryEveryPartInEveryPlaceOfItsKindCheapestFirst) {
  const Build b = with_shelf();
  Judging j(b, "hot-idle");
  std::vector<bool> wanted;
  for (auto& c : j.set().courses) wanted.push_back(c.key == "hot-idle");
  const auto tried = swaps(b, j.set(), wanted);
  std::vector<std::string> names;
  for (auto& s : tried) {
    names.push_back(s.part + " as " + s.group);
    EXPECT_EQ(s.judged.size(), j.all().size()) << s.part;
  }
  EXPECT_EQ(names, (std::vector<std::string>{"a as cooling.fan.left", "a as cooling.fan.right", "b as cooling.fan.left",
                                             "b as cooling.fan.right"}));
  EXPECT_EQ(tried[0].price, 90);
  EXPECT_FALSE(tried[2].price);
}

TEST(Swaps, NameTheLinesThePartTakesThePlaceOf) {
  const Build b = with_shelf();
  Judging j(b, "hot-idle");
  std::vector<bool> wanted;
  for (auto& c : j.set().courses) wanted.push_back(c.key == "hot-idle");
  const auto tried = swaps(b, j.set(), wanted);
  ASSERT_FALSE(tried.empty());
  EXPECT_EQ(words(tried[0]), "a as cooling.fan.left in place of its own flow and current");
}

TEST(Swaps, NoneWithoutAShelf) {
  Build b = hand_car();
  b.shelf = nullptr;
  Judging j(b, "hot-idle");
  EXPECT_TRUE(swaps(b, j.set(), {}).empty());
}

}  // namespace
