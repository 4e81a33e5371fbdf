// The sums of the road: inputs and files; published figures stand in tests/published.
#include <unistd.h>

#include <filesystem>
#include <fstream>

#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(RoadSums, SpeedAndPowerGoBackAndForth) {
  const Words car = {"mass=3700 lb", "rolling=0.013", "drag_area=0.85 m2", "road_grade=3 %"};
  auto with = [&](Words more) {
    more.insert(more.begin(), car.begin(), car.end());
    return more;
  };
  const double kw = asked("road-load", with({"speed=60 mph"}), "power", "kW");
  EXPECT_NEAR(asked("road-load", with({"power=" + std::to_string(kw) + " kW"}), "speed", "mph"), 60, 1e-4);
  const double force = asked("road-load", with({"speed=60 mph"}), "force", "N");
  EXPECT_NEAR(force,
              asked("road-load", with({"speed=60 mph"}), "rolling_force", "N") +
                  asked("road-load", with({"speed=60 mph"}), "drag_force", "N") +
                  asked("road-load", with({"speed=60 mph"}), "grade_force", "N"),
              1e-9);
  EXPECT_NEAR(asked("road-load", with({"speed=60 mph"}), "drag_power", "W"),
              asked("road-load", with({"speed=60 mph"}), "drag_force", "N") * 26.8224, 1e-6);
  EXPECT_EQ(code("road-load", with({"speed=60 mph", "power=20 kW"})), 2);
  EXPECT_EQ(code("road-load", {"mass=3700 lb", "rolling=0", "drag_area=0 m2", "road_grade=-5 %", "power=1 kW"}), 3);
}

class RoadSumsFile : public testing::Test {
 protected:
  void SetUp() override {
    file_ = std::filesystem::temp_directory_path() / ("streetwright_trace_" + std::to_string(::getpid()) + ".csv");
    std::ofstream(file_)
        << "time_s,speed_kmh\n0,0\n1,0\n3,36\n4,72\n6,72\n8,0\n10,0\n";  // invented; see cycle_test.cpp
  }
  void TearDown() override { std::filesystem::remove(file_); }
  std::string word() const { return "file=" + file_.string(); }
  std::filesystem::path file_;
};

TEST_F(RoadSumsFile, FiguresOfATrace) {  // worked by hand in tests/physics/cycle_test.cpp
  EXPECT_NEAR(asked("cycle", {word()}, "distance", "m"), 85, 1e-9);
  EXPECT_NEAR(asked("cycle", {word()}, "idle_time", "s"), 5, 1e-9);
  EXPECT_NEAR(asked("cycle", {word()}, "greatest_acceleration", "m/s2"), 10, 1e-9);
  EXPECT_NEAR(asked("cycle", {word(), "spans=0, 10; 0, 4 s"}, "distance", "m"), 110, 1e-9);
  EXPECT_EQ(code("cycle", {word(), "spans=0, 11 s"}), 2);
  EXPECT_EQ(code("cycle", {word(), "spans=4, 3 s"}), 2);
}

TEST_F(RoadSumsFile, FaultsNameFileAndLine) {
  std::ofstream(file_) << "time_s,speed_kmh\n0,0\n1,fast\n";
  const auto r = run_sum("cycle", {word()});
  EXPECT_EQ(r.exit_code(), 2);
  EXPECT_NE(r.to_text().find(".csv:3: \"fast\" under speed_kmh is not a number"), std::string::npos) << r.to_text();
  EXPECT_EQ(code("cycle", {"file=no_such_file.csv"}), 2);
}

}  // namespace
}  // namespace sw
