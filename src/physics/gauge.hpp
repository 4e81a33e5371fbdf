#pragma once
// What a gauge shows of what it meets.
//
//   current through it  I = (E - V) / P            E supply, P its heater, coil or pull-up, V at the sender's wire
//   bimetal             share = (I - I_low) / (I_high - I_low) of the scale; by its own curve: the shown value whose
//                       ohms would draw I at the supply it was made for
//   balance, electronic by ratio: the shown value whose ohms divide the supply as V / E does
//   electronic by volts: the shown value that its table has at V
//   speed               shown / true = pulses (or turns) per length there are / those it is set for
//   engine speed        shown / true = pulses of the source in a turn / those it is set for
//   coil sensor         volts rise with the speed: least speed = threshold / (open volts per speed x
//                       R_in / (R_in + R_sensor)), R_in all inputs side by side
//
// Range: a needle stays between its stops, the ends of the scale: beyond them `valid` is false and the slope zero. The
// bimetal is taken as linear in its current, as it is adjusted at two points (its bending goes with the square of it:
// in between it shows a little less). Sources: Kirchhoff's laws; units; the rest as each line says.
#include <optional>
#include <span>

#include "physics/sender.hpp"
#include "quantity/customary.hpp"

namespace sw::physics {

enum class GaugeKind { bimetal, balance, electronic };

struct Gauge {
  GaugeKind kind = GaugeKind::bimetal;
  double low = 0, high = 1;  ///< shown at the ends of the scale
  double supply_v = 5;       ///< it was made for, or set with
  double ohm = 0;            ///< heater, coil or pull-up; 0: not known, then the sender's ohms alone are read
  std::optional<double> current_low_a, current_high_a;
  Curve expects;  ///< shown against ohm; or volts
  bool by_volts = false;
  SenderLaw law = SenderLaw::straight;
};

/// How it stands in the car at one instant.
struct GaugeCircuit {
  SenderNetwork network;
  double joint_ohm = 0;  ///< in the sender's way to its ground
  std::span<const Reader> others;
  double lift_v = 0;    ///< sender's ground above the gauge's
  double supply_v = 5;  ///< that there is
};

/// Shown value, and its slope by the sender's ohms.
Slope gauge_shown(const Gauge& gauge, const GaugeCircuit& circuit, double sender_ohm);
/// Ohms at its terminal at which it shows a value, alone and without lift.
double gauge_wants_ohm(const Gauge& gauge, double shown);
/// Whether the needle stands at a stop because what it is asked to show lies past it, from its slope.
inline bool at_stop(const Slope& shown) { return !shown.valid; }
/// Volts at its input.
double gauge_input_v(const Gauge& gauge, const GaugeCircuit& circuit, double sender_ohm);

/// Rows of a table that is read along straight lines: of these points (x rising) both ends, then again and again the
/// one at which the table is farthest off in x, until there are `rows` or nothing is off.
Curve table_rows(const Curve& points, std::size_t rows);

/// Teeth of the driven gear that would be exact, from those there are and shown over true.
double exact_teeth(double driven_teeth, double shown_over_true);
/// Turns of a cable that most heads show as a mile: 1000 (common practice; 940, 960 and 1020 exist, read the dial).
inline constexpr double usual_head_turns_m = 1000 / 1609.344;
/// 49 CFR 393.82: within 5 mph at 50 mph (8 km/h at 80 km/h).
inline constexpr double us_speed_error_m_s = 5 * mph_m_s, us_speed_at_m_s = 50 * mph_m_s;

/// Least speed at which an input of a coil sensor sees its threshold. All inputs hang on it; its own is among them.
struct CoilSensor {
  double resistance_ohm, open_v, at_speed_m_s;
};
Slope least_speed(const CoilSensor& sensor, std::span<const double> inputs_ohm, double threshold_v);

}  // namespace sw::physics
