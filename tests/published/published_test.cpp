// Runs every row of tests/published/checks_*.toml through the sums.
#include <gtest/gtest.h>

#include "published/checks.hpp"

namespace sw::published {
namespace {

class Published : public testing::TestWithParam<Check> {};

TEST_P(Published, IsReached) {
  const Check& c = GetParam();
  ASSERT_FALSE(c.source.empty()) << "a check names its source";
  ASSERT_FALSE(c.provenance.empty()) << "a check says how its source was read";
  const SumResult r = result_of(c);
  ASSERT_EQ(r.exit_code(), 0) << r.to_text();
  const SumValue* got = r.output(c.output);
  ASSERT_NE(got, nullptr) << r.to_text();
  if (!c.expected_text.empty()) {
    EXPECT_EQ(got->text, c.expected_text) << c.source;
    return;
  }
  ASSERT_EQ(got->is_list, c.item > 0) << "a check of a list says which item, and no other does";
  ASSERT_GE(got->numbers.size(), std::max<std::size_t>(c.item, 1));
  EXPECT_EQ(got->unit, c.unit.empty() ? "-" : c.unit);
  EXPECT_NEAR(got->numbers[c.item > 0 ? c.item - 1 : 0], c.expected, half_width(c.tolerance, c.expected)) << c.source;
}

INSTANTIATE_TEST_SUITE_P(Rows, Published, testing::ValuesIn(all_checks()), [](const auto& row) {
  std::string name = row.param.id;
  std::replace_if(
      name.begin(), name.end(), [](char ch) { return !std::isalnum(static_cast<unsigned char>(ch)); }, '_');
  return name;
});

}  // namespace
}  // namespace sw::published
