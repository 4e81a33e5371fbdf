#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

cooling::Model cooled(const std::string& change = "") { return resolved<cooling::System>(hand_car(change)).model; }
constexpr double atmosphere = 101325;

// Steam tables (IAPWS-IF97): water boils at 100.0 degC at 101.325 kPa, at 120.2 degC at 200 kPa, at 94.9 degC in the
// 84.3 kPa of 5000 ft (ISO 2533).
TEST(CoolingModel, WaterBoilsWhereTheSteamTablesSay) {
  auto m = cooled("[cooling]\nglycol = 0\n");
  m.cap_pa = 0;
  EXPECT_NEAR(cooling::boiling_k(m, atmosphere) - zero_c, 100.0, 0.1);
  EXPECT_NEAR(cooling::boiling_k(m, 84.3e3) - zero_c, 94.9, 0.2);
  m.cap_pa = 200e3 - atmosphere;
  EXPECT_NEAR(cooling::boiling_k(m, atmosphere) - zero_c, 120.2, 0.2);
}

// Half and half: 225 to 227 degF open (107 to 108 degC) and about 265 degF (129 degC) under 15 psi: the ladder of the
// trade and of glycol makers' sheets (from memory), to 2 K.
TEST(CoolingModel, HalfGlycolBoilsAsTheTradesLadderSays) {
  auto m = cooled();
  m.cap_pa = 0;
  EXPECT_NEAR(cooling::boiling_k(m, atmosphere) - zero_c, 107.5, 2.0);
  m.cap_pa = 15 * 6894.757;
  EXPECT_NEAR(cooling::boiling_k(m, atmosphere) - zero_c, 129.5, 2.5);
}

TEST(CoolingModel, BoilingFallsWithAltitudeAndRisesWithTheCap) {
  auto m = cooled();
  double before = 1e9;
  for (double p = 105e3; p > 60e3; p -= 5e3) {
    EXPECT_LT(cooling::boiling_k(m, p), before);
    before = cooling::boiling_k(m, p);
  }
  before = 0;
  for (double cap = 0; cap < 200e3; cap += 20e3) {
    m.cap_pa = cap;
    EXPECT_GT(cooling::boiling_k(m, atmosphere), before);
    before = cooling::boiling_k(m, atmosphere);
  }
}

// dp = k v^2 through (2 m/s, 38 Pa) and (4 m/s, 130 Pa): least squares k = (38 x 4 + 130 x 16) / (16 + 256) = 8.206.
TEST(CoolingModel, LossCoefficientByLeastSquares) {
  EXPECT_NEAR(cooled("[cooling.radiator]\nairflow_loss = [[\"2 m/s\", \"38 Pa\"], [\"4 m/s\", \"130 Pa\"]]\n").loss,
              8.206, 0.001);
}

// 60 US gal/min at 2600 rpm: 3.7854e-3 / 272.27 = 1.3903e-5 m3 a radian.
TEST(CoolingModel, FiguresInTheirPlaces) {
  const auto m = cooled();
  EXPECT_NEAR(m.pump_m3_rad, 1.3903e-5, 1e-9);
  EXPECT_NEAR(m.face_m2, 26 * 17 * inch * inch, 1e-9);
  EXPECT_NEAR(m.fan[0].face_m_s, 800 * 4.719474e-4 / m.face_m2, 1e-5);
  EXPECT_NEAR(m.open_k - m.opens_k, 12, 1e-9);
  EXPECT_NEAR(cooled("[cooling.radiator]\nblocked_share = 0.3\n").conductance_w_k, 0.7 * 1650, 1e-9);
  EXPECT_NEAR((m.engine_m3 + m.radiator_m3) * 1e3, 14, 1e-9);
}

// Both fans of the hand car by a curve: 26 x 17 in = 0.28516 m2; free 1000 cfm = 0.47195 m3/s = 1.65502 m/s, shut off
// 150 Pa: a = 150 / 1.65502^2 = 54.763; two side by side 13.691; on k = 8.2: v = sqrt(150 / 21.891) = 2.6177 m/s
// together.
TEST(CoolingModel, FansByTheirCurvesMeetTheCore) {
  const std::string curve = "curve = [[\"0 cfm\", \"150 Pa\"], [\"1000 cfm\", \"0 Pa\"]]\n";
  const auto m = cooled("[cooling.fan.left]\n" + curve + "[cooling.fan.right]\n" + curve);
  ASSERT_EQ(m.fans, 2u);
  EXPECT_NEAR(m.fan[0].face_m_s + m.fan[1].face_m_s, 2.6177, 0.001);
  EXPECT_NEAR(m.fan[0].face_m_s, m.fan[1].face_m_s, 1e-12);
  EXPECT_NEAR(m.fan[0].free_ratio, 2 * 1.65502 / 2.6177, 0.001);
  // A core that loses twice as much lets less through: the loss counts here.
  const auto dense =
      cooled("[cooling.radiator]\nusual_loss = 2\n[cooling.fan.left]\n" + curve + "[cooling.fan.right]\n" + curve);
  EXPECT_NEAR(dense.fan[0].face_m_s * 2, std::sqrt(150 / (16.4 + 13.691)), 0.001);
}

TEST(CoolingModel, FansStandInOrderOfTheirSwitchingElectricFirst) {
  const auto m = cooled(
      "[cooling.fan.left]\non = \"105 degC\"\n[cooling.fan.belt]\ndrive = \"engine\"\nflow = \"1500 cfm\"\nat_speed = "
      "\"2000 rpm\"\n");
  ASSERT_EQ(m.fans, 3u);
  ASSERT_EQ(m.electric, 2u);
  EXPECT_EQ(m.fan[0].name, "right");
  EXPECT_EQ(m.fan[1].name, "left");
  EXPECT_EQ(m.fan[2].name, "belt");
}

TEST(CoolingModel, AnEngineFanNeedsNoSetPoints) {
  const auto r =
      resolved<cooling::System>(hand_car("[cooling.fan]\nleft = false\nright = false\n[cooling.fan.belt]\ndrive = "
                                         "\"engine\"\nflow = \"1500 cfm\"\nat_speed = \"2000 rpm\"\n"));
  EXPECT_TRUE(r.missing.empty()) << r.missing[0];
}

// The fluid's figures end at 60 % by mass: the field's range must end there too, and whatever lies beyond is said.
TEST(CoolingModel, TheStrongestMixtureOfTheRangeHasFigures) {
  EXPECT_TRUE(resolved<cooling::System>(hand_car("[cooling]\nglycol = 0.57\n")).missing.empty());
  Build b = hand_car();
  std::get<cooling::Input>(b.inputs).glycol = 0.65;
  const auto r = resolved<cooling::System>(b);
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_TRUE(r.missing[0].starts_with("cooling.glycol")) << r.missing[0];
}

// Beyond the table the end's figures stand: coolant that has long boiled must not make heat from nothing.
TEST(CoolingModel, CoolantFiguresAreHeldAtTheEnds) {
  const auto m = cooled();
  const auto end = cooling::coolant_at(m, 140 + zero_c), far = cooling::coolant_at(m, 600 + zero_c),
             cold = cooling::coolant_at(m, 100);
  EXPECT_EQ(far.density_kg_m3, end.density_kg_m3);
  EXPECT_EQ(far.specific_heat_j_kg_k, end.specific_heat_j_kg_k);
  EXPECT_GT(cold.density_kg_m3, 1000);
  EXPECT_GT(cold.specific_heat_j_kg_k, 2500);
}

TEST(CoolingModel, AFifthFanIsSaid) {
  std::string fans;
  for (int i = 0; i < 3; ++i)
    fans += "[cooling.fan.f" + std::to_string(i) +
            "]\nflow = \"500 cfm\"\ncurrent = \"9 A\"\non = \"99 degC\"\noff = \"95 degC\"\n";
  const auto r = resolved<cooling::System>(faulty_car(fans));
  ASSERT_EQ(r.missing.size(), 1u);
  EXPECT_NE(r.missing[0].find("f2"), std::string::npos);
}

}  // namespace
