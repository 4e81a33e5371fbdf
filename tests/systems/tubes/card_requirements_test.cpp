#include <algorithm>
#include <numbers>

#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

/// A key may stand in one table only: the point's own.
std::string with_setting(const char* angle) {
  std::string line = bent_line();
  const std::string at = "[tubes.tube.a.point.q]\n";
  return line.insert(line.find(at) + at.size(), std::string("setting = \"") + angle + "\"\n");
}

// Of 100 deg 90 are kept: set to 97 deg the bend comes to 87.3.
TEST(TubesCard, AnOldSettingIsFound) {
  EXPECT_NEAR(still(with_setting("100 deg")).one("tubes.card-angle", {}, "a q").verdict.predicted.value(), 0, 1e-9);
  const Judging old = still(with_setting("97 deg"));
  EXPECT_NEAR(old.one("tubes.card-angle", {}, "a q").verdict.predicted.value() * 57.29578, 2.7, 1e-6);
  EXPECT_LT(old.one("tubes.card-angle", {}, "a q").margin().value(), 0);
  EXPECT_TRUE(still(bent_line()).of("tubes.card-angle").empty());
}

// Up 10 in, forward 10 in, then to the right: from the first bend's plane to the second's a quarter turn. The mirror
// image, to the left, is as long and bent alike.
TEST(TubesCard, AMirroredTubeIsFound) {
  const auto car = [](const char* side, const char* turn) {
    std::string text =
        "[tubes.tube.a]\nmaterial = \"steel\"\noutside = \"0.25 in\"\nwall = \"0.035 in\"\ndie = \"d\"\n"
        "[tubes.die.d]\nradius = \"1 in\"\nstraight = \"0.5 in\"\n";
    const auto point = [&](const char* name, const char* x, const char* y, const char* z) {
      text +=
          std::string("[tubes.tube.a.point.") + name + "]\nx = \"" + x + "\"\ny = \"" + y + "\"\nz = \"" + z + "\"\n";
    };
    point("p", "0 in", "0 in", "0 in");
    point("q", "0 in", "0 in", "10 in");
    point("r", "-10 in", "0 in", "10 in");
    text += std::string("turn = \"") + turn + "\"\n";
    point("s", "-10 in", side, "10 in");
    return text;
  };
  const double right = still(car("10 in", "90 deg")).one("tubes.card-turn", {}, "a r").verdict.predicted.value();
  const double wrong = still(car("-10 in", "90 deg")).one("tubes.card-turn", {}, "a r").verdict.predicted.value();
  EXPECT_NEAR(std::min(right, wrong) * 180 / std::numbers::pi, 0, 1e-6);
  EXPECT_NEAR(std::max(right, wrong) * 180 / std::numbers::pi, 180, 1e-6);
}

TEST(TubesCard, ACutOfAnotherShapeIsFound) {
  EXPECT_EQ(still(bent_line("cut_length = \"23.05 in\"\n")).one("tubes.cut-length").verdict.rule, true);
  EXPECT_EQ(still(bent_line("cut_length = \"22.8 in\"\n")).one("tubes.cut-length").verdict.rule, false);
}

// 40 and 31 in with a cut of 0.1 in between them: 71.1 of 72 in; 33 in more do not go.
TEST(TubesCard, SticksHoldWhatIsCutFromThem) {
  const auto car = [](const char* second, const char* metal = "steel") {
    return "[tubes]\nkerf = \"0.1 in\"\n[tubes.stock.s]\noutside = \"0.25 in\"\nwall = \"0.035 in\"\nlength = \"6 "
           "ft\"\n"
           "material = \"" +
           std::string(metal) +
           "\"\n"
           "[tubes.tube.a]\nmaterial = \"steel\"\ncut_length = \"40 in\"\nstick = \"s 1\"\n"
           "[tubes.tube.b]\nmaterial = \"steel\"\ncut_length = \"" +
           second + "\"\nstick = \"s 1\"\n";
  };
  EXPECT_NEAR(still(car("31 in")).one("tubes.sticks", {}, "s 1").verdict.predicted.value() / inch, 0.9, 1e-6);
  EXPECT_LT(still(car("33 in")).one("tubes.sticks").margin().value(), 0);
  EXPECT_FALSE(still(car("31 in", "aluminium")).one("tubes.sticks").verdict.predicted);
  EXPECT_EQ(still("[tubes.tube.a]\nmaterial = \"steel\"\ncut_length = \"4 in\"\nstick = \"s 1\"\n")
                .one("tubes.sticks")
                .verdict.missing,
            (std::vector<std::string>{"tubes.stock.s"}));
}

}  // namespace
