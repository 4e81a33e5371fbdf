// Published totals of the drive schedules UDDS, HWFET and US06 (40 CFR Parts 86 and 600; RLD-01 to RLD-12,
// published-seen: totals of the traces and of pages that print them). The traces are not shipped: the tests run where
// the environment variable STREETWRIGHT_DATA names a folder with udds.csv, hwfet.csv and us06.csv (columns time_s,
// speed_mph), or with these in its folder `cycles`. The law itself is tested on an invented trace in
// tests/physics/cycle_test.cpp.
#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>

#include "sum/run.hpp"

namespace sw {
namespace {

struct Total {
  const char *id, *file, *spans, *output, *unit;
  double expected, tolerance;
};

constexpr Total totals[] = {
    {"RLD_01", "udds.csv", "", "distance", "mile", 7.45, 0.005},
    {"RLD_02", "udds.csv", "", "duration", "s", 1369, 1e-9},
    {"RLD_03", "udds.csv", "", "mean_speed", "mph", 19.59, 0.01},
    {"RLD_04", "udds.csv", "", "top_speed", "mph", 56.7, 0.05},
    {"RLD_07", "hwfet.csv", "", "distance", "mile", 10.26, 0.005},
    {"RLD_09", "us06.csv", "", "distance", "mile", 8.01, 0.005},
    {"RLD_11", "udds.csv", "0, 1369; 0, 505 s", "distance", "mile", 11.04, 0.01},  // FTP-75: the first 505 s again
    {"RLD_12", "udds.csv", "", "greatest_acceleration", "mph/s", 3.3, 0.02},
};

std::filesystem::path schedule(const char* file) {
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
  if (*t.spans) args.push_back(std::string("spans=") + t.spans);
  const SumResult r = run_sum("cycle", args, {std::string(t.output) + "=" + t.unit});
  ASSERT_EQ(r.exit_code(), 0) << r.to_text();
  EXPECT_NEAR(r.output(t.output)->numbers.at(0), t.expected, t.tolerance);
}

INSTANTIATE_TEST_SUITE_P(Rows, Schedule, testing::ValuesIn(totals), [](const auto& row) { return row.param.id; });

}  // namespace
}  // namespace sw
