#include "systems/wiring/carries.hpp"

#include <gtest/gtest.h>

using namespace sw;
using namespace sw::wiring;

namespace {

Conductor wire(double area_m2, double ampacity_a, double limit_a = 0) {
  return {.place = "wire",
          .area_m2 = area_m2,
          .ampacity_a = ampacity_a,
          .limit_a = limit_a,
          .sized = true,
          .laid = {.insulation_k = 378.15, .zone = Zone::cabin, .bundle = 1, .told = {}}};
}

TEST(WiringCarries, TheLessOfWireAndWhatStandsInIt) {
  EXPECT_EQ(*lasting_limit(wire(1e-5, 60)), 60);
  EXPECT_EQ(*lasting_limit(wire(1e-5, 60, 40)), 40);
  EXPECT_FALSE(lasting_limit(Conductor{}).has_value());
}

// IEC 60949 (from memory): 226 A s^0.5/mm2 sqrt(ln((105 + 234.5)/(30 + 234.5))) = 112.9; 10 mm2 for 10 s: 357 A.
TEST(WiringCarries, MoreForTheSecondsOfAStart) {
  EXPECT_NEAR(*carries_for(wire(1e-5, 60), 10), 357, 1);
  EXPECT_EQ(*carries_for(wire(1e-5, 60), 0), 60);
  EXPECT_EQ(*carries_for(wire(1e-5, 60), 1e6), 60);
  EXPECT_EQ(*carries_for(wire(1e-5, 60, 40), 10), 40);  // a link is rated for good
}

TEST(WiringCarries, AStrayPathCarriesNothing) {
  Conductor c = wire(1e-5, 60);
  c.stray = true;
  EXPECT_EQ(*carries_for(c, 10), stray_a);
}

}  // namespace
