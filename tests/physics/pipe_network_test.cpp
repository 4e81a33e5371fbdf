#include "physics/pipe_network.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <random>

#include "near.hpp"

namespace sw::physics::pipes {
namespace {

constexpr double psi = 6894.757293168361, litre_h = 1e-3 / 3600;
constexpr PipeFluid fuel{745, 0.5e-3};

/// Conservation from the elements' flows alone.
double worst_imbalance(const Network& net, const Solution& s) {
  std::vector<double> sum(net.nodes.size(), 0.0);
  for (std::size_t i = 0; i < net.elements.size(); ++i) {
    sum[net.elements[i].from] += s.flow_m3_s[i];
    sum[net.elements[i].to] -= s.flow_m3_s[i];
  }
  double worst = 0;
  for (std::size_t k = 0; k < net.nodes.size(); ++k)
    if (!net.nodes[k].given_pa) worst = std::max(worst, std::abs(sum[k] + net.nodes[k].drawn_m3_s));
  return worst;
}

// Closed form: laminar pipes are resistors. Two in parallel behind one in series.
TEST(PipeNetwork, LaminarPipesAreResistors) {
  const PipeFluid oil{900, 0.5};
  const Pipe pipe{0.01, 2, 0};
  Network net{oil, {}, {}};
  const auto a = net.add_node({1e5}), b = net.add_node(), c = net.add_node({0.0});
  net.add(a, b, Line{{pipe}});
  net.add(b, c, Line{{pipe}});
  net.add(b, c, Line{{pipe}});
  Solution s;
  ASSERT_TRUE(solve(net, s).usable()) << s.summary.reason;
  expect_share(s.pressure_pa[b], 1e5 / 3, 1e-6);
  expect_share(s.flow_m3_s[0], laminar_flow_m3_s(pipe, oil.viscosity_pa_s, 2e5 / 3), 1e-6);
  expect_share(s.flow_m3_s[1], s.flow_m3_s[2], 1e-9);
}

// One line between two given pressures is physics/pipe itself.
TEST(PipeNetwork, ALineIsThePipeLaw) {
  const Pipe pipe{0.00616, 5, 1.5e-6, 5};
  Network net{fuel, {}, {}};
  const auto a = net.add_node({4.7 * psi}), b = net.add_node({0.0});
  net.add(a, b, Line{{pipe}});
  Solution s;
  ASSERT_TRUE(solve(net, s).usable());
  expect_share(s.flow_m3_s[0], pipe_flow(pipe, fuel, 4.7 * psi).flow_m3_s, 1e-8);
  expect_share(s.flow_m3_s[0], 190 * litre_h, 0.03);  // recomputed by Blasius' factor: 4.7 psi at 190 L/h
}

TEST(PipeNetwork, FilterAndCheckValve) {
  Network net{fuel, {}, {}};
  const auto a = net.add_node({1e5}), b = net.add_node({0.0});
  net.add(a, b, Line{{}, 1e9});
  net.add(b, a, Line{{{0.008, 1, 0}}, 0, true});
  Solution s;
  ASSERT_TRUE(solve(net, s).usable());
  expect_share(s.flow_m3_s[0], 1e-4, 1e-9);
  EXPECT_LT(std::abs(s.flow_m3_s[1]), 1e-9);
}

Network supply(double set_pa, double drawn_m3_s, double return_bore_m) {
  Network net{fuel, {}, {}};
  const auto tank = net.add_node({0.0}), pump = net.add_node(), rail = net.add_node({{}, drawn_m3_s}),
             back = net.add_node();
  net.add(tank, pump,
          PumpElement{*PumpCurve::make(Curve{{0, 40 * psi, 80 * psi}, {360 * litre_h, 345 * litre_h, 325 * litre_h}})});
  net.add(pump, rail, Line{{{0.0081, 4, 1.5e-6, 4}}});
  net.add(rail, back, Relief{{set_pa, 1 * psi, 18 * psi, 335 * litre_h}});
  net.add(back, tank, Line{{{return_bore_m, 4.6, 1.5e-6, 4}}});
  return net;
}

TEST(PipeNetwork, ARegulatorHoldsItsPressureOrCannot) {
  Solution s;
  const auto wide = supply(43 * psi, 5 * litre_h, 0.0081);
  ASSERT_TRUE(solve(wide, s).usable()) << s.summary.reason;
  EXPECT_NEAR(s.pressure_pa[2], 43 * psi, 0.5 * psi);
  const auto narrow = supply(43 * psi, 5 * litre_h, 0.00493);
  ASSERT_TRUE(solve(narrow, s).usable());  // warm from the other
  EXPECT_GT(s.pressure_pa[2], 50 * psi);
  // Worked by hand: return drop plus the regulator's own at that flow.
  const double q = s.flow_m3_s[3];
  expect_share(s.pressure_pa[2], s.pressure_pa[3] + 18 * psi * std::pow(q / (335 * litre_h), 2), 1e-6);
  Solution cold;
  ASSERT_TRUE(solve(narrow, cold).usable());
  expect_share(cold.pressure_pa[2], s.pressure_pa[2], 1e-6);
  EXPECT_LT(worst_imbalance(narrow, cold), 1e-10);
}

TEST(PipeNetwork, MoreDrawnThanThePumpGivesSinksTheRail) {
  const auto net = supply(43 * psi, 350 * litre_h, 0.0081);
  Solution s;
  ASSERT_TRUE(solve(net, s).usable());
  EXPECT_LT(s.pressure_pa[2], 40 * psi);
  EXPECT_LT(s.flow_m3_s[2], 0.01 * litre_h);  // the regulator is shut
}

TEST(PipeNetwork, AReducerHoldsWhatIsBehindIt) {
  Network net{fuel, {}, {}};
  const auto a = net.add_node({60 * psi}), b = net.add_node({{}, 60 * litre_h});
  net.add(a, b, Reducer{{6 * psi, 1 * psi, 2 * psi, 200 * litre_h}});
  Solution s;
  ASSERT_TRUE(solve(net, s).usable());
  EXPECT_NEAR(s.pressure_pa[b], 6 * psi, 0.5 * psi);
  net.nodes[b].drawn_m3_s = 0.01 * litre_h;  // the float needle all but shuts
  ASSERT_TRUE(solve(net, s).usable());
  EXPECT_NEAR(s.pressure_pa[b], 6.5 * psi, 0.05 * psi);
}

TEST(PipeNetwork, SaysWhatIsWrong) {
  Network net{fuel, {}, {}};
  net.add_node();
  Solution s;
  EXPECT_EQ(solve(net, s).outcome, Outcome::bad_input);
  EXPECT_EQ(Solution{}.summary.outcome, Outcome::not_run);
  auto bad = supply(43 * psi, NAN, 0.008);
  EXPECT_FALSE(solve(bad, s).usable());
}

TEST(PipeNetwork, SlopesOfEveryElement) {
  const auto net = supply(43 * psi, 0, 0.0081);
  for (auto& e : net.elements)
    for (auto [from, to] : {std::pair{43.2 * psi, 3 * psi}, std::pair{20 * psi, 55 * psi}}) {
      const auto a = evaluate(e, fuel, from, to, 0);
      const auto in = [&](double x) { return evaluate(e, fuel, x, to, 0).flow_m3_s; };
      const auto out = [&](double x) { return evaluate(e, fuel, from, x, 0).flow_m3_s; };
      const double h = 50, d_from = (in(from + h) - in(from - h)) / (2 * h),
                   d_to = (out(to + h) - out(to - h)) / (2 * h);
      EXPECT_NEAR(a.d_from, d_from, 1e-3 * std::abs(d_from) + 1e-16);
      EXPECT_NEAR(a.d_to, d_to, 1e-3 * std::abs(d_to) + 1e-16);
      EXPECT_GE(a.d_from, 0);
      EXPECT_LE(a.d_to, 0);
    }
}

/// Networks no car has: a random tree with chords, of every kind of element.
Network random_network(unsigned seed) {
  std::mt19937 engine(seed);
  const auto u = [&](double low, double high) { return std::uniform_real_distribution<>(low, high)(engine); };
  Network net{{u(600, 1000), std::pow(10, u(-3.7, -2))}, {}, {}};
  const std::size_t nodes = 2 + engine() % 10;
  net.add_node({0.0});
  while (net.nodes.size() < nodes)
    net.add_node({engine() % 5 == 0 ? std::optional(u(0, 5e5)) : std::nullopt, u(0, 1) < 0.3 ? u(0, 2e-5) : 0});
  const auto pipe = [&] {
    return Line{
        {{u(0.003, 0.02), u(0.1, 20), u(0, 1e-4), u(0, 10)}}, u(0, 1) < 0.2 ? u(1e7, 1e10) : 0, engine() % 12 == 0};
  };
  for (std::size_t k = 1; k < nodes; ++k)
    net.add(static_cast<NodeIndex>(engine() % k), static_cast<NodeIndex>(k),
            Line{{{u(0.003, 0.02), u(0.1, 20), u(0, 1e-4), u(0, 10)}}});
  for (auto extra = engine() % nodes; extra > 0; --extra) {
    const auto a = static_cast<NodeIndex>(engine() % nodes), b = static_cast<NodeIndex>(engine() % nodes);
    if (a == b) continue;
    switch (engine() % 5) {
      case 0:
        net.add(a, b, PumpElement{*PumpCurve::make(u(1e-5, 1e-4), u(5e4, 5e5), u(1.05, 3)), u(0, 1.1), u(1e5, 8e5)});
        break;
      case 1:
        net.add(a, b, Relief{{u(2e4, 5e5), u(1e3, 2e4), u(1e3, 1e5), u(1e-5, 1e-4)}});
        break;
      case 2:
        net.add(a, b, Reducer{{u(2e4, 5e5), u(1e3, 2e4), u(1e3, 1e5), u(1e-5, 1e-4)}});
        break;
      default:
        net.add(a, b, pipe());
    }
  }
  return net;
}

TEST(PipeNetwork, ThousandsOfRandomNetworksBalance) {
  int failed = 0;
  for (unsigned seed = 0; seed < 3000; ++seed) {
    const Network net = random_network(seed);
    Solution s;
    solve(net, s);
    for (double p : s.pressure_pa) ASSERT_TRUE(std::isfinite(p)) << seed;
    if (!s.summary.usable()) {
      ++failed;
      ASSERT_EQ(s.summary.outcome, Outcome::not_converged);
      continue;
    }
    EXPECT_LT(worst_imbalance(net, s), 2e-10) << seed;
  }
  std::printf("random pipe networks: %d of 3000 stated as not converged\n", failed);
  EXPECT_LE(failed, 3);
}

}  // namespace
}  // namespace sw::physics::pipes
