#include "physics/cycle.hpp"

#include <gtest/gtest.h>

#include <string>

using namespace sw::physics;

namespace {

// An invented trace, worked by hand (km/h): 0 0 36 72 72 0 0 at 0 1 3 4 6 8 10 s.
// Distance: 0 + 10 + 15 + 40 + 20 + 0 = 85 m; mean 8.5 m/s; steepest 10 m/s in the second 3..4; idle 1 + 2 + 2: the
// intervals that end in a row at zero are 0-1, 6-8 and 8-10, 5 s.
constexpr const char* hand = "time_s,speed_kmh\n0,0\n1,0\n3,36\n4,72\n6,72\n8,0\n10,0\n";

SpeedTrace trace(const char* csv) {
  const auto t = read_speed_trace(csv);
  if (const auto* f = std::get_if<TraceFaults>(&t)) ADD_FAILURE() << f->at(0).line << ": " << f->at(0).problem;
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
  const auto fault = [](const char* csv) { return std::get<TraceFaults>(read_speed_trace(csv)).at(0); };
  EXPECT_EQ(fault("").line, 1u);
  EXPECT_EQ(fault("time_s,speed\n0,0\n1,1\n").problem,
            "no heading speed_mph or speed_kmh in the first line, which has \"time_s\", \"speed\"; rename "
            "\"speed\" to speed_mph or speed_kmh, by its unit");
  EXPECT_EQ(fault("time_s,speed_mph,speed_kmh\n").problem, "two speed columns: keep one of speed_mph and speed_kmh");
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n1,x\n").problem, "\"x\" under speed_mph is not a number");
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n1,x\n").line, 3u);
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n0,1\n").problem, "time_s does not rise: 0 after the row before it");
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n1,-1\n").problem, "a speed below zero: -1");
  EXPECT_EQ(fault("time_s,speed_mph\n0\n").problem, "fewer columns than the first line names");
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n").problem, "fewer than two rows");
  EXPECT_EQ(fault("time_s,speed_mph\n0,0\n1,nan\n").problem, "\"nan\" under speed_mph is not a number");
  EXPECT_EQ(fault("Zeit,Geschwindigkeit\n0,0\n").problem,
            "no heading time_s in the first line, which has \"Zeit\", \"Geschwindigkeit\"; name the column time_s");
}

TEST(Cycle, ReadsWhatLoggersWrite) {
  const SpeedTrace t = trace("Time (s);RPM;Speed (km/h)\r\n0,0;800;0\r\n0,5;900;3,6\r\n1;950;7.2\r\n");
  EXPECT_NEAR(t.time_s[1], 0.5, 1e-12);
  EXPECT_NEAR(t.speed_m_s[1], 1, 1e-12);
  EXPECT_NEAR(t.speed_m_s[2], 2, 1e-12);
  for (auto* head : {"TIME,SPEED_MPH", "time [s],speed [mph]", "Time (sec),speed mph", "time\tspeed (mph)"}) {
    const char apart = std::string(head).find('\t') == std::string::npos ? ',' : '\t';
    const std::string csv = std::string(head) + "\n0" + apart + "0\n2" + apart + "10\n";
    EXPECT_NEAR(trace(csv.c_str()).speed_m_s[1], 4.4704, 1e-12) << head;
  }
  EXPECT_NEAR(trace("time_ms,speed_m/s\n0,0\n500,2\n").time_s[1], 0.5, 1e-12);
}

TEST(Cycle, EveryBadRowIsTold) {
  const auto faults = [](const std::string& csv) { return std::get<TraceFaults>(read_speed_trace(csv)); };
  const auto all = faults("time_s,speed_kmh\n0,0\n1,x\n1,3\n0.5,4\n2,900\n3,5\n");
  ASSERT_EQ(all.size(), 3u);
  EXPECT_EQ(all[0].line, 3u);
  EXPECT_EQ(all[1].problem, "time_s does not rise: 0.5 after the row before it");
  EXPECT_EQ(all[2].problem, "faster than 200 mph: 900 under speed_kmh; is that its unit?");
  std::string many = "time_s,speed_kmh\n0,0\n";
  for (int i = 0; i < 14; ++i) many += "1,x\n";
  EXPECT_EQ(faults(many).size(), 11u);
  EXPECT_EQ(faults(many).back().problem, "and 4 more");
  EXPECT_EQ(faults(many).back().line, 0u);
}

TEST(Cycle, AJumpNoCarMakesNamesBothRows) {
  const auto all = std::get<TraceFaults>(read_speed_trace("time_s,speed_kmh\n0,10\n1,90\n2,90\n"));  // 22.2 m/s2
  ASSERT_EQ(all.size(), 1u);
  EXPECT_EQ(all[0].problem, "from 10 in line 2 to 90 in line 3 is a jump no car makes: 22 m/s2, above 12");
  trace("time_s,speed_kmh\n0,0\n1,43\n2,0\n");  // 11.9 m/s2, up and down
}

}  // namespace
