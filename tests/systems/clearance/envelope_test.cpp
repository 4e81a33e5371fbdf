#include "systems/clearance/envelopes.hpp"

#include <numbers>

using namespace sw;
using namespace sw::rig;

namespace {

constexpr double deg = std::numbers::pi / 180;

clearance::EnvelopeModel envelope(const std::string& change) {
  return resolved<clearance::System>(hand_car(change)).model.envelopes.at(0);
}
double least_in(const std::string& change, const clearance::EngineMoved& moved = {}) {
  const auto e = envelope(change);
  EXPECT_TRUE(e.missing.empty()) << e.missing.front();
  const auto d = e.least(moved);
  EXPECT_LE(d.floor_m, d.least_m);
  EXPECT_GE(d.floor_m, d.least_m - 0.02 * inch);
  return d.least_m / inch;
}

// Straight up: 6 in below, bump 4, half an inch of each ball.
TEST(ClearanceEnvelope, AnAxleComesUpByItsBump) {
  EXPECT_NEAR(least_in(pair_text({"tube", "the chassis", 0, 0, 0}, {"axle", "the axle", 0, 0, -6, "wheel"}) + wheel), 1,
              1e-6);
  EXPECT_NEAR(least_in(pair_text({"tube", "the chassis", 0, 0, 0}, {"axle", "the axle", 0, 0, 6, "wheel"}) + wheel), 2,
              1e-6);  // hanging, 3 in down
}

// A level trailing arm of 20 in: at 4 in of bump it has turned by asin 0.2 and come forward by 20 (1 - cos).
TEST(ClearanceEnvelope, OnAPivotItGoesRoundAnArc) {
  const double forward = 20 * (1 - std::cos(std::asin(0.2)));
  EXPECT_NEAR(least_in(pair_text({"tube", "the chassis", 20, 0, 10}, {"axle", "the axle", 20, 0, 0, "wheel"}) + swings),
              std::hypot(forward, 6) - 1, 1e-5);
}

// 10 in ahead of an upright pin at y = 5: at 30 deg of left lock it is at y = 0, and the tube 3 in to the left of that.
TEST(ClearanceEnvelope, LeftLockBringsTheFrontOfAWheelToTheLeft) {
  const double x = -10 * std::cos(30 * deg);
  EXPECT_NEAR(least_in(pair_text({"tube", "the chassis", x, -3, 0}, {"rim", "the steered wheel", -10, 5, 0, "wheel"}) +
                       steered),
              2, 1e-5);
  // And at 25 deg of right lock and 4 in of bump to where its front is then.
  EXPECT_NEAR(least_in(pair_text({"tube", "the chassis", -10 * std::cos(25 * deg), 5 + 10 * std::sin(25 * deg), 6},
                                 {"rim", "the steered wheel", -10, 5, 0, "wheel"}) +
                       steered),
              1, 1e-5);
}

// 12 in above the axis: 3 deg to the left bring it 12 sin 3 deg over, 1 deg to the right 12 sin 1 deg.
TEST(ClearanceEnvelope, TheEngineLeans) {
  const auto beside = [&](double side, double lean) {
    return least_in(
        pair_text({"tube", "the chassis", 10, side * 3, 12 * std::cos(lean)}, {"cover", "the engine", 10, 0, 12}) +
        rolls);
  };
  EXPECT_NEAR(beside(-1, 3 * deg), 2 - 12 * std::sin(3 * deg), 1e-5);
  EXPECT_NEAR(beside(1, 1 * deg), 2 - 12 * std::sin(1 * deg), 1e-5);
}

// Sunk by half an inch at the front mounts, nose down about the gearbox mount 40 in behind: there it has not moved.
TEST(ClearanceEnvelope, TheEngineSinksAndPitchesInItsMounts) {
  const clearance::EngineMoved sunk{.front_rise_m = -0.5 * inch, .pitch_rad = std::atan(0.5 / 40)};
  const auto over = [&](double x) {
    return pair_text({"member", "the chassis", x, 0, -3}, {"pan", "the engine", x, 0, 0}) + rolls;
  };
  EXPECT_NEAR(least_in(over(0), sunk), 1.5, 1e-5);
  EXPECT_NEAR(least_in(over(40), sunk), 2, 1e-3);
  EXPECT_NEAR(least_in(over(-10), sunk), 2 + sunk.rise_m(10 * inch) / inch, 1e-3);  // as a gap there has it
}

TEST(ClearanceEnvelope, TwoOfOneEngineDoNotMoveAgainstEachOther) {
  const auto e = envelope(pair_text({"a", "the engine", 0, 0, 0}, {"b", "the engine", 0, 0, 5}) + rolls);
  EXPECT_NEAR(e.least({.front_rise_m = 0.01, .pitch_rad = 0.1}).least_m / inch, 4, 1e-9);
  EXPECT_NEAR(e.at_rest_m({}) / inch, 4, 1e-9);
}

// Asked again the same is answered, and asked otherwise it is not.
TEST(ClearanceEnvelope, IsSearchedAgainOnlyWithOtherFigures) {
  const auto e = envelope(pair_text({"tube", "the chassis", 0, 0, 0}, {"axle", "the axle", 0, 0, -6, "wheel"}) + wheel);
  auto other = e;
  other.moves.at(0).setting.high = 5 * inch;
  EXPECT_EQ(e.least({}).poses, e.least({}).poses);
  EXPECT_NEAR((e.least({}).least_m - other.least({}).least_m) / inch, 1, 1e-6);
}

}  // namespace
