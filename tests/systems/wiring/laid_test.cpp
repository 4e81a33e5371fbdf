#include "systems/wiring/laid.hpp"

#include "proof/proof.hpp"
#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

/// The hand car with one more load behind 14 AWG in the bay.
Build with_pump(const std::string& wire) {
  return hand_car("[wiring.load.pump]\ncurrent = \"5 A\"\nwhen = [\"key\"]\ngauge = \"14 AWG\"\nlength = \"6 ft\"\n" +
                  wire);
}
const wiring::Conductor& pump(const wiring::Model& m) {
  for (auto& l : m.loads)
    if (l.wire.place == "pump") return l.wire;
  throw std::out_of_range("no pump");
}
State fuse_wire(const std::string& wire) {
  const Build b = with_pump(wire);
  for (auto& f : prove(b, *duties_of(b, from_disk()), {.duty = "hot-idle", .threads = 1}).findings)
    if (f.id == "wiring.fuse-wire[pump]") return f.state;
  throw std::out_of_range("not judged");
}

// 33 CFR 183.425 Table 5 (transcribed): 14 AWG at 80 degC 25 A, engine space x 0.78, three in a bundle x 0.70: 13.65 A.
TEST(WiringLaid, NobodysWireIsPlainPvcInALoom) {
  const auto r = resolved<wiring::System>(with_pump("fuse = \"10 A\"\n"));
  const auto& c = pump(r.model);
  EXPECT_DOUBLE_EQ(c.laid.insulation_k, 353.15);
  EXPECT_EQ(c.laid.bundle, 3);
  EXPECT_EQ(c.laid.zone, wiring::Zone::engine_bay);
  EXPECT_NEAR(c.ampacity_a, 13.65, 1e-9);
  EXPECT_NEAR(wiring::ampacity(c, 353.15 - 7.5).current_a, 13.65 / 2, 1e-9);  // a quarter of the 30 K is left
  ASSERT_EQ(c.laid.told.size(), 4u);
  for (auto& line : c.laid.told) EXPECT_FALSE(line.path.empty()) << line.what;
  EXPECT_EQ(c.laid.told[2].text, "engine bay (the careful one, nobody gave it)");
}

// In the cabin the bay's air is nothing to it: 14 AWG at 80 degC 25 A x 0.70.
TEST(WiringLaid, TheCabinKeepsItsTable) {
  const auto r = resolved<wiring::System>(with_pump("fuse = \"10 A\"\nzone = \"cabin\"\n"));
  EXPECT_NEAR(wiring::ampacity(pump(r.model), 400).current_a, 17.5, 1e-9);
  EXPECT_EQ(pump(r.model).laid.told[2].text, "cabin");
}

// 15 A before 14 AWG: too much at 80 degC (13.65 A), right at 90 degC (30 A x 0.82 x 0.70 = 17.2 A), and at 105 degC
// (35 A x 0.85 x 0.70 = 20.8 A). Whether nobody's wire is protected is not known.
TEST(WiringLaid, WhatTurnsOnAStandInIsTight) {
  EXPECT_EQ(fuse_wire("fuse = \"15 A\"\n"), State::tight);
  EXPECT_EQ(fuse_wire("fuse = \"15 A\"\ninsulation = \"80 degC\"\nbundle = 3\n"), State::fails);
  EXPECT_EQ(fuse_wire("fuse = \"15 A\"\ninsulation = \"105 degC\"\nbundle = 3\n"), State::holds);
  // 20 A: three in the bundle pass, five (x 0.60: 17.9 A) do not.
  EXPECT_EQ(fuse_wire("fuse = \"20 A\"\ninsulation = \"105 degC\"\n"), State::tight);
  EXPECT_EQ(fuse_wire("fuse = \"20 A\"\ninsulation = \"105 degC\"\nbundle = 3\n"), State::holds);
}

}  // namespace
