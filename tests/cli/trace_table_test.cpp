#include "cli/trace_table.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <limits>

#include "cli/page.hpp"
#include "cli/sample_proof.hpp"
#include "duty/duties.hpp"
#include "repository/files.hpp"

namespace sw::cli {
namespace {

constexpr Port temperature{"tank.temperature", &kind::temperature, "degF", "tank"},
    level{"tank.level", &kind::number, "%", "level"}, gone{"tank.flow", &kind::volume_flow, "gph", "flow"};

Graph small_graph() {
  Graph g;
  g.ports = {temperature, level, gone};
  g.slots = {{"tank.temperature", 0}, {"tank.level", 1}, {"tank.flow", 2}};
  g.width = 3;
  g.unavailable["tank.flow"] = {"tank.pump"};
  return g;
}
Trace small_trace() {
  Trace t;
  t.width = 3;
  t.time = {0, 0.25};
  t.values = {273.15, 0.5, 0, 283.15, std::numeric_limits<double>::quiet_NaN(), 0};
  return t;
}

TEST(TraceCsv, HasAUnitInEachHeaderAndARowAStep) {
  EXPECT_EQ(trace_csv(small_graph(), small_trace()),
            "time [s],tank.temperature [degF],tank.level [%]\n0,32,50\n0.25,50,\n")
      << "a port that cannot be computed has no column, a value that is none an empty cell";
}

TEST(TracePage, StaysWithinAnyWidthAndNamesWhatIsMissing) {
  const Build build;
  const Car car(build);
  const auto duties = duties_of(build, from_disk());
  const DutySet& set = *duties;
  const auto traces = run_duties(car, set, {true});
  for (int width : {60, 80, 200}) {
    const std::string text =
        trace_page(car, traces[0], set.courses[0], {.width = width, .unicode = true, .colour = false});
    for (auto& line : repository::lines_of(text)) EXPECT_LE(seen(line), width) << line;
    EXPECT_NE(text.find("Missing: "), std::string::npos);
  }
}

TEST(TracePage, NarrowHeadingsKeepTheirUnit) {
  const Ran r = ran({"simulate", demo("sound.toml"), "--duty", "hot-idle"}, piped("60"));
  EXPECT_EQ(r.code, 0) << r.err;
  bool on_two_lines = false;
  for (auto& line : repository::lines_of(r.out)) {
    EXPECT_LE(seen(line), 60) << line;
    EXPECT_EQ(std::count(line.begin(), line.end(), '['), std::count(line.begin(), line.end(), ']')) << line;
    on_two_lines = on_two_lines || line == "alternator.";
  }
  EXPECT_TRUE(on_two_lines) << r.out;
}

}  // namespace
}  // namespace sw::cli
