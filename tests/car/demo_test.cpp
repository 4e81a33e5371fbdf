// What the demo cars are there to show. The figures are a regression: our own output, no reference.
#include <gtest/gtest.h>

#include <regex>

#include "car/files.hpp"
#include "proof/proof.hpp"

namespace sw {
namespace {

Proof proof_of(const Build& build) { return prove(build, *duties_of(build, from_disk()), {.threads = 1}); }
Proof proof_of(const Opened& o) {
  EXPECT_EQ(files::said(o), "");
  return proof_of(o.build);
}

const Finding* finding(const Proof& proof, std::string_view id) {
  for (auto& f : proof.findings)
    if (f.id == id) return &f;
  return nullptr;
}

std::string told(const Proof& proof, State state) {
  std::string all;
  for (auto& f : proof.findings)
    if (f.state == state) all += f.id + "\n";
  return all;
}

TEST(SoundDemo, HoldsThroughout) {
  const Proof proof = proof_of(open(files::root() / "demo/sound.toml", from_disk()));
  EXPECT_GT(proof.count(State::holds), 250u);
  EXPECT_EQ(told(proof, State::fails), "");
  EXPECT_EQ(told(proof, State::unproven), "");
  EXPECT_LE(proof.count(State::tight), 3u) << told(proof, State::tight);
}

constexpr std::string_view hot = "cooling.coolant-temperature@hot-idle";

/// Too hot at a hot idle, clearly; the only other faults are the shortage behind it and the pulley meant to cure it.
TEST(StarvedDemo, FailsWhereItIsMeantToAndNowhereElse) {
  const Proof proof = proof_of(open(files::root() / "demo/starved.toml", from_disk()));
  auto* f = finding(proof, hot);
  ASSERT_TRUE(f && f->predicted);
  EXPECT_EQ(f->state, State::fails);
  EXPECT_GT(*f->predicted - f->half_width, 105 + 273.15);
  EXPECT_EQ(told(proof, State::unproven), "");
  const std::regex meant(
      "(charging\\.balance|charging\\.bus-voltage|charging\\.charge-left|charging\\.recharge)@.*|charging\\.alternator-"
      "speed|" +
      std::regex_replace(std::string(hot), std::regex("\\."), "\\."));
  for (auto& other : proof.findings)
    if (other.state == State::fails) {
      EXPECT_TRUE(std::regex_match(other.id, meant)) << other.id;
    }
  EXPECT_EQ(finding(proof, "charging.alternator-speed")->state, State::fails);
  EXPECT_LE(proof.count(State::tight), 4u) << told(proof, State::tight);
}

/// The same car with a machine that gives its current at idle: the fans get their volts and it holds by some kelvin.
TEST(StarvedDemo, HoldsWithTheVoltsItsFansAreMadeFor) {
  auto text = files::text_of(files::root() / "demo/starved.toml");
  const std::string machine = "big-frame-200", pulley = "diameter = { value = \"2.5 in\"";
  ASSERT_NE(text.find(machine), std::string::npos);
  ASSERT_NE(text.find(pulley), std::string::npos);
  text.replace(text.find(machine), machine.size(), "high-idle-180");
  text.replace(text.find(pulley), pulley.size(), "diameter = { value = \"2.25 in\"");
  const files::Texts texts = {{"cured.toml", text}};
  const Proof proof = proof_of(open("cured.toml", files::from(texts)));
  EXPECT_EQ(told(proof, State::fails), "");
  auto* f = finding(proof, hot);
  ASSERT_TRUE(f && f->predicted);
  EXPECT_EQ(f->state, State::holds);
  EXPECT_LT(*f->predicted, 102 + 273.15);
}

TEST(StartingBuilds, MostlyHoldOnceTheirHarmFiguresAreFilledIn) {
  for (auto& path : files::builds_in("stock/templates")) {
    const Proof proof = proof_of(files::open_filled(path));
    EXPECT_GT(proof.count(State::holds), proof.findings.size() * 9 / 10)
        << path.filename() << " tight: " << told(proof, State::tight);
    EXPECT_EQ(told(proof, State::fails), "") << path.filename();
    EXPECT_EQ(told(proof, State::unproven), "") << path.filename();
  }
}

/// Straight from the form only what a shop must read for itself is open, and each open finding says what that is.
TEST(StartingBuilds, LeaveOpenOnlyWhatDecidesHarm) {
  for (auto& path : files::builds_in("stock/templates")) {
    const Proof proof = proof_of(open(path, from_disk()));
    EXPECT_EQ(told(proof, State::fails), "") << path.filename();
    EXPECT_GT(proof.count(State::unproven), 5u) << path.filename();
    for (auto& f : proof.findings) {
      if (f.state != State::unproven) continue;
      ASSERT_FALSE(f.missing.empty()) << f.id;  // without the system voltage little can be computed, harm or not
      for (auto& missing : f.missing) EXPECT_TRUE(find_field(build_fields(), missing)->harm) << f.id << ": " << missing;
    }
  }
}

}  // namespace
}  // namespace sw
