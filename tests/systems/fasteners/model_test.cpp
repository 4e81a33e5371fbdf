#include "systems/fasteners/rig.hpp"
#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

std::string print_number(double x, int decimals) {
  char text[32];
  std::snprintf(text, sizeof text, "%.*f", decimals, x);
  return text;
}
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
  EXPECT_NEAR(of(bolted("a", "thread = \"1/2-13\"\ngrade = \"5\"\n" + in_nut)).factor.value(), 0.20, 1e-12);
  EXPECT_FALSE(of(bolted("a", "thread = \"1/2-13\"\ngrade = \"5\"\n")).factor);  // nobody said: no stand-in
  EXPECT_NEAR(of(bolted("a", "thread = \"1/2-13\"\ngrade = \"5\"\nthreads = \"anti-seize\"\n")).factor.value(), 0.12,
              1e-12);
  EXPECT_NEAR(of(bolted("a", "thread = \"1/2-13\"\nthreads = \"oiled\"\nnut_factor = 0.155\n")).factor.value(), 0.155,
              1e-12);
}

// The sentences of the fields and the figures of the code are one.
TEST(FastenersModel, FieldsTellTheFiguresTaken) {
  const auto row = [](std::string_view key) {
    for (auto& f : fasteners::Joint::fields())
      if (f.key == key) return f;
    throw std::out_of_range("no such field");
  };
  std::string factors;
  for (const double f : fasteners::nut_factors) factors += (factors.empty() ? "" : ", ") + print_number(f, 2);
  EXPECT_NE(row("threads").source.find("nut factors " + factors + ":"), std::string_view::npos) << factors;
  const auto strength = [](fasteners::Into into) {
    return print_number(fasteners::tapped[static_cast<std::size_t>(into)].tensile_pa / ksi_pa, 0);
  };
  EXPECT_NE(row("strength")
                .doc.find(strength(fasteners::Into::steel) + " ksi of steel, " + strength(fasteners::Into::iron) +
                          " of grey iron, " + strength(fasteners::Into::aluminium) + " of cast aluminium"),
            std::string_view::npos);
}

TEST(FastenersModel, WhatIsMissingAndWhatCannotBe) {
  const auto j = of(bolted("a", "engaged = \"0.5 in\"\n"));
  EXPECT_EQ(j.bolt_missing, (std::vector<std::string>{"fasteners.joint.a.thread", "fasteners.joint.a.grade"}));
  EXPECT_EQ(j.engaged_missing, (std::vector<std::string>{"fasteners.joint.a.into"}));
  const auto joint = [](const std::string& more) {
    return of(bolted("a", "thread = \"1/2-13\"\ngrade = \"5\"\n" + more));
  };
  EXPECT_EQ(joint("threads = \"oiled\"\n").clamp_missing(),
            (std::vector<std::string>{"fasteners.joint.a.into", "fasteners.joint.a.engaged"}));
  EXPECT_EQ(joint("into = \"steel\"\nengaged = \"0.6 in\"\n").clamp_missing(),
            (std::vector<std::string>{"fasteners.joint.a.threads"}));
  EXPECT_TRUE(joint(in_nut).clamp_missing().empty());
  // Shims take thread of a nut as well; one used before may be of a kind that is stretched.
  EXPECT_EQ(joint(in_nut + "shims = \"0.1 in\"\n").clamp_missing(),
            (std::vector<std::string>{"fasteners.joint.a.engaged"}));
  EXPECT_EQ(joint(in_nut + "used_before = true\n").clamp_missing(),
            (std::vector<std::string>{"fasteners.joint.a.to_yield"}));
  EXPECT_TRUE(Car(faulty_car(bolted("a", "thread = \"half inch\"\n"))).faults().any_fault());
  EXPECT_TRUE(Car(faulty_car(bolted("a", "thread = \"M10x1.5\"\ngrade = \"8\"\n"))).faults().any_fault());
  EXPECT_TRUE(of(bolted("a", "thread = \"2-4.5\"\ngrade = \"5\"\n")).outside);
}

}  // namespace
