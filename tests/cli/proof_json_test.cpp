#include "cli/proof_json.hpp"

#include <gtest/gtest.h>

#include <limits>
#include <nlohmann/json.hpp>
#include <set>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

using Json = nlohmann::ordered_json;

std::vector<std::string> keys(const Json& j) {
  std::vector<std::string> all;
  for (auto& [key, value] : j.items()) all.push_back(key);
  return all;
}
using Keys = std::vector<std::string>;

Json sample() { return Json::parse(proof_json(sample_proof(), "thistledown.toml")); }
Json one(const Finding& f) { return Json::parse(finding_json(f)); }

TEST(ProofJson, HasItsKeysInOrder) {
  const Json j = sample();
  EXPECT_EQ(keys(j), (Keys{"build", "duties", "findings", "summary", "next", "left_out", "warnings"}));
  EXPECT_EQ(j["build"], "thistledown.toml");
  EXPECT_EQ(j["duties"], (Json{"hot-idle", "parade", "cruise", "grade"}));
  EXPECT_EQ(j["summary"], (Json{{"holds", 2}, {"tight", 1}, {"fails", 3}, {"unproven", 1}, {"idle", 0}}));
  EXPECT_EQ(j["findings"].size(), 7u);
  for (auto& f : j["findings"])
    EXPECT_EQ(keys(f), (Keys{"id", "system", "duty", "place", "title", "kind", "state", "predicted", "limit", "margin",
                             "confidence", "hazard", "source", "formula", "caution", "because", "missing", "reason",
                             "fix_hint"}));
  EXPECT_EQ(j["next"][1], (Json{{"path", "cooling.radiator.core_width"},
                                {"evidence", "measured"},
                                {"finding", "cooling.coolant-temperature@grade"},
                                {"share", 0.62},
                                {"decides", 1},
                                {"hazard", "nuisance"}}));
}

TEST(ProofJson, NamesWhatAFindingFollowsOnlyWhereItDoes) {
  Finding f = short_of_current();
  f.follows = "charging.balance@parade";
  EXPECT_EQ(one(f)["follows"], "charging.balance@parade");
  EXPECT_FALSE(one(short_of_current()).contains("follows"));
}

TEST(ProofJson, PutsValuesInTheFindingsUnit) {
  const Json f = one(hot_coolant());
  EXPECT_EQ(f["predicted"], (Json{{"value", 103.0}, {"unit", "degC"}, {"low", 99.0}, {"high", 107.0}}));
  EXPECT_EQ(f["limit"], (Json{{"value", 105.0}, {"unit", "degC"}}));
  EXPECT_EQ(f["margin"], (Json{{"value", 2.0}, {"unit", "degC"}, {"share", 0.05}}))
      << "a margin is a step, without the unit's zero";
  EXPECT_EQ(f["kind"], "most");
  EXPECT_EQ(f["state"], "tight");
  EXPECT_EQ(f["hazard"], "damage");
}

TEST(ProofJson, HasALimitForEachKind) {
  EXPECT_EQ(one(charge_band())["limit"], (Json{{"low", 13.8}, {"high", 14.8}, {"unit", "V"}}));
  EXPECT_EQ(one(short_of_current())["limit"], (Json{{"value", 0.0}, {"unit", "A"}}));
  const Json rule = one(backward_fan());
  EXPECT_TRUE(rule["limit"].is_null());
  EXPECT_TRUE(rule["predicted"].is_null());
  EXPECT_TRUE(rule["margin"].is_null());
}

TEST(ProofJson, TellsWhatIsMissing) {
  const Json f = one(unknown_cap());
  EXPECT_TRUE(f["predicted"].is_null());
  EXPECT_EQ(f["missing"], Json{"cooling.cap.pressure"});
}

TEST(ProofJson, KeepsEachBecauseLine) {
  const Json lines = one(short_of_current())["because"];
  ASSERT_EQ(lines.size(), 5u);
  EXPECT_EQ(lines[4], (Json{{"what", "fan current"},
                            {"value", 13.0},
                            {"unit", "A"},
                            {"evidence", "data sheet of wide-fan"},
                            {"path", "cooling.fan.left.current"},
                            {"role", "choice"},
                            {"weight", 0.11}}));
  EXPECT_EQ(lines[0]["evidence"], "computed");
  EXPECT_EQ(lines[0]["role"], "figure");
  EXPECT_TRUE(lines[0]["weight"].is_null());
  EXPECT_EQ(lines[3]["evidence"], "typical, nobody gave it");
  Finding f = backward_fan();
  f.because = {{.what = "output",
                .role = Role::given,
                .evidence = Evidence{.source = Source::data_sheet},
                .path = "a",
                .text = "a curve"}};
  EXPECT_EQ(one(f)["because"][0], (Json{{"what", "output"},
                                        {"value", "a curve"},
                                        {"unit", nullptr},
                                        {"evidence", "data sheet"},
                                        {"path", "a"},
                                        {"role", "given"},
                                        {"weight", nullptr}}));
}

TEST(ProofJson, HoldsNoNumberThatIsNone) {
  Proof p = sample_proof();
  for (double bad : {std::numeric_limits<double>::quiet_NaN(), std::numeric_limits<double>::infinity()}) {
    for (auto& f : p.findings) {
      f.predicted = f.margin = f.low_limit = f.high_limit = bad;
      f.half_width = f.far_width = bad;
      for (auto& b : f.because) b.value = bad;
    }
    const std::string text = proof_json(p, "x");
    EXPECT_EQ(text.find("nan"), std::string::npos);
    EXPECT_EQ(text.find("inf"), std::string::npos);
    EXPECT_TRUE(Json::parse(text)["findings"][0]["predicted"].is_null());
  }
}

TEST(ProofJson, OutlivesTextThatIsNoUtf8) {
  Finding f = backward_fan();
  f.place = "a\xff";
  EXPECT_EQ(one(f)["place"], "a\xEF\xBF\xBD");
}

TEST(FaultsJson, HoldsEveryFaultWithItsPlace) {
  Diagnostics d;
  d.fault({.file = 0, .line = 3, .column = 5}, "engine.idle_speed", "expected a shaft speed", "write 750 rpm");
  d.fault({}, "engine", "is missing");
  d.warn({}, "engine", "a warning is no fault");
  const Json j = Json::parse(faults_json(d, {"car.toml"}));
  EXPECT_EQ(keys(j), (Keys{"faults", "warnings"}));
  EXPECT_EQ(j["faults"][0], (Json{{"file", "car.toml"},
                                  {"line", 3},
                                  {"column", 5},
                                  {"path", "engine.idle_speed"},
                                  {"problem", "expected a shaft speed"},
                                  {"hint", "write 750 rpm"}}));
  EXPECT_TRUE(j["faults"][1]["line"].is_null());
  EXPECT_EQ(j["faults"].size(), 2u);
}

}  // namespace
}  // namespace sw::cli
