#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Judging still(const std::string& change) { return Judging(hand_car(change), "hot-idle"); }

TEST(TransmissionRequirements, TheConverterIsNeitherForcedNorLoose) {
  const auto gap = [](const char* read) {
    return still("[transmission.converter]\ngap = \"" + std::string(read) + "\"\n")
        .one("transmission.converter-gap")
        .margin()
        .value();
  };
  EXPECT_LT(gap("0.030 in"), 0);
  EXPECT_GT(gap("0.130 in"), 0);
  EXPECT_LT(gap("0.250 in"), 0);
  // What heat, play and ballooning take up counts where it is more than the maker's least.
  const Judging grown = still("[transmission.converter]\ngap = \"0.130 in\"\nballooning = \"0.15 in\"\n");
  EXPECT_LT(grown.one("transmission.converter-gap").margin().value(), 0);
}

TEST(TransmissionRequirements, StallAboveTheIdle) {
  EXPECT_LT(still("[transmission.converter]\nstall = \"1000 rpm\"\n").one("transmission.stall-speed").margin().value(),
            0);
  EXPECT_GT(still("[transmission.converter]\nstall = \"2200 rpm\"\n").one("transmission.stall-speed").margin().value(),
            0);
}

TEST(TransmissionRequirements, ASwitchOnTheColumnIsOffWithIt) {
  const std::string gates =
      "[transmission.selector]\ngates = [\"P\", \"R\", \"N\", \"D\"]\nshifter_step = \"12 deg\"\nbox_step = \"10 "
      "deg\"\n";
  const std::string known = gates + "linkage = 1\nneutral_window = \"3 deg\"\n";
  EXPECT_EQ(still(known).one("transmission.neutral-switch").verdict.missing,
            (std::vector<std::string>{"transmission.selector.neutral_switch"}));
  // Neither the switch's window nor the linkage has a stand-in; on the box the linkage does not matter to it.
  EXPECT_EQ(still(gates + "neutral_switch = \"column\"\n").one("transmission.neutral-switch").verdict.missing,
            (std::vector<std::string>{"transmission.selector.neutral_window", "transmission.selector.linkage"}));
  EXPECT_EQ(still(gates + "neutral_switch = \"box\"\n").one("transmission.neutral-switch").verdict.missing,
            (std::vector<std::string>{"transmission.selector.neutral_window"}));
  EXPECT_EQ(still(gates).one("transmission.gate").verdict.missing,
            (std::vector<std::string>{"transmission.selector.linkage"}));
  const Judging column = still(known + "neutral_switch = \"column\"\n"),
                box = still(known + "neutral_switch = \"box\"\n");
  EXPECT_NEAR(column.one("transmission.neutral-switch").verdict.predicted.value() / degree, 7, 1e-9);
  EXPECT_LT(column.one("transmission.neutral-switch").margin().value(), 0);
  EXPECT_GT(box.one("transmission.neutral-switch").margin().value(), 0);
  EXPECT_LT(box.one("transmission.gate", {}, "N").margin().value(), 0);
}

TEST(TransmissionRequirements, ASpacerBendsACableWhoseBracketStays) {
  const std::string raised =
      "[mounts]\nintake_raised = \"0.5 in\"\n[transmission.throttle_cable]\nbracket_arm = \"5.5 in\"\n";
  const Judging j = still(raised);
  EXPECT_NEAR(j.one("transmission.cable-line").verdict.predicted.value() / degree, 5.194, 1e-2);  // atan(0.5/5.5)
  EXPECT_GT(still(raised + "bracket_on_intake = true\n").one("transmission.cable-line").margin().value(), 0);
}

// By hand: 0.8/1.1 of the travel, 70 + 90 x 0.727 = 135.5 psi, 420 x 135.5/160 = 355.6 lb-ft.
TEST(TransmissionRequirements, ClutchesHoldByLinePressure) {
  const Judging j(
      hand_car("[transmission.throttle_cable]\nradius = \"0.8 in\"\nradius_wanted = \"1.1 in\"\nthrottle = "
               "\"78 deg\"\npressure_closed = \"70 psi\"\npressure_open = \"160 psi\"\nclutch_holds = \"420 "
               "lb-ft\"\n"),
      "full-throttle");
  EXPECT_NEAR(j.one("transmission.clutch-hold", "full-throttle").verdict.predicted.value() / lb_ft, 355.6, 0.5);
  EXPECT_LT(j.one("transmission.cable-travel").margin().value(), 0);
}

// One throttle, 78 deg for the gearbox and 70 for its linkage.
TEST(TransmissionRequirements, TwoAnglesOfOneThrottleDisagree) {
  const std::string box =
      "[transmission.throttle_cable]\nradius = \"1.1 in\"\nradius_wanted = \"1.1 in\"\nthrottle = \"78 deg\"\n";
  const auto with = [&](const std::string& opens) {
    return still(box + "[throttle]\nopens = \"" + opens +
                 "\"\n[throttle.pedal]\nturns = \"20 deg\"\n[throttle.link.cable]\nby = \"cable\"\nto_engine = "
                 "false\nslack = \"0 in\"\narm = \"3.2 in\"\nstart = \"90 deg\"\ndriven_arm = \"0.87 "
                 "in\"\ndriven_start = \"129 deg\"\n");
  };
  EXPECT_NEAR(with("70 deg").one("transmission.throttle-turn").verdict.predicted.value() / degree, 8, 1e-9);
  EXPECT_LT(with("70 deg").one("transmission.throttle-turn").margin().value(), 0);
  EXPECT_GT(with("77.5 deg").one("transmission.throttle-turn").margin().value(), 0);
  EXPECT_TRUE(still(box).of("transmission.throttle-turn").empty());
}

TEST(TransmissionRequirements, BellByTheDial) {
  const Judging j = still("[transmission.bell]\nbore_run_out = \"0.014 in\"\nface_run_out = \"0.003 in\"\n");
  EXPECT_LT(j.one("transmission.bell-run-out", {}, "bore").margin().value(), 0);
  EXPECT_GT(j.one("transmission.bell-run-out", {}, "face").margin().value(), 0);
}

// A box made for a lever of 1.0 in that starts square draws sin(opening); one that swings alike to both sides draws the
// same end, 0.978 in, with 0.777 in and runs ahead of it on no way but behind: at 39 deg 0.489 against 0.629 in.
TEST(TransmissionRequirements, TheWholeWayCountsAndNotItsEndAlone) {
  std::string rows;
  for (const int deg : {0, 13, 26, 39, 52, 65, 78})
    rows += (rows.empty() ? "[\"" : ", [\"") + std::to_string(deg) + " deg\", \"" +
            std::to_string(std::sin(deg * degree)) + " in\"]";
  const std::string wanted = "[transmission.throttle_cable]\nthrottle = \"78 deg\"\ntravel_wanted = [" + rows + "]\n";
  const Judging right = still(wanted + "radius = \"1.0 in\"\nstart = \"0 deg\"\n");
  EXPECT_GT(right.one("transmission.cable-travel").margin().value(), 0);
  EXPECT_GT(right.one("transmission.cable-travel", {}, "on the way").margin().value(), 0);
  const Judging even = still(wanted + "radius = \"0.777 in\"\n");
  EXPECT_GT(even.one("transmission.cable-travel").margin().value(), 0);
  auto& on_the_way = even.one("transmission.cable-travel", {}, "on the way");
  EXPECT_LT(on_the_way.margin().value(), 0);
  EXPECT_NEAR(*on_the_way.verdict.predicted / inch, 0.489, 0.06);
}

}  // namespace
