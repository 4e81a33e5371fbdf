#pragma once
// Tensions of a belt going round: from span to span by what each pulley takes, and the share of its grip each uses.
// Tensions in N, lengths in m, angles in rad, along the way the belt runs, beginning with the span that leaves the
// driver.
#include <cstddef>
#include <optional>
#include <span>

namespace sw::physics {

/// Contact tension T - m v^2 of each span (what presses the belt onto its pulleys): T rises by its pull over every
/// driven pulley, span i leaving pulley i and pulley 0 being the driver. Where a sprung arm holds the belt, its two
/// spans have the contact tension `held` in the mean, whatever the speed: the arm balances that alone. Between fixed
/// centres the belt's stretch stays, so that the mean over the free lengths of T is the tension at rest, and m v^2
/// comes off the contact. Arcs count with the spans beside them. Source: Euler's equation with the belt's own mass, any
/// theory of machines; the constant stretch by Hooke.
/// Sizes: pull[i], length[i], out[i] one a pulley, i in 0..n-1; pull[0] is not read. Range: any; a tension below 0 is a
/// belt that hangs loose there.
struct BeltLoad {
  double rest_n = 0;               ///< at rest, or held by the arm
  std::optional<std::size_t> arm;  ///< its pulley, where sprung; held in span 0 where the arm's pulley is not known
  bool sprung = false;
  double centrifugal_n = 0;  ///< m v^2
};
void contact_tensions(std::span<const double> pull_n, std::span<const double> length_m, const BeltLoad& load,
                      std::span<double> out_n);

/// Share of the greatest pull between a tight and a slack strand: (tight - slack) / (tight (1 - 1/k)), k Euler's ratio
/// of the wrap (belt_grip_ratio); 1 where it begins to slip, as tight/slack is k there. More where it would have
/// slipped. Empty where the tight strand has no tension: the belt hangs loose. Range: k > 1.
std::optional<double> grip_share(double tight_n, double slack_n, double ratio);

/// Load on a pulley's shaft by its two strands, sqrt(a^2 + b^2 - 2 a b cos wrap), of contact tensions (cosine rule; the
/// part of m v^2 stays in the belt).
double hub_load(double before_n, double after_n, double wrap);

}  // namespace sw::physics
