#include <gtest/gtest.h>

#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

std::string text_of(const std::string& file) {
  std::ostringstream all;
  all << std::ifstream(file, std::ios::binary).rdbuf();
  return all.str();
}

/// The sound demo with a pedal far too easy and no word on how it came about.
std::string easy_pedal() {
  return "# my car\nbase = \"" + demo("sound.toml") +
         "\"\n[brakes.pedal]\nratio = 6.0 # guessed\n\n# brakes end here\n";
}

TEST(Solve, ListsWhatCanBeFound) {
  const Ran r = ran({"solve", demo("sound.toml")});
  EXPECT_EQ(r.code, 0) << r.err;
  EXPECT_NE(r.out.find("pedal-ratio"), std::string::npos);
  const Scratch scratch;
  const Ran bare = ran({"solve", scratch.file("bare.toml", ""), "--json"});
  EXPECT_EQ(bare.code, 0);
  std::size_t lacking = 0;
  const auto j = nlohmann::json::parse(bare.out);
  for (auto& k : j["keys"]) lacking += !k["missing"].empty();
  EXPECT_GT(lacking, 0u) << "of an empty build nothing can be solved";
}

TEST(Solve, NamesTheNearestKeyAndAll) {
  const Ran r = ran({"solve", demo("sound.toml"), "pedal-ration"});
  EXPECT_EQ(r.code, 2);
  EXPECT_NE(r.err.find("did you mean pedal-ratio?"), std::string::npos) << r.err;
  EXPECT_NE(r.err.find("proportioning"), std::string::npos) << r.err;
  EXPECT_EQ(ran({"solve", demo("sound.toml"), "--write"}).code, 2);
}

TEST(Solve, MissingFiguresEndWithThree) {
  const Scratch scratch;
  const Ran r = ran({"solve", scratch.file("bare.toml", ""), "pedal-ratio"});
  EXPECT_EQ(r.code, 3) << r.err;
  EXPECT_NE(r.out.find("needs"), std::string::npos);
}

// Too little room under the pedal for unassisted brakes: no ratio, and why.
TEST(Solve, NoSolutionEndsWithOneAndSaysWhy) {
  const Scratch scratch;
  const std::string file = scratch.file(
      "hard.toml", "base = \"" + demo("sound.toml") +
                       "\"\n[brakes.booster]\nfitted = false\n[brakes.master]\nbore = \"1.25 in\"\n[brakes.pedal]\n"
                       "travel = \"4 in\"\n");
  const Ran r = ran({"solve", file, "pedal-ratio", "--write"});
  EXPECT_EQ(r.code, 1) << r.out << r.err;
  EXPECT_NE(r.out.find("No solution"), std::string::npos);
  EXPECT_EQ(text_of(file).find("solved"), std::string::npos) << "nothing is written";
}

// The base holds every other figure and is not touched; comments and order of the user's own text stay.
TEST(Solve, WritesIntoTheUsersOwnText) {
  const Scratch scratch;
  const std::string file = scratch.file("mine.toml", easy_pedal()), base_before = text_of(demo("sound.toml"));
  const Ran wrote = ran({"solve", file, "pedal-ratio", "--write"});
  ASSERT_EQ(wrote.code, 0) << wrote.err;
  const std::string now = text_of(file);
  EXPECT_NE(now.find("from = \"solved\" } # guessed\n\n# brakes end here\n"), std::string::npos) << now;
  EXPECT_TRUE(now.starts_with("# my car\n"));
  EXPECT_EQ(text_of(demo("sound.toml")), base_before);
  EXPECT_NE(wrote.out.find("fails at"), std::string::npos) << wrote.out;
  EXPECT_NE(wrote.out.find("[brakes.pedal]\n  ratio = { value = "), std::string::npos) << wrote.out;
  EXPECT_NE(wrote.out.find("care"), std::string::npos) << "the caution stands with it";
}

TEST(Solve, JsonTellsBeforeAndAfter) {
  const Scratch scratch;
  const std::string file = scratch.file("m.toml", easy_pedal());
  const auto j = nlohmann::json::parse(ran({"solve", file, "pedal-ratio", "--json"}).out);
  EXPECT_EQ(text_of(file), easy_pedal()) << "without --write nothing is written";
  EXPECT_EQ(j["key"], "pedal-ratio");
  EXPECT_TRUE(j["solved"]);
  EXPECT_EQ(j["settings"][0]["old"], "6");
  ASSERT_FALSE(j["findings"].empty());
  EXPECT_EQ(j["findings"][0]["before"]["state"], "fails");
  EXPECT_EQ(j["findings"][0]["after"]["state"], "holds");
  EXPECT_TRUE(j["written"].is_null());
  EXPECT_FALSE(j["caution"].is_null());
}

TEST(Solve, RefusesToEditJson) {
  const Scratch scratch;
  const std::string file = scratch.file("m.json", "{\"base\": \"" + demo("sound.toml") + "\"}");
  const Ran r = ran({"solve", file, "pedal-ratio", "--write"});
  EXPECT_EQ(r.code, 2);
  EXPECT_NE(r.err.find("JSON"), std::string::npos) << r.err;
}

}  // namespace
}  // namespace sw::cli
