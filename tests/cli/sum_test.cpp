#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

const std::vector<std::string> equal_steps = {"sum",
                                              "lmtd",
                                              "arrangement=counterflow",
                                              "t_hot_in=90 degC",
                                              "t_hot_out=70 degC",
                                              "t_cold_in=40 degC",
                                              "t_cold_out=60 degC"};

// With the same 30 K at both ends the mean is 30 K, by the definition of a mean.
TEST(Sum, GivesItsOutputsInTheUnitAskedFor) {
  auto words = equal_steps;
  EXPECT_NE(ran(words).out.find("lmtd = 30 K\n"), std::string::npos) << ran(words).out << ran(words).err;
  words.insert(words.end(), {"--unit", "lmtd=degF"});
  EXPECT_NE(ran(words).out.find("lmtd = 54 degF\n"), std::string::npos);
  words.emplace_back("--json");
  EXPECT_DOUBLE_EQ(nlohmann::json::parse(ran(words).out)["outputs"]["lmtd"]["value"], 54);
}

TEST(Sum, TellsEveryFaultAtOnce) {
  const Ran r = ran({"sum", "lmtd", "t_hot_in=90 psi", "colour=red"});
  EXPECT_EQ(r.code, 2);
  EXPECT_EQ(r.out, "");
  EXPECT_NE(r.err.find("t_hot_in: "), std::string::npos);
  EXPECT_NE(r.err.find("colour: "), std::string::npos);
  EXPECT_EQ(ran({"sum", "lmdt", "x=1"}).code, 2);
}

TEST(Sum, DescribesItselfWithoutInputs) {
  const Ran r = ran({"sum", "lmtd"});
  EXPECT_EQ(r.code, 0);
  EXPECT_NE(r.out.find("t_hot_in"), std::string::npos);
}

TEST(Sum, ListsAll) {
  const Ran r = ran({"sum", "--list"});
  EXPECT_EQ(r.code, 0);
  EXPECT_NE(r.out.find("\nlmtd: "), std::string::npos);
}

}  // namespace
}  // namespace sw::cli
