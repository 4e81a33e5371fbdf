#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

TEST(Duties, ListsThoseShippedAndABuildsOwn) {
  const Scratch scratch;
  const std::string file = scratch.file(
      "car.toml", "[duty.ferry]\ntitle = \"queue for the ferry\"\nduration = \"20 min\"\nspeed = \"0 mph\"\n");
  EXPECT_TRUE(ran({"duties"}).out.starts_with("hot-idle "));
  const Ran r = ran({"duties", file});
  EXPECT_EQ(r.code, 0) << r.err;
  EXPECT_NE(r.out.find("\nferry            queue for the ferry · 20 min"), std::string::npos) << r.out;
  EXPECT_NE(r.out.find("of this build"), std::string::npos);
  const auto all = nlohmann::json::parse(ran({"duties", file, "--json"}).out)["duties"];
  EXPECT_EQ(all.front()["from"], "shipped");
  EXPECT_EQ(all.back()["key"], "ferry");
  EXPECT_EQ(all.back()["from"], "build");
  EXPECT_EQ(all.back()["duration"], "20 min");
}

TEST(Duties, TellsTheFaultsOfABuild) {
  const Scratch scratch;
  EXPECT_EQ(ran({"duties", scratch.file("car.toml", "[duty.ferry]\nspeed = \"0 mph\"\n")}).code, 2);
}

}  // namespace
}  // namespace sw::cli
