// Reading, faults, units and the two forms of a result, on sums of the registry.
#include "sum/run.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "asking.hpp"

namespace sw {
namespace {

TEST(RunSum, EveryFaultIsReportedAtOnce) {
  const auto r =
      run_sum("pipe-loss", {"fluid=watre", "flow=3 psi", "bore=5 mm", "bore=6 mm", "lenght=2 m", "roughness=", "word"},
              {"pressure_drop=mm", "nothing=psi"});
  EXPECT_EQ(r.exit_code(), 2);
  const auto text = faults_of(r);
  for (auto* part : {"word: expected key=value", "bore: given twice", "roughness: has no value", "fluid: expected",
                     "flow: expected", "lenght: no such key here", "pressure_drop: ", "nothing: no such key here",
                     "temperature: missing", "length: missing"})
    EXPECT_NE(text.find(part), std::string::npos) << part << " in\n" << text;
  EXPECT_TRUE(r.outputs.empty());
  EXPECT_NE(r.to_text().find("did you mean \"length\"?"), std::string::npos) << r.to_text();
  EXPECT_TRUE(nlohmann::json::parse(r.to_json())["faults"].is_array());
}

TEST(RunSum, AOrBIsExactlyOne) {
  EXPECT_NE(faults_of(run_sum("boiling", {"fluid=water"}))
                .find("pressure, altitude, temperature: missing: give one of these"),
            std::string::npos);
  EXPECT_NE(
      faults_of(run_sum("boiling", {"fluid=water", "pressure=1 bar", "altitude=0 m"})).find("give only one of these"),
      std::string::npos);
  EXPECT_NE(faults_of(run_sum("boiling", {"fluid=water", "pressure=1 bar", "cap=15 psi"}))
                .find("cap: goes with altitude alone"),
            std::string::npos);
}

TEST(RunSum, OutsideTheLawsRangeIsShownAndMarked) {
  const auto r = run_sum("friction-factor", {"reynolds=3000", "relative_roughness=0"});
  EXPECT_EQ(r.exit_code(), 3);
  EXPECT_NE(r.output("factor"), nullptr);
  EXPECT_NE(r.to_text().find("outside the range: "), std::string::npos);
  EXPECT_EQ(nlohmann::json::parse(r.to_json())["valid"], false);
  EXPECT_EQ(run_sum("exchanger", {"arrangement=parallel", "capacity_ratio=1", "effectiveness=0.6"}).exit_code(), 3);
}

TEST(RunSum, UnknownSumNamesTheNearest) {
  const auto r = run_sum("pipe-los", {});
  EXPECT_EQ(r.exit_code(), 2);
  EXPECT_NE(r.to_text().find("pipe-loss"), std::string::npos);
}

}  // namespace
}  // namespace sw
