#include "systems/cooling/fan_control.hpp"

#include <algorithm>

namespace sw::cooling::control {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

/// Stages that must be on whatever the temperature.
std::size_t least_level(const Model& m, const View& v) {
  std::size_t least = 0;
  if (v.in(r_ac) > 0)
    for (std::size_t i = 0; i < m.electric; ++i)
      if (m.fan[i].with_ac) least = i + 1;
  return least;
}
bool alive(const View& v) { return (static_cast<unsigned>(v.in(r_conditions)) & bit(Condition::key)) != 0; }

/// How far, in kelvin, the level wants to rise or fall; positive wants to move.
struct Wish {
  double up = -1e3, down = -1e3;
};
Wish wish(const Model& m, const View& v, double now) {
  const auto level = static_cast<std::size_t>(now);
  Wish w;
  if (!alive(v)) {
    w.down = level > 0 ? 1.0 : -1e3;
    return w;
  }
  const std::size_t least = least_level(m, v);
  if (level < m.electric) w.up = level < least ? 1.0 : v.in(r_coolant)-m.fan[level].on_k;
  if (level > least) w.down = m.fan[level - 1].off_k - v.in(r_coolant);
  return w;
}

}  // namespace

double start(const void*, const Duty&) { return 0; }
double next(const void* model, const View& v, double now) {
  const Wish w = wish(of(model), v, now);
  return w.up > 0 ? now + 1 : w.down > 0 ? now - 1 : now;
}
double guard(const void* model, const View& v, double now) {
  const Wish w = wish(of(model), v, now);
  return std::max(w.up, w.down);
}
void evaluate(const void* model, View& v) {
  auto& m = of(model);
  const auto level = static_cast<std::size_t>(v.in(r_level));
  double asked = 0, fitted = 0, on_s = 0, all_s = 0;
  for (std::size_t i = 0; i < m.electric; ++i) {
    auto& f = m.fan[i];
    fitted += f.rated_a;
    all_s += f.rated_a / f.rated_v;
    if (i >= level) continue;
    asked += f.rated_a;
    on_s += f.rated_a / f.rated_v;
  }
  v.set(w_asked, asked);
  // Currents go with volts, so fans rated at several volts draw as one rated where their conductances meet.
  v.set(w_volts, on_s > 0 ? asked / on_s : all_s > 0 ? fitted / all_s : m.usual_v);
  v.set(w_fitted, fitted);
}
}  // namespace sw::cooling::control
