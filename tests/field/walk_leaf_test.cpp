#include <gtest/gtest.h>

#include "field/reading.hpp"

namespace sw::sample {
namespace {

TEST(EachLeaf, InTableOrderWithoutAbsentGroups) {
  Car car;
  car.wiring.run.entries.emplace_back("fan", Wire{});
  std::vector<std::string> paths;
  each_leaf(Car::fields(), &car, "", [&](const Leaf& leaf) { paths.push_back(leaf.path); });
  ASSERT_EQ(paths.size(), std::size(radiator_fields) + std::size(wire_fields));
  EXPECT_EQ(paths.front(), "cooling.radiator.core_width");
  EXPECT_EQ(paths[std::size(radiator_fields)], "wiring.run.fan.gauge");
  EXPECT_EQ(paths.back(), "wiring.run.fan.length");

  car.cooling.oil_cooler.emplace();
  paths.clear();
  each_leaf(Car::fields(), &car, "car", [&](const Leaf& leaf) { paths.push_back(leaf.path); });
  EXPECT_EQ(paths[std::size(radiator_fields)], "car.cooling.oil_cooler.heat");
}

TEST(FindLeaf, OpensItsOwnerToChange) {
  Car car;
  car.wiring.run.entries.emplace_back("fan", Wire{});
  auto leaf = find_leaf(Car::fields(), &car, "wiring.run.fan.length");
  ASSERT_TRUE(leaf.field);
  leaf.field->access.set(leaf.owner, 2.0);
  EXPECT_EQ(car.wiring.run.find("fan")->length->si, 2.0);
}

TEST(FindLeaf, NothingWhereThereIsNone) {
  Car car;
  for (auto path : {"", "cooling", "cooling.radiator", "cooling.radiator.core", "cooling.oil_cooler.heat", "wiring.run",
                    "wiring.run.fan.length", "cooling.radiator.core_width.x"})
    EXPECT_FALSE(find_leaf(Car::fields(), &car, path).field) << path;
  EXPECT_FALSE(car.cooling.oil_cooler) << "looking must not make a group";
}

TEST(FindField, EntriesByAnyName) {
  EXPECT_EQ(find_field(Car::fields(), "wiring.run.*.gauge"), &wire_fields[0]);
  EXPECT_EQ(find_field(Car::fields(), "wiring.run.fan.gauge"), &wire_fields[0]);
  EXPECT_EQ(find_field(Car::fields(), "wiring.run.fan")->key, "run");
  EXPECT_EQ(find_field(Car::fields(), "cooling.oil_cooler.heat"), &cooler_fields[0]);
  EXPECT_EQ(find_field(Car::fields(), "cooling.radiator"), &cooling_fields[0]);
  EXPECT_FALSE(find_field(Car::fields(), "cooling.radiator.core_width.more"));
  EXPECT_FALSE(find_field(Car::fields(), "cooling.pump"));
}

}  // namespace
}  // namespace sw::sample
