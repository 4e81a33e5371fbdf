#include "physics/water.hpp"

#include "near.hpp"

namespace sw::physics {
namespace {

// IAPWS R7-97(2012), table 5: values for program verification of region 1.
TEST(Water, Region1VerificationTable) {
  struct Row {
    double t, p, volume, cp;
  };
  for (auto& r : {Row{300, 3e6, 0.100215168e-2, 4173.01218}, Row{300, 80e6, 0.971180894e-3, 4010.08987},
                  Row{500, 3e6, 0.120241800e-2, 4655.80682}}) {
    const auto w = water_caloric(r.t, r.p);
    expect_share(1 / w.density_kg_m3, r.volume, 1e-8);
    expect_share(w.specific_heat_j_kg_k, r.cp, 1e-8);
  }
}

// IAPWS R7-97(2012), tables 35 and 36.
TEST(Water, SaturationVerificationTables) {
  expect_share(water_saturation_pressure(300).value, 0.353658941e-2 * 1e6, 1e-8);
  expect_share(water_saturation_pressure(500).value, 0.263889776e1 * 1e6, 1e-8);
  expect_share(water_saturation_pressure(600).value, 0.123443146e2 * 1e6, 1e-8);
  expect_share(water_saturation_temperature(0.1e6).value, 0.372755919e3, 1e-8);
  expect_share(water_saturation_temperature(1e6).value, 0.453035632e3, 1e-8);
  expect_share(water_saturation_temperature(10e6).value, 0.584149488e3, 1e-8);
}

// IAPWS R12-08, table 4, and R15-11, table 4: values without critical enhancement.
TEST(Water, TransportVerificationTables) {
  expect_share(water_viscosity(298.15, 998), 889.735100e-6, 1e-8);
  expect_share(water_viscosity(298.15, 1200), 1437.649467e-6, 1e-8);
  expect_share(water_viscosity(373.15, 1000), 307.883622e-6, 1e-8);
  expect_share(water_conductivity(298.15, 998), 607.712868e-3, 1e-8);
  expect_share(water_conductivity(298.15, 1200), 799.038144e-3, 1e-8);
}

// IAPWS-95 steam tables (NIST): the industrial formulation stays within 0.002 % in density.
TEST(Water, DensityAtRoomTemperature) {
  EXPECT_NEAR(water(298.15, 101325).density_kg_m3, 997.05, 0.01);
  EXPECT_NEAR(water(293.15, 101325).viscosity_pa_s, 1.0016e-3, 1e-7);  // the primary reference value of viscosity
}

TEST(Water, SaturationRunsBothWaysWithItsSlope) {
  for (double t = 275; t < 620; t += 7.3) {
    const Slope p = water_saturation_pressure(t);
    EXPECT_NEAR(water_saturation_temperature(p.value).value, t, 1e-5);  // the release's own backward agreement
    expect_slope(
        p.slope, [](double x) { return water_saturation_pressure(x).value; }, t);
    EXPECT_NEAR(water_saturation_temperature(p.value).slope * p.slope, 1, 1e-5);
  }
}

TEST(Water, SteamAndIceAreOutside) {
  EXPECT_FALSE(water(380, 101325).valid);
  EXPECT_FALSE(water(270, 101325).valid);
  EXPECT_TRUE(water(380, 2e5).valid);
}

}  // namespace
}  // namespace sw::physics
