#pragma once
// A direct-current network of up to 48 nodes and 128 branches, solved for the potential of every node.
//
// Kirchhoff's current law at each node but ground, sum of currents out = 0, by Newton's method on the dense Jacobian.
// Nodes own potentials; a branch returns current and slope (`evaluate`), and nothing here knows what it is.
// A step is cut until the residual falls; where that does not help, pseudo-transient continuation takes over: each
// node gets a capacitance and the network is followed from its start to rest, which ends in a state the real circuit
// could rest in (Kelley and Keyes, SIAM J. Numer. Anal. 35 (1998) 508). A leak of 1 nS from each node to ground keeps
// a node that nothing feeds determined, at 0 V; it is part of the balance and below the residual that counts.
//
// Nothing is allocated. Structure and present values (an electromotive force, a closed relay) lie together in
// `Network`, a plain value of some kilobytes: each thread of a study changes its own copy.
#include <array>
#include <cstddef>
#include <span>

#include "physics/dc_branch.hpp"

namespace sw::physics::dc {

inline constexpr std::size_t most_nodes = 48, most_branches = 128;  ///< ground included

struct Network {
  std::size_t node_count = 1;  ///< ground included
  std::size_t branch_count = 0;
  std::array<Branch, most_branches> branches{};

  /// Both assert on overflow: the caller counts beforehand and tells the user.
  NodeIndex add_node();
  std::size_t add(const Branch& branch);
  std::span<const Branch> all() const { return {branches.data(), branch_count}; }
};

enum class Outcome : std::uint8_t { not_run, converged, bad_input, not_converged };

struct Summary {
  Outcome outcome = Outcome::not_run;
  const char* reason = "not run";  ///< in words; never null
  double worst_residual_a = 0;     ///< greatest unbalanced current at a node
  NodeIndex worst_node = ground;   ///< where
  int worst_branch = -1;           ///< of a bad input: which branch; else -1
  int iterations = 0;              ///< linear solves
  bool usable() const { return outcome == Outcome::converged; }
};

struct Solution {
  std::array<double, most_nodes> node_v{};        ///< [node]
  std::array<double, most_branches> current_a{};  ///< [branch], from -> to
  std::array<double, most_branches> load_v{};     ///< [branch], at the load itself
  Summary summary;
};

/// Every fault of the figures before a first solve; outcome `converged` where there is none.
Summary check(const Network& network);

/// Solves into `solution`. If it holds a usable solution of a network of the same shape, that is where the search
/// starts (a step of simulation: one or two iterations); else it starts cold.
/// On failure `solution` keeps the best state found, not usable.
const Summary& solve(const Network& network, Solution& solution);

}  // namespace sw::physics::dc
