// Regression, not reference: schema, types and field reference of the sample car as they were last looked at. After a
// wanted change run the test with STREETWRIGHT_WRITE_GOLDEN=1 and read the difference.
#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <nlohmann/json.hpp>
#include <sstream>

#include "field/sample_car.hpp"
#include "field/walk.hpp"

namespace sw::sample {
namespace {

void expect_golden(const std::string& name, const std::string& text) {
  std::string file = STREETWRIGHT_SOURCE_DIR "/tests/field/golden/" + name;
  if (std::getenv("STREETWRIGHT_WRITE_GOLDEN")) std::ofstream(file, std::ios::binary) << text;
  std::ifstream in(file, std::ios::binary);
  std::ostringstream golden;
  golden << in.rdbuf();
  EXPECT_EQ(text, golden.str()) << name;
}

TEST(Texts, Schema) { expect_golden("car.schema.json", schema(Car::fields(), "Sample car")); }
TEST(Texts, TypeScript) { expect_golden("car.ts", typescript(Car::fields(), "Car")); }
TEST(Texts, Reference) { expect_golden("car.md", reference(Car::fields(), "Fields of the sample car")); }

TEST(Texts, SchemaIsJson) {
  auto json = nlohmann::json::parse(schema(Car::fields(), "Sample car"));
  auto& width = json["properties"]["cooling"]["properties"]["radiator"]["properties"]["core_width"];
  EXPECT_EQ(width["title"], "core width");
  EXPECT_EQ(width["$ref"], "#/$defs/figure");
  EXPECT_EQ(json["$defs"]["figure"]["anyOf"][1]["required"][0], "value");
}

TEST(Texts, Describe) {
  EXPECT_EQ(describe(radiator_fields[0], "cooling.radiator.core_width"),
            "cooling.radiator.core_width: core width\n"
            "  Between the tanks.\n"
            "  kind: length\n"
            "  write: \"17 1/4 in\"\n"
            "  units: in, mm, ft, cm, m, km, mile, um, thou\n"
            "  range: 4 in to 60 in\n"
            "  source: common practice\n");
  EXPECT_EQ(describe(radiator_fields[1], "x"),
            "x: core height\n  kind: length\n  write: \"17 1/4 in\"\n  units: in, mm, ft, cm, m, km, mile, um, thou\n"
            "  range: 4 in to 60 in\n  default: 17 in, typical ± 20 %\n");
  EXPECT_EQ(describe(radiator_fields[3], "cap"),
            "cap: cap pressure\n  kind: gauge pressure\n  write: \"12.5 psi\"\n"
            "  units: psi, psig, kPa, bar, Pa, mbar, inHg, MPa\n  range: above 0 psi to 30 psi\n"
            "  default: none, for it decides a harm rule\n");
  EXPECT_EQ(describe(wiring_fields[0], "wiring.run"),
            "wiring.run: wire runs\n  kind: entries by name, or parts of the shelf's `wire`\n"
            "  gauge: wire size\n  length: length of the run\n");
}

}  // namespace
}  // namespace sw::sample
