#include "physics/fuse.hpp"

namespace sw::physics {

FuseWindow blade_fuse_time(double load_share) {
  struct Row {
    double load, shortest_s, longest_s;
  };
  static constexpr Row rows[] = {
      {1.35, 0.75, 600}, {1.60, 0.25, 50}, {2.00, 0.15, 5}, {3.50, 0.04, 0.5}, {6.00, 0.02, 0.1}};
  constexpr double same = 1e-9;
  FuseWindow w;
  if (load_share <= 1.10 + same) return {360000.0, {}};
  for (const Row& r : rows)
    if (r.load <= load_share + same) w.longest_s = r.longest_s;
  for (const Row& r : rows)
    if (r.load >= load_share - same) {
      w.shortest_s = r.shortest_s;
      break;
    }
  return w;
}

double shortest_melting(double load_share) {
  constexpr double last_load = 6.0, last_s = 0.02;
  if (const auto w = blade_fuse_time(load_share); w.shortest_s) return *w.shortest_s;
  return last_s * (last_load / load_share) * (last_load / load_share);
}

}  // namespace sw::physics
