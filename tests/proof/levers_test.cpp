#include "proof/offers.hpp"

#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

/// The build with a lever at its value; a star stands for every name in a list.
Build with(const Build& build, const Lever& l) {
  Build changed = build;
  const auto star = l.path.find('*');
  const std::string front = l.path.substr(0, star), back = star == std::string::npos ? "" : l.path.substr(star + 1);
  for (auto& [path, evidence] : build.evidence) {
    if (!(path == l.path || (star != std::string::npos && path.starts_with(front) && path.ends_with(back)))) continue;
    const auto now = value_at(build, path);
    EXPECT_TRUE(shift(changed, path, l.factor && now ? *now * (l.needed - 1) : l.needed - l.now)) << path;
  }
  return changed;
}

/// Every lever of every failing finding of one duty, applied by itself, must make that finding hold.
std::size_t check_levers(const std::string& change, const std::string& duty) {
  const Build b = hand_car(change);
  Judging j(b, duty);
  std::vector<bool> wanted;
  for (auto& c : j.set().courses) wanted.push_back(c.key == duty);
  const Study s = study(b, j.set(), j.all(), {.wanted = wanted, .threads = 2});
  std::size_t offered = 0;
  for (std::size_t i = 0; i < j.all().size(); ++i) {
    for (auto& l : levers({b, j.set(), j.all(), i, 0.0, s})) {
      ++offered;
      EXPECT_LT(j.all()[i].margin().value(), 0) << "a lever for what holds";
      EXPECT_FALSE(words(l).empty());
      auto* f = find_field(build_fields(), l.path);
      EXPECT_TRUE(f && f->lever) << l.path << " is nothing the shop can choose";
      if (!f) continue;
      EXPECT_FALSE(f->key == "joints" && l.needed > l.now) << words(l);
      if (!f->kind->wire_gauge) {
        EXPECT_LE(l.effort, f->grows ? 1.5 : 0.6);
      }
      const Build changed = with(b, l);
      const Car car(changed);
      bool found = false;
      for (auto& other : judge(car, j.set(), run_duties(car, j.set(), wanted), wanted)) {
        if (!other.same_as(j.all()[i])) continue;
        found = true;
        EXPECT_GE(other.margin().value_or(-1), 0) << other.requirement->id << " with " << words(l);
      }
      EXPECT_TRUE(found);
    }
  }
  return offered;
}

TEST(Levers, AppliedTheyMakeTheFindingHold) {
  EXPECT_GT(check_levers(
                "[charging.battery]\ncold_crank_current = \"330 A\"\n[wiring.run.starter_cable]\ngauge = \"6 AWG\"\n",
                "cold-crank"),
            0u);
}

// Fans too weak for a hot idle: no single one of them would do, both together do.
TEST(Levers, WeakFansAreChangedTogether) {
  EXPECT_GT(
      check_levers("[cooling.fan.left]\nflow = \"250 cfm\"\n[cooling.fan.right]\nflow = \"200 cfm\"\n", "hot-idle"),
      0u);
}

TEST(Levers, NoneForWhatHolds) {
  const Build b = roomy_car();
  Judging j(b, "cold-crank");
  std::vector<bool> wanted;
  for (auto& c : j.set().courses) wanted.push_back(c.key == "cold-crank");
  const Study s = study(b, j.set(), j.all(), {.wanted = wanted, .threads = 1});
  for (std::size_t i = 0; i < j.all().size(); ++i) EXPECT_TRUE(levers({b, j.set(), j.all(), i, 0.0, s}).empty());
}

/// The place of a judgement among all.
std::size_t index_of(const Judging& j, std::string_view id) {
  for (std::size_t i = 0; i < j.all().size(); ++i)
    if (j.all()[i].requirement->id == id) return i;
  throw std::out_of_range(std::string(id));
}

// The rotor turns too fast for its pulley and idles too slowly to cover the loads: no pulley does both.
TEST(Levers, NoPulleySatisfiesSpeedLimitAndOutput) {
  const Build b = hand_car(
      "[charging.alternator]\nhighest_speed = \"9000 rpm\"\n[wiring.load.big]\ncurrent = \"60 A\"\nwhen = "
      "[\"running\"]\n"
      "gauge = \"6 AWG\"\nlength = \"6 ft\"\nfuse = \"80 A\"\n");
  Judging j(b, "hot-idle");
  std::vector<bool> wanted;
  for (auto& c : j.set().courses) wanted.push_back(c.key == "hot-idle");
  const Study s = study(b, j.set(), j.all(), {.wanted = wanted, .threads = 2});
  const std::size_t balance = index_of(j, "charging.balance"), rotor = index_of(j, "charging.alternator-speed");
  ASSERT_LT(j.all()[balance].margin().value(), 0);
  ASSERT_LT(j.all()[rotor].margin().value(), 0);
  const auto c = conflict({b, j.set(), j.all(), balance, 0.0, s});
  ASSERT_TRUE(c);
  EXPECT_EQ(c->other, rotor);
  EXPECT_TRUE(c->path.starts_with("belts.")) << c->path;
  for (auto& l : levers({b, j.set(), j.all(), balance, 0.0, s})) EXPECT_NE(l.path, c->path);
}

/// All levers of one finding of a duty.
std::vector<Lever> levers_of(const std::string& change, const std::string& duty, std::string_view id,
                             std::string_view place = {}) {
  const Build b = hand_car(change);
  Judging j(b, duty);
  std::vector<bool> wanted;
  for (auto& c : j.set().courses) wanted.push_back(c.key == duty);
  const Study s = study(b, j.set(), j.all(), {.wanted = wanted, .threads = 2});
  for (std::size_t i = 0; i < j.all().size(); ++i) {
    auto& judged = j.all()[i];
    if (judged.requirement->id != id || judged.verdict.place != place) continue;
    EXPECT_LT(judged.margin().value_or(1), 0) << id << " does not fail";
    return levers({b, j.set(), j.all(), i, 0.0, s}, 10);
  }
  ADD_FAILURE() << id << " is not judged";
  return {};
}

// Short by little: the idle that would do is 1.1 of what it is; by more, beyond a quarter, it is not offered.
TEST(Levers, IdleIsRaisedByAQuarterAtMost) {
  auto load = [](const std::string& amps) {
    return "[wiring.load.big]\ncurrent = \"" + amps +
           " A\"\nwhen = [\"running\"]\ngauge = \"6 AWG\"\nlength = \"6 ft\"\nfuse = \"80 A\"\n";
  };
  std::size_t offered = 0;
  for (auto* amps : {"36", "37", "38"})
    for (auto& l : levers_of(load(amps), "hot-idle", "charging.balance"))
      if (l.path.starts_with("engine.idle_speed")) {
        ++offered;
        EXPECT_LE(l.needed, 1.25 * l.now);
        EXPECT_TRUE(words(l).ends_with(" (mind creep in gear and the idle quality)")) << words(l);
      }
  EXPECT_GT(offered, 0u);
}

// 16 AWG under 30 A behind a fuse of 60 A: thicker comes first, and as thick as its own fuse asks.
TEST(Levers, AThickerWireComesFirstAndItsFuseProtectsIt) {
  const std::string wire =
      "when = [\"running\"]\ngauge = \"16 AWG\"\nlength = \"3 ft\"\nfuse = \"60 A\"\ninsulation = \"125 degC\"\nbundle "
      "= 1\n";
  const std::string change = "[wiring.load.big]\ncurrent = \"30 A\"\n" + wire;
  const auto all = levers_of(change, "hot-idle", "wiring.wire-current", "big");
  ASSERT_FALSE(all.empty());
  EXPECT_EQ(all[0].path, "wiring.load.big.gauge");
  const Build changed = with(hand_car(change), all[0]);
  Judging j(changed, "hot-idle");
  EXPECT_GE(j.one("wiring.wire-current", "hot-idle", "big").margin().value(), 0);
  EXPECT_EQ(j.one("wiring.fuse-wire", {}, "big").verdict.rule, true);
}

}  // namespace
