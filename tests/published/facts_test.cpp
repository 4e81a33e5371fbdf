// Published figures that no sum gives, each against what the program has in its place.
#include "published/facts.hpp"

#include <gtest/gtest.h>

#include "published/checks.hpp"

namespace sw::published {
namespace {

class Facts : public testing::TestWithParam<Fact> {};

TEST_P(Facts, AreTheProgramsOwn) {
  const Fact& f = GetParam();
  const double got = f.computed();
  switch (f.held) {
    case Held::near:
      EXPECT_NEAR(got, f.expected, half_width(std::string(f.tolerance), f.expected)) << f.source;
      break;
    case Held::at_least:
      EXPECT_GE(got, f.expected) << f.source;
      break;
    case Held::at_most:
      EXPECT_LE(got, f.expected) << f.source;
      break;
  }
}

INSTANTIATE_TEST_SUITE_P(Rows, Facts, testing::ValuesIn(facts()), [](const auto& row) {
  std::string name(row.param.id);
  std::replace_if(
      name.begin(), name.end(), [](char ch) { return !std::isalnum(static_cast<unsigned char>(ch)); }, '_');
  return name;
});

}  // namespace
}  // namespace sw::published
