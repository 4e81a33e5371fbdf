// What a law may say beside its outputs.
#include <gtest/gtest.h>
#include "sum/sum.hpp"

namespace sw {
namespace {

TEST(Remarks, ANeedIsSilentWhereTheKeyWasGiven) {
  Remarks say({"bore"});
  say.need("bore", "or a dash size");  // given, even if it could not be read
  EXPECT_TRUE(say.faults().empty());
  say.need("length", "length of the pipe");
  ASSERT_EQ(say.faults().size(), 1u);
  EXPECT_EQ(say.faults()[0].key, "length");
  EXPECT_EQ(say.faults()[0].problem, "missing: length of the pipe");
}

TEST(Remarks, KeepsFaultsRangesAndNotesApart) {
  Remarks say;
  say.fault("a", "is wrong", "do better");
  say.outside("too hot");
  say.note("typical");
  EXPECT_EQ(say.faults()[0].hint, "do better");
  EXPECT_EQ(say.outside(), std::vector<std::string>{"too hot"});
  EXPECT_EQ(say.notes(), std::vector<std::string>{"typical"});
  EXPECT_FALSE(say.given("a"));
}

}  // namespace
}  // namespace sw
