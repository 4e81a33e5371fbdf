#pragma once
// What stands on each axle while a car brakes, and what an axle uses of its tyres' grip.
#include "physics/law.hpp"

namespace sw::physics {

/// Nf = W (share + z h / L), Nr = W (1 - share - z h / L).
/// Symbols: W weight, `share` of it on the front axle at rest, h height of the centre of mass, L wheelbase, z braking
/// rate as a share of gravity. Range: both axles on the ground, 0 <= z < (1 - share) L / h; a car on its springs,
/// whose dive moves the centre by little, is taken as rigid. Source: Limpert, Brake Design and Safety, ch. 7
/// (straight-line braking), from memory; UN R13-H annex 5, 3.1 (same symbols), from memory.
struct CarOnAxles {
  double weight_n, front_share, height_m, wheelbase_m;
};
struct AxleLoads {
  double front_n, rear_n;
  double slope_n;  ///< d front / d z; of the rear its negative
  bool valid;
};
AxleLoads axle_loads(const CarOnAxles& car, double rate);

/// Adhesion an axle uses, k = force / load, at the rate both axles' forces give together.
struct AdhesionUse {
  double rate, front, rear;
  bool valid;
};
AdhesionUse adhesion_use(const CarOnAxles& car, double front_force_n, double rear_force_n);

/// The rear's ideal share of all braking force: both axles then use the same. slope: by the rate.
Slope ideal_rear_share(const CarOnAxles& car, double rate);
/// The rate at which one axle, braking alone, uses up an adhesion mu: front mu share / (1 - mu h / L), rear mu (1 -
/// share) / (1 + mu h / L). slope: by mu.
Slope front_alone_rate(const CarOnAxles& car, double adhesion);
Slope rear_alone_rate(const CarOnAxles& car, double adhesion);

}  // namespace sw::physics
