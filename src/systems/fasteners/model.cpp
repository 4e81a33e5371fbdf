#include <cmath>

#include <algorithm>

#include "model/needed.hpp"
#include "systems/fasteners/fasteners.hpp"

namespace sw::fasteners {
namespace {

/// What it is screwed into; a nut of its grade is whole unless its thread was measured or shims took some of it.
void resolve_tapped(const Joint& in, JointModel& j, Resolver& r) {
  needed(in.into, j.engaged_missing, r);
  const auto& usual = tapped[static_cast<std::size_t>(in.into.value_or(Into::nut))];
  const double of_nut = j.strength ? j.strength->tensile_pa : 0;
  j.tapped_pa = r.get(in.strength, usual.tensile_pa > 0 ? usual.tensile_pa : of_nut);
  j.tapped_diameters = usual.diameters;
  const double shims = r.get(in.shims, 0);
  if (in.into == Into::nut && !in.engaged && shims == 0) return;
  const double engaged = needed(in.engaged, j.engaged_missing, r);
  if (j.engaged_missing.empty()) j.engaged_m = engaged - shims;
}

/// Torque over preload and diameter: measured, or by the state of the threads.
void resolve_factor(const Joint& in, JointModel& j, Resolver& r) {
  j.factor = given(in.nut_factor);
  if (!j.factor && in.threads) j.factor = nut_factors[static_cast<std::size_t>(*in.threads)];
  if (!j.factor) j.factor_missing.push_back(r.path_of(&in.threads));
}

std::optional<physics::Thread> thread_in(const std::string& text, Resolver& r) {
  if (text.empty()) return std::nullopt;
  const auto t = physics::thread_of(text);
  if (!t) r.fault(&text, "\"" + text + "\" is no thread", "diameter and threads an inch, 1/2-20, or M12x1.5");
  return t;
}

JointModel joint_of(const std::string& name, const Joint& in, Resolver& r) {
  JointModel j{.name = name,
               .scatter = r.get(in.scatter, 1),
               .torque_nm = given(in.torque),
               .clamp_n = given(in.clamp),
               .load_n = given(in.load),
               .share = r.get(in.share, 0.75),
               .count = in.count.value_or(1),
               .to_yield = in.to_yield,
               .used_before = in.used_before,
               .used_path = r.path_of(&in.used_before),
               .torque_path = r.path_of(&in.torque),
               .scatter_path = r.path_of(&in.scatter)};
  j.thread = thread_in(in.thread, r);
  j.hole = thread_in(in.hole, r);
  if (!j.thread) j.bolt_missing.push_back(r.path_of(&in.thread));
  needed(in.grade, j.bolt_missing, r);
  j.grade_known = in.grade.has_value();
  if (j.thread && in.grade) {
    if (physics::is_inch(*in.grade) != j.thread->inch)
      r.fault(&in.grade, j.thread->inch ? "is a class of metric bolts" : "is a grade of inch bolts",
              j.thread->inch ? "2, 5 or 8" : "8.8, 10.9 or 12.9");
    j.strength = physics::bolt_strength(*in.grade, *j.thread);
    j.outside = !j.strength;
  }
  if (!in.to_yield && in.used_before.value_or(false)) j.yield_missing.push_back(r.path_of(&in.to_yield));
  resolve_factor(in, j, r);
  resolve_tapped(in, j, r);
  return j;
}

}  // namespace

std::vector<std::string> JointModel::clamp_missing() const {
  std::vector<std::string> all;
  for (auto* some : {&bolt_missing, &factor_missing, &engaged_missing, &yield_missing})
    all.insert(all.end(), some->begin(), some->end());
  return all;
}

bool JointModel::fits_hole() const {
  constexpr double written = 1e-6;
  return !hole || (std::abs(thread->diameter_m - hole->diameter_m) < written &&
                   std::abs(thread->pitch_m - hole->pitch_m) < written);
}

double JointModel::wanted_m() const {
  return std::max(physics::engagement_to_break_m(*thread, strength->tensile_pa, tapped_pa),
                  tapped_diameters * thread->diameter_m);
}

std::optional<double> JointModel::strips_n() const {
  if (!engaged_m || !told()) return std::nullopt;
  return physics::strips_at_n(*thread, std::max(0.0, *engaged_m), strength->tensile_pa, tapped_pa);
}

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  for (auto& [name, joint] : in.joint) m.joints.push_back(joint_of(name, joint, r));
  return m;
}

}  // namespace sw::fasteners
