// Sums of pipes.
#include "asking.hpp"

namespace sw {
namespace {

const std::vector<std::string> line = {"density=745 kg/m3", "viscosity=0.5 mPa s", "bore=0.305 in",
                                       "length=14 ft",      "roughness=1.5 um",    "losses=3"};

TEST(FlowSums, FlowAndLossAreInverse) {
  const auto loss = run_sum("pipe-loss", with(line, {"flow=30 gph"}), {"pressure_drop=Pa"});
  ASSERT_EQ(loss.exit_code(), 0) << loss.to_text();
  const auto flow =
      run_sum("pipe-flow", with(line, {"pressure_drop=" + std::to_string(number_of(loss, "pressure_drop")) + " Pa"}),
              {"flow=gph"});
  EXPECT_NEAR(number_of(flow, "flow"), 30, 1e-5);
  EXPECT_NEAR(number_of(flow, "reynolds"), number_of(loss, "reynolds"), 0.01);
}

TEST(FlowSums, LaminarFlowNeedsNoDensity) {
  const std::vector<std::string> pipe = {"viscosity=0.8 Pa s", "bore=50 mm", "length=40 m", "pressure_drop=648 kPa"};
  const auto r = run_sum("pipe-flow", with(pipe, {"regime=laminar"}));
  EXPECT_EQ(r.exit_code(), 0);
  EXPECT_EQ(r.output("reynolds"), nullptr);
  EXPECT_TRUE(has(faults_of(run_sum("pipe-flow", pipe)), "density: missing"));
  EXPECT_TRUE(has(faults_of(run_sum("pipe-flow", with(pipe, {"regime=laminar", "losses=2"}))), "density: missing"));
}

TEST(FlowSums, LaminarAskedAtHighReynoldsIsNoted) {
  const auto r = run_sum("pipe-loss", {"density=1.23 kg/m3", "viscosity=1.79e-5 Pa s", "bore=4 mm", "speed=50 m/s",
                                       "length=0.1 m", "regime=laminar"});
  EXPECT_EQ(r.exit_code(), 0);
  ASSERT_EQ(r.notes.size(), 1u);
}

TEST(FlowSums, BoresBelongToAnExpansion) {
  EXPECT_TRUE(
      has(faults_of(run_sum("local-loss", {"kind=exit", "bore_in=8 mm"})), "bore_in: belongs to an expansion alone"));
  EXPECT_TRUE(has(faults_of(run_sum("local-loss", {"kind=expansion", "bore_in=8 mm"})), "bore_out: missing"));
  EXPECT_TRUE(has(faults_of(run_sum("local-loss", {"kind=expansion", "bore_in=8 mm", "bore_out=6 mm"})),
                  "that is no expansion"));
  EXPECT_EQ(number_of(run_sum("local-loss", {"kind=exit"}), "coefficient"), 1);
}

TEST(FlowSums, HaalandIsLeftOutWhereFlowIsLaminar) {
  const auto r = run_sum("friction-factor", {"reynolds=1000", "relative_roughness=0.001"});
  EXPECT_NEAR(number_of(r, "factor"), 0.064, 1e-12);
  EXPECT_EQ(r.output("factor_haaland"), nullptr);
}

}  // namespace
}  // namespace sw
