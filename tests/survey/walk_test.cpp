#include "survey/walk.hpp"

#include <gtest/gtest.h>

#include <algorithm>

#include "field/stock.hpp"
#include "systems/rig.hpp"

namespace sw {
namespace {

struct Surveyed {
  Opened opened;
  Walk walk;
  const ToMeasure* find(std::string_view path) const {
    const auto at = std::find_if(walk.figures.begin(), walk.figures.end(), [&](auto& t) { return t.path == path; });
    return at == walk.figures.end() ? nullptr : &*at;
  }
  Station station(std::string_view path) const {
    const ToMeasure* t = find(path);
    return t ? t->station : Station::inherited;
  }
};

Surveyed surveyed(const std::string& text) {
  Surveyed s{.opened = open("car.toml", [&](const std::filesystem::path&) { return text; })};
  EXPECT_FALSE(s.opened.faults.any_fault());
  const auto duties = duties_of(s.opened.build, from_disk());
  ProofOptions options;
  options.remedies = false;
  s.walk = walk_round(s.opened.build, Car(s.opened.build), prove(s.opened.build, *duties, options), s.opened.units);
  return s;
}
const Surveyed& saloon() {
  static const Surveyed s = surveyed(std::string(stock_text("templates/saloon.toml")));
  return s;
}

TEST(Walk, GoesRoundTheCarOnce) {
  const auto& all = saloon().walk.figures;
  ASSERT_FALSE(all.empty());
  EXPECT_TRUE(std::is_sorted(all.begin(), all.end(), [](auto& a, auto& b) { return a.station < b.station; }));
  for (std::size_t i = 0; i < all.size(); ++i) {
    EXPECT_NE(all[i].station, Station::inherited) << all[i].path;
    EXPECT_NE(all[i].tool, Tool::by_kind) << all[i].path;
    for (std::size_t k = 0; k < i; ++k) EXPECT_NE(all[i].path, all[k].path);
  }
}

TEST(Walk, AFigureStandsWhereItIsFound) {
  EXPECT_EQ(saloon().station("vehicle.system_voltage"), Station::electrics);
  EXPECT_EQ(saloon().station("vehicle.weight"), Station::standing);
  EXPECT_EQ(saloon().station("brakes.pedal.travel"), Station::seat);
  EXPECT_EQ(saloon().station("brakes.front.residual"), Station::wheels_off);
  EXPECT_EQ(saloon().station("engine.idle_speed"), Station::running);
  EXPECT_EQ(saloon().station("fuel.tank.bonded"), Station::tail);
  EXPECT_EQ(saloon().station("engine.torque_curve"), Station::desk);
}

// What the proof lacks is on it with what it decides; a stand-in only because nothing is proved yet.
TEST(Walk, TheProofDecidesWhatIsOnIt) {
  const ToMeasure* lacking = saloon().find("vehicle.system_voltage");
  ASSERT_TRUE(lacking);
  EXPECT_GT(lacking->decides, 1);
  EXPECT_EQ(lacking->worst, Hazard::harm);
  EXPECT_EQ(lacking->now, "");
  const ToMeasure* stand_in = saloon().find("vehicle.wheelbase");
  ASSERT_TRUE(stand_in);
  EXPECT_EQ(stand_in->decides, 0);
  EXPECT_EQ(stand_in->now, "112 in, typical");
  EXPECT_EQ(saloon().find("vehicle.drag_area") != nullptr, true);
}

TEST(Walk, WhatWasMeasuredIsNotAskedForAgain) {
  std::string text(stock_text("templates/saloon.toml"));
  const std::string typical = "wheelbase = { value = \"112 in\", from = \"typical\" }";
  ASSERT_NE(text.find(typical), std::string::npos);
  text.replace(text.find(typical), typical.size(), "wheelbase = { value = \"112 in\", from = \"measured\" }");
  EXPECT_EQ(surveyed(text).find("vehicle.wheelbase"), nullptr);
}

// Of an entry the build does not have nobody can measure anything: it is told instead.
TEST(Walk, WhatTheBuildMustTellFirstIsNoFigure) {
  const Surveyed empty = surveyed("");
  EXPECT_FALSE(empty.walk.to_tell.empty());
  EXPECT_FALSE(empty.walk.undescribed.empty());
  for (auto& t : empty.walk.figures) EXPECT_EQ(t.path.find(' '), std::string::npos) << t.path;
}

TEST(Walk, CautionsStandWhereTheHandIs) {
  const auto at = [](Station s, Caution c) {
    const auto all = cautions_at(s);
    return std::find(all.begin(), all.end(), c) != all.end();
  };
  EXPECT_TRUE(at(Station::underneath, Caution::lift));
  EXPECT_TRUE(at(Station::running, Caution::carbon_monoxide));
  EXPECT_TRUE(at(Station::tail, Caution::fuel_fire));
  EXPECT_TRUE(at(Station::electrics, Caution::battery_gas));
  EXPECT_TRUE(cautions_at(Station::desk).empty());
}

}  // namespace
}  // namespace sw
