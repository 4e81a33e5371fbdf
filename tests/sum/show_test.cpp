// The two forms of a result.
#include <nlohmann/json.hpp>
#include "asking.hpp"

namespace sw {
namespace {

TEST(ShowSum, ShowsOneLineAnOutputThenRangeAndSource) {
  const auto r = run_sum("atmosphere", {"altitude=0 m"}, {"pressure=psi"});
  EXPECT_EQ(r.exit_code(), 0);
  EXPECT_EQ(r.to_text(),
            "pressure = 14.7 psi\ntemperature = 15 degC\ndensity = 1.225 kg/m3\ndensity_ratio = 1\n"
            "viscosity = 0.01789 mPa s\nrange: 5 km below to 11 km above the sea (geopotential)\n"
            "source: U.S. Standard Atmosphere, 1976\n");
}

TEST(ShowSum, JsonHasTheAgreedForm) {
  const auto r = run_sum("boiling", {"fluid=water", "pressure=14.696 psi"}, {"temperature=degF"});
  const auto j = nlohmann::json::parse(r.to_json());
  EXPECT_EQ(j["sum"], "boiling");
  EXPECT_EQ(j["inputs"]["pressure"]["value"], 14.696);
  EXPECT_EQ(j["inputs"]["pressure"]["unit"], "psi");
  EXPECT_EQ(j["inputs"]["fluid"]["value"], "water");
  EXPECT_EQ(j["inputs"]["fluid"]["unit"], "-");
  EXPECT_EQ(j["outputs"]["temperature"]["unit"], "degF");
  EXPECT_NEAR(j["outputs"]["temperature"]["value"], 211.95, 0.01);  // IAPWS: 99.974 degC
  EXPECT_EQ(j["valid"], true);
  EXPECT_FALSE(j["range"].get<std::string>().empty());
  EXPECT_FALSE(j["source"].get<std::string>().empty());
  EXPECT_NE(j["caution"].get<std::string>().find("cold"), std::string::npos);
  EXPECT_FALSE(j["outputs"].contains("pressure"));
}

TEST(ShowSum, DescribesArgumentsRulesAndDefaults) {
  const auto text = describe_sum(*find_sum("boiling"));
  for (auto* part :
       {"fluid: fluid by name (water, ethylene-glycol, propylene-glycol)", "one of: pressure, altitude, temperature",
        "0 psi where left out", "outputs:", "source: water: IAPWS"})
    EXPECT_TRUE(has(text, part)) << part << " in\n" << text;
}

TEST(ShowSum, TextIsShortAndJsonWhole) {
  const auto r = run_sum("voltage-drop", {"size=12 AWG", "current=20 A", "loop_length=30 ft"});
  EXPECT_TRUE(has(r.to_text(), "loss = 19.06 W")) << r.to_text();  // 20 A x 20 A x 30 ft x 10.371 / 6529.9 cmil
  EXPECT_TRUE(has(r.to_json(), "19.058")) << r.to_json();
}

TEST(ShowSum, WhatNobodyGaveIsToldAsAssumed) {
  const auto r = run_sum("voltage-drop", {"size=12 AWG", "current=20 A", "loop_length=30 ft", "cable=copper"});
  EXPECT_TRUE(has(r.to_text(), "assumed: temperature = 20 degC\n")) << r.to_text();
  EXPECT_EQ(nlohmann::json::parse(r.to_json())["assumed"], nlohmann::json({"temperature"}));
}

TEST(ShowSum, PureNumbersAreToldWithoutAUnit) {
  const auto text = describe_sum(*find_sum("ampacity"));
  EXPECT_TRUE(has(text, "bundle: conductors carrying current in the bundle; 1 where left out")) << text;
  EXPECT_FALSE(has(text, "(%)")) << text;
}

TEST(ShowSum, ListNamesEverySum) {
  for (auto* s : all_sums()) EXPECT_TRUE(has(list_sums(), std::string(s->name) + ": "));
}

}  // namespace
}  // namespace sw
