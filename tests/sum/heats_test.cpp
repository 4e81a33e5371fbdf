// Sums of heat.
#include "asking.hpp"

namespace sw {
namespace {

TEST(HeatSums, TwoOfGivesTheThird) {
  // 10 L/min of 1 kg/L and 4200 J/(kg K) by 10 K: 7 kW, by hand
  const std::vector<std::string> water = {"density=1000 kg/m3", "specific_heat=4200 J/(kg K)"};
  auto ask = [&](const std::vector<std::string>& more) { return run_sum("coolant-flow", with(water, more)); };
  EXPECT_NEAR(ask({"flow=10 L/min", "rise=10 K"}).output("heat")->numbers[0], 7, 1e-9);
  EXPECT_NEAR(ask({"flow=10 L/min", "heat=7 kW"}).output("rise")->numbers[0], 10, 1e-9);
  EXPECT_NEAR(ask({"rise=18 degF", "heat=7000 W"}).output("flow")->numbers[0], 10, 1e-9);
  EXPECT_EQ(ask({"flow=10 L/min", "rise=10 K"}).output("flow"), nullptr);
  EXPECT_EQ(ask({"flow=10 L/min"}).exit_code(), 2);
  EXPECT_EQ(ask({"flow=10 L/min", "rise=10 K", "heat=7 kW"}).exit_code(), 2);
}

TEST(HeatSums, StreamsThatCrossAreAFault) {
  const auto r = run_sum("lmtd", {"arrangement=parallel", "t_hot_in=90 degC", "t_hot_out=50 degC", "t_cold_in=20 degC",
                                  "t_cold_out=60 degC"});
  EXPECT_EQ(r.exit_code(), 2);
  EXPECT_TRUE(has(faults_of(r), "would have to cross"));
}

TEST(HeatSums, OutputsWithoutTheirInputsAreLeftOut) {
  const auto r = run_sum("tube-convection", {"reynolds=2e4", "prandtl=5", "mode=heated"});
  EXPECT_EQ(r.exit_code(), 0);
  EXPECT_NE(r.output("nusselt_gnielinski"), nullptr);
  EXPECT_EQ(r.output("coefficient_gnielinski"), nullptr);
  EXPECT_EQ(r.output("rise"), nullptr);
  const auto l = run_sum("lmtd", {"arrangement=counterflow", "t_hot_in=90 degC", "t_hot_out=50 degC",
                                  "t_cold_in=20 degC", "t_cold_out=60 degC"});
  EXPECT_NEAR(number_of(l, "lmtd"), 30, 1e-9);  // equal ends: the difference itself
  EXPECT_EQ(l.output("u"), nullptr);
}

TEST(HeatSums, EachCorrelationSaysWhereItEnds) {
  const auto r = run_sum("tube-convection", {"reynolds=5000", "prandtl=5", "mode=heated"});
  EXPECT_EQ(r.exit_code(), 3);
  ASSERT_EQ(r.outside.size(), 1u);
  EXPECT_TRUE(has(r.outside[0], "Dittus-Boelter"));
}

}  // namespace
}  // namespace sw
