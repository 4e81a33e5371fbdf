#include "physics/brake_assist.hpp"

#include <algorithm>

namespace sw::physics {
namespace {

constexpr double most_vacuum_pa = 101325;

bool inside(const BrakeBooster& b, double vacuum_pa, double force_n) {
  return force_n >= 0 && vacuum_pa >= 0 && vacuum_pa <= most_vacuum_pa && b.gain >= 1;
}

}  // namespace

Slope booster_assist(const BrakeBooster& b, double vacuum_pa) {
  const double slope = b.efficiency * b.area_m2;
  return {slope * vacuum_pa - b.spring_n, slope, inside(b, vacuum_pa, 0)};
}

Slope booster_output(const BrakeBooster& b, double vacuum_pa, double push_rod_n) {
  const double most = push_rod_n + booster_assist(b, vacuum_pa).value, held = b.gain * push_rod_n;
  const bool valid = inside(b, vacuum_pa, push_rod_n);
  // Against the spring alone nothing comes out before it has given way.
  if (most <= 0) return {0, 0, valid};
  return held < most ? Slope{held, b.gain, valid} : Slope{most, 1, valid};
}

Slope booster_push_rod(const BrakeBooster& b, double vacuum_pa, double output_n) {
  const double beyond = output_n - booster_assist(b, vacuum_pa).value, held = output_n / b.gain;
  const bool valid = inside(b, vacuum_pa, output_n);
  return held > beyond ? Slope{held, 1 / b.gain, valid} : Slope{beyond, 1, valid};
}

double booster_run_out(const BrakeBooster& b, double vacuum_pa) {
  return b.gain > 1 ? std::max(0.0, booster_assist(b, vacuum_pa).value) / (b.gain - 1) : 0.0;
}

}  // namespace sw::physics
