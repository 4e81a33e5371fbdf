#include "physics/circuit.hpp"

#include <gtest/gtest.h>

#include "physics/dc_network.hpp"

using namespace sw::physics;

namespace {

TEST(Circuit, Divider) {
  EXPECT_DOUBLE_EQ(divider_volts(5, 1000, 250), 1);
  EXPECT_DOUBLE_EQ(divider_sender_ohm(5, 1000, 1), 250);
}

TEST(Circuit, BridgeByTwoMethods) {  // Thevenin by hand 0.5647 mA; then the general network solver
  const Bridge b{1000, 2000, 1500, 2000};
  EXPECT_NEAR(bridge_open_volts(b, 12), 1.1429, 1e-4);
  const BridgeLoaded loaded = bridge_with(b, 12, 500);
  EXPECT_NEAR(loaded.detector_a * 1e3, 0.5647, 1e-4);
  dc::Network net;
  const auto top = net.add_node(), left = net.add_node(), right = net.add_node();
  const auto source = net.add({.from = 0, .to = top, .law = dc::Battery{12, 1e-6}});
  net.add({.from = top, .to = left, .law = dc::Resistor{b.r1}});
  net.add({.from = left, .to = 0, .law = dc::Resistor{b.r2}});
  net.add({.from = top, .to = right, .law = dc::Resistor{b.r3}});
  net.add({.from = right, .to = 0, .law = dc::Resistor{b.r4}});
  const auto detector = net.add({.from = left, .to = right, .law = dc::Resistor{500}});
  dc::Solution s;
  ASSERT_TRUE(dc::solve(net, s).usable());
  EXPECT_NEAR(s.current_a[detector], loaded.detector_a, 3e-8);
  EXPECT_NEAR(12 / s.current_a[source], loaded.resistance_ohm, 0.02);
}

TEST(Circuit, BusIsMillmans) {
  const double volts[] = {12.6, 14.2}, ohms[] = {0.02, 0.05};
  const Bus b = bus(volts, ohms, 4);
  EXPECT_NEAR(b.volts, 12.351, 12.351e-4);
  EXPECT_NEAR(b.currents_a[0] + b.currents_a[1], 4 * b.volts, 1e-9);
}

}  // namespace
