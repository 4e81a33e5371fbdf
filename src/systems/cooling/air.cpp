// Figures of the fans and the core put into the balance of physics/fan.
#include "physics/fan.hpp"
#include "systems/cooling/cooling.hpp"

namespace sw::cooling {
namespace {

/// Share of its rated speed a fan turns at.
double speed_share(const FanModel& f, bool on, const AirAsk& ask) {
  if (!f.electric) return f.rated_rad_s > 0 ? ask.fan_rad_s / f.rated_rad_s : 0.0;
  return on && f.rated_v > 0 ? physics::fan_speed_share(ask.fan_volts, f.rated_v).value : 0.0;
}

}  // namespace

AirFlow air_through_core(const Model& m, const AirAsk& ask) {
  physics::FanBalance balance{
      .forward_m_s = 0, .backward_m_s = 0, .ram_m_s = m.ram_share * ask.road_m_s, .free_ratio = FanModel{}.free_ratio};
  // Fans of several designs: free flows add up as installed ones do, and their ratio is that of all together.
  double installed = 0, free = 0;
  for (std::size_t i = 0; i < m.fans; ++i) {
    auto& f = m.fan[i];
    const double face = speed_share(f, i < ask.level, ask) * f.face_m_s;
    if (face <= 0) continue;
    (f.reversed ? balance.backward_m_s : balance.forward_m_s) += face;
    installed += face;
    free += face * f.free_ratio;
  }
  if (installed > 0) balance.free_ratio = free / installed;
  const auto face = physics::face_speed(balance);
  return {face.value_m_s, m.cover + (1 - m.cover) * face.ram_part};
}

}  // namespace sw::cooling
