#include "model/caution.hpp"

#include <gtest/gtest.h>

#include <set>
#include <string>

namespace sw {
namespace {

constexpr int last = static_cast<int>(Caution::bolts_let_go);

TEST(Caution, EachButNoneHasAShortNameAndATextOfItsOwn) {
  std::set<std::string_view> names, texts;
  for (int i = 1; i <= last; ++i) {
    const auto c = static_cast<Caution>(i);
    EXPECT_FALSE(caution_name(c).empty()) << i;
    EXPECT_LT(caution_name(c).size(), 40u);
    EXPECT_GT(caution_text(c).size(), caution_name(c).size());
    EXPECT_EQ(caution_text(c).back(), '.') << caution_text(c);
    names.insert(caution_name(c));
    texts.insert(caution_text(c));
  }
  EXPECT_EQ(names.size(), static_cast<std::size_t>(last));
  EXPECT_EQ(texts.size(), static_cast<std::size_t>(last));
  EXPECT_TRUE(caution_name(Caution::none).empty());
  EXPECT_TRUE(caution_text(Caution::none).empty());
}

/// The table is by position: each word must stand under its own enumerator.
TEST(Caution, SpeaksOfItsOwnDanger) {
  struct Row {
    Caution caution;
    std::string_view word;
  };
  for (auto [c, word] : {Row{Caution::electrical_fire, "fuse"},
                         {Caution::battery_gas, "acid"},
                         {Caution::fans_start, "fans"},
                         {Caution::belts_pulleys, "pulleys"},
                         {Caution::hot_coolant, "scalds"},
                         {Caution::carbon_monoxide, "exhaust"},
                         {Caution::refrigerant, "icensed"},
                         {Caution::lift, "stands"},
                         {Caution::fuel_fire, "vapour"},
                         {Caution::braking_loss, "brakes"},
                         {Caution::brake_fluid, "fluid"},
                         {Caution::old_linings, "asbestos"},
                         {Caution::wheels_tyres, "wheel"},
                         {Caution::runaway_throttle, "throttle"},
                         {Caution::high_voltage, "pacemaker"},
                         {Caution::knock, "timing light"}})
    EXPECT_NE(caution_text(c).find(word), std::string_view::npos) << word;
}

TEST(Caution, AProofSaysWhatItIsNot) {
  EXPECT_NE(proof_limits().find("not a certificate"), std::string_view::npos);
  EXPECT_NE(proof_limits().find("licensed"), std::string_view::npos);
}

}  // namespace
}  // namespace sw
