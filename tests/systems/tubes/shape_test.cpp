#include "systems/tubes/shape.hpp"

#include <numbers>

#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

constexpr double deg = std::numbers::pi / 180;

// By hand: the radius grows to 10/9 in; of straights 10 - 1.111, 6 - 2.222 and 8 - 1.111 in and two arcs of a quarter.
TEST(TubesShape, CutAndCardByHand) {
  const auto m = lines_of(bent_line());
  const tubes::TubeModel& t = m.tubes.at(0);
  const double radius = 10.0 / 9, arc = radius * 90 * deg;
  EXPECT_NEAR(t.shape.radius_m / inch, radius, 1e-9);
  EXPECT_NEAR(t.shape.cut.cut_m / inch, 24 - 4 * radius + 2 * arc, 1e-9);
  const auto card = tubes::card_of(t);
  ASSERT_EQ(card.size(), 2u);
  EXPECT_NEAR(card[0].mark_m / inch, 10 - radius, 1e-9);
  EXPECT_NEAR(card[1].mark_m / inch, 10 - radius + arc + 6 - 2 * radius, 1e-9);
  for (auto& row : card) {
    EXPECT_NEAR(row.wanted_rad, 90 * deg, 1e-9);
    EXPECT_NEAR(row.setting_rad, 100 * deg, 1e-9);
  }
  EXPECT_EQ(card[0].turn_rad, 0);
  EXPECT_NEAR(card[1].turn_rad, 90 * deg, 1e-9);
  EXPECT_NEAR(*t.to_cut_m(), t.shape.cut.cut_m, 1e-12);  // no flare is said
}

// What a flare takes at the start moves every mark by it.
TEST(TubesShape, FlaresAddToCutAndMarks) {
  const auto bare = lines_of(bent_line()),
             flared = lines_of(bent_line() +
                               "[tubes.tube.a.start]\nflare = \"37 deg\"\ntakes = \"0.1 in\"\n"
                               "[tubes.tube.a.end]\nflare = \"37 deg\"\ntakes = \"0.3 in\"\n");
  EXPECT_NEAR((*flared.tubes.at(0).to_cut_m() - *bare.tubes.at(0).to_cut_m()) / inch, 0.4, 1e-9);
  EXPECT_NEAR((tubes::card_of(flared.tubes.at(0))[1].mark_m - tubes::card_of(bare.tubes.at(0))[1].mark_m) / inch, 0.1,
              1e-9);
}

// The chords leave the corner out and keep to the arc: as long as the tube within a thousandth, and never at the
// corner.
TEST(TubesShape, CentreLineGoesRoundTheCorner) {
  const auto m = lines_of(bent_line());
  const auto& s = m.tubes.at(0).shape;
  double length = 0, nearest = HUGE_VAL;
  const physics::Vec3 corner{10 * inch, 0, 0};
  for (std::size_t i = 0; i + 1 < s.centre_line.size(); ++i) {
    length += norm(s.centre_line[i + 1] - s.centre_line[i]);
    nearest = std::min(nearest, physics::segment_distance_m(s.centre_line[i], s.centre_line[i + 1], corner, corner));
  }
  EXPECT_NEAR(length / s.cut.cut_m, 1, 1e-3);
  EXPECT_NEAR(nearest, s.radius_m * (std::sqrt(2) - 1), 1e-3 * s.radius_m);
}

TEST(TubesShape, LeastRadiusByTheTableWhereItHasTheTube) {
  using tubes::Material;
  EXPECT_NEAR(tubes::least_radius_m(Material::steel, 0.375 * inch) / inch, 1.3125, 1e-9);
  EXPECT_NEAR(tubes::least_radius_m(Material::aluminium, 0.375 * inch) / inch, 0.9375, 1e-9);
  EXPECT_NEAR(tubes::least_radius_m(Material::nickel_copper, 0.375 * inch) / inch, 1.125, 1e-9);
  EXPECT_NEAR(tubes::least_radius_m(Material::stainless, 0.375 * inch) / inch, 1.125, 1e-9);
  EXPECT_NEAR(tubes::least_radius_m(Material::steel, 0.3 * inch) / inch, 0.9, 1e-9);
}

// Soft steel of 3/16 in on 3/4 in: one to three degrees in ninety (common practice); harder metal more.
TEST(TubesShape, SpringbackByLawIsOfTheTradesSize) {
  const auto kept = [](const char* material, const char* more) {
    const auto m = lines_of(
        "[tubes.tube.a]\noutside = \"0.1875 in\"\nwall = \"0.028 in\"\nbend_radius = \"0.75 in\"\n"
        "material = \"" +
        std::string(material) + "\"\n" + more);
    EXPECT_TRUE(m.tubes.at(0).springback.missing.empty());
    return m.tubes.at(0).springback.kept;
  };
  const double steel = kept("steel", "");
  EXPECT_GT(90 / steel - 90, 1);
  EXPECT_LT(90 / steel - 90, 3);
  EXPECT_LT(kept("hard stainless", ""), steel);
  EXPECT_LT(kept("steel", "yield = \"90 ksi\"\ntensile = \"100 ksi\"\n"), steel);
}

TEST(TubesShape, WhatNobodySaidIsTakenAsTheWorst) {
  using tubes::Concern;
  EXPECT_EQ(tubes::concern_of(std::nullopt), Concern::brakes);
  EXPECT_EQ(tubes::concern_of(tubes::Carries::fuel_vapour), Concern::fuel);
  EXPECT_EQ(tubes::concern_of(tubes::Carries::vacuum), Concern::other);
}

}  // namespace
