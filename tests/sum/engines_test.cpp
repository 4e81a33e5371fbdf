// What the sums of the engine do with optional, contradictory and far-off inputs; figures stand in tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(EngineSums, Air) {
  const Words base = {"displacement=350 in3", "engine_speed=5500 rpm", "volumetric_efficiency=85 %"};
  EXPECT_FALSE(gives("engine-air", base, "mass_flow"));
  auto with = base;
  with.push_back("density=1.2 kg/m3");
  EXPECT_NEAR(asked("engine-air", with, "mass_flow", "kg/s"), 1.2 * asked("engine-air", base, "flow", "m3/s"), 1e-12);
}

TEST(EngineSums, TwoOfThree) {
  EXPECT_NEAR(asked("power", {"power=200 hp", "shaft_speed=3500 rpm"}, "torque", "lbf ft"), 200 * 5252.113 / 3500,
              1e-3);
  EXPECT_NEAR(asked("power", {"power=200 hp", "torque=300 lb-ft"}, "shaft_speed", "rpm"), 200 * 5252.113 / 300, 1e-2);
  EXPECT_FALSE(gives("power", {"power=200 hp", "torque=300 lb-ft"}, "power"));
  EXPECT_EQ(code("power", {"power=200 hp"}), 2);
  EXPECT_EQ(code("power", {"power=200 hp", "torque=300 lb-ft", "shaft_speed=3500 rpm"}), 2);
}

TEST(EngineSums, HeatAndPressure) {
  EXPECT_EQ(code("coolant-heat", {"power=100 kW", "share_coolant=0.6", "share_shaft=0.5"}), 2);
  EXPECT_FALSE(run_sum("coolant-heat", {"power=100 kW", "share_coolant=0.4", "share_shaft=0.25"}).notes.empty());
  // 4 pi T / V: 400 N m from 5 L is 1.005 MPa (closed form)
  EXPECT_NEAR(asked("mean-pressure", {"torque=400 N m", "displacement=5 L"}, "pressure", "kPa"),
              4 * 3.14159265358979 * 400 / 5, 1e-6);
}

TEST(EngineSums, CorrectionHasItsTestConditions) {
  EXPECT_EQ(code("power-correction", {"dry_pressure=80 kPa", "temperature=25 degC"}), 3);
  EXPECT_EQ(code("power-correction", {"dry_pressure=99 kPa", "temperature=45 degC"}), 3);
  EXPECT_NEAR(asked("power-correction", {"dry_pressure=99 kPa", "temperature=77 degF"}, "factor"), 1, 1e-6);
}

TEST(EngineSums, DisplacementAndVacuum) {
  EXPECT_EQ(code("displacement", {"bore=4 in", "stroke=3.48 in", "cylinders=7.5"}), 2);
  EXPECT_NEAR(asked("vacuum", {"manifold_pressure=50 kPa"}, "vacuum", "kPa"), 51.325, 1e-9);
  EXPECT_NEAR(asked("vacuum", {"manifold_pressure=120 kPa"}, "vacuum", "kPa"), -18.675, 1e-9);
  EXPECT_EQ(code("vacuum", {"manifold_pressure=5 kPa", "altitude=15 km"}), 3);
}

}  // namespace
}  // namespace sw
