// What the sum of tanks does with optional, contradictory and far-off inputs; figures stand in tests/published.
#include "sum/asked.hpp"
#include "sum/asking.hpp"

namespace sw {
namespace {

TEST(TankSum, EveryShape) {
  EXPECT_NEAR(asked("tank-volume", {"shape=box", "length=22 in", "width=14 in", "height=9 in", "depth=7.5 in"},
                    "volume", "gal"),
              10, 1e-9);
  EXPECT_NEAR(
      asked("tank-volume", {"shape=ellipse", "length=40 in", "width=30 in", "height=16 in", "depth=8 in"}, "fraction"),
      0.5, 1e-12);
  EXPECT_NEAR(
      asked("tank-volume",
            {"shape=cylinder", "length=40 in", "diameter=16 in", "heads=conical", "head_depth=3 in", "depth=8 in"},
            "fraction"),
      0.5, 1e-7);  // as well as the heads are summed
  // A box of 100 in2 with a sump that widens from nothing over its lowest 2 in: 100 + 100 in3.
  EXPECT_NEAR(
      asked("tank-volume", {"shape=profile", "profile=0,0; 2,100; 8 in,100 in2", "depth=3 in"}, "volume", "in3"), 200,
      1e-9)
      << "a height without unit takes that of its column";
}

TEST(TankSum, TellsWhatDoesNotFit) {
  const auto said = [](Words args) { return faults_of(run_sum("tank-volume", args)); };
  EXPECT_TRUE(has(said({"shape=box", "length=22 in", "width=14 in", "depth=7 in"}), "height: missing"));
  EXPECT_TRUE(has(said({"shape=cylinder", "diameter=22 in", "width=14 in", "length=9 in", "depth=7 in"}),
                  "width: does not belong to shape=cylinder"));
  EXPECT_TRUE(has(said({"shape=cylinder", "diameter=22 in", "length=9 in", "heads=conical", "depth=7 in"}),
                  "head_depth: missing"));
  EXPECT_TRUE(has(said({"shape=cylinder", "diameter=22 in", "length=9 in", "head_depth=2 in", "depth=7 in"}),
                  "flat heads have none"));
  EXPECT_TRUE(has(
      said({"shape=cylinder", "diameter=22 in", "length=9 in", "heads=spherical", "head_depth=12 in", "depth=7 in"}),
      "more than half a ball"));
  EXPECT_TRUE(has(said({"shape=profile", "profile=1 in,0 in2; 2 in,100 in2", "depth=1 in"}), "begin at the bottom"));
  EXPECT_TRUE(has(said({"shape=profile", "profile=0 in,-1 in2; 2 in,100 in2", "depth=1 in"}), "below 0"));
  EXPECT_TRUE(has(said({"shape=box", "heads=flat", "length=1 in", "width=1 in", "height=1 in", "depth=1 in"}),
                  "belong to shape=cylinder"));
  EXPECT_EQ(code("tank-volume", {"depth=7 in"}), 2);
}

TEST(TankSum, AboveTheTopItIsFull) {
  const auto r = run_sum("tank-volume", {"shape=box", "length=22 in", "width=14 in", "height=9 in", "depth=10 in"});
  EXPECT_EQ(r.exit_code(), 3);
  EXPECT_NEAR(number_of(r, "fraction"), 1, 1e-12);
}

}  // namespace
}  // namespace sw
