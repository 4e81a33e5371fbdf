#include "physics/droplet.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

// Stokes: small drops fall as g d^2 (rho_o - rho_g)/(18 mu); by hand 10 um of 850 kg/m3 in thin hot air: 2.2 mm/s.
TEST(Droplet, SmallOnesByStokes) {
  const Mist m;
  expect_share(settling_m_s(10e-6, m).value, 9.80665 * 1e-10 * (850 - 0.98) / (18 * 2.1e-5), 5e-3);
}

// Water in air at 20 degC, speeds of Gunn and Kinzer, J. Meteorol. 6 (1949) 243, Table 2 (from memory): 0.2 mm 0.72
// m/s, 0.3 mm 1.17, 0.5 mm 2.06, 1 mm 4.03.
TEST(Droplet, RainAsMeasured) {
  const Mist air{.oil_kg_m3 = 998.2, .gas_kg_m3 = 1.204, .gas_pa_s = 1.82e-5};
  for (auto [mm, speed] : {std::pair{0.2, 0.72}, {0.3, 1.17}, {0.5, 2.06}, {1.0, 4.03}})
    expect_share(settling_m_s(mm * 1e-3, air).value, speed, 0.05);
}

TEST(Droplet, SlopeAndRange) {
  expect_slope(
      settling_m_s(3e-4).slope, [](double d) { return settling_m_s(d).value; }, 3e-4, 1e-4);
  EXPECT_TRUE(settling_m_s(3e-4).valid);
  EXPECT_FALSE(settling_m_s(8e-3).valid);
}

TEST(Droplet, PassageByHand) {  // 3.5 cfm through half an inch: 1.652e-3 / 1.267e-4 = 13.04 m/s
  EXPECT_NEAR(passage_m_s(1.652e-3, 1.2668e-4).value, 13.04, 0.01);
}

}  // namespace
}  // namespace sw::physics
