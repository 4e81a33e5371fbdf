#include "systems/fasteners/rig.hpp"
#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

fasteners::JointModel of(const std::string& change) {
  return resolved<fasteners::System>(hand_car(change)).model.joints.front();
}

// Shigley's bolted joint, 3/4-16 of grade 5, K = 0.20: 3750 lbf in for 25 kip (from memory); back from the torque.
TEST(FastenersModel, PreloadOfATorqueByTheBook) {
  const auto j = of(bolted("book", "thread = \"3/4-16\"\ngrade = \"5\"\nnut_factor = 0.20\n"));
  EXPECT_NEAR(j.preload_n(3750 * lb_ft / 12) / lbf, 25000, 1);
  EXPECT_NEAR(j.proof_n() / lbf, 85000 * 0.373, 50);
}

TEST(FastenersModel, StateDecidesTheNutFactor) {
  EXPECT_NEAR(of(bolted("a", "thread = \"1/2-13\"\ngrade = \"5\"\n")).factor, 0.20, 1e-12);
  EXPECT_NEAR(of(bolted("a", "thread = \"1/2-13\"\ngrade = \"5\"\nthreads = \"anti-seize\"\n")).factor, 0.12, 1e-12);
  EXPECT_NEAR(of(bolted("a", "thread = \"1/2-13\"\nthreads = \"oiled\"\nnut_factor = 0.155\n")).factor, 0.155, 1e-12);
}

TEST(FastenersModel, WhatIsMissingAndWhatCannotBe) {
  const auto j = of(bolted("a", "engaged = \"0.5 in\"\n"));
  EXPECT_EQ(j.bolt_missing, (std::vector<std::string>{"fasteners.joint.a.thread", "fasteners.joint.a.grade"}));
  EXPECT_EQ(j.engaged_missing, (std::vector<std::string>{"fasteners.joint.a.into"}));
  EXPECT_TRUE(Car(faulty_car(bolted("a", "thread = \"half inch\"\n"))).faults().any_fault());
  EXPECT_TRUE(Car(faulty_car(bolted("a", "thread = \"M10x1.5\"\ngrade = \"8\"\n"))).faults().any_fault());
  EXPECT_TRUE(of(bolted("a", "thread = \"2-4.5\"\ngrade = \"5\"\n")).outside);
}

}  // namespace
