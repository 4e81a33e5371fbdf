#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// The hand car: 3700 lb, 0.54 of it in front, wheelbase 110 in: 1998 lb on the front axle, 1702 lb on the rear.
Judging still(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }
std::string part(const std::string& name, const std::string& moved, int pounds, int behind,
                 const std::string& more = "") {
  return "[vehicle.part." + name + "]\nmoved = \"" + moved + "\"\nmass = \"" + std::to_string(pounds) +
         " lb\"\nbehind = \"" + std::to_string(behind) + " in\"\n" + more;
}
const std::string ratings =
    "[mass.front]\nrating = \"2100 lb\"\nwheel_rate = \"250 lbf/in\"\n[mass.rear]\nrating = "
    "\"2000 lb\"\nwheel_rate = \"150 lbf/in\"\n";

// A battery of 50 lb from 8 in ahead of the front axle to 132 in behind it: 50 x 140/110 = 63.6 lb go to the rear.
TEST(MassRequirements, ABatteryMovedToTheBoot) {
  const Judging before = still(ratings),
                after = still(ratings + part("battery_out", "out", 50, -8) + part("battery_in", "in", 50, 132));
  EXPECT_NEAR(before.one("mass.axle-load", {}, "front").verdict.predicted.value() / pound, 1998, 1e-6);
  EXPECT_NEAR(after.one("mass.axle-load", {}, "front").verdict.predicted.value() / pound, 1998 - 63.636, 1e-2);
  EXPECT_NEAR(after.one("mass.axle-load", {}, "rear").verdict.predicted.value() / pound, 1702 + 63.636, 1e-2);
  EXPECT_NEAR(after.one("mass.ride-height", {}, "rear").verdict.predicted.value() / inch, 63.636 / 300, 1e-4);
  EXPECT_NEAR(after.one("mass.ride-height", {}, "front").verdict.predicted.value() / inch, -63.636 / 500, 1e-4);
  EXPECT_GT(after.one("mass.ride-height", {}, "rear").margin().value(), 0);
}

// A heavy engine on the front axle line: 200 lb more on a front axle good for 102.
TEST(MassRequirements, AnAxleBeyondItsRating) {
  const Judging j = still(ratings + part("engine", "in", 200, 0));
  EXPECT_NEAR(j.one("mass.axle-load", {}, "front").verdict.predicted.value() / pound, 2198, 1e-6);
  EXPECT_LT(j.one("mass.axle-load", {}, "front").margin().value(), 0);
  EXPECT_GT(j.one("mass.axle-load", {}, "rear").margin().value(), 0);
  EXPECT_GT(still(ratings).one("mass.axle-load", {}, "front").margin().value(), 0);
  // An axle that is spoken of is asked for its rating, and the other with it.
  const Judging untold = still("[mass.front]\nwheel_rate = \"250 lbf/in\"\n");
  EXPECT_EQ(untold.one("mass.axle-load", {}, "front").verdict.missing, (std::vector<std::string>{"mass.front.rating"}));
  EXPECT_EQ(untold.one("mass.axle-load", {}, "rear").verdict.missing, (std::vector<std::string>{"mass.rear.rating"}));
  EXPECT_TRUE(still("").of("mass.axle-load").empty());
  // 200 lb/(2 x 250 lbf/in) = 0.4 in; softer springs sink further than half an inch.
  EXPECT_NEAR(j.one("mass.ride-height", {}, "front").verdict.predicted.value() / inch, 0.4, 1e-4);
  EXPECT_LT(still("[mass.front]\nwheel_rate = \"150 lbf/in\"\n" + part("engine", "in", 200, 0))
                .one("mass.ride-height", {}, "front")
                .margin()
                .value(),
            0);
}

// Laden the rear axle carries 4500 lb x 0.54, more than as driven; the part counts there as well.
TEST(MassRequirements, LadenCountsWhereItIsMore) {
  const Judging j = still(ratings + "[vehicle]\nladen_weight = \"4500 lb\"\nladen_front_share = 0.46\n" +
                          part("box", "in", 100, 110));
  EXPECT_NEAR(j.one("mass.axle-load", {}, "rear").verdict.predicted.value() / pound, 4500 * 0.54 + 100, 1e-2);
}

// Brakes and road see the same weight: 370 lb more over the centre of mass are a tenth more weight on either axle.
TEST(MassRequirements, BrakesAndRoadSeeThePartsMoved) {
  const std::string once = "[vehicle.part.all_over]\nmass = \"370 lb\"\nbehind = \"50.6 in\"\nheight = \"21 in\"\n";
  Drive plain(hand_car(), "cruise"), heavy(hand_car(once), "cruise");
  EXPECT_NEAR(heavy.last("vehicle.mass"), 1.1 * plain.last("vehicle.mass"), 1e-6);
  EXPECT_NEAR(heavy.last("vehicle.front_share"), plain.last("vehicle.front_share"), 1e-9);
  const double rolling = 0.1 * 3700 * pound * gravity * 0.013;  // what 370 lb more roll
  EXPECT_NEAR(heavy.last("road.force") - plain.last("road.force"), rolling, 0.02 * rolling);
  const auto force = [](const Build& b) {
    return Judging(b, "panic-stop").one("brakes.pedal-force", "panic-stop").verdict.predicted.value();
  };
  EXPECT_GT(force(hand_car(once)), force(hand_car()));
}

// Four wheels: 1020 + 980 before, 840 + 860 behind: 1860 of 3700 lb on the left; a 60 lb battery 20 in to the right of
// the middle, track 60 in, stands on the left with 1/2 - 20/60 of it.
TEST(MassRequirements, SidesByTheWheelsWeighed) {
  const std::string four =
      "[vehicle.corner]\nfront_left = \"1020 lb\"\nfront_right = \"980 lb\"\nrear_left = \"840 lb\"\nrear_right = "
      "\"860 "
      "lb\"\n";
  const auto with = [&](const std::string& more) {
    Build b = hand_car("[mass.front]\nrating = \"2100 lb\"\n" + more);
    auto& v = std::get<vehicle::Input>(b.inputs);
    v.weight.reset(), v.front_share.reset();
    v.corner = {Mass{1020 * pound}, Mass{980 * pound}, Mass{840 * pound}, Mass{860 * pound}};
    return Judging(b, "hot-idle");
  };
  const Judging j = with("");
  EXPECT_NEAR(j.one("mass.sides").verdict.predicted.value(), 1860.0 / 3700 - 0.5, 1e-9);
  EXPECT_NEAR(j.one("mass.axle-load", {}, "front").verdict.predicted.value() / pound, 2000, 1e-6);
  const Judging k = with("[vehicle]\ntrack = \"60 in\"\n" + part("battery", "in", 60, 0, "side = \"20 in\"\n"));
  EXPECT_NEAR(k.one("mass.sides").verdict.predicted.value(), 0.5 - 1870.0 / 3760, 1e-6);
  EXPECT_TRUE(still(ratings).of("mass.sides").empty());
  // The weight told beside the wheels it would come from is a fault.
  EXPECT_TRUE(Car(faulty_car(four)).faults().any_fault());
}

}  // namespace
