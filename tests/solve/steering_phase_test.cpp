#include <gtest/gtest.h>

#include "solve/list.hpp"
#include "solve/settings.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Solution solved(const Build& b) { return steering_phase.solve(b, *duties_of(b, from_disk())); }
std::string joint(const std::string& name, int angle, const std::string& more = "") {
  return "[steering.joint." + name + "]\nangle = \"" + std::to_string(angle) + " deg\"\n" + more;
}
Build with(Build b, const Solution& s) {
  Diagnostics faults;
  const auto texts = setting_texts(b, s.settings, {}, faults);
  EXPECT_FALSE(faults.any_fault());
  return with_settings(std::move(b), texts);
}
double unevenness(const Build& b) { return Judging(b, "hot-idle").one("steering.evenness").verdict.predicted.value(); }

// Two joints of one angle undo each other exactly where their yokes stand apart by what their planes do, and a quarter
// turn from there they multiply to 1/cos^4 (any theory of machines, Hooke's joint).
TEST(SolveSteeringPhase, EqualJointsUndoEachOther) {
  for (const int plane : {0, 40, -65}) {
    const int wrong = plane > 0 ? plane - 90 : plane + 90;
    const Build b = hand_car(joint("upper", 24) + joint("lower", 24,
                                                        "plane = \"" + std::to_string(plane) + " deg\"\nphase = \"" +
                                                            std::to_string(wrong) + " deg\"\n"));
    EXPECT_NEAR(unevenness(b), 1 / std::pow(std::cos(24 * degree), 4) - 1, 1e-6);
    const Solution s = solved(b);
    ASSERT_TRUE(s.solved()) << s.trouble;
    ASSERT_EQ(s.settings.size(), 1u);
    EXPECT_EQ(s.settings[0].path, "steering.joint.lower.phase");
    EXPECT_NEAR(s.settings[0].value / degree, plane, 1e-9);
    EXPECT_NEAR(unevenness(with(b, s)), 0, 1e-9);
  }
}

TEST(SolveSteeringPhase, TwoMiddleShaftsByPoints) {
  const auto at = [](const std::string& what, double x, double y, double z) {
    return "[steering." + what + "]\nx = \"" + std::to_string(x) + " in\"\ny = \"" + std::to_string(y) +
           " in\"\nz = \"" + std::to_string(z) + " in\"\n";
  };
  const Build b = hand_car("[steering]\nbearings = 1\n" + at("column", 15, 0, 5) + at("joint.a", 0, 0, 0) +
                           at("joint.b", -10, 3, -6) + at("joint.c", -20, 3, -8) + at("box", -30, 1, -8));
  const Solution s = solved(b);
  ASSERT_TRUE(s.solved()) << s.trouble;
  const double found = unevenness(with(b, s));
  // Whatever degree a yoke is turned to instead, none is better by more than a degree's rounding leaves.
  for (int first = -85; first <= 90; first += 5)
    for (int second = -85; second <= 90; second += 5) {
      Build other = b;
      auto& joints = std::get<steering::Input>(other.inputs).joint.entries;
      joints[1].second.phase = Angle{first * degree};
      joints[2].second.phase = Angle{second * degree};
      auto m = resolved<steering::System>(other).model;
      const auto swing = physics::swing(m.chain);
      EXPECT_GE(swing.fastest / swing.slowest - 1, found - 1e-3);
    }
}

TEST(SolveSteeringPhase, LeavesWhatStandsRightAlone) {
  const Solution s = solved(hand_car(joint("a", 20) + joint("b", 20, "plane = \"0 deg\"\n")));
  EXPECT_TRUE(s.solved());
  EXPECT_TRUE(s.settings.empty());
  EXPECT_NE(s.says.find("as they are"), std::string::npos) << s.says;
}

TEST(SolveSteeringPhase, SaysWhatItCannotDo) {
  EXPECT_EQ(solved(hand_car()).missing.size(), 1u);
  EXPECT_NE(solved(hand_car(joint("only", 30))).trouble.find("no yoke to phase"), std::string::npos);
  // By angles alone nobody has measured the plane the second bends in.
  EXPECT_EQ(solved(hand_car(joint("a", 20) + joint("b", 20))).missing,
            (std::vector<std::string>{"steering.joint.b.plane"}));
  // 45 deg leave 1/cos^2 between them that 10 deg cannot undo.
  EXPECT_NE(solved(hand_car(joint("a", 45) + joint("b", 10, "plane = \"0 deg\"\n"))).trouble.find("no phase"),
            std::string::npos);
}

}  // namespace
