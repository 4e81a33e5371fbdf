#pragma once
// Universal (Cardan, Hooke) joints between shafts that lie anyhow in space, by exact rotation.
//
// A joint's cross carries two pins at a right angle: p, held by the driving yoke and square to the driving shaft a, and
// q, held by the driven yoke and square to the driven shaft b. So
//   q = (b x p)/|b x p|,   and with p turning at w about a:   w_out = (b x q) . (b x dp/dt)/|b x p|,  dp/dt = w (a x
//   p);
// a middle shaft carries its next driving yoke at a phase f from its driven one: the next p is q turned by f about the
// shaft. For one joint at the angle g this is the closed form, t from where p lies square to the plane of both shafts:
//   tan(out) = cos g tan t,   d out / d t = cos g/(1 - sin^2 g sin^2 t),   from cos g to 1/cos g.
// Symbols: directions without unit, each along the drive; angles in rad. Range: each joint's angle below 90 deg (a real
// joint binds long before, most at 25 to 45 deg, common practice), shafts stiff, pins that meet square and without
// play. At 90 deg a joint does not turn: rates there are not finite. Source: any theory of machines, Hooke's joint; the
// vector form and the chain are geometry and are checked against the closed form.
#include <vector>

#include "physics/law.hpp"
#include "physics/vec3.hpp"

namespace sw::physics {

struct JointChain {
  std::vector<Vec3> shafts;        ///< unit directions along the drive, two at least; a joint between neighbours
  std::vector<double> phases_rad;  ///< [i]: of shaft i + 1, from its driven to its driving yoke, right-handed about the
                                   ///< shaft; 0: yokes in line. One for each shaft but the first and the last
};

/// Angle a joint between two shafts stands at: 0 where they run on in line.
double joint_angle(const Vec3& a, const Vec3& b);

/// Where the last shaft stands when the first has turned by `input_rad`, counted from input 0 and in whole turns with
/// it, and d out / d in. At input 0 the first yoke's pin lies square to the plane of the first joint (where that joint
/// is straight: anywhere).
Slope joint_turn(const JointChain& chain, double input_rad);

/// The least and the greatest d out / d in over a turn.
struct Swing {
  double slowest, fastest;
};
Swing swing(const JointChain& chain);

/// The phases, one a middle shaft, above -90 up to 90 deg (yokes look the same after half a turn), that make fastest
/// less slowest least. Where many do, the one nearest to yokes in line. The chain's own phases are not looked at.
/// Tens of milliseconds for two middle shafts: once a geometry, not once a scenario.
std::vector<double> best_phases(const JointChain& chain);

/// The one joint that would swing as much as all together, for small angles g: sqrt |sum of (-1)^k g_k^2 e^{2 i d_k}|,
/// d_k what yokes and planes are apart, in phase, up to joint k. For two in one plane, yokes in line, sqrt |g1^2 -
/// g2^2|. Up to 15 deg a joint, its fluctuation and that of swing() differ by 3 % of the sum of all g_k^2 at most
/// (tried on random chains). Source: Universal Joint and Driveshaft Design Manual (SAE AE-7), from memory.
double equivalent_angle(const JointChain& chain);

/// One joint at this angle.
JointChain joint_bend(double angle);
/// Two joints at these angles: planes `plane_phase` apart about the middle shaft, its yokes `yoke_phase`. Equal phases
/// undo each other where the angles are equal.
JointChain joint_pair(double angle1, double angle2, double plane_phase, double yoke_phase);

/// One joint: fastest less slowest over the input, 1/cos g - cos g. slope: d / d g.
Slope joint_fluctuation(double angle);
/// The angle that has that fluctuation. slope: d angle / d fluctuation; 0 has a slope without end.
Slope joint_angle_for(double fluctuation);
/// Where the driving yoke's pin lies at input angle 0: square to the plane of both shafts, or in it.
enum class PinAt { across, in_plane };
/// One joint's output angle from there, above -pi up to pi: tan(out) = cos g tan(in) from across, tan(in)/cos g from in
/// the plane. slope: d out / d in.
Slope joint_output(double angle, double input_rad, PinAt pin);
/// First input angle at which both turn equally fast: atan(1/sqrt(cos g)) from across, atan sqrt(cos g) from in the
/// plane. slope: d / d g.
Slope joint_equal_angle(double angle, PinAt pin);

/// The angle between a shaft and an axis, from what side view and plan show: atan sqrt(tan^2 side + tan^2 plan).
/// Source: geometry.
struct CompoundAngle {
  double angle, slope_side, slope_plan;
};
CompoundAngle compound_angle(double side, double plan);

}  // namespace sw::physics
