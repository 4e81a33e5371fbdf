#include <gtest/gtest.h>

#include "document/opening.hpp"

namespace sw::sample {
namespace {

TEST(Overlay, FaultsOfBothFilesWithTheirOwnPlaces) {
  auto o = open_car({{"cars/car.toml", "base = \"b.toml\"\n[cooling.radiator]\nrows = 9\n"},
                     {"cars/b.toml", "[cooling.radiator]\nflow = \"up\"\n"}});
  EXPECT_EQ(o.said,
            lines("cars/car.toml:3:8: cooling.radiator.rows: 9 is outside 1 to 6",
                  "cars/b.toml:2:8: cooling.radiator.flow: expected \"down-flow\" or \"cross-flow\", got \"up\""));
}

TEST(Overlay, ALoopIsAFault) {
  auto o = open_car({{"cars/car.toml", "base = \"b.toml\""}, {"cars/b.toml", "\nbase = \"../cars/car.toml\""}});
  EXPECT_EQ(o.said,
            lines("cars/b.toml:2:8: base: goes round in a circle: cars/car.toml is laid over cars/b.toml is laid over "
                  "cars/car.toml"));
}

TEST(Overlay, AChainWithoutEnd) {
  auto open = [](const std::filesystem::path&) { return std::optional<std::string>("base = \"x/car.toml\""); };
  auto doc = open_build("car.toml", Car::fields(), open);
  ASSERT_EQ(doc.faults.all().size(), 1u);
  EXPECT_EQ(doc.faults.all()[0].problem, "more than 16 builds laid over one another");
}

TEST(Overlay, WhatCannotBeHad) {
  EXPECT_EQ(open_car({}).said, lines("cars/car.toml: there is no file \"cars/car.toml\" that can be read"));
  EXPECT_EQ(open_car({{"cars/car.toml", "base = \"b.toml\"\n[wiring.run]\nx = false"}}).said,
            lines("cars/car.toml:1:8: base: there is no file \"cars/b.toml\" that can be read"));
  EXPECT_EQ(open_car({{"cars/car.toml", "base = 3\nshelf = [\"s.toml\", {}]"}}).said,
            lines("cars/car.toml:1:8: base: expected the name of a file, got 3",
                  "cars/car.toml:2:10: shelf: there is no file \"cars/s.toml\" that can be read",
                  "cars/car.toml:2:20: shelf: expected the name of a file, got a table"));
}

TEST(Overlay, JsonOverToml) {
  auto o = open_car({{"a.json", R"({"base": "b.toml", "cooling": {"radiator": {"rows": 3}, "oil_cooler": false}})"},
                     {"b.toml", pickup}},
                    "a.json");
  EXPECT_EQ(o.said, lines());
  EXPECT_EQ(o.car.cooling.radiator.rows, 3);
  EXPECT_FALSE(o.car.cooling.oil_cooler);
  EXPECT_TRUE(o.car.cooling.radiator.core_width);
}

}  // namespace
}  // namespace sw::sample
