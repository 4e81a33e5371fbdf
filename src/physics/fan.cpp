#include "physics/fan.hpp"

#include <algorithm>
#include <cmath>

namespace sw::physics {

FaceSpeed face_speed(const FanBalance& in) {
  const double forward = in.forward_m_s, backward = in.backward_m_s, ram = in.ram_m_s;
  // Without fans blowing nothing but the core stands against the road.
  const double let_by = forward + backward > 0 ? 1 - 1 / (in.free_ratio * in.free_ratio) : 1.0;
  const double square = forward * forward - backward * backward + let_by * ram * ram;
  FaceSpeed out{.value_m_s = std::copysign(std::sqrt(std::abs(square)), square),
                .valid = in.free_ratio > 1 && !(forward > 0 && backward > 0)};
  const double with = forward * forward + let_by * ram * ram;
  out.ram_part = ram > 0 ? let_by * ram * ram / with : 0.0;
  if (!(backward > 0) && out.value_m_s <= ram) return {ram, 0, 1, out.ram_part, forward > 0, out.valid};
  const double v = std::abs(out.value_m_s);
  out.d_forward = v > 0 ? forward / v : 0;
  out.d_ram = v > 0 ? let_by * ram / v : 0;
  return out;
}

FanCurve fan_curve(std::span<const double> face_m_s, std::span<const double> pressure_pa) {
  const auto n = static_cast<double>(face_m_s.size());
  double s = 0, p = 0, ss = 0, sp = 0;
  for (std::size_t i = 0; i < face_m_s.size(); ++i) {
    const double square = face_m_s[i] * face_m_s[i];
    s += square, p += pressure_pa[i], ss += square * square, sp += square * pressure_pa[i];
  }
  const double slope = (s * p - n * sp) / (n * ss - s * s), shut_off = (p + slope * s) / n;
  return {shut_off, slope, slope > 0 && shut_off > 0};
}

FanCurve side_by_side(const FanCurve& one, const FanCurve& other) {
  const double a = 1 / std::sqrt(one.slope), b = 1 / std::sqrt(other.slope);
  return {(one.shut_off_pa * a + other.shut_off_pa * b) / (a + b), 1 / ((a + b) * (a + b)), one.valid && other.valid};
}

Installed fan_on_core(const FanCurve& fan, double core_loss) {
  const double both = core_loss + fan.slope, v = std::sqrt(fan.shut_off_pa / both);
  return {v, std::sqrt(both / fan.slope), -0.5 * v / both};
}

Slope fan_speed_share(double volts, double rated_v) {
  return volts > 0 ? Slope{volts / rated_v, 1 / rated_v} : Slope{0, 0, volts >= 0};
}

Slope affinity_power(double rated_w, double speed_share) {
  const double square = speed_share * speed_share;
  return {rated_w * square * speed_share, 3 * rated_w * square};
}

}  // namespace sw::physics
