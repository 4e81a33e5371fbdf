// What the sums of fuel and ignition do with optional, contradictory and far-off inputs; figures stand in
// tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(FuelSums, FlowFromAnyOfThree) {
  EXPECT_NEAR(asked("fuel-flow", {"power=200 hp", "bsfc=0.5 lb/(hp h)"}, "mass_flow", "lb/h"), 100, 1e-6);
  EXPECT_FALSE(gives("fuel-flow", {"power=200 hp", "bsfc=0.5 lb/(hp h)"}, "flow"));
  EXPECT_NEAR(asked("fuel-flow", {"flow=20 gal/h", "density=6.1 lb/gal"}, "mass_flow", "lb/h"), 122, 1e-6);
  EXPECT_EQ(code("fuel-flow", {"power=200 hp"}), 2);
  EXPECT_EQ(code("fuel-flow", {"flow=20 gal/h"}), 2);
  EXPECT_EQ(code("fuel-flow", {"flow=20 gal/h", "mass_flow=100 lb/h", "density=6 lb/gal"}), 2);
}

TEST(FuelSums, Injectors) {
  EXPECT_NEAR(asked("injector-pressure", {"rated_mass_flow=24 lb/h", "rated_pressure=40 psi", "pressure=57.6 psi"},
                    "mass_flow", "lb/h"),
              24 * 1.2, 1e-9);  // sqrt(1.44)
  EXPECT_EQ(code("injector-pressure", {"rated_mass_flow=24 lb/h", "rated_pressure=40 psi", "pressure=100 psi"}), 3);
  EXPECT_EQ(code("injector", {"power=300 hp", "bsfc=0.5 lb/(hp h)", "count=8", "duty=1.2"}), 2);
}

TEST(FuelSums, AirFuelAndEfficiency) {
  EXPECT_NEAR(asked("air-fuel", {"formula=C2H6O"}, "ratio"), 9.0, 0.02);  // ethanol, Heywood table D.4 (from memory)
  EXPECT_EQ(code("air-fuel", {"formula=CO2"}), 2);
  EXPECT_EQ(code("efficiency", {"bsfc=0.1 lb/(hp h)", "heating_value=20 MJ/kg"}), 3);
}

TEST(FuelSums, Coil) {
  const Words base = {"inductance=8 mH", "supply=12 V", "resistance=1.5 ohm"};
  auto with = [&](Words more) {
    more.insert(more.begin(), base.begin(), base.end());
    return more;
  };
  const double ms = asked("coil", with({"current=4 A"}), "time", "ms");
  EXPECT_NEAR(ms, 8 / 1.5 * std::log(2), 1e-9);  // half of the 8 A it tends to: L/R ln 2
  EXPECT_NEAR(asked("coil", with({"time=" + std::to_string(ms) + " ms"}), "current", "A"), 4, 1e-5);
  EXPECT_EQ(code("coil", with({"current=9 A"})), 3);
  EXPECT_EQ(code("coil", {"inductance=8 mH", "time=3 ms"}), 2);
  EXPECT_FALSE(gives("coil", {"inductance=8 mH", "current=4 A"}, "time"));
}

TEST(FuelSums, Dwell) {
  EXPECT_NEAR(asked("dwell", {"dwell_angle=30 deg", "cylinders=8"}, "share"), 2.0 / 3, 1e-12);
  EXPECT_FALSE(gives("dwell", {"dwell_angle=30 deg", "cylinders=8"}, "time"));
  EXPECT_EQ(code("dwell", {"dwell_angle=50 deg", "cylinders=8"}), 3);
}

}  // namespace
}  // namespace sw
