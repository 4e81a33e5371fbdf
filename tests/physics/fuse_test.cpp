#include "physics/fuse.hpp"

#include <gtest/gtest.h>

using namespace sw::physics;

namespace {

TEST(Fuse, BladeWindow) {  // ISO 8820-3 / SAE J1284 time-current table (from memory)
  EXPECT_EQ(blade_fuse_time(1.10).shortest_s, 360000);
  EXPECT_FALSE(blade_fuse_time(1.10).longest_s);
  EXPECT_EQ(blade_fuse_time(1.35).shortest_s, 0.75);
  EXPECT_EQ(blade_fuse_time(1.35).longest_s, 600);
  EXPECT_EQ(blade_fuse_time(1.60).longest_s, 50);
  EXPECT_EQ(blade_fuse_time(2.00).shortest_s, 0.15);
  EXPECT_EQ(blade_fuse_time(2.00).longest_s, 5);
  EXPECT_EQ(blade_fuse_time(3.50).longest_s, 0.5);
  EXPECT_EQ(blade_fuse_time(6.00).shortest_s, 0.02);
}

TEST(Fuse, BetweenTabledLoadsBothNeighboursBound) {
  const FuseWindow w = blade_fuse_time(1.5);
  EXPECT_EQ(w.shortest_s, 0.25);
  EXPECT_EQ(w.longest_s, 600);
  EXPECT_FALSE(blade_fuse_time(1.2).longest_s);  // need not open at all
  EXPECT_EQ(blade_fuse_time(1.2).shortest_s, 0.75);
  EXPECT_FALSE(blade_fuse_time(8).shortest_s);  // may open at once
  EXPECT_EQ(blade_fuse_time(8).longest_s, 0.1);
}

TEST(Fuse, ContinuousShareIsCommonPractice) { EXPECT_NEAR(fuse_continuous_share, 0.75, 0.05); }

}  // namespace
