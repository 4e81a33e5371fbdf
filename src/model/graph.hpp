#pragma once
// The builder that joins ports. It checks that each read port is written by exactly one block of the same kind, puts
// the blocks in an order in which everything is known before it is read, tears loops where a block says so, and finds
// what cannot be computed because figures are missing.
#include <map>
#include <set>
#include <string>
#include <vector>

#include "model/system.hpp"

namespace sw {

struct Graph {
  struct Step {
    const Block* block;
    const void* model;
    std::size_t system;  ///< index of its system
    std::vector<std::uint16_t> reads, writes, rates, states, switches;
  };
  struct StateSlot {
    const StateInfo* info;
    const void* model;
    std::uint16_t value, rate;
  };
  struct SwitchSlot {
    const SwitchInfo* info;
    std::size_t step;
    std::uint16_t value;
  };
  /// A torn loop: steps first..last are repeated until what the last writes equals what the first read.
  struct Tear {
    std::size_t first, last;
    std::uint16_t guess, result;
    double low, high;
  };

  std::vector<Step> steps;  ///< in order of evaluation
  std::vector<StateSlot> states;
  std::vector<SwitchSlot> switches;
  std::vector<Tear> tears;
  std::vector<Port> ports;  ///< by slot
  std::map<std::string, std::uint16_t, std::less<>> slots;
  std::size_t width = 0;  ///< slots in all, rates included
  /// Ports that cannot be computed, with the missing figures that are to blame.
  std::map<std::string, std::set<std::string>, std::less<>> unavailable;
  /// Faults of the wiring itself, our own: a port written twice, never written, of two kinds, or a loop nobody tears.
  std::vector<std::string> faults;

  /// The slot of a port, or -1.
  int slot(std::string_view port) const;
};

/// `outside` are ports the driver itself writes (the duty's own).
Graph join(const std::vector<SystemOf>& systems, std::span<const Port> outside);

/// `producer -> consumer` lines of every port, for docs/architecture.md.
std::string port_table(const std::vector<SystemOf>& systems, std::span<const Port> outside);

}  // namespace sw
