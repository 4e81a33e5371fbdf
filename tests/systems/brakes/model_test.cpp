#include "systems/brakes/rig.hpp"

using namespace sw;
using namespace sw::rig;
using namespace sw::brakes;

namespace {

TEST(BrakesModel, LacksNothingAsTheHandCarIs) {
  const Build build = hand_car();
  EXPECT_TRUE(resolved<brakes::System>(build).missing.empty());
  const Car car(build);
  for (auto& s : car.systems())
    if (s.key == "brakes") {
      EXPECT_TRUE(s.missing_of.empty());
    }
  EXPECT_TRUE(car.faults().all().empty());
}

// Figures one block lacks silence that block alone: balance is still judged without a booster's area.
TEST(BrakesModel, AMissingBoosterSilencesThePedalAlone) {
  Build b = hand_car();
  std::get<brakes::Input>(b.inputs).booster.area.reset();
  Judging j(b, "panic-stop");
  EXPECT_TRUE(j.one("brakes.lock-order", "panic-stop").verdict.predicted);
  EXPECT_EQ(j.one("brakes.pedal-force", "panic-stop").verdict.missing, std::vector<std::string>{"brakes.booster.area"});
}

TEST(BrakesModel, DiametersStandForAreas) {
  Build b = faulty_car("[brakes.booster]\ndiameter = \"7.5 in\"\ndiaphragms = 2\n");
  Resolver r(build_fields(), &b, b.evidence);
  System::resolve(std::get<Input>(b.inputs), r);
  ASSERT_EQ(r.faults().all().size(), 1u);  // one of the two says it
  std::get<brakes::Input>(b.inputs).booster.area.reset();
  EXPECT_NEAR(resolved<brakes::System>(b).model.booster.area_m2 / in2, 2 * M_PI / 4 * 56.25, 1e-9);
}

TEST(BrakesModel, ADrumWithoutAFactorIsReckonedFromItsShoes) {
  Build b = hand_car(
      "[brakes.rear]\nfriction = 0.32\nshoes = \"leading and trailing\"\nradius = \"150 "
      "mm\"\n[brakes.rear.shape]\npivot = "
      "\"122.7 mm\"\nlever = \"212 mm\"\nstart = \"0 deg\"\nend = \"126 deg\"\n");
  std::get<brakes::Input>(b.inputs).rear.factor.reset();
  const Model m = resolved<brakes::System>(b).model;
  // 366 and 162 N m by 2.28 kN at 150 mm (Shigley ch. 16, from memory).
  EXPECT_NEAR(m.rear.torque_m3 / (2 * m.rear.area_m2.value * 0.150), (366 + 162) / (0.150 * 2280), 0.02);
}

TEST(BrakesModel, FiguresThatCannotBeAreFaults) {
  for (const char* change : {"[brakes.master]\nfront_chamber = \"1.5 in\"\n", "[brakes.pedal]\nrod_offset = \"7 in\"\n",
                             "[brakes.valve.meter]\nacts = \"holds off\"\nknee = \"200 psi\"\nfull = \"150 psi\"\n"}) {
    const Build b = faulty_car(change);
    EXPECT_FALSE(Car(b).faults().all().empty()) << change;
  }
}

}  // namespace
