#include "physics/thermocouple.hpp"

#include <cmath>
#include <span>

namespace sw::physics {
namespace {

constexpr double zero_c = 273.15;

struct Piece {
  double from_c, to_c;
  std::span<const double> c;  ///< mV, by rising powers of degC
  bool peak = false;          ///< with the term of type K above 0 degC
};
constexpr double peak[] = {0.118597600000e+00, -0.118343200000e-03, 0.126968600000e+03};

constexpr double k_cold[] = {0,
                             0.394501280250e-01,
                             0.236223735980e-04,
                             -0.328589067840e-06,
                             -0.499048287770e-08,
                             -0.675090591730e-10,
                             -0.574103274280e-12,
                             -0.310888728940e-14,
                             -0.104516093650e-16,
                             -0.198892668780e-19,
                             -0.163226974860e-22};
constexpr double k_hot[] = {-0.176004136860e-01, 0.389212049750e-01,  0.185587700320e-04, -0.994575928740e-07,
                            0.318409457190e-09,  -0.560728448890e-12, 0.560750590590e-15, -0.320207200030e-18,
                            0.971511471520e-22,  -0.121047212750e-25};
constexpr double j_cold[] = {0,
                             0.503811878150e-01,
                             0.304758369300e-04,
                             -0.856810657200e-07,
                             0.132281952950e-09,
                             -0.170529583370e-12,
                             0.209480906970e-15,
                             -0.125383953360e-18,
                             0.156317256970e-22};
constexpr double j_hot[] = {0.296456256810e+03,  -0.149761277860e+01, 0.317871039240e-02,
                            -0.318476867010e-05, 0.157208190040e-08,  -0.306913690560e-12};
constexpr double t_cold[] = {0,
                             0.387481063640e-01,
                             0.441944343470e-04,
                             0.118443231050e-06,
                             0.200329735540e-07,
                             0.901380195590e-09,
                             0.226511565930e-10,
                             0.360711542050e-12,
                             0.384939398830e-14,
                             0.282135219250e-16,
                             0.142515947790e-18,
                             0.487686622860e-21,
                             0.107955392700e-23,
                             0.139450270620e-26,
                             0.797951539270e-30};
constexpr double t_hot[] = {0,
                            0.387481063640e-01,
                            0.332922278800e-04,
                            0.206182434040e-06,
                            -0.218822568460e-08,
                            0.109968809280e-10,
                            -0.308157587720e-13,
                            0.454791352900e-16,
                            -0.275129016730e-19};

constexpr Piece k_pieces[] = {{-270, 0, k_cold}, {0, 1372, k_hot, true}};
constexpr Piece j_pieces[] = {{-210, 760, j_cold}, {760, 1200, j_hot}};
constexpr Piece t_pieces[] = {{-270, 0, t_cold}, {0, 400, t_hot}};

std::span<const Piece> pieces(Thermocouple type) {
  return type == Thermocouple::k ? k_pieces : type == Thermocouple::j ? j_pieces : t_pieces;
}

/// mV with the reference at 0 degC, and mV/K.
Slope against_ice(Thermocouple type, double c) {
  const auto all = pieces(type);
  const Piece& p = c < all[0].to_c ? all[0] : all[1];
  Slope s{0, 0, c >= all[0].from_c && c <= all[1].to_c};
  for (std::size_t i = p.c.size(); i-- > 0;) {
    s.slope = s.slope * c + s.value;
    s.value = s.value * c + p.c[i];
  }
  if (p.peak) {
    const double from = c - peak[2], more = peak[0] * std::exp(peak[1] * from * from);
    s.value += more;
    s.slope += 2 * peak[1] * from * more;
  }
  return s;
}

}  // namespace

Slope thermocouple_v(Thermocouple type, double temperature_k, double reference_k) {
  const Slope at = against_ice(type, temperature_k - zero_c), reference = against_ice(type, reference_k - zero_c);
  return {1e-3 * (at.value - reference.value), 1e-3 * at.slope, at.valid && reference.valid};
}

Slope thermocouple_k(Thermocouple type, double voltage_v, double reference_k) {
  const auto range = thermocouple_range(type);
  const auto volts = [&](double k) { return thermocouple_v(type, k, reference_k); };
  double low = range.lowest_k, high = range.highest_k;
  const bool inside = voltage_v >= volts(low).value && voltage_v <= volts(high).value && volts(low).valid;
  if (!inside) {  // on along the end's own slope
    const double end = voltage_v < volts(low).value ? low : high;
    const Slope at = volts(end);
    return {end + (voltage_v - at.value) / at.slope, 1 / at.slope, false};
  }
  double k = (low + high) / 2;
  for (int step = 0; step < 100; ++step) {  // Newton's, kept between two that enclose the answer
    const Slope at = volts(k);
    (at.value < voltage_v ? low : high) = k;
    const double next = k + (voltage_v - at.value) / at.slope;
    const double last = k;
    k = next > low && next < high ? next : (low + high) / 2;
    if (std::abs(k - last) < 1e-10) break;
  }
  return {k, 1 / volts(k).slope};
}

ThermocoupleRange thermocouple_range(Thermocouple type) {
  return {pieces(type).front().from_c + zero_c, pieces(type).back().to_c + zero_c};
}

}  // namespace sw::physics
