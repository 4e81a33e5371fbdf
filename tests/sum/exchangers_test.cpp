// The exchanger sum: one thing given, the rest found.
#include <nlohmann/json.hpp>
#include "asking.hpp"

namespace sw {
namespace {

TEST(ExchangerSum, GivesTheSameFromWhicheverIsGiven) {
  const std::vector<std::string> base = {"arrangement=crossflow-unmixed",
                                         "capacity_hot=2 kW/K",
                                         "capacity_cold=900 W/K",
                                         "t_hot_in=95 degC",
                                         "t_cold_in=30 degC",
                                         "u=80 W/(m2 K)"};
  auto given = [&](const std::string& more) {
    auto args = base;
    args.push_back(more);
    return run_sum("exchanger", args);
  };
  const auto a = given("ua=1500 W/K");
  for (auto* key : {"ntu", "effectiveness", "heat", "t_hot_out", "t_cold_out"}) {
    const auto* v = a.output(key);
    const auto b =
        given(std::string(key) + "=" + nlohmann::json(v->numbers[0]).dump() + (v->unit == "-" ? "" : " " + v->unit));
    ASSERT_EQ(b.exit_code(), 0) << b.to_text();
    EXPECT_NEAR(b.output("ua")->numbers[0], a.output("ua")->numbers[0], 1e-6) << key;
    EXPECT_NEAR(b.output("area")->numbers[0], a.output("area")->numbers[0], 1e-6) << key;
  }
  EXPECT_EQ(run_sum("exchanger", {"arrangement=counterflow", "capacity_ratio=0.5", "heat=3 kW"}).exit_code(), 2);
}

TEST(ExchangerSum, HeatBalances) {
  const auto r = run_sum("exchanger", {"arrangement=counterflow", "capacity_hot=2 kW/K", "capacity_cold=1 kW/K",
                                       "ntu=1.5", "t_hot_in=100 degC", "t_cold_in=20 degC"});
  const double heat_kw = number_of(r, "heat");
  EXPECT_NEAR(100 - number_of(r, "t_hot_out"), heat_kw / 2, 1e-9);
  EXPECT_NEAR(number_of(r, "t_cold_out") - 20, heat_kw / 1, 1e-9);
  EXPECT_EQ(r.output("area"), nullptr) << "without u there is no area";
}

TEST(ExchangerSum, SaysWhatContradicts) {
  const std::vector<std::string> base = {"arrangement=parallel", "capacity_hot=1 kW/K", "capacity_cold=1 kW/K"};
  EXPECT_TRUE(has(faults_of(run_sum("exchanger", with(base, {"heat=3 kW"}))),
                  "t_hot_in: missing: heat needs both temperatures in"));
  EXPECT_TRUE(
      has(faults_of(run_sum("exchanger", with(base, {"ntu=1", "capacity_ratio=1"}))), "give only one of these"));
  EXPECT_TRUE(has(faults_of(run_sum("exchanger", with(base, {"ntu=1", "t_hot_in=20 degC", "t_cold_in=30 degC"}))),
                  "t_hot_in: is not above"));
  EXPECT_EQ(
      run_sum("exchanger", with(base, {"t_hot_out=95 degC", "t_hot_in=90 degC", "t_cold_in=20 degC"})).exit_code(), 2);
}

}  // namespace
}  // namespace sw
