#include "proof/offers.hpp"

#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

/// The place of a judgement among all.
std::size_t index_of(const Judging& j, std::string_view id) {
  for (std::size_t i = 0; i < j.all().size(); ++i)
    if (j.all()[i].requirement->id == id) return i;
  throw std::out_of_range(std::string(id));
}

TEST(Offers, PartsThatHoldAreOffersInTheirOrder) {
  const Build b = hand_car("[cooling.fan.left]\nflow = \"250 cfm\"\n[cooling.fan.right]\nflow = \"200 cfm\"\n");
  Judging j(b, "hot-idle");
  std::vector<bool> wanted;
  for (auto& c : j.set().courses) wanted.push_back(c.key == "hot-idle");
  const Study s = study(b, j.set(), j.all(), {.wanted = wanted, .threads = 2});
  const Question q{b, j.set(), j.all(), index_of(j, "cooling.coolant-temperature"), 0.0, s};
  ASSERT_LT(j.all()[q.index].margin().value(), 0);
  const auto tried = swaps(b, j.set(), wanted);
  const auto good = parts_that_hold(q, tried);
  ASSERT_FALSE(good.empty());
  for (std::size_t i : good) {
    bool held = false;
    for (auto& other : tried[i].judged) held |= other.same_as(j.all()[q.index]) && other.margin().value_or(-1) >= 0;
    EXPECT_TRUE(held) << tried[i].part;
  }
  const std::string text = offers(q, tried);
  EXPECT_TRUE(text.starts_with("Holds with shelf part " + tried[good[0]].part + " as " + tried[good[0]].group)) << text;
  std::size_t count = 1;
  for (auto at = text.find("; or "); at != std::string::npos; at = text.find("; or ", at + 1)) ++count;
  EXPECT_LE(count, 3u);
}

TEST(Offers, Words) {
  EXPECT_EQ(words({.path = "engine.idle_speed", .now = 70, .needed = 80}),
            "engine.idle_speed from 668 rpm to 763.9 rpm (mind creep in gear and the idle quality)");
  EXPECT_EQ(words({.path = "cooling.fan.left.flow", .now = 800 * 4.719474432e-4, .needed = 960 * 4.719474432e-4}),
            "cooling.fan.left.flow from 800 cfm to 960 cfm");
  EXPECT_EQ(words({.path = "charging.alternator.output_curve", .now = 1, .needed = 1.25, .factor = true}),
            "charging.alternator.output_curve by 25 % throughout");
}

}  // namespace
