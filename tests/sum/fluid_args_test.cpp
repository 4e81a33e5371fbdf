// A fluid by name or by its figures.
#include "asking.hpp"

namespace sw {
namespace {

TEST(FluidArguments, AFluidIsNamedOrGivenByItsFigures) {
  const std::vector<std::string> pipe = {"flow=30 gal/h", "bore=0.305 in", "length=14 ft"};
  auto ask = [&](const std::vector<std::string>& more) { return run_sum("pipe-loss", with(pipe, more)); };
  EXPECT_EQ(ask({"fluid=gasoline", "temperature=40 degC"}).exit_code(), 0);
  EXPECT_EQ(ask({"density=745 kg/m3", "viscosity=0.5 mPa s"}).exit_code(), 0);
  EXPECT_NE(
      faults_of(ask({"fluid=water", "temperature=20 degC", "density=1 kg/m3"})).find("density: contradicts fluid"),
      std::string::npos);
  EXPECT_NE(
      faults_of(ask({"fluid=ethylene-glycol", "temperature=20 degC"})).find("mass_fraction, volume_fraction: missing"),
      std::string::npos);
  EXPECT_NE(faults_of(ask({"density=745 kg/m3"})).find("viscosity, kinematic_viscosity: missing"), std::string::npos);
  const auto dynamic = ask({"density=800 kg/m3", "viscosity=0.8 mPa s"}),
             kinematic = ask({"density=800 kg/m3", "kinematic_viscosity=1 mm2/s"});
  EXPECT_DOUBLE_EQ(dynamic.output("pressure_drop")->numbers[0], kinematic.output("pressure_drop")->numbers[0]);
}

TEST(FluidArguments, FiguresThatDoNotBelongAreFaults) {
  const std::vector<std::string> pipe = {"flow=30 gal/h", "bore=0.305 in", "length=14 ft"};
  const auto text = faults_of(
      run_sum("pipe-loss", with(pipe, {"density=745 kg/m3", "viscosity=1 mPa s", "kinematic_viscosity=1 mm2/s",
                                       "temperature=20 degC", "mass_fraction=0.5"})));
  EXPECT_TRUE(has(text, "viscosity, kinematic_viscosity: contradict each other"));
  EXPECT_TRUE(has(text, "temperature: belongs to a fluid by name"));
  EXPECT_TRUE(has(text, "mass_fraction: belongs to a fluid by name"));
}

TEST(FluidArguments, BoilingWaterIsOutsideAndMarked) {
  const auto r = run_sum("coolant-flow", {"fluid=water", "temperature=110 degC", "heat=10 kW", "rise=5 K"});
  EXPECT_EQ(r.exit_code(), 3);
  EXPECT_EQ(run_sum("coolant-flow", {"fluid=water", "temperature=110 degC", "pressure=2 bar", "heat=10 kW", "rise=5 K"})
                .exit_code(),
            0);
}

}  // namespace
}  // namespace sw
