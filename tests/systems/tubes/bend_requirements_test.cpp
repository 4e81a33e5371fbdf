#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const std::string stainless =
    "[tubes.tube.a]\nmaterial = \"annealed stainless\"\noutside = \"0.375 in\"\ncarries = \"oil\"\nwall = \"0.035 in\"\n";

// 0.75/0.375 = 2 diameters; AC 43.13-1B asks 1 5/16 in, 3.5 diameters, of steel (from memory).
TEST(TubesBends, RadiusByTheTable) {
  const std::string steel = "[tubes.tube.a]\nmaterial = \"steel\"\noutside = \"0.375 in\"\ncarries = \"oil\"\n";
  const Judging tight = still(steel + "bend_radius = \"0.75 in\"\n");
  EXPECT_NEAR(tight.one("tubes.bend").verdict.predicted.value(), 2, 1e-9);
  EXPECT_NEAR(tight.one("tubes.bend").verdict.low.value(), 3.5, 1e-9);
  EXPECT_LT(tight.one("tubes.bend").margin().value(), 0);
  EXPECT_GT(still(steel + "bend_radius = \"1.375 in\"\n").one("tubes.bend").margin().value(), 0);
}

// The table says nothing of stainless: three diameters, common practice.
TEST(TubesBends, RadiusOfWhatTheTableDoesNotKnow) {
  EXPECT_NEAR(still(stainless + "bend_radius = \"0.75 in\"\n").one("tubes.bend").verdict.low.value(), 3, 1e-9);
  EXPECT_GT(still(stainless + "bend_radius = \"1.1875 in\"\n").one("tubes.bend").margin().value(), 0);
}

// 1/(1 + 1/(2 x 3)) = 0.857 of the wall at three diameters, 0.75 at one and a half.
TEST(TubesBends, WallLeft) {
  EXPECT_NEAR(still(stainless + "bend_radius = \"1.125 in\"\n").one("tubes.thinning").verdict.predicted.value(),
              6.0 / 7, 1e-9);
  EXPECT_LT(still(stainless + "bend_radius = \"0.5625 in\"\n").one("tubes.thinning").margin().value(), 0);
}

// 6 - 2 x 1.111 = 3.778 in between the bends of the line, where the die grips 1 in; of 3 in too little is left.
TEST(TubesBends, StraightsForTheDieAndTheEnds) {
  const Judging j = still(bent_line());
  EXPECT_EQ(j.of("tubes.straight").size(), 3u);
  EXPECT_NEAR(j.one("tubes.straight", {}, "a q to r").verdict.predicted.value() / inch, 6 - 20.0 / 9, 1e-6);
  EXPECT_NEAR(j.one("tubes.straight", {}, "a q to r").verdict.low.value() / inch, 1, 1e-9);
  EXPECT_GT(j.one("tubes.straight", {}, "a q to r").margin().value(), 0);
  EXPECT_LT(still(bent_line("", 3)).one("tubes.straight", {}, "a q to r").margin().value(), 0);
  // A tube of 1.5 in has no room for two ends of 1 in.
  const Judging stub =
      still("[tubes.tube.a]\noutside = \"0.25 in\"\n" + point("a", "p", 0, 0, 0) + point("a", "q", 1.5, 0, 0));
  EXPECT_LT(stub.one("tubes.straight", {}, "a p to q").margin().value(), 0);
}

TEST(TubesBends, APointWithoutItsHeightIsTold) {
  std::string line = bent_line();
  line.resize(line.rfind("z = "));
  EXPECT_EQ(still(line).one("tubes.straight", {}, "a").verdict.missing,
            (std::vector<std::string>{"tubes.tube.a.point.s.z"}));
}

// By hand: 2 x 0.035/(1 + 0.25/2)/0.25 x 45 000 = 11 200 psi, 7.47 times 1500.
TEST(TubesBends, BurstOverWorkingPressure) {
  const std::string figures = "tensile = \"45 ksi\"\npressure = \"1500 psi\"\ncarries = \"brake fluid\"\n";
  const Judging j = still(bent_line(figures));
  EXPECT_NEAR(j.one("tubes.brake-burst").verdict.predicted.value(), 7.467, 0.01);
  EXPECT_TRUE(j.of("tubes.fuel-burst").empty());
  EXPECT_EQ(j.one("tubes.brake-burst").requirement->caution, Caution::braking_loss);
  EXPECT_LT(still(bent_line("tensile = \"45 ksi\"\npressure = \"3000 psi\"\ncarries = \"fuel\"\n"))
                .one("tubes.fuel-burst")
                .margin()
                .value(),
            0);
  EXPECT_EQ(still(bent_line("carries = \"brake fluid\"\npressure = \"1500 psi\"\n")).one("tubes.brake-burst").verdict.missing,
            (std::vector<std::string>{"tubes.tube.a.tensile"}));
}

// A brake line whose pressure nobody told is asked for it, as is any whose strength is told.
TEST(TubesBends, PressureIsAskedFor) {
  const std::vector<std::string> pressure = {"tubes.tube.a.pressure"};
  EXPECT_EQ(still(bent_line("tensile = \"45 ksi\"\ncarries = \"fuel\"\n")).one("tubes.fuel-burst").verdict.missing,
            pressure);
  EXPECT_EQ(still(bent_line("carries = \"brake fluid\"\n")).one("tubes.brake-burst").verdict.missing,
            (std::vector<std::string>{"tubes.tube.a.tensile", "tubes.tube.a.pressure"}));
  EXPECT_TRUE(still(bent_line("carries = \"fuel\"\n")).of("tubes.fuel-burst").empty());
}

TEST(TubesBends, CautionGoesByWhatRunsInIt) {
  const Judging brakes = still(bent_line("clips = 1\ncarries = \"brake fluid\"\n"));
  const Judging fuel = still(bent_line("clips = 1\ncarries = \"fuel vapour\"\n"));
  for (const std::string rule : {"bend", "thinning", "clips"}) {
    EXPECT_EQ(brakes.one("tubes.brake-" + rule).requirement->caution, Caution::braking_loss);
    EXPECT_EQ(fuel.one("tubes.fuel-" + rule).requirement->caution, Caution::fuel_fire);
    EXPECT_TRUE(fuel.of("tubes." + rule).empty());
    EXPECT_TRUE(fuel.of("tubes.brake-" + rule).empty());
  }
}

TEST(TubesBends, AMaterialNobodyToldIsAskedFor) {
  const std::string bare = "[tubes.tube.a]\noutside = \"0.25 in\"\ncarries = \"oil\"\nbend_radius = \"1 in\"\n"
                           "unsupported = \"9 in\"\n";
  for (auto id : {"tubes.bend", "tubes.clips"})
    EXPECT_EQ(still(bare).one(id).verdict.missing, (std::vector<std::string>{"tubes.tube.a.material"})) << id;
}

// 23.05 in of line: one clip leaves 11.5 in, none 23 in where 16 in of 1/4 in steel may hang free (MIL-H-8891A).
TEST(TubesBends, ClipsNearEnough) {
  const Judging one = still(bent_line("clips = 1\n"));
  EXPECT_NEAR(one.one("tubes.clips").verdict.high.value() / inch, 16, 1e-9);
  EXPECT_GT(one.one("tubes.clips").margin().value(), 0);
  EXPECT_LT(still(bent_line("clips = 0\n")).one("tubes.clips").margin().value(), 0);
  EXPECT_LT(
      still("[tubes.tube.a]\nmaterial = \"steel\"\ncarries = \"oil\"\noutside = \"0.25 in\"\nunsupported = \"20 in\"\n").one("tubes.clips").margin().value(), 0);
  EXPECT_EQ(still("[tubes.tube.a]\nmaterial = \"steel\"\ncarries = \"oil\"\noutside = \"0.25 in\"\nclips = 2\n").one("tubes.clips").verdict.missing,
            (std::vector<std::string>{"tubes.tube.a.point"}));
}

}  // namespace
