#include "field/words.hpp"

#include <gtest/gtest.h>

#include "field/sample_car.hpp"

namespace sw {
namespace {

using sample::Wire;

TEST(Words, LongTextsAreCutBetweenCharacters) {
  std::string text(59, 'x');
  EXPECT_EQ(in_quotes(text), '"' + text + '"');
  EXPECT_EQ(in_quotes(text + "éé"), '"' + text + "…\"") << "the cut must not fall inside a character";
}

TEST(Words, Lists) {
  const std::string_view three[] = {"a", "b", "c"};
  EXPECT_EQ(one_of(three), "\"a\", \"b\" or \"c\"");
  EXPECT_EQ(one_of(std::span(three).first(1)), "\"a\"");
  EXPECT_EQ(one_of({}), "");
}

TEST(Words, RangesOfWireSizesInGaugeNumbers) {
  constexpr FieldInfo f = quantity<&Wire::gauge>("gauge", "wire size", kind::wire_size).in("AWG").from(-3, 24);
  EXPECT_EQ(range_words(f), "4/0 AWG to 24 AWG");
}

TEST(Words, OneNameInTwoSpellings) {
  EXPECT_TRUE(same_words("engine bay", "engine-bay"));
  EXPECT_TRUE(same_words("12 V", "12v"));
  EXPECT_FALSE(same_words("engine bay", "engine"));
  EXPECT_FALSE(same_words("6 V", "12 V"));
  EXPECT_FALSE(same_words("a", ""));
}

TEST(Words, AnotherWordOfTheTradeForAChoice) {
  const std::string_view drives[] = {"alternator", "coolant pump", "fan"};
  EXPECT_EQ(choice_meant("water pump", drives), "did you mean \"coolant pump\"?");
  EXPECT_EQ(choice_meant("Dynamo", drives), "did you mean \"alternator\"?");
  EXPECT_EQ(choice_meant("colant pump", drives), "did you mean \"coolant pump\"?");
  EXPECT_EQ(choice_meant("water pump", std::span(drives).last(1)), "");
}

TEST(Words, Spreads) {
  constexpr FieldInfo f = quantity<&Wire::length>("x", "x", kind::length)
                              .spread(Source::measured, {.share = 0.02, .absolute = 0.25})
                              .spread(Source::typical, {.absolute = 1});
  EXPECT_EQ(spread_words(f, Source::measured), "2 % + 0.25 in");
  EXPECT_EQ(spread_words(f, Source::typical), "1 in");
  EXPECT_EQ(spread_words(f, Source::chosen), "exact");
}

TEST(Words, Paths) {
  EXPECT_EQ(below("", "a"), "a");
  EXPECT_EQ(below("a.b", "c"), "a.b.c");
}

TEST(Words, WhereAKeyStands) {
  const auto fields = sample::Car::fields();
  EXPECT_EQ(stands_elsewhere(fields, "no_such_key"), "");
  const auto paths = paths_of(fields, "core_width");
  ASSERT_EQ(paths.size(), 1u);
  EXPECT_EQ(stands_elsewhere(fields, "core_width"), "did you mean " + paths[0] + "?");
}

}  // namespace
}  // namespace sw
