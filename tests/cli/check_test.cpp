#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

// By the words of the design: 1 where something fails, 3 where nothing fails but something cannot be told, 0 only where
// all is looked at and nothing fails. The demos are what their titles say.
TEST(Check, EndsWithOneWhereADemoIsMeantToFail) {
  const Ran r = ran({"check", demo("starved.toml"), "--duty", "hot-idle", "--json"});
  ASSERT_EQ(r.err, "");
  EXPECT_EQ(r.code, 1) << "62 A short and hot by it";
  const auto j = nlohmann::json::parse(r.out);
  EXPECT_EQ(j["duties"], nlohmann::json{"hot-idle"});
  std::size_t fails = 0;
  for (auto& f : j["findings"]) fails += f["state"] == "fails";
  EXPECT_GT(fails, 0u);
  EXPECT_EQ(j["summary"]["fails"], fails) << "the counts are those of the findings";
}

TEST(Check, EndsWithNoughtForTheSoundDemo) {
  EXPECT_EQ(ran({"check", demo("sound.toml"), "--duty", "cruise"}).code, 0);
}

TEST(Check, CallsAFileWithoutFiguresUnproven) {
  const Scratch scratch;
  const Ran r = ran({"check", scratch.file("bare.toml", ""), "--duty", "hot-idle"});
  EXPECT_EQ(r.code, 3) << r.err;
  EXPECT_NE(r.out.find("MISSING"), std::string::npos);
  EXPECT_NE(r.out.find("Measure next: "), std::string::npos);
}

TEST(Check, TellsFaultsInPlaceOfAProof) {
  const Scratch scratch;
  const std::string file = scratch.file("bad.toml", "[engine]\nidle_speed = \"fast\"\n");
  EXPECT_EQ(ran({"check", file}).code, 2);
  const Ran r = ran({"check", file, "--json"});
  EXPECT_EQ(r.code, 2);
  const auto j = nlohmann::json::parse(r.out);
  ASSERT_EQ(j["faults"].size(), 1u);
  EXPECT_EQ(j["faults"][0]["path"], "engine.idle_speed");
  EXPECT_EQ(j["faults"][0]["line"], 2);
}

TEST(Check, OpensOneFinding) {
  const Ran r = ran({"check", demo("sound.toml"), "--because", "charging.crank-voltage@cold-crank"});
  EXPECT_TRUE(r.code == 0 || r.code == 1) << r.err;
  EXPECT_NE(r.out.find("FROM CAUSE TO EFFECT"), std::string::npos);
  const Ran wrong = ran({"check", demo("sound.toml"), "--because", "charging.crank-voltag@cold-crank"});
  EXPECT_EQ(wrong.code, 2);
  EXPECT_EQ(wrong.err,
            "streetwright: there is no one finding \"charging.crank-voltag@cold-crank\"; did you mean "
            "charging.crank-voltage@cold-crank?\n");
}

TEST(Check, RefusesADutyThatIsNotThere) {
  const Ran r = ran({"check", demo("sound.toml"), "--duty", "hot-idel"});
  EXPECT_EQ(r.code, 2);
  EXPECT_EQ(r.out, "");
}

}  // namespace
}  // namespace sw::cli
