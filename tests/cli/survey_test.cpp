#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/sample_proof.hpp"
#include "field/stock.hpp"

namespace sw::cli {
namespace {

std::string text_of(const std::string& file) {
  std::ostringstream all;
  all << std::ifstream(file, std::ios::binary).rdbuf();
  return all.str();
}
std::string template_car() { return std::string(stock_text("templates/saloon.toml")); }

TEST(Survey, ListsByStationWithToolAndTolerance) {
  const Scratch scratch;
  const Ran r = ran({"survey", scratch.file("car.toml", template_car())});
  EXPECT_EQ(r.code, 0) << r.err;
  const auto seat = r.out.find("in the driver's seat"), under = r.out.find("underneath, on stands");
  EXPECT_LT(seat, under);
  EXPECT_LT(under, r.out.size());
  EXPECT_NE(r.out.find("brakes.pedal\n"), std::string::npos);
  EXPECT_NE(r.out.find("CARE"), std::string::npos);
  EXPECT_NE(r.out.find("loss of braking"), std::string::npos) << "the caution of what a figure decides\n" << r.out;
}

TEST(Survey, JsonTellsTheSame) {
  const Scratch scratch;
  const Ran r = ran({"survey", scratch.file("car.toml", template_car()), "--json"});
  const auto j = nlohmann::json::parse(r.out);
  ASSERT_GT(j["figures"].size(), 50u);
  for (auto& f : j["figures"]) {
    EXPECT_FALSE(f["tool"].get<std::string>().empty());
    EXPECT_FALSE(f["station"].get<std::string>().empty());
  }
}

TEST(Survey, AFilledFormGoesIntoTheBuildAndTheNextIsShorter) {
  const Scratch scratch;
  const std::string car = scratch.file("car.toml", template_car());
  const Ran form = ran({"survey", car, "--form"});
  ASSERT_EQ(form.code, 0);
  std::string text = form.out;
  const auto fill = [&](const std::string& path, const std::string& value) {
    const auto at = text.find("\n" + path + " = \"\"");
    ASSERT_NE(at, std::string::npos) << path;
    text.replace(at + 1, path.size() + 5, path + " = " + value);
  };
  fill("vehicle.system_voltage", "\"12 V\"");
  fill("vehicle.earth", "\"negative\"");
  fill("vehicle.wheelbase", "\"111 7/8 in\"");
  const Ran r = ran({"survey", car, "--read", scratch.file("survey.toml", text)});
  EXPECT_EQ(r.code, 0) << r.err;
  EXPECT_NE(r.out.find("3 figures taken"), std::string::npos) << r.out;
  const std::string now = text_of(car);
  EXPECT_NE(now.find("wheelbase = { value = \"111 7/8 in\", from = \"measured\" }"), std::string::npos) << now;
  EXPECT_EQ(now.find("# MEASURE system_voltage"), std::string::npos) << "the place kept for it is filled";
  const Ran next = ran({"survey", car, "--form"});
  EXPECT_EQ(next.out.find("\nvehicle.earth ="), std::string::npos);
}

TEST(Survey, FaultsAreToldInTheSurveyAndNothingIsWritten) {
  const Scratch scratch;
  const std::string car = scratch.file("car.toml", template_car());
  // Each figure is in its range; together they cannot be.
  const std::string survey = scratch.file("survey.toml", "engine.red_line = \"600 rpm\"\nvehicle.weight = \"3 psi\"\n");
  const Ran r = ran({"survey", car, "--read", survey});
  EXPECT_EQ(r.code, 2);
  EXPECT_NE(r.err.find("survey.toml:2:"), std::string::npos) << r.err;
  EXPECT_EQ(text_of(car), template_car());
  EXPECT_EQ(ran({"survey", car, "--read", scratch.path("none.toml")}).code, 2);
  EXPECT_EQ(ran({"survey", car, "--read", scratch.file("empty.toml", "")}).code, 2);
}

}  // namespace
}  // namespace sw::cli
