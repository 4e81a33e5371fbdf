#include <gtest/gtest.h>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

TEST(Simulate, NeedsADutyThereIs) {
  EXPECT_EQ(ran({"simulate", demo("sound.toml")}).err,
            "streetwright: simulate: --duty is missing; write streetwright simulate BUILD --duty DUTY [--csv]\n");
  EXPECT_EQ(ran({"simulate", demo("sound.toml"), "--duty", "cruize"}).code, 2);
}

TEST(Simulate, RunsADutyToItsEnd) {
  const Ran r = ran({"simulate", demo("sound.toml"), "--duty", "cold-crank"});
  EXPECT_EQ(r.code, 0) << r.err;
  EXPECT_TRUE(r.out.starts_with("cold-crank  ")) << r.out;
  EXPECT_NE(r.out.find("Ran 8 s of 8 s"), std::string::npos) << r.out;
}

TEST(Simulate, RunsWhatADutyStartsFromBeforeIt) {
  const Ran r = ran({"simulate", demo("sound.toml"), "--duty", "hot-soak", "--csv"});
  EXPECT_EQ(r.code, 0) << r.err;
  EXPECT_TRUE(r.out.starts_with("time [s],")) << r.out.substr(0, 60);
}

}  // namespace
}  // namespace sw::cli
