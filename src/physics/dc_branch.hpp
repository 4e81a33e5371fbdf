#pragma once
// The elements of a car's DC network, each as current against voltage with its slope.
//
// Every law here is continuous with a continuous first derivative, so that a Newton solve meets no kink; the rounding
// is local and exact outside its narrow window. `across_v` is the potential of `from` less that of `to`, and a current
// is positive when it flows through the element from `from` to `to`. A source therefore runs from its negative post
// (or case) to its positive one.
#include <cstdint>
#include <variant>

namespace sw::physics::dc {

using NodeIndex = std::uint8_t;
inline constexpr NodeIndex ground = 0;  ///< the battery's negative post: the node every potential is counted from

/// Wire, connector, relay contact, fuse, heater: I = V / R. R from 1e-6 ohm; join two nodes instead of writing less.
struct Resistor {
  double resistance_ohm;
};
/// Battery: I = (emf + V) / r, so the terminal voltage is emf - I r. Both signs: discharge positive.
struct Battery {
  double emf_v;
  double resistance_ohm;
};
/// Electronics that hold their current. Full from `least_v` up; below it the parabola 2u - u^2 of u = V/least_v
/// brings it to nothing at 0 V, and its tangent continues to reversed polarity.
struct ConstantCurrent {
  double current_a;
  double least_v = 6;
};
/// Electronics that hold their power: I = P / V above `least_v`, the resistance least_v^2 / P below it (joined over
/// +-5 % of least_v). `least_v` is raised to 1.1 sqrt(P R_series) where the load's own leads could not carry the
/// power at all: the voltage at the load then stays a single-valued function of the voltage at its ends.
struct ConstantPower {
  double power_w;
  double least_v = 9;
};
/// Motors with a fan or pump, and lamps: I = I_rated (V / V_rated)^n, odd in V. For a tungsten lamp n is about 0.55,
/// for a permanent-magnet fan motor about 1.5, for a resistance 1 (common practice). 0 < n < 3. Below 2 % of V_rated
/// an odd cubic takes over, since for n < 1 the slope would grow without limit.
struct PowerLaw {
  double rated_a;
  double rated_v;
  double exponent = 1;
};
/// Alternator with its regulator: I = clamp((V_set - V_sense) / r_regulation, 0, I_greatest), joined over 1 % of
/// I_greatest at both ends, where V_sense is measured between the branch's two sense nodes. It absorbs no current but
/// its rectifier's reverse leakage, tenths of a milliampere. Near `ceiling_v` at its own terminals the current falls to
/// nothing over the last tenth: the avalanche diodes that bound a load dump (35 V in a 12 V system with central
/// suppression: ISO 16750-2, from memory).
struct RegulatedSource {
  double set_v;
  double greatest_a;  ///< what the machine can give at its speed and temperature; 0 when it stands
  double regulation_ohm = 0.005;
  double ceiling_v = 35;
  double leakage_s = 1e-5;  ///< also what settles the voltage of an alternator whose output lead is off
};
/// Rectifier diode, passing from `from` to `to`: a threshold with a resistance behind it, rounded as I = s/r ln(1 +
/// exp((V - threshold)/s)) with s = 50 mV, about the emission width of a silicon junction with its spread (common
/// practice), and a leakage the other way. Its breakdown is not modelled.
struct Diode {
  double threshold_v = 0.75;  ///< silicon rectifier at working current (common practice: 0.7 to 0.8 V)
  double resistance_ohm = 0.005;
  double leakage_s = 1e-6;
};
struct Open {};

using Law = std::variant<Open, Resistor, Battery, ConstantCurrent, ConstantPower, PowerLaw, RegulatedSource, Diode>;

struct Branch {
  NodeIndex from = ground, to = ground;
  NodeIndex sense_plus = ground, sense_minus = ground;  ///< used by laws that measure elsewhere
  bool closed = true;                                   ///< a relay or switch in the branch
  double series_ohm = 0;                                ///< own feed and ground of a load, in series with its law
  Law law;
};

/// What a branch answers: assembly and solve see nothing else of it.
struct Flow {
  double current_a = 0;
  double slope_s = 0;        ///< d current / d across_v
  double sense_slope_s = 0;  ///< d current / d sense_v
  double load_v = 0;         ///< voltage at the law itself, behind `series_ohm`
};

/// `load_start_v`: where the inner solve for a load behind its leads begins, e.g. the last load_v. It does not change
/// the answer by more than 1e-10 of it, because the inner problem has one solution.
Flow evaluate(const Branch& branch, double across_v, double sense_v, double load_start_v);

/// Null, or what is wrong with a branch's figures, in words.
const char* fault(const Branch& branch);

}  // namespace sw::physics::dc
