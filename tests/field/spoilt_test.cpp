#include "field/spoilt.hpp"

#include <gtest/gtest.h>

#include "field/sample_car.hpp"

namespace sw::sample {
namespace {

Spoilt by(std::vector<std::string> paths) {
  Diagnostics faults;
  for (auto& p : paths) faults.fault({}, p, "cannot be read");
  return {Car::fields(), faults};
}

TEST(Spoilt, IsNothingWithoutFaults) {
  Diagnostics warned;
  warned.warn({}, "cooling.radiator.rows", "many");
  EXPECT_TRUE(Spoilt(Car::fields(), warned).none());
  EXPECT_FALSE(Spoilt().at("cooling.radiator.rows"));
}

TEST(Spoilt, ReachesWhatHoldsAFaultAndWhatIsBelowIt) {
  const Spoilt s = by({"cooling.radiator.rows.plus_minus", "wiring.run.fan"});
  for (auto* path : {"cooling.radiator.rows", "cooling.radiator", "wiring.run", "wiring.run.fan.length"})
    EXPECT_TRUE(s.at(path)) << path;
  for (auto* path : {"cooling.radiator.core_width", "cooling.oil_cooler", "wiring.run.fancy", "wiring.run.pump.length"})
    EXPECT_FALSE(s.at(path)) << path;
}

TEST(Spoilt, TakesAMistypedKeyForItsNeighbour) {
  const Spoilt s = by({"cooling.radiator.core_widht"});
  EXPECT_TRUE(s.at("cooling.radiator.core_width"));
  EXPECT_FALSE(s.at("cooling.radiator.rows"));
}

TEST(Spoilt, TakesAKeyInTheWrongTableForTheOneElsewhere) {
  EXPECT_TRUE(by({"cooling.core_width"}).at("cooling.radiator.core_width"));
  const Spoilt in_list = by({"cooling.radiator.gauge"});
  EXPECT_TRUE(in_list.at("wiring.run.fan.gauge"));
  EXPECT_FALSE(in_list.at("wiring.run.fan.length"));
}

TEST(Spoilt, LeavesNothingKnownOfAPartThatIsNotThere) {
  const Spoilt s = by({"cooling.radiator.part"});
  EXPECT_TRUE(s.at("cooling.radiator.rows"));
  EXPECT_FALSE(s.at("cooling.oil_cooler.heat"));
}

}  // namespace
}  // namespace sw::sample
