#include <gtest/gtest.h>

#include "document/opening.hpp"

namespace sw::sample {
namespace {

TEST(Overlay, OnlyWhatDiffers) {
  auto o = open_car({{"cars/car.toml",
                      "base = \"../pickup.toml\"\n[cooling.radiator]\ncore_width = \"28 in\"\n"
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

TEST(Overlay, WarnsOfANewEntryThatMayBeASlip) {
  const auto over = [](const std::string& text) {
    return open_car({{"cars/car.toml", "base = \"b.toml\"\n" + text}, {"cars/b.toml", pickup}});
  };
  auto slip = over("[wiring.run.pmup]\ngauge = \"8 AWG\"\n");
  EXPECT_EQ(slip.said, lines("cars/car.toml:2:13: warning: wiring.run.pmup: makes a new entry, and \"pump\" that it is "
                             "laid over stays as it was; did you mean \"pump\"? Where a new one is meant, a name less "
                             "like it ends this line"));
  EXPECT_FALSE(slip.doc.faults.any_fault());
  EXPECT_EQ(slip.car.wiring.run.size(), 3u);
  // A number more is a way to name a second one; what is taken out makes way.
  EXPECT_EQ(over("[wiring.run.pump2]\ngauge = \"8 AWG\"\n").said, lines());
  EXPECT_EQ(over("[wiring.run]\npump = false\npmup.gauge = \"8 AWG\"\n").said, lines());
}

TEST(Overlay, AValueIsReplacedWithItsEvidence) {
  auto o = open_car({{"cars/car.toml", "base = \"b.toml\"\n[cooling.radiator]\ncore_width = { value = \"28 in\" }"},
                     {"cars/b.toml", pickup}});
  EXPECT_EQ(o.said, lines());
  EXPECT_EQ(o.evidence.at("cooling.radiator.core_width").source, Source::stated) << "the base measured another width";
}

TEST(Overlay, FalseTakesOut) {
  auto o = open_car({{"cars/car.toml", "base = \"b.toml\"\ncooling.oil_cooler = false\nwiring.run.pump = false\n"},
                     {"cars/b.toml", pickup}});
  EXPECT_EQ(o.said, lines());
  EXPECT_FALSE(o.car.cooling.oil_cooler);
  EXPECT_EQ(o.car.wiring.run.size(), 1u);
}

TEST(Overlay, NothingToTakeOut) {
  auto o = open_car({{"cars/car.toml", "base = \"b.toml\"\n[wiring.run]\npmup = false\n"}, {"cars/b.toml", pickup}});
  EXPECT_EQ(
      o.said,
      lines("cars/car.toml:3:1: wiring.run.pmup: there is nothing of this name to take out; did you mean \"pump\"?"));
  auto none = open_car({{"cars/car.toml", "base = \"b.toml\"\n[wiring.run]\nlamp = false\n"}, {"cars/b.toml", ""}});
  EXPECT_EQ(none.said, lines("cars/car.toml:3:1: wiring.run.lamp: there is nothing of this name to take out"));
}

}  // namespace
}  // namespace sw::sample
