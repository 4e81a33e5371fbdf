#pragma once
// Resistive senders: ohms against what is true, and what a gauge meets through lead, matching resistors, a bad ground
// and other readers on the same wire.
//
//   straight sender     ohm linear in its value between the points (float and wiper, bridge of a pressure capsule)
//   thermistor          ln ohm linear in 1/T between the points: each pair has its own beta (Kelvin)
//   network             seen = series + sender parallel / (sender + parallel)
//   node                V = (R sum(E_i/P_i) + lift) / (1 + R sum(1/P_i)): readers i pull the wire up to E_i through
//                       P_i, the sender R pulls it down to its own ground, which lies `lift` above the readers' ground
//   seen by a reader    P V / (E - V): the sender that would give this volts alone and without lift
//
// ohms R, P; volts E, V, lift; values in SI (share, K, Pa). Range: points with a rising x, ohms that only rise or only
// fall; outside the points the end value, `valid` false. Sources: Kirchhoff's laws, any circuits text; the thermistor
// law in its beta form, Steinhart and Hart, Deep-Sea Research 15 (1968), 497-503 for where it comes from (from memory).
#include <array>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

#include "field/curve.hpp"
#include "physics/law.hpp"

namespace sw::physics {

enum class SenderLaw { straight, thermistor };

/// Ohms at a value, and the value at given ohms. A curve whose ohms turn has no inverse: `monotone` says so.
Slope sender_ohm(const Curve& points, SenderLaw law, double value);
Slope sender_value(const Curve& points, SenderLaw law, double ohm);
bool monotone(const Curve& points);

/// Resistor across a sender that brings it down to `wanted` ohms, 0 < wanted < sender.
double parallel_for(double sender_ohm, double wanted_ohm);

/// Matching resistors; no `parallel` is none fitted.
struct SenderNetwork {
  double series_ohm = 0;
  std::optional<double> parallel_ohm;
};
Slope network_ohm(const SenderNetwork& n, double sender_ohm);

/// What pulls the sender's wire up: a gauge, a controller.
struct Reader {
  double supply_v, ohm;
};
struct SenderNode {
  double volts, slope;  ///< at the wire, above the readers' ground; and by the sender's ohms
};
SenderNode sender_node(std::span<const Reader> readers, double sender_ohm, double lift_v);
/// What the reader takes the sender to be; its slope by the sender's ohms.
Slope seen_ohm(const Reader& reader, const SenderNode& node);

/// Resistors as they are sold, one decade from 1 up (IEC 60063): 12, 24 or 96 to it.
enum class ResistorSeries { e12, e24, e96 };
std::vector<double> resistors(ResistorSeries series, double least_ohm, double most_ohm);

/// The network that brings each `from` nearest to its `to`: least largest error in ohm. Any values, or values on sale.
struct SenderMatch {
  SenderNetwork network;
  double largest_error_ohm = 0;
};
SenderMatch match_any(std::span<const double> from, std::span<const double> to);
SenderMatch match_of(std::span<const double> values, std::span<const double> from, std::span<const double> to);

/// Senders and gauges by the ohms at the ends of their scale (common practice; the middle of 73-10, 240-33 and 110-3 by
/// the boxes that test their gauges, from memory, of the others straight). Makers' own differ by some ohms.
struct EndFamily {
  std::string_view name;
  double low_ohm, half_ohm, high_ohm;  ///< empty, half and full; no pressure, half the scale and its end
};
inline constexpr EndFamily end_families[] = {
    {"73-10", 73, 23, 10},   {"240-33", 240, 103, 33}, {"0-90", 0, 45, 90},     {"10-180", 10, 95, 180},
    {"16-158", 16, 87, 158}, {"0-30", 0, 15, 30},      {"110-3", 110, 32.5, 3},
};
/// Temperature senders by the ohms at their coldest and hottest point (common practice, from memory).
struct ThermistorFamily {
  std::string_view name;
  std::size_t points;
  double celsius[8], ohm[8];
};
inline constexpr ThermistorFamily thermistor_families[] = {
    {"287-22", 6, {40, 60, 80, 90, 100, 120}, {287, 134, 69, 51, 38.5, 22.5}},
    {"323-19", 7, {50, 60, 80, 90, 100, 120, 150}, {323, 221, 112, 82, 62, 36.5, 18.6}},
};
Curve points_of(const ThermistorFamily& family);  ///< K, ohm
/// From one end of a scale to the other.
Curve points_of(const EndFamily& family, double low, double high);

/// Thermistor by its ohms at 25 degC and its beta: R = R25 exp(beta (1/T - 1/298.15)).
Slope thermistor_ohm(double r25_ohm, double beta_k, double temperature_k);
/// The two-point beta, K.
double thermistor_beta(double r1_ohm, double t1_k, double r2_ohm, double t2_k);
Slope thermistor_k_by_beta(double r25_ohm, double beta_k, double ohm);
/// Steinhart-Hart: 1/T = a + b ln R + c (ln R)^3; K by ohm, and the other way round (b > 0, c >= 0: one root).
Slope thermistor_k(double a, double b, double c, double ohm);
double thermistor_ohm_of(double a, double b, double c, double temperature_k);
/// Its a, b, c through three points.
std::array<double, 3> steinhart_hart(const std::array<double, 3>& ohm, const std::array<double, 3>& temperature_k);

}  // namespace sw::physics
