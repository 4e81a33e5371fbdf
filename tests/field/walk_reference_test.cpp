#include "field/golden.hpp"

namespace sw::sample {
namespace {

TEST(Reference, OfTheSampleCar) { expect_golden("car.md", reference(Car::fields(), "Fields of the sample car")); }

TEST(Describe, OneField) {
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
