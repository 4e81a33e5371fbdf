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
}

}  // namespace
