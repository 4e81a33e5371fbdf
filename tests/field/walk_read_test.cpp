#include <gtest/gtest.h>

#include "field/reading.hpp"

namespace sw::sample {
namespace {

constexpr const char* sound = R"([cooling.radiator]
core_width  = "26 in"
core_height = { value = "17 1/4 in", from = "measured", plus_minus = "1/16 in" }
thermostat = { value = "180 degF", from = "measured", plus_minus = "2 degF" }
cap = { value = "13 psi", from = "data sheet" }
fin_share = "35 %"
rows = 3
shrouded = true
flow = "cross-flow"
colour = "black"
marks = ["upper left", "12"]
airflow_loss = { points = [["2 m/s", "38 Pa"], ["4 m/s", "130 Pa"]], from = "data sheet", plus_minus = "5 %" }
[cooling.oil_cooler]
heat = { value = "3 kW", plus_minus = "10 %" }
[wiring.run.zz]
gauge = "10 AWG"
[wiring.run.aa]
length = "9 ft"
)";

// Factors below: 1 in = 0.0254 m and 1 ft = 0.3048 m exactly, 1 psi = 6894.757 Pa, t/K = (t/degF + 459.67)/1.8
// (NIST Special Publication 811, 2008 edition, appendix B.8).
TEST(Read, EveryTypeOfField) {
  auto r = read_car(sound);
  ASSERT_EQ(r.said, std::vector<std::string>{});
  auto& radiator = r.car.cooling.radiator;
  EXPECT_DOUBLE_EQ(radiator.core_width->si, 26 * 0.0254);
  EXPECT_DOUBLE_EQ(radiator.core_height->si, 17.25 * 0.0254);
  EXPECT_NEAR(radiator.thermostat->si, (180 + 459.67) / 1.8, 1e-9);
  EXPECT_NEAR(radiator.cap->si, 13 * 6894.757, 0.01);
  EXPECT_DOUBLE_EQ(*radiator.fin_share, 0.35);
  EXPECT_EQ(radiator.rows, 3);
  EXPECT_EQ(radiator.shrouded, true);
  EXPECT_EQ(radiator.flow, Flow::across);
  EXPECT_EQ(radiator.colour, "black");
  EXPECT_EQ(radiator.marks, (std::vector<std::string>{"upper left", "12"}));
  EXPECT_EQ(*radiator.airflow_loss, (Curve{{2, 4}, {38, 130}}));
  ASSERT_TRUE(r.car.cooling.oil_cooler);
  EXPECT_DOUBLE_EQ(r.car.cooling.oil_cooler->heat->si, 3000);
}

TEST(Read, EntriesKeepTheirOrder) {
  auto r = read_car(sound);
  ASSERT_EQ(r.car.wiring.run.size(), 2u);
  EXPECT_EQ(r.car.wiring.run.entries[0].first, "zz");
  EXPECT_EQ(r.car.wiring.run.entries[1].first, "aa");
}

TEST(Read, EvidenceSaysWhereFromHowSureAndWhere) {
  auto r = read_car(sound);
  auto& e = r.evidence.at("cooling.radiator.core_height");
  EXPECT_EQ(e.source, Source::measured);
  EXPECT_DOUBLE_EQ(e.half_width, 0.0254 / 16);
  EXPECT_TRUE(e.given_width);
  EXPECT_FALSE(e.defaulted);
  EXPECT_EQ(e.place.line, 3u);
  EXPECT_EQ(e.place.column, 25u);
  EXPECT_EQ(e.place.end_column, 36u);
  EXPECT_EQ(r.evidence.count("cooling.radiator.note"), 0u);
}

TEST(Read, HalfWidths) {
  auto r = read_car(sound);
  auto width = [&](const char* path) { return r.evidence.at(path).half_width; };
  EXPECT_DOUBLE_EQ(width("cooling.radiator.core_width"), 0.05 * 26 * 0.0254);  // usual spread of `stated`
  EXPECT_NEAR(width("cooling.radiator.thermostat"), 2 / 1.8, 1e-12);           // a step, without the zero of degF
  EXPECT_DOUBLE_EQ(width("cooling.radiator.airflow_loss"), 0.05);              // of a curve a share
  EXPECT_DOUBLE_EQ(width("cooling.oil_cooler.heat"), 300);
  EXPECT_DOUBLE_EQ(width("cooling.radiator.rows"), 0);
  EXPECT_DOUBLE_EQ(width("cooling.radiator.colour"), 0);
}

TEST(Read, AbsoluteSpreadIsAStepOfTheFieldsUnit) {
  auto r = read_car(
      "[cooling.radiator]\nthermostat = { value = \"82 degC\", from = \"measured\" }\n"
      "fin_share = { value = 0.4, from = \"measured\" }");
  // The table of `temperature` fields says 1 in the field's unit, which is degF here.
  EXPECT_NEAR(r.evidence.at("cooling.radiator.thermostat").half_width, 1 / 1.8, 1e-12);
  EXPECT_DOUBLE_EQ(r.evidence.at("cooling.radiator.fin_share").half_width, 0.01);
}

TEST(Read, UsualSourceIsTheCallers) {
  auto r = read_car("[cooling.radiator]\ncore_width = \"26 in\"", false, Source::typical);
  EXPECT_EQ(r.evidence.at("cooling.radiator.core_width").source, Source::typical);
  EXPECT_DOUBLE_EQ(r.evidence.at("cooling.radiator.core_width").half_width, 0.20 * 26 * 0.0254);
}

TEST(Read, WhatHasAFaultStaysEmpty) {
  auto r = read_car(
      "[cooling.radiator]\ncore_width = { value = \"26 in\", from = \"guess\" }\n"
      "core_height = { value = \"20 in\", plus_minus = \"x\" }\nrows = 9\n");
  EXPECT_EQ(r.faults.all().size(), 3u);
  EXPECT_FALSE(r.car.cooling.radiator.core_width);
  EXPECT_FALSE(r.car.cooling.radiator.core_height);
  EXPECT_FALSE(r.car.cooling.radiator.rows);
  EXPECT_TRUE(r.evidence.empty());
}

TEST(Read, AnEndOfTheRangeIsInIt) {
  // 60 in and 140 degF do not come back from SI to the last bit; the end still belongs to the range.
  EXPECT_TRUE(read_car("[cooling.radiator]\ncore_width = \"60 in\"\nthermostat = \"60 degC\"").said.empty());
  EXPECT_TRUE(read_car("[cooling.radiator]\ncore_width = \"4 in\"\nthermostat = \"230 degF\"").said.empty());
}

TEST(Read, JsonReadsTheSame) {
  auto toml = read_car("[cooling.radiator]\ncore_width = { value = \"26 in\", from = \"measured\" }\nrows = 2");
  auto json =
      read_car(R"({"cooling": {"radiator": {"core_width": {"value": "26 in", "from": "measured"}, "rows": 2}}})", true);
  EXPECT_EQ(toml.car.cooling.radiator.core_width, json.car.cooling.radiator.core_width);
  EXPECT_EQ(toml.car.cooling.radiator.rows, json.car.cooling.radiator.rows);
  EXPECT_EQ(json.evidence.at("cooling.radiator.core_width").source, Source::measured);
}

TEST(FillDefaults, StandInWhereNobodyGave) {
  auto r = read_car("[cooling.radiator]\nthermostat = \"160 degF\"");
  fill_defaults(Car::fields(), &r.car, "", r.evidence);
  EXPECT_DOUBLE_EQ(r.car.cooling.radiator.core_height->si, 17 * 0.0254);
  EXPECT_NEAR(r.car.cooling.radiator.thermostat->si, (160 + 459.67) / 1.8, 1e-9);
  EXPECT_EQ(r.car.cooling.radiator.shrouded, false);
  EXPECT_EQ(r.car.cooling.radiator.flow, Flow::down);
  EXPECT_FALSE(r.car.cooling.radiator.core_width);
  EXPECT_FALSE(r.car.cooling.oil_cooler);
  auto& e = r.evidence.at("cooling.radiator.core_height");
  EXPECT_TRUE(e.defaulted);
  EXPECT_EQ(e.source, Source::typical);
  EXPECT_DOUBLE_EQ(e.half_width, 0.2 * 17 * 0.0254);
  EXPECT_FALSE(r.evidence.at("cooling.radiator.thermostat").defaulted);
}

}  // namespace
}  // namespace sw::sample
