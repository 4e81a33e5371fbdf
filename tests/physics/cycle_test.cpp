#include "physics/cycle.hpp"

#include <gtest/gtest.h>

using namespace sw::physics;

namespace {

// An invented trace, worked by hand (km/h): 0 0 36 72 72 0 0 at 0 1 3 4 6 8 10 s.
// Distance: 0 + 10 + 15 + 40 + 20 + 0 = 85 m; mean 8.5 m/s; steepest 10 m/s in the second 3..4; idle 1 + 2 + 2: the
// intervals that end in a row at zero are 0-1, 6-8 and 8-10, 5 s.
constexpr const char* hand = "time_s,speed_kmh\n0,0\n1,0\n3,36\n4,72\n6,72\n8,0\n10,0\n";

SpeedTrace trace(const char* csv) {
  const auto t = read_speed_trace(csv);
  if (const auto* f = std::get_if<TraceFault>(&t)) ADD_FAILURE() << f->line << ": " << f->problem;
  return std::get<SpeedTrace>(t);
}

TEST(Cycle, HandWorkedTrace) {
  const TraceFigures f = trace_figures(trace(hand));
  EXPECT_NEAR(f.duration_s, 10, 1e-12);
  EXPECT_NEAR(f.distance_m, 85, 1e-9);
  EXPECT_NEAR(f.mean_speed_m_s, 8.5, 1e-9);
  EXPECT_NEAR(f.top_speed_m_s, 20, 1e-9);
  EXPECT_NEAR(f.greatest_acceleration_m_s2, 10, 1e-9);
  EXPECT_NEAR(f.idle_s, 5, 1e-12);
}

TEST(Cycle, StretchesAreDrivenOneAfterTheOther) {
  const SpeedTrace t = trace(hand);
  const TraceFigures f = trace_figures(t, {{0, 10}, {0, 4}});  // the whole, then 25 m and 4 s again
  EXPECT_NEAR(f.distance_m, 110, 1e-9);
  EXPECT_NEAR(f.duration_s, 14, 1e-12);
  EXPECT_NEAR(trace_figures(t, {{2, 3}}).distance_m, 7.5, 1e-9);  // 18 to 36 km/h in a second
  EXPECT_TRUE(span_fits(t, {0, 10}));
  EXPECT_FALSE(span_fits(t, {0, 11}));
  EXPECT_FALSE(span_fits(t, {4, 4}));
}

TEST(Cycle, MilesAndOtherColumns) {
  const SpeedTrace t = trace("\xEF\xBB\xBFgear, time_s ,speed_mph\r\n1,0,0\r\n1,1,10\r\n\r\n");
  EXPECT_NEAR(t.speed_m_s[1], 4.4704, 1e-12);
}

TEST(Cycle, FaultsNameTheirLine) {
  const auto fault = [](const char* csv) { return std::get<TraceFault>(read_speed_trace(csv)); };
  EXPECT_EQ(fault("").line, 1u);
  EXPECT_EQ(fault("time_s,speed\n0,0\n1,1\n").problem,
            "no heading speed_mph or speed_kmh in the first line, which has \"time_s\", \"speed\"");
  EXPECT_EQ(fault("time_s,speed_mph,speed_kmh\n").problem, "two speed columns: keep one of speed_mph and speed_kmh");
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n1,x\n").problem, "\"x\" under speed_mph is not a number");
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n1,x\n").line, 3u);
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n0,1\n").problem, "time_s does not rise: 0 after the row before it");
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n1,-1\n").problem, "a speed below zero: -1");
  EXPECT_EQ(fault("time_s,speed_mph\n0\n").problem, "fewer columns than the first line names");
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n").problem, "fewer than two rows");
}

}  // namespace
