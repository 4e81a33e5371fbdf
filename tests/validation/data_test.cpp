// Reading what was measured: tables and logs as their sources write them, on invented rows; and, where the environment
// variable STREETWRIGHT_DATA names the data folder, the distance of two sets by figures found independently of this
// reader (trapezoid rule over the sources' rows, in another language).
#include "data.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdlib>
#include <fstream>

#include "quantity/customary.hpp"

namespace sw::validation {
namespace {

namespace fs = std::filesystem;

class OnDisk : public testing::Test {
 protected:
  OnDisk() { fs::create_directories(folder_); }
  ~OnDisk() override { fs::remove_all(folder_); }
  fs::path put(const char* name, const char* text) {
    std::ofstream(folder_ / name, std::ios::binary) << text;
    return folder_ / name;
  }
  const fs::path folder_ = fs::path(testing::TempDir()) /
                           (std::string("sw_") + testing::UnitTest::GetInstance()->current_test_info()->name());
};

TEST_F(OnDisk, TableWithQuotesAndGaps) {
  const Table t(put("a.csv", "name,Rated_HP\r\n\"two, in one\",12.5\r\nother,\r\n"));
  ASSERT_EQ(t.rows(), 2u);
  EXPECT_EQ(t.text(0, 0), "two, in one");
  EXPECT_DOUBLE_EQ(t.number(0, t.column("rated_hp")), 12.5);
  EXPECT_TRUE(std::isnan(t.number(1, 1)));
  EXPECT_THROW(t.column("weight"), std::runtime_error);
}

TEST_F(OnDisk, LogWithAClock) {
  const Log log = read_log(put("l.csv",
                               "Time,Coolant [C],Intake Manifold [kPa],RPM,Vehicle Speed [km/h],Intake Air [C]\n"
                               "23:59:58.500,20,,0,0,10\n23:59:58.600,20,99,0,0,10\n23:59:59.600,21,98,800,36,11\n"));
  ASSERT_EQ(log.time_s.size(), 2u) << "a row with a gap is left out";
  EXPECT_NEAR(log.time_s[1], 1, 1e-9);
  EXPECT_DOUBLE_EQ(log.coolant_c[1], 21);
  EXPECT_TRUE(log.volts.empty());
}

TEST_F(OnDisk, FileByAWordOfItsName) {
  put("one_a.csv", "");
  put("two_a.csv", "");
  EXPECT_EQ(file_with(folder_, "one").filename(), "one_a.csv");
  EXPECT_THROW(file_with(folder_, "_a"), std::runtime_error);
  EXPECT_THROW(file_with(folder_, "three"), std::runtime_error);
}

TEST(SpeedTrace, IsTheMeanAroundEachSecond) {
  const Log log{.time_s = {0, 1, 2, 3}, .speed_kmh = {0, 36, 36, 36}};
  const Curve c = speed_trace(log, 2);
  ASSERT_EQ(c.x.size(), 4u);
  EXPECT_DOUBLE_EQ(c.y[0], 5);
  EXPECT_DOUBLE_EQ(c.y[2], 10);
}

double distance_m(const std::vector<double>& time, const std::vector<double>& speed) {
  double sum = 0;
  for (std::size_t i = 1; i < time.size(); ++i) sum += 0.5 * (speed[i] + speed[i - 1]) * (time[i] - time[i - 1]);
  return sum;
}

fs::path data_folder() {
  const char* data = std::getenv("STREETWRIGHT_DATA");
  return data ? data : "";
}

// 28.885 km over the rows of the first 1445 s (KIT set, summer drive).
TEST(MeasuredData, RoadLogHasItsDistance) {
  if (!fs::exists(data_folder() / "roadlogs"))
    GTEST_SKIP() << "STREETWRIGHT_DATA names no folder with roadlogs: measured data are not shipped";
  Log log = read_log(file_with(data_folder() / "roadlogs", "full_braking"));
  for (double& v : log.speed_kmh) v /= 3.6;
  EXPECT_NEAR(distance_m(log.time_s, log.speed_kmh), 28885, 29);
}

// Twice UDDS is 14.90 mi by 40 CFR Part 86 Appendix I; the dynamometer's rolls ran 14.932 mi.
TEST(MeasuredData, DynamometerTestHasItsDistance) {
  if (!fs::exists(data_folder() / "dyno_fuel_flow"))
    GTEST_SKIP() << "STREETWRIGHT_DATA names no folder with dyno_fuel_flow: measured data are not shipped";
  const Table t(file_with(data_folder() / "dyno_fuel_flow", "61811011"));
  auto speed = t.numbers("spd");
  for (double& v : speed) v *= mph_m_s;
  EXPECT_NEAR(distance_m(t.numbers("time"), speed) / mile_m, 14.932, 0.015);
}

}  // namespace
}  // namespace sw::validation
