// The commands on the network itself: faults and states, on the demo cars.
#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

const std::string demo = STREETWRIGHT_SOURCE_DIR "/demo/sound.toml";

TEST(WiringCommands, FaultsTellWhereTheCurrentGoes) {
  const Ran r = ran({"faults", demo});
  EXPECT_EQ(r.code, 0) << r.err;
  EXPECT_NE(r.out.find("block_ground open"), std::string::npos);
  EXPECT_NE(r.out.find("starter is dead"), std::string::npos);
  EXPECT_NE(r.out.find("the fuse of charge opens"), std::string::npos);
  EXPECT_NE(r.out.find("set the car on fire"), std::string::npos);  // the caution
}

TEST(WiringCommands, FaultsOfOneDutyAsJson) {
  const auto all = nlohmann::json::parse(ran({"faults", demo, "--duty", "cold-crank", "--json"}).out);
  for (auto& f : all["faults"]) EXPECT_EQ(f["duty"], "cold-crank");
  EXPECT_TRUE(std::any_of(all["faults"].begin(), all["faults"].end(), [](auto& f) {
    return f["fault"] == "starter_cable open" && f["happens"].size() == 1 && f["happens"][0]["effect"] == "dead";
  }));
  EXPECT_EQ(ran({"faults", demo, "--duty", "cold-cranc"}).code, 2);
}

TEST(WiringCommands, AFaultThatBurnsEndsWithOne) {
  const Scratch scratch;
  const std::string file = scratch.file("car.toml", "base = \"" + demo +
                                                        "\"\n[wiring.run.shift_cable]\nfrom = \"block\"\nto = "
                                                        "\"body\"\nresistance = \"300 mohm\"\nstray = true\n");
  const Ran r = ran({"faults", file});
  EXPECT_EQ(r.code, 1) << r.out << r.err;
  EXPECT_NE(r.out.find("shift_cable burns"), std::string::npos) << r.out;
}

TEST(WiringCommands, StatesShowWhoIsFedWhen) {
  const Ran r = ran({"states", demo});
  EXPECT_EQ(r.code, 0) << r.err;
  EXPECT_NE(r.out.find("key off, engine still turning"), std::string::npos);
  const auto all = nlohmann::json::parse(ran({"states", demo, "--json"}).out)["states"];
  for (auto& s : all) {
    const bool hit = s["state"] == "just hit", primed = s["state"] == "key just turned on";
    const std::string pump = s["loads"]["fuel_pump"];
    if (hit) {
      EXPECT_EQ(pump, "0 V");
    }
    if (primed) {
      EXPECT_NE(pump, "0 V");
    }
  }
}

/// A lamp as large as a headlamp's between coil and exciter keeps the engine running with the key off.
TEST(WiringCommands, AStateThatIsWrongIsMarkedAndTold) {
  const Scratch scratch;
  const std::string file =
      scratch.file("car.toml", "base = \"" + demo + "\"\n[wiring.load.charge_lamp]\ncurrent = \"4 A\"\n");
  const Ran r = ran({"states", file});
  EXPECT_NE(r.out.find("ignition: must be dead here"), std::string::npos) << r.out;
  EXPECT_NE(r.out.find("backwards through charge_lamp"), std::string::npos) << r.out;
  const auto page = nlohmann::json::parse(ran({"states", file, "--json"}).out);
  bool told = false;
  for (auto& s : page["states"])
    if (s.contains("not_as_it_must_be")) told |= s["not_as_it_must_be"].front() == "ignition";
  EXPECT_TRUE(told);
}

TEST(WiringCommands, ABuildWithoutWiringIsSaid) {
  const Scratch scratch;
  EXPECT_EQ(ran({"states", scratch.file("car.toml", "[vehicle]\nweight = \"3000 lb\"\n")}).code, 3);
}

}  // namespace
}  // namespace sw::cli
