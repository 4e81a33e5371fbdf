// Reading, faults, units and the two forms of a result, on sums of the registry.
#include "sum/run.hpp"

#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

namespace sw {
namespace {

std::string faults_of(const SumResult& r) {
  std::string text;
  for (auto& d : r.faults.all()) text += d.path + ": " + d.problem + "\n";
  return text;
}

TEST(RunSum, ShowsOneLineAnOutputThenRangeAndSource) {
  const auto r = run_sum("atmosphere", {"altitude=0 m"}, {"pressure=psi"});
  EXPECT_EQ(r.exit_code(), 0);
  EXPECT_EQ(r.to_text(),
            "pressure = 14.6959 psi\ntemperature = 15 degC\ndensity = 1.225 kg/m3\ndensity_ratio = 1\n"
            "viscosity = 0.0178938 mPa s\nrange: 5 km below to 11 km above the sea (geopotential)\n"
            "source: U.S. Standard Atmosphere, 1976\n");
}

TEST(RunSum, JsonHasTheAgreedForm) {
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

TEST(RunSum, TwoOfGivesTheThird) {
  // 10 L/min of 1 kg/L and 4200 J/(kg K) by 10 K: 7 kW, by hand
  const std::vector<std::string> water = {"density=1000 kg/m3", "specific_heat=4200 J/(kg K)"};
  auto with = [&](std::vector<std::string> more) {
    more.insert(more.end(), water.begin(), water.end());
    return run_sum("coolant-flow", more);
  };
  EXPECT_NEAR(with({"flow=10 L/min", "rise=10 K"}).output("heat")->numbers[0], 7, 1e-9);
  EXPECT_NEAR(with({"flow=10 L/min", "heat=7 kW"}).output("rise")->numbers[0], 10, 1e-9);
  EXPECT_NEAR(with({"rise=18 degF", "heat=7000 W"}).output("flow")->numbers[0], 10, 1e-9);
  EXPECT_EQ(with({"flow=10 L/min", "rise=10 K"}).output("flow"), nullptr);
  EXPECT_EQ(with({"flow=10 L/min"}).exit_code(), 2);
  EXPECT_EQ(with({"flow=10 L/min", "rise=10 K", "heat=7 kW"}).exit_code(), 2);
}

TEST(RunSum, OutsideTheLawsRangeIsShownAndMarked) {
  const auto r = run_sum("friction-factor", {"reynolds=3000", "relative_roughness=0"});
  EXPECT_EQ(r.exit_code(), 3);
  EXPECT_NE(r.output("factor"), nullptr);
  EXPECT_NE(r.to_text().find("outside the range: "), std::string::npos);
  EXPECT_EQ(nlohmann::json::parse(r.to_json())["valid"], false);
  EXPECT_EQ(run_sum("exchanger", {"arrangement=parallel", "capacity_ratio=1", "effectiveness=0.6"}).exit_code(), 3);
}

TEST(RunSum, AFluidIsNamedOrGivenByItsFigures) {
  const std::vector<std::string> pipe = {"flow=30 gal/h", "bore=0.305 in", "length=14 ft"};
  auto with = [&](std::vector<std::string> more) {
    more.insert(more.end(), pipe.begin(), pipe.end());
    return run_sum("pipe-loss", more);
  };
  EXPECT_EQ(with({"fluid=gasoline", "temperature=40 degC"}).exit_code(), 0);
  EXPECT_EQ(with({"density=745 kg/m3", "viscosity=0.5 mPa s"}).exit_code(), 0);
  EXPECT_NE(
      faults_of(with({"fluid=water", "temperature=20 degC", "density=1 kg/m3"})).find("density: contradicts fluid"),
      std::string::npos);
  EXPECT_NE(
      faults_of(with({"fluid=ethylene-glycol", "temperature=20 degC"})).find("mass_fraction, volume_fraction: missing"),
      std::string::npos);
  EXPECT_NE(faults_of(with({"density=745 kg/m3"})).find("viscosity, kinematic_viscosity: missing"), std::string::npos);
  const auto dynamic = with({"density=800 kg/m3", "viscosity=0.8 mPa s"}),
             kinematic = with({"density=800 kg/m3", "kinematic_viscosity=1 mm2/s"});
  EXPECT_DOUBLE_EQ(dynamic.output("pressure_drop")->numbers[0], kinematic.output("pressure_drop")->numbers[0]);
}

TEST(RunSum, UnknownSumNamesTheNearest) {
  const auto r = run_sum("pipe-los", {});
  EXPECT_EQ(r.exit_code(), 2);
  EXPECT_NE(r.to_text().find("pipe-loss"), std::string::npos);
}

TEST(RunSum, ExchangerGivesTheSameFromWhicheverIsGiven) {
  const std::vector<std::string> base = {"arrangement=crossflow-unmixed",
                                         "capacity_hot=2 kW/K",
                                         "capacity_cold=900 W/K",
                                         "t_hot_in=95 degC",
                                         "t_cold_in=30 degC",
                                         "u=80 W/(m2 K)"};
  auto with = [&](const std::string& more) {
    auto args = base;
    args.push_back(more);
    return run_sum("exchanger", args);
  };
  const auto a = with("ua=1500 W/K");
  for (auto* key : {"ntu", "effectiveness", "heat", "t_hot_out", "t_cold_out"}) {
    const auto* v = a.output(key);
    const auto b =
        with(std::string(key) + "=" + nlohmann::json(v->numbers[0]).dump() + (v->unit == "-" ? "" : " " + v->unit));
    ASSERT_EQ(b.exit_code(), 0) << b.to_text();
    EXPECT_NEAR(b.output("ua")->numbers[0], a.output("ua")->numbers[0], 1e-6) << key;
    EXPECT_NEAR(b.output("area")->numbers[0], a.output("area")->numbers[0], 1e-6) << key;
  }
  EXPECT_EQ(run_sum("exchanger", {"arrangement=counterflow", "capacity_ratio=0.5", "heat=3 kW"}).exit_code(), 2);
}

// What every entry of the registry must hold.
TEST(Registry, EntriesAreWhole) {
  std::vector<std::string_view> names;
  for (auto* s : all_sums()) {
    names.push_back(s->name);
    EXPECT_FALSE(s->title.empty() || s->range.empty() || s->source.empty()) << s->name;
    EXPECT_FALSE(s->outputs.empty()) << s->name;
    EXPECT_NE(describe_sum(*s).find("outputs:"), std::string::npos);
    const auto in = s->make_in();
    for (auto& rule : s->rules)
      for (auto& key : rule.keys) {
        if (key.empty()) continue;
        EXPECT_NE(describe_sum(*s).find("  " + std::string(key) + ": "), std::string::npos)
            << s->name << " has a rule on " << key;
      }
    EXPECT_EQ(run_sum(s->name, {"no_such_key=1"}).exit_code(), 2) << s->name;
  }
  auto sorted = names;
  std::sort(sorted.begin(), sorted.end());
  EXPECT_EQ(std::adjacent_find(sorted.begin(), sorted.end()), sorted.end()) << "two sums of one name";
}

}  // namespace
}  // namespace sw
