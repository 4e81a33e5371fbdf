// Against the air itself, counted in p V: the diaphragm moved in small steps, the chambers opened and shut one by one.
#include "physics/vacuum_store.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double air = 101325, in_hg = 3386.389, in3 = 1.6387064e-5;

struct Chamber {
  double volume, amount;  ///< m3, Pa m3
  double pressure() const { return amount / volume; }
};

struct Counted {
  double applied, released;
};
/// One application and release, step by step.
Counted count(double total, double rest, double rear, double vacuum) {
  Chamber front{total - rest, (air - vacuum) * (total - rest)}, back{rest, (air - vacuum) * rest};
  constexpr int steps = 4000;
  for (int i = 0; i < steps; ++i) {
    const double moved = (rear - rest) / steps;
    front.volume -= moved;
    back.volume += moved;
    back.amount = air * back.volume;                                     // open to the air
    if (front.pressure() > air) front.amount = air * front.volume;       // out by the check valve
  }
  const double applied = air - front.pressure();
  const double mixed = (front.amount + back.amount) / (front.volume + back.volume);
  return {applied, air - mixed};
}

TEST(VacuumStore, AirIsNeitherMadeNorLost) {
  for (const double total : {200.0, 330.0, 600.0})
    for (const double rest : {5.0, 20.0})
      for (const double rear : {40.0, 90.0, 150.0})
        for (double vacuum : {20.0, 14.0, 6.0, 0.0}) {
          const VacuumStore s{total * in3, rest * in3};
          const auto by_hand = count(s.total_m3, s.rear_at_rest_m3, rear * in3, vacuum * in_hg);
          EXPECT_NEAR(applied_vacuum_pa(s, rear * in3, vacuum * in_hg, air).value, by_hand.applied, 1e-6);
          EXPECT_NEAR(released_vacuum_pa(s, rear * in3, vacuum * in_hg, air).value, by_hand.released, 1e-6);
        }
}

TEST(VacuumStore, WorkedByHand) {
  // 250 in3, 20 at rest, 80 applied, 18 inHg (40.4 kPa absolute): 40.4 x 230 / 170 = 54.6; (54.6 x 170 + 101.3 x 80) /
  // 250 = 69.6, so 46.7 kPa on and 31.8 kPa off: 13.8 and 9.4 inHg.
  const VacuumStore s{250 * in3, 20 * in3};
  EXPECT_NEAR(applied_vacuum_pa(s, 80 * in3, 18 * in_hg, air).value / in_hg, 13.8, 0.05);
  EXPECT_NEAR(released_vacuum_pa(s, 80 * in3, 18 * in_hg, air).value / in_hg, 9.4, 0.05);
}

TEST(VacuumStore, TwoOrThreeAssistedStopsWithoutAReservoir) {
  // A pedal pumped with the engine off goes hard at the third or fourth press (common practice).
  const VacuumStore s{250 * in3, 20 * in3};
  double v = 20 * in_hg;
  int presses = 0;
  for (; applied_vacuum_pa(s, 70 * in3, v, air).value > 2 * in_hg && presses < 20; ++presses)
    v = released_vacuum_pa(s, 70 * in3, v, air).value;
  EXPECT_GE(presses, 2);
  EXPECT_LE(presses, 4);
}

TEST(VacuumStore, SlopesAreTheDerivatives) {
  const VacuumStore s{250 * in3, 20 * in3};
  for (const double v : {16 * in_hg, 3 * in_hg}) {
    expect_slope(
        applied_vacuum_pa(s, 80 * in3, v, air).slope,
        [&](double x) { return applied_vacuum_pa(s, 80 * in3, x, air).value; }, v);
    expect_slope(
        released_vacuum_pa(s, 80 * in3, v, air).slope,
        [&](double x) { return released_vacuum_pa(s, 80 * in3, x, air).value; }, v);
  }
}

TEST(VacuumStore, WhatCannotBeIsNotValid) {
  const VacuumStore s{250 * in3, 20 * in3};
  EXPECT_FALSE(applied_vacuum_pa(s, 260 * in3, 10 * in_hg, air).valid);
  EXPECT_FALSE(applied_vacuum_pa(s, 10 * in3, 10 * in_hg, air).valid);
  EXPECT_FALSE(released_vacuum_pa(s, 80 * in3, 31 * in_hg, air).valid);
}

}  // namespace
}  // namespace sw::physics
