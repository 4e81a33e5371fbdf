#include "physics/brake_balance.hpp"

namespace sw::physics {
namespace {

constexpr double line_start = 0.1;
constexpr double line_slope(AdhesionLine line) { return line == AdhesionLine::un_r13h ? 0.7 : 0.85; }

/// z = (k weight + part f) / (part - k shift): an axle that holds `weight` at rest, gains `shift` a unit of rate and
/// does `part` of the braking.
std::optional<Slope> lock_rate(double weight, double shift, double part, double k, double f) {
  const double below = part - k * shift;
  if (!(part > 0) || !(below > 0)) return {};
  const double z = (k * weight + part * f) / below;
  return Slope{z, (weight + z * shift) / below};
}

}  // namespace

Slope front_weight_share(const Balance& car, double rate) {
  const double share = (car.wheelbase_m - car.cg_behind_front_m + car.cg_height_m * rate) / car.wheelbase_m;
  return {share, car.cg_height_m / car.wheelbase_m, share > 0 && share < 1};
}

AdhesionUse adhesion_use(const Balance& car, double front_share, double rate, double rolling) {
  const Slope weight = front_weight_share(car, rate);
  const double w = weight.value, r = 1 - w, braked = rate - rolling;
  return {front_share * braked / w, (1 - front_share) * braked / r, front_share * (w - braked * weight.slope) / (w * w),
          (1 - front_share) * (r + braked * weight.slope) / (r * r), weight.valid};
}

std::optional<Slope> front_lock_rate(const Balance& car, double front_share, double adhesion, double rolling) {
  return lock_rate(1 - car.cg_behind_front_m / car.wheelbase_m, car.cg_height_m / car.wheelbase_m, front_share,
                   adhesion, rolling);
}

std::optional<Slope> rear_lock_rate(const Balance& car, double front_share, double adhesion, double rolling) {
  return lock_rate(car.cg_behind_front_m / car.wheelbase_m, -car.cg_height_m / car.wheelbase_m, 1 - front_share,
                   adhesion, rolling);
}

std::optional<double> both_lock_rate(const Balance& car, double front_share) {
  const double z = (front_share * car.wheelbase_m - (car.wheelbase_m - car.cg_behind_front_m)) / car.cg_height_m;
  if (z < 0) return {};
  return z;
}

Slope adhesion_line_rate(AdhesionLine line, double adhesion) {
  const double s = line_slope(line);
  return {line_start + s * (adhesion - adhesion_line_from), s,
          adhesion >= adhesion_line_from && adhesion <= adhesion_line_to};
}

Slope adhesion_line_adhesion(AdhesionLine line, double rate) {
  const double s = line_slope(line), k = adhesion_line_from + (rate - line_start) / s;
  // A rate of exactly 0.1 is the line's end; the last bits of the division must not put it outside.
  constexpr double hair = 1e-12;
  return {k, 1 / s, k >= adhesion_line_from - hair && k <= adhesion_line_to + hair};
}

}  // namespace sw::physics
