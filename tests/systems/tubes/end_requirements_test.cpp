#include "proof/proof.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }

TEST(TubesRequirements, OneKindOfFlareASeat) {
  const auto seat = [](const char* kind) {
    return still("[tubes.tube.a.end]\nflare = \"45 deg double\"\nseat = \"" + std::string(kind) + "\"\n")
        .one("tubes.seat", {}, "a end")
        .verdict.rule;
  };
  EXPECT_EQ(seat("37 deg"), false);
  EXPECT_EQ(seat("45 deg double"), true);
  EXPECT_EQ(still("[tubes.tube.a.end]\nflare = \"bubble\"\n").one("tubes.seat", {}, "a end").verdict.missing,
            (std::vector<std::string>{"tubes.tube.a.end.seat"}));
}

TEST(TubesRequirements, ANutOfAnotherKindShearsTheFlare) {
  const std::string wrong =
      "[tubes.tube.a]\nwall = \"0.028 in\"\nyield = \"40 ksi\"\n[tubes.tube.a.end]\nflare = \"45 deg double\"\nnut = "
      "\"bubble\"\nnut_torque = \"15 lb-ft\"\nthread = \"0.375 in\"\nring_radius = \"0.18 in\"\n";
  const Judging j = still(wrong);
  EXPECT_EQ(j.one("tubes.nut", {}, "a end").verdict.rule, false);
  EXPECT_LT(j.one("tubes.flare-shear", {}, "a end").margin().value(), 0);
  EXPECT_TRUE(still("[tubes.tube.a.end]\nflare = \"bubble\"\nnut = \"bubble\"\n").of("tubes.flare-shear").empty());
}

TEST(TubesRequirements, StretchOfTheFlare) {
  const Judging j = still(
      "[tubes.tube.a]\nmaterial = \"hard stainless\"\noutside = \"0.1875 in\"\n"
      "[tubes.tube.a.end]\nflared_to = \"0.295 in\"\nattempts = 2\n");
  EXPECT_NEAR(j.one("tubes.flare-strain").verdict.predicted.value(), 0.453, 0.001);
  EXPECT_LT(j.one("tubes.flare-strain").margin().value(), 0);
  EXPECT_EQ(j.one("tubes.flared-once").verdict.rule, false);
  EXPECT_NE(j.one("tubes.flare-strain").verdict.because.at(0).what.find("usual of its material"), std::string::npos);
}

TEST(TubesRequirements, WhatAFlareIsJudgedByIsAskedFor) {
  const std::string tube = "[tubes.tube.a]\noutside = \"0.1875 in\"\n", end = "[tubes.tube.a.end]\n";
  const auto lacks = [&](const std::string& text, const char* id) { return still(text).one(id).verdict.missing; };
  const Judging unknown = still(tube + end + "flared_to = \"0.255 in\"\n");
  EXPECT_EQ(unknown.one("tubes.flare-strain").verdict.missing, (std::vector<std::string>{"tubes.tube.a.material"}));
  EXPECT_EQ(unknown.one("tubes.flared-once").verdict.missing, (std::vector<std::string>{"tubes.tube.a.end.attempts"}));
  EXPECT_EQ(lacks(tube + "material = \"steel\"\n" + end + "flare = \"37 deg\"\n", "tubes.flare-strain"),
            (std::vector<std::string>{"tubes.tube.a.end.flared_to"}));
  EXPECT_EQ(lacks(end + "flare = \"37 deg\"\nseat = \"37 deg\"\n", "tubes.nut"),
            (std::vector<std::string>{"tubes.tube.a.end.nut"}));
  EXPECT_EQ(lacks(end + "nut = \"37 deg\"\n", "tubes.nut"), (std::vector<std::string>{"tubes.tube.a.end.flare"}));
  EXPECT_EQ(still(end + "attempts = 1\n").one("tubes.flared-once").verdict.rule, true);
}

// Without a data sheet the figure of the material is doubted by a fifth.
TEST(TubesRequirements, AUsualStretchCarriesItsDoubt) {
  const Build b = hand_car(
      "[tubes.tube.a]\nmaterial = \"annealed stainless\"\noutside = { value = \"0.1875 in\", plus_minus = \"0.001 "
      "in\" }\n[tubes.tube.a.end]\nflared_to = { value = \"0.255 in\", plus_minus = \"0.001 in\" }\n");
  const auto set = duties_of(b, from_disk());
  bool seen = false;
  for (auto& f : prove(b, *set, {.duty = "hot-idle"}).findings) {
    if (!f.id.starts_with("tubes.flare-strain[")) continue;
    seen = true;
    EXPECT_NEAR(f.half_width, 0.8 * 0.45 * 0.2, 0.002);  // beside the little of both diameters
    EXPECT_EQ(f.state, State::tight);                     // 31 % of 36 %
  }
  EXPECT_TRUE(seen);
}

}  // namespace
