#include "survey/filled.hpp"

#include <gtest/gtest.h>

#include <algorithm>

namespace sw {
namespace {

const std::string car =
    "# my car\n[vehicle]\nwheelbase = { value = \"112 in\", from = \"typical\" } # hub to hub\n"
    "[wiring.load.lamps]\ncurrent = \"10 A\"\n";

Opened opened(const std::string& text) {
  return open("car.toml", [&](const std::filesystem::path&) { return text; });
}
Filled filled(const std::string& survey) {
  const Opened o = opened(car);
  return read_filled(survey, o.build, o.units);
}
std::string faults_of(const Filled& f) {
  std::string all;
  for (auto& d : f.faults.all()) all += say(d, {"survey.toml"}) + "\n";
  return all;
}

TEST(Filled, WhatIsFilledInIsMeasured) {
  const Filled f = filled("note = \"AB, in the yard\"\nvehicle.wheelbase = \"112 1/4 in\"\nvehicle.weight = \"\"\n");
  ASSERT_EQ(f.taken.size(), 1u) << faults_of(f);
  EXPECT_EQ(f.blank, 1u);
  EXPECT_EQ(f.taken[0].was, "112 in, typical");
  EXPECT_EQ(f.taken[0].now, "112 1/4 in, measured");
  Diagnostics faults;
  const auto text = put_in(car, f, faults);
  ASSERT_TRUE(text);
  EXPECT_NE(text->find("wheelbase = { value = \"112 1/4 in\", from = \"measured\", note = \"AB, in the yard\" } # hub"),
            std::string::npos)
      << *text;
  EXPECT_TRUE(text->starts_with("# my car\n"));
  EXPECT_TRUE(reads_back(opened(*text).build, f));
  EXPECT_FALSE(reads_back(opened(car).build, f)) << "the old text does not hold it";
}

TEST(Filled, EvidenceAndPlusMinusOfItsOwnStay) {
  const Filled f = filled(
      "vehicle.wheelbase = { value = \"111 in\", plus_minus = \"1 in\" }\n"
      "vehicle.weight = { value = \"3600 lb\", from = \"data sheet\" }\n");
  ASSERT_EQ(f.taken.size(), 2u) << faults_of(f);
  Diagnostics faults;
  const Opened after = opened(put_in(car, f, faults).value_or(""));
  EXPECT_NEAR(after.build.evidence.at("vehicle.wheelbase").half_width, 0.0254, 1e-9);
  EXPECT_EQ(after.build.evidence.at("vehicle.wheelbase").source, Source::measured);
  EXPECT_EQ(after.build.evidence.at("vehicle.weight").source, Source::data_sheet);
}

// 112 in typical stands for 112 in +- 20 %: 150 in lies beyond it, 120 in does not.
TEST(Filled, TellsWhatLiesBeyondTheDoubtOfWhatStoodThere) {
  EXPECT_TRUE(filled("vehicle.wheelbase = \"150 in\"").taken.at(0).beyond_its_doubt);
  EXPECT_FALSE(filled("vehicle.wheelbase = \"120 in\"").taken.at(0).beyond_its_doubt);
}

TEST(Filled, EveryFaultAtOnceWithItsLine) {
  const Filled f = filled(
      "vehicle.wheelbase = \"9000 in\"\n"
      "vehicle.weihgt = \"3600 lb\"\n"
      "wiring.load.lamp.current = \"9 A\"\n"
      "vehicle.front_share = \"55 psi\"\n"
      "base = \"other.toml\"\n");
  EXPECT_TRUE(f.taken.empty()) << "nothing is taken of a survey with faults";
  const std::string all = faults_of(f);
  EXPECT_NE(all.find("survey.toml:1:"), std::string::npos) << all;
  EXPECT_NE(all.find("did you mean \"weight\"?"), std::string::npos) << all;
  EXPECT_NE(all.find("wiring.load.lamp: the build has no such entry; did you mean \"lamps\"?"), std::string::npos)
      << all;
  EXPECT_NE(all.find("survey.toml:4:"), std::string::npos) << all;
  EXPECT_NE(all.find("a survey holds figures alone"), std::string::npos) << all;
}

TEST(Filled, NoTomlIsOneFault) {
  const Filled f = filled("vehicle.wheelbase = 112 in\n");
  EXPECT_TRUE(f.faults.any_fault());
  EXPECT_TRUE(f.taken.empty());
}

}  // namespace
}  // namespace sw
