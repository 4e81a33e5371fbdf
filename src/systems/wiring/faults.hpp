#pragma once
// One thing broken at a time: a run open (its strap lost or its fuse blown), a switch or relay stuck either way, the
// battery's post off, its leads the wrong way round. The network is solved with each, and what changed is told: where
// the current goes instead, what burns, what is dead, what stays on.
#include "systems/wiring/wiring.hpp"

namespace sw::wiring {

enum class Effect : std::uint8_t {
  fuse_opens,  ///< a fuse carries so much more than its rating that it opens; what follows is told with it open
  burns,       ///< a conductor carries more than it may and nothing opens
  unknown,     ///< a run takes over current, and nobody said what it carries
  carries,     ///< a run takes over current it did not carry before
  drains,      ///< the battery gives what the machine gave
  backwards,   ///< a load sees its volts the wrong way round
  over_volts,  ///< more volts than its electronics stand
  stays_on,    ///< fed though it should be off
  dead,        ///< not fed though it should be
  weak,        ///< less than it needs
  surges       ///< a machine that gave much is cut off from battery and loads
};
inline constexpr std::string_view effect_names[] = {"fuse opens", "burns",     "unknown",    "carries",
                                                    "drains",     "backwards", "over-volts", "stays on",
                                                    "dead",       "weak",      "surges"};

struct Happens {
  Effect what;
  std::string place;
  double was = 0, is = 0;       ///< A of a conductor, V of a load
  std::optional<double> limit;  ///< A of a conductor
  std::string_view so = {};     ///< what that does to the car, in words, where it is known
};

enum class Broken : std::uint8_t { nothing, run, contact, battery_off, battery_reversed };

struct FaultRun {
  Broken what = Broken::nothing;
  std::string fault;
  bool solved = false;
  std::vector<Happens> happens;  ///< gravest first
};

/// What burns with nothing broken, where something does, and every fault at that feed: while it starts for the seconds
/// of a start, for which a cable stands more, else for good. `bay_k`: air under the bonnet. Empty where the network has
/// no solution without any.
std::vector<FaultRun> try_faults(const Model& m, const Feed& feed, std::optional<double> bay_k = {});

/// In words with its figures: "shift_cable burns: 121 A".
std::string tell(const Happens& h);

}  // namespace sw::wiring
