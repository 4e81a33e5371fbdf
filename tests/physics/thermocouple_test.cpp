#include "physics/thermocouple.hpp"

#include <gtest/gtest.h>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr double ice = 273.15;
double mv(Thermocouple type, double c) { return thermocouple_v(type, c + ice, ice).value * 1e3; }

// SND-19: type K, 800 degC: 33.275 mV (NIST Monograph 175, from memory).
TEST(Thermocouple, SND_19_TypeK) { EXPECT_NEAR(mv(Thermocouple::k, 800), 33.275, 2e-3); }

// NIST ITS-90 tables, mV to the last of their three places. Types K and T: tables read in stored copies (K of a page
// that reproduces it, T of NIST's own file). Hot K and J: from memory.
TEST(Thermocouple, NistTables) {
  const struct {
    Thermocouple type;
    double c, mv;
  } table[] = {
      {Thermocouple::k, -260, -6.441}, {Thermocouple::k, -200, -5.891}, {Thermocouple::k, -150, -4.913},
      {Thermocouple::k, -140, -4.669}, {Thermocouple::t, -200, -5.603}, {Thermocouple::t, -150, -4.648},
      {Thermocouple::t, -100, -3.379}, {Thermocouple::t, -50, -1.819},  {Thermocouple::t, -40, -1.475},
      {Thermocouple::k, 100, 4.096},   {Thermocouple::j, 100, 5.269},   {Thermocouple::j, 500, 27.393},
      {Thermocouple::t, 100, 4.279},
  };
  for (auto& row : table) EXPECT_NEAR(mv(row.type, row.c), row.mv, 6e-4) << row.c;
}

TEST(Thermocouple, PiecesMeet) {
  EXPECT_NEAR(mv(Thermocouple::k, -1e-9), mv(Thermocouple::k, 1e-9), 1e-6);
  EXPECT_NEAR(mv(Thermocouple::j, 760 - 1e-9), mv(Thermocouple::j, 760 + 1e-9), 1e-3);
  EXPECT_NEAR(mv(Thermocouple::t, 0), 0, 1e-12);
}

TEST(Thermocouple, ThereAndBackWithAnyReference) {
  for (auto type : {Thermocouple::k, Thermocouple::j, Thermocouple::t})
    for (double reference : {ice, ice + 25})
      for (double c = -190; c <= 400; c += 13) {
        const Slope v = thermocouple_v(type, c + ice, reference);
        const Slope back = thermocouple_k(type, v.value, reference);
        EXPECT_NEAR(back.value, c + ice, 1e-6);
        EXPECT_NEAR(back.slope * v.slope, 1, 1e-6);
        EXPECT_TRUE(v.valid && back.valid);
        expect_slope(
            v.slope, [&](double k) { return thermocouple_v(type, k, reference).value; }, c + ice, 1e-4);
      }
  EXPECT_NEAR(thermocouple_v(Thermocouple::k, 300, 300).value, 0, 1e-15);
}

TEST(Thermocouple, OutsideItsRange) {
  EXPECT_FALSE(thermocouple_v(Thermocouple::t, 401 + ice, ice).valid);
  EXPECT_FALSE(thermocouple_k(Thermocouple::k, 0.080, ice).valid);
  EXPECT_GT(thermocouple_k(Thermocouple::k, 0.080, ice).value, 1372 + ice);
}

}  // namespace
}  // namespace sw::physics
