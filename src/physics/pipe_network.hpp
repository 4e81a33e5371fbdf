#pragma once
// A network of pipes, pumps and valves in one liquid, solved for the pressure of every node.
//
// Nodes own pressures, some given (a tank, the atmosphere), the others found so that what flows in and out balances:
// sum of flows out + what is drawn there = 0. An element, asked for the pressures of its nodes, answers flow and slopes
// (`evaluate`); nothing here knows what it is. Newton's method on the dense Jacobian; a step is halved until the
// residual falls, and where that does not help the diagonal is weighted (pseudo-transient continuation, as in
// dc_network), which for elements whose flow rises with the pressure before them and falls with that behind them always
// goes downhill. A leak of 1e-16 m3/s a pascal to the first given node keeps a node nothing feeds determined.
// Rows of the search are warm: a solution of the same shape is where the next one starts.
//
// Elements, q from `from` to `to`, dp = p_from - p_to:
//   Line       pieces of pipe one after the other (physics/pipe, the factor without a jump) and filters; one-way where
//              a check valve stands in it. A filter's medium is laminar, dp = R q (Darcy's law).
//   Pump       physics/fuel_pump, against p_to - p_from
//   Relief     holds the pressure before it: opening x = (p_from - p_set + b/2) / b held in 0..1,
//              q = x C sqrt(dp), C = q_0 / sqrt(dp_0): fully open it still loses dp_0 at q_0
//   Reducer    holds the pressure behind it: the same with x = (p_set + b/2 - p_to) / b
// Near dp = 0 the root is replaced by a straight piece of 100 Pa half-width. Range: that of the laws; liquid only, no
// cavitation. Source: nodal method and gradient: Todini and Pilati, in Computer Applications in Water Supply (1988)
// (from memory); checked against another solver in tests/pipe_network_oracle.
#include <array>
#include <cstdint>
#include <optional>
#include <variant>
#include <vector>

#include "physics/fuel_pump.hpp"
#include "physics/pipe.hpp"

namespace sw::physics::pipes {

using NodeIndex = std::uint8_t;

struct Line {
  std::vector<Pipe> pieces;
  double filters_pa_s_m3 = 0;  ///< sum of R
  bool one_way = false;
};
struct PumpElement {
  PumpCurve curve;
  double volts_share = 1;
  std::optional<double> relief_pa = {};
};
/// Both holding valves: set pressure over the network's zero, b, and what it loses fully open.
struct Valve {
  double set_pa, band_pa, least_pa, at_m3_s;
};
struct Relief : Valve {};
struct Reducer : Valve {};
using Law = std::variant<Line, PumpElement, Relief, Reducer>;

struct Element {
  NodeIndex from, to;
  Law law;
};
struct Node {
  std::optional<double> given_pa;  ///< empty: to be found
  double drawn_m3_s = 0;           ///< taken out of the network there
};
struct Network {
  PipeFluid fluid;
  std::vector<Node> nodes;
  std::vector<Element> elements;
  NodeIndex add_node(const Node& n = {}) {
    nodes.push_back(n);
    return static_cast<NodeIndex>(nodes.size() - 1);
  }
  std::size_t add(NodeIndex from, NodeIndex to, Law law) {
    elements.push_back({from, to, std::move(law)});
    return elements.size() - 1;
  }
};

struct Answer {
  double flow_m3_s = 0, d_from = 0, d_to = 0;  ///< and slopes to the two pressures
};
/// `guess`: a flow near the answer, for the search in a line.
Answer evaluate(const Element& e, const PipeFluid& fluid, double from_pa, double to_pa, double guess_m3_s);
/// Pressure lost in a line at a flow, and its slope.
Slope line_drop(const Line& line, const PipeFluid& fluid, double flow_m3_s);

enum class Outcome : std::uint8_t { not_run, converged, bad_input, not_converged };
struct Summary {
  Outcome outcome = Outcome::not_run;
  const char* reason = "not run";
  double worst_residual_m3_s = 0;
  std::size_t worst_node = 0;
  int iterations = 0;
  bool usable() const { return outcome == Outcome::converged; }
};
struct Solution {
  std::vector<double> pressure_pa;  ///< [node]
  std::vector<double> flow_m3_s;    ///< [element], from -> to
  Summary summary;
  std::vector<double> work;  ///< of the solver, kept so that a time loop allocates once
};
const Summary& solve(const Network& network, Solution& solution);

}  // namespace sw::physics::pipes
