#include "physics/dc_network.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <random>

using namespace sw::physics::dc;

namespace {

/// Kirchhoff's current law from the branch currents alone, apart from the solver's own bookkeeping.
double worst_imbalance(const Network& net, const Solution& s) {
  std::array<double, most_nodes> sum{};
  for (std::size_t i = 0; i < net.branch_count; ++i) {
    sum[net.branches[i].from] += s.current_a[i];
    sum[net.branches[i].to] -= s.current_a[i];
  }
  double worst = 0;
  for (std::size_t k = 1; k < net.node_count; ++k) worst = std::max(worst, std::abs(sum[k]));
  return worst;
}

TEST(DcNetwork, TwoSourcesAndALoad) {
  // Millman's theorem, V = sum(E/R) / sum(1/R): 12.351 V (recomputed; the first source supplies, not charges)
  Network net;
  const NodeIndex bus = net.add_node();
  const auto first = net.add({.from = ground, .to = bus, .law = Battery{12.6, 0.02}});
  net.add({.from = ground, .to = bus, .law = Battery{14.2, 0.05}});
  net.add({.from = bus, .to = ground, .law = Resistor{0.25}});
  Solution s;
  ASSERT_TRUE(solve(net, s).usable());
  const double millman = (12.6 / 0.02 + 14.2 / 0.05) / (1 / 0.02 + 1 / 0.05 + 1 / 0.25);
  EXPECT_NEAR(s.node_v[bus], millman, 1e-9);
  EXPECT_NEAR(s.node_v[bus], 12.351, 12.351e-4);
  EXPECT_NEAR(s.current_a[first], (12.6 - millman) / 0.02, 1e-7);
}

TEST(DcNetwork, UnbalancedBridge) {
  // Thevenin: open 12 (2000/3000 - 2000/3500) V behind 1000||2000 + 1500||2000 ohm
  Network net;
  const NodeIndex top = net.add_node(), left = net.add_node(), right = net.add_node();
  net.add({.from = ground, .to = top, .law = Battery{12, 1e-6}});
  net.add({.from = top, .to = left, .law = Resistor{1000}});
  net.add({.from = left, .to = ground, .law = Resistor{2000}});
  net.add({.from = top, .to = right, .law = Resistor{1500}});
  net.add({.from = right, .to = ground, .law = Resistor{2000}});
  const auto detector = net.add({.from = left, .to = right, .law = Resistor{500}});
  Solution s;
  ASSERT_TRUE(solve(net, s).usable());
  const double open = 12 * (2.0 / 3 - 2 / 3.5), inside = 2000.0 / 3 + 3000 / 3.5;
  EXPECT_NEAR(s.current_a[detector], open / (inside + 500), 2e-8);
  EXPECT_NEAR(s.current_a[detector] * 1e3, 0.5647, 0.5647 * 2e-4);
}

/// Battery, alternator with remote sense, three loads behind their own leads, common ground strap and feed.
Network car(double alternator_a, double emf_v = 12.6) {
  Network net;
  const NodeIndex post = net.add_node(), block = net.add_node(), alt = net.add_node(), panel = net.add_node(),
                  body = net.add_node();
  net.add({.from = ground, .to = post, .law = Battery{emf_v, 0.006}});
  net.add({.from = block, .to = ground, .law = Resistor{0.0008}});
  net.add({.from = body, .to = ground, .law = Resistor{0.0015}});
  net.add({.from = block,
           .to = alt,
           .sense_plus = post,
           .sense_minus = ground,
           .law = RegulatedSource{14.2, alternator_a}});
  net.add({.from = alt, .to = post, .law = Resistor{0.003}});
  net.add({.from = post, .to = panel, .law = Resistor{0.004}});
  net.add({.from = panel, .to = body, .series_ohm = 0.03, .law = PowerLaw{24, 13.5, 1.5}});
  net.add({.from = panel, .to = body, .series_ohm = 0.08, .law = PowerLaw{9, 13.5, 0.55}});
  net.add({.from = panel, .to = body, .series_ohm = 0.05, .law = ConstantPower{85, 9}});
  net.add({.from = panel, .to = ground, .law = ConstantCurrent{6, 6}});
  return net;
}

TEST(DcNetwork, RemoteSenseHoldsTheVoltageWhereItMeasures) {
  const Network net = car(120, 13.7);
  Solution s;
  ASSERT_TRUE(solve(net, s).usable()) << s.summary.reason;
  EXPECT_LT(worst_imbalance(net, s), 1e-6);
  const double given = s.current_a[3];
  EXPECT_GT(given, 40);
  EXPECT_LT(given, 120 * 0.99);
  EXPECT_NEAR(s.node_v[1], 14.2 - 0.005 * given, 1e-5);  // the post, not the alternator, is at the set point
  EXPECT_NEAR(s.node_v[3] - s.node_v[1], 0.003 * given, 1e-6);
}

TEST(DcNetwork, AWeakAlternatorGivesAllItHasAndTheBatteryTheRest) {
  const Network net = car(20);
  Solution s;
  ASSERT_TRUE(solve(net, s).usable());
  EXPECT_NEAR(s.current_a[3], 20, 1e-3);  // less its leakage
  EXPECT_GT(s.current_a[0], 0);
  EXPECT_LT(s.node_v[1], 12.6);
}

TEST(DcNetwork, AWarmStartFindsTheSameStateInFewSteps) {
  Network net = car(60);
  Solution warm;
  ASSERT_TRUE(solve(net, warm).usable());
  std::get<Battery>(net.branches[0].law).emf_v = 12.605;
  ASSERT_TRUE(solve(net, warm).usable());
  EXPECT_LE(warm.summary.iterations, 3);
  Solution cold;
  ASSERT_TRUE(solve(net, cold).usable());
  for (std::size_t k = 0; k < net.node_count; ++k) EXPECT_NEAR(warm.node_v[k], cold.node_v[k], 1e-7);
}

TEST(DcNetwork, AnAlternatorCutOffFromItsBatteryIsBoundedByItsCeiling) {
  Network net = car(100);
  net.branches[4].closed = false;
  Solution s;
  ASSERT_TRUE(solve(net, s).usable());
  EXPECT_GT(s.node_v[3], 30);
  EXPECT_LT(s.node_v[3], 36);
}

TEST(DcNetwork, AnAlternatorWithItsLeadOffRegulatesItself) {
  Network net = car(100);
  net.branches[4].closed = false;
  net.branches[3].sense_plus = 3, net.branches[3].sense_minus = 2;
  Solution s;
  ASSERT_TRUE(solve(net, s).usable()) << s.summary.reason;
  EXPECT_NEAR(s.node_v[3] - s.node_v[2], 14.2, 0.05);
}

TEST(DcNetwork, ANodeThatNothingFeedsRestsAtGround) {
  Network net = car(60);
  const NodeIndex lost = net.add_node();
  net.add({.from = 4, .to = lost, .closed = false, .law = Resistor{0.01}});
  net.add({.from = lost, .to = ground, .law = PowerLaw{5, 12, 0.55}});
  Solution s;
  ASSERT_TRUE(solve(net, s).usable());
  EXPECT_NEAR(s.node_v[lost], 0, 1e-9);
}

TEST(DcNetwork, MorePowerThanTheFeedCanCarryEndsInTheLowState) {
  // 12 V behind 1 ohm can give at most 36 W. Asked for 60 W the load sinks below its least voltage and is there
  // the resistance 81/60 ohm (closed form).
  Network net;
  const NodeIndex a = net.add_node();
  net.add({.from = ground, .to = a, .law = Battery{12, 1}});
  net.add({.from = a, .to = ground, .law = ConstantPower{60, 9}});
  Solution s;
  ASSERT_TRUE(solve(net, s).usable()) << s.summary.reason;
  EXPECT_NEAR(s.node_v[a], 12 * 1.35 / 2.35, 1e-7);
}

TEST(DcNetwork, BadFiguresAreRefusedWithTheBranch) {
  Network net = car(60);
  std::get<Resistor>(net.branches[4].law).resistance_ohm = 0;
  Solution s;
  EXPECT_FALSE(solve(net, s).usable());
  EXPECT_EQ(s.summary.outcome, Outcome::bad_input);
  EXPECT_EQ(s.summary.worst_branch, 4);
  net = car(60);
  net.branches[2].to = 23;
  EXPECT_EQ(check(net).worst_branch, 2);
  EXPECT_EQ(Solution{}.summary.outcome, Outcome::not_run);
}

/// Whole numbers over the full range whatever rapidcheck's size.
rc::Gen<int> whole(int low, int high) { return rc::gen::resize(rc::kNominalSize, rc::gen::inRange(low, high)); }

Law random_law() {
  const auto between = [](double low, double high) { return low + (high - low) * *whole(0, 10001) / 10000.0; };
  const auto decade = [&](double low, double high) { return std::pow(10, between(low, high)); };
  switch (*whole(0, 7)) {
    case 0:
      return Resistor{decade(-5, 4)};
    case 1:
      return Battery{between(0, 16), decade(-3, 0)};
    case 2:
      return ConstantCurrent{decade(-2, 2), between(3, 10)};
    case 3:
      return ConstantPower{decade(0, 3), between(5, 10)};
    case 4:
      return PowerLaw{decade(-1, 2), between(6, 14), between(0.3, 2)};
    case 5:
      return RegulatedSource{between(6, 15), decade(0.5, 2.3), decade(-3, -1)};
    default:
      return Resistor{decade(-4, 0)};
  }
}

Network random_network() {
  Network net;
  const auto nodes = static_cast<std::size_t>(*whole(2, 13));
  while (net.node_count < nodes) net.add_node();
  const auto node = [&] { return static_cast<NodeIndex>(*whole(0, nodes)); };
  const auto branches = *whole(nodes, 3 * nodes);
  for (int i = 0; i < branches; ++i) {
    Branch b{.from = node(), .to = node(), .sense_plus = node(), .sense_minus = node()};
    b.closed = *whole(0, 10) > 0;
    b.series_ohm = *rc::gen::element(0.0, 0.01, 0.1);
    b.law = random_law();
    net.add(b);
  }
  return net;
}

// Networks no car has: any law between any nodes, sense leads anywhere. Each gives balanced currents or says that
// it found none; never a NaN, and failures stay rare.
TEST(DcNetwork, TenThousandRandomNetworksBalanceOrSaySo) {
  int failed = 0, runs = 0;
  const auto one = [&] {
    const Network net = random_network();
    Solution s;
    solve(net, s);
    ++runs;
    RC_ASSERT(s.summary.outcome == Outcome::converged || s.summary.outcome == Outcome::not_converged);
    for (std::size_t k = 0; k < net.node_count; ++k) RC_ASSERT(std::isfinite(s.node_v[k]));
    for (std::size_t i = 0; i < net.branch_count; ++i) RC_ASSERT(std::isfinite(s.current_a[i]));
    if (!s.summary.usable())
      ++failed;
    else
      RC_ASSERT(worst_imbalance(net, s) < 1e-6 + 1e-7);  // + the leak the solver owns to, 1 nS a volt
  };
  const bool held = rc::check("random networks", [&] {
    for (int i = 0; i < 100; ++i) one();
  });
  EXPECT_TRUE(held);
  std::printf("random networks: %d of %d stated as not converged\n", failed, runs);
  EXPECT_GE(runs, 10000);
  EXPECT_LE(failed, runs / 200);
}

/// A car's network with figures at random, sound or broken: battery or charge lead open, sense lead at any of three
/// places, straps from good to corroded, up to a dozen loads of every kind.
Network random_car(unsigned seed) {
  std::mt19937 engine(seed);
  const auto u = [&](double low, double high) { return std::uniform_real_distribution<>(low, high)(engine); };
  const auto strap = [&] { return Resistor{std::pow(10, u(-4, -1))}; };
  Network net;
  const NodeIndex post = net.add_node(), block = net.add_node(), alt = net.add_node(), panel = net.add_node(),
                  body = net.add_node(), rear = net.add_node();
  net.add({.from = ground, .to = post, .closed = u(0, 1) > 0.3, .law = Battery{u(9, 14.5), u(0.003, 0.06)}});
  net.add({.from = block, .to = ground, .law = strap()});
  net.add({.from = body, .to = ground, .law = strap()});
  const NodeIndex sensed[] = {post, alt, panel};
  Branch source{
      .from = block, .to = alt, .sense_plus = sensed[engine() % 3], .sense_minus = engine() % 2 ? block : ground};
  source.law = RegulatedSource{u(13.5, 15), u(0, 1) < 0.2 ? 0 : u(5, 160), std::pow(10, u(-3, -1.5))};
  net.add(source);
  net.add({.from = alt, .to = post, .closed = u(0, 1) > 0.1, .law = strap()});
  net.add({.from = post, .to = panel, .law = strap()});
  net.add({.from = panel, .to = rear, .closed = u(0, 1) > 0.2, .law = strap()});
  for (auto loads = engine() % 12; loads > 0; --loads) {
    const Law laws[] = {PowerLaw{u(1, 40), 13.5, u(0.5, 2)}, ConstantPower{u(5, 300), u(6, 10)},
                        ConstantCurrent{u(0.5, 30), 6}, Resistor{u(0.3, 20)}};
    net.add({.from = engine() % 2 ? panel : rear,
             .to = engine() % 3 ? body : block,
             .closed = u(0, 1) > 0.2,
             .series_ohm = u(0, 1) < 0.3 ? 0 : std::pow(10, u(-3, -0.3)),
             .law = laws[engine() % 4]});
  }
  return net;
}

TEST(DcNetwork, EveryCarConvergesSoundOrBroken) {
  EXPECT_TRUE(rc::check("random cars", [] {
    const auto seed = static_cast<unsigned>(*rc::gen::arbitrary<int>());
    for (unsigned i = 0; i < 50; ++i) {
      const Network net = random_car(seed + i);
      Solution s;
      RC_ASSERT(solve(net, s).usable());
      RC_ASSERT(worst_imbalance(net, s) < 1e-6 + 1e-7);
    }
  }));
}

// Random cars whose battery is off while a stiff machine holds the bus by a far sense wire: Newton's search and the
// transient alone go to and fro there for ever.
TEST(DcNetwork, AStiffMachineCarriesTheCarAlone) {
  for (int seed : {-396246, -329944, -235511, -232500}) {
    const Network net = random_car(static_cast<unsigned>(seed));
    ASSERT_FALSE(net.branches[0].closed) << "the battery";
    Solution s;
    EXPECT_TRUE(solve(net, s).usable()) << seed;
    EXPECT_LT(worst_imbalance(net, s), 1e-6 + 1e-7) << seed;
  }
}

}  // namespace
