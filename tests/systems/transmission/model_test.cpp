#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

transmission::Model of(const std::string& change) { return resolved<transmission::System>(hand_car(change)).model; }
const std::string gates =
    "[transmission.selector]\ngates = [\"P\", \"R\", \"N\", \"D\"]\nshifter_step = \"12 deg\"\nbox_step = \"10 deg\"\n";
const std::string alike = "linkage = 1\n";

TEST(TransmissionModel, ErrorsGrowFromWhereTheLinkageIsSet) {
  const auto from_park = of(gates + alike);
  ASSERT_EQ(from_park.gates.size(), 4u);
  EXPECT_NEAR(from_park.gates[0].off_rad, 0, 1e-12);
  EXPECT_NEAR(from_park.gates[3].off_rad / degree, 6, 1e-9);
  const auto from_neutral = of(gates + alike + "set_at = \"N\"\n");
  EXPECT_NEAR(from_neutral.gates[0].off_rad / degree, -4, 1e-9);
  EXPECT_NEAR(from_neutral.gates[2].off_rad, 0, 1e-12);
  EXPECT_NEAR(of(gates + "linkage = 0.83333333\n").gates[3].off_rad, 0, 1e-6);
}

TEST(TransmissionModel, GatesThatCannotBe) {
  EXPECT_TRUE(Car(faulty_car(gates + "set_at = \"L\"\n")).faults().any_fault());
  EXPECT_TRUE(
      Car(faulty_car("[transmission.selector]\ngates = [\"P\", \"R\"]\nshifter_step = \"12 deg\"\nbox_step = \"10 "
                     "deg\"\n"))
          .faults()
          .any_fault());
}

// A lever that swings alike to both sides draws the chord, 2 r sin(opening/2); one that starts square to the cable
// draws r sin(opening).
TEST(TransmissionModel, TravelOfALever) {
  transmission::CableModel c{.throttle_rad = 78 * degree, .before_square = 0.5};
  EXPECT_NEAR(c.travel_m(1.10), 2 * 1.10 * std::sin(39 * degree), 1e-12);
  c.start_rad = 0;
  EXPECT_NEAR(c.travel_m(1.0), std::sin(78 * degree), 1e-12);
}

}  // namespace
