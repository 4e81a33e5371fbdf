#include "physics/load_transfer.hpp"

namespace sw::physics {

AxleLoads axle_loads(const CarOnAxles& car, double rate) {
  const double moved = car.weight_n * car.height_m / car.wheelbase_m;
  AxleLoads n{car.weight_n * car.front_share + moved * rate, car.weight_n * (1 - car.front_share) - moved * rate, moved,
              false};
  n.valid = rate >= 0 && n.rear_n > 0;
  return n;
}

AdhesionUse adhesion_use(const CarOnAxles& car, double front_force_n, double rear_force_n) {
  const double rate = (front_force_n + rear_force_n) / car.weight_n;
  const AxleLoads n = axle_loads(car, rate);
  return {rate, front_force_n / n.front_n, rear_force_n / n.rear_n, n.valid};
}

Slope ideal_rear_share(const CarOnAxles& car, double rate) {
  const double slope = -car.height_m / car.wheelbase_m;
  const double share = 1 - car.front_share + slope * rate;
  return {share, slope, rate >= 0 && share >= 0};
}

Slope front_alone_rate(const CarOnAxles& car, double adhesion) {
  const double lift = car.height_m / car.wheelbase_m, under = 1 - adhesion * lift;
  return {adhesion * car.front_share / under, car.front_share / (under * under), adhesion >= 0 && under > 0};
}

Slope rear_alone_rate(const CarOnAxles& car, double adhesion) {
  const double lift = car.height_m / car.wheelbase_m, under = 1 + adhesion * lift, share = 1 - car.front_share;
  return {adhesion * share / under, share / (under * under), adhesion >= 0};
}

}  // namespace sw::physics
