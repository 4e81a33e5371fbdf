// What fits what, whatever the drive: strength of the coolant, cap, directions of turning, set-points, room to swell.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "quantity/customary.hpp"
#include "systems/cooling/checks.hpp"

namespace sw::cooling {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

}  // namespace

std::string words(const char* format, double a, double b) {
  char text[160];
  std::snprintf(text, sizeof text, format, a, b);
  return text;
}

namespace freezing {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  out.push_back({.predicted = of(model).coolant->freezing_k(),
                 .high = run.at(0, 1),
                 .scale = 40.0,
                 .fix_hint = "more glycol; drain plain water before frost"});
}
}  // namespace freezing

namespace cap {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = "a weaker cap, or the weakest part replaced; then pressure-test the whole system cold"};
  if (!m.cap_pa) v.missing.push_back(m.cap_path);
  if (!m.weakest_pa) v.missing.push_back(m.weakest_path);
  if (v.missing.empty()) {
    v.predicted = *m.cap_pa;
    v.high = *m.weakest_pa;
    v.scale = std::max(*m.weakest_pa, 1.0);
  }
  out.push_back(std::move(v));
}
}  // namespace cap

namespace potential {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  if (of(model).isolated) return;
  double worst = 0;
  std::size_t row = run.last();
  bool own = false;  // a ground of its own at the support, else nobody said anything of it
  for (std::size_t i = 0; i < run.trace->rows(); ++i) {
    const double support = run.at(i, n_support), volts = std::abs(support - run.at(i, n_block));
    own = own || support != run.at(i, n_body);
    if (volts > worst) worst = volts, row = i;
  }
  if (!own) return;
  out.push_back({.predicted = worst,
                 .high = most_v,
                 .scale = most_v,
                 .row = row,
                 .fix_hint =
                     "grounds of fans and lamps led to the block or the battery's post, the support strapped to "
                     "the body, the core on rubber; then fresh coolant"});
}
}  // namespace potential

namespace rotation {
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = "the pump made for the other rotation, or the belt routed over its other side"};
  if (!m.rotation) {
    v.missing.push_back(m.rotation_path);
  } else if (const double direction = run.at(0, 0); !std::isnan(direction)) {
    const bool with = direction > 0;
    v.rule = *m.rotation == Rotation::either || (*m.rotation == Rotation::with_crank) == with;
    v.reason = std::string("the belt turns the pump ") + (with ? "with" : "against") +
               " the crank, its impeller is made to turn " +
               std::string(rotation_names[static_cast<std::size_t>(*m.rotation)]);
  }
  out.push_back(std::move(v));
}
}  // namespace rotation

namespace direction {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (std::size_t i = 0; i < m.fans; ++i)
    out.push_back({.place = m.fan[i].name,
                   .reason = m.fan[i].reversed ? "it blows against the travel: fan and road air fight at the core"
                                               : "it blows with the travel",
                   .fix_hint = "blades turned round; polarity swapped only where the blades are made for both ways",
                   .rule = !m.fan[i].reversed});
}
}  // namespace direction

namespace set_points {
constexpr double least_apart_k = 2;  ///< less and the switch chatters with its own tolerance (common practice)
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (std::size_t i = 0; i < m.electric; ++i) {
    auto& f = m.fan[i];
    const bool apart = f.on_k - f.off_k >= least_apart_k, above = f.off_k >= m.opens_k, soon = f.on_k < m.highest_k;
    out.push_back(
        {.place = f.name,
         .reason = words("switched off at %.0f degC, thermostat opens at %.0f degC", f.off_k - zero_celsius_k,
                         m.opens_k - zero_celsius_k) +
                   (apart ? "" : words("; on and off less than %.0f K apart", least_apart_k, 0)) +
                   (soon ? ""
                         : words("; on at %.0f degC, where the coolant may be no hotter than %.0f degC",
                                 f.on_k - zero_celsius_k, m.highest_k - zero_celsius_k)),
         .fix_hint = "on below the coolant's limit, off above the thermostat's opening, on 3 to 6 K above off",
         .rule = apart && above && soon});
  }
}
}  // namespace set_points

namespace expansion {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.tank_m3) return;
  const double cold = m.coolant->at(283.15).density_kg_m3, hot = m.coolant->at(m.highest_k).density_kg_m3;
  out.push_back({.predicted = (m.engine_m3 + m.radiator_m3) * (cold / hot - 1),
                 .high = *m.tank_m3,
                 .scale = *m.tank_m3 > 0 ? *m.tank_m3 : 1e-3,
                 .fix_hint = "a larger recovery bottle"});
}
}  // namespace expansion

}  // namespace sw::cooling
