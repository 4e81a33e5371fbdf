#include "physics/refrigerant.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double zero_c = 273.15, psi = 6894.757293168, sea = 101325;

// Saturated R134a by temperature, kPa absolute: a table of the equation of state's own values, read in an open program
// for refrigeration plants; the ancillary equation is good to a few parts in ten thousand of it.
TEST(Refrigerant, PressureAgainstATable) {
  for (auto [c, kpa] : {std::pair{30.0, 770.2},
                        {40.0, 1016.6},
                        {50.0, 1317.9},
                        {60.0, 1681.8},
                        {64.0, 1846.7},
                        {70.0, 2116.8},
                        {76.0, 2416.1},
                        {80.0, 2633.2},
                        {90.0, 3244.2}})
    expect_share(r134a_saturation_pa(c + zero_c).value, kpa * 1e3, 1e-3);
}

// A car maker's service manual, to the whole psi by gauge (read in a stored copy): 100 degF 124, 140 degF 229, 160 degF
// 300.
TEST(Refrigerant, PressureAgainstAServiceManual) {
  for (auto [f, psig] : {std::pair{80.0, 87.0}, {100.0, 124.0}, {120.0, 171.0}, {140.0, 229.0}, {160.0, 300.0}})
    EXPECT_NEAR((r134a_saturation_pa((f - 32) / 1.8 + zero_c).value - sea) / psi, psig, 1.5) << f;
}

TEST(Refrigerant, TemperatureIsTheInverse) {
  for (double c : {-20.0, 20.0, 75.0, 95.0}) {
    const auto p = r134a_saturation_pa(c + zero_c);
    EXPECT_NEAR(r134a_saturation_k(p.value).value, c + zero_c, 1e-6);
    expect_slope(
        p.slope, [](double t) { return r134a_saturation_pa(t).value; }, c + zero_c);
  }
  EXPECT_FALSE(r134a_saturation_pa(380).valid);
  EXPECT_FALSE(r134a_saturation_k(5e6).valid);
}

// By hand: 46 degC + 6.5 kW / (0.65 x 0.349 kW/K) = 74.7 degC.
TEST(Refrigerant, CondenserByHand) {
  EXPECT_NEAR(condensing_k(46 + zero_c, 6500, 0.65, 349).value - zero_c, 46 + 28.65, 0.01);
  expect_slope(
      condensing_k(300, 6500, 0.65, 349).slope, [](double c) { return condensing_k(300, 6500, 0.65, c).value; }, 349);
}

TEST(Refrigerant, LeakByHand) {  // 1.4 kW into 0.11 kg/s: 12.65 K
  EXPECT_NEAR(air_rise_k(1400, 0.11).value, 12.65, 0.02);
  expect_slope(
      air_rise_k(1400, 0.11).slope, [](double q) { return air_rise_k(q, 0.11).value; }, 1400);
}

}  // namespace
}  // namespace sw::physics
