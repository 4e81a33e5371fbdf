#include "physics/exchanger.hpp"

#include <vector>

#include "near.hpp"

namespace sw::physics {
namespace {

constexpr Arrangement all[] = {Arrangement::counterflow, Arrangement::parallel, Arrangement::crossflow_unmixed,
                               Arrangement::crossflow_max_mixed, Arrangement::crossflow_min_mixed};

// Printed in the documentation of the open-source ht library (its effectiveness examples; Mason's series).
TEST(Exchanger, PublishedValues) {
  EXPECT_NEAR(effectiveness(Arrangement::crossflow_unmixed, 5, 0.7).value, 0.84448, 0.84448 * 2e-4);
  // Holman, Heat Transfer, example 10-9 (oil heater, shell fluid mixed)
  const double ntu = 275 * 10.82 / (0.725 * 1900), c = 0.725 * 1900 / (5.2 * 1860);
  EXPECT_NEAR(effectiveness(Arrangement::crossflow_max_mixed, ntu, c).value, 0.8312, 4e-4);
}

// Closed forms of the theory.
TEST(Exchanger, Limits) {
  EXPECT_NEAR(effectiveness(Arrangement::counterflow, 3, 1).value, 3.0 / 4, 1e-12);
  EXPECT_NEAR(effectiveness(Arrangement::parallel, 50, 1).value, 0.5, 1e-12);
  for (auto a : all) {
    EXPECT_NEAR(effectiveness(a, 1.7, 0).value, 1 - std::exp(-1.7), 1e-12);
    EXPECT_EQ(effectiveness(a, 0, 0.5).value, 0);
    EXPECT_FALSE(effectiveness(a, -1, 0.5).valid);
    EXPECT_FALSE(effectiveness(a, 1, 1.1).valid);
  }
}

// Two methods: the series against a numerical march of both unmixed streams (first order, extrapolated).
TEST(Exchanger, SeriesAgreesWithAMarch) {
  auto march = [](double n, double c, int cells) {
    std::vector<double> cold(static_cast<std::size_t>(cells), 0.0);
    double hot_out = 0;
    for (int i = 0; i < cells; ++i) {
      double hot = 1;
      for (auto& t : cold) {
        const double heat = n / cells * (hot - t);  // per hot capacity C_min of one strip
        hot -= heat;
        t += c * heat;
      }
      hot_out += hot / cells;
    }
    return 1 - hot_out;
  };
  for (double n : {0.5, 1.0, 3.0})
    for (double c : {0.3, 1.0}) {
      const double fine = 2 * march(n, c, 1600) - march(n, c, 800);
      EXPECT_NEAR(effectiveness(Arrangement::crossflow_unmixed, n, c).value, fine, 2e-5) << n << " " << c;
    }
}

TEST(Exchanger, OneTermFormula) {
  EXPECT_NEAR(crossflow_one_term(1, 1).value, 0.4685, 5e-5);  // the formula worked by hand
  // how far the approximation may be from the exact series, as the header states it
  for (double n : {0.05, 0.3, 0.5, 1.0, 2.0, 4.0, 8.0})
    for (double c : {0.1, 0.5, 0.8, 1.0})
      expect_share(crossflow_one_term(n, c).value, effectiveness(Arrangement::crossflow_unmixed, n, c).value, 0.04);
}

TEST(Exchanger, DerivativesAndInverse) {
  auto check = [](const auto& f, double n, double c) {
    const auto e = f(n, c);
    const double h = 1e-5;
    EXPECT_NEAR(e.d_ntu, (f(n * (1 + h), c).value - f(n * (1 - h), c).value) / (2 * h * n), 1e-8) << n << " " << c;
    EXPECT_NEAR(e.d_ratio, (f(n, c * (1 + h)).value - f(n, c * (1 - h)).value) / (2 * h * c), 1e-7) << n << " " << c;
  };
  for (double n : {0.01, 0.3, 1.0, 3.0, 10.0, 40.0})
    for (double c : {0.01, 0.2, 0.7, 0.95, 0.9999}) {
      for (auto a : all) {
        check([a](double x, double y) { return effectiveness(a, x, y); }, n, c);
        const double e = effectiveness(a, n, c).value;
        if (effectiveness(a, n, c).d_ntu < 1e-7) continue;  // saturated: no inverse in double precision
        const auto back = ntu_for(a, e, c);
        EXPECT_TRUE(back.valid);
        expect_share(back.value, n, 1e-6);
      }
      check([](double x, double y) { return crossflow_one_term(x, y); }, n, c);
    }
}

TEST(Exchanger, NoParallelExchangerBeatsItsLimit) {
  EXPECT_FALSE(ntu_for(Arrangement::parallel, 0.6, 1).valid);
  EXPECT_TRUE(ntu_for(Arrangement::counterflow, 0.99, 1).valid);
}

// Bergman and others, Introduction to Heat Transfer, 6th ed., example 11.1 (printed in the open-source ht library).
TEST(Exchanger, LogMeanDifference) {
  EXPECT_NEAR(log_mean_difference(100 - 40.2, 60 - 30).value_k, 43.2, 0.05);
  EXPECT_NEAR(log_mean_difference(100 - 30, 60 - 40.2).value_k, 39.75, 0.01);
  EXPECT_NEAR(log_mean_difference(20, 20).value_k, 20, 1e-12);
  EXPECT_NEAR(log_mean_difference(20, 20.0001).value_k, 20.00005, 1e-9);
  EXPECT_FALSE(log_mean_difference(20, -1).valid);
  EXPECT_FALSE(log_mean_difference(0, 5).valid);
}

// By hand: a core of 800 W/K at 5 m/s, exponent 0.5, gives half of it at a quarter of the speed.
TEST(Exchanger, CoreConductanceByFaceSpeed) {
  EXPECT_NEAR(core_conductance(800, 5, 0.5, 1.25).value, 400, 1e-9);
  expect_slope(
      core_conductance(800, 5, 0.45, 3).slope, [](double v) { return core_conductance(800, 5, 0.45, v).value; }, 3);
  EXPECT_TRUE(core_conductance(800, 5, 0.45, -3).valid);  // against the travel it exchanges as well
  EXPECT_FALSE(core_conductance(800, 5, 0.45, 0.01).valid);
  EXPECT_FALSE(core_conductance(800, 5, 0.45, 31).valid);
}

}  // namespace
}  // namespace sw::physics
