// The whole page is a regression: our own output, looked at and kept.
#include <gtest/gtest.h>

#include "cli/page.hpp"
#include "cli/report.hpp"
#include "cli/sample_proof.hpp"
#include "repository/files.hpp"

namespace sw::cli {
namespace {

TEST(BecausePage, AsAWhole) {
  EXPECT_EQ(because_page(short_of_current(), {.width = 80, .unicode = true, .colour = false}),
            repository::read_file(repository::root() / "tests/cli/golden/because_80.txt"));
}

TEST(BecausePage, StaysWithinAnyWidth) {
  for (auto& f : sample_proof().findings)
    for (int width = 60; width <= 200; width += 7)
      for (auto& line : repository::lines_of(because_page(f, {.width = width, .unicode = true, .colour = false})))
        EXPECT_LE(seen(line), width) << line;
}

TEST(BecausePage, TellsChoicesAndDoubtsApartTheWeightiestFirst) {
  Finding f = short_of_current();
  f.because.push_back(
      input("idle", 70, kind::shaft_speed, "rpm", Role::choice, {.source = Source::chosen}, "engine.idle_speed", -0.3));
  const auto text = because_page(f, {.width = 120, .unicode = true, .colour = false});
  const auto choose = text.find("TO CHOOSE"), doubt = text.find("IN DOUBT");
  EXPECT_LT(choose, text.find("engine.idle_speed"));
  EXPECT_LT(text.find("engine.idle_speed"), text.find("cooling.fan.left.current"));
  EXPECT_LT(text.find("cooling.fan.left.current"), doubt);
  EXPECT_LT(doubt, text.find("charging.alternator.hot_share"));
  EXPECT_NE(text.find("-18 A"), std::string::npos) << "0.3 of its scale of 60 A: " << text;
  EXPECT_NE(text.find("± 3 A"), std::string::npos) << "0.05 of it";
  EXPECT_LT(text.find("engine speed"), text.find("all loads together"));
}

TEST(FindFinding, TakesAnIdOrAStartThatFitsOne) {
  const Proof p = sample_proof();
  std::string hint;
  EXPECT_EQ(find_finding(p, "charging.balance@parade", hint), &p.findings[0]);
  EXPECT_EQ(find_finding(p, "wiring", hint), &p.findings[3]);
  EXPECT_EQ(find_finding(p, "charging.balance", hint), nullptr);
  EXPECT_EQ(hint, "which of charging.balance@parade, charging.balance@hot-idle is meant?");
  EXPECT_EQ(find_finding(p, "charging.balanec@parade", hint), nullptr);
  EXPECT_EQ(hint, "did you mean charging.balance@parade?");
  EXPECT_EQ(find_finding(p, "xyz", hint), nullptr);
  EXPECT_EQ(hint, "check with --all tells the ids");
}

TEST(FindFinding, TakesAWholeIdThoughOthersBeginSo) {
  Proof p = sample_proof();
  p.findings[1].id = "charging.balance";
  std::string hint;
  EXPECT_EQ(find_finding(p, "charging.balance", hint), &p.findings[1]);
}

}  // namespace
}  // namespace sw::cli
