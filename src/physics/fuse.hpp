#pragma once
// Blade fuses: how long they carry a share of their rating.
// ISO 8820-3 (the same window in SAE J1284), at room temperature, from memory:
//   110 % at least 100 h; 135 % 0.75 to 600 s; 160 % 0.25 to 50 s; 200 % 0.15 to 5 s; 350 % 0.04 to 0.5 s;
//   600 % 0.02 to 0.1 s.
// Between two tabled loads the window is what both bound: a fuse opens no later than at the next lower load and no
// sooner than at the next higher one. Above 600 % the element melts before heat leaves it: shortest_melting keeps
// I^2 t of the last row (adiabatic melting: common practice).
#include <optional>

namespace sw::physics {

struct FuseWindow {
  std::optional<double> shortest_s;  ///< empty where the standard gives no least time (above 600 %)
  std::optional<double> longest_s;   ///< empty where it need not open (below 135 %)
};
FuseWindow blade_fuse_time(double load_share);
/// The least time it carries that load, s; above 600 % by constant I^2 t.
double shortest_melting(double load_share);

/// Common practice: at room temperature a blade fuse carries 75 % of its rating for good (makers say 70 to 80 %).
inline constexpr double fuse_continuous_share = 0.75;

}  // namespace sw::physics
