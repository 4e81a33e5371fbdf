#include "systems/judged.hpp"
#include "systems/throttle/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }
double predicted(const Judging& j, std::string_view id, std::string_view place = {}) {
  return j.one(id, {}, place).verdict.predicted.value();
}
const std::string still_cable = "slack = \"0 in\"\nto_engine = false\n";
const std::string both = throttle_spring("inner", "throttle", "6 lbf") + throttle_spring("outer", "throttle", "4 lbf");

TEST(ThrottleRequirements, StopsAreReachedByThePedal) {
  const Judging j = still(throttle_cable());
  EXPECT_NEAR(predicted(j, "throttle.closed"), 0, 1e-9);
  EXPECT_GT(j.one("throttle.full-open").margin().value(), 0);
  EXPECT_NEAR(predicted(j, "throttle.over-travel"), 0, 1e-6);
  // A tenth of an inch of slack: 1.0945 - 0.1 of 1.0950 in; a short cable holds the throttle open.
  const Judging slack = still(throttle_cable("to_engine = false\nslack = \"0.1 in\"\n"));
  EXPECT_LT(slack.one("throttle.full-open").margin().value(), 0);
  EXPECT_GT(slack.one("throttle.closed").margin().value(), 0);
  EXPECT_LT(still(throttle_cable("to_engine = false\nslack = \"-0.05 in\"\n")).one("throttle.closed").margin().value(),
            0);
  // A pedal that turns on to 24 deg pulls on at the open stop.
  EXPECT_LT(still(throttle_cable(still_cable, {.turns = "24 deg"})).one("throttle.over-travel").margin().value(), 0);
}

// A sheath held by the body: 0.25 in of roll are 0.25 in of pull less the slack; asin by hand, from 129 deg on.
TEST(ThrottleRequirements, RollOpensWhatComesFromTheBody) {
  const Judging j = still(throttle_cable("to_engine = true\nslack = \"0.05 in\"\nroll = \"0.25 in\"\n"));
  const double open = 129 * degree - std::acos(std::cos(129 * degree) + 0.20 / 0.87);
  EXPECT_NEAR(predicted(j, "throttle.engine-roll") / degree, -open / degree, 1e-3);
  EXPECT_LT(j.one("throttle.engine-roll").margin().value(), 0);
  EXPECT_TRUE(still(throttle_cable()).of("throttle.engine-roll").empty());
  EXPECT_GT(still(throttle_cable("to_engine = true\nslack = \"0.05 in\"\nroll = \"0.04 in\"\n"))
                .one("throttle.engine-roll")
                .margin()
                .value(),
            0);
}

TEST(ThrottleRequirements, ASpacerUnderTheIntakePullsACableThatRises) {
  const std::string rising = "to_engine = true\nslack = \"0.05 in\"\nroll = \"0 in\"\nslope = \"30 deg\"\n";
  EXPECT_GT(still(throttle_cable(rising)).one("throttle.closed").margin().value(), 0);
  // 1 in x sin 30 deg = 0.5 in of pull.
  EXPECT_LT(
      still("[mounts]\nintake_raised = \"1 in\"\n" + throttle_cable(rising)).one("throttle.closed").margin().value(),
      0);
}

TEST(ThrottleRequirements, ALeverThatSwingsToItsDeadCentre) {
  EXPECT_GT(still(throttle_cable()).one("throttle.over-centre").margin().value(), 0);
  // From 95 deg, 78 deg on: 17 deg from standing in line with the cable.
  const Judging j = still(throttle_cable(still_cable, {.arm = "3.8 in", .driven_start = "95 deg"}));
  EXPECT_LT(j.one("throttle.over-centre").margin().value(), 0);
}

// A pedal that hardly turns, a lever 60 deg from standing in line: the roll of the far end pulls it on towards it. By
// hand acos(cos 60 deg + (3.2 sin 3 deg + roll)/0.87).
TEST(ThrottleRequirements, RollCountsAtTheDeadCentre) {
  const auto near = [](const std::string& roll) {
    return predicted(still(throttle_cable("slack = \"0 in\"\nto_engine = true\nroll = \"" + roll + "\"\n",
                                          {.turns = "3 deg", .driven_start = "60 deg"})),
                     "throttle.over-centre") /
           degree;
  };
  const auto by_hand = [](double roll_in) {
    return std::acos(std::cos(60 * degree) + (3.2 * std::sin(3 * degree) + roll_in) / 0.87) / degree;
  };
  EXPECT_NEAR(near("0 in"), by_hand(0), 0.01);
  EXPECT_NEAR(near("0.1 in"), by_hand(0.1), 0.01);
}

// An engine lifted further than the cable's lever swings: said in words, and the gearbox is not told a figure.
TEST(ThrottleRequirements, OutOfReachIsSaid) {
  const Judging j = still(
      "[mounts]\nintake_raised = \"2 in\"\n[transmission.throttle_cable]\nradius = \"1.1 in\"\nradius_wanted = \"1.1 "
      "in\"\nthrottle = \"78 deg\"\n" +
      throttle_cable("slack = \"0 in\"\nto_engine = true\nroll = \"0 in\"\nslope = \"90 deg\"\n"));
  for (const char* id :
       {"throttle.closed", "throttle.full-open", "throttle.over-centre", "transmission.cable-travel"}) {
    EXPECT_FALSE(j.one(id).verdict.predicted) << id;
    EXPECT_NE(j.one(id).verdict.reason.find("reach"), std::string::npos) << id;
  }
}

// Two springs, either enough on the closed stop; wide open one hangs a quarter inch past the shaft and pulls it open.
TEST(ThrottleRequirements, ASpringPastItsCentreHoldsTheThrottleOpen) {
  const std::string inner = throttle_spring("inner", "throttle", "6 lbf");
  const Judging j = still(throttle_cable() + inner + throttle_spring("outer", "throttle", "4 lbf", "-0.25 in"));
  EXPECT_EQ(j.one("throttle.springs").verdict.rule, false);
  EXPECT_NEAR(predicted(j, "throttle.return", "inner") / lb_ft * 12, -1, 1e-6);  // 4 lbf x -0.25 in
  EXPECT_NEAR(predicted(j, "throttle.return", "outer") / lb_ft * 12, 6, 1e-6);
  EXPECT_LT(j.one("throttle.return", {}, "inner").margin().value(), 0);
  const Judging untold = still(throttle_cable() + inner +
                               "[throttle.spring.other]\non = \"throttle\"\nforce = \"4 "
                               "lbf\"\nforce_open = \"4 lbf\"\narm = \"1 in\"\n");
  EXPECT_EQ(untold.one("throttle.return").verdict.missing,
            (std::vector<std::string>{"throttle.spring.other.arm_open"}));
}

TEST(ThrottleRequirements, TwoSpringsEitherEnoughAlone) {
  const Judging none = still(throttle_cable());
  EXPECT_EQ(none.one("throttle.springs").verdict.missing.size(), 1u);
  const Judging j = still(throttle_cable() + both);
  EXPECT_EQ(j.one("throttle.springs").verdict.rule, true);
  EXPECT_NEAR(predicted(j, "throttle.return", "inner") / lb_ft * 12, 4, 1e-6);  // the outer one alone: 4 lbf x 1 in
  EXPECT_NEAR(predicted(j, "throttle.return", "outer") / lb_ft * 12, 6, 1e-6);
  EXPECT_GT(j.one("throttle.return", {}, "inner").margin().value(), 0);
  const Judging weak = still(throttle_cable(still_cable, {.friction = "2.5 lb-in"}) + both);
  EXPECT_LT(weak.one("throttle.return", {}, "inner").margin().value(), 0);
}

// A cable does not push: the pedal's spring leaves the throttle where it is. Through rods it counts by the levers.
TEST(ThrottleRequirements, ASpringAtThePedalClosesThroughRodsAlone) {
  const std::string mixed = throttle_spring("own", "throttle", "6 lbf") + throttle_spring("pedal", "pedal", "12 lbf");
  const Judging cable = still(throttle_cable() + mixed);
  EXPECT_EQ(cable.one("throttle.springs").verdict.rule, false);
  EXPECT_LT(cable.one("throttle.return", {}, "own").margin().value(), 0);
  // A parallelogram of one ratio: 12 lbf x 1 in at the throttle too.
  const Judging rods = still(
      "[throttle]\nopens = \"40 deg\"\nfriction = \"1.5 lb-in\"\n[throttle.pedal]\nturns = \"40 deg\"\n[throttle."
      "link.rod]\nby = \"rod\"\nto_engine = false\narm = \"2 in\"\nstart = \"70 deg\"\ndriven_arm = \"2 "
      "in\"\ndriven_start = \"110 deg\"\napart = \"10 in\"\n" +
      mixed);
  EXPECT_EQ(rods.one("throttle.springs").verdict.rule, true);
  EXPECT_NEAR(predicted(rods, "throttle.return", "own") / lb_ft * 12, 12, 1e-4);
}

// (6 + 4 + 1.5 lb-in) x 3.2/(0.87 sin 129 deg)/8 in = 6.8 lbf.
TEST(ThrottleRequirements, PedalForceByTheLevers) {
  const Judging j = still(throttle_cable() + both);
  EXPECT_NEAR(predicted(j, "throttle.pedal-force", "off its stop") / lbf,
              11.5 * 3.2 / (0.87 * std::sin(129 * degree)) / 8, 1e-2);
}

// Slack is taken up first: the throttle's lever still stands at its closed stop when the foot begins to pull it. Both
// levers by hand: the pedal's has turned by what pays out the slack.
TEST(ThrottleRequirements, SlackDoesNotMoveTheClosedStop) {
  const Judging taut = still(throttle_cable() + both),
                slack = still(throttle_cable("slack = \"1/32 in\"\nto_engine = false\n") + both);
  const double none = predicted(taut, "throttle.pedal-force", "off its stop"),
               some = predicted(slack, "throttle.pedal-force", "off its stop");
  EXPECT_NEAR(some / none, 1, 0.01);
}

// A pedal that opens the throttle half way pulls the gearbox's cable half way too.
TEST(ThrottleRequirements, TheGearboxCableGoesAsFarAsThePedalOpens) {
  const std::string box =
      "[transmission.throttle_cable]\nradius = \"1.1 in\"\nradius_wanted = \"1.1 in\"\nthrottle = "
      "\"78 deg\"\n";
  EXPECT_GT(still(box).one("transmission.cable-travel").margin().value(), 0);
  const Judging j = still(box + throttle_cable("to_engine = false\nslack = \"0.3 in\"\n"));
  EXPECT_LT(j.one("transmission.cable-travel").margin().value(), 0);
}

}  // namespace
