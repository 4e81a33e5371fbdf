// Air through the core: fans, ram and the core's own loss in balance.
//
// A fan gives dp = dp0 s^2 - (dp0 / v0^2) v^2 at speed share s (fan laws: flow with speed, pressure with its square;
// any fan engineering text), v0 its free face speed; the core loses k v^2; the road adds k (ram v_road)^2, so that
// with free-turning fans the face speed is the stated share of road speed. All are squares, so the balance is closed:
//   v = sqrt((sum dp0 s^2 + ram) / (k + sum dp0 / v0^2)),
// with dp0 from the installed point: dp0 (1 - (v_i / v0)^2) = k v_i^2. Fans side by side add flow: their installed
// speeds add up to that of one fan. Beyond its free flow a fan with the travel gives no pressure more and windmills, as
// it does switched off; what that costs is in the stated ram share, so the road alone is the least there is. One that
// blows against the travel has no such ease. Range: both fans of one design; outside it (different fans fighting each
// other) the sum is still taken.
#include <algorithm>
#include <cmath>

#include "systems/cooling/cooling.hpp"

namespace sw::cooling {

AirFlow air_through_core(const Model& m, const AirAsk& ask) {
  double forward = 0, backward = 0, ratio = 1.35;
  for (std::size_t i = 0; i < m.fans; ++i) {
    auto& f = m.fan[i];
    double share = 0;
    if (f.electric)
      share = i < ask.level && f.rated_v > 0 ? std::max(0.0, ask.fan_volts) / f.rated_v : 0.0;
    else if (f.rated_rad_s > 0)
      share = ask.fan_rad_s / f.rated_rad_s;
    if (share <= 0) continue;
    (f.reversed ? backward : forward) += share * f.face_m_s;
    ratio = f.free_ratio;
  }
  const double k = m.loss;
  const double inner = 1 / (ratio * ratio);
  // dp0 and dp0/v0^2 of the fans as one, at their present speed. Air density is in all terms alike and drops out.
  auto head = [&](double v) { return k * v * v / (1 - inner); };
  const double resist = forward + backward > 0 ? k * inner / (1 - inner) : 0.0;
  const double ram = k * std::pow(m.ram_share * ask.road_m_s, 2);
  const double drive = head(forward) - head(backward) + ram;
  const double balance = std::copysign(std::sqrt(std::abs(drive) / (k + resist)), drive);
  const double v = backward > 0 ? balance : std::max(balance, m.ram_share * ask.road_m_s);
  const double by_ram = ram > 0 ? ram / (ram + head(forward) + 1e-9) : 0.0;
  return {v, m.cover + (1 - m.cover) * by_ram};
}

}  // namespace sw::cooling
