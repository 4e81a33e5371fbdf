// The totals of schedules.hpp, where the traces are at hand.
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

#include "published/checks.hpp"
#include "published/schedules.hpp"

namespace sw::published {
namespace {

std::filesystem::path schedule(std::string_view file) {
  const char* data = std::getenv("STREETWRIGHT_DATA");
  if (!data) return {};
  for (auto folder : {std::filesystem::path(data), std::filesystem::path(data) / "cycles"})
    if (std::filesystem::exists(folder / file)) return folder / file;
  return {};
}

class Schedule : public testing::TestWithParam<Total> {};

TEST_P(Schedule, HasItsPublishedTotal) {
  const Total& t = GetParam();
  const auto file = schedule(t.file);
  if (file.empty())
    GTEST_SKIP() << "STREETWRIGHT_DATA names no folder with " << t.file << ": drive schedules are not shipped";
  std::vector<std::string> args = {"file=" + file.string()};
  if (!t.spans.empty()) args.push_back("spans=" + std::string(t.spans));
  const SumResult r = run_sum("cycle", args, {std::string(t.output) + "=" + std::string(t.unit)});
  ASSERT_EQ(r.exit_code(), 0) << r.to_text();
  EXPECT_NEAR(r.output(t.output)->numbers.at(0), t.expected, half_width(std::string(t.tolerance), t.expected));
}

INSTANTIATE_TEST_SUITE_P(Rows, Schedule, testing::ValuesIn(totals), [](const auto& row) {
  std::string name(row.param.id);
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

}  // namespace
}  // namespace sw::published
