// Sums of fluids.
#include "asking.hpp"

namespace sw {
namespace {

// IAPWS R7-97: 0.101418 MPa at 100 degC, 120.42 degC at 201.325 kPa.
TEST(FluidSums, BoilingEveryWayRound) {
  EXPECT_NEAR(number_of(run_sum("boiling", {"fluid=water", "temperature=100 degC"}), "pressure"), 101.418, 0.001);
  EXPECT_NEAR(number_of(run_sum("boiling", {"fluid=water", "altitude=0 ft", "cap=1 bar"}), "temperature"), 120.42,
              0.01);
  const std::vector<std::string> mix = {"fluid=ethylene-glycol", "volume_fraction=0.5"};
  const double t = number_of(run_sum("boiling", with(mix, {"pressure=180 kPa"}), {"temperature=K"}), "temperature");
  EXPECT_NEAR(number_of(run_sum("boiling", with(mix, {"temperature=" + std::to_string(t) + " K"})), "pressure"), 180,
              1e-3);
}

TEST(FluidSums, PropertiesGiveWhatIsKnown) {
  const auto glycol = run_sum("properties", {"fluid=propylene-glycol", "mass_fraction=0.4"});
  EXPECT_EQ(glycol.output("density"), nullptr) << "without a temperature";
  EXPECT_NE(glycol.output("freezing"), nullptr);
  EXPECT_NE(glycol.output("boiling"), nullptr);
  EXPECT_NE(glycol.output("volume_fraction"), nullptr);
  const auto air = run_sum("properties", {"fluid=air", "temperature=20 degC"});
  EXPECT_EQ(air.output("freezing"), nullptr);
  EXPECT_EQ(air.output("mass_fraction"), nullptr);
  EXPECT_TRUE(has(faults_of(run_sum("properties", {"temperature=20 degC"})), "fluid: missing"));
  EXPECT_TRUE(has(faults_of(run_sum("properties", {"fluid=air", "mass_fraction=0.4"})), "belongs to a glycol"));
  EXPECT_TRUE(
      has(faults_of(run_sum("properties", {"fluid=ethylene-glycol", "mass_fraction=0.4", "volume_fraction=0.4"})),
          "contradict each other"));
}

TEST(FluidSums, StrongGlycolIsOutside) {
  const auto r = run_sum("properties", {"fluid=ethylene-glycol", "mass_fraction=0.8", "temperature=20 degC"});
  EXPECT_EQ(r.exit_code(), 3);
  EXPECT_NE(r.output("density"), nullptr) << "shown, and marked";
  EXPECT_EQ(r.output("freezing"), nullptr);
}

TEST(FluidSums, VapourConstantBIsAStep) {
  const auto r = run_sum("vapour-pressure", {"rvp=10 psi"});
  EXPECT_EQ(r.output("pressure"), nullptr);
  EXPECT_EQ(r.output("constant_b")->unit, "degR");
  EXPECT_NEAR(number_of(r, "constant_b"), 5237.3, 0.5);
  EXPECT_NEAR(number_of(run_sum("vapour-pressure", {"rvp=10 psi"}, {"constant_b=K"}), "constant_b"), 5237.3 / 1.8, 0.3);
  EXPECT_EQ(run_sum("vapour-pressure", {"rvp=10 psi", "temperature=150 degF"}).exit_code(), 3);
}

TEST(FluidSums, AtmosphereKnowsItsTop) {
  EXPECT_EQ(run_sum("atmosphere", {"altitude=12 km"}).exit_code(), 3);
  EXPECT_NEAR(number_of(run_sum("atmosphere", {"altitude=5000 ft"}), "density_ratio"), 0.8617,
              1e-4);  // US Standard Atmosphere 1976, from memory
}

}  // namespace
}  // namespace sw
