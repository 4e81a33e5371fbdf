#include "proof/changed.hpp"

#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

struct Asked {
  explicit Asked(const std::string& change, std::string_view id) : build(hand_car(change)), judging(build, "hot-idle") {
    for (auto& c : judging.set().courses) wanted.push_back(c.key == "hot-idle");
    moves = study(build, judging.set(), judging.all(), {.wanted = wanted, .threads = 2});
    while (judging.all().at(index).requirement->id != id) ++index;
  }
  Question with(double half_width) const { return {build, judging.set(), judging.all(), index, half_width, moves, {}}; }
  double margin() const { return judging.all()[index].margin().value(); }

  Build build;
  Judging judging;
  std::vector<bool> wanted;
  Study moves;
  std::size_t index = 0;
};

const std::string short_of_current =
    "[wiring.load.big]\ncurrent = \"60 A\"\nwhen = [\"running\"]\ngauge = \"6 AWG\"\nlength = \"6 ft\"\nfuse = \"80 "
    "A\"\n";

TEST(Changed, IdNamesRequirementPlaceAndDuty) {
  Judging j(hand_car(), "hot-idle");
  EXPECT_EQ(id_of(j.one("charging.balance"), j.set()), "charging.balance@hot-idle");
  EXPECT_EQ(id_of(j.one("wiring.fuse-wire", {}, "feed"), j.set()), "wiring.fuse-wire[feed]");
}

TEST(Changed, HarmIsWhatHeldAndFailsOrFailedAndIsWorse) {
  const Asked a("", "cooling.coolant-temperature");
  auto& base = a.judging.all();
  auto worse = base;
  EXPECT_FALSE(harms(base, worse, base[a.index]));
  auto other =
      std::find_if(worse.begin(), worse.end(), [](auto& j) { return j.requirement->id == "charging.balance"; });
  ASSERT_NE(other, worse.end());
  other->verdict.predicted = *other->verdict.low - 5;
  EXPECT_TRUE(harms(base, worse, base[a.index]));
  EXPECT_TRUE(harms(base, worse, base[a.index], false)) << "it held";
  EXPECT_FALSE(harms(base, worse, *other)) << "the target itself is looked at elsewhere";
  const auto failed = worse;
  other->verdict.predicted = *other->verdict.low - 50;
  EXPECT_TRUE(harms(failed, worse, base[a.index]));
  EXPECT_FALSE(harms(failed, worse, base[a.index], false)) << "it failed before";
  other->verdict.predicted.reset();
  EXPECT_TRUE(harms(failed, worse, base[a.index])) << "a figure lost";
}

// The charge a drive adds is told against a tenth of the battery: half as much again of that battery is no charge.
TEST(Changed, ALargerBatteryOnlyScalesAShortage) {
  const Build b = hand_car();
  Judging before(b, "commute");
  const Judged& recharge = before.one("charging.recharge");
  Build larger = b;
  ASSERT_TRUE(shift(larger, "charging.battery.capacity", 0.5 * *value_at(b, "charging.battery.capacity")));
  EXPECT_TRUE(only_scales(recharge, Judging(larger, "commute").all(), 1.5));
  Build faster = b;
  ASSERT_TRUE(shift(faster, "engine.idle_speed", 0.1 * *value_at(b, "engine.idle_speed")));
  EXPECT_FALSE(only_scales(recharge, Judging(faster, "commute").all(), 1.1));
  const Judged& wire = before.one("wiring.wire-current", "commute", "feed");
  Build thicker = b;
  ASSERT_TRUE(shift(thicker, "wiring.run.feed.gauge", *value_at(b, "wiring.run.feed.gauge")));
  EXPECT_FALSE(only_scales(wire, Judging(thicker, "commute").all(), 2)) << "its limit moves: that is a stronger part";
}

// What a new part is known by: its own half-width, whatever that of the old one was.
TEST(Changed, DoubtIsThatOfThePartFitted) {
  const Asked a("[cooling.fan.left]\nflow = { value = \"800 cfm\", from = \"measured\" }\n",
                "cooling.coolant-temperature");
  auto doubt = [&](double share) {
    Build b = a.build;
    auto& e = b.evidence.at("cooling.fan.left.flow");
    e.half_width = share * *value_at(b, "cooling.fan.left.flow");
    return doubt_in(a.with(1.0), b, a.margin(), {"cooling.fan.left"});
  };
  EXPECT_GT(doubt(0.20), 1.05 * doubt(0.02));
  EXPECT_EQ(doubt_in(a.with(0.0), a.build, a.margin(), {"cooling.fan.left"}), 0.0) << "none is asked for";
}

TEST(Changed, SaysWhatStillFailsOfTheSameDuty) {
  const Asked a(short_of_current, "charging.bus-voltage");
  ASSERT_LT(a.margin(), 0);
  const std::string text = leaves_failing(a.with(0), a.judging.all());
  EXPECT_NE(text.find("charging.balance@hot-idle"), std::string::npos) << text;
  EXPECT_TRUE(text.starts_with(", but leaves ") && text.ends_with(" failing")) << text;
  const Asked sound("", "cooling.coolant-temperature");
  auto cured = a.judging.all();
  for (auto& j : cured)
    if (j.verdict.predicted) j.verdict.predicted = j.verdict.low ? *j.verdict.low + 1 : *j.verdict.high - 1;
  EXPECT_EQ(leaves_failing(a.with(0), cured), "");
}

}  // namespace
