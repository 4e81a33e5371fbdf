#pragma once
// One link between two levers: a rod, by the exact four-bar, or a cable, whose sheath's ends lead it straight to each
// lever. Angles of a lever are told from the line along which it pulls, toward the other lever: a pull makes the first
// one's grow and the second one's shrink.
//
//   cable   pull = arm (cos a0 - cos a) - slack + away,   driven: cos b = cos b0 + pull/driven arm
//   rod     the pins stay a rod apart (physics/linkage)
// Symbols: m, rad. Source: geometry.
#include <optional>

#include "physics/linkage.hpp"

namespace sw::throttle {

struct LinkGeometry {
  bool cable = false, pushes = false, pins_opposite = false;
  double arm_m = 0, start_rad = 0, driven_arm_m = 0, driven_start_rad = 0;
  double apart_m = 0, rod_m = 0, slack_m = 0;
  bool crossed = false;  ///< which of the two places a rod can stand in
};

/// Where the second lever's end has gone since the link was set: along the line, away from the first, and square to it,
/// to the side the first lever's pin is on.
struct MovedApart {
  double away_m = 0, square_m = 0;
};

struct LinkAt {
  double driven_rad;     ///< turn of the second lever the way it opens
  double from_dead_rad;  ///< the nearer of the two pins to standing in line with rod or cable
};
/// Empty where the link does not reach, or a cable has turned its lever as far as it goes.
std::optional<LinkAt> link_at(const LinkGeometry& link, double turn_rad, const MovedApart& moved = {});

/// The rod from pin to pin as both levers stand at rest, m.
double rod_between_m(const LinkGeometry& link);
/// Which of the two places the second lever stands in at rest; empty where the rod does not reach.
std::optional<bool> stands_crossed(const LinkGeometry& link);

}  // namespace sw::throttle
