#include <gtest/gtest.h>

#include <fstream>
#include <map>

#include "document/document.hpp"
#include "field/sample_car.hpp"
#include "field/walk.hpp"

namespace sw::sample {
namespace {

using Texts = std::map<std::string, std::string>;

struct Opened {
  Document doc;
  Car car;
  EvidenceMap evidence;
  std::vector<std::string> said;
};

Opened open_car(const Texts& texts, const std::string& file = "cars/car.toml", const std::string& stock = {}) {
  auto open = [&](const std::filesystem::path& path) -> std::optional<std::string> {
    auto at = texts.find(path.generic_string());
    return at == texts.end() ? std::nullopt : std::optional(at->second);
  };
  Opened o;
  o.doc = open_build(file, Car::fields(), open, stock);
  read(o.doc.root, Car::fields(), &o.car, "", o.evidence, o.doc.faults);
  for (auto& d : o.doc.faults.all()) o.said.push_back(say(d, o.doc.files));
  return o;
}

template <class... Text> std::vector<std::string> lines(Text... text) { return {text...}; }

constexpr const char* pickup = R"([cooling.radiator]
core_width = { value = "26 in", from = "measured" }
rows = 2
[cooling.oil_cooler]
heat = "3 kW"
[wiring.run.fan]
gauge = "10 AWG"
length = "9 ft"
[wiring.run.pump]
gauge = "14 AWG"
)";

TEST(Overlay, OnlyWhatDiffers) {
  auto o = open_car({{"cars/car.toml", "base = \"../pickup.toml\"\n[cooling.radiator]\ncore_width = \"28 in\"\n"
                                       "[wiring.run.fan]\ngauge = \"8 AWG\"\n[wiring.run.lamp]\nlength = \"3 ft\""},
                     {"pickup.toml", pickup}});
  EXPECT_EQ(o.said, lines());
  EXPECT_EQ(o.doc.files, lines("cars/car.toml", "pickup.toml"));
  EXPECT_DOUBLE_EQ(o.car.cooling.radiator.core_width->si, 28 * 0.0254);
  EXPECT_EQ(o.car.cooling.radiator.rows, 2);
  ASSERT_EQ(o.car.wiring.run.size(), 3u);
  EXPECT_EQ(o.car.wiring.run.entries[2].first, "lamp");
  EXPECT_TRUE(o.car.wiring.run.find("fan")->length);
  EXPECT_EQ(o.evidence.at("wiring.run.fan.length").place.file, 1);
  EXPECT_EQ(o.evidence.at("wiring.run.fan.gauge").place.file, 0);
}

TEST(Overlay, AValueIsReplacedWithItsEvidence) {
  auto o = open_car({{"cars/car.toml", "base = \"b.toml\"\n[cooling.radiator]\ncore_width = { value = \"28 in\" }"}, {"cars/b.toml", pickup}});
  EXPECT_EQ(o.said, lines());
  EXPECT_EQ(o.evidence.at("cooling.radiator.core_width").source, Source::stated) << "the base measured another width";
}

TEST(Overlay, FalseTakesOut) {
  auto o = open_car({{"cars/car.toml", "base = \"b.toml\"\ncooling.oil_cooler = false\nwiring.run.pump = false\n"}, {"cars/b.toml", pickup}});
  EXPECT_EQ(o.said, lines());
  EXPECT_FALSE(o.car.cooling.oil_cooler);
  EXPECT_EQ(o.car.wiring.run.size(), 1u);
}

TEST(Overlay, NothingToTakeOut) {
  auto o = open_car({{"cars/car.toml", "base = \"b.toml\"\n[wiring.run]\npmup = false\n"}, {"cars/b.toml", pickup}});
  EXPECT_EQ(o.said, lines("cars/car.toml:3:1: wiring.run.pmup: there is nothing of this name to take out; did you mean \"pump\"?"));
  auto none = open_car({{"cars/car.toml", "base = \"b.toml\"\n[wiring.run]\nlamp = false\n"}, {"cars/b.toml", ""}});
  EXPECT_EQ(none.said, lines("cars/car.toml:3:1: wiring.run.lamp: there is nothing of this name to take out"));
}

TEST(Overlay, FaultsOfBothFilesWithTheirOwnPlaces) {
  auto o = open_car({{"cars/car.toml", "base = \"b.toml\"\n[cooling.radiator]\nrows = 9\n"}, {"cars/b.toml", "[cooling.radiator]\nflow = \"up\"\n"}});
  EXPECT_EQ(o.said, lines("cars/car.toml:3:8: cooling.radiator.rows: 9 is outside 1 to 6",
                          "cars/b.toml:2:8: cooling.radiator.flow: expected \"down-flow\" or \"cross-flow\", got \"up\""));
}

TEST(Overlay, ALoopIsAFault) {
  auto o = open_car({{"cars/car.toml", "base = \"b.toml\""}, {"cars/b.toml", "\nbase = \"../cars/car.toml\""}});
  EXPECT_EQ(o.said, lines("cars/b.toml:2:8: base: goes round in a circle: cars/car.toml is laid over cars/b.toml is laid over "
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
  auto o = open_car({{"a.json", R"({"base": "b.toml", "cooling": {"radiator": {"rows": 3}, "oil_cooler": false}})"}, {"b.toml", pickup}}, "a.json");
  EXPECT_EQ(o.said, lines());
  EXPECT_EQ(o.car.cooling.radiator.rows, 3);
  EXPECT_FALSE(o.car.cooling.oil_cooler);
  EXPECT_TRUE(o.car.cooling.radiator.core_width);
}

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
  auto o = open_car({{"cars/car.toml", "shelf = \"shop.toml\"\n[cooling.radiator]\npart = \"wide-three\"\ncore_width = \"30 in\"\n"
                                       "[wiring.run.fan]\npart = \"fat\"\nlength = \"3 ft\""},
                     {"cars/shop.toml", shelf}});
  EXPECT_EQ(o.said, lines());
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
  EXPECT_EQ(said("\"narow\"", shelf), lines("cars/car.toml:2:8: cooling.radiator.part: no part \"narow\" among the shelf's "
                                            "`radiator`; did you mean \"narrow\"?"));
  EXPECT_EQ(said("\"x\"", shelf), lines("cars/car.toml:2:8: cooling.radiator.part: no part \"x\" among the shelf's `radiator`; "
                                        "the shelf has: wide-three, narrow"));
  EXPECT_EQ(said("\"x\"", "[wire.fat]"), lines("cars/car.toml:2:8: cooling.radiator.part: no part \"x\" among the shelf's "
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
  auto o = open_car({{"cars/car.toml", "shelf = \"s.toml\"\n[cooling.radiator]\npart = \"bad\""}, {"cars/s.toml", "[radiator"}});
  ASSERT_EQ(o.said.size(), 1u);
  EXPECT_EQ(o.said[0].substr(0, 35), "cars/s.toml:1:10: this is not TOML:");
}

TEST(FromDisk, ReadsFilesAndNothingElse) {
  auto folder = std::filesystem::temp_directory_path() / "streetwright_from_disk_test";
  std::filesystem::create_directories(folder);
  std::ofstream(folder / "a.toml", std::ios::binary) << "a = 1\r\n";
  EXPECT_EQ(from_disk()(folder / "a.toml"), "a = 1\r\n");
  EXPECT_EQ(from_disk()(folder / "b.toml"), std::nullopt);
  EXPECT_EQ(from_disk()(folder), std::nullopt);
  EXPECT_EQ(from_disk()("/dev/zero"), std::nullopt);
  std::filesystem::remove_all(folder);
}

}  // namespace
}  // namespace sw::sample
