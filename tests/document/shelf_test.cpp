#include <gtest/gtest.h>

#include "document/opening.hpp"

namespace sw::sample {
namespace {

constexpr const char* shelf = R"([radiator.wide-three]
title = "Wide, three rows"
price = "310"
lead_time = "4 day"
labour = "3 h"
note = "invented"
core_width = "31 in"
core_height = { value = "19 in", from = "measured", plus_minus = "1/8 in" }
rows = 3
airflow_loss = [["2 m/s", "38 Pa"], ["4 m/s", "130 Pa"]]
[radiator.narrow]
core_width = "18 in"
[wire.fat]
gauge = "4 AWG"
)";

TEST(Shelf, APartFillsItsGroup) {
  auto o = open_car({{"cars/car.toml",
                      "shelf = \"shop.toml\"\n[cooling.radiator]\npart = \"wide-three\"\ncore_width = \"30 in\"\n"
                      "[wiring.run.fan]\npart = \"fat\"\nlength = \"3 ft\""},
                     {"cars/shop.toml", shelf}});
  EXPECT_EQ(o.said,
            lines("cars/car.toml:4:14: warning: cooling.radiator.core_width: your own 30 in stands in place of part "
                  "wide-three's 31 in; take the line out to have the part's"));
  EXPECT_FALSE(o.doc.faults.any_fault()) << "a warning stops nothing";
  auto& radiator = o.car.cooling.radiator;
  EXPECT_DOUBLE_EQ(radiator.core_width->si, 30 * 0.0254) << "what stands in the group itself wins";
  EXPECT_DOUBLE_EQ(radiator.core_height->si, 19 * 0.0254);
  EXPECT_TRUE(radiator.airflow_loss);
  auto evidence = [&](const char* path) { return o.evidence.at(path); };
  EXPECT_EQ(evidence("cooling.radiator.core_width").source, Source::stated);
  EXPECT_EQ(evidence("cooling.radiator.core_width").part, "");
  EXPECT_EQ(evidence("cooling.radiator.core_height").source, Source::measured);
  EXPECT_EQ(evidence("cooling.radiator.core_height").part, "wide-three");
  EXPECT_EQ(evidence("cooling.radiator.airflow_loss").source, Source::data_sheet);
  EXPECT_DOUBLE_EQ(evidence("cooling.radiator.airflow_loss").half_width, 0.05);
  EXPECT_EQ(evidence("wiring.run.fan.gauge").part, "fat");
  EXPECT_EQ(evidence("wiring.run.fan.length").part, "");
  EXPECT_EQ(o.doc.files[static_cast<std::size_t>(evidence("wiring.run.fan.gauge").place.file)], "cars/shop.toml");
}

TEST(Shelf, WarnsOnlyOfFiguresThatStandInThePartsWay) {
  auto said = [](const std::string& own) {
    return open_car({{"cars/car.toml", "[cooling.radiator]\npart = \"wide-three\"\n" + own}}, "cars/car.toml", shelf)
        .said;
  };
  EXPECT_EQ(said("core_width = { value = \"30 in\", from = \"chosen\" }"), lines()) << "on purpose";
  EXPECT_EQ(said("core_width = \"31 in\""), lines()) << "the same";
  EXPECT_EQ(said("rows = 3\nfin_share = 0.5"), lines()) << "the part says nothing of its fins";
  const auto two = said(
      "core_height = { value = \"18 in\", from = \"measured\" }\n"
      "airflow_loss = [[\"2 m/s\", \"40 Pa\"], [\"4 m/s\", \"140 Pa\"]]");
  ASSERT_EQ(two.size(), 2u);
  EXPECT_TRUE(
      two[0].starts_with("cars/car.toml:3:25: warning: cooling.radiator.core_height: your own 18 in stands in place of "
                         "part wide-three's 19 in;"))
      << two[0];
  EXPECT_NE(two[1].find("your own curve stands in place of part wide-three's own"), std::string::npos) << two[1];
}

TEST(Shelf, TheBuildsOwnShelvesBeforeTheStock) {
  auto o = open_car({{"cars/car.toml", "base = \"../b.toml\"\n[cooling.radiator]\npart = \"narrow\"\n"},
                     {"b.toml", "shelf = [\"shop.toml\"]\n[wiring.run.fan]\npart = \"thin\""},
                     {"shop.toml", "[radiator.narrow]\nrows = 4\n"}},
                    "cars/car.toml", std::string(shelf) + "[wire.thin]\ngauge = \"20 AWG\"\n");
  EXPECT_EQ(o.said, lines());
  EXPECT_EQ(o.car.cooling.radiator.rows, 4);
  EXPECT_FALSE(o.car.cooling.radiator.core_width);
  EXPECT_TRUE(o.car.wiring.run.find("fan")->gauge);
}

TEST(Shelf, UnknownPart) {
  auto said = [](const std::string& part, const std::string& stock) {
    return open_car({{"cars/car.toml", "[cooling.radiator]\npart = " + part}}, "cars/car.toml", stock).said;
  };
  EXPECT_EQ(said("\"narow\"", shelf),
            lines("cars/car.toml:2:8: cooling.radiator.part: no part \"narow\" among the shelf's "
                  "`radiator`; did you mean \"narrow\"?"));
  EXPECT_EQ(said("\"x\"", shelf),
            lines("cars/car.toml:2:8: cooling.radiator.part: no part \"x\" among the shelf's `radiator`; "
                  "the shelf has: wide-three, narrow"));
  EXPECT_EQ(said("\"x\"", "[wire.fat]"),
            lines("cars/car.toml:2:8: cooling.radiator.part: no part \"x\" among the shelf's "
                  "`radiator`; the shelf has no part of that category"));
  EXPECT_EQ(said("3", shelf), lines("cars/car.toml:2:8: cooling.radiator.part: expected the name of a part, got 3"));
}

TEST(Shelf, FaultsOfAPartStandInTheShelf) {
  auto o = open_car({{"cars/car.toml", "shelf = \"s.toml\"\n[cooling.radiator]\npart = \"bad\""},
                     {"cars/s.toml", "[radiator.bad]\nrows = 9\nprize = \"3\"\n[radiator.unused]\nrows = 99\n"}});
  EXPECT_EQ(o.said, lines("cars/s.toml:2:8: cooling.radiator.rows: 9 is outside 1 to 6",
                          "cars/s.toml:3:1: cooling.radiator.prize: unknown key"));
}

TEST(Shelf, ABrokenShelfIsTheOnlyFault) {
  auto o = open_car(
      {{"cars/car.toml", "shelf = \"s.toml\"\n[cooling.radiator]\npart = \"bad\""}, {"cars/s.toml", "[radiator"}});
  ASSERT_EQ(o.said.size(), 1u);
  EXPECT_EQ(o.said[0].substr(0, 35), "cars/s.toml:1:10: this is not TOML:");
}

}  // namespace
}  // namespace sw::sample
