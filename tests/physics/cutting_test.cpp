#include "physics/cutting.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

namespace sw::physics {
namespace {

/// Every way to give the pieces to the sticks, one by one: least length opened, then fewest sticks.
std::optional<std::pair<double, int>> by_trying_all(const std::vector<double>& pieces,
                                                    const std::vector<StickKind>& kinds, double kerf) {
  std::vector<double> sticks;
  for (auto& k : kinds) sticks.insert(sticks.end(), static_cast<std::size_t>(k.count), k.length);
  std::optional<std::pair<double, int>> best;
  std::size_t ways = 1;
  for (std::size_t i = 0; i < pieces.size(); ++i) ways *= sticks.size();
  for (std::size_t way = 0; way < ways; ++way) {
    std::vector<double> used(sticks.size(), 0);
    std::size_t rest = way;
    for (double p : pieces) used[rest % sticks.size()] += p + kerf, rest /= sticks.size();
    std::pair<double, int> opened{0, 0};
    bool fits = true;
    for (std::size_t k = 0; k < sticks.size(); ++k) {
      fits = fits && used[k] <= sticks[k] + kerf + 1e-9;
      if (used[k] > 0) opened.first += sticks[k], ++opened.second;
    }
    if (fits && (!best || opened < *best)) best = opened;
  }
  return best;
}

RC_GTEST_PROP(Cutting, NothingLessDoes, ()) {
  std::vector<double> pieces;
  for (int n = *rc::gen::inRange(1, 7); n > 0; --n) pieces.push_back(*rc::gen::inRange(1, 12));
  std::vector<StickKind> kinds;
  int sticks = 0;
  for (int n = *rc::gen::inRange(1, 4); n > 0; --n) {
    kinds.push_back({static_cast<double>(*rc::gen::inRange(4, 22)), *rc::gen::inRange(1, 3)});
    sticks += kinds.back().count;
  }
  RC_PRE(sticks > 0 && std::pow(sticks, pieces.size()) < 6000);
  const double kerf = 0.25 * *rc::gen::inRange(0, 5);
  bool gave_up = true;
  const auto plan = cut_plan(pieces, kinds, kerf, gave_up);
  const auto best = by_trying_all(pieces, kinds, kerf);
  RC_ASSERT(!gave_up);
  RC_ASSERT(plan.has_value() == best.has_value());
  if (!plan) return;
  RC_ASSERT(plan->proved);
  RC_ASSERT(std::abs(plan->opened_length - best->first) < 1e-9);
  RC_ASSERT(static_cast<int>(plan->opened.size()) == best->second);
  std::vector<double> used(plan->opened.size(), 0);
  std::vector<int> of_kind(kinds.size(), 0);
  for (std::size_t i = 0; i < pieces.size(); ++i) used.at(plan->stick_of[i]) += pieces[i] + kerf;
  for (std::size_t k = 0; k < used.size(); ++k) {
    RC_ASSERT(used[k] <= kinds[plan->opened[k]].length + kerf + 1e-9);
    RC_ASSERT(++of_kind[plan->opened[k]] <= kinds[plan->opened[k]].count);
  }
}

// An exercise of Winston, Operations Research, on timber (from memory): 25 pieces of 3 ft, 20 of 5 ft and 15 of 9 ft
// from 17 ft boards. Their 310 ft do not go into 18 boards, which hold 306; the book's answer is 19.
TEST(Cutting, TimberOfATextbook) {
  std::vector<double> pieces(25, 3.0);
  pieces.insert(pieces.end(), 20, 5.0);
  pieces.insert(pieces.end(), 15, 9.0);
  const std::vector<StickKind> boards{{17, 100}};
  bool gave_up = true;
  const auto plan = cut_plan(pieces, boards, 0, gave_up);
  ASSERT_TRUE(plan);
  EXPECT_TRUE(plan->proved);
  EXPECT_EQ(plan->opened.size(), 19u);
}

// Worked in a public forum of calculator users (read in a stored copy): of 10 ft boards two pieces of 3 ft, one of 8 and
// three of 4 take three, and 4 ft are left.
TEST(Cutting, BoardsOfAForumExample) {
  const std::vector<double> pieces{3, 3, 8, 4, 4, 4};
  const std::vector<StickKind> boards{{10, 9}};
  bool gave_up = true;
  const auto plan = cut_plan(pieces, boards, 0, gave_up);
  ASSERT_TRUE(plan && plan->proved);
  EXPECT_EQ(plan->opened.size(), 3u);
  EXPECT_NEAR(plan->opened_length - 26, 4, 1e-12);
}

TEST(Cutting, TheSawTakesItsShare) {
  const std::vector<double> halves(2, 5.0);
  const std::vector<StickKind> one{{10, 1}};
  bool gave_up = false;
  EXPECT_TRUE(cut_plan(halves, one, 0, gave_up));
  EXPECT_FALSE(cut_plan(halves, one, 0.1, gave_up));
  EXPECT_FALSE(gave_up);
}

TEST(Cutting, SaysWhereItWasNotProved) {
  const std::vector<double> pieces{7, 6, 5, 5, 4, 4, 3, 3, 2};
  const std::vector<StickKind> sticks{{10, 9}};
  bool gave_up = false;
  const auto plan = cut_plan(pieces, sticks, 0, gave_up, 12);
  EXPECT_TRUE(gave_up);
  ASSERT_TRUE(plan);
  EXPECT_FALSE(plan->proved);
}

}  // namespace
}  // namespace sw::physics
