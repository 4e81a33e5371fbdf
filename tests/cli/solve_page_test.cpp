#include "cli/solve_page.hpp"

#include <gtest/gtest.h>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

constexpr Solver invented{.key = "fan-size", .title = "fan size", .judged_by = "charging.balance"};

Proof proof_of(std::vector<Finding> findings) {
  Proof p;
  p.findings = std::move(findings);
  return p;
}

Finding mended() {
  Finding f = short_of_current();
  f.state = State::holds;
  f.predicted = f.margin = 5;
  return f;
}

TEST(SolvePage, PairsFindingsByIdAndTellsOnlyWhatChangesElsewhere) {
  SolveTold told{.solver = &invented, .tried = true};
  Finding cap = unknown_cap(), near = short_of_current();
  near.id = "charging.balance-night@hot-idle";  // begins alike and is another
  const Proof before = proof_of({short_of_current(), hot_coolant(), cap, near});
  cap.state = State::holds;
  const Proof after = proof_of({mended(), hot_coolant(), cap, near});
  compare(before, after, "charging.balance", told);
  ASSERT_EQ(told.concerned.size(), 1u);
  EXPECT_EQ(told.concerned[0].before->state, State::fails);
  EXPECT_EQ(told.concerned[0].after->state, State::holds);
  ASSERT_EQ(told.elsewhere.size(), 1u);
  EXPECT_EQ(told.elsewhere[0].any().id, "cooling.cap");
  EXPECT_EQ(told.exit_code(), exit_code::good);
  const std::string page = solve_page(told, {}, {});
  EXPECT_NE(page.find("fails at -7 A ± 3 A → holds at 5 A"), std::string::npos) << page;
}

TEST(SolvePage, JudgedBySeveralRequirements) {
  SolveTold told{.solver = &invented, .tried = true};
  Finding cap = unknown_cap();
  const Proof before = proof_of({short_of_current(), cap}), after = proof_of({mended(), cap});
  compare(before, after, "charging.balance cooling.cap", told);
  EXPECT_EQ(told.concerned.size(), 2u);
  EXPECT_TRUE(told.elsewhere.empty());
}

TEST(SolvePage, BreakingSomethingElseIsNoSuccess) {
  SolveTold told{.solver = &invented, .tried = true};
  Finding wire = thick_wire();
  const Proof before = proof_of({short_of_current(), wire});
  wire.state = State::fails;
  const Proof after = proof_of({mended(), wire});
  compare(before, after, "charging.balance", told);
  EXPECT_EQ(told.exit_code(), exit_code::fails);
}

// What --write must not do: move a car past a limit that keeps people from harm; a nuisance it may.
TEST(SolvePage, HarmElsewhereKeepsTheSettingsOut) {
  for (const Hazard hazard : {Hazard::harm, Hazard::nuisance}) {
    SolveTold told{.solver = &invented, .tried = true, .kept_out = true};
    Finding wire = thick_wire();
    wire.hazard = hazard;
    const Proof before = proof_of({short_of_current(), wire});
    wire.state = State::fails;
    const Proof after = proof_of({mended(), wire});
    compare(before, after, "charging.balance", told);
    EXPECT_EQ(told.harmed().size(), hazard == Hazard::harm ? 1u : 0u);
    // Said at the settings already, whether or not somebody asked to have them written.
    told.settings.push_back({});
    EXPECT_EQ(solve_page(told, {}, {}).find("Not by itself") != std::string::npos, hazard == Hazard::harm);
    if (hazard == Hazard::harm) {
      EXPECT_NE(solve_page(told, {}, {}).find("Not written"), std::string::npos);
      EXPECT_NE(solve_json(told).find("\"kept_out_by\": [\n    \"" + wire.id), std::string::npos) << solve_json(told);
    }
  }
}

TEST(SolvePage, MissingCountsBeforeTrouble) {
  SolveTold told{.solver = &invented};
  told.solution.trouble = "no fan is that small";
  EXPECT_EQ(told.exit_code(), exit_code::fails);
  EXPECT_NE(solve_page(told, {}, {}).find("No solution: no fan is that small"), std::string::npos);
  told.solution.missing = {"cooling.fan"};
  EXPECT_EQ(told.exit_code(), exit_code::unproven);
}

}  // namespace
}  // namespace sw::cli
