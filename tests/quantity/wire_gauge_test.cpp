#include "quantity/wire_gauge.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

namespace sw {
namespace {

TEST(WireGauge, DiametersOfAstmB258) {
  // ASTM B258, nominal diameters in inches, tabulated to four places; read in published wire tables that reproduce it.
  struct Row {
    int n;
    double inches;
  };
  constexpr Row rows[] = {{-3, 0.4600}, {-2, 0.4096}, {-1, 0.3648}, {0, 0.3249},  {1, 0.2893},  {2, 0.2576},
                          {4, 0.2043},  {6, 0.1620},  {8, 0.1285},  {10, 0.1019}, {12, 0.0808}, {14, 0.0641},
                          {16, 0.0508}, {18, 0.0403}, {20, 0.0320}, {36, 0.0050}};
  for (auto& r : rows) EXPECT_NEAR(gauge_diameter(r.n) / 0.0254, r.inches, 0.00005) << r.n;
}

TEST(WireGauge, AreasOfAstmB258) {
  // Same tables, mm2; the fourth digit of 2/0 (67.43) from memory, the tables have 67.4.
  EXPECT_NEAR(gauge_area(-1) * 1e6, 67.43, 0.005);
  EXPECT_NEAR(gauge_area(-3) * 1e6, 107.2, 0.05);
  EXPECT_NEAR(gauge_area(10) * 1e6, 5.26, 0.005);
  EXPECT_NEAR(gauge_area(12) * 1e6, 3.31, 0.005);
  EXPECT_NEAR(gauge_area(18) * 1e6, 0.823, 0.0005);
}

TEST(WireGauge, NumberIsTheInverseOfArea) {
  for (double n = -3; n <= 56; n += 0.25) EXPECT_NEAR(gauge_number(gauge_area(n)), n, 1e-10);
}

TEST(WireGauge, NearestGauge) {
  EXPECT_EQ(nearest_gauge(gauge_area(10) * 1.004, 0.005), 10);
  EXPECT_EQ(nearest_gauge(gauge_area(-1), 1e-12), -1);
  EXPECT_FALSE(nearest_gauge(gauge_area(10) * 1.006, 0.005));
  EXPECT_FALSE(nearest_gauge(2.5e-6, 0.005)) << "a metric size is no gauge";
  EXPECT_FALSE(nearest_gauge(gauge_area(57), 0.005));
  EXPECT_FALSE(nearest_gauge(gauge_area(-4), 0.005));
  for (double none : {0.0, -1.0, std::numeric_limits<double>::infinity(), std::nan("")})
    EXPECT_FALSE(nearest_gauge(none, 0.005));
}

TEST(WireGauge, Texts) {
  for (int n = thickest_gauge; n <= thinnest_gauge; ++n) EXPECT_EQ(parse_gauge(gauge_text(n)), n);
  EXPECT_EQ(gauge_text(0), "1/0");
  EXPECT_EQ(gauge_text(-1), "2/0");
  EXPECT_EQ(parse_gauge("0"), 0);
  EXPECT_EQ(parse_gauge("00"), -1);
  EXPECT_EQ(parse_gauge("0000"), -3);
  for (auto none : {"", "00000", "5/0", "0/0", "/0", "57", "-1", "10.5", "ten", "1e1", "+3", "1/1", "99999999999999"})
    EXPECT_FALSE(parse_gauge(none)) << none;
}

}  // namespace
}  // namespace sw
