#include <nlohmann/json.hpp>

#include "field/golden.hpp"

namespace sw::sample {
namespace {

TEST(Schema, OfTheSampleCar) { expect_golden("car.schema.json", schema(Car::fields(), "Sample car")); }

TEST(Schema, IsJson) {
  auto json = nlohmann::json::parse(schema(Car::fields(), "Sample car"));
  auto& width = json["properties"]["cooling"]["properties"]["radiator"]["properties"]["core_width"];
  EXPECT_EQ(width["title"], "core width");
  EXPECT_EQ(width["$ref"], "#/$defs/figure");
  EXPECT_EQ(json["$defs"]["figure"]["anyOf"][1]["required"][0], "value");
}

}  // namespace
}  // namespace sw::sample
